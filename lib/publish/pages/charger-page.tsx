/** The page of one charger, in the order in which a buyer asks. */

import type { Finding } from "../../nouns/finding.ts";
import { formatNumber, withUnit } from "../../units/format.ts";
import type { ChargerCharts } from "../charts/index.ts";
import { figureFinder } from "../figure-finder.ts";
import { chargerPath } from "../links.ts";
import { cardPath, quotePath, versionsPath } from "../outward/addresses.ts";
import type { ChargerResult } from "../results.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { CautionBox } from "./caution-box.tsx";
import { Corrections, MakerAnswer } from "./charger-disclosures.tsx";
import { ChargerGlance } from "./charger-glance.tsx";
import { ModeSection, Stated } from "./charger-modes.tsx";
import { CostByTest, Evidence, TestsTable } from "./charger-tests.tsx";
import { ClaimsKey } from "./claims-table.tsx";
import { Contents } from "./contents.tsx";
import { renderPage } from "./document.tsx";
import { downloadsOf } from "./evidence-list.tsx";
import { Facts } from "./facts.tsx";
import { FiguresTable } from "./figures-table.tsx";
import { type FindFigure, Findings } from "./findings.tsx";
import { BehaviourSection, OwnBatteriesSection, ReadyBySection, ReferenceSection, SeasonSection } from "./forecast-sections.tsx";
import { Mark } from "./mark.tsx";
import { Prose } from "./markup.tsx";
import { Link, siteContext } from "./site-context.tsx";

type Question = "delivers" | "long" | "costs" | "safe" | "battery" | "unseen";

/** Which of a buyer's questions a finding answers. One that is not listed stands under the first: does it do what it says? */
const answeredBy: Readonly<Record<string, Question>> = {
  "target-density": "long",
  "cross-examination": "long",
  "cell-spread": "long",
  "float-window": "safe",
  "letting-go": "safe",
  water: "safe",
  temperature: "safe",
  frost: "safe",
  "battery-kinds": "battery",
  "unrecorded-charge": "unseen",
  "recording-endings": "unseen",
};

const sections = [
  { id: "claims", name: "Does it do what it says?" },
  { id: "time", name: "How long does it take?" },
  { id: "cost", name: "What does it cost?" },
  { id: "safe", name: "Is it safe to leave on?" },
  { id: "battery", name: "Which battery does it suit?" },
  { id: "not-seen", name: "What was not seen" },
  { id: "words", name: "The reviewer's words" },
  { id: "evidence", name: "Evidence" },
  { id: "disclosures", name: "Disclosures and corrections" },
];

/** Renders a charger's page from its results and the drawings of its tests. */
export function renderChargerPage(results: ResultsFolder, charger: ChargerResult, charts: ChargerCharts): string {
  const tests = charger.tests.map((test) => results.test(test.id));
  const context = siteContext(results.index, chargerPath(charger.id), results.index.site.invented || charger.invented);
  const find = figureFinder(tests, charger);
  const answers = (question: Question) => charger.findings.filter((finding) => (answeredBy[finding.id] ?? "delivers") === question);
  const sealed = tests.some((test) => test.battery.sealed);
  const forecasts = charger.modes.flatMap(({ name, forecast }) => (forecast === null ? [] : [{ mode: name, forecast }]));
  const list = (question: Question, none?: string) => (
    <Answers findings={answers(question)} none={none} find={find} linkTo={context.linkTo} />
  );
  return renderPage(context, {
    title: charger.name,
    description: charger.verdict.sentence,
    children: (
      <>
        <p class="verdict">
          <Mark kind={charger.verdict.weight}>{charger.verdict.sentence}</Mark>
        </p>
        <p class="quiet">
          {charger.maker ?? "Maker not stated"} · <Price price={charger.price} />
        </p>
        <ChargerGlance results={results} charger={charger} />
        <Contents sections={sections} />
        <h2 id="claims">Does it do what it says?</h2>
        {charger.modes.map((mode) => (
          <ModeSection key={mode.id} mode={mode} find={find} />
        ))}
        <ClaimsKey claims={charger.modes.flatMap((mode) => mode.claims)} />
        {list("delivers")}
        <h2 id="time">How long does it take?</h2>
        {list("long", "No test tells yet how long it takes.")}
        <TestsTable charger={charger} />
        {forecasts.map(({ mode, forecast }) => (
          <div key={mode}>
            <ReferenceSection mode={mode} forecast={forecast} find={downloadsOf(tests)} />
            <OwnBatteriesSection mode={mode} forecast={forecast} find={downloadsOf(tests)} />
            <BehaviourSection mode={mode} forecast={forecast} />
          </div>
        ))}
        <h2 id="cost">What does it cost?</h2>
        {list("costs")}
        <CostByTest tests={charger.tests} />
        <FiguresTable caption="Figures of this charger" figures={charger.figures} find={downloadsOf(tests)} />
        {charger.figures.length === 0 ? <p>No price is stated.</p> : null}
        <h2 id="safe">Is it safe to leave on?</h2>
        {list("safe", "None of the tests tells what it does when left connected.")}
        {forecasts.map(({ mode, forecast }) => (
          <SeasonSection key={mode} mode={mode} forecast={forecast} />
        ))}
        <CautionBox sealed={sealed} />
        <h2 id="battery">Which battery does it suit?</h2>
        {list("battery")}
        {forecasts.map(({ mode, forecast }) => (
          <ReadyBySection key={mode} mode={mode} forecast={forecast} />
        ))}
        <Stated modes={charger.modes} />
        <h2 id="not-seen">What was not seen</h2>
        {list("unseen")}
        <NotSeen sentences={charger.notSeen} />
        <h2 id="words">The reviewer's words</h2>
        <ReviewersWords prose={charger.prose} />
        <h2 id="evidence">Evidence</h2>
        <Evidence charger={charger} charts={charts} />
        <h2 id="disclosures">Disclosures and corrections</h2>
        <Facts facts={charger.disclosures} />
        <MakerAnswer answer={charger.makerAnswer} />
        <Corrections corrections={charger.corrections} />
        <ul class="more" aria-label="This result elsewhere">
          <li>
            <Link to={cardPath(charger.id)}>Card to print for the shop counter</Link>
          </li>
          <li>
            <Link to={quotePath(charger.id)}>Quote or embed this result</Link>
          </li>
          <li>
            <Link to={versionsPath(charger.id)}>Versions of this result</Link>
          </li>
          <li>
            <Link to={`data/chargers/${charger.id}.json`}>All results of this charger, JSON</Link>
          </li>
        </ul>
      </>
    ),
  });
}

function Price({ price }: { price: ChargerResult["price"] }) {
  if (price === null) return <>price not stated</>;
  return (
    <>
      {withUnit(formatNumber(price.amount, 2), price.currency)}
      {price.where === null ? "" : `, ${price.where}`}, on {price.on ?? "a day not stated"}
    </>
  );
}

type AnswerProps = {
  readonly findings: readonly Finding[];
  /** What to say where nothing was found; nothing is said where this is left out. */
  readonly none: string | undefined;
  readonly find: FindFigure;
  readonly linkTo: (target: string) => string;
};

function Answers({ findings, none, find, linkTo }: AnswerProps) {
  if (findings.length > 0) return <Findings findings={findings} find={find} linkTo={linkTo} />;
  return none === undefined ? null : <p>{none}</p>;
}

function NotSeen({ sentences }: { sentences: readonly string[] }) {
  if (sentences.length === 0) return <p>Nothing is missing that these tests set out to see.</p>;
  return (
    <ul>
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}

function ReviewersWords({ prose }: { prose: ChargerResult["prose"] }) {
  if (prose === null) return <p>The reviewer has written nothing about this charger.</p>;
  return (
    <>
      <p class="quiet">
        {prose.title}
        {prose.by === null ? "" : `, by ${prose.by}`}
        {prose.on === null ? "" : `, ${prose.on}`}
      </p>
      <Prose html={prose.html} language={prose.language} />
    </>
  );
}

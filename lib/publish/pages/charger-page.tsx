/** The page of one charger, in the order in which a buyer asks. */

import type { Finding } from "../../nouns/finding.ts";
import type { Language } from "../../nouns/site.ts";
import { withUnit } from "../../units/format.ts";
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
import { Link, Own, siteContext, useSite } from "./site-context.tsx";
import { Said, said } from "./speech.tsx";

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

const sections = ["claims", "time", "cost", "safe", "battery", "not-seen", "words", "evidence", "disclosures"] as const;

/** Renders a charger's page from its results and the drawings of its tests. */
export function renderChargerPage(results: ResultsFolder, charger: ChargerResult, charts: ChargerCharts, language: Language): string {
  const tests = charger.tests.map((test) => results.test(test.id));
  const context = siteContext(results.index, chargerPath(charger.id), language, {
    invented: results.index.site.invented || charger.invented,
  });
  const find = figureFinder(tests, charger);
  const { charger: words } = context.words;
  const answers = (question: Question) => charger.findings.filter((finding) => (answeredBy[finding.id] ?? "delivers") === question);
  const sealed = tests.some((test) => test.battery.sealed);
  const forecasts = charger.modes.flatMap(({ name, forecast, leftOnWarning }) =>
    forecast === null ? [] : [{ mode: name, forecast, leftOnWarning }],
  );
  const list = (question: Question, none?: string) => (
    <Answers findings={answers(question)} none={none} find={find} linkTo={context.linkTo} />
  );
  return renderPage(context, {
    title: charger.name,
    description: said(context, charger.verdict.sentence),
    children: (
      <>
        <p class="verdict">
          <Mark kind={charger.verdict.weight}>
            <Said text={charger.verdict.sentence} />
          </Mark>
        </p>
        <p class="quiet">
          {charger.maker ?? words.makerNotStated} · <Price price={charger.price} />
        </p>
        <ChargerGlance results={results} charger={charger} />
        <Contents sections={sections.map((id) => ({ id, name: words.sections[id] }))} />
        <h2 id="claims">{words.sections.claims}</h2>
        {charger.modes.map((mode) => (
          <ModeSection key={mode.id} mode={mode} find={find} />
        ))}
        <ClaimsKey claims={charger.modes.flatMap((mode) => mode.claims)} />
        {list("delivers")}
        <h2 id="time">{words.sections.time}</h2>
        {list("long", words.noTime)}
        <TestsTable charger={charger} />
        {forecasts.map(({ mode, forecast }) => (
          <div key={mode}>
            <ReferenceSection mode={mode} forecast={forecast} find={downloadsOf(tests)} />
            <OwnBatteriesSection mode={mode} forecast={forecast} find={downloadsOf(tests)} />
            <BehaviourSection mode={mode} forecast={forecast} />
          </div>
        ))}
        <h2 id="cost">{words.sections.cost}</h2>
        {list("costs")}
        <CostByTest tests={charger.tests} />
        <FiguresTable caption={words.figures} figures={charger.figures} find={downloadsOf(tests)} />
        {charger.figures.length === 0 ? <p>{words.noPrice}</p> : null}
        <h2 id="safe">{words.sections.safe}</h2>
        {list("safe", words.notLeftOn)}
        {forecasts.map(({ mode, forecast }) => (
          <SeasonSection key={mode} mode={mode} forecast={forecast} />
        ))}
        <CautionBox sealed={sealed} />
        <h2 id="battery">{words.sections.battery}</h2>
        {list("battery")}
        {forecasts.map(({ mode, forecast, leftOnWarning }) => (
          <ReadyBySection key={mode} mode={mode} forecast={forecast} leftOnWarning={leftOnWarning} />
        ))}
        <Stated modes={charger.modes} />
        <h2 id="not-seen">{words.sections["not-seen"]}</h2>
        {list("unseen")}
        {charger.tests.length === 0 ? <p>{words.notTested}</p> : <NotSeen sentences={charger.notSeen} />}
        <h2 id="words">{words.sections.words}</h2>
        <ReviewersWords prose={charger.prose} />
        <h2 id="evidence">{words.sections.evidence}</h2>
        <Evidence charger={charger} charts={charts} />
        <h2 id="disclosures">{words.sections.disclosures}</h2>
        <Facts facts={charger.disclosures} />
        <MakerAnswer answer={charger.makerAnswer} />
        <Corrections corrections={charger.corrections} />
        <ul class="more" aria-label={words.elsewhere}>
          <li>
            <Link to={cardPath(charger.id)}>{words.card}</Link>
          </li>
          <li>
            <Link to={quotePath(charger.id)}>{words.quote}</Link>
          </li>
          <li>
            <Link to={versionsPath(charger.id)}>{words.versions}</Link>
          </li>
          <li>
            <Link to={`data/chargers/${charger.id}.json`}>{words.asJson}</Link>
          </li>
        </ul>
      </>
    ),
  });
}

function Price({ price }: { price: ChargerResult["price"] }) {
  const { formats, words } = useSite();
  const { priceNotStated, priced } = words.charger;
  if (price === null) return <>{priceNotStated}</>;
  const amount = withUnit(formats.formatNumber(price.amount, 2), price.currency);
  return <>{priced(amount, price.where, price.on === null ? null : formats.formatDay(price.on))}</>;
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
  const { words } = useSite();
  if (sentences.length === 0) return <p>{words.charger.nothingMissing}</p>;
  return (
    <ul>
      {sentences.map((sentence) => (
        <li key={sentence}>
          <Said text={sentence} />
        </li>
      ))}
    </ul>
  );
}

function ReviewersWords({ prose }: { prose: ChargerResult["prose"] }) {
  const { formats, words } = useSite();
  if (prose === null) return <p>{words.charger.nothingWritten}</p>;
  return (
    <>
      <p class="quiet">
        <Own>{prose.title}</Own>
        {prose.by === null ? "" : words.charger.by(prose.by)}
        {prose.on === null ? "" : `, ${formats.formatDay(prose.on)}`}
      </p>
      <Prose html={prose.html} language={prose.language} />
    </>
  );
}

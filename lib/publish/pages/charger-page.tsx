/** The page of one charger, in the order in which a buyer asks. */
import type { Finding } from "../../nouns/finding.ts";
import { stageKinds } from "../../nouns/stage.ts";
import { formatNumber, withUnit } from "../../units/format.ts";
import type { ChargerCharts, DrawnProfile } from "../charts/index.ts";
import { figureFinder } from "../figure-finder.ts";
import { chargerPath, testPath } from "../links.ts";
import type { ChargerResult } from "../results.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { CautionBox } from "./caution-box.tsx";
import { ChartFigure } from "./chart-figure.tsx";
import { ClaimsTable } from "./claims-table.tsx";
import { Contents } from "./contents.tsx";
import { renderPage } from "./document.tsx";
import { downloadsOf } from "./evidence-list.tsx";
import { EvidenceStripFigure, StripKey } from "./evidence-strip.tsx";
import { Facts } from "./facts.tsx";
import { FigureValue } from "./figure-value.tsx";
import { FiguresTable } from "./figures-table.tsx";
import { type FindFigure, Findings } from "./findings.tsx";
import { Mark } from "./mark.tsx";
import { Prose } from "./markup.tsx";
import { Link, siteContext, useSite } from "./site-context.tsx";
import { Columns, Table } from "./table.tsx";

type Question = "delivers" | "long" | "costs" | "safe" | "battery" | "unseen";

/** Which of a buyer's questions a finding answers. One that is not listed stands under the first: does it do what it says? */
const answeredBy: Readonly<Record<string, Question>> = {
  "target-density": "long",
  "density-against-voltage": "long",
  "cell-spread": "long",
  "float-window": "safe",
  "letting-go": "safe",
  "overcharge-water": "safe",
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
        <Contents sections={sections} />
        <h2 id="claims">Does it do what it says?</h2>
        {charger.modes.map((mode) => (
          <ModeSection key={mode.id} mode={mode} find={find} />
        ))}
        {list("delivers")}
        <h2 id="time">How long does it take?</h2>
        {list("long", "No test tells yet how long it takes.")}
        <TestsTable charger={charger} />
        <h2 id="cost">What does it cost?</h2>
        {list("costs")}
        <FiguresTable caption="Figures of this charger" figures={charger.figures} find={downloadsOf(tests)} />
        {charger.figures.length === 0 ? <p>No cost can be told from these tests.</p> : null}
        <h2 id="safe">Is it safe to leave on?</h2>
        {list("safe", "None of the tests tells what it does when left connected.")}
        <CautionBox sealed={sealed} />
        <h2 id="battery">Which battery does it suit?</h2>
        {list("battery")}
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
        <p>
          <Link to={`data/chargers/${charger.id}.json`}>All results of this charger, JSON</Link>
        </p>
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

function ModeSection({ mode, find }: { mode: ChargerResult["modes"][number]; find: FindFigure }) {
  return (
    <section>
      <h3>Mode “{mode.name}”</h3>
      {mode.characteristic === null ? null : (
        <p>
          {mode.characteristic.letters === null ? null : <span class="letters">{mode.characteristic.letters} </span>}
          {mode.characteristic.words}
          {mode.characteristic.complete ? "" : " No recording lasted until the charger was done, so the letters may go on."}
        </p>
      )}
      {mode.tests.length === 0 ? <p>This mode has not been put to the test.</p> : null}
      <ClaimsTable caption={`Claims of mode “${mode.name}”, judged over its tests`} claims={mode.claims} find={find} />
    </section>
  );
}

function TestsTable({ charger }: { charger: ChargerResult }) {
  if (charger.tests.length === 0) return <p>It has not been tested yet.</p>;
  const labels = new Map(charger.tests.flatMap((test) => test.keyFigures.map((figure) => [figure.id, figure.label] as const)));
  return (
    <Table caption="Tests of this charger">
      <Columns names={["Test", "Mode", "Battery", "Target", ...labels.values()]} />
      <tbody>
        {charger.tests.map((test) => (
          <tr key={test.id}>
            <th scope="row">
              <Link to={testPath(test.id)}>{test.title}</Link>
            </th>
            <td>{charger.modes.find((mode) => mode.id === test.mode)?.name ?? test.mode}</td>
            <td>{test.battery}</td>
            <td>{test.status}</td>
            {[...labels.keys()].map((id) => {
              const figure = test.keyFigures.find((candidate) => candidate.id === id);
              return <td key={id}>{figure === undefined ? "not measured" : <FigureValue figure={figure} why />}</td>;
            })}
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function Stated({ modes }: { modes: ChargerResult["modes"] }) {
  return (
    <>
      {modes.map((mode) => (
        <section key={mode.id}>
          <h3>What the maker states of “{mode.name}”</h3>
          {mode.stated.length === 0 ? <p>Nothing is stated.</p> : null}
          <dl class="facts">
            {mode.stated.map((item) => (
              <div key={item.label}>
                <dt>{item.label}</dt>
                <dd>
                  {item.words} <span class="quiet">({item.from})</span>
                </dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </>
  );
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

function Evidence({ charger, charts }: { charger: ChargerResult; charts: ChargerCharts }) {
  if (charger.tests.length === 0) return <p>There is no evidence yet: no test has been made.</p>;
  return (
    <>
      <StripKey id="evidence" />
      {charger.tests.map((test) => (
        <section key={test.id}>
          <h3>
            <Link to={testPath(test.id)}>{test.title}</Link>
          </h3>
          <EvidenceStripFigure timeline={test.timeline} id={`strip-${test.id}`} size="card" />
          <ProfileOfTest drawn={charts.get(test.id)} />
        </section>
      ))}
    </>
  );
}

function ProfileOfTest({ drawn }: { drawn: DrawnProfile | undefined }) {
  if (drawn === undefined) return null;
  return (
    <ChartFigure chart={drawn.chart} caption={`Charge profile, ${drawn.recording.id}`}>
      The longest of the test's recordings. Numbers and shading are its stages:{" "}
      {drawn.recording.stages.map((stage, index) => `${index + 1} ${stageKinds[stage.kind].label.toLowerCase()}`).join(", ")}.{" "}
      {drawn.recording.ending.words}
    </ChartFigure>
  );
}

function MakerAnswer({ answer }: { answer: ChargerResult["makerAnswer"] }) {
  if (answer === null) return <p>Whether the maker was told: not stated.</p>;
  const told = `The maker was told of the results on ${answer.toldOn ?? "a day that is not stated"}`;
  if (answer.answer === null) return <p>{told}; no answer is stated.</p>;
  return (
    <>
      <p>
        {told}, and answered on {answer.answeredOn ?? "a day that is not stated"}:
      </p>
      <blockquote>{answer.answer}</blockquote>
    </>
  );
}

function Corrections({ corrections }: { corrections: ChargerResult["corrections"] }) {
  const { linkTo } = useSite();
  if (corrections.length === 0) {
    return (
      <p>
        No corrections so far. <a href={linkTo("corrections/")}>How corrections are made</a>
      </p>
    );
  }
  return (
    <ul>
      {corrections.map((correction) => (
        <li key={`${correction.on} ${correction.what}`}>
          <strong>
            {correction.on}, {correction.kind}
          </strong>
          : {correction.what} {correction.why}{" "}
          <span class="quiet">
            {correction.changesVerdict ? "It changes the verdict." : "The verdict stands."}
            {correction.noticedBy === null ? "" : ` Noticed by ${correction.noticedBy}.`}
          </span>
        </li>
      ))}
    </ul>
  );
}

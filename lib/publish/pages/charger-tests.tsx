/** A charger's tests: what each came to, what it cost, and what was seen of it. */
import type { Figure } from "../../nouns/figure.ts";
import type { ChargerCharts, DrawnProfile } from "../charts/index.ts";
import { figureAnchor, testPath } from "../links.ts";
import type { ChargerResult } from "../results.ts";
import { wordFor } from "../words/word-for.ts";
import { ChartFigure } from "./chart-figure.tsx";
import { FigureValue } from "./figure-value.tsx";
import { Absent } from "./mark.tsx";
import { Link, useSite } from "./site-context.tsx";
import { Said, said } from "./speech.tsx";
import { EvidenceStripFigure, StripKey } from "./strip-figure.tsx";
import { Columns, Table } from "./table.tsx";

/** One row for each test, one column for each of their key figures. */
export function TestsTable({ charger }: { charger: ChargerResult }) {
  const speech = useSite();
  const { charger: words, marks } = speech.words;
  if (charger.tests.length === 0) return <p>{words.notTested}</p>;
  const labels = new Map(
    charger.tests.flatMap((test) =>
      test.keyFigures.filter((figure) => !toldUnderCost(figure)).map((figure) => [figure.id, figure.label] as const),
    ),
  );
  return (
    <Table caption={words.tests} class="cards labelled short">
      <Columns
        names={[
          words.testColumns.test,
          words.testColumns.mode,
          words.testColumns.battery,
          words.testColumns.target,
          ...[...labels.values()].map((label) => said(speech, label)),
        ]}
      />
      <tbody>
        {charger.tests.map((test) => (
          <tr key={test.id}>
            <th scope="row">
              <Link to={testPath(test.id)}>{test.title}</Link>
            </th>
            <td>{charger.modes.find((mode) => mode.id === test.mode)?.name ?? test.mode}</td>
            <td>{test.battery}</td>
            <td>{wordFor(marks.statuses, test.status)}</td>
            {[...labels.keys()].map((id) => {
              const figure = test.keyFigures.find((candidate) => candidate.id === id);
              return <td key={id}>{figure === undefined ? words.notMeasured : <KeyFigure test={test} figure={figure} />}</td>;
            })}
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

/** Costs have a section of their own; the table keeps the one that buyers compare. */
const toldUnderCost = ({ id }: Figure) => id.startsWith("cost") && id !== "cost-per-result";

type KeyFigureProps = { readonly test: ChargerResult["tests"][number]; readonly figure: Figure };

/** A figure of a test, leading to the row that tells it in full. */
function KeyFigure({ test, figure }: KeyFigureProps) {
  return (
    <Link to={`${testPath(test.id)}#${figureAnchor(figure)}`}>
      <FigureValue figure={figure} />
    </Link>
  );
}

/** What each test says of money: its figures whose id starts with cost, absent ones with their reason. */
export function CostByTest({ tests }: { tests: ChargerResult["tests"] }) {
  const costs = new Map(
    tests.flatMap((test) =>
      test.keyFigures.filter((figure) => figure.id.startsWith("cost")).map((figure) => [figure.id, figure.label] as const),
    ),
  );
  const { charger: words } = useSite().words;
  if (costs.size === 0) return null;
  return (
    <Table caption={words.costs} class="cards labelled">
      <Columns names={[words.cost, ...tests.map((test) => test.title)]} />
      <tbody>
        {[...costs].map(([id, label]) => (
          <tr key={id}>
            <th scope="row">
              <Said text={label} />
            </th>
            {tests.map((test) => (
              <td key={test.id}>
                <Cost test={test} figure={test.keyFigures.find((figure) => figure.id === id)} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function Cost({ test, figure }: { test: KeyFigureProps["test"]; figure: Figure | undefined }) {
  if (figure === undefined) return <Absent kind="not stated" />;
  return (
    <>
      <KeyFigure test={test} figure={figure} />
      {figure.absent === null ? null : (
        <span class="quiet block">
          <Said text={figure.absent.why} asSentence />
        </span>
      )}
    </>
  );
}

/** The evidence strip and the longest profile of each test. */
export function Evidence({ charger, charts }: { charger: ChargerResult; charts: ChargerCharts }) {
  const { words } = useSite();
  if (charger.tests.length === 0) return <p>{words.charger.noEvidence}</p>;
  return (
    <>
      <StripKey />
      {charger.tests.map((test) => (
        <section key={test.id}>
          <h3>
            <Link to={testPath(test.id)}>{test.title}</Link>
          </h3>
          <EvidenceStripFigure timeline={test.timeline} size="card" />
          <ProfileOfTest drawn={charts.get(test.id)} />
        </section>
      ))}
    </>
  );
}

function ProfileOfTest({ drawn }: { drawn: DrawnProfile | undefined }) {
  const { charger, marks } = useSite().words;
  if (drawn === undefined) return null;
  return (
    <ChartFigure chart={drawn.chart} caption={charger.profile(drawn.recording.id)}>
      {charger.longest} {drawn.recording.stages.map((stage, index) => `${index + 1} ${marks.amid(marks.stages[stage.kind])}`).join(", ")}.{" "}
      {charger.endedBy} <Said text={drawn.recording.ending.words} asSentence />
    </ChartFigure>
  );
}

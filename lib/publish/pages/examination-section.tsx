/** The cross-examination of a battery's witnesses: outcome, witnesses side by side, explanations, and what would settle them. */
import type { Formats } from "../../units/formats.ts";
import type { Chart } from "../charts/index.ts";
import type { ExaminationResult } from "../results.ts";
import { ChartFigure } from "./chart-figure.tsx";
import { Absent } from "./mark.tsx";
import { MethodLink, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";
import { Columns, Table } from "./table.tsx";

type Estimate = ExaminationResult["visits"][number]["stateOfCharge"];
type Props = { readonly examination: ExaminationResult; readonly chart: Chart | undefined };

/** The whole of it for a technician, the two sentences for a buyer first. */
export function ExaminationSection({ examination, chart }: Props) {
  const { examination: words } = useSite().words.test;
  if (!examination.examined)
    return (
      <p>
        {words.notExamined} <Said text={examination.why ?? ""} />.
      </p>
    );
  return (
    <>
      <p class="lead">
        {examination.buyer.map((told, index) => (
          <>
            {index === 0 ? "" : " "}
            <Said text={told} />
          </>
        ))}
      </p>
      <p class="quiet">
        {words.model((how) => (
          <MethodLink method="cross-examination/1">{how}</MethodLink>
        ))}
      </p>
      {chart === undefined ? null : (
        <ChartFigure chart={chart} caption={words.chart}>
          {words.chartNote}
        </ChartFigure>
      )}
      <WitnessTable examination={examination} />
      <CausesTable examination={examination} />
      <BetweenTable examination={examination} />
      <Told title={words.inWords} lines={examination.statements} />
      <ReadingsToTake examination={examination} />
      <Told title={words.cannotShow} lines={examination.unseen} />
      <Told title={words.assumed} lines={examination.assumptions} />
    </>
  );
}

const witnesses = ["density", "rest-voltage", "charge-balance", "cranking"] as const;

function WitnessTable({ examination }: { examination: ExaminationResult }) {
  const { formats, say, words: all } = useSite();
  const { examination: words } = all.test;
  const { witnesses: names } = all.charts;
  return (
    <Table caption={words.sideBySide} class="cards">
      <Columns names={[words.columns.visit, ...witnesses.map((witness) => names[witness]), words.columns.together, words.columns.top]} />
      <tbody>
        {examination.visits.map((visit) => (
          <tr key={visit.visit}>
            <th scope="row">{words.visit(visit.visit)}</th>
            {witnesses.map((witness) => {
              const account = examination.accounts.find((candidate) => candidate.visit === visit.visit && candidate.witness === witness);
              return (
                <td key={witness} data-label={names[witness]} class="number">
                  {account === undefined || account.stateOfCharge === null ? (
                    <Absent kind="cannot tell" why={account?.why ?? null} />
                  ) : (
                    <span title={say(account.why) ?? account.why}>{asPercent(account.stateOfCharge, formats)}</span>
                  )}
                </td>
              );
            })}
            <td data-label={words.columns.together} class="number">
              <strong>{asPercent(visit.stateOfCharge, formats)}</strong>
            </td>
            <td data-label={words.columns.topShort} class="number">
              {visit.topBelowMean === null ? <Absent kind="not applicable" /> : formats.formatAround(visit.topBelowMean, "kg/l", 3)}
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function CausesTable({ examination }: { examination: ExaminationResult }) {
  const { formats, words: all } = useSite();
  const { causes: caption, causeColumns: columns } = all.test.examination;
  return (
    <Table caption={caption} class="cards">
      <Columns names={[columns.explanation, columns.meaning, columns.before, columns.after]} />
      <tbody>
        {examination.causes.map((cause) => (
          <tr key={cause.id}>
            <th scope="row">
              <Said text={cause.label} />
            </th>
            <td class="words">
              <Said text={cause.explain} asSentence />
            </td>
            <td data-label={columns.before} class="number">
              {formats.formatProbability(cause.prior)}
            </td>
            <td data-label={columns.after} class="number">
              {cause.hiddenBecause === null ? (
                formats.formatProbability(cause.probability)
              ) : (
                <Absent kind="cannot tell" why={cause.hiddenBecause} />
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function BetweenTable({ examination }: { examination: ExaminationResult }) {
  const { formats, words: all } = useSite();
  const { examination: words } = all.test;
  const { betweenColumns: columns } = words;
  if (examination.intervals.length === 0) return null;
  return (
    <Table caption={words.between} class="cards">
      <Columns names={[columns.between, columns.taken, columns.unrecorded, columns.gas]} />
      <tbody>
        {examination.intervals.map((interval) => (
          <tr key={interval.fromVisit}>
            <th scope="row">{words.visits(interval.fromVisit, interval.toVisit)}</th>
            <td data-label={columns.taken} class="number">
              {formats.formatAround(interval.takenAh, "Ah", 1)}
            </td>
            <td data-label={columns.unrecorded} class="number">
              {formats.formatAround(interval.unrecordedAh, "Ah", 1)}
            </td>
            <td data-label={columns.gasShort} class="number">
              {interval.gassingShare === null ? (
                <Absent kind="not applicable" because={words.noCharge} />
              ) : (
                asPercent(interval.gassingShare, formats)
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

/** Less than this is hardly worth a visit, bit. */
const worthBits = 0.02;

function ReadingsToTake({ examination }: { examination: ExaminationResult }) {
  const { formats, words: all } = useSite();
  const { examination: words } = all.test;
  const worth = examination.readings.filter((reading) => reading.expectedBits >= worthBits);
  if (worth.length === 0) return <p>{words.noFurther}</p>;
  return (
    <>
      <h3>{all.parts.wouldSettle}</h3>
      <ol>
        {worth.map((reading) => (
          <li key={reading.id}>
            <Said text={reading.label} />: <Said text={reading.why} asSentence />{" "}
            <span class="quiet">{words.bits(formats.formatNumber(reading.expectedBits, 2))}</span>
          </li>
        ))}
      </ol>
    </>
  );
}

function Told({ title, lines }: { title: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <details>
      <summary>{title}</summary>
      <ul>
        {lines.map((line) => (
          <li key={line}>
            <Said text={line} asSentence />
          </li>
        ))}
      </ul>
    </details>
  );
}

/** A witness that errs can say less than nothing, or more than all; what it means is empty, or full. */
function asPercent({ value, low, high }: Estimate, { formatAround }: Formats): string {
  const percent = (share: number): number => 100 * Math.min(1, Math.max(0, share));
  return formatAround({ value: percent(value), low: percent(low), high: percent(high) }, "%", 0);
}

/** The cross-examination of a battery's witnesses: outcome, witnesses side by side, explanations, and what would settle them. */
import { formatAround, formatNumber, formatProbability } from "../../units/format.ts";
import type { Chart } from "../charts/index.ts";
import { witnessLabels } from "../charts/witnesses.ts";
import type { ExaminationResult } from "../results.ts";
import { ChartFigure } from "./chart-figure.tsx";
import { Absent } from "./mark.tsx";
import { sentence } from "./sentence.ts";
import { MethodLink } from "./site-context.tsx";
import { Columns, Table } from "./table.tsx";

type Estimate = ExaminationResult["visits"][number]["stateOfCharge"];
type Props = { readonly examination: ExaminationResult; readonly chart: Chart | undefined };

/** The whole of it for a technician, the two sentences for a buyer first. */
export function ExaminationSection({ examination, chart }: Props) {
  if (!examination.examined) return <p>The readings could not be held against each other: {examination.why}.</p>;
  return (
    <>
      <p class="lead">{examination.buyer.join(" ")}</p>
      <p class="quiet">
        A model weighs all readings together: <MethodLink method="cross-examination/1">how, with every assumption</MethodLink>.
      </p>
      {chart === undefined ? null : (
        <ChartFigure chart={chart} caption="How full the battery was, by each witness alone and by all together">
          Each with its 95 % interval. Where the marks of one visit stand apart, the witnesses disagree, and the explanations below say why.
        </ChartFigure>
      )}
      <WitnessTable examination={examination} />
      <CausesTable examination={examination} />
      <BetweenTable examination={examination} />
      <Told title="In words" lines={examination.statements} />
      <ReadingsToTake examination={examination} />
      <Told title="What these witnesses cannot show" lines={examination.unseen} />
      <Told title="Taken for want of a record" lines={examination.assumptions} />
    </>
  );
}

const witnesses = Object.keys(witnessLabels) as (keyof typeof witnessLabels)[];

function WitnessTable({ examination }: { examination: ExaminationResult }) {
  return (
    <Table caption="The witnesses side by side: how full, %, with 95 % intervals" class="cards">
      <Columns names={["Visit", ...witnesses.map((witness) => witnessLabels[witness]), "All together", "Top of the acid below the mean"]} />
      <tbody>
        {examination.visits.map((visit) => (
          <tr key={visit.visit}>
            <th scope="row">Visit {visit.visit}</th>
            {witnesses.map((witness) => {
              const account = examination.accounts.find((candidate) => candidate.visit === visit.visit && candidate.witness === witness);
              return (
                <td key={witness} data-label={witnessLabels[witness]} class="number">
                  {account === undefined || account.stateOfCharge === null ? (
                    <Absent kind="cannot tell" why={account?.why ?? null} />
                  ) : (
                    <span title={account.why}>{asPercent(account.stateOfCharge)}</span>
                  )}
                </td>
              );
            })}
            <td data-label="All together" class="number">
              <strong>{asPercent(visit.stateOfCharge)}</strong>
            </td>
            <td data-label="Top below mean" class="number">
              {visit.topBelowMean === null ? <Absent kind="not applicable" /> : formatAround(visit.topBelowMean, "kg/l", 3)}
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function CausesTable({ examination }: { examination: ExaminationResult }) {
  return (
    <Table caption="What would explain it" class="cards">
      <Columns names={["Explanation", "What it means", "Before the readings", "After them"]} />
      <tbody>
        {examination.causes.map((cause) => (
          <tr key={cause.id}>
            <th scope="row">{cause.label}</th>
            <td class="words">{sentence(cause.explain)}</td>
            <td data-label="Before the readings" class="number">
              {formatProbability(cause.prior)}
            </td>
            <td data-label="After them" class="number">
              {cause.hiddenBecause === null ? (
                formatProbability(cause.probability)
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
  if (examination.intervals.length === 0) return null;
  return (
    <Table caption="Charge between the visits, with 95 % intervals" class="cards">
      <Columns names={["Between", "The plates took", "Nobody recorded", "Share that went into gas"]} />
      <tbody>
        {examination.intervals.map((interval) => (
          <tr key={interval.fromVisit}>
            <th scope="row">
              Visits {interval.fromVisit} and {interval.toVisit}
            </th>
            <td data-label="The plates took" class="number">
              {formatAround(interval.takenAh, "Ah", 1)}
            </td>
            <td data-label="Nobody recorded" class="number">
              {formatAround(interval.unrecordedAh, "Ah", 1)}
            </td>
            <td data-label="Into gas" class="number">
              {interval.gassingShare === null ? <Absent kind="not applicable" why="no charge passed" /> : asPercent(interval.gassingShare)}
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
  const worth = examination.readings.filter((reading) => reading.expectedBits >= worthBits);
  if (worth.length === 0) return <p>No single further reading would tell the explanations apart any better.</p>;
  return (
    <>
      <h3>What would settle it</h3>
      <ol>
        {worth.map((reading) => (
          <li key={reading.id}>
            {reading.label}: {sentence(reading.why)} <span class="quiet">({formatNumber(reading.expectedBits, 2)} bit expected)</span>
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
          <li key={line}>{sentence(line)}</li>
        ))}
      </ul>
    </details>
  );
}

/** A witness that errs can say less than nothing, or more than all; what it means is empty, or full. */
function asPercent({ value, low, high }: Estimate): string {
  const percent = (share: number): number => 100 * Math.min(1, Math.max(0, share));
  return formatAround({ value: percent(value), low: percent(low), high: percent(high) }, "%", 0);
}

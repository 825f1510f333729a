/** The stages of a recording, each with the numbers and the rule that decided it. */

import { type Stage, stageKinds } from "../../nouns/stage.ts";
import { formatDuration, formatInterval, formatNumber, formatQuantity, withUnit } from "../../units/format.ts";
import { sentence } from "./sentence.ts";
import { Columns, Table } from "./table.tsx";

const limitedBy = {
  charger: "the charger",
  throttle: "the charger, throttling itself",
  battery: "the battery",
  nobody: "nobody",
  unknown: "not known",
} as const;
const secondsPerHour = 3600;

/** Says so where no stage was found: an empty recording is a result too. */
export function StagesTable({ stages, recording }: { stages: readonly Stage[]; recording: string }) {
  if (stages.length === 0) return <p>No stages were found in this recording.</p>;
  return (
    <Table caption={`Stages of ${recording}`} class="stages cards labelled short">
      <Columns names={["Stage", "From", "Lasts", "Voltage", "Current", "Charge, energy", "Current limited by", "Why"]} />
      <tbody>
        {stages.map((stage, index) => (
          <tr key={stage.startS}>
            <th scope="row">
              {index + 1} {stageKinds[stage.kind].label}
              <span class="quiet block">
                {stageKinds[stage.kind].letter === null ? "" : `letter ${stageKinds[stage.kind].letter} · `}
                {stage.confidence}
              </span>
            </th>
            <td>
              {formatDuration(stage.startS / secondsPerHour)}
              <span class="quiet block">
                lines {stage.lines[0]}–{stage.lines[1]}
              </span>
            </td>
            <td>{formatDuration((stage.endS - stage.startS) / secondsPerHour)}</td>
            <td>
              <MeanAndEnds
                mean={stage.voltageMeanV}
                spread={stage.voltageSpreadV}
                start={stage.voltageStartV}
                end={stage.voltageEndV}
                unit="V"
              />
            </td>
            <td>
              <MeanAndEnds
                mean={stage.currentMeanA}
                spread={stage.currentSpreadA}
                start={stage.currentStartA}
                end={stage.currentEndA}
                unit="A"
              />
            </td>
            <td>
              {formatQuantity(stage.chargeAh, "Ah", 2)}
              <span class="quiet block">{formatQuantity(stage.energyWh, "Wh", 1)}</span>
            </td>
            <td>{limitedBy[stage.limitedBy]}</td>
            <td class="words">
              <p>{sentence(stage.why)}</p>
              <Taper stage={stage} />
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

type MeanProps = {
  readonly mean: number | null;
  readonly spread: number | null;
  readonly start: number | null;
  readonly end: number | null;
  readonly unit: string;
};

function MeanAndEnds({ mean, spread, start, end, unit }: MeanProps) {
  if (mean === null) return <>not recorded</>;
  return (
    <>
      {formatQuantity(mean, unit, 2)}
      <span class="quiet block">
        {start === null || end === null ? "" : `${formatNumber(start, 2)} → ${formatNumber(end, 2)}`}
        {spread === null ? "" : `, spread ${formatNumber(spread, 3)}`}
      </span>
    </>
  );
}

function Taper({ stage: { taper, taperRefused } }: { stage: Stage }) {
  if (taper !== null) {
    return (
      <p class="quiet">
        Current falls towards {formatQuantity(taper.levelA, "A", 2)} with a time constant of {withUnit(formatNumber(taper.tauH, 2), "h")} (
        {formatInterval(taper.tauLowH, taper.tauHighH, "h")}); at the end of the stage {formatQuantity(taper.endCurrentA, "A", 2)} flowed,
        and about {formatQuantity(taper.stillToComeAh, "Ah", 1)} above that level were still to come.
      </p>
    );
  }
  return taperRefused === null ? null : <p class="quiet">No time constant: {taperRefused.replace(/\.$/, "")}.</p>;
}

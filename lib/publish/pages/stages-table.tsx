/** The stages of a recording, each with the numbers and the rule that decided it. */

import { type Stage, stageKinds } from "../../nouns/stage.ts";
import { withUnit } from "../../units/format.ts";
import { useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";
import { Columns, Table } from "./table.tsx";

const secondsPerHour = 3600;

/** Says so where no stage was found: an empty recording is a result too. */
export function StagesTable({ stages, recording }: { stages: readonly Stage[]; recording: string }) {
  const { formats, words: all } = useSite();
  const { marks, parts } = all;
  const { stages: words } = all.test;
  const { columns } = words;
  if (stages.length === 0) return <p>{words.none}</p>;
  return (
    <Table caption={words.caption(recording)} class="stages cards labelled short">
      <Columns
        names={[
          columns.stage,
          columns.from,
          columns.lasts,
          columns.voltage,
          columns.current,
          columns.charge,
          columns.limitedBy,
          columns.why,
        ]}
      />
      <tbody>
        {stages.map((stage, index) => (
          <tr key={stage.startS}>
            <th scope="row">
              {index + 1} {marks.stages[stage.kind]}
              <span class="quiet block">
                {letterOf(stage) === null ? "" : words.letter(letterOf(stage) ?? "")}
                {marks.confidences[stage.confidence]}
              </span>
            </th>
            <td>
              {formats.formatDuration(stage.startS / secondsPerHour)}
              <span class="quiet block">{parts.evidence.lines(stage.lines[0], stage.lines[1])}</span>
            </td>
            <td>{formats.formatDuration((stage.endS - stage.startS) / secondsPerHour)}</td>
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
              {formats.formatQuantity(stage.chargeAh, "Ah", 2)}
              <span class="quiet block">{formats.formatQuantity(stage.energyWh, "Wh", 1)}</span>
            </td>
            <td>{marks.limiters[stage.limitedBy]}</td>
            <td class="words">
              <p>
                <Said text={stage.why} asSentence />
              </p>
              <Taper stage={stage} />
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

const letterOf = ({ kind }: Stage): string | null => stageKinds[kind].letter;

type MeanProps = {
  readonly mean: number | null;
  readonly spread: number | null;
  readonly start: number | null;
  readonly end: number | null;
  readonly unit: string;
};

function MeanAndEnds({ mean, spread, start, end, unit }: MeanProps) {
  const { formats, words } = useSite();
  const { formatNumber, formatQuantity } = formats;
  if (mean === null) return <>{words.marks.absences["not recorded"]}</>;
  return (
    <>
      {formatQuantity(mean, unit, 2)}
      <span class="quiet block">
        {start === null || end === null ? "" : `${formatNumber(start, 2)} → ${formatNumber(end, 2)}`}
        {spread === null ? "" : words.test.stages.spread(formatNumber(spread, 3))}
      </span>
    </>
  );
}

function Taper({ stage: { taper, taperRefused } }: { stage: Stage }) {
  const { formats, words } = useSite();
  const { formatInterval, formatNumber, formatQuantity } = formats;
  const { taper: told, noTaper } = words.test.stages;
  if (taper !== null) {
    return (
      <p class="quiet">
        {told(
          formatQuantity(taper.levelA, "A", 2),
          withUnit(formatNumber(taper.tauH, 2), "h"),
          formatInterval(taper.tauLowH, taper.tauHighH, "h"),
          formatQuantity(taper.endCurrentA, "A", 2),
          formatQuantity(taper.stillToComeAh, "Ah", 1),
        )}
      </p>
    );
  }
  return taperRefused === null ? null : (
    <p class="quiet">
      {noTaper} <Said text={taperRefused.replace(/\.$/, "")} />.
    </p>
  );
}

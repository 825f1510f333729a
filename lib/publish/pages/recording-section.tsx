/** One recording: what it shows, how it ended, what it adds up to, and how its file was read. */

import { formatBytes, formatDuration, formatInstant, formatNumber } from "../../units/format.ts";
import type { Chart } from "../charts/index.ts";
import { addressPart, logSamplesPath } from "../links.ts";
import type { RecordingResult } from "../results.ts";
import { ChartFigure } from "./chart-figure.tsx";
import { Doubts } from "./doubts.tsx";
import { type FindDownload, ShortHash } from "./evidence-list.tsx";
import { FiguresTable } from "./figures-table.tsx";
import { Mark } from "./mark.tsx";
import { sentence } from "./sentence.ts";
import { Link, useSite } from "./site-context.tsx";
import { StagesTable } from "./stages-table.tsx";

export const recordingAnchor = (id: string) => `recording-${addressPart(id)}`;

/** How an ending is marked: only the charger's own ending is a finish. */
const endingMark = { charger: "good", recorder: "caution", person: "note", mains: "note", unknown: "unsure" } as const;

type Props = { readonly test: string; readonly recording: RecordingResult; readonly chart: Chart | undefined; readonly find: FindDownload };

export function RecordingSection({ test, recording, chart, find }: Props) {
  const { linkTo } = useSite();
  return (
    <section class="recording">
      <h3 id={recordingAnchor(recording.id)}>{recording.id}</h3>
      <p>
        {formatInstant(recording.start)} to {formatInstant(recording.end)} · <Link to={recording.download}>raw file</Link>,{" "}
        {formatBytes(recording.bytes)}, <ShortHash sha256={recording.sha256} />
      </p>
      <p>
        {recording.characteristic.letters === null ? null : <span class="letters">{recording.characteristic.letters} </span>}
        {sentence(recording.characteristic.words)}
        {recording.characteristic.complete ? "" : " The recording ended before the charger did, so the letters may go on."}
      </p>
      <Ending ending={recording.ending} />
      {chart === undefined ? (
        <p>There are no samples to draw.</p>
      ) : (
        <ChartFigure chart={chart} caption={`Charge profile, ${recording.id}`}>
          Numbers and shading are the stages of the table below
          {recording.gaps.length === 0 ? "" : "; dotted boxes are gaps in the log, never bridged"}.{" "}
          {sentence(`Drawn: ${recording.profile.thinned}`)}
        </ChartFigure>
      )}
      {chart === undefined ? null : (
        <div
          class="explore"
          hidden
          data-explore={linkTo(logSamplesPath(test, recording.id)).replace(/index\.html$/, "")}
          data-script={linkTo("assets/explore.js")}
          data-name={recording.id}
          data-pagefind-ignore
        />
      )}
      <Gaps gaps={recording.gaps} />
      <StagesTable stages={recording.stages} recording={recording.id} />
      <FiguresTable caption={`Figures of ${recording.id}`} figures={recording.figures} find={find} />
      <Doubts doubts={recording.doubts} />
      <ReadAs recording={recording} />
    </section>
  );
}

function Ending({ ending }: { ending: RecordingResult["ending"] }) {
  return (
    <div class="ending">
      <p>
        <Mark kind={endingMark[ending.by]}>
          <strong>Recording ended by:</strong> {sentence(ending.words)}
          {ending.by === "charger" ? "" : " Its end is not the end of the charge."}
        </Mark>
      </p>
      {ending.why.length === 0 ? null : (
        <ul>
          {ending.why.map((reason) => (
            <li key={reason}>{sentence(reason)}</li>
          ))}
        </ul>
      )}
      {ending.wouldSettle === null ? null : (
        <p class="settle">
          <span class="label">What would settle it</span> {sentence(ending.wouldSettle)}
        </p>
      )}
    </div>
  );
}

function Gaps({ gaps }: { gaps: RecordingResult["gaps"] }) {
  if (gaps.length === 0) return null;
  return (
    <p>
      Gaps in the log:{" "}
      {gaps
        .map(
          (gap) =>
            `${formatDuration((gap.endS - gap.startS) / 3600)} from ${formatDuration(gap.startS / 3600)} (lines ${gap.lines[0]}–${gap.lines[1]})`,
        )
        .join("; ")}
      .
    </p>
  );
}

function ReadAs({ recording: { readAs, sampleRead, rows } }: { recording: RecordingResult }) {
  return (
    <details data-pagefind-ignore>
      <summary>How this file was read</summary>
      <p>
        {formatNumber(rows.lines, 0)} lines: {formatNumber(rows.samples, 0)} samples, {rows.blank} blank, {rows.excluded} excluded,{" "}
        {rows.empty} without values.
      </p>
      <ul>
        {readAs.map((choice) => (
          <li key={choice.what}>
            {choice.what}: {choice.value} <span class="quiet">({choice.from})</span>
          </li>
        ))}
      </ul>
      {sampleRead === null ? null : <p>Read back: {sampleRead}</p>}
    </details>
  );
}

/** One recording: what it shows, how it ended, what it adds up to, and how its file was read. */

import { scriptPath } from "../assets.ts";
import type { Chart } from "../charts/index.ts";
import { addressPart, logSamplesPath } from "../links.ts";
import type { RecordingResult } from "../results.ts";
import { ChartFigure } from "./chart-figure.tsx";
import { Doubts } from "./doubts.tsx";
import { type FindDownload, ShortHash } from "./evidence-list.tsx";
import { FiguresTable } from "./figures-table.tsx";
import { Mark } from "./mark.tsx";
import { Link, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";
import { StagesTable } from "./stages-table.tsx";

export const recordingAnchor = (id: string) => `recording-${addressPart(id)}`;

/** How an ending is marked: only the charger's own ending is a finish. */
const endingMark = { charger: "good", recorder: "caution", person: "note", mains: "note", unknown: "unsure" } as const;

type Props = { readonly test: string; readonly recording: RecordingResult; readonly chart: Chart | undefined; readonly find: FindDownload };

export function RecordingSection({ test, recording, chart, find }: Props) {
  const { formats, language, linkTo, root, words: all } = useSite();
  const { recording: words } = all.test;
  return (
    <section class="recording">
      <h3 id={recordingAnchor(recording.id)}>{recording.id}</h3>
      <p>
        {words.fromTo(formats.formatInstant(recording.start), formats.formatInstant(recording.end))} ·{" "}
        <Link to={recording.download}>{words.rawFile}</Link>, {formats.formatBytes(recording.bytes)},{" "}
        <ShortHash sha256={recording.sha256} />
      </p>
      <p>
        {recording.characteristic.letters === null ? null : <span class="letters">{recording.characteristic.letters} </span>}
        <Said text={recording.characteristic.words} asSentence />
        {recording.characteristic.complete || recording.characteristic.letters === null ? "" : ` ${words.lettersMayGoOn}`}
      </p>
      <Ending ending={recording.ending} />
      {chart === undefined ? (
        <p>{words.noSamples}</p>
      ) : (
        <ChartFigure chart={chart} caption={all.charger.profile(recording.id)}>
          {words.numbers}
          {recording.gaps.length === 0 ? "" : words.gapsDrawn}. {words.drawn} <Said text={recording.profile.thinned} />.
        </ChartFigure>
      )}
      {chart === undefined ? null : (
        <div
          class="explore"
          hidden
          data-explore={root + logSamplesPath(test, recording.id).split("/").map(encodeURIComponent).join("/")}
          data-script={linkTo(scriptPath("explore", language))}
          data-name={recording.id}
          data-pagefind-ignore
        />
      )}
      <Gaps gaps={recording.gaps} />
      <StagesTable stages={recording.stages} recording={recording.id} />
      <FiguresTable caption={words.figures(recording.id)} figures={recording.figures} find={find} />
      <Doubts doubts={recording.doubts} />
      <ReadAs recording={recording} />
    </section>
  );
}

function Ending({ ending }: { ending: RecordingResult["ending"] }) {
  const { parts, test } = useSite().words;
  return (
    <div class="ending">
      <p>
        <Mark kind={endingMark[ending.by]}>
          <strong>{test.recording.endedBy}</strong> <Said text={ending.words} asSentence />
          {ending.by === "charger" ? "" : ` ${test.recording.notTheEnd}`}
        </Mark>
      </p>
      {ending.why.length === 0 ? null : (
        <ul>
          {ending.why.map((reason) => (
            <li key={reason}>
              <Said text={reason} asSentence />
            </li>
          ))}
        </ul>
      )}
      {ending.wouldSettle === null ? null : (
        <p class="settle">
          <span class="label">{parts.wouldSettle}</span> <Said text={ending.wouldSettle} asSentence />
        </p>
      )}
    </div>
  );
}

function Gaps({ gaps }: { gaps: RecordingResult["gaps"] }) {
  const { formats, words: all } = useSite();
  const { recording: words } = all.test;
  if (gaps.length === 0) return null;
  return (
    <p>
      {words.gaps}{" "}
      {gaps
        .map((gap) =>
          words.gap(
            formats.formatDuration((gap.endS - gap.startS) / 3600),
            formats.formatDuration(gap.startS / 3600),
            gap.lines[0],
            gap.lines[1],
          ),
        )
        .join("; ")}
      .
    </p>
  );
}

function ReadAs({ recording: { readAs, sampleRead, rows } }: { recording: RecordingResult }) {
  const { formats, words: all } = useSite();
  const { recording: words } = all.test;
  return (
    <details data-pagefind-ignore>
      <summary>{words.readAs}</summary>
      <p>{words.rows(formats.formatNumber(rows.lines, 0), formats.formatNumber(rows.samples, 0), rows.blank, rows.excluded, rows.empty)}</p>
      <ul>
        {readAs.map((choice) => (
          <li key={choice.what}>
            <Said text={choice.what} />: {choice.value}{" "}
            <span class="quiet">
              (<Said text={choice.from} />)
            </span>
          </li>
        ))}
      </ul>
      {sampleRead === null ? null : (
        <p>
          {words.readBack} <Said text={sampleRead} />
        </p>
      )}
    </details>
  );
}

import { toFigure } from "../../measure/define.ts";
import { recordingFigures } from "../../measure/figures/index.ts";
import type { Ending, MeasuredRecording } from "../../measure/recording.ts";
import type { TestContext } from "../../measure/test-context.ts";
import type { Problem } from "../../nouns/problem.ts";
import type { Stage } from "../../nouns/stage.ts";
import { formatInstant } from "../../read/clock.ts";
import { thinned } from "../../signal/thin.ts";
import type { ComparisonRow, RecordingResult } from "../results.ts";
import { publishedDoubts } from "./doubts.ts";

/** Buckets of a page's profile chart: about two a pixel, at up to four points each. */
const profileBuckets = 150;
/** Points of the small profile in a row. */
const rowBuckets = 14;

/** Address of a raw file, from the site's root. */
export function rawAddress(file: string): string {
  return `raw/${file}`;
}

/** The published form of a recording. */
export function assembleRecording(
  context: TestContext,
  recording: MeasuredRecording,
  ending: Ending,
  problems: readonly Problem[],
): RecordingResult {
  const { trace, startMs } = recording;
  const { zone } = context.test;
  return {
    id: recording.id,
    file: recording.file,
    download: rawAddress(recording.file),
    sha256: recording.sha256,
    bytes: recording.bytes,
    connection: recording.connection,
    recorder: recording.recorderId ?? null,
    start: startMs === undefined ? null : formatInstant(startMs, zone),
    end: startMs === undefined ? null : formatInstant(startMs + trace.spanS * 1000, zone),
    rows: recording.counts,
    readAs: recording.readAs.map((choice) => ({ ...choice })),
    sampleRead: recording.sampleRead ?? null,
    figures: recordingFigures(context.rules).map((definition) =>
      toFigure(definition, `recording/${recording.id}`, recording, context.rules.coverageFactor),
    ),
    stages: recording.stages.map((stage) => ({ ...stage })),
    characteristic: { ...recording.characteristic, complete: ending.by === "charger" },
    ending: { by: ending.by, words: ending.words, why: [...ending.why], wouldSettle: ending.wouldSettle },
    gaps: trace.gaps.map((gap) => ({ startS: gap.startS, endS: gap.endS, lines: [...gap.lines] as [number, number] })),
    limits: limitsOf(recording.stages),
    profile: {
      ...profileOf(recording, profileBuckets),
      thinned: "lowest and highest sample of voltage and current in each of 150 equal stretches; no averages",
    },
    doubts: publishedDoubts(problems.filter((problem) => problem.place.file === recording.file)),
  };
}

function limitsOf(stages: readonly Stage[]): RecordingResult["limits"] {
  const limits: RecordingResult["limits"] = [];
  for (const stage of stages) {
    const last = limits.at(-1);
    if (last !== undefined && last.by === stage.limitedBy) last.endS = stage.endS;
    else limits.push({ startS: stage.startS, endS: stage.endS, by: stage.limitedBy });
  }
  return limits;
}

/** A recording's profile for a comparison row: few points. */
export function smallProfile(recording: MeasuredRecording): NonNullable<ComparisonRow["profile"]> {
  return profileOf(recording, rowBuckets);
}

function profileOf(
  { trace }: MeasuredRecording,
  buckets: number,
): { elapsedH: number[]; voltageV: (number | null)[]; currentA: (number | null)[] } {
  const channels = [...(trace.hasVoltage ? [trace.voltagesV] : []), ...(trace.hasCurrent ? [trace.currentsA] : [])];
  const picked = new Set(thinned(trace.elapsedS, channels, buckets));
  // Both edges of a gap are drawn, with a break between them, so that no line bridges it.
  const breaks = new Set<number>();
  for (const [from, to] of trace.stretches.slice(0, trace.gaps.length)) {
    picked.add(from).add(to - 1);
    if (to < trace.elapsedS.length) picked.add(to);
    breaks.add(to - 1);
  }
  const profile = { elapsedH: [] as number[], voltageV: [] as (number | null)[], currentA: [] as (number | null)[] };
  const round = (value: number, digits: number): number => Number(value.toFixed(digits));
  for (const i of [...picked].sort((a, b) => a - b)) {
    const hours = (trace.elapsedS[i] as number) / 3600;
    profile.elapsedH.push(round(hours, 5));
    profile.voltageV.push(trace.hasVoltage ? round(trace.voltagesV[i] as number, 4) : null);
    profile.currentA.push(trace.hasCurrent ? round(trace.currentsA[i] as number, 4) : null);
    if (!breaks.has(i)) continue;
    profile.elapsedH.push(round(hours, 5));
    profile.voltageV.push(null);
    profile.currentA.push(null);
  }
  return profile;
}

/** The charge profile: voltage above, current below, over the time of one recording; stages shaded, gaps marked. */
import type { TopLevelSpec } from "vega-lite";
import type { RecordingResult } from "../results.ts";
import type { ChartSpeech } from "./chart-speech.ts";
import { colour } from "./palette.ts";

const secondsPerHour = 3600;
const width = 660;

/** A stage narrower than this share of the drawing gets no letter: it would run into its neighbour's. */
const narrowestLabelled = 0.035;

/** The specification; undefined where the recording has no samples to draw. */
export function profileSpec(recording: RecordingResult, { charts }: ChartSpeech): TopLevelSpec | undefined {
  const { profile } = recording;
  const sampledH = profile.elapsedH.at(-1) ?? 0;
  const spanH = Math.max(sampledH, (recording.stages.at(-1)?.endS ?? 0) / secondsPerHour);
  const hasVoltage = profile.voltageV.some((value) => value !== null);
  const hasCurrent = profile.currentA.some((value) => value !== null);
  if (sampledH <= 0 || (!hasVoltage && !hasCurrent)) return undefined;

  const samples = profile.elapsedH.map((hour, index) => ({
    hour,
    voltage: profile.voltageV[index] ?? null,
    current: profile.currentA[index] ?? null,
  }));
  const bands = recording.stages.map((stage, index) => ({
    from: stage.startS / secondsPerHour,
    to: stage.endS / secondsPerHour,
    shade: index % 2,
    number: (stage.endS - stage.startS) / secondsPerHour / spanH < narrowestLabelled ? "" : String(index + 1),
  }));
  const gaps = recording.gaps.map((gap) => ({ from: gap.startS / secondsPerHour, to: gap.endS / secondsPerHour }));

  const x = (field: string, labelled = false) => ({
    field,
    type: "quantitative" as const,
    scale: { domain: [0, spanH], nice: false },
    axis: { grid: false, tickCount: 8, labels: labelled, title: labelled ? charts.hoursFromFirstRow : null },
  });

  const stageRibbon = {
    width,
    height: 20,
    data: { values: bands },
    layer: [
      {
        mark: { type: "rect", stroke: colour.quiet, strokeWidth: 0.8 },
        encoding: {
          x: { ...x("from"), axis: null },
          x2: { field: "to" },
          color: { field: "shade", type: "nominal", scale: { domain: [0, 1], range: [colour.band, colour.sheet] }, legend: null },
        },
      },
      {
        transform: [{ calculate: "(datum.from + datum.to) / 2", as: "middle" }],
        mark: { type: "text", color: colour.ink, fontSize: 13, fontWeight: 600 },
        encoding: { x: { ...x("middle"), axis: null }, text: { field: "number", type: "nominal" } },
      },
    ],
  };

  const panel = (field: "voltage" | "current", title: string, options: { height: number; last: boolean; zero: boolean }) => ({
    width,
    height: options.height,
    layer: [
      {
        data: { values: bands },
        transform: [{ filter: "datum.shade === 0" }],
        mark: { type: "rect", color: colour.band },
        encoding: { x: x("from", options.last), x2: { field: "to" } },
      },
      {
        data: { values: gaps },
        mark: { type: "rect", color: colour.gap, stroke: colour.quiet, strokeDash: [2, 2], strokeWidth: 1 },
        encoding: { x: x("from", options.last), x2: { field: "to" } },
      },
      {
        data: { values: samples },
        mark: { type: "line", color: colour[field], strokeWidth: 1.8 },
        encoding: {
          x: x("hour", options.last),
          y: {
            field,
            type: "quantitative",
            title,
            scale: { zero: options.zero },
            axis: { ...titleAbove, titleColor: colour[field], tickCount: 5 },
          },
        },
      },
    ],
  });

  return {
    $schema: "https://vega.github.io/schema/vega-lite/v6.json",
    spacing: 30,
    padding: { left: 8, right: 22, top: 6, bottom: 6 },
    resolve: { scale: { x: "shared" } },
    vconcat: [
      ...(bands.length === 0 ? [] : [stageRibbon]),
      ...(hasVoltage ? [panel("voltage", charts.voltageAxis, { height: 170, last: !hasCurrent, zero: false })] : []),
      ...(hasCurrent ? [panel("current", charts.currentAxis, { height: 130, last: true, zero: true })] : []),
    ],
  } as TopLevelSpec;
}

/** An axis title that stands flat above its axis, where it can be read without turning the head. */
const titleAbove = { titleAngle: 0, titleAlign: "left", titleAnchor: "end", titleY: -12, titleX: -36 };

/** What the drawing shows, in one sentence, from the same results. */
export function profileSentence(recording: RecordingResult, { charts, formats, marks, say }: ChartSpeech): string {
  const stages = recording.stages.map((stage, index) =>
    charts.stageFor(index + 1, marks.amid(marks.stages[stage.kind]), formats.formatDuration((stage.endS - stage.startS) / secondsPerHour)),
  );
  return charts.profileSentence(recording.id, stages, recording.gaps.length, say(recording.ending.words) ?? recording.ending.words);
}

/** How full the battery was at each visit, by each of its four witnesses alone and by all of them together. */
import type { TopLevelSpec } from "vega-lite";
import type { ExaminationResult } from "../results.ts";
import type { ChartSpeech } from "./chart-speech.ts";
import { colour } from "./palette.ts";

/** Shapes tell the witnesses apart where colours do not. */
const shapes = ["diamond", "circle", "square", "triangle-up", "stroke"];
const colours = [colour.density, colour.voltage, colour.current, colour.quiet, colour.ink];

/** The specification; undefined where nothing was examined. */
export function witnessesSpec(examination: ExaminationResult, { charts }: ChartSpeech): TopLevelSpec | undefined {
  if (!examination.examined || examination.visits.length === 0) return undefined;
  const { together, visit: visitWords, witnesses } = charts;
  const order = [...Object.values(witnesses), together];
  const alone = examination.accounts.flatMap(({ witness, visit, stateOfCharge }) =>
    stateOfCharge === null ? [] : [{ visit: visitWords(visit), who: witnesses[witness], ...percent(stateOfCharge) }],
  );
  const all = examination.visits.map(({ visit, stateOfCharge }) => ({
    visit: visitWords(visit),
    who: together,
    ...percent(stateOfCharge),
  }));
  const x = { field: "visit", type: "nominal" as const, title: null, sort: null, axis: { labelAngle: 0, ticks: false } };
  const y = {
    field: "value",
    type: "quantitative" as const,
    title: null,
    scale: { domain: [0, 100], clamp: true },
    axis: { tickCount: 6, labelExpr: "datum.label + ' %'" },
  };
  const xOffset = { field: "who", type: "nominal" as const, sort: order, scale: { domain: order } };
  const legend = { title: null, orient: "top" as const, symbolSize: 80, columnPadding: 18, labelColor: colour.ink, labelFontSize: 12 };
  const who = { field: "who", type: "nominal" as const, scale: { domain: order, range: colours }, legend };
  return {
    $schema: "https://vega.github.io/schema/vega-lite/v6.json",
    width: 660,
    height: 220,
    padding: { left: 8, right: 22, top: 6, bottom: 6 },
    data: { values: [...alone, ...all] },
    layer: [
      { mark: { type: "rule", strokeWidth: 1.6 }, encoding: { x, xOffset, y: { ...y, field: "low" }, y2: { field: "high" }, color: who } },
      {
        mark: { type: "point", filled: true, size: 60, opacity: 1 },
        encoding: {
          x,
          xOffset,
          y,
          color: who,
          shape: { field: "who", type: "nominal", scale: { domain: order, range: shapes }, legend },
        },
      },
    ],
  } as TopLevelSpec;
}

function percent({ value, low, high }: { value: number; low: number; high: number }): { value: number; low: number; high: number } {
  return { value: 100 * value, low: 100 * low, high: 100 * high };
}

/** What the drawing shows, in one sentence. */
export function witnessesSentence(examination: ExaminationResult, { charts, formats }: ChartSpeech): string {
  const last = examination.visits.at(-1);
  if (last === undefined) return charts.nothingExamined;
  const { low, high } = percent(last.stateOfCharge);
  return charts.witnessesSentence(examination.visits.length, formats.formatNumber(low, 0), formats.formatNumber(high, 0));
}

/** How full the battery was at each visit, by each of its four witnesses alone and by all of them together. */
import type { TopLevelSpec } from "vega-lite";
import type { ExaminationResult } from "../results.ts";
import { colour } from "./palette.ts";

export const witnessLabels = {
  density: "Density",
  "rest-voltage": "Rest voltage",
  "charge-balance": "Charge balance",
  cranking: "Cranking current",
} as const;

const together = "All together";
const order = [...Object.values(witnessLabels), together];

/** Shapes tell the witnesses apart where colours do not. */
const shapes = ["diamond", "circle", "square", "triangle-up", "stroke"];
const colours = [colour.density, colour.voltage, colour.current, colour.quiet, colour.ink];

/** The specification; undefined where nothing was examined. */
export function witnessesSpec(examination: ExaminationResult): TopLevelSpec | undefined {
  if (!examination.examined || examination.visits.length === 0) return undefined;
  const alone = examination.accounts.flatMap(({ witness, visit, stateOfCharge }) =>
    stateOfCharge === null ? [] : [{ visit: `visit ${visit}`, who: witnessLabels[witness] as string, ...percent(stateOfCharge) }],
  );
  const all = examination.visits.map(({ visit, stateOfCharge }) => ({ visit: `visit ${visit}`, who: together, ...percent(stateOfCharge) }));
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
export function witnessesSentence(examination: ExaminationResult): string {
  const last = examination.visits.at(-1);
  if (last === undefined) return "Nothing was examined.";
  const { low, high } = percent(last.stateOfCharge);
  return `How full the battery was at ${examination.visits.length} visits, by each witness and by all together; at the last, all together say ${low.toFixed(0)} to ${high.toFixed(0)} %.`;
}

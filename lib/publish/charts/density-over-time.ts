/** Acid density, brought to 25 °C, at each visit, against the target. */
import type { TopLevelSpec } from "vega-lite";
import type { Figure } from "../../nouns/figure.ts";
import type { TestResult } from "../results.ts";
import type { ChartSpeech } from "./chart-speech.ts";
import { colour } from "./palette.ts";

/** One value of the chart: when, and the figure read. */
type Point = { readonly hour: number; readonly figure: Figure & { value: number } };

/** A density brought to 25 °C is told by its unit and by the 25 in its id, whatever cell it is of. */
const isDensityAt25C = (figure: Figure): figure is Figure & { value: number } =>
  figure.unit === "kg/l" && /25/.test(figure.id) && figure.value !== null;

/** The points of each series (one for each figure id), in the order of the readings. */
export function densitySeries(test: TestResult): Map<string, Point[]> {
  const series = new Map<string, Point[]>();
  for (const reading of test.readings) {
    for (const figure of reading.figures.filter(isDensityAt25C)) {
      series.set(figure.id, [...(series.get(figure.id) ?? []), { hour: reading.atH, figure }]);
    }
  }
  return series;
}

/** The specification; undefined where no density was read. */
export function densitySpec(test: TestResult, { charts, formats }: ChartSpeech): TopLevelSpec | undefined {
  const series = densitySeries(test);
  const points = [...series].flatMap(([name, values]) =>
    values.map(({ hour, figure }) => ({
      name,
      hour,
      density: figure.value,
      low: figure.low ?? figure.value,
      high: figure.high ?? figure.value,
    })),
  );
  if (points.length === 0) return undefined;
  const target =
    test.target === null
      ? []
      : [{ density: test.target.densityAt25C, label: charts.target(formats.formatStated(test.target.densityAt25C, "")) }];
  const x = {
    field: "hour",
    type: "quantitative" as const,
    title: charts.hoursFromFirstEvent,
    scale: { zero: true },
    axis: { grid: false },
  };
  const y = {
    field: "density",
    type: "quantitative" as const,
    title: charts.densityAxis,
    scale: { zero: false },
    axis: {
      format: ".2f",
      tickCount: 6,
      titleAngle: 0,
      titleAlign: "left" as const,
      titleAnchor: "end" as const,
      titleY: -12,
      titleX: -40,
    },
  };
  return {
    $schema: "https://vega.github.io/schema/vega-lite/v6.json",
    width: 660,
    height: 220,
    padding: { left: 8, right: 22, top: 6, bottom: 6 },
    data: { values: points },
    layer: [
      { data: { values: target }, mark: { type: "rule", color: colour.ink, strokeDash: [6, 4], strokeWidth: 1.5 }, encoding: { y } },
      {
        data: { values: target },
        mark: { type: "text", align: "left", baseline: "top", dx: 6, dy: 5, color: colour.ink, fontSize: 13 },
        encoding: { x: { value: 0 }, y, text: { field: "label", type: "nominal" } },
      },
      {
        mark: { type: "rule", color: colour.density, strokeWidth: 1.5 },
        encoding: { x, y: { ...y, field: "low" }, y2: { field: "high" } },
      },
      {
        mark: { type: "line", color: colour.density, strokeWidth: 1.2, strokeDash: [2, 3] },
        encoding: { x, y, detail: { field: "name" } },
      },
      { mark: { type: "point", filled: true, shape: "diamond", size: 80, opacity: 1, color: colour.density }, encoding: { x, y } },
    ],
  } as TopLevelSpec;
}

/** What the drawing shows, in one sentence: the first and the last density, and the target. */
export function densitySentence(test: TestResult, { charts, formats, say }: ChartSpeech): string {
  const { formatDuration, formatFigure, formatStated } = formats;
  const ends = [...densitySeries(test).values()].flatMap((points) => {
    const first = points[0];
    const last = points.at(-1);
    if (first === undefined || last === undefined) return [];
    return [
      charts.densityEnds(
        say(first.figure.label) ?? first.figure.label,
        formatFigure(first.figure),
        formatDuration(first.hour),
        formatFigure(last.figure),
        formatDuration(last.hour),
      ),
    ];
  });
  return charts.densitySentence(ends, test.target === null ? null : formatStated(test.target.densityAt25C, ""));
}

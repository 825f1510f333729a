/** All figures of a test as a table, one figure a row. */
import type { Figure } from "../../nouns/figure.ts";
import { figuresOfTest } from "../figure-finder.ts";
import type { SiteIndex, TestResult } from "../results.ts";
import { type Cell, writeCsv } from "./csv.ts";

export const figureHeadings = [
  "of",
  "id",
  "label",
  "value",
  "unit",
  "low",
  "high",
  "basis",
  "method",
  "absent",
  "absent_why",
  "doubts",
  "evidence",
] as const;

/** The cells of one figure, in the order of the headings. */
export function figureCells(figure: Figure): Cell[] {
  return [
    figure.of,
    figure.id,
    figure.label,
    figure.value,
    figure.unit,
    figure.low,
    figure.high,
    figure.basis,
    figure.method,
    figure.absent?.kind ?? null,
    figure.absent?.why ?? null,
    figure.doubts.join("; "),
    figure.evidence.map(({ file, lines, sha256 }) => `${file}${lines ? `:${lines[0]}-${lines[1]}` : ""} sha256:${sha256}`).join("; "),
  ];
}

/** data/tests/<id>.figures.csv */
export function figuresCsv(test: TestResult): string {
  return writeCsv([[...figureHeadings], ...figuresOfTest(test).map(figureCells)]);
}

/** data/comparison.csv: the figures of every row of the comparison, with the charger, mode, test and battery that they belong to. */
export function comparisonCsv(index: SiteIndex): string {
  const headings = ["charger", "mode", "test", "battery", "status", "verdict", "characteristic"];
  const rows = index.rows.flatMap((row) =>
    row.figures.map((figure) => [
      row.charger.name,
      row.mode.name,
      row.test.id,
      row.battery.name,
      row.status,
      row.verdict.sentence,
      row.characteristic,
      ...figureCells(figure),
    ]),
  );
  return writeCsv([[...headings, ...figureHeadings], ...rows]);
}

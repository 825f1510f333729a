/** The values of one visit: as read, and the density brought to 25 °C. */
import type { Figure } from "../../nouns/figure.ts";
import { type ReadingColumn, readingColumns } from "../../nouns/reading.ts";
import { standardUncertaintyOf } from "../../units/uncertainty.ts";
import { type FigureDefinition, notMeasured, toFigure } from "../define.ts";
import { densityColumns, evidenceOfCell, isSealed, type MeasuredReading, type TestContext } from "../test-context.ts";
import type { Visit } from "../visit.ts";
import { densityByRestVoltage } from "./density-by-rest-voltage.ts";
import { freezingPoint } from "./freezing-point.ts";

export const densityAtVisit: FigureDefinition<Visit> = {
  id: "density-at-25c",
  label: "Density at 25 °C, mean of cells",
  unit: "kg/l",
  version: 1,
  explain:
    "What the hydrometer showed, brought to density in kg/l at 25 °C through the acid's own strength, from the scale's convention and the acid's temperature.",
  formula: "w(ρ, ϑ) → ρ(w, 25 °C)",
  source: "Myhre, Nielsen and Saastad, J. Chem. Eng. Data 43 (1998) 617.",
  checkedBy: ["Density tables of five sources", "W032, W033 and W040 to W043"],
  compute: ({ context, reading }) => {
    if (isSealed(context.battery)) return notMeasured("not applicable", "the battery is sealed, so its density cannot be read");
    if (reading.density === undefined) return notMeasured("not measured", "density was not read at this visit");
    const { meanAt25C, standardUncertainty, evidence, doubts } = reading.density;
    return { value: meanAt25C, standardUncertainty, evidence, doubts };
  },
};

export const densitySpread: FigureDefinition<Visit> = {
  id: "density-spread",
  label: "Spread between cells",
  unit: "kg/l",
  version: 1,
  explain: "Highest cell less lowest. Above about 0.04 to 0.05 kg/l the battery itself is suspect.",
  formula: "ρ_max − ρ_min; u = step/√6, two roundings of step/√12 each",
  source: "Vehicle service manuals reject at 0.040 to 0.050; a military manual at 0.025 (common practice).",
  checkedBy: ["Small invented test records"],
  compute: ({ context, reading }) => {
    const cells = reading.density?.cells ?? [];
    if (cells.length < 2) return notMeasured("not measured", "fewer than two cells were read");
    const values = cells.map((cell) => cell.at25C);
    // One hydrometer read both cells, so its error falls out of the difference; the rounding of two readings does not.
    const stepKgPerL = context.instruments.hydrometer?.measures?.density?.resolution;
    return {
      value: Math.max(...values) - Math.min(...values),
      standardUncertainty: stepKgPerL === undefined ? undefined : stepKgPerL / Math.sqrt(6),
      evidence: cells.map((cell) => cell.evidence),
      doubts: stepKgPerL === undefined ? ["the hydrometer's step is not stated, so no interval is given"] : [],
    };
  },
};

/** Which quantity of the instrument's record speaks of a column. */
const quantityOf = {
  acid_C: "temperature",
  battery_C: "temperature",
  air_C: "temperature",
  rest_V: "voltage",
  terminal_V: "voltage",
  clamp_A: "current",
  cranking_A: "crankingCurrent",
  mains_kWh: "energy",
  weight_kg: "weight",
} as const;

/** A value as it was read: the reading's own cell, with the instrument's accuracy. */
export function valueAsRead(column: ReadingColumn): FigureDefinition<Visit> {
  const { label, unit, instrument } = readingColumns[column];
  return {
    id: column.replace(/_/g, "-").toLowerCase(),
    label,
    unit,
    version: 1,
    explain: "As read at the visit, with the accuracy that the instrument's record states.",
    formula: null,
    source: "The reading itself.",
    checkedBy: ["Small invented test records"],
    compute: ({ context, reading }) => {
      const cell = reading.values[column];
      if (cell === undefined) return notMeasured("not measured", "not read at this visit");
      const used = instrument === undefined ? undefined : context.instruments[instrument];
      const quantity = column.startsWith("density_")
        ? "density"
        : column in quantityOf
          ? quantityOf[column as keyof typeof quantityOf]
          : undefined;
      const accuracy = quantity === undefined ? undefined : used?.measures?.[quantity];
      return {
        value: cell.value,
        standardUncertainty: accuracy === undefined ? undefined : standardUncertaintyOf(accuracy, cell.value),
        evidence: evidenceOfCell(context, reading, column),
      };
    },
  };
}

/** All figures of one visit: density at 25 °C and what follows from it first, then every value that was read. */
export function figuresOfVisit(context: TestContext, reading: MeasuredReading): Figure[] {
  const visit = { context, reading };
  const of = `reading/${reading.number}`;
  const k = context.rules.coverageFactor;
  const spread = (reading.density?.cells.length ?? 0) > 1 ? [toFigure(densitySpread, of, visit, k)] : [];
  const read = (Object.keys(readingColumns) as ReadingColumn[]).filter((column) => reading.values[column] !== undefined);
  const frost = isSealed(context.battery) || densityColumns(reading).length > 0 ? [toFigure(freezingPoint, of, visit, k)] : [];
  const byVoltage = reading.values.rest_V === undefined ? [] : [toFigure(densityByRestVoltage, of, visit, k)];
  return [
    toFigure(densityAtVisit, of, visit, k),
    ...spread,
    ...byVoltage,
    ...frost,
    ...read.map((column) => toFigure(valueAsRead(column), of, visit, k)),
  ];
}

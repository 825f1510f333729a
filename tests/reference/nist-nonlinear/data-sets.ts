/** NIST's data sets: their files parsed, and their models typed in. */
import type { Model } from "../../../lib/signal/fit-nonlinear.ts";
import { readReference } from "../read-table.ts";

export type DataSet = {
  readonly name: string;
  readonly model: Model;
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly starts: readonly [readonly number[], readonly number[]];
  readonly certified: readonly number[];
  readonly certifiedErrors: readonly number[];
  readonly residualStandardDeviation: number;
};

type Parameters = readonly number[];
const b = (parameters: Parameters, number: number): number => parameters[number - 1] ?? Number.NaN;

/** Models of one predictor, as each file states them. */
const models: Readonly<Record<string, Model>> = {
  Misra1a: (p, x) => b(p, 1) * (1 - Math.exp(-b(p, 2) * x)),
  Misra1b: (p, x) => b(p, 1) * (1 - (1 + (b(p, 2) * x) / 2) ** -2),
  Misra1c: (p, x) => b(p, 1) * (1 - (1 + 2 * b(p, 2) * x) ** -0.5),
  Misra1d: (p, x) => (b(p, 1) * b(p, 2) * x) / (1 + b(p, 2) * x),
  BoxBOD: (p, x) => b(p, 1) * (1 - Math.exp(-b(p, 2) * x)),
  Chwirut1: (p, x) => Math.exp(-b(p, 1) * x) / (b(p, 2) + b(p, 3) * x),
  Chwirut2: (p, x) => Math.exp(-b(p, 1) * x) / (b(p, 2) + b(p, 3) * x),
  DanWood: (p, x) => b(p, 1) * x ** b(p, 2),
  Eckerle4: (p, x) => (b(p, 1) / b(p, 2)) * Math.exp(-0.5 * ((x - b(p, 3)) / b(p, 2)) ** 2),
  Kirby2: (p, x) => (b(p, 1) + b(p, 2) * x + b(p, 3) * x ** 2) / (1 + b(p, 4) * x + b(p, 5) * x ** 2),
  Lanczos3: (p, x) => b(p, 1) * Math.exp(-b(p, 2) * x) + b(p, 3) * Math.exp(-b(p, 4) * x) + b(p, 5) * Math.exp(-b(p, 6) * x),
  MGH17: (p, x) => b(p, 1) + b(p, 2) * Math.exp(-x * b(p, 4)) + b(p, 3) * Math.exp(-x * b(p, 5)),
};

export const dataSetNames = [...Object.keys(models), "Nelson"];

/** Reads one data set. Throws where its file does not have NIST's layout. */
export function readDataSet(name: string): DataSet {
  const lines = readReference(`nist-nonlinear/${name}.dat`).split(/\r?\n/);
  const parameters = lines.flatMap((line) => {
    const match = /^\s*b\d+\s*=\s*(\S+)\s+(\S+)\s+(\S+)\s+(\S+)\s*$/.exec(line);
    return match === null ? [] : [match.slice(1).map(Number)];
  });
  const at = (place: number): number[] => parameters.map((numbers) => numbers[place] ?? Number.NaN);
  const deviation = lines.find((line) => line.startsWith("Residual Standard Deviation:"));
  // NIST's files all hold their data from line 61 on.
  const rows = lines
    .slice(60)
    .map((line) => line.trim().split(/\s+/).map(Number))
    .filter((numbers) => numbers.length >= 2);
  const columnAt = (place: number): number[] => rows.map((numbers) => numbers[place] ?? Number.NaN);
  const shared = {
    name,
    starts: [at(0), at(1)] as const,
    certified: at(2),
    certifiedErrors: at(3),
    residualStandardDeviation: Number(deviation?.split(":")[1]),
  };
  if (name === "Nelson") {
    // The one set with two predictors, and the logarithm of y on the left: x is the row, and the model looks both predictors up.
    const [hours, temperatures] = [columnAt(1), columnAt(2)];
    const model: Model = (p, row) =>
      b(p, 1) - b(p, 2) * (hours[row] ?? Number.NaN) * Math.exp(-b(p, 3) * (temperatures[row] ?? Number.NaN));
    return { ...shared, model, x: rows.map((_, row) => row), y: columnAt(0).map(Math.log) };
  }
  const model = models[name];
  if (model === undefined) throw new Error(`no model typed in for ${name}`);
  return { ...shared, model, x: columnAt(1), y: columnAt(0) };
}

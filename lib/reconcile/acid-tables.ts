/** The acid's density and rest voltage as tables, so that an examination may ask for them a hundred thousand times. */
import { densityOfAcid, molalityFromWeightFraction, weightFractionOfAcid } from "../electrochem/acid.ts";
import { referenceTemperatureC } from "../electrochem/constants.ts";
import { restVoltagePerCell } from "../electrochem/rest-voltage.ts";

/** A function by straight lines between equally spaced rows; beyond either end it keeps the end's value. NaN stays NaN. */
type Table = (x: number) => number;

/** Tables are filled when they are first asked: a reader of logs that examines nothing need not wait for them. */
function tabulate(f: (x: number) => number, low: number, high: number, rows: number): Table {
  const step = (high - low) / (rows - 1);
  let filled: Float64Array | undefined;
  return (x) => {
    filled ??= Float64Array.from({ length: rows }, (_, row) => f(low + row * step));
    const values = filled;
    const place = (Math.min(high, Math.max(low, x)) - low) / step;
    const row = Math.min(rows - 2, Math.floor(place));
    const below = values[row] ?? Number.NaN;
    return below + (place - row) * ((values[row + 1] ?? Number.NaN) - below);
  };
}

const weightFractionRange = { low: 0.02, high: 0.55 };
const densityRange = {
  low: densityOfAcid(weightFractionRange.low, referenceTemperatureC),
  high: densityOfAcid(weightFractionRange.high, referenceTemperatureC),
};
/** With this many rows straight lines miss the curves by less than 1e-6 kg/l and 1e-5 V. */
const rows = 1000;

const molalityOf = (densityAt25C: number): number => molalityFromWeightFraction(weightFractionOfAcid(densityAt25C, referenceTemperatureC));

/** Density, kg/l at 25 °C, of acid of this mass fraction, held within 0.02 to 0.55. */
export const densityOf: Table = tabulate(
  (w) => densityOfAcid(w, referenceTemperatureC),
  weightFractionRange.low,
  weightFractionRange.high,
  rows,
);

/** Mass fraction of acid of this density, kg/l at 25 °C, held within 1.01 to 1.44. */
export const weightFractionOf: Table = tabulate(
  (d) => weightFractionOfAcid(d, referenceTemperatureC),
  densityRange.low,
  densityRange.high,
  rows,
);

/** Rest voltage of a cell at 25 °C, V, with acid of this density, kg/l at 25 °C, held within 1.01 to 1.44. */
export const cellVoltageOf: Table = tabulate((d) => restVoltagePerCell(molalityOf(d)), densityRange.low, densityRange.high, rows);

/** Slope of that voltage with temperature, V per K and cell. */
export const cellVoltageSlopeOf: Table = tabulate(
  (d) => restVoltagePerCell(molalityOf(d), referenceTemperatureC + 1) - restVoltagePerCell(molalityOf(d)),
  densityRange.low,
  densityRange.high,
  rows,
);

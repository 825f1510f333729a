/** The recorder's own columns of power and charge, held against its voltage and current. */
import { median } from "../../signal/order-statistics.ts";
import { type Finding, type LogFacts, round } from "./facts.ts";

/** Rounding, and a power that is a mean over the interval while voltage and current are one moment, stay below this. Our own rule. */
const powerWithin = 0.05;
/** Smaller powers are mostly rounding, W. */
const smallestW = 1;

/** Voltage times current against the power column, by the middle of their ratios. */
export function findPowerMismatch({ samples }: LogFacts): Finding[] {
  const { powersW = new Float64Array(0) } = samples;
  const ratios: number[] = [];
  let row = -1;
  for (let index = 0; index < powersW.length; index++) {
    const powerW = powersW[index] as number;
    const productW = Math.abs((samples.voltagesV[index] ?? Number.NaN) * (samples.currentsA[index] ?? Number.NaN));
    if (!(Math.abs(powerW) > smallestW) || !(productW > 0)) continue;
    ratios.push(productW / Math.abs(powerW));
    if (row < 0 && Math.abs(productW / Math.abs(powerW) - 1) > powerWithin) row = index;
  }
  if (ratios.length === 0 || row < 0) return [];
  const ratio = median(ratios);
  if (Math.abs(ratio - 1) <= powerWithin) return [];
  const [voltageV, currentA, powerW] = [samples.voltagesV[row], samples.currentsA[row], powersW[row]].map((value) =>
    round(value ?? Number.NaN),
  );
  return [
    {
      level: "doubt",
      row,
      found: `${voltageV} V times ${currentA} A beside ${powerW} W in line ${samples.lines[row]}, ${round(ratio)} times the power in the middle of all rows`,
      expected: "voltage times current equal to the recorder's own power within 5 %",
      mend: "check which columns are voltage and current, and their units, in the recorder's dialect",
    },
  ];
}

/** Two sums of one current differ by the recorder's faster sampling at most: by this share, and by this much of the capacity. Our own rule. */
const chargeWithin = 0.05;
const smallestShareOfC = 0.01;
/** A longer pause than this many usual intervals is not in our sum, and may be in the recorder's. */
const gapIntervals = 5;

/** The current summed up against the charge column, over the rows between which nothing is missing. */
export function findChargeMismatch({ samples, battery }: LogFacts): Finding[] {
  const { chargesAh = new Float64Array(0), currentsA, elapsedS, lines } = samples;
  const steps = new Float64Array(chargesAh.length);
  for (let row = 1; row < chargesAh.length; row++) steps[row] = (elapsedS[row] ?? 0) - (elapsedS[row - 1] ?? 0);
  const rising = steps.filter((step) => step > 0);
  if (rising.length === 0) return [];
  const longestS = gapIntervals * median(rising);
  let sumAh = 0;
  let countedAh = 0;
  let first = -1;
  let last = -1;
  for (let row = 1; row < chargesAh.length; row++) {
    const stepS = (elapsedS[row] ?? 0) - (elapsedS[row - 1] ?? 0);
    const meanA = ((currentsA[row] ?? Number.NaN) + (currentsA[row - 1] ?? Number.NaN)) / 2;
    const stepAh = (chargesAh[row] ?? Number.NaN) - (chargesAh[row - 1] ?? Number.NaN);
    if (!(stepS > 0 && stepS <= longestS) || Number.isNaN(meanA) || Number.isNaN(stepAh)) continue;
    sumAh += (meanA * stepS) / 3600;
    countedAh += stepAh;
    if (first < 0) first = row - 1;
    last = row;
  }
  // A counter may run down while a battery is charged: only its size is compared.
  const off = Math.abs(Math.abs(sumAh) - Math.abs(countedAh));
  if (first < 0 || off <= Math.max(chargeWithin * Math.abs(countedAh), smallestShareOfC * battery.capacityAh)) return [];
  return [
    {
      level: "doubt",
      row: first,
      found: `${round(sumAh)} Ah from the current and ${round(countedAh)} Ah from the recorder's own count, lines ${lines[first]} to ${lines[last]}`,
      expected: "the two equal within 5 %",
      mend: "check units and columns of current and time in the recorder's dialect; a counter that is set to zero inside the log explains it too",
    },
  ];
}

/** Charge and energy of recordings, with what the instruments allow to be said of them. */
import type { Accuracy } from "../nouns/instrument.ts";
import { trapezoid } from "../signal/trapezoid.ts";
import { combine, standardUncertaintyOf } from "../units/uncertainty.ts";
import type { MeasuredRecording } from "./recording.ts";

export type Amount = { readonly value: number; readonly standardUncertainty: number | undefined };

/**
 * Charge over the covered time, Ah; gaps add nothing.
 *
 * The meter's error is one and the same for all its samples, so it does not average out: the part that goes with the reading is that
 * share of the charge, the fixed part is that current over the whole time. Source: JCGM 100:2008, 5.2.2 (from memory).
 */
export function chargeOf(recording: MeasuredRecording): Amount {
  const { trace } = recording;
  const hours = trace.elapsedS.map((elapsedS) => elapsedS / 3600);
  const value = trace.stretches.reduce((sum, [from, to]) => sum + trapezoid(hours, trace.currentsA, from, to), 0);
  return { value, standardUncertainty: ofSum(recording.recorder?.measures?.current, value, trace.coveredS / 3600) };
}

/** Energy over the covered time, Wh; gaps add nothing. Errors of voltage and current are taken as independent of each other. */
export function energyOf(recording: MeasuredRecording): Amount {
  const { trace } = recording;
  const hours = trace.elapsedS.map((elapsedS) => elapsedS / 3600);
  const powerW = trace.voltagesV.map((voltageV, i) => voltageV * (trace.currentsA[i] as number));
  const value = trace.stretches.reduce((sum, [from, to]) => sum + trapezoid(hours, powerW, from, to), 0);
  const charge = chargeOf(recording);
  const accuracyV = recording.recorder?.measures?.voltage;
  if (charge.standardUncertainty === undefined || accuracyV === undefined || charge.value === 0)
    return { value, standardUncertainty: undefined };
  const meanV = value / charge.value;
  const ofVoltage = standardUncertaintyOf(accuracyV, meanV) * Math.abs(charge.value);
  return { value, standardUncertainty: combine(charge.standardUncertainty * Math.abs(meanV), ofVoltage) };
}

/** Uncertainty of a sum over time of readings by one meter: its error at the mean reading, times the time. */
function ofSum(accuracy: Accuracy | undefined, total: number, hours: number): number | undefined {
  if (accuracy === undefined || hours === 0) return undefined;
  return standardUncertaintyOf(accuracy, total / hours) * hours;
}

/**
 * Adds amounts. Those of one meter share its error and so add up straight; different meters are independent.
 *
 * @param parts  amounts with the meter that gave each
 */
export function addAmounts(parts: readonly (Amount & { readonly meter: string })[]): Amount {
  const value = parts.reduce((sum, part) => sum + part.value, 0);
  const byMeter = new Map<string, number>();
  for (const part of parts) {
    if (part.standardUncertainty === undefined) return { value, standardUncertainty: undefined };
    byMeter.set(part.meter, (byMeter.get(part.meter) ?? 0) + part.standardUncertainty);
  }
  return { value, standardUncertainty: combine(...byMeter.values()) };
}

/** What may have flowed in a recording's gaps, Ah: from nothing to the highest current of the recording all along. */
export function chargeInGaps({ trace }: MeasuredRecording): { low: number; high: number; straight: number } {
  let highestA = 0;
  for (const currentA of trace.currentsA) if (currentA > highestA) highestA = currentA;
  let gapS = 0;
  let straight = 0;
  trace.gaps.forEach((gap, index) => {
    const before = (trace.stretches[index]?.[1] ?? 1) - 1;
    const meanA = ((trace.currentsA[before] ?? 0) + (trace.currentsA[before + 1] ?? 0)) / 2;
    gapS += gap.endS - gap.startS;
    straight += (meanA * (gap.endS - gap.startS)) / 3600;
  });
  return { low: 0, high: (highestA * gapS) / 3600, straight };
}

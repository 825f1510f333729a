/** Charge and energy of recordings, with what the instruments allow to be said of them. */
import { secondsPerHour } from "../electrochem/constants.ts";
import type { Accuracy } from "../nouns/instrument.ts";
import { isOffBattery } from "../nouns/stage.ts";
import { firstAfter, firstAtOrAfter } from "../signal/sorted.ts";
import { trapezoid, trapezoidOfProduct } from "../signal/trapezoid.ts";
import { combine, standardUncertaintyOf } from "../units/uncertainty.ts";
import type { MeasuredRecording } from "./recording.ts";

export type Amount = { readonly value: number; readonly standardUncertainty: number | undefined };

/** Part of a recording, s from its first sample; all of it where left out. */
export type Part = { readonly fromS: number; readonly toS: number };

/**
 * Charge over the covered time, Ah; gaps add nothing.
 *
 * The meter's error is one and the same for all its samples, so it does not average out: the part that goes with the reading is that
 * share of the charge, the fixed part is that current over the whole time. Source: JCGM 100:2008, 5.2.2 (from memory).
 *
 * @param part  samples outside it count nothing
 * @returns 0 Ah for fewer than two samples
 */
export function chargeOf(recording: MeasuredRecording, part: Part = whole): Amount {
  const { trace } = recording;
  const ranges = rangesIn(recording, part);
  const value = ranges.reduce((sum, [from, to]) => sum + trapezoid(trace.elapsedS, trace.currentsA, from, to, secondsPerHour), 0);
  return { value, standardUncertainty: ofSum(recording.recorder?.measures?.current, value, coveredS(recording, ranges) / 3600) };
}

/** Energy over the covered time, Wh; gaps add nothing. Errors of voltage and current are taken as independent of each other. */
export function energyOf(recording: MeasuredRecording, part: Part = whole): Amount {
  const { trace } = recording;
  const value = rangesIn(recording, part).reduce(
    (sum, [from, to]) => sum + trapezoidOfProduct(trace.elapsedS, trace.voltagesV, trace.currentsA, from, to, secondsPerHour),
    0,
  );
  const charge = chargeOf(recording, part);
  const accuracyV = recording.recorder?.measures?.voltage;
  if (charge.standardUncertainty === undefined || accuracyV === undefined || charge.value === 0)
    return { value, standardUncertainty: undefined };
  const meanV = value / charge.value;
  const ofVoltage = standardUncertaintyOf(accuracyV, meanV) * Math.abs(charge.value);
  return { value, standardUncertainty: combine(charge.standardUncertainty * Math.abs(meanV), ofVoltage) };
}

const whole: Part = { fromS: Number.NEGATIVE_INFINITY, toS: Number.POSITIVE_INFINITY };

/** Half-open ranges of samples of a part, without a gap in them. */
export function rangesIn({ trace }: MeasuredRecording, { fromS, toS }: Part): [number, number][] {
  return trace.stretches.flatMap(([from, to]): [number, number][] => {
    const start = firstAtOrAfter(trace.elapsedS, fromS, from, to);
    const end = firstAfter(trace.elapsedS, toS, start, to);
    return end > start ? [[start, end]] : [];
  });
}

function coveredS({ trace }: MeasuredRecording, ranges: readonly (readonly [number, number])[]): number {
  return ranges.reduce((sum, [from, to]) => sum + (trace.elapsedS[to - 1] as number) - (trace.elapsedS[from] as number), 0);
}

/** A recording with the part of it that counts. */
export type Counted = { readonly recording: MeasuredRecording; readonly part: Part };

/**
 * Recordings with the parts that count, so that an hour that two recorders saw is counted once: of two that overlap, the one that
 * began first counts. A recording whose start nobody knows cannot be placed, and counts whole.
 *
 * @param fromMs, toMs  instants outside which nothing counts, ms since 1970 UTC
 */
export function countedOnce(
  recordings: readonly MeasuredRecording[],
  fromMs = Number.NEGATIVE_INFINITY,
  toMs = Number.POSITIVE_INFINITY,
): Counted[] {
  const order = (recording: MeasuredRecording): number => recording.startMs ?? Number.NEGATIVE_INFINITY;
  let seenUntilMs = fromMs;
  return [...recordings]
    .sort((a, b) => order(a) - order(b) || 0)
    .map((recording) => {
      const { startMs } = recording;
      if (startMs === undefined) return { recording, part: whole };
      const part = { fromS: (seenUntilMs - startMs) / 1000, toS: (toMs - startMs) / 1000 };
      seenUntilMs = Math.max(seenUntilMs, startMs + recording.trace.spanS * 1000);
      return { recording, part };
    });
}

/** Charge of several recordings, Ah, each hour counted once. */
export function chargeOfAll(counted: readonly Counted[]): Amount {
  return addAmounts(counted.map(({ recording, part }) => ({ ...chargeOf(recording, part), meter: recording.recorderId ?? recording.id })));
}

/** Energy of several recordings, Wh, each hour counted once. */
export function energyOfAll(counted: readonly Counted[]): Amount {
  return addAmounts(counted.map(({ recording, part }) => ({ ...energyOf(recording, part), meter: recording.recorderId ?? recording.id })));
}

/**
 * Time for which recordings show the battery, h: gaps taken off, each hour counted once, and hours with the leads off the battery, or the wrong
 * way round, left out. The recorder ran in those, and saw nothing of what the charger did.
 */
export function coveredHoursOfAll(counted: readonly Counted[]): number {
  const hoursOf = ({ recording, part }: Counted): number =>
    partsOnBattery(recording).reduce(
      (sum, shown) => sum + Math.max(0, Math.min(shown.toS, part.toS) - Math.max(shown.fromS, part.fromS)) / 3600,
      0,
    );
  return counted.reduce((sum, one) => sum + hoursOf(one), 0);
}

/** Parts of a recording that show the battery: without gaps, and without the time in which the leads were off it or the wrong way round. */
export function partsOnBattery({ trace, stages }: Pick<MeasuredRecording, "trace" | "stages">): Part[] {
  const { elapsedS } = trace;
  return trace.stretches.flatMap(([from, to]) => {
    let parts: Part[] = [{ fromS: elapsedS[from] as number, toS: elapsedS[to - 1] as number }];
    for (const { startS, endS } of stages.filter(isOffBattery))
      parts = parts.flatMap(({ fromS, toS }) =>
        [
          { fromS, toS: Math.min(toS, startS) },
          { fromS: Math.max(fromS, endS), toS },
        ].filter((part) => part.toS > part.fromS),
      );
    return parts;
  });
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

/** What ends a charger's held voltage, as far as its recordings show. */
import { formatDuration } from "../units/format.ts";
import type { EndRules } from "./charger-behaviour.ts";
import type { ChargerKnowledge } from "./charger-knowledge.ts";
import { type RecordedCharge, type SeenStage, seenStages } from "./seen-stages.ts";
import { exactly, type Range, rangeOf } from "./spread.ts";

/** An end current or a duration seen once is taken to repeat within this share: our assumption. */
const repeatShare = 0.08;
/** A limit held for so long without an end is what it holds a full battery at, h: three days, longer than a charge takes; our assumption. */
const heldForGoodH = 72;
/** One end rule is preferred to another only where its spread (of logarithms) is smaller by this factor. */
const clearlySteadier = 2;
/** Two held voltages closer than this share are one limit. */
const sameVoltageShare = 0.006;

/** The held voltages of each recording, gathered by their place in it: first limit, second limit. */
export function voltageLevels(charges: readonly RecordedCharge[], holdsOnOff: boolean): SeenStage[][] {
  const levels: SeenStage[][] = [];
  for (const charge of charges) {
    let place = -1;
    let lastV = Number.NaN;
    for (const seen of seenStages(charge, holdsOnOff)) {
      if (seen.stage.kind !== "constant-voltage") continue;
      const voltageV = seen.stage.voltageMeanV ?? Number.NaN;
      if (!(Math.abs(voltageV - lastV) < sameVoltageShare * voltageV)) place++;
      lastV = voltageV;
      const level = levels[place] ?? [];
      level.push(seen);
      levels[place] = level;
    }
  }
  return levels;
}

/**
 * What ends a held voltage, from all stages that held it.
 * @param isLast  whether no further limit follows; for the words only
 * @param unknowns  what the recordings leave open is added here
 */
export function endOf(stages: readonly SeenStage[], known: ChargerKnowledge, isLast: boolean, unknowns: string[]): EndRules {
  const ended = stages.filter(({ isEndSeen, stage }) => isEndSeen && (stage.currentEndA ?? 0) > 0);
  if (ended.length === 0) {
    const longestH = Math.max(...stages.map(({ hours }) => hours));
    if (isLast && longestH >= heldForGoodH) {
      unknowns.push(
        `it held its voltage limit for ${formatDuration(longestH)} and nobody saw it let go: it is taken to hold it as long as it is connected`,
      );
      return {};
    }
    const lastA = Math.min(...stages.map(({ stage }) => stage.currentEndA ?? Number.POSITIVE_INFINITY));
    unknowns.push(
      `nobody recorded the end of its ${isLast ? "" : "first "}voltage limit: somewhere below the last current seen, or never; what follows is not known`,
    );
    return { belowA: { low: 0, high: Math.max(0, Number.isFinite(lastA) ? lastA : 0) } };
  }
  const endsA = ended.map(({ stage }) => stage.currentEndA ?? Number.NaN);
  const durations = ended.map(({ hours }) => hours);
  const around = repeated(endsA, 2 * known.standardUncertaintyA);
  // An end at 0 would say that nobody saw it.
  const belowA = { ...around, low: Math.max(around.low, 1e-3 * around.high) };
  const afterH = repeated(durations, 0);
  if (ended.length > 1) {
    const [byA, byH] = [logSpread(endsA), logSpread(durations)];
    if (byH > clearlySteadier * byA) return { belowA };
    if (byA > clearlySteadier * byH) return { afterH };
  }
  unknowns.push("an end current and a time both fit the ends of its voltage limit that were seen");
  return { belowA, afterH };
}

/** What repeats: the range of values seen, a little wider; it never goes below 0. */
export function repeated(values: readonly number[], by: number): Range {
  const range = rangeOf(values) ?? exactly(Number.NaN);
  return { low: Math.max(0, range.low * (1 - repeatShare) - by), high: range.high * (1 + repeatShare) + by };
}

/** Standard deviation of the logarithms of at least two values. */
export function logSpread(values: readonly number[]): number {
  const logs = values.map((value) => Math.log(Math.max(1e-6, value)));
  const mean = logs.reduce((sum, value) => sum + value, 0) / logs.length;
  return Math.sqrt(logs.reduce((sum, value) => sum + (value - mean) ** 2, 0) / Math.max(1, logs.length - 1));
}

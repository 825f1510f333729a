/** What one result costs: this battery brought to its target once, with every input's interval. */
import { type CostOfResult, costPerResult, type Estimate, known } from "../project/index.ts";
import { chargeNeeded } from "./charge-needed.ts";
import type { FigureOutcome, NotMeasured } from "./define.ts";
import { notMeasured } from "./define.ts";
import { energyMains } from "./figures/energy-mains.ts";
import { findTargetOutcome } from "./growth.ts";
import { statedCosts } from "./stated-costs.ts";
import { isSealed, type TestContext } from "./test-context.ts";

export type CostOutcome = {
  readonly cost: CostOfResult;
  readonly evidence: NonNullable<NotMeasured["evidence"]>;
  readonly doubts: readonly string[];
};

/** @returns the cost with what it rests on, or why there is none */
export function costOfResult(context: TestContext): CostOutcome | NotMeasured {
  if (isSealed(context.battery))
    return notMeasured("not applicable", "a result is a battery at its target density, which cannot be read on a sealed one");
  const outcome = findTargetOutcome(context);
  if (outcome.kind === "no target" || outcome.kind === "no density" || outcome.kind === "unplaced")
    return notMeasured(
      outcome.kind === "no target" ? "not stated" : outcome.kind === "no density" ? "not measured" : "cannot tell",
      `whether the target was reached is not known: ${outcome.why}`,
      [context.recordEvidence],
    );
  if (outcome.kind === "unsettled")
    return notMeasured("cannot tell", `whether the target was reached is not known: ${outcome.why}`, outcome.at.density.evidence);
  if (outcome.kind !== "reached")
    return notMeasured("not reached", "the test brought no battery to its target, so there is no result to pay for", [
      context.recordEvidence,
    ]);
  const stated = statedCosts(context, outcome.at.connections);
  if ("absent" in stated) return stated;
  const energy = energyMains.compute(context);
  if ("absent" in energy) return notMeasured(energy.absent, energy.why, energy.evidence ?? []);
  const isMetered = energy.basis !== "projected";
  const { standbyW } = context.charger;
  const charge = chargeNeeded(context);
  const density = densityGained(context);
  const made = costPerResult({
    ...stated.inputs,
    energy: { mainsKWh: estimateOf(energy, context.rules.coverageFactor) },
    // A meter in the mains has seen the charger's own consumption already.
    ...(isMetered || standbyW === undefined ? {} : { standbyKWh: known((standbyW * outcome.at.mostHours) / 1000) }),
    ...("why" in charge ? {} : { restoredAh: estimateOf(charge, context.rules.coverageFactor) }),
    ...(density === undefined ? {} : { densityGain: density }),
  });
  if ("refused" in made) return notMeasured("cannot tell", made.refused, [context.recordEvidence]);
  const most = made.movedBy[0];
  return {
    cost: made,
    evidence: [...energy.evidence, context.recordEvidence],
    doubts: [
      ...(energy.doubts ?? []),
      ...stated.doubts,
      ...(most === undefined
        ? []
        : [`${most.input} moves it most: alone, from ${most.low.toFixed(2)} to ${most.high.toFixed(2)} ${made.currency} a result`]),
    ],
  };
}

/** A figure's value with the ends of its interval; the value itself where it has none. */
function estimateOf(
  outcome: {
    readonly value: number;
    readonly standardUncertainty?: number | undefined;
    readonly interval?: { low: number; high: number } | undefined;
  },
  coverageFactor: number,
): Estimate {
  const halfWidth = coverageFactor * (outcome.standardUncertainty ?? 0);
  return {
    value: outcome.value,
    low: Math.max(0, outcome.interval?.low ?? outcome.value - halfWidth),
    high: outcome.interval?.high ?? outcome.value + halfWidth,
  };
}

/** First to last density, kg/l; undefined where it did not rise. One hydrometer's error moves both alike, so only its scatter is left. */
function densityGained({ readings, rules }: TestContext): Estimate | undefined {
  const read = readings.flatMap((reading) => (reading.density === undefined ? [] : [reading.density]));
  const [first, last] = [read[0], read.at(-1)];
  if (first === undefined || last === undefined || !(last.meanAt25C > first.meanAt25C)) return undefined;
  const value = last.meanAt25C - first.meanAt25C;
  const halfWidth = Math.min(value / 2, rules.coverageFactor * scatterKgPerL * Math.SQRT2);
  return { value, low: value - halfWidth, high: value + halfWidth };
}

/** How well two readings of one hydrometer agree, standard, kg/l; our assumption. */
const scatterKgPerL = 0.001;

/** One of the costs as a figure's outcome. */
export function costFigure(context: TestContext, pick: (cost: CostOfResult) => Estimate | null, whyNone: string): FigureOutcome {
  const outcome = costOfResult(context);
  if ("absent" in outcome) return outcome;
  const estimate = pick(outcome.cost);
  if (estimate === null) return notMeasured("cannot tell", whyNone, outcome.evidence);
  const { value, low, high } = estimate;
  return { value, interval: { low, high }, basis: "projected", evidence: outcome.evidence, doubts: outcome.doubts };
}

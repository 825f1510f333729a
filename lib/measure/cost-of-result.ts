/** What one result costs: this battery brought to its target once, with every input's interval. */
import { type CostOfResult, costPerResult, type Estimate, known } from "../project/index.ts";
import { chargeNeeded } from "./charge-needed.ts";
import type { FigureOutcome, NotMeasured } from "./define.ts";
import { notMeasured } from "./define.ts";
import { energyMains } from "./figures/energy-mains.ts";
import { findTargetOutcome } from "./growth.ts";
import { isSealed, type TestContext } from "./test-context.ts";

/** Where nobody states the uses of a charger's life, they may be this many times fewer or more than the site's rule; our assumption. */
const unstatedUsesFactor = 2;

export type CostOutcome = {
  readonly cost: CostOfResult;
  readonly evidence: NonNullable<NotMeasured["evidence"]>;
  readonly doubts: readonly string[];
};

/** @returns the cost with what it rests on, or why there is none */
export function costOfResult(context: TestContext): CostOutcome | NotMeasured {
  const { price } = context.charger;
  const { electricity, exchangeRates, ownersTime } = context.site;
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
  if (price === undefined) return notMeasured("not stated", "no price of the charger is stated");
  if (electricity === undefined) return notMeasured("not stated", "the site states no price of electricity");
  const energy = energyMains.compute(context);
  if ("absent" in energy) return notMeasured(energy.absent, energy.why, energy.evidence ?? []);
  const isMetered = energy.basis !== "projected";
  const { standbyW } = context.charger;
  const uses = usesInLife(context);
  const charge = chargeNeeded(context);
  const density = densityGained(context);
  const made = costPerResult({
    currency: price.currency,
    ...(exchangeRates === undefined ? {} : { rates: exchangeRates.map(({ from, to, rate, on }) => ({ from, to, rate: known(rate), on })) }),
    purchase: { amount: known(price.amount), currency: price.currency, ...(price.on === undefined ? {} : { on: price.on }) },
    usesInLife: uses.estimate,
    pricePerKWh: { amount: known(electricity.pricePerKWh), currency: electricity.currency, on: electricity.on },
    energy: { mainsKWh: estimateOf(energy, context.rules.coverageFactor) },
    // A meter in the mains has seen the charger's own consumption already.
    ...(isMetered || standbyW === undefined ? {} : { standbyKWh: known((standbyW * outcome.at.mostHours) / 1000) }),
    ...(ownersTime === undefined
      ? {}
      : {
          visits: {
            minutes: known(ownersTime.minutesPerVisit * outcome.at.connections),
            valuePerHour: { amount: known(ownersTime.valuePerHour), currency: ownersTime.currency },
          },
        }),
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
      uses.words,
      ownersTime === undefined ? "the owner's time is left out" : `the owner's time counts ${ownersTime.minutesPerVisit} min a connection`,
      ...(most === undefined
        ? []
        : [`${most.input} moves it most: alone, from ${most.low.toFixed(2)} to ${most.high.toFixed(2)} ${made.currency} a result`]),
    ],
  };
}

/** Over how many uses the purchase is spread: as the charger's record states, else by the site's rule; with words that say which. */
export function usesInLife({ charger: { lifeUses }, rules }: Pick<TestContext, "charger" | "rules">): {
  estimate: Estimate;
  words: string;
} {
  if (lifeUses !== undefined) return { estimate: known(lifeUses), words: `spread over ${lifeUses} uses, as the charger's record states` };
  const value = rules.lifeUses;
  return {
    estimate: { value, low: value / unstatedUsesFactor, high: value * unstatedUsesFactor },
    words: `spread over ${value} uses by the site's rule, within a factor of ${unstatedUsesFactor}`,
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

/** What several logged batteries say about the next one of their kind: beliefs moved, and narrowed as far as that goes. */
import { type BatteryBeliefs, type Belief, parameterNames } from "./battery-priors.ts";
import type { FittedBattery } from "./fit-battery.ts";

/**
 * Share of a belief's variance that lies between one battery and the next; the rest is our not knowing where their common middle is.
 * Only the second part can be learnt from other batteries. Our judgement: half and half.
 */
const betweenBatteries = 0.5;

/**
 * Moves beliefs by fitted batteries of the same kind.
 * @param beliefs  those under which the batteries were fitted
 * @param fitted  fits of other batteries; a parameter that a log told nothing about has no weight
 * @returns beliefs about a battery not yet seen: never narrower than the spread between batteries; the same beliefs for no fits
 * Source: normal distributions throughout, conjugate (textbook form). Each fit counts with 1/(its own variance + that between batteries).
 */
export function poolBatteries(beliefs: BatteryBeliefs, fitted: readonly FittedBattery[]): BatteryBeliefs {
  const pooled = parameterNames.map((name, j): [string, Belief] => {
    const { mean, standardDeviation, isLog } = beliefs[name];
    // In units of the belief's own standard deviation: the common middle ~ N(0, common), each battery ~ N(middle, between).
    const between = betweenBatteries;
    const common = 1 - betweenBatteries;
    let weight = 1 / common;
    let sum = 0;
    for (const fit of fitted) {
      const deviation = Math.min(0.999, fit.standardDeviations[j] ?? 1);
      // The fit's z was pulled towards 0 by the belief; undone, it is what the log alone says, with the log's own variance.
      const ownVariance = 1 / (1 / deviation ** 2 - 1);
      const ownZ = (fit.z[j] ?? 0) * (1 + ownVariance);
      const fitWeight = 1 / (ownVariance + between);
      weight += fitWeight;
      sum += fitWeight * Math.min(4, Math.max(-4, ownZ));
    }
    const middle = sum / weight;
    return [
      name,
      { mean: mean + standardDeviation * middle, standardDeviation: standardDeviation * Math.sqrt(between + 1 / weight), isLog },
    ];
  });
  return Object.fromEntries(pooled) as BatteryBeliefs;
}

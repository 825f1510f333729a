/** The combinations of causes that are weighed against each other, with their probabilities before any reading. */
import type { Case } from "./case.ts";
import { type ExplanationId, explanationIds } from "./explanations.ts";
import { priors, surfaceChargePrior, unrecordedChargePrior } from "./priors.ts";
import { hiddenBecause } from "./visibility.ts";

/** How many causes may act together. Three at once would explain nearly anything, so that nothing would be explained. */
const mostTogether = 2;

export type WeighedSet = { readonly causes: readonly ExplanationId[]; readonly logPrior: number };

/** Probability of a cause before any reading, 0 to 1. */
export function priorOf(cause: ExplanationId, the: Case): number {
  if (cause === "charge-unrecorded") {
    const hiding = the.intervals.filter(({ mayHide }) => mayHide);
    return unrecordedChargePrior(hiding.reduce((sum, { hiddenHighAh }) => sum + hiddenHighAh, 0) / the.ratedAh);
  }
  if (cause !== "surface-charge") return priors.switches[cause];
  const rests = the.visits.slice(1).flatMap(({ restV, restH }) => (Number.isNaN(restV) ? [] : [restH]));
  return surfaceChargePrior(rests.some(Number.isNaN) ? Number.NaN : Math.min(...rests));
}

/** All sets of at most two visible causes, the empty one first. Priors are those of independent switches and sum to a little under one. */
export function listCombinations(the: Case): WeighedSet[] {
  const visible = explanationIds.filter((cause) => hiddenBecause(cause, the) === null);
  const sets: ExplanationId[][] = [[]];
  for (let size = 1; size <= mostTogether; size++)
    for (const set of sets.filter((known) => known.length === size - 1)) {
      const last = set.at(-1);
      const after = last === undefined ? visible : visible.slice(visible.indexOf(last) + 1);
      for (const cause of after) sets.push([...set, cause]);
    }
  return sets.map((causes) => ({
    causes,
    logPrior: visible.reduce((sum, cause) => {
      const p = priorOf(cause, the);
      return sum + Math.log(causes.includes(cause) ? p : 1 - p);
    }, 0),
  }));
}

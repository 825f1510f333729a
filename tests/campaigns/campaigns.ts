/** Many campaigns of every kind, scored, and summed up. */
import { makeCampaign } from "./campaign.ts";
import { type CampaignKind, kindNames } from "./kinds.ts";
import { isHeld, type Placed, type Quantity, type Score, scoreCampaign } from "./score.ts";

/** Scores so many campaigns of every kind for each seed. */
export function scoreCampaigns(seeds: readonly number[], count: number, kinds: readonly CampaignKind[] = kindNames): Score[] {
  return kinds.flatMap((kind) =>
    seeds.flatMap((seed) => Array.from({ length: count }, (_, number) => scoreCampaign(makeCampaign(kind, seed, number)))),
  );
}

/** Share of the campaigns whose most probable combination is the true one, 0 to 1. */
export function shareRight(scores: readonly Score[]): number {
  return scores.filter(({ isRight }) => isRight).length / scores.length;
}

/**
 * The truths of a quantity among these scores.
 * @param onlySomething  leaves out truths that count as nought, which an interval that begins at nought holds nearly always
 */
export function placedOf(scores: readonly Score[], quantity: Quantity, onlySomething: boolean): Placed[] {
  return scores.flatMap(({ placed }) => placed.filter((one) => one.quantity === quantity && !(onlySomething && one.nought !== undefined)));
}

/** Share of the truths that the central intervals of this level hold; NaN for none. */
export function coverage(placed: readonly Placed[], level: number): number {
  return placed.filter((one) => isHeld(one, level)).length / placed.length;
}

/** What was taken for the truth where it was not: combination and how often, most frequent first. */
export function mistakes(scores: readonly Score[]): readonly (readonly [string, number])[] {
  const counts = new Map<string, number>();
  for (const { isRight, best } of scores) {
    const name = best === "" ? "nothing-to-explain" : best;
    if (!isRight) counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return [...counts].sort((a, b) => b[1] - a[1]);
}

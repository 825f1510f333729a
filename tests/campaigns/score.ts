/** Holds an examination against the truth of its campaign. */
import { prepareCase } from "../../lib/reconcile/case.ts";
import { probabilityBelow } from "../../lib/reconcile/estimates.ts";
import { findPosterior } from "../../lib/reconcile/posterior.ts";
import type { Story } from "../../lib/reconcile/story.ts";
import type { Campaign } from "./campaign.ts";
import { type CampaignKind, campaignKinds } from "./kinds.ts";

export const quantities = [
  "state of charge",
  "charge taken",
  "unrecorded charge",
  "top below mean",
  "hydrometer offset",
  "true capacity",
] as const;
export type Quantity = (typeof quantities)[number];

/** One truth with its place in the posterior. */
export type Placed = {
  readonly quantity: Quantity;
  /** Probability that the posterior gives to values below the truth. */
  readonly below: number;
  /** For a truth that is nought: probability of values that count as nought. Undefined for any other. */
  readonly nought: number | undefined;
};

export type Score = {
  readonly kind: CampaignKind;
  /** Most probable combination, joined by +; and whether it is the true one. */
  readonly best: string;
  readonly isRight: boolean;
  readonly probabilityOfTruth: number;
  readonly probabilityOfBest: number;
  readonly placed: readonly Placed[];
};

/** Values smaller than these count as nought: no shop could tell them from nothing. Ah as a share of the capacity; kg/l. */
const noughtShare = 0.01;
const noughtDensity = 0.003;

export function scoreCampaign({ kind, plan, truth, witnesses }: Campaign): Score {
  const the = prepareCase(witnesses);
  if ("why" in the) throw new Error(the.why);
  const posterior = findPosterior(the);
  if (posterior === undefined) throw new Error("no posterior");
  const cause = campaignKinds[kind];
  const wanted = cause === "nothing-to-explain" ? "" : cause;
  const best = posterior.combinations[0]?.causes.join("+") ?? "";
  const place = (quantity: Quantity, read: (story: Story) => number, value: number, nought?: number): Placed => ({
    quantity,
    below: probabilityBelow(posterior, read, value),
    nought: nought !== undefined && value < nought ? probabilityBelow(posterior, read, nought) : undefined,
  });
  const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);
  const first = truth.visits[0];
  const last = truth.visits.at(-1);
  const unrecordedAh = truth.intervals.reduce((total, interval) => total + interval.passedAh - interval.seenAh, 0);
  return {
    kind,
    best,
    isRight: best === wanted,
    probabilityOfTruth: posterior.combinations.find(({ causes }) => causes.join("+") === wanted)?.probability ?? 0,
    probabilityOfBest: posterior.combinations[0]?.probability ?? Number.NaN,
    placed: [
      ...truth.visits.flatMap((visit, k) => [
        place("state of charge", (story) => 1 - (story.missing[k] ?? Number.NaN), visit.stateOfCharge),
        place("top below mean", (story) => story.topDeficit[k] ?? Number.NaN, visit.meanDensity - visit.topDensity, noughtDensity),
      ]),
      place("charge taken", (story) => sum(story.takenAh), (last?.storedAh ?? 0) - (first?.storedAh ?? 0)),
      place("unrecorded charge", (story) => sum(story.hiddenAh), unrecordedAh, noughtShare * plan.battery.capacityAh),
      place("hydrometer offset", (story) => story.hydrometerOffset, plan.errors.hydrometer),
      place("true capacity", (story) => story.capacityAh, plan.battery.capacityAh),
    ],
  };
}

/** Whether the central interval of this level holds the truth; a nought is held where the interval reaches down to what counts as nought. */
export function isHeld({ below, nought }: Placed, level: number): boolean {
  const tail = (1 - level) / 2;
  if (nought !== undefined) return nought > tail;
  return below > tail && below < 1 - tail;
}

/**
 * The cross-examination of a battery's four witnesses: density, rest voltage, recorded charge, cranking current.
 *
 *   witnesses → case → for every combination of causes: unknowns → story → evidence → bell → draws → posterior
 *   posterior → causes, intervals, the next reading → words
 *
 * Pure: the same witnesses give the same examination. docs/reconciliation.md tells the model, its priors and its limits.
 */
import { hearWitnesses } from "./accounts.ts";
import { type Case, prepareCase } from "./case.ts";
import { priorOf } from "./combinations.ts";
import { estimate, fromNought, withinShare } from "./estimates.ts";
import type { CrossExamination, Estimate, Examined, IntervalOutcome, RankedCause, VisitOutcome } from "./examination.ts";
import { type CauseId, causeWords, explanationIds } from "./explanations.ts";
import { bestReading, rankReadings } from "./next-reading.ts";
import { findPosterior, type Posterior } from "./posterior.ts";
import { noughts } from "./priors.ts";
import { sayToBuyer, stateForTechnician, type ToSay } from "./statements.ts";
import type { Story } from "./story.ts";
import { hiddenBecause } from "./visibility.ts";
import type { Witnesses } from "./witnesses.ts";

export type * from "./examination.ts";
export { type CauseId, causeWords, type ExplanationId, explanationIds } from "./explanations.ts";
export type * from "./witnesses.ts";

/** Combinations less probable than this are not listed. */
const leastListed = 0.001;

/**
 * Examines the witnesses against each other.
 * @returns probabilities of the causes, intervals of what happened, and words; or in words why there is too little to examine. Never
 *   throws for a reader's values: what is not finite counts as lacking.
 */
export function crossExamine(witnesses: Witnesses): CrossExamination {
  const the = prepareCase(witnesses);
  if ("why" in the) return { examined: false, why: the.why };
  const posterior = findPosterior(the);
  if (posterior === undefined) return { examined: false, why: "no battery that the model knows could have given these readings" };

  const combinations = posterior.combinations.map(({ causes, probability }) => ({ causes, probability }));
  const readings = rankReadings(the, posterior);
  const outcome: ToSay = {
    causes: rankCauses(the, posterior),
    best: combinations[0] ?? { causes: [], probability: Number.NaN },
    combinations: combinations.filter(({ probability }) => probability >= leastListed),
    visits: the.visits.map((_, k) => visitOutcome(the, posterior, k)),
    intervals: the.intervals.map((_, k) => intervalOutcome(the, posterior, k)),
    takenAh: estimated(posterior, (story) => sumOf(story.takenAh)),
    unrecordedAh: fromNought(
      estimated(posterior, (story) => sumOf(story.hiddenAh)),
      noughts.chargeShare * the.ratedAh,
    ),
    hydrometerOffset: the.visits.some(({ density }) => !Number.isNaN(density))
      ? estimated(posterior, (story) => story.hydrometerOffset)
      : null,
    trueCapacityAh: estimated(posterior, (story) => story.capacityAh),
    accounts: hearWitnesses(the),
    readings,
    nextReading: bestReading(readings) ?? null,
  };
  const examined: Examined = {
    examined: true,
    ...outcome,
    statements: stateForTechnician(the, outcome),
    buyer: sayToBuyer(outcome),
    unseen: explanationIds.flatMap((cause) => {
      const why = hiddenBecause(cause, the);
      return why === null ? [] : [`${causeWords[cause].label}: cannot be seen, since ${why}`];
    }),
    assumptions: the.assumptions,
  };
  return examined;
}

function rankCauses(the: Case, posterior: Posterior): RankedCause[] {
  const ranked = explanationIds.map((id): RankedCause => {
    const why = hiddenBecause(id, the);
    const prior = priorOf(id, the);
    const after = posterior.combinations.reduce((sum, { causes, probability }) => sum + (causes.includes(id) ? probability : 0), 0);
    return { ...named(id), prior, probability: why === null ? after : prior, visible: why === null, hiddenBecause: why };
  });
  const visible = ranked.filter((cause) => cause.visible);
  const none: RankedCause = {
    ...named("nothing-to-explain"),
    prior: visible.reduce((product, cause) => product * (1 - cause.prior), 1),
    probability: posterior.combinations.reduce((sum, { causes, probability }) => sum + (causes.length === 0 ? probability : 0), 0),
    visible: true,
    hiddenBecause: null,
  };
  return [none, ...visible].sort((a, b) => b.probability - a.probability).concat(ranked.filter((cause) => !cause.visible));
}

function named(id: CauseId): Pick<RankedCause, "id" | "label" | "explain"> {
  return { id, ...causeWords[id] };
}

function visitOutcome(the: Case, posterior: Posterior, k: number): VisitOutcome {
  const visit = the.visits[k];
  const at = (values: Float64Array): number => values[k] ?? Number.NaN;
  return {
    visit: visit?.number ?? Number.NaN,
    stateOfCharge: withinShare(
      estimated(posterior, (story) => 1 - at(story.missing)),
      noughts.chargeShare,
    ),
    topBelowMean: the.sealed
      ? null
      : fromNought(
          estimated(posterior, (story) => at(story.topDeficit)),
          noughts.topDensity,
        ),
    meanDensityAt25C: the.sealed ? null : estimated(posterior, (story) => at(story.meanDensity)),
    surfaceChargeV:
      visit === undefined || Number.isNaN(visit.restV)
        ? null
        : fromNought(
            estimated(posterior, (story) => the.cells * at(story.surfaceV)),
            the.cells * noughts.surfaceV,
          ),
  };
}

function intervalOutcome(the: Case, posterior: Posterior, k: number): IntervalOutcome {
  const at = (values: Float64Array): number => values[k] ?? Number.NaN;
  const gassingShare = estimate(posterior, (story) =>
    at(story.throughAh) > 0 ? Math.max(0, 1 - at(story.takenAh) / at(story.throughAh)) : Number.NaN,
  );
  return {
    fromVisit: the.visits[k]?.number ?? Number.NaN,
    toVisit: the.visits[k + 1]?.number ?? Number.NaN,
    unrecordedAh: fromNought(
      estimated(posterior, (story) => at(story.hiddenAh)),
      noughts.chargeShare * the.ratedAh,
    ),
    takenAh: estimated(posterior, (story) => at(story.takenAh)),
    gassingShare: gassingShare ?? null,
  };
}

const nothing: Estimate = { value: Number.NaN, low90: Number.NaN, high90: Number.NaN, low95: Number.NaN, high95: Number.NaN };

function estimated(posterior: Posterior, quantity: (story: Story) => number): Estimate {
  return estimate(posterior, quantity) ?? nothing;
}

function sumOf(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0);
}

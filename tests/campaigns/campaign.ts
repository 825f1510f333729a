/** A campaign: what the witnesses said, and what was true. Only campaigns in which exactly the intended cause is true are let through. */
import type { VisitWitness, Witnesses } from "../../lib/reconcile/index.ts";
import { type Random, seededRandom, seedFromName } from "../generator/random.ts";
import { roundTo } from "../generator/recorder.ts";
import { type CampaignKind, campaignKinds } from "./kinds.ts";
import { type CampaignPlan, drawPlan } from "./plan.ts";
import { simulate, type TrueVisit, type Truth } from "./simulate.ts";

export type Campaign = {
  readonly kind: CampaignKind;
  readonly plan: CampaignPlan;
  readonly truth: Truth;
  readonly witnesses: Witnesses;
  /** Plans that were drawn and dropped since another cause was true as well, or the intended one was not. */
  readonly dropped: number;
};

/** A plan that never comes true would be our own mistake. */
const mostDraws = 200;

/** Makes campaign `number` of a kind from a seed; the same three give the same campaign. */
export function makeCampaign(kind: CampaignKind, seed: number, number: number): Campaign {
  const random = seededRandom(seedFromName(`${kind}/${seed}/${number}`));
  for (let dropped = 0; dropped < mostDraws; dropped++) {
    const plan = drawPlan(kind, random);
    const truth = simulate(plan);
    if (isAsIntended(plan, truth)) return { kind, plan, truth, witnesses: readWitnesses(plan, truth, random), dropped };
  }
  throw new Error(`no campaign of kind ${kind} came true in ${mostDraws} draws`);
}

/** What counts as true, from the generator's state alone; between the two limits of a cause a campaign is neither one nor the other. */
const limits = {
  topBelowMean: { clear: 0.01, absent: 0.004 },
  unrecordedShare: { clear: 0.08, absent: 0.015 },
  surfaceV: { clear: 0.1, absent: 0.03 },
  weakCell: { clear: 0.02, absent: 0.001 },
};

/** Whether the intended cause, and no other, is true. A rating and a hydrometer are right or wrong by the plan itself. */
function isAsIntended(plan: CampaignPlan, truth: Truth): boolean {
  const later = truth.visits.slice(1);
  const topBelowMean = Math.max(...later.map((visit) => visit.meanDensity - visit.topDensity));
  const surfaceV = Math.max(...later.map((visit) => visit.surfaceV));
  const unrecorded = truth.intervals.reduce((sum, interval) => sum + interval.passedAh - interval.seenAh, 0) / plan.battery.capacityAh;
  const weakest = Math.min(...truth.visits.map((visit) => visit.weakCellDeficit));
  const intended = campaignKinds[plan.kind];
  const fits = (cause: string, value: number, limit: { readonly clear: number; readonly absent: number }): boolean =>
    cause === intended ? value > limit.clear : value < limit.absent;
  return (
    fits("acid-not-mixed", topBelowMean, limits.topBelowMean) &&
    fits("surface-charge", surfaceV, limits.surfaceV) &&
    fits("charge-unrecorded", unrecorded, limits.unrecordedShare) &&
    fits("weak-cell", weakest, limits.weakCell) &&
    // A battery that gained nothing tells nothing of its rating, nor of its charger.
    (later.at(-1)?.stateOfCharge ?? 0) - plan.storedAtStart > 0.25
  );
}

function readWitnesses(plan: CampaignPlan, truth: Truth, random: Random): Witnesses {
  const { battery, errors, says } = plan;
  return {
    battery: {
      cells: battery.cells,
      construction: "flooded-calcium",
      capacityAh: Math.round(plan.ratedAh),
      capacityBasis: "printed",
      // A record gives the maker's figures, in steps of 0.005 kg/l; the battery on the bench is near them.
      ...(says.fullDensity ? { fullDensityAt25C: roundTo(battery.fullDensityAt25C + 0.002 * random.normal(), 0.005) } : {}),
      ...(says.acidMass ? { electrolyteKgPerCell: (battery.electrolyteFullG / 1000) * (1 + 0.03 * random.normal()) } : {}),
      ...(says.cranking ? { crankingRatingA: Math.round(battery.crankingA / 10) * 10 } : {}),
    },
    visits: truth.visits.map((visit, k) => readVisit(plan, visit, k, random)),
    intervals: truth.intervals.map((interval) => {
      const recordedAh = interval.seenAh * errors.recorderGain;
      // What the shop knows of the unseen hours: when it came and went, give or take.
      const unseenH = { low: 0.8 * interval.unseenH, high: 1.2 * interval.unseenH };
      return {
        recordedAh: { value: recordedAh, standardUncertainty: errors.recorderUncertainty * recordedAh },
        unseenH,
        ...(says.bound ? { unseenBoundAh: { low: 0, high: unseenH.high * plan.labelCurrentA } } : {}),
        hoursAboveGassing: interval.seenHoursAboveGassing,
        hours: interval.hours,
      };
    }),
  };
}

function readVisit(plan: CampaignPlan, visit: TrueVisit, k: number, random: Random): VisitWitness {
  const { battery, errors, says } = plan;
  // All cells of a visit share the error of the acid's temperature: 1.5 K is 0.001 kg/l.
  const ofTemperature = 0.001 * random.normal();
  const cells = plan.cellDeviations.map((deviation, cell) => {
    const weaker = cell === plan.weakCell ? visit.weakCellDeficit : 0;
    return roundTo(
      visit.topDensity + deviation - weaker + errors.hydrometer + ofTemperature + errors.hydrometerNoise * random.normal(),
      errors.hydrometerStep,
    );
  });
  const mean = cells.reduce((sum, value) => sum + value, 0) / cells.length;
  const restV = roundTo(visit.terminalV + errors.voltmeter + 0.003 * random.normal(), 0.01);
  const cellsHold = Math.min(1, visit.stateOfCharge) * (1 - (0.2 * plan.weakCellAh) / battery.capacityAh);
  const crankingA = roundTo(
    battery.crankingA * battery.crankingHealth * (0.45 + 0.55 * cellsHold) * errors.testerGain + 4 * random.normal(),
    5,
  );
  return {
    number: k + 1,
    atMs: Date.UTC(2026, 2, 1) + visit.atH * 3_600_000,
    mixed: k > 0 && (plan.connections[k - 1]?.mixed ?? false),
    densityAt25C: {
      mean,
      randomStandardUncertainty: Math.hypot(errors.hydrometerNoise, errors.hydrometerStep / Math.sqrt(12)) / Math.sqrt(cells.length),
      commonStandardUncertainty: errors.hydrometerUncertainty,
      ...(says.cells ? { cells } : {}),
    },
    restV: {
      value: restV,
      standardUncertainty: 0.005,
      commonStandardUncertainty: errors.voltmeterUncertaintyV,
      restH: k === 0 ? 24 : roundTo(plan.connections[k - 1]?.restH ?? 24, 0.5),
      temperatureC: Math.round(visit.temperatureC),
    },
    ...(says.cranking ? { crankingA: { value: crankingA, standardUncertainty: 0.03 * crankingA } } : {}),
  };
}

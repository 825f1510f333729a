/** Hydrometer readings of made-up charges, cut off before the target is met, and the projection held against what truly came. */
import { type GrowthVisit, projectToTarget, type ToTarget } from "../../lib/project/to-target.ts";
import { acidDensity } from "../generator/acid.ts";
import { massFractions, restedBattery, stepBattery } from "../generator/battery.ts";
import { advanceCharger, offer, startedCharger } from "../generator/charger.ts";
import { type Random, seededRandom } from "../generator/random.ts";
import { roundTo } from "../generator/recorder.ts";
import { chargerKinds, type DrawnCampaign, type DrawnTest, drawCampaign } from "./draw-campaign.ts";

/** A projection made at some moment before the target, and the hours at which the mean density truly met it (Infinity: not in 72 h). */
export type ProjectedTarget = { readonly result: ToTarget; readonly truthH: number; readonly seenH: number };

const horizonH = 72;
/** So far below full the target lies, kg/l. */
const belowFull = 0.015;
/** Standard uncertainty that the projection is told, of hydrometer and conversion, kg/l. */
const standardUncertainty = 0.003;

/** Three charges of each charger kind and seed, read every one to three hours, and cut off after half to nearly all of the true time. */
export function runTargetCampaigns(seeds: readonly number[]): ProjectedTarget[] {
  return seeds.flatMap((seed) =>
    chargerKinds.flatMap((kind) => {
      const campaign = drawCampaign(seed, kind, 3);
      return campaign.tests.map((test, index) => {
        const random = seededRandom(seed * 31 + index * 7 + chargerKinds.indexOf(kind) * 3 + 1);
        const { visits, truthH, target } = readCharge(campaign, test, random);
        const cutH = (Number.isFinite(truthH) ? truthH : 30) * (0.5 + 0.45 * random.uniform());
        const seen = visits.filter(({ hoursLow }) => hoursLow <= cutH);
        return { result: projectToTarget(seen, target), truthH, seenH: seen.at(-1)?.hoursLow ?? 0 };
      });
    }),
  );
}

function readCharge(campaign: DrawnCampaign, test: DrawnTest, random: Random): { visits: GrowthVisit[]; truthH: number; target: number } {
  const { battery: model } = test;
  const battery = restedBattery(model, test.startShare * model.capacityAh, test.airC);
  const charger = startedCharger();
  const target = model.fullDensityAt25C - belowFull;
  const meanDensity = (): number => acidDensity(massFractions(battery).mean, 25);
  const everyH = 1 + Math.floor(3 * random.uniform());
  const visits: GrowthVisit[] = [];
  const visit = (hours: number): void => {
    let sum = 0;
    for (let cell = 0; cell < 6; cell++) sum += roundTo(meanDensity() + campaign.hydrometerError + 0.003 * random.normal(), 0.005);
    visits.push({
      hoursLow: hours,
      hoursHigh: hours,
      connections: visits.length,
      densityAt25C: sum / 6,
      standardUncertainty,
      step: 0.005,
    });
  };
  visit(0);
  let truthH = Number.POSITIVE_INFINITY;
  for (let second = 1; second <= horizonH * 3600 && second / 3600 < truthH + everyH; second++) {
    const source = offer(campaign.charger, charger);
    const currentA = stepBattery(model, battery, source.limitA <= 0 ? undefined : source, test.airC, 1);
    advanceCharger(campaign.charger, charger, battery.cellV * model.cells, currentA);
    if (truthH === Number.POSITIVE_INFINITY && meanDensity() >= target) truthH = second / 3600;
    if (second % (everyH * 3600) === 0) visit(second / 3600);
  }
  return { visits, truthH, target };
}

/** How the projections fared. */
export type TargetSummary = {
  readonly count: number;
  readonly cannotTell: number;
  readonly likely: number;
  readonly held80: number;
  readonly held95: number;
  readonly notReachable: number;
  /** Of those called not reachable, how many did not come within three times the hours seen. */
  readonly rightlyNotReachable: number;
};

/** Counts outcomes; an interval that is open holds every truth beyond the projection's own limit. */
export function summariseTargets(projections: readonly ProjectedTarget[]): TargetSummary {
  const likely = projections.flatMap(({ result, truthH }) =>
    result.kind === "likely between" ? [{ hours: result.hours, toldH: truthH > result.limitH ? Number.POSITIVE_INFINITY : truthH }] : [],
  );
  const notReachable = projections.filter(({ result }) => result.kind === "not reachable as it goes");
  const shareHeld = (which: "middle80" | "middle95"): number =>
    likely.filter(({ hours, toldH }) => toldH >= hours[which].low && toldH <= hours[which].high).length / likely.length;
  return {
    count: projections.length,
    cannotTell: projections.filter(({ result }) => result.kind === "cannot tell").length,
    likely: likely.length,
    held80: shareHeld("middle80"),
    held95: shareHeld("middle95"),
    notReachable: notReachable.length,
    rightlyNotReachable: notReachable.filter(({ truthH, seenH }) => truthH > 3 * seenH).length,
  };
}

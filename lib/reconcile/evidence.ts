/** The readings as evidence: for each one what the story predicts for it, what was read, and how far the two may differ. */
import { cellVoltageOf, cellVoltageSlopeOf } from "./acid-tables.ts";
import type { Case } from "./case.ts";
import { priors } from "./priors.ts";
import type { Story } from "./story.ts";
import type { Switches } from "./unknowns.ts";

export type Evidence = {
  readonly read: number;
  /** Standard uncertainty of the reading and of the formula together, in the reading's unit. */
  readonly uncertainty: number;
  readonly predict: (story: Story) => number;
};

/** What a rest of many hours still leaves of surface charge, V a cell: allowed for where that cause is off. */
const restedResidueV = 0.0015;

/** All readings of a case that the model can predict. Which cell is the weak one is weighed in by weakCellLogOdds. */
export function gatherEvidence(the: Case, on: Switches): Evidence[] {
  const evidence: Evidence[] = [];
  for (const [k, visit] of the.visits.entries()) {
    if (!Number.isNaN(visit.density))
      evidence.push({ read: visit.density, uncertainty: visit.densityUncertainty, predict: (story) => shownDensity(story, k, the.cells) });
    if (!Number.isNaN(visit.restV))
      evidence.push({
        read: visit.restV,
        uncertainty: Math.hypot(
          visit.restUncertaintyV,
          the.cells * priors.restVoltageModelV,
          on.has("surface-charge") ? 0 : the.cells * restedResidueV,
          Number.isNaN(visit.temperatureC) ? the.cells * 0.0002 * priors.unknownTemperatureK : 0,
        ),
        predict: (story) => shownRestV(story, k, the),
      });
    if (!Number.isNaN(visit.crankingA) && !Number.isNaN(the.crankingRatingA))
      evidence.push({
        read: visit.crankingA,
        uncertainty: Math.hypot(visit.crankingUncertaintyA, priors.crankingModel * the.crankingRatingA),
        predict: (story) => shownCrankingA(story, k, the.crankingRatingA),
      });
  }
  if (!Number.isNaN(the.emptyDensity))
    evidence.push({ read: the.emptyDensity, uncertainty: priors.emptyDensityUncertainty, predict: (story) => story.emptyDensity });
  if (!Number.isNaN(the.dischargedAh))
    // A battery called full seldom is, by some per cent of its capacity.
    evidence.push({
      read: the.dischargedAh,
      uncertainty: Math.hypot(the.dischargedUncertaintyAh, 0.04 * the.ratedAh),
      predict: (story) => ((story.missing[0] ?? Number.NaN) - 0.04) * story.capacityAh,
    });
  if (the.contrast !== undefined)
    evidence.push({ read: the.contrast.deficit, uncertainty: the.contrast.uncertainty, predict: (story) => story.weakCellDeficit });
  return evidence;
}

/** Mean density that the hydrometer shows at visit k, kg/l at 25 °C: the top of the acid, with the weak cell's share. */
export function shownDensity(story: Story, k: number, cells: number): number {
  return (story.meanDensity[k] ?? 0) - (story.topDeficit[k] ?? 0) - story.weakCellDeficit / cells + story.hydrometerOffset;
}

/** Rest voltage that the meter shows at visit k, V of the battery. */
export function shownRestV(story: Story, k: number, the: Case): number {
  const temperatureC = the.visits[k]?.temperatureC ?? Number.NaN;
  return (
    restedV(story, k, the.cells, Number.isNaN(temperatureC) ? 25 : temperatureC) +
    the.cells * (story.surfaceV[k] ?? 0) +
    story.voltmeterOffsetV
  );
}

/** Rest voltage without surface charge and meter, V of the battery. */
export function restedV(story: Story, k: number, cells: number, temperatureC: number): number {
  const density = (story.meanDensity[k] ?? 0) + story.platesFollow * (story.topDeficit[k] ?? 0);
  const soundV = cellVoltageOf(density) + cellVoltageSlopeOf(density) * (temperatureC - 25);
  const lostV = story.weakCellDeficit > 0 ? cellVoltageOf(density) - cellVoltageOf(density - story.weakCellDeficit) : 0;
  return cells * soundV - lostV;
}

/** How much of the cranking current a weak cell takes with it, for each kg/l that its acid is weaker; our assumption: 10 % at 0.05. */
const crankingLossPerDensity = 2;

/** Cranking current that a tester shows at visit k, A. */
export function shownCrankingA(story: Story, k: number, ratingA: number): number {
  const held = Math.min(1, Math.max(0, 1 - (story.missing[k] ?? 0)));
  const health = story.crankingHealth * Math.max(0, 1 - crankingLossPerDensity * story.weakCellDeficit);
  return ratingA * health * (story.crankingFloor + (1 - story.crankingFloor) * held);
}

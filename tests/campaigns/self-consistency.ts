/**
 * Simulation-based calibration (Talts, Betancourt, Simpson, Vehtari and Gelman 2018, from memory): draw causes and unknowns from the
 * priors, let the model itself make the readings, examine them, and see where the truth lies in the posterior. If the inference is right,
 * that place is uniform between 0 and 1, whatever the priors. It tests the arithmetic, and says nothing of whether the model is true.
 */
import { type Case, prepareCase } from "../../lib/reconcile/case.ts";
import { listCombinations } from "../../lib/reconcile/combinations.ts";
import { probabilityBelow } from "../../lib/reconcile/estimates.ts";
import { gatherEvidence, shownCrankingA, shownDensity, shownRestV } from "../../lib/reconcile/evidence.ts";
import type { ExplanationId, VisitWitness, Witnesses } from "../../lib/reconcile/index.ts";
import { findPosterior } from "../../lib/reconcile/posterior.ts";
import { priors } from "../../lib/reconcile/priors.ts";
import { blankStory, makeStoryteller, type Story } from "../../lib/reconcile/story.ts";
import { layOut } from "../../lib/reconcile/unknowns.ts";
import type { Random } from "../generator/random.ts";

const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);
const last = (values: Float64Array): number => values.at(-1) ?? Number.NaN;

/** What is placed: one number of a story each. */
export const placedQuantities: Readonly<Record<string, (story: Story) => number>> = {
  "state of charge": (story) => 1 - last(story.missing),
  "charge taken": (story) => sum(story.takenAh),
  "unrecorded charge": (story) => sum(story.hiddenAh),
  "top below mean": (story) => last(story.topDeficit),
  "hydrometer offset": (story) => story.hydrometerOffset,
  "true capacity": (story) => story.capacityAh,
};

/** One draw: the causes that were on, the probability that the posterior gave to them, and the place of each true number. */
export type Placement = {
  readonly causes: readonly ExplanationId[];
  readonly probabilityOfTruth: number;
  readonly probabilityOfBest: number;
  readonly isRight: boolean;
  readonly below: Readonly<Record<string, number>>;
};

/** Draws one truth from the priors, makes its readings, examines them. */
export function placeOnce(design: Witnesses, random: Random): Placement {
  const template = caseOf(design);
  const causes = drawCauses(template, random);
  const on = new Set(causes);
  const at = layOut(template, on);
  const story = blankStory(template);
  makeStoryteller(
    template,
    on,
    at,
  )(
    Float64Array.from({ length: at.size }, () => random.normal()),
    story,
  );
  const posterior = findPosterior(caseOf({ ...design, visits: readAll(design, template, on, story, random) }));
  if (posterior === undefined) throw new Error("the model made readings that it cannot examine");
  const wanted = causes.join("+");
  const best = posterior.combinations[0];
  return {
    causes,
    probabilityOfTruth: posterior.combinations.find((known) => known.causes.join("+") === wanted)?.probability ?? 0,
    probabilityOfBest: best?.probability ?? Number.NaN,
    isRight: best?.causes.join("+") === wanted,
    below: Object.fromEntries(
      Object.entries(placedQuantities).map(([name, read]) => [name, probabilityBelow(posterior, read, read(story))]),
    ),
  };
}

function caseOf(witnesses: Witnesses): Case {
  const the = prepareCase(witnesses);
  if ("why" in the) throw new Error(the.why);
  return the;
}

/** Causes with their prior probabilities, among the combinations that are weighed. */
function drawCauses(the: Case, random: Random): readonly ExplanationId[] {
  const sets = listCombinations(the).map(({ causes, logPrior }) => ({ causes, share: Math.exp(logPrior) }));
  let left = random.uniform() * sets.reduce((total, { share }) => total + share, 0);
  for (const { causes, share } of sets) {
    left -= share;
    if (left <= 0) return causes;
  }
  return [];
}

/** Readings that the story gives, each with its own error; the cells with their own spread, one of them weak where that cause is on. */
function readAll(design: Witnesses, the: Case, on: ReadonlySet<ExplanationId>, story: Story, random: Random): VisitWitness[] {
  const uncertainties = gatherEvidence(the, on).map(({ uncertainty }) => uncertainty);
  const cells = the.cells;
  const weakCell = Math.floor(cells * random.uniform());
  const own = Array.from({ length: cells }, () => priors.cellSpread * random.normal());
  const ownMean = own.reduce((total, deviation) => total + deviation, 0) / cells;
  let next = 0;
  const error = (): number => (uncertainties[next++] ?? Number.NaN) * random.normal();
  return design.visits.map((visit, k) => {
    const { densityAt25C, restV, crankingA } = visit;
    const mean = densityAt25C === undefined ? Number.NaN : shownDensity(story, k, cells) + error();
    const readV = restV === undefined ? Number.NaN : shownRestV(story, k, the) + error();
    const readA = crankingA === undefined ? Number.NaN : shownCrankingA(story, k, the.crankingRatingA) + error();
    const random1 = (densityAt25C?.randomStandardUncertainty ?? 0) * Math.sqrt(cells);
    const errors = own.map(() => random1 * random.normal());
    const errorMean = errors.reduce((total, value) => total + value, 0) / cells;
    const shown = own.map((deviation, cell) => {
      const weaker = cell === weakCell ? story.weakCellDeficit : 0;
      // Contrasts only: the mean of the cells is the mean drawn above, as the model has it.
      return mean + deviation - ownMean + (errors[cell] ?? 0) - errorMean - (weaker - story.weakCellDeficit / cells);
    });
    return {
      ...visit,
      ...(densityAt25C === undefined
        ? {}
        : { densityAt25C: { ...densityAt25C, mean, ...(densityAt25C.cells === undefined ? {} : { cells: shown }) } }),
      ...(restV === undefined ? {} : { restV: { ...restV, value: readV } }),
      ...(crankingA === undefined ? {} : { crankingA: { ...crankingA, value: readA } }),
    };
  });
}

/** A plain test of five visits, the readings of which stand only for what is read; all numbers invented. */
export const plainDesign: Witnesses = {
  battery: { cells: 6, construction: "flooded-calcium", capacityAh: 60, capacityBasis: "printed", crankingRatingA: 540 },
  visits: [24, 14, 3, 16, 30].map((restH, k) => ({
    number: k + 1,
    atMs: Date.UTC(2026, 2, 1) + k * 36 * 3_600_000,
    mixed: false,
    densityAt25C: {
      mean: 1.2,
      randomStandardUncertainty: 0.0012,
      commonStandardUncertainty: 0.0025,
      ...(k === 4 ? { cells: [1.2, 1.2, 1.2, 1.2, 1.2, 1.2] } : {}),
    },
    restV: { value: 12.4, standardUncertainty: 0.005, commonStandardUncertainty: 0.012, restH, temperatureC: 20 },
    crankingA: { value: 450, standardUncertainty: 14 },
  })),
  intervals: [16, 12, 6, 3].map((ah) => ({
    recordedAh: { value: ah, standardUncertainty: 0.01 * ah },
    unseenH: { low: 2, high: 6 },
    unseenBoundAh: { low: 0, high: 30 },
    hoursAboveGassing: ah < 8 ? 3 : 0,
    hours: 36,
  })),
};

/** Chi-square of places against uniform, in so many bins; its degrees of freedom are one less. */
export function chiSquareOfUniform(places: readonly number[], bins: number): number {
  const counts = new Array<number>(bins).fill(0);
  for (const place of places) {
    const bin = Math.min(bins - 1, Math.floor(place * bins));
    counts[bin] = (counts[bin] ?? 0) + 1;
  }
  const expected = places.length / bins;
  return counts.reduce((total, count) => total + (count - expected) ** 2 / expected, 0);
}

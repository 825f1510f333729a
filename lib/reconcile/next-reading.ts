/**
 * The one reading that would tell most. For each candidate the posterior's own draws say what it would show under every combination of
 * causes; the expected fall of the entropy over the combinations is the mutual information of cause and reading (Lindley 1956, from memory).
 */

import type { Case } from "./case.ts";
import { restedV } from "./evidence.ts";
import { type CandidateReadingId, candidateReadings, type NextReading } from "./examination.ts";
import { causeWords, type ExplanationId } from "./explanations.ts";
import type { Posterior } from "./posterior.ts";
import { priors } from "./priors.ts";
import type { Story } from "./story.ts";

type Candidate = {
  readonly label: string;
  readonly unit: string;
  readonly decimals: number;
  /** Standard uncertainty of the new reading itself, in its unit; usual instruments, common practice. */
  readonly uncertainty: number;
  readonly isPossible: (the: Case) => boolean;
  readonly predict: (story: Story, the: Case) => number;
};

const lastOf = (values: Float64Array): number => values[values.length - 1] ?? Number.NaN;

const candidates: Readonly<Record<CandidateReadingId, Candidate>> = {
  "density-after-mixing": {
    label: "Density after the acid was mixed",
    unit: "kg/l",
    decimals: 3,
    uncertainty: 0.0025,
    isPossible: (the) => !the.sealed,
    predict: (story, the) => lastOf(story.meanDensity) - story.weakCellDeficit / the.cells + story.hydrometerOffset,
  },
  "rest-voltage-after-24-h": {
    label: "Rest voltage after 24 h of rest",
    unit: "V",
    decimals: 2,
    uncertainty: 0.02,
    isPossible: () => true,
    predict: (story, the) => restedV(story, the.visits.length - 1, the.cells, 25) + story.voltmeterOffsetV,
  },
  "clamp-current-before-disconnecting": {
    label: "Clamp-meter current just before disconnecting, after the recorder has stopped",
    unit: "A",
    decimals: 2,
    uncertainty: 0.05,
    isPossible: (the) => the.intervals.some(({ mayHide }) => mayHide),
    predict: (story, the) => story.hiddenAh.reduce((sum, ah) => sum + ah, 0) / unseenHours(the),
  },
  "every-cell": {
    label: "Density of every cell, or the voltage of every cell under load",
    unit: "kg/l",
    decimals: 3,
    uncertainty: Math.hypot(priors.cellSpread, 0.0025) * Math.SQRT2,
    isPossible: (the) => !the.sealed && the.contrast === undefined,
    predict: (story) => story.weakCellDeficit,
  },
  "second-hydrometer": {
    label: "A second hydrometer in the same cell",
    unit: "kg/l",
    decimals: 3,
    uncertainty: 0.003,
    isPossible: (the) => !the.sealed && the.visits.some(({ density }) => !Number.isNaN(density)),
    predict: (story) => story.hydrometerOffset - story.temperatureOffset,
  },
  "measured-discharge": {
    label: "A measured discharge at the 20-hour current",
    unit: "Ah",
    decimals: 0,
    uncertainty: 1.5,
    isPossible: () => true,
    predict: (story) => story.capacityAh * (1 - lastOf(story.missing)),
  },
  "acid-temperature": {
    label: "The temperature of the acid",
    unit: "kg/l",
    decimals: 3,
    uncertainty: 0.0007,
    isPossible: (the) => the.temperatureUncertainty > 0,
    predict: (story) => story.temperatureOffset,
  },
};

/** What each reading shows of itself, in words; the numbers follow. */
const shows: Readonly<Record<CandidateReadingId, string>> = {
  "density-after-mixing": "it would read",
  "rest-voltage-after-24-h": "it would read",
  "clamp-current-before-disconnecting": "it would show about",
  "every-cell": "the lowest cell would stand below the others by",
  "second-hydrometer": "the first would read above the second by",
  "measured-discharge": "it would yield",
  "acid-temperature": "the density would move by",
};

/** Readings that tell less than this are not worth a visit, bit. */
const leastBits = 0.02;

/** All candidates that could be taken, those that tell most first. */
export function rankReadings(the: Case, posterior: Posterior): NextReading[] {
  return candidateReadings
    .filter((id) => candidates[id].isPossible(the))
    .map((id) => weighReading(id, the, posterior))
    .sort((a, b) => b.expectedBits - a.expectedBits);
}

/** The best reading; undefined where none would tell anything worth a visit. */
export function bestReading(ranked: readonly NextReading[]): NextReading | undefined {
  const first = ranked[0];
  return first !== undefined && first.expectedBits >= leastBits ? first : undefined;
}

type Predicted = {
  readonly causes: readonly ExplanationId[];
  readonly probability: number;
  readonly values: readonly number[];
};

function weighReading(id: CandidateReadingId, the: Case, posterior: Posterior): NextReading {
  const candidate = candidates[id];
  const predicted = posterior.combinations.map(
    ({ causes, probability, draws }): Predicted => ({
      causes,
      probability,
      values: draws.map((story) => candidate.predict(story, the)),
    }),
  );
  const expectedBits = mutualInformation(predicted, candidate.uncertainty);
  return { id, label: candidate.label, expectedBits, why: sayWhy(id, predicted, expectedBits) };
}

/** Mutual information of combination and reading, bit, summed on a grid three times finer than the reading's uncertainty. */
function mutualInformation(predicted: readonly Predicted[], uncertainty: number): number {
  const all = predicted.flatMap(({ values }) => values);
  const low = Math.min(...all) - 5 * uncertainty;
  const high = Math.max(...all) + 5 * uncertainty;
  if (!Number.isFinite(high - low)) return 0;
  // A long tail must not make the grid endless; its far cells are then coarser than asked, which loses information and invents none.
  const cells = Math.min(600, Math.ceil((3 * (high - low)) / uncertainty) + 1);
  const step = (high - low) / (cells - 1);
  const densities = predicted.map(({ probability, values }) =>
    spread(values, low, step, cells, uncertainty).map((share) => share * probability),
  );
  let bits = 0;
  for (let cell = 0; cell < cells; cell++) {
    const total = densities.reduce((sum, density) => sum + (density[cell] ?? 0), 0);
    for (const [c, density] of densities.entries()) {
      const joint = density[cell] ?? 0;
      if (joint > 0) bits += joint * Math.log2(joint / (total * (predicted[c]?.probability ?? 1)));
    }
  }
  return Math.max(0, bits);
}

/** Values on a grid, each smeared by the reading's own bell. */
function spread(values: readonly number[], low: number, step: number, cells: number, uncertainty: number): Float64Array {
  const bare = new Float64Array(cells);
  for (const value of values) {
    const cell = Math.round((value - low) / step);
    bare[cell] = (bare[cell] ?? 0) + 1 / values.length;
  }
  const reach = Math.ceil((4 * uncertainty) / step);
  const kernel = Array.from({ length: 2 * reach + 1 }, (_, i) => Math.exp(-0.5 * (((i - reach) * step) / uncertainty) ** 2));
  const kernelSum = kernel.reduce((sum, share) => sum + share, 0);
  const smeared = new Float64Array(cells);
  for (let cell = 0; cell < cells; cell++) {
    const weight = bare[cell] ?? 0;
    if (weight === 0) continue;
    for (const [i, share] of kernel.entries()) {
      const to = Math.min(cells - 1, Math.max(0, cell + i - reach));
      smeared[to] = (smeared[to] ?? 0) + (weight * share) / kernelSum;
    }
  }
  return smeared;
}

/** What the reading would show under the best combination and under the rival that it tells apart best, as 90 % ranges. */
function sayWhy(id: CandidateReadingId, predicted: readonly Predicted[], expectedBits: number): string {
  const { uncertainty, decimals, unit } = candidates[id];
  const ranges = predicted.map(({ causes, probability, values }) => ({ causes, probability, ...middleAndSpread(values, uncertainty) }));
  const [best, ...others] = ranges;
  if (best === undefined || others.length === 0 || expectedBits < leastBits)
    return "it would hardly move the balance between the explanations";
  const apart = (other: typeof best): number =>
    (Math.abs(other.middle - best.middle) / Math.hypot(other.deviation, best.deviation)) * Math.sqrt(other.probability);
  const rival = others.reduce((a, b) => (apart(b) > apart(a) ? b : a));
  const range = ({ middle, deviation }: typeof best): string =>
    `${(middle - 1.645 * deviation).toFixed(decimals)} to ${(middle + 1.645 * deviation).toFixed(decimals)} ${unit}`;
  return `${shows[id]} ${range(best)} if the cause is “${nameOf(best.causes)}”, and ${range(rival)} if it is “${nameOf(rival.causes)}”`;
}

function middleAndSpread(values: readonly number[], uncertainty: number): { middle: number; deviation: number } {
  const middle = values.reduce((sum, value) => sum + value, 0) / values.length;
  const variance = values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / values.length;
  return { middle, deviation: Math.hypot(Math.sqrt(variance), uncertainty) };
}

/** Causes in words, joined. */
export function nameOf(causes: readonly ExplanationId[]): string {
  return causes.length === 0
    ? causeWords["nothing-to-explain"].label.toLowerCase()
    : causes.map((cause) => causeWords[cause].label.toLowerCase()).join(" and ");
}

function unseenHours(the: Case): number {
  const hours = the.intervals.reduce((sum, interval) => sum + (interval.mayHide ? interval.unseenH : 0), 0);
  return Math.max(1, hours);
}

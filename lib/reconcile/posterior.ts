/** The posterior as draws: for every combination of causes that counts, stories as a walk through the posterior meets them. */
import type { Case } from "./case.ts";
import { solveUpper } from "./cholesky.ts";
import { listCombinations } from "./combinations.ts";
import { gatherEvidence } from "./evidence.ts";
import type { ExplanationId } from "./explanations.ts";
import { type Bell, findBell, misfitOf, type Residuals } from "./laplace.ts";
import { type Numbers, startNumbers } from "./numbers.ts";
import { blankStory, makeStoryteller, type Story, type Storyteller } from "./story.ts";
import { carryOver, type Layout, layOut, type Switches } from "./unknowns.ts";

export type PosteriorCombination = {
  readonly causes: readonly ExplanationId[];
  readonly probability: number;
  /** Its draws; their number is to that of all as its probability, so that a very small one has none. */
  readonly draws: readonly Story[];
};

export type Posterior = {
  /** Most probable first. */
  readonly combinations: readonly PosteriorCombination[];
  /** Draws in all. */
  readonly drawCount: number;
};

/** Combinations less probable than this against the best by Laplace's formula are left out. */
const leastShare = 2e-3;
/** Points of a bell by which Laplace's integral is corrected; half of them are the mirror images of the others. */
const integralPoints = 192;
/** Steps of the walks over all combinations, shared out by probability, and every how many of them one is kept as a draw. */
const walkSteps = 4000;
const keepEvery = 5;
/** Length of a step against the wide bell's width. */
const stepLength = 0.35;

type Fitted = {
  readonly causes: readonly ExplanationId[];
  readonly at: Layout;
  readonly tell: Storyteller;
  readonly residuals: Residuals;
  readonly bell: Bell;
  readonly readings: number;
  readonly logWeight: number;
};

/**
 * Weighs all combinations of causes and draws from them.
 * @returns undefined where the model has no finite value for these readings
 */
export function findPosterior(the: Case): Posterior | undefined {
  const fits = fitAll(the);
  const best = Math.max(...fits.map(({ logWeight }) => logWeight));
  if (!Number.isFinite(best)) return undefined;
  const counting = fits.filter(({ logWeight }) => logWeight > best + Math.log(leastShare));
  const numbers = startNumbers(20_260_401);
  const weighed = counting.map((fitted) => {
    const correction = correctIntegral(fitted, numbers);
    return { fitted, share: Math.exp(fitted.logWeight - best) * correction };
  });
  const total = weighed.reduce((sum, { share }) => sum + share, 0);
  if (!(total > 0)) return undefined;
  const combinations = weighed
    .map(({ fitted, share }): PosteriorCombination => {
      const probability = share / total;
      return {
        causes: fitted.causes,
        probability,
        draws: walk(the, fitted, Math.round((probability * walkSteps) / keepEvery), numbers),
      };
    })
    .sort((a, b) => b.probability - a.probability);
  return { combinations, drawCount: combinations.reduce((sum, { draws }) => sum + draws.length, 0) };
}

/** Fits every combination; the climb of a pair starts where its better single cause ended. */
function fitAll(the: Case): Fitted[] {
  const fits: Fitted[] = [];
  for (const { causes, logPrior } of listCombinations(the)) {
    const parents = fits.filter((known) => known.causes.length < causes.length && known.causes.every((cause) => causes.includes(cause)));
    const parent = parents.reduce<Fitted | undefined>((a, b) => (a === undefined || b.bell.misfit < a.bell.misfit ? b : a), undefined);
    const fitted = fitCombination(the, causes, logPrior, parent);
    if (fitted !== undefined) fits.push(fitted);
  }
  return fits;
}

function fitCombination(the: Case, causes: readonly ExplanationId[], logPrior: number, parent: Fitted | undefined): Fitted | undefined {
  const on: Switches = new Set(causes);
  const at = layOut(the, on);
  const evidence = gatherEvidence(the, on);
  const tell = makeStoryteller(the, on, at);
  const story = blankStory(the);
  const residuals: Residuals = (z, into) => {
    tell(z, story);
    for (let i = 0; i < evidence.length; i++) {
      const item = evidence[i];
      if (item !== undefined) into[i] = (item.predict(story) - item.read) / item.uncertainty;
    }
  };
  const start = parent === undefined ? new Float64Array(at.size) : carryOver(parent.at, parent.bell.top, at);
  const bell = findBell(residuals, at.size, evidence.length, start);
  if (bell === undefined) return undefined;
  // Any of the cells might have been the weak one.
  const whichCell = on.has("weak-cell") && the.contrast !== undefined ? -Math.log(the.contrast.cells) : 0;
  const scales = evidence.reduce((sum, { uncertainty }) => sum + Math.log(uncertainty), 0);
  return { causes, at, tell, residuals, bell, readings: evidence.length, logWeight: logPrior + bell.logIntegral + whichCell - scales };
}

/**
 * How far Laplace's integral is off: the mean of true over bell at points of the bell.
 * No point may outweigh the rest: weights are cut at their mean times the root of their number (Ionides 2008, from memory).
 */
function correctIntegral({ at, bell, residuals, readings }: Fitted, numbers: Numbers): number {
  const weights = new Float64Array(integralPoints);
  const point = new Float64Array(at.size);
  const z = new Float64Array(at.size);
  const r = new Float64Array(readings);
  for (let index = 0; index < integralPoints; index++) {
    if (index % 2 === 0) for (let i = 0; i < point.length; i++) point[i] = numbers.normal();
    else for (let i = 0; i < point.length; i++) point[i] = -(point[i] ?? 0);
    const ratio = Math.exp(bell.misfit - excessMisfit(bell.top, bell.root, residuals, point, z, r));
    weights[index] = Number.isFinite(ratio) ? ratio : 0;
  }
  const most = sumOf(weights) / Math.sqrt(integralPoints);
  return sumOf(weights.map((weight) => Math.min(most, weight))) / integralPoints;
}

/**
 * Walks through the posterior of one combination, from its top, and keeps a story every few steps.
 * A step shrinks the way from the bell's top a little and adds chance, which leaves the bell itself as it is, and is taken with the
 * probability that corrects for where posterior and bell differ (Metropolis 1953; Neal 1998; both from memory). Weighted points of the bell
 * alone would miss the tails that it lacks.
 */
function walk(the: Case, { at, tell, bell, residuals, readings }: Fitted, draws: number, numbers: Numbers): Story[] {
  const stay = Math.sqrt(1 - stepLength * stepLength);
  const r = new Float64Array(readings);
  const trial = new Float64Array(at.size);
  const here = new Float64Array(at.size);
  const z = new Float64Array(at.size);
  let excess = excessMisfit(bell.top, bell.wideRoot, residuals, here, z, r);
  const stories: Story[] = [];
  while (stories.length < draws) {
    for (let step = 0; step < keepEvery; step++) {
      for (let i = 0; i < trial.length; i++) trial[i] = stay * (here[i] ?? 0) + stepLength * numbers.normal();
      const trialExcess = excessMisfit(bell.top, bell.wideRoot, residuals, trial, z, r);
      if (Math.log(numbers.uniform()) < excess - trialExcess) {
        here.set(trial);
        excess = trialExcess;
      }
    }
    const story = blankStory(the);
    place(bell.top, bell.wideRoot, here, z);
    tell(z, story);
    stories.push(story);
  }
  return stories;
}

/** From the bell's own coordinates, in which it is round and stands at nought, to the unknowns. */
function place(top: Float64Array, root: Float64Array, point: Float64Array, z: Float64Array): void {
  z.set(point);
  solveUpper(root, z.length, z);
  for (let i = 0; i < z.length; i++) z[i] = (z[i] ?? 0) + (top[i] ?? 0);
}

const none = new Float64Array(0);

/** How much worse the posterior fits than the bell says: minus the logarithm of true over bell. Leaves the unknowns in z. */
function excessMisfit(
  top: Float64Array,
  root: Float64Array,
  residuals: Residuals,
  point: Float64Array,
  z: Float64Array,
  r: Float64Array,
): number {
  place(top, root, point, z);
  residuals(z, r);
  return misfitOf(z, r) - misfitOf(point, none);
}

function sumOf(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0);
}

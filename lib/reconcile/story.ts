/**
 * The model itself: from the unknowns to what happened to the battery, visit by visit.
 *
 *   missing charge --charge, less gas--> missing charge --acid balance--> mean density --less the top's deficit--> what the hydrometer meets
 *                                                                             \--plus what lies below--> rest voltage, plus surface charge
 */
import { acidKgPerAh, waterKgPerAh } from "../electrochem/constants.ts";
import { waterElectrolysedG } from "../electrochem/faraday.ts";
import { hoursPerMonth } from "../electrochem/self-discharge.ts";
import { normalCdf } from "../units/normal-distribution.ts";
import { densityOf, weightFractionOf } from "./acid-tables.ts";
import type { Case, CaseInterval } from "./case.ts";
import { missingAfterCharge } from "./charge-path.ts";
import { type Lognormal, priors } from "./priors.ts";
import type { Layout, Switches } from "./unknowns.ts";

/** What happened, under one set of unknowns. One story is written over again and again, for speed. */
export type Story = {
  capacityAh: number;
  /** Mean density, kg/l at 25 °C, when full, and when the whole capacity is used up. */
  fullDensity: number;
  emptyDensity: number;
  hydrometerOffset: number;
  /** The part of the offset that an assumed acid temperature brings, kg/l. */
  temperatureOffset: number;
  voltmeterOffsetV: number;
  weakCellDeficit: number;
  /** How far the plates follow the heavier acid, as a share of the top's deficit. */
  platesFollow: number;
  /** Share of the rated cranking current that the full battery gives, and the share of that which is left when empty. */
  crankingHealth: number;
  crankingFloor: number;
  /** By visit: share of the capacity missing; kg/l at 25 °C; kg/l; V of one cell. */
  readonly missing: Float64Array;
  readonly meanDensity: Float64Array;
  readonly topDeficit: Float64Array;
  readonly surfaceV: Float64Array;
  /** By interval, Ah: at the posts, unrecorded, and taken by the plates. */
  readonly throughAh: Float64Array;
  readonly hiddenAh: Float64Array;
  readonly takenAh: Float64Array;
};

/** Writes into `story` what happened under the unknowns z. */
export type Storyteller = (z: Float64Array, story: Story) => void;

/** A story with all numbers nought, to be written over. */
export function blankStory(the: Case): Story {
  const byVisit = (): Float64Array => new Float64Array(the.visits.length);
  const byInterval = (): Float64Array => new Float64Array(the.intervals.length);
  return {
    capacityAh: 0,
    fullDensity: 0,
    emptyDensity: 0,
    hydrometerOffset: 0,
    temperatureOffset: 0,
    voltmeterOffsetV: 0,
    weakCellDeficit: 0,
    platesFollow: 0,
    crankingHealth: 0,
    crankingFloor: 0,
    missing: byVisit(),
    meanDensity: byVisit(),
    topDeficit: byVisit(),
    surfaceV: byVisit(),
    throughAh: byInterval(),
    hiddenAh: byInterval(),
    takenAh: byInterval(),
  };
}

/**
 * Makes the storyteller of a case under one set of switches.
 * @param at  where each unknown stands in z; those that are absent stand at their prior's middle
 */
export function makeStoryteller(the: Case, on: Switches, at: Layout): Storyteller {
  const writeThings = describeThings(the, on, at);
  const writeAcid = describeAcid(the, on, at);
  const writeSurface = describeSurface(the, on, at);
  return (z, story) => {
    writeThings(z, story);
    writeAcid(z, story);
    writeSurface(z, story);
  };
}

/** What does not change from visit to visit, save the acid. */
function describeThings(the: Case, on: Switches, at: Layout): Storyteller {
  const capacityShare = priors.capacityShare[on.has("rating-wrong") ? "rating-wrong" : the.capacityBasis];
  const hydrometerUncertainty = on.has("hydrometer-off")
    ? Math.hypot(priors.hydrometerOff, the.hydrometerUncertainty)
    : the.hydrometerUncertainty;
  const { weakCellDeficit, platesFollow, crankingHealth, crankingFloor } = priors;
  const hasWeakCell = on.has("weak-cell");
  return (z, story) => {
    story.capacityAh = the.ratedAh * lognormal(capacityShare, z, at.capacity);
    story.fullDensity = the.fullDensity + the.fullDensityUncertainty * valueAt(z, at.fullDensity);
    story.temperatureOffset = the.temperatureUncertainty * valueAt(z, at.acidTemperature);
    story.hydrometerOffset = hydrometerUncertainty * valueAt(z, at.hydrometer) + story.temperatureOffset;
    story.voltmeterOffsetV = the.voltmeterUncertaintyV * valueAt(z, at.voltmeter);
    story.weakCellDeficit = hasWeakCell ? lognormal(weakCellDeficit, z, at.weakCell) : 0;
    story.platesFollow = lognormal(platesFollow, z, at.platesFollow);
    story.crankingHealth = lognormal(crankingHealth, z, at.crankingHealth);
    story.crankingFloor = crankingFloor.centre + crankingFloor.spread * valueAt(z, at.crankingFloor);
  };
}

const waterSplitKgPerAh = waterElectrolysedG(1, 1) / 1000;
const growthKgPerAh = acidKgPerAh - waterKgPerAh;

/** Mean density of one cell's acid, kg/l at 25 °C, with `missingAh` of charge missing and `gassedAh` gone into gas since the start. */
function meanDensity(fullKg: number, fullAcidKg: number, missingAh: number, gassedAh: number): number {
  return densityOf((fullAcidKg - acidKgPerAh * missingAh) / (fullKg - growthKgPerAh * missingAh - waterSplitKgPerAh * gassedAh));
}

/** Charge and acid, interval by interval. */
function describeAcid(the: Case, on: Switches, at: Layout): Storyteller {
  const isUnmixed = on.has("acid-not-mixed");
  // A label that lies about the capacity lies about the acid that was reckoned from it; wear takes capacity and leaves the acid.
  const acidFollowsCapacity = on.has("rating-wrong") && the.acidFromRating;
  const usualCapacityAh = the.ratedAh * priors.capacityShare[the.capacityBasis].median;
  const start = describeStart(the, isUnmixed, at);
  const pass = describeInterval(at);
  const state: AcidState = blankState();
  return (z, story) => {
    const acidShare = acidFollowsCapacity ? story.capacityAh / usualCapacityAh : 1;
    const fullKg = the.acidKg * Math.exp(the.acidSpread * valueAt(z, at.acidMass)) * acidShare;
    const fullAcidKg = weightFractionOf(story.fullDensity) * fullKg;
    story.emptyDensity = meanDensity(fullKg, fullAcidKg, story.capacityAh, 0);
    start(z, state, fullKg / story.capacityAh);
    let density = meanDensity(fullKg, fullAcidKg, (state.ready + state.hard) * story.capacityAh, 0);
    for (let k = 0; k < the.visits.length; k++) {
      const interval = the.intervals[k - 1];
      if (interval !== undefined) {
        pass(z, state, interval, k - 1, story);
        const after = meanDensity(fullKg, fullAcidKg, (state.ready + state.hard) * story.capacityAh, state.gassedAh);
        const rise = Math.max(0, after - density);
        state.top = the.visits[k]?.mixed ? 0 : (state.top + state.sinking * rise) * Math.exp(-state.mixing);
        density = after;
      }
      story.missing[k] = state.ready + state.hard;
      story.meanDensity[k] = density;
      story.topDeficit[k] = state.top;
    }
  };
}

/** What moves from visit to visit, and the rates by which it does. */
type AcidState = {
  /** Shares of the capacity: charge missing that the plates take readily, and that which waits for hard sulphate to dissolve. */
  ready: number;
  hard: number;
  gassedAh: number;
  /** How much weaker the top is than the mean, kg/l. */
  top: number;
  /** Exponent by which the last interval evened out the layers. */
  mixing: number;
  sinking: number;
};

function blankState(): AcidState {
  return { ready: 0, hard: 0, gassedAh: 0, top: 0, mixing: 0, sinking: 0 };
}

function describeStart(the: Case, isUnmixed: boolean, at: Layout): (z: Float64Array, state: AcidState, kgPerAh: number) => void {
  const usualKgPerAh = the.acidKg / (the.ratedAh * priors.capacityShare[the.capacityBasis].median);
  const { hardSulphate, startTopDeficit, sinkingShare } = priors;
  const isMixed = the.visits[0]?.mixed === true;
  return (z, state, kgPerAh) => {
    const missing = (normalCdf(valueAt(z, at.missingAtStart)) * kgPerAh) / usualKgPerAh;
    const hard = lognormal(hardSulphate, z, at.hardSulphate);
    // No more can be hard than is missing: a smooth lesser of the two, so that slopes stay.
    state.hard = (missing * hard) / (missing + hard);
    state.ready = missing - state.hard;
    state.gassedAh = 0;
    state.top = isMixed ? 0 : isUnmixed ? lognormal(startTopDeficit.on, z, at.startTop) : startTopDeficit.off;
    state.sinking = isUnmixed ? normalCdf(valueAt(z, at.sinking)) : lognormal(sinkingShare.off, z, at.sinking);
  };
}

type Passage = (z: Float64Array, state: AcidState, interval: CaseInterval, k: number, story: Story) => void;

/** One interval: hard sulphate dissolves, recorded charge goes in, then unrecorded; the rest stands and loses a little. */
function describeInterval(at: Layout): Passage {
  const { gassingShare, gentleGassing, bulkLoss, dissolvingPerH, selfDischargePerMonth, slippedCharge, unseenGassing } = priors;
  const { slowMixingPerH, gasMixingPerH, unknownMixing, ownMixingSpread } = priors;
  return (z, state, interval, k, story) => {
    const { capacityAh } = story;
    const before = state.ready + state.hard;
    const dissolved = state.hard * -Math.expm1(-lognormal(dissolvingPerH, z, at.dissolving) * interval.hours);
    state.hard -= dissolved;
    const readyBefore = state.ready + dissolved;

    const gassingScale = lognormal(gassingShare, z, at.gassing) * Math.exp(gassingShare.ownSpread * valueAt(z, at.ownGassing[k] ?? -1));
    const seenScale = gassingScale * (interval.hoursAboveGassing < gentleGassing.underH ? gentleGassing.factor : 1);
    const acceptance = 1 - Math.min(0.5, lognormal(bulkLoss, z, at.bulkLoss));
    const recordedAh = Number.isNaN(interval.recordedAh)
      ? 0
      : interval.recordedAh + interval.recordedUncertaintyAh * valueAt(z, at.recorderGain);
    const afterRecorded = missingAfterCharge(readyBefore, recordedAh / capacityAh, seenScale, acceptance);
    const place = at.hidden[k] ?? -1;
    const hiddenAh =
      place < 0
        ? slipIn(interval, capacityAh * lognormal(slippedCharge, z, at.slipped))
        : hiddenCharge(
            interval,
            afterRecorded,
            capacityAh,
            valueAt(z, at.unseenCharging),
            valueAt(z, place),
            lognormal(unseenGassing, z, at.unseenGassing),
          );
    const readyAfter = missingAfterCharge(afterRecorded, hiddenAh / capacityAh, gassingScale, acceptance);

    state.gassedAh += Math.max(0, recordedAh + hiddenAh - (readyBefore - readyAfter) * capacityAh);
    state.ready = readyAfter + (lognormal(selfDischargePerMonth, z, at.selfDischarge) / hoursPerMonth) * interval.hours;
    const byGas = Number.isNaN(interval.hoursAboveGassing)
      ? unknownMixing
      : lognormal(gasMixingPerH, z, at.gasMixing) * interval.hoursAboveGassing;
    const slowly = lognormal(slowMixingPerH, z, at.slowMixing) * interval.hours;
    state.mixing = Math.exp(ownMixingSpread * valueAt(z, at.ownMixing[k] ?? -1)) * (byGas + slowly);

    story.hiddenAh[k] = hiddenAh;
    story.throughAh[k] = recordedAh + hiddenAh;
    story.takenAh[k] = (before - state.ready - state.hard) * capacityAh;
  };
}

/**
 * Charge that went in while nobody recorded: of what the battery lacked the part that it takes in so many hours, and gas beside it.
 * The current of a charger falls as the battery fills, so unseen hours cannot put in much more than was missing.
 */
function hiddenCharge(interval: CaseInterval, ready: number, capacityAh: number, common: number, own: number, gassing: number): number {
  if (!interval.mayHide) return 0;
  const prior = Number.isNaN(interval.recordedAh) ? priors.unloggedCharging : priors.unseenCharging;
  const hours = prior.median * Math.exp(prior.spread * common + prior.ownSpread * own);
  return within(interval, capacityAh * (Math.max(0, ready) * -Math.expm1(-hours) + gassing * hours));
}

function slipIn(interval: CaseInterval, slippedAh: number): number {
  return interval.mayHide ? within(interval, slippedAh) : 0;
}

/** Never beyond what the charger could have given: the bound is approached, and not struck, so that slopes stay. */
function within({ hiddenLowAh, hiddenHighAh }: CaseInterval, freeAh: number): number {
  const roomAh = hiddenHighAh - hiddenLowAh;
  if (!Number.isFinite(roomAh)) return hiddenLowAh + freeAh;
  return hiddenLowAh + (roomAh > 0 ? roomAh * -Math.expm1(-freeAh / roomAh) : 0);
}

/** What is left of the surface charge at each visit. */
function describeSurface(the: Case, on: Switches, at: Layout): Storyteller {
  const { surfaceDecayH, surfaceChargeV, unknownRestH } = priors;
  if (!on.has("surface-charge")) return (_, story) => story.surfaceV.fill(0);
  const restsH = the.visits.map(({ restH }) => (Number.isNaN(restH) ? unknownRestH : restH));
  return (z, story) => {
    const decayH = lognormal(surfaceDecayH, z, at.surfaceDecay);
    for (let k = 0; k < restsH.length; k++) {
      const place = at.surface[k] ?? -1;
      story.surfaceV[k] = place < 0 ? 0 : lognormal(surfaceChargeV, z, place) * Math.exp(-(restsH[k] ?? 0) / decayH);
    }
  };
}

/** An unknown by its place; an absent one stands at nought, its prior's middle. */
function valueAt(z: Float64Array, place: number): number {
  return place < 0 ? 0 : (z[place] ?? 0);
}

function lognormal({ median, spread }: Lognormal, z: Float64Array, place: number): number {
  return place < 0 ? median : median * Math.exp(spread * (z[place] ?? 0));
}

/** The unknowns of one combination of causes: which there are, and where each stands in the vector of standard normal numbers. */
import type { Case } from "./case.ts";
import type { ExplanationId } from "./explanations.ts";

/** Which switches are on. */
export type Switches = ReadonlySet<ExplanationId>;

/** Places in the vector; absent unknowns are left out, those by visit or interval are -1 where that one has none. */
export type Layout = {
  readonly size: number;
  readonly missingAtStart: number;
  readonly capacity: number;
  readonly acidMass: number;
  readonly fullDensity: number;
  readonly recorderGain: number;
  readonly hardSulphate: number;
  readonly dissolving: number;
  readonly bulkLoss: number;
  readonly gassing: number;
  readonly ownGassing: readonly number[];
  readonly selfDischarge: number;
  readonly hydrometer: number;
  readonly acidTemperature: number;
  readonly voltmeter: number;
  readonly platesFollow: number;
  readonly sinking: number;
  readonly startTop: number;
  readonly slowMixing: number;
  readonly gasMixing: number;
  readonly ownMixing: readonly number[];
  readonly slipped: number;
  readonly hidden: readonly number[];
  readonly unseenCharging: number;
  readonly unseenGassing: number;
  readonly surface: readonly number[];
  readonly surfaceDecay: number;
  readonly weakCell: number;
  readonly crankingHealth: number;
  readonly crankingFloor: number;
};

/** Lays out the unknowns that this case has under these switches. Those that no reading could touch are left out, as their prior stays. */
export function layOut(the: Case, on: Switches): Layout {
  let size = 0;
  const next = (present: boolean): number => (present ? size++ : -1);
  const readsDensity = the.visits.some(({ density }) => !Number.isNaN(density));
  const readsVoltage = the.visits.some(({ restV }) => !Number.isNaN(restV));
  const cranks = !Number.isNaN(the.crankingRatingA) && the.visits.some(({ crankingA }) => !Number.isNaN(crankingA));
  const charged = the.intervals.length > 0;
  const unmixed = on.has("acid-not-mixed");
  const hides = on.has("charge-unrecorded");
  const surface = on.has("surface-charge");
  return {
    missingAtStart: next(true),
    capacity: next(true),
    acidMass: next(true),
    fullDensity: next(true),
    recorderGain: next(charged),
    hardSulphate: next(charged),
    dissolving: next(charged),
    bulkLoss: next(charged),
    gassing: next(charged),
    ownGassing: the.intervals.map(() => next(true)),
    selfDischarge: next(charged),
    hydrometer: next(readsDensity),
    acidTemperature: next(readsDensity && the.temperatureUncertainty > 0),
    voltmeter: next(readsVoltage),
    platesFollow: next(unmixed && readsVoltage),
    sinking: next(charged && !the.sealed),
    startTop: next(unmixed),
    slowMixing: next(unmixed && charged),
    gasMixing: next(unmixed && the.intervals.some(({ hoursAboveGassing }) => !Number.isNaN(hoursAboveGassing))),
    ownMixing: the.intervals.map((_, k) => next(unmixed && the.visits[k + 1]?.mixed !== true)),
    slipped: next(the.intervals.some(({ mayHide }) => mayHide)),
    hidden: the.intervals.map(({ mayHide, recordedAh }) => next(mayHide && (hides || Number.isNaN(recordedAh)))),
    unseenCharging: next(hides),
    unseenGassing: next(the.intervals.some(({ mayHide, recordedAh }) => mayHide && (hides || Number.isNaN(recordedAh)))),
    surface: the.visits.map(({ restV }, k) => next(surface && k > 0 && !Number.isNaN(restV))),
    surfaceDecay: next(surface),
    weakCell: next(on.has("weak-cell")),
    crankingHealth: next(cranks),
    crankingFloor: next(cranks),
    get size() {
      return size;
    },
  };
}

/**
 * A starting point for one layout from the unknowns found under another: what both have is carried over, what is new starts at its prior.
 */
export function carryOver(from: Layout, z: Float64Array, to: Layout): Float64Array {
  const start = new Float64Array(to.size);
  for (const key of Object.keys(to) as (keyof Layout)[]) {
    if (key === "size") continue;
    const [olds, news] = [[from[key]].flat(), [to[key]].flat()];
    for (const [i, place] of news.entries()) {
      const old = olds[i] ?? -1;
      if (place >= 0 && old >= 0) start[place] = z[old] ?? 0;
    }
  }
  return start;
}

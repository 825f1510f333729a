/**
 * Every number that the cross-examination assumes before it looks at a reading. docs/reconciliation.md prints them with their reasons;
 * where no source is named the number is our assumption.
 *
 * "median, spread" is a lognormal quantity: median · exp(spread · z), z standard normal. Two thirds of it lie within a factor exp(spread).
 */

/** A quantity that cannot fall below zero. */
export type Lognormal = { readonly median: number; readonly spread: number };

export const priors = {
  /** Probability of each switch before any reading; two depend on what is known of rest and unseen hours: see below. */
  switches: {
    "acid-not-mixed": 0.2,
    "weak-cell": 0.08,
    "rating-wrong": 0.06,
    "hydrometer-off": 0.08,
  },

  /** True capacity over rated. A battery in use has lost a little; a wrong rating is mostly too high. */
  capacityShare: {
    printed: { median: 0.945, spread: 0.05 },
    measured: { median: 1, spread: 0.04 },
    "rating-wrong": { median: 0.72, spread: 0.25 },
  },
  /** Spread of the acid's mass about what the record says, and about what the capacity suggests where it says nothing; sealed: starved of acid. */
  acidMassSpread: { recorded: 0.03, estimated: 0.06, sealed: 0.15 },
  /** Standard uncertainty of the full density, kg/l: of the record's own, and of the usual one where the record has none. */
  fullDensityUncertainty: { recorded: 0.003, usual: 0.006 },
  /** … and of the density at which the capacity is used up, where the record gives one. */
  emptyDensityUncertainty: 0.012,

  /** Missing share below which gas takes most of the charge; over all intervals, and one interval's own factor. */
  gassingShare: { median: 0.03, spread: 1, ownSpread: 0.5 },
  /** Factor on that where the recorder saw the gassing voltage reached for no more than this long; gas falls e-fold in 0.09 V a cell (Schiffer 2007). */
  gentleGassing: { factor: 0.2, underH: 0.25 },
  /** Hard sulphate, a share of the capacity that takes charge only as it dissolves, and the rate at which it does. */
  hardSulphate: { median: 0.03, spread: 0.8 },
  dissolvingPerH: { median: 0.008, spread: 1 },
  /** Share of the charge that is lost far from full. Under 5 %: Stevens and Corey 1996, as read. */
  bulkLoss: { median: 0.004, spread: 1.2 },
  /** Share of the capacity lost a month at rest. Calcium 2 to 10 %, antimony more (read). */
  selfDischargePerMonth: { median: 0.012, spread: 1.3 },

  /** Top weaker than the mean, kg/l: at the first visit, and the share of each rise that the top does not follow; any share
   *  from 0 to 1 is alike where the acid is not mixed. */
  startTopDeficit: { off: 0.0003, on: { median: 0.0015, spread: 1.2 } },
  sinkingShare: { off: { median: 0.02, spread: 0.8 } },
  /** Layers even out: by diffusion (weeks, common practice) and the little gas below the gassing voltage, a rate for every hour … */
  slowMixingPerH: { median: 0.004, spread: 1 },
  /** … and for each hour above the gassing voltage. */
  gasMixingPerH: { median: 0.12, spread: 0.9 },
  /** What the mixing amounts to where nobody knows the hours above gassing, as an exponent. */
  unknownMixing: 0.5,
  ownMixingSpread: 0.5,
  /** How far the plates' voltage follows the heavier acid: density above the mean, as a share of the top's deficit. */
  platesFollow: { median: 0.12, spread: 0.8 },

  /** Unrecorded charge over capacity that slips through in any test. */
  slippedCharge: { median: 0.002, spread: 1 },
  /** How long unseen hours went on, against the hours in which the battery takes 63 % of what it lacks: of all intervals, and one's own. */
  unseenCharging: { median: 0.4, spread: 1, ownSpread: 0.9 },
  /** … and where nothing at all was recorded. */
  unloggedCharging: { median: 1, spread: 0, ownSpread: 1.2 },
  /** Charge over capacity that goes into a full battery, as gas, in that same time. */
  unseenGassing: { median: 0.01, spread: 1.2 },

  /** Surface charge just after charging, V a cell, with one visit's own factor, and the hours in which it falls to a third. */
  surfaceChargeV: { median: 0.05, spread: 0.5 },
  surfaceDecayH: { median: 3.2, spread: 0.25 },
  /** Rest taken where nobody noted it, h. */
  unknownRestH: 4,

  /** How much weaker the weak cell's acid is, kg/l. Vehicle manuals reject at 0.040 to 0.050 (common practice). */
  weakCellDeficit: { median: 0.05, spread: 0.5 },
  /** Spread of sound cells about their mean, kg/l. */
  cellSpread: 0.004,
  /** What a hydrometer that reads off may be off by, kg/l. */
  hydrometerOff: 0.02,

  /** Cranking current over rating when full, and the share of that which is left when empty. */
  crankingHealth: { median: 0.93, spread: 0.08 },
  crankingFloor: { centre: 0.45, spread: 0.12 },
  /** A tester's estimate of cranking current is no measurement of it: its own scatter, as a share. */
  crankingModel: 0.04,

  /** What the formulas themselves leave open: density from mass, kg/l, and rest voltage from density, V a cell. */
  densityModel: 0.0012,
  restVoltageModelV: 0.002,
  /** A temperature that nobody took may be this far from 25 °C, K. */
  unknownTemperatureK: 6,
} as const;

/**
 * What counts as nought where an estimate is given: less than any shop could tell from nothing. Charge as a share of the rated capacity,
 * kg/l at the top of the acid, and V of surface charge a cell.
 */
export const noughts = { chargeShare: 0.01, topDensity: 0.003, surfaceV: 0.003 } as const;

/** Usual densities of a battery whose record gives none, kg/l at 25 °C (common practice), and of the acid in sealed ones (from memory). */
export const usualDensities = {
  vented: { full: 1.28, empty: 1.12 },
  sealed: { full: 1.3, empty: 1.1 },
} as const;

/**
 * Probability, before any reading, that surface charge matters: it is there for hours after every charge.
 * @param shortestRestH  the shortest rest, h, before any rest voltage that followed a charge
 * @returns 0 to 1; the middle value for NaN, which stands for a rest that nobody noted
 * Vehicle manuals want 2 to 4 h (read), standards 24 h (from memory); between, our straight line.
 */
export function surfaceChargePrior(shortestRestH: number): number {
  if (Number.isNaN(shortestRestH)) return 0.3;
  return Math.min(0.6, Math.max(0.02, 0.6 - (0.58 * (shortestRestH - 2)) / 8));
}

/**
 * Probability, before any reading, that charge worth speaking of went in while nobody recorded.
 * @param roomShare  most that can have gone in unseen, over the capacity; Infinity where nothing bounds it
 * @returns 0 to 1; our assumption: where there is room for a tenth of the capacity it happens in three tests of ten
 */
export function unrecordedChargePrior(roomShare: number): number {
  return roomShare > 0.1 ? 0.3 : 0.1;
}

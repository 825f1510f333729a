/**
 * What the four witnesses of a battery's charge said: density, rest voltage, recorded charge and cranking current. Plain data, so that
 * whoever reads logs and readings can fill it in. Everything a real shop may lack is optional; a number that is not finite counts as lacking.
 */

/** A reading: its value, and a standard uncertainty of the *random* part, which the next reading would not share. Both in one unit. */
export type Reading = { readonly value: number; readonly standardUncertainty: number };

/** Bounds, low not above high, in the unit that the field's name carries. */
export type Bounds = { readonly low: number; readonly high: number };

export type BatteryWitness = {
  readonly cells: number;
  readonly construction: "flooded-antimony" | "flooded-calcium" | "flooded" | "EFB" | "AGM" | "gel";
  /** Rated capacity, Ah. */
  readonly capacityAh: number;
  /** Read off the label, or measured on this battery. */
  readonly capacityBasis: "printed" | "measured";
  /** kg/l at 25 °C; usual values are taken, with a width, where the record gives none. */
  readonly fullDensityAt25C?: number;
  readonly emptyDensityAt25C?: number;
  /** Mass of electrolyte in one cell when full, kg. */
  readonly electrolyteKgPerCell?: number;
  /** Rated cranking current by the standard that the tester shows, A. */
  readonly crankingRatingA?: number;
};

export type DensityWitness = {
  /** Mean of the cells read, kg/l at 25 °C. */
  readonly mean: number;
  /** Of the mean, the part that the next visit's reading would not share: steps, reading, kg/l. */
  readonly randomStandardUncertainty: number;
  /** The part common to all visits: the hydrometer's accuracy, its scale, kg/l. */
  readonly commonStandardUncertainty: number;
  /** Each cell read, kg/l at 25 °C, in the order of the posts and the same order at every visit; two or more. */
  readonly cells?: readonly number[];
  /** false where nobody took the acid's temperature, so that the density rests on an assumed one. */
  readonly temperatureMeasured?: boolean;
};

export type RestVoltageWitness = Reading & {
  /** The part common to all visits, the voltmeter's accuracy, V of the whole battery; left out, half of the random part is taken as well. */
  readonly commonStandardUncertainty?: number;
  /** Hours since the battery was last charged or loaded; left out where nobody noted them. */
  readonly restH?: number;
  /** °C of the battery; 25 is taken, with a width, where nobody noted it. */
  readonly temperatureC?: number;
};

export type VisitWitness = {
  readonly number: number;
  /** Milliseconds since 1970 UTC. */
  readonly atMs: number;
  /** true where the acid was mixed before it was read. */
  readonly mixed?: boolean;
  readonly densityAt25C?: DensityWitness;
  /** V of the whole battery, at rest. */
  readonly restV?: RestVoltageWitness;
  /** A. */
  readonly crankingA?: Reading;
};

/** What happened between one visit and the next. */
export type IntervalWitness = {
  /** Charge recorded at the posts, Ah; left out where nothing was recorded. Its uncertainty is taken as common to all intervals: a gain. */
  readonly recordedAh?: Reading;
  /** Hours in which the charger may have been connected while nobody recorded; 0 to 0 where all was recorded. Left out: not known. */
  readonly unseenH?: Bounds;
  /** What it could have delivered in those hours, Ah; left out where that is not known. */
  readonly unseenBoundAh?: Bounds;
  /** Hours seen at or above the gassing voltage, which mix the acid; left out where not known. */
  readonly hoursAboveGassing?: number;
  /** Hours from visit to visit; left out, the clock of the visits is taken. */
  readonly hours?: number;
};

export type Witnesses = {
  readonly battery: BatteryWitness;
  /** In the order of time. */
  readonly visits: readonly VisitWitness[];
  /** One fewer than visits: the first lies between the first two. */
  readonly intervals: readonly IntervalWitness[];
  /** Charge taken out of the full battery before the first visit, where measured, Ah. */
  readonly dischargedAh?: Reading;
};

/** The witnesses made ready for the model: plain arrays by visit and interval, NaN for what is lacking, and the priors of this battery. */
import { electrolyteKgAtDensity, estimateElectrolyteKgPerCell } from "../electrochem/acid-balance.ts";
import { restVoltageFromDensity } from "../electrochem/rest-voltage.ts";
import { sealedRestOffset } from "../electrochem/sealed-rest-voltage.ts";
import { priors, usualDensities } from "./priors.ts";
import type { BatteryWitness, IntervalWitness, VisitWitness, Witnesses } from "./witnesses.ts";

export type CaseVisit = {
  readonly number: number;
  readonly mixed: boolean;
  /** kg/l at 25 °C; NaN where not read. */
  readonly density: number;
  readonly densityUncertainty: number;
  /** V of the battery; NaN where not read. */
  readonly restV: number;
  readonly restUncertaintyV: number;
  /** NaN where nobody noted it. */
  readonly restH: number;
  readonly temperatureC: number;
  readonly crankingA: number;
  readonly crankingUncertaintyA: number;
};

export type CaseInterval = {
  /** Ah; NaN where nothing was recorded. */
  readonly recordedAh: number;
  readonly recordedUncertaintyAh: number;
  /** Whether charge can have gone in unseen at all. */
  readonly mayHide: boolean;
  /** Hours nobody saw: the middle of the bounds, a night where nobody knows them. */
  readonly unseenH: number;
  /** Least and most that can have gone in unseen, Ah; 0 and Infinity where not known. */
  readonly hiddenLowAh: number;
  readonly hiddenHighAh: number;
  /** NaN where not known. */
  readonly hoursAboveGassing: number;
  readonly hours: number;
};

/** How one cell stands below the mean of the others over all visits: the lowest of them. */
export type CellContrast = { readonly cell: number; readonly deficit: number; readonly uncertainty: number; readonly cells: number };

export type Case = {
  readonly cells: number;
  readonly sealed: boolean;
  readonly ratedAh: number;
  readonly capacityBasis: "printed" | "measured";
  readonly acidKg: number;
  readonly acidSpread: number;
  /** Whether the acid's mass was taken from the capacity, so that a wrong rating makes it wrong too. */
  readonly acidFromRating: boolean;
  readonly fullDensity: number;
  readonly fullDensityUncertainty: number;
  /** NaN where the record gives none. */
  readonly emptyDensity: number;
  readonly crankingRatingA: number;
  readonly visits: readonly CaseVisit[];
  readonly intervals: readonly CaseInterval[];
  readonly hydrometerUncertainty: number;
  /** Part of that which the acid's temperature would take away, kg/l; 0 where it was taken. */
  readonly temperatureUncertainty: number;
  readonly voltmeterUncertaintyV: number;
  readonly contrast: CellContrast | undefined;
  readonly dischargedAh: number;
  readonly dischargedUncertaintyAh: number;
  /** What was taken for want of a record, in words. */
  readonly assumptions: readonly string[];
};

/** Unseen hours taken for an interval of which nobody knows them, h: a night. */
const unknownUnseenH = 12;

/** What the density at an assumed temperature may be off by, kg/l; as lib/electrochem/hydrometer.ts has it for acid within 10 K of 25 °C. */
const unknownTemperatureDensity = 0.004;

/**
 * Makes a case of the witnesses.
 * @returns the case, or in words why there is too little to examine. Never throws; what is not finite counts as lacking.
 */
export function prepareCase(witnesses: Witnesses): Case | { readonly why: string } {
  const { battery, visits, intervals } = witnesses;
  if (!(battery.capacityAh > 0 && Number.isFinite(battery.capacityAh))) return { why: "the battery's capacity is not known" };
  if (!(Number.isInteger(battery.cells) && battery.cells > 0)) return { why: "the battery's number of cells is not known" };
  if (visits.length === 0) return { why: "nobody visited the battery" };
  if (visits.some((visit, k) => k > 0 && !(visit.atMs >= (visits[k - 1]?.atMs ?? Number.NaN))))
    return { why: "the visits do not stand in the order of time" };

  const sealed = battery.construction === "AGM" || battery.construction === "gel";
  const usual = sealed ? usualDensities.sealed : usualDensities.vented;
  const recordedFull = positiveOrNaN(battery.fullDensityAt25C);
  const emptyDensity = positiveOrNaN(battery.emptyDensityAt25C);
  const fullDensity = Number.isNaN(recordedFull) ? usual.full : recordedFull;
  const recordedKg = positiveOrNaN(battery.electrolyteKgPerCell);
  const takenEmpty = Number.isNaN(emptyDensity) ? usual.empty : emptyDensity;
  const estimate = estimateElectrolyteKgPerCell(battery.capacityAh, fullDensity, takenEmpty);
  const estimatedKg = electrolyteKgAtDensity(estimate.value, takenEmpty, fullDensity);
  const acidKg = Number.isNaN(recordedKg) ? estimatedKg : recordedKg;
  if (!(acidKg > 0)) return { why: "the battery's full and empty density do not fit together" };

  const caseVisits = visits.map((visit) => caseVisit(visit, sealed));
  const caseIntervals = visits.slice(1).map((visit, k) => caseInterval(intervals[k], (visit.atMs - (visits[k]?.atMs ?? 0)) / 3_600_000));
  const count = (has: (visit: CaseVisit) => boolean): number => caseVisits.filter(has).length;
  const densities = count(({ density }) => !Number.isNaN(density));
  const voltages = count(({ restV }) => !Number.isNaN(restV));
  const cranks = Number.isNaN(positiveOrNaN(battery.crankingRatingA)) ? 0 : count(({ crankingA }) => !Number.isNaN(crankingA));
  const charges = caseIntervals.filter(({ recordedAh }) => !Number.isNaN(recordedAh)).length;
  if (densities + voltages === 0) return { why: "neither density nor rest voltage was read at any visit" };
  if ([densities, voltages, cranks, charges].filter((heard) => heard > 0).length < 2)
    return { why: "only one witness was heard; with nothing to hold it against there is nothing to examine" };

  const ofDensity = visits.flatMap((visit) => (sealed || visit.densityAt25C === undefined ? [] : [visit.densityAt25C]));
  return {
    cells: battery.cells,
    sealed,
    ratedAh: battery.capacityAh,
    capacityBasis: battery.capacityBasis,
    acidKg,
    acidSpread: priors.acidMassSpread[Number.isNaN(recordedKg) ? (sealed ? "sealed" : "estimated") : "recorded"],
    acidFromRating: Number.isNaN(recordedKg),
    fullDensity,
    fullDensityUncertainty: Number.isNaN(recordedFull) ? usualFullUncertainty(battery) : priors.fullDensityUncertainty.recorded,
    emptyDensity,
    crankingRatingA: positiveOrNaN(battery.crankingRatingA),
    visits: caseVisits,
    intervals: caseIntervals,
    hydrometerUncertainty: Math.max(0, ...ofDensity.map((density) => finiteOr(density.commonStandardUncertainty, 0.003))),
    temperatureUncertainty: ofDensity.some((density) => density.temperatureMeasured === false) ? unknownTemperatureDensity : 0,
    voltmeterUncertaintyV: Math.max(
      0,
      ...visits.map(({ restV }) =>
        restV === undefined ? 0 : finiteOr(restV.commonStandardUncertainty, finiteOr(restV.standardUncertainty, 0) / 2),
      ),
    ),
    contrast: sealed ? undefined : contrastOfCells(visits),
    dischargedAh: positiveOrNaN(witnesses.dischargedAh?.value),
    dischargedUncertaintyAh: finiteOr(witnesses.dischargedAh?.standardUncertainty, 0),
    assumptions: [
      ...(Number.isNaN(recordedFull) ? [`full density: ${usual.full.toFixed(3)} kg/l at 25 °C, as is usual`] : []),
      ...(Number.isNaN(recordedKg) ? [`acid in one full cell: ${acidKg.toFixed(2)} kg, from the rated capacity`] : []),
      ...(voltages > 0 && visits.some(({ restV }) => restV !== undefined && restV.temperatureC === undefined)
        ? ["a battery temperature that nobody took: 25 °C"]
        : []),
      ...(caseIntervals.some(({ recordedAh, mayHide }) => Number.isNaN(recordedAh) && mayHide)
        ? ["between some visits nothing was recorded, and the charge there is left wide open"]
        : []),
    ],
  };
}

/** How far the usual full density may be off, kg/l. Of a sealed battery only its rest voltage is ever seen, and sources differ about that. */
function usualFullUncertainty({ construction }: BatteryWitness): number {
  if (construction !== "AGM" && construction !== "gel") return priors.fullDensityUncertainty.usual;
  const { full } = usualDensities.sealed;
  const voltPerDensity = (restVoltageFromDensity(full + 0.001, 1) - restVoltageFromDensity(full - 0.001, 1)) / 0.002;
  return sealedRestOffset(construction, 1).standardUncertaintyV / voltPerDensity;
}

function caseVisit(visit: VisitWitness, sealed: boolean): CaseVisit {
  const { densityAt25C, restV, crankingA } = visit;
  return {
    number: visit.number,
    mixed: visit.mixed === true,
    density: sealed ? Number.NaN : positiveOrNaN(densityAt25C?.mean),
    densityUncertainty: Math.hypot(finiteOr(densityAt25C?.randomStandardUncertainty, 0.002), priors.densityModel),
    restV: positiveOrNaN(restV?.value),
    restUncertaintyV: finiteOr(restV?.standardUncertainty, 0.02),
    restH: finiteOr(restV?.restH, Number.NaN),
    temperatureC: finiteOr(restV?.temperatureC, Number.NaN),
    crankingA: positiveOrNaN(crankingA?.value),
    crankingUncertaintyA: finiteOr(crankingA?.standardUncertainty, 0),
  };
}

function caseInterval(interval: IntervalWitness | undefined, clockH: number): CaseInterval {
  const recordedAh = finiteOr(interval?.recordedAh?.value, Number.NaN);
  const mayHide = interval?.unseenH === undefined || interval.unseenH.high > 0;
  return {
    recordedAh,
    recordedUncertaintyAh: finiteOr(interval?.recordedAh?.standardUncertainty, Math.abs(recordedAh) * 0.02),
    mayHide,
    unseenH: interval?.unseenH === undefined ? unknownUnseenH : (interval.unseenH.low + interval.unseenH.high) / 2,
    hiddenLowAh: mayHide ? Math.max(0, finiteOr(interval?.unseenBoundAh?.low, 0)) : 0,
    hiddenHighAh: interval?.unseenBoundAh === undefined ? Number.POSITIVE_INFINITY : Math.max(0, interval.unseenBoundAh.high),
    hoursAboveGassing: finiteOr(interval?.hoursAboveGassing, Number.NaN),
    hours: Math.max(0, finiteOr(interval?.hours, finiteOr(clockH, 0))),
  };
}

/** The cell that stands lowest against the mean of the others, averaged over the visits that read them all. */
function contrastOfCells(visits: readonly VisitWitness[]): CellContrast | undefined {
  const read = visits.flatMap(({ densityAt25C }) =>
    densityAt25C?.cells === undefined || densityAt25C.cells.length < 2 ? [] : [densityAt25C],
  );
  const cells = read[0]?.cells?.length ?? 0;
  const alike = read.filter((density) => density.cells?.length === cells && density.cells.every(Number.isFinite));
  if (cells < 2 || alike.length === 0) return undefined;
  const deficits = Array.from({ length: cells }, (_, cell) => {
    const ofVisits = alike.map(({ cells: values = [] }) => {
      const sum = values.reduce((total, value) => total + value, 0);
      const own = values[cell] ?? Number.NaN;
      return (sum - own) / (cells - 1) - own;
    });
    return ofVisits.reduce((total, value) => total + value, 0) / alike.length;
  });
  const deficit = Math.max(...deficits);
  const randomOfCell = Math.max(...alike.map((density) => finiteOr(density.randomStandardUncertainty, 0.002))) * Math.sqrt(cells);
  const spread = Math.hypot(priors.cellSpread, randomOfCell / Math.sqrt(alike.length));
  return { cell: deficits.indexOf(deficit), deficit, uncertainty: spread * Math.sqrt(1 + 1 / (cells - 1)), cells };
}

function positiveOrNaN(value: number | undefined): number {
  return value !== undefined && value > 0 && Number.isFinite(value) ? value : Number.NaN;
}

function finiteOr(value: number | undefined, otherwise: number): number {
  return value !== undefined && Number.isFinite(value) ? value : otherwise;
}

/** A small invented test that the module's tests bend one way or another. */
import type { IntervalWitness, VisitWitness, Witnesses } from "../../../lib/reconcile/index.ts";

const day = 86_400_000;

/** Density at the top (kg/l at 25 °C), rest voltage (V) and rest (h) of each visit; recorded Ah between them. */
export type Bend = {
  readonly densities: readonly number[];
  readonly restV: readonly number[];
  readonly restH?: readonly number[];
  readonly recordedAh: readonly number[];
  readonly unseenH?: number;
  readonly cells?: readonly number[];
  readonly crankingA?: readonly number[];
};

/** A flooded 60 Ah battery with 0.93 kg of acid a cell, all instruments good. */
export function witnessesOf(bend: Bend): Witnesses {
  const visits = bend.densities.map((mean, k): VisitWitness => {
    const isLast = k === bend.densities.length - 1;
    const crankingA = bend.crankingA?.[k];
    return {
      number: k + 1,
      atMs: Date.UTC(2026, 4, 4) + 2 * k * day,
      mixed: false,
      densityAt25C: {
        mean,
        randomStandardUncertainty: 0.001,
        commonStandardUncertainty: 0.002,
        temperatureMeasured: true,
        ...(isLast && bend.cells !== undefined ? { cells: bend.cells } : {}),
      },
      restV: {
        value: bend.restV[k] ?? Number.NaN,
        standardUncertainty: 0.005,
        commonStandardUncertainty: 0.008,
        restH: bend.restH?.[k] ?? 20,
        temperatureC: 25,
      },
      ...(crankingA === undefined ? {} : { crankingA: { value: crankingA, standardUncertainty: 12 } }),
    };
  });
  const unseen = bend.unseenH ?? 0;
  const intervals = bend.recordedAh.map(
    (value): IntervalWitness => ({
      recordedAh: { value, standardUncertainty: 0.01 * value },
      unseenH: { low: unseen, high: unseen },
      unseenBoundAh: { low: 0, high: 5 * unseen },
      hoursAboveGassing: 0,
      hours: 48,
    }),
  );
  return {
    battery: {
      cells: 6,
      construction: "flooded-calcium",
      capacityAh: 60,
      capacityBasis: "measured",
      fullDensityAt25C: 1.28,
      electrolyteKgPerCell: 0.93,
      crankingRatingA: 540,
    },
    visits,
    intervals,
  };
}

/** The charge that a rise of density stands for in this battery's acid. */
import { chargeForDensityRise, electrolyteKgAtDensity, estimateElectrolyteKgPerCell } from "../electrochem/acid-balance.ts";
import { densityAt25C } from "../electrochem/hydrometer.ts";
import type { AbsenceKind } from "../nouns/figure.ts";
import { combine } from "../units/uncertainty.ts";
import type { Measured } from "./define.ts";
import { isSealed, type TestContext } from "./test-context.ts";

/** Densities of a full and an empty starter battery where its record gives none: common practice, kg/l at 25 °C. */
const usualFullDensity = 1.28;
const usualEmptyDensity = 1.12;

/**
 * Charge between the first and the last density read, Ah, after Faraday's law.
 *
 * @returns the charge with its uncertainty (acid mass and both densities), or why it cannot be given
 */
export function chargeNeeded(context: TestContext): Measured | { readonly absent: AbsenceKind; readonly why: string } {
  if (isSealed(context.battery)) return { absent: "not applicable", why: "the battery is sealed, so its density cannot be read" };
  const read = context.readings.filter((reading) => reading.density !== undefined);
  const first = read[0]?.density;
  const last = read.at(-1)?.density;
  if (first === undefined || last === undefined || read.length < 2)
    return { absent: "not measured", why: "density was read at fewer than two visits" };
  const { electrolyteKgPerCell } = context.battery;
  const full = densityOfRecord(context, "fullDensity") ?? usualFullDensity;
  const empty = densityOfRecord(context, "emptyDensity") ?? usualEmptyDensity;
  const estimate = estimateElectrolyteKgPerCell(context.battery.capacityAh, full, empty);
  const massKg =
    electrolyteKgPerCell === undefined
      ? electrolyteKgAtDensity(estimate.value, estimate.atDensity, first.meanAt25C)
      : electrolyteKgAtDensity(electrolyteKgPerCell, full, first.meanAt25C);
  const massUncertaintyShare = electrolyteKgPerCell === undefined ? estimate.standardUncertainty / estimate.value : 0.05;
  const value = chargeForDensityRise(massKg, first.meanAt25C, last.meanAt25C);
  if (Number.isNaN(value)) return { absent: "cannot tell", why: "the densities read are outside the acid's range" };
  const perKgPerL = Math.abs(chargeForDensityRise(massKg, first.meanAt25C, last.meanAt25C + 0.001) - value) / 0.001;
  // The hydrometer's error is common to both visits and nearly cancels in the rise; its rounding and mixing do not. Half is kept.
  const ofDensity = ((first.standardUncertainty ?? 0.0025) + (last.standardUncertainty ?? 0.0025)) / 2;
  const unstated = first.standardUncertainty === undefined || last.standardUncertainty === undefined;
  return {
    value,
    standardUncertainty: combine(massUncertaintyShare * Math.abs(value), perKgPerL * ofDensity),
    evidence: [...first.evidence, ...last.evidence],
    doubts: [
      electrolyteKgPerCell === undefined
        ? "the mass of acid is estimated from the rated capacity"
        : "the mass of acid is as the battery's record gives it, taken within 5 %",
      ...(unstated ? ["the hydrometer's accuracy is not stated; ±0.005 kg/l is taken"] : []),
      "the hydrometer reads the top of the cell; stratified acid hides charge from it",
    ],
  };
}

function densityOfRecord(context: TestContext, field: "fullDensity" | "emptyDensity"): number | undefined {
  const stated = context.battery[field];
  if (stated === undefined) return undefined;
  const { densityAt25C: value } = densityAt25C(stated.value, stated.convention, undefined, true);
  return Number.isNaN(value) ? undefined : value;
}

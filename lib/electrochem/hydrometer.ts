/** From what a hydrometer shows to the density of the acid at 25 °C, in kg/l. */
import type { DensityConvention } from "../nouns/instrument.ts";
import { densityAtTemperature, densityOfAcid, densitySlopePerK, weightFractionOfAcid } from "./acid.ts";
import { referenceTemperatureC } from "./constants.ts";
import { densityOfWater } from "./water.ts";

/** What a scale shows: the acid at one temperature, over water at another; no water for a scale in kg/l. Both in °C. */
type Scale = { readonly acidC: number; readonly waterC: number | null };

const sixtyFahrenheitC = ((60 - 32) * 5) / 9;
const eightyFahrenheitC = ((80 - 32) * 5) / 9;

/**
 * "Not stated" is read as the middle of what it may mean: a scale by 25/25 °C. The printed 1.265 is 1.265 kg/l at 25 °C on one scale
 * and 1.257 on another; by 25/25 °C it is 1.261.
 */
const scales: Readonly<Record<DensityConvention, Scale>> = {
  "kg/l at 25 °C": { acidC: 25, waterC: null },
  "kg/l at 20 °C": { acidC: 20, waterC: null },
  "SG 25/25 °C": { acidC: 25, waterC: 25 },
  "SG 20/20 °C": { acidC: 20, waterC: 20 },
  "SG 60/60 °F": { acidC: sixtyFahrenheitC, waterC: sixtyFahrenheitC },
  "SG 80/80 °F": { acidC: eightyFahrenheitC, waterC: eightyFahrenheitC },
  "not stated": { acidC: 25, waterC: 25 },
};

/** Half of the spread between the scales in use, kg/l; any of them is as likely as another. */
const unstatedHalfWidth = 0.004;

/** How far acid of unknown temperature may be from 25 °C, K; our assumption for a workshop and a battery during charge. */
const unknownTemperatureHalfWidthK = 10;

const rectangular = Math.sqrt(3);

/** A density of acid at 25 °C, kg/l, and the standard uncertainty, kg/l, of the conversion that gave it. */
export type ConvertedDensity = { readonly densityAt25C: number; readonly standardUncertainty: number };

/**
 * Density at 25 °C of the acid that a hydrometer showed as `reading`.
 * @param reading  as shown: 1.250, in kg/l or as a ratio to water, according to the convention
 * @param convention  what the scale means; "not stated" costs ±0.004 (rectangular)
 * @param acidTemperatureC  °C of the acid, not of the room, 0 to 50; undefined where nobody measured it, which costs ±10 K
 * @param correctsTemperature  true for an instrument that itself refers its reading to its scale's temperature; the acid's is then not needed
 * @returns kg/l at 25 °C, and the standard uncertainty of what the conversion does not know. The instrument's own accuracy is not in
 *   it, nor the acid model's 0.0003. Both are NaN where the reading is no acid of 0 to 60 wt %, or the acid is outside 0 to 50 °C.
 *
 * The reading is taken through the acid itself (its strength from its density where it was read, then its density at 25 °C), since the
 * slope runs from 0.0005 per K in weak acid to 0.0007 in strong. The float's own expansion, about 0.0003 per 10 K for glass, is left out.
 */
export function densityAt25C(
  reading: number,
  convention: DensityConvention,
  acidTemperatureC: number | undefined,
  correctsTemperature: boolean,
): ConvertedDensity {
  const scale = scales[convention];
  const densityKgPerL = scale.waterC === null ? reading : reading * densityOfWater(scale.waterC);
  const readAtC = correctsTemperature ? scale.acidC : (acidTemperatureC ?? referenceTemperatureC);
  const weightFraction = weightFractionOfAcid(densityKgPerL, readAtC);

  const temperatureUnknown = acidTemperatureC === undefined && !correctsTemperature;
  const ofTemperature = temperatureUnknown
    ? (Math.abs(densitySlopePerK(weightFraction, referenceTemperatureC)) * unknownTemperatureHalfWidthK) / rectangular
    : 0;
  const ofConvention = convention === "not stated" ? unstatedHalfWidth / rectangular : 0;

  const density = densityOfAcid(weightFraction, referenceTemperatureC);
  return {
    densityAt25C: density,
    standardUncertainty: Number.isNaN(density) ? Number.NaN : Math.hypot(ofTemperature, ofConvention),
  };
}

/**
 * The trade's rules of one constant, for showing beside ours; figures never rest on them.
 * IEEE 450 (from memory): 0.001 for each 3 °F from 77 °F; fits acid of 1.14, too small for battery acid.
 * 0.004 for each 10 °F from 80 °F: vehicle service manuals; fits 1.265. 0.0007 for each K from 20 °C: vehicle service manuals; fits 1.25.
 */
export const correctionRules = {
  "0.001 per 3 °F from 77 °F": { perK: 0.001 / (3 / 1.8), referenceC: 25 },
  "0.004 per 10 °F from 80 °F": { perK: 0.004 / (10 / 1.8), referenceC: eightyFahrenheitC },
  "0.0007 per K from 20 °C": { perK: 0.0007, referenceC: 20 },
} as const;
export type CorrectionRule = keyof typeof correctionRules;

/**
 * A reading corrected by one of the trade's rules, to that rule's own temperature (25, 26.7 or 20 °C, which do not compare).
 * @param reading  as shown
 * @param temperatureC  °C of the acid
 * @returns in the reading's own unit; NaN for NaN
 */
export function correctByRule(reading: number, temperatureC: number, rule: CorrectionRule): number {
  const { perK, referenceC } = correctionRules[rule];
  return reading + perK * (temperatureC - referenceC);
}

/**
 * How far a trade rule lands from the true density at its own reference temperature, for acid read in kg/l.
 * @param readingKgPerL  density at temperatureC
 * @returns rule minus truth, kg/l; NaN where the acid is out of range
 */
export function errorOfRule(readingKgPerL: number, temperatureC: number, rule: CorrectionRule): number {
  const truth = densityAtTemperature(readingKgPerL, temperatureC, correctionRules[rule].referenceC);
  return correctByRule(readingKgPerL, temperatureC, rule) - truth;
}

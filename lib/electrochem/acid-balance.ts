/**
 * The acid balance of one cell: density against charge.
 * A charge of Q ampere-hours that the plates really take puts 3.6595 g of acid a ampere-hour into the electrolyte and takes 0.6722 g of
 * water out of it, so the electrolyte grows from m0 to m0 + 2.9873 Q while it gets stronger. Gassing is not in this: it costs water and
 * adds no acid. Topping up is not in it either.
 */
import { densityOfAcid, weightFractionOfAcid } from "./acid.ts";
import { acidKgPerAh, referenceTemperatureC, waterKgPerAh } from "./constants.ts";

/** What one Ah adds to the mass of the electrolyte, kg per cell. */
const growthKgPerAh = acidKgPerAh - waterKgPerAh;

/**
 * Density at 25 °C after a charge, of evenly mixed electrolyte.
 * @param electrolyteKgPerCell  kg in one cell at the density of the start
 * @param densityStart25  kg/l at 25 °C
 * @param acceptedAh  Ah that the plates took; negative for a discharge
 * @returns kg/l at 25 °C; NaN where the acid would leave 0 to 60 wt %, or for a mass that is not positive
 */
export function densityAfterCharge(electrolyteKgPerCell: number, densityStart25: number, acceptedAh: number): number {
  const massAfterKg = electrolyteKgPerCell + growthKgPerAh * acceptedAh;
  if (!(electrolyteKgPerCell > 0 && massAfterKg > 0)) return Number.NaN;
  const acidKg = weightFractionAt25C(densityStart25) * electrolyteKgPerCell + acidKgPerAh * acceptedAh;
  return densityOfAcid(acidKg / massAfterKg, referenceTemperatureC);
}

/**
 * Charge that a rise of density says the plates took: the inverse of densityAfterCharge.
 * @param electrolyteKgPerCell  kg in one cell at density0; electrolyteKgAtDensity converts from another state
 * @param density0  kg/l at 25 °C before
 * @param density1  kg/l at 25 °C after
 * @returns Ah, negative where density fell; NaN outside the range of acid, or for a mass that is not positive
 */
export function chargeForDensityRise(electrolyteKgPerCell: number, density0: number, density1: number): number {
  if (!(electrolyteKgPerCell > 0)) return Number.NaN;
  const w0 = weightFractionAt25C(density0);
  const w1 = weightFractionAt25C(density1);
  return (electrolyteKgPerCell * (w1 - w0)) / (acidKgPerAh - w1 * growthKgPerAh);
}

/**
 * Mass of the same cell's electrolyte in another state: an empty cell holds a sixth less than a full one.
 * @param electrolyteKg  kg at `density`
 * @param density  kg/l at 25 °C of the state in which that mass holds
 * @param otherDensity  kg/l at 25 °C of the state asked for
 * @returns kg; NaN outside the range of acid
 */
export function electrolyteKgAtDensity(electrolyteKg: number, density: number, otherDensity: number): number {
  return electrolyteKg + growthKgPerAh * chargeForDensityRise(electrolyteKg, density, otherDensity);
}

/** How far a battery's charge from empty to full may be from its rated capacity, as a fraction; our assumption, wide on purpose. */
const capacityHalfWidth = 0.15;

/** How far the battery's own full and empty density may be from the ones given, kg/l; the spread of the trade's defaults. */
const densityHalfWidth = 0.01;

/** An electrolyte mass, kg per cell, its standard uncertainty, kg, and the density (kg/l at 25 °C) of the state in which it holds. */
export type ElectrolyteEstimate = { readonly value: number; readonly standardUncertainty: number; readonly atDensity: number };

/**
 * Electrolyte mass in one *empty* cell, where nobody weighed it, from what the rated capacity does to its density.
 * @param capacityAh  rated capacity (C20), Ah
 * @param fullDensity  kg/l at 25 °C when full
 * @param emptyDensity  kg/l at 25 °C after that capacity was taken out
 * @returns kg at the empty density, with a standard uncertainty of 10 to 15 %; NaN where full is not above empty or a value is impossible
 *
 * Derivation: charging C Ah must carry the cell from w0 to w1, so m0 = C (a - w1 g)/(w1 - w0), a = 3.6595 g/Ah, g = 2.9873 g/Ah. The
 * width takes capacity as within ±15 % of the rating and each density as within ±0.010 (rectangular), carried through numerically.
 */
export function estimateElectrolyteKgPerCell(capacityAh: number, fullDensity: number, emptyDensity: number): ElectrolyteEstimate {
  const massKg = (full: number, empty: number): number => {
    const ahPerKg = chargeForDensityRise(1, empty, full);
    return ahPerKg > 0 && capacityAh > 0 ? capacityAh / ahPerKg : Number.NaN;
  };
  const value = massKg(fullDensity, emptyDensity);
  // A step of a tenth of the half-width keeps narrow spans, where the half-width itself would close the span, finite.
  const step = densityHalfWidth / 10;
  const halfWidthKg = (shifted: number): number => 10 * Math.abs(shifted - value);
  const standardUncertainty =
    Math.hypot(
      capacityHalfWidth * value,
      halfWidthKg(massKg(fullDensity + step, emptyDensity)),
      halfWidthKg(massKg(fullDensity, emptyDensity + step)),
    ) / Math.sqrt(3);
  return { value, standardUncertainty, atDensity: emptyDensity };
}

function weightFractionAt25C(density: number): number {
  return weightFractionOfAcid(density, referenceTemperatureC);
}

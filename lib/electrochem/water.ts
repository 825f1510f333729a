/** Density of pure water, to which ratios called "specific gravity" refer. */

/**
 * Density of air-free water at one atmosphere.
 * @param temperatureC  °C, 0 to 100
 * @returns kg/l; NaN outside that range or for NaN
 * Source: Kell 1975, J. Chem. Eng. Data 20, 97 (coefficients from memory); agrees to 1e-5 kg/l with the values of a Kell-type
 * formula read in open code, at nine temperatures from 0 to 60 °C.
 */
export function densityOfWater(temperatureC: number): number {
  if (!(temperatureC >= 0 && temperatureC <= 100)) return Number.NaN;
  const t = temperatureC;
  const numerator = 999.839_52 + t * (16.945_176 + t * (-7.987_0401e-3 + t * (-46.170_461e-6 + t * (105.563_02e-9 - 280.542_53e-12 * t))));
  return numerator / (1 + 16.879_85e-3 * t) / 1000;
}

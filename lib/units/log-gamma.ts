/** Natural logarithm of the gamma function for positive x: Stirling's series, after shifting x above 10. Error below 1e-13. */
export function logGamma(x: number): number {
  let shift = 0;
  let z = x;
  while (z < 10) {
    shift += Math.log(z);
    z += 1;
  }
  const w = 1 / (z * z);
  const series = (1 / 12 - w * (1 / 360 - w * (1 / 1260 - w * (1 / 1680 - w / 1188)))) / z;
  return (z - 0.5) * Math.log(z) - z + Math.log(2 * Math.PI) / 2 + series - shift;
}

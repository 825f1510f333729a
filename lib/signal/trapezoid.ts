/**
 * Integral of y over x by the trapezoidal rule.
 *
 * @param x    places, rising; @param y values at them
 * @param from first sample taken; @param to sample behind the last one taken
 * @returns the integral in y's unit times x's; 0 for fewer than two samples; NaN where a sample in the range is NaN
 * Source: the trapezoidal rule, any handbook of numerical analysis.
 */
export function trapezoid(x: Float64Array, y: Float64Array, from = 0, to = x.length): number {
  let sum = 0;
  for (let i = from + 1; i < to; i++) {
    sum += (((y[i] as number) + (y[i - 1] as number)) / 2) * ((x[i] as number) - (x[i - 1] as number));
  }
  return sum;
}

/**
 * Integral of y over x by the trapezoidal rule.
 *
 * @param x    places, rising; @param y values at them
 * @param from first sample taken; @param to sample behind the last one taken
 * @param per  the places are divided by this, so that seconds can be integrated over hours
 * @returns the integral in y's unit times x's; 0 for fewer than two samples; NaN where a sample in the range is NaN
 * Source: the trapezoidal rule, any handbook of numerical analysis.
 */
export function trapezoid(x: Float64Array, y: Float64Array, from = 0, to = x.length, per = 1): number {
  let sum = 0;
  let before = (x[from] ?? Number.NaN) / per;
  for (let i = from + 1; i < to; i++) {
    const place = (x[i] as number) / per;
    sum += (((y[i] as number) + (y[i - 1] as number)) / 2) * (place - before);
    before = place;
  }
  return sum;
}

/** As trapezoid, for the product of two series, sample by sample: a power from voltage and current. */
export function trapezoidOfProduct(x: Float64Array, one: Float64Array, other: Float64Array, from = 0, to = x.length, per = 1): number {
  let sum = 0;
  let before = (x[from] ?? Number.NaN) / per;
  let productBefore = (one[from] ?? Number.NaN) * (other[from] ?? Number.NaN);
  for (let i = from + 1; i < to; i++) {
    const place = (x[i] as number) / per;
    const product = (one[i] as number) * (other[i] as number);
    sum += ((product + productBefore) / 2) * (place - before);
    before = place;
    productBefore = product;
  }
  return sum;
}

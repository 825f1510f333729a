/** Places on either side that a running median looks at. */
const reach = 2;

/**
 * Running median over five places; at the ends over those there are.
 *
 * It takes out teeth of one or two places and leaves a lasting jump where it is. Source: J. W. Tukey, Exploratory Data Analysis
 * (1977), chapter 7 (from memory).
 *
 * @param values  no NaN
 */
export function runningMedian(values: Float64Array): Float64Array {
  const n = values.length;
  const medians = new Float64Array(n);
  const window: number[] = [];
  for (let i = 0; i < n; i++) {
    window.length = 0;
    for (let j = Math.max(0, i - reach); j <= Math.min(n - 1, i + reach); j++) {
      const value = values[j] as number;
      let place = window.length;
      while (place > 0 && (window[place - 1] as number) > value) {
        window[place] = window[place - 1] as number;
        place--;
      }
      window[place] = value;
    }
    const middle = window.length >> 1;
    medians[i] = window.length % 2 === 1 ? (window[middle] as number) : ((window[middle - 1] as number) + (window[middle] as number)) / 2;
  }
  return medians;
}

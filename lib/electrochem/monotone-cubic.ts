/** Interpolation in a table that never overshoots between its rows. */

/**
 * Builds a smooth curve through table rows which rises wherever the table rises and falls wherever it falls.
 * @param xs  abscissae, strictly rising, at least three
 * @param ys  ordinates, as many
 * @returns a function of x; NaN for x outside the table or NaN (it never extrapolates)
 * Throws where the table itself is malformed, since tables are ours, not a reader's.
 * Source: Fritsch and Butland 1984, SIAM J. Sci. Stat. Comput. 5, 300: weighted harmonic mean of neighbouring slopes (from memory).
 */
export function monotoneCubic(xs: readonly number[], ys: readonly number[]): (x: number) => number {
  if (xs.length !== ys.length || xs.length < 3) throw new Error("a table needs at least three rows, and one y for each x");
  const at = (values: readonly number[], i: number): number => values[i] ?? Number.NaN;
  const widths = xs.slice(1).map((x, i) => x - at(xs, i));
  if (!widths.every((width) => width > 0)) throw new Error("the x of a table must rise");
  const secants = widths.map((width, i) => (at(ys, i + 1) - at(ys, i)) / width);
  const slopes = xs.map((_, i) => {
    if (i === 0) return at(secants, 0);
    if (i === xs.length - 1) return at(secants, i - 1);
    const before = at(secants, i - 1);
    const after = at(secants, i);
    if (before * after <= 0) return 0;
    const weightBefore = at(widths, i - 1) + 2 * at(widths, i);
    const weightAfter = 2 * at(widths, i - 1) + at(widths, i);
    return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
  });

  return (x) => {
    if (!(x >= at(xs, 0) && x <= at(xs, xs.length - 1))) return Number.NaN;
    let i = 0;
    while (i < widths.length - 1 && x > at(xs, i + 1)) i++;
    const width = at(widths, i);
    const u = (x - at(xs, i)) / width;
    const rise = at(ys, i + 1) - at(ys, i);
    const bulgeLeft = width * at(slopes, i) - rise;
    const bulgeRight = rise - width * at(slopes, i + 1);
    return at(ys, i) + u * rise + u * (1 - u) * ((1 - u) * bulgeLeft + u * bulgeRight);
  };
}

/** The charge that a drawn profile has put in, against the battery's rated capacity. */

/**
 * Share of the rated capacity put in by each point, by the trapezoidal rule over the points.
 * For drawing: a thinned profile gives the shape of a charge, its figure is charge-recorded.
 * @param elapsedH rising, h
 * @param currentsA as many, A; null is a missing sample. Nothing is added over a gap, so what follows one is a lower bound
 * @param capacityAh > 0
 * @returns as many values, from 0; null where the current is missing, and throughout where none was recorded
 */
export function chargeShare(elapsedH: readonly number[], currentsA: readonly (number | null)[], capacityAh: number): (number | null)[] {
  let chargeAh = 0;
  return currentsA.map((currentA, index) => {
    if (currentA === null) return null;
    const beforeA = currentsA[index - 1] ?? null;
    const hours = (elapsedH[index] ?? 0) - (elapsedH[index - 1] ?? 0);
    if (beforeA !== null) chargeAh += ((beforeA + currentA) / 2) * hours;
    return chargeAh / capacityAh;
  });
}

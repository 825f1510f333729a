/** Search for the one parameter in which an exponential model is not linear. */

const gridSteps = 64;
const golden = (Math.sqrt(5) - 1) / 2;

/**
 * Finds the positive number with the smallest cost, looking evenly over its logarithm and then between the best one's neighbours.
 * @param cost  finite for every value between low and high
 * @param low  positive
 * @param high  above low
 * @returns the best value; it equals low or high (to a hair) where the cost has no dip between them
 */
export function searchLogarithmically(cost: (value: number) => number, low: number, high: number): number {
  const stride = Math.log(high / low) / gridSteps;
  let best = 0;
  let bestCost = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= gridSteps; i++) {
    const costHere = cost(low * Math.exp(i * stride));
    if (costHere < bestCost) {
      best = i;
      bestCost = costHere;
    }
  }

  const costAt = (logarithm: number): number => cost(low * Math.exp(logarithm));
  let left = Math.max(0, best - 1) * stride;
  let right = Math.min(gridSteps, best + 1) * stride;
  let innerLeft = right - golden * (right - left);
  let innerRight = left + golden * (right - left);
  let costLeft = costAt(innerLeft);
  let costRight = costAt(innerRight);
  while (right - left > 1e-6) {
    if (costLeft < costRight) {
      right = innerRight;
      innerRight = innerLeft;
      costRight = costLeft;
      innerLeft = right - golden * (right - left);
      costLeft = costAt(innerLeft);
    } else {
      left = innerLeft;
      innerLeft = innerRight;
      costLeft = costRight;
      innerRight = left + golden * (right - left);
      costRight = costAt(innerRight);
    }
  }
  return low * Math.exp((left + right) / 2);
}

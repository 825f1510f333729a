/** A fixed set of points that fills a cube evenly: the parameter draws of every forecast, the same on every machine. */

/** Degree, coefficients (as bits) of the primitive polynomial, and first direction numbers, for the second dimension on. */
type Direction = { readonly degree: number; readonly polynomial: number; readonly first: readonly number[] };

/**
 * Source: Joe and Kuo 2008, SIAM J. Sci. Comput. 30, 2635 (from memory). Any odd first numbers below 2, 4, 8 … give a valid sequence;
 * the test holds that each coordinate visits each of n equal cells once.
 */
const directions: readonly Direction[] = [
  { degree: 1, polynomial: 0, first: [1] },
  { degree: 2, polynomial: 1, first: [1, 3] },
  { degree: 3, polynomial: 1, first: [1, 3, 1] },
  { degree: 3, polynomial: 2, first: [1, 1, 1] },
  { degree: 4, polynomial: 1, first: [1, 1, 3, 3] },
  { degree: 4, polynomial: 4, first: [1, 3, 5, 13] },
  { degree: 5, polynomial: 2, first: [1, 1, 5, 5, 17] },
  { degree: 5, polynomial: 4, first: [1, 1, 5, 5, 5] },
  { degree: 5, polynomial: 7, first: [1, 1, 7, 11, 19] },
  { degree: 5, polynomial: 11, first: [1, 1, 5, 1, 1] },
  { degree: 5, polynomial: 13, first: [1, 1, 1, 3, 11] },
  { degree: 5, polynomial: 14, first: [1, 3, 5, 5, 31] },
  { degree: 6, polynomial: 1, first: [1, 3, 3, 9, 7, 49] },
  { degree: 6, polynomial: 13, first: [1, 1, 1, 15, 21, 21] },
  { degree: 6, polynomial: 16, first: [1, 3, 1, 13, 27, 49] },
];

/** As many coordinates as a point can have. */
export const mostDimensions = directions.length + 1;

/** Bits of a coordinate: enough for a thousand million points. */
const bits = 30;

/**
 * Points of the Sobol sequence in the open unit cube.
 * @param count  how many; a power of two fills evenly
 * @param dimensions  coordinates of each point, 1 to 16
 * @returns `count` points; each coordinate is moved to the middle of its cell, so that none is 0 or 1
 * Throws for more dimensions than there are, which is a mistake of ours.
 * Source: Sobol 1967; the Gray-code order of Antonov and Saleev 1979 (both from memory). Whole-number arithmetic, so no machine differs.
 */
export function sobolPoints(count: number, dimensions: number): number[][] {
  if (dimensions > mostDimensions) throw new Error(`a point of ${dimensions} coordinates; ${mostDimensions} are the most`);
  const numbers = Array.from({ length: dimensions }, (_, dimension) => directionNumbers(dimension));
  const state = new Array<number>(dimensions).fill(0);
  const half = 0.5 / count;
  const points: number[][] = [];
  for (let index = 0; index < count; index++) {
    points.push(state.map((value) => value / 2 ** bits + half));
    const flipped = trailingOnes(index);
    for (let dimension = 0; dimension < dimensions; dimension++) {
      state[dimension] = (state[dimension] ?? 0) ^ (numbers[dimension]?.[flipped] ?? 0);
    }
  }
  return points;
}

function trailingOnes(index: number): number {
  let ones = 0;
  for (let rest = index; (rest & 1) === 1; rest >>= 1) ones++;
  return ones;
}

function directionNumbers(dimension: number): number[] {
  const direction = directions[dimension - 1];
  if (direction === undefined) return Array.from({ length: bits }, (_, i) => 2 ** (bits - 1 - i));
  const { degree, polynomial, first } = direction;
  const numbers = first.map((m, i) => m * 2 ** (bits - 1 - i));
  for (let i = degree; i < bits; i++) {
    const back = numbers[i - degree] ?? 0;
    let next = back ^ (back >>> degree);
    for (let k = 1; k < degree; k++) {
      if (((polynomial >> (degree - 1 - k)) & 1) === 1) next ^= numbers[i - k] ?? 0;
    }
    numbers.push(next);
  }
  return numbers;
}

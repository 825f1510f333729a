/** How far a charger's own values scatter from one connection to the next, and from one test to the next. */
import { chiSquareQuantile } from "../units/chi-square.ts";

export type Spread = {
  /** Standard deviation, in the values' unit, and the ends of its 95 % interval. */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** How many values, or means of tests, it is made from. */
  readonly count: number;
};

/**
 * Repeatability standard deviation: the scatter within groups that were made under the same conditions, pooled over the groups.
 * @param groups  values of one quantity, a group for each test
 * @returns undefined where no group has two values. The interval supposes a normal distribution, and is wide for few values: for two it
 *   runs from 0.4 to 32 times the deviation.
 * Source: ISO 5725-2:1994, 7.4.5 (pooled within-cell variance; from memory); interval of a variance from the chi-square distribution.
 */
export function spreadWithin(groups: readonly (readonly number[])[]): Spread | undefined {
  const degreesOfFreedom = groups.reduce((sum, group) => sum + Math.max(0, group.length - 1), 0);
  const squares = groups.reduce((sum, group) => sum + squaresAboutMean(group), 0);
  const count = groups.reduce((sum, group) => sum + (group.length > 1 ? group.length : 0), 0);
  return spreadFrom(squares, degreesOfFreedom, count);
}

/**
 * Standard deviation of the groups' means: the scatter from test to test, with another battery or another season in it.
 * @returns undefined for fewer than two groups with a value
 */
export function spreadBetween(groups: readonly (readonly number[])[]): Spread | undefined {
  const means = groups.filter((group) => group.length > 0).map(meanOf);
  return spreadFrom(squaresAboutMean(means), means.length - 1, means.length);
}

function spreadFrom(squares: number, degreesOfFreedom: number, count: number): Spread | undefined {
  if (degreesOfFreedom < 1) return undefined;
  return {
    value: Math.sqrt(squares / degreesOfFreedom),
    low: Math.sqrt(squares / chiSquareQuantile(0.975, degreesOfFreedom)),
    high: Math.sqrt(squares / chiSquareQuantile(0.025, degreesOfFreedom)),
    count,
  };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function squaresAboutMean(values: readonly number[]): number {
  const mean = meanOf(values);
  return values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
}

/** Voltages of a lead-acid cell that tell charging, holding and resting apart. */

/** A cell held at this or more still gasses: 2.40 V, the usual limit, less the convention's tolerance, V. */
export const absorptionVPerCell = 2.33;
/** An hour or so after the current stopped, no cell rests above this, even after a long charge (surface charge; common practice), V. */
export const longRestVPerCell = 2.2;
/** No cell rests above this: the strongest acid in use gives 2.17 V (AGM makers' figure), surface charge a little more, V. */
export const highestRestVPerCell = 2.22;
/** No lead-acid cell under charge, however flat, shows so little; a shorted one would draw current. Our definition, V. */
export const emptyLeadsVPerCell = 0.5;

/** A held voltage lower than the highest reached before it by more than this share is another step. 1 % is 0.14 V of 14.4 V. */
export const stepBelowShare = 0.01;

/** Whether a voltage is a step below one that was reached; false where none was (0 V). */
export function isBelow(voltageV: number, reachedV: number): boolean {
  return reachedV > 0 && voltageV < reachedV * (1 - stepBelowShare);
}

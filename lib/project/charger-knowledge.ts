/** What is known of a charger beside its recordings. */
import type { Range } from "./spread.ts";

/** What is known beside the recordings. */
export type ChargerKnowledge = {
  /** Standard uncertainty of the recorder, A and V. */
  readonly standardUncertaintyA: number;
  readonly standardUncertaintyV: number;
  readonly nominalVoltageV: number;
  readonly efficiency: Range;
  readonly standbyW?: Range;
  /** What the label states; used only where no record shows the charger at its limit, and then named as such. */
  readonly claimedCurrentA?: number;
  readonly claimedLimitV?: number;
  /** Voltages between which an on-off charger holds, where they were measured; a stage's mean and spread serve otherwise. */
  readonly holding?: { readonly wakeV: number; readonly stopV: number };
};

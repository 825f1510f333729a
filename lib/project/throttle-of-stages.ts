/** When a charger turns its current down because it has grown warm. */
import type { ChargerBehaviour } from "./charger-behaviour.ts";
import { type RecordedCharge, seenStages } from "./seen-stages.ts";
import { rangeOf } from "./spread.ts";

/**
 * The rhythm in which it turns its current down; undefined where no stage shows it.
 * @param unknowns  what the recordings leave open is added here
 */
export function throttleOf(charges: readonly RecordedCharge[], unknowns: string[]): ChargerBehaviour["throttle"] {
  const after: number[] = [];
  const lasting: number[] = [];
  const shares: number[] = [];
  for (const charge of charges) {
    const seen = seenStages(charge, false);
    for (const [index, { stage, hours, isEndSeen }] of seen.entries()) {
      const before = seen[index - 1];
      if (stage.kind !== "throttled" || before?.stage.kind !== "constant-current") continue;
      after.push(before.hours);
      if (isEndSeen) lasting.push(hours);
      shares.push((stage.currentMeanA ?? 0) / (before.stage.currentMeanA ?? Number.NaN));
    }
  }
  const [afterH, share] = [rangeOf(after), rangeOf(shares)];
  if (afterH === undefined || share === undefined) return undefined;
  const forH = rangeOf(lasting);
  if (forH === undefined) unknowns.push("how long it stays throttled was not recorded to its end");
  return { afterH, share, forH: forH ?? { low: 0.1, high: afterH.high } };
}

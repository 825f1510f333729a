/** What keeps two tests from being held against each other. */
import type { Aspect, Conditions } from "./compared.ts";

/** All aspects, in the order in which they are told. */
export const aspects: readonly Aspect[] = ["nominalVoltageV", "construction", "capacityAh", "targetAt25C"];

/**
 * The aspects, of those asked for, in which two tests differ; [] for tests alike.
 * Alike means the very same: a tolerance on capacity would be a rule of ours that no evidence backs.
 */
export function differingAspects(a: Conditions, b: Conditions, asked: readonly Aspect[] = aspects): Aspect[] {
  return asked.filter((aspect) => a[aspect] !== b[aspect]);
}

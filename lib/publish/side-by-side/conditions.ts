/** What keeps two tests from being held against each other. */
import type { Aspect, Conditions } from "./compared.ts";

const names: Readonly<Record<Aspect, string>> = {
  nominalVoltageV: "voltage",
  construction: "kind of battery",
  capacityAh: "capacity",
  targetAt25C: "target density",
};

/** All aspects, in the order in which they are told. */
export const aspects = Object.keys(names) as readonly Aspect[];

/** What an aspect is called; its values stand in the table of the tests. */
export const aspectName = (aspect: Aspect): string => names[aspect];

/**
 * The aspects, of those asked for, in which two tests differ; [] for tests alike.
 * Alike means the very same: a tolerance on capacity would be a rule of ours that no evidence backs.
 */
export function differingAspects(a: Conditions, b: Conditions, asked: readonly Aspect[] = aspects): Aspect[] {
  return asked.filter((aspect) => a[aspect] !== b[aspect]);
}

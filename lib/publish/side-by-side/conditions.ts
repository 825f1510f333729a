/** What keeps two tests from being held against each other. */
import { formatStated } from "../../units/format.ts";
import type { Aspect, Conditions } from "./compared.ts";

const told: { readonly [A in Aspect]: { readonly what: string; readonly show: (conditions: Conditions) => string } } = {
  nominalVoltageV: { what: "the battery's voltage", show: ({ nominalVoltageV }) => formatStated(nominalVoltageV, "V") },
  construction: { what: "the kind of battery", show: ({ construction }) => construction },
  capacityAh: { what: "the battery's capacity", show: ({ capacityAh }) => formatStated(capacityAh, "Ah") },
  targetAt25C: {
    what: "the target density",
    show: ({ targetAt25C }) => (targetAt25C === null ? "none set" : formatStated(targetAt25C, "kg/l")),
  },
};

/** All aspects, in the order in which they are told. */
export const aspects = Object.keys(told) as readonly Aspect[];

/**
 * The aspects, of those asked for, in which two tests differ; [] for tests alike.
 * Alike means the very same: a tolerance on capacity would be a rule of ours that no evidence backs.
 */
export function differingAspects(a: Conditions, b: Conditions, asked: readonly Aspect[] = aspects): Aspect[] {
  return asked.filter((aspect) => a[aspect] !== b[aspect]);
}

/** "the battery's capacity differs (A 60 Ah, B 75 Ah)". */
export function aspectWords(aspect: Aspect, each: readonly { readonly letter: string; readonly conditions: Conditions }[]): string {
  const { what, show } = told[aspect];
  return `${what} differs (${each.map(({ letter, conditions }) => `${letter} ${show(conditions)}`).join(", ")})`;
}

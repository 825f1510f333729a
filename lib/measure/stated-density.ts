import { densityAt25C } from "../electrochem/hydrometer.ts";
import type { Battery } from "../nouns/battery.ts";

/** A density that a battery's record states, kg/l at 25 °C; undefined where it states none, or its convention does not reach there. */
export function statedDensityAt25C(stated: Battery["fullDensity"]): number | undefined {
  if (stated === undefined) return undefined;
  const { densityAt25C: value } = densityAt25C(stated.value, stated.convention, undefined, true);
  return Number.isNaN(value) ? undefined : value;
}

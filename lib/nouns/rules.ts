/** The rules by which figures are judged: every default stands here once, with its source; a site may set its own, and then says so. */
import type { Site } from "./site.ts";

export type Tolerance = { readonly below: number; readonly above: number };

/** How a charge voltage moves with the battery's temperature: two slopes with all between them allowed, clipped at two temperatures. */
export type CompensationRule = {
  readonly leastMVPerKPerCell: number;
  readonly mostMVPerKPerCell: number;
  readonly fromC: number;
  readonly toC: number;
};

/** How warm acid may get on charge: from the first take care, from the second stop. */
export type AcidTemperatureRule = { readonly cautionC: number; readonly stopC: number };

export type Rules = {
  readonly decision: "simple" | "guarded";
  readonly coverageFactor: number;
  readonly currentTolerance: Tolerance;
  readonly voltageTolerance: Tolerance;
  readonly sustainedWindowS: number;
  readonly lifeUses: number;
  readonly chargerEfficiency: { readonly low: number; readonly high: number };
  readonly compensation: CompensationRule;
  readonly leastRestH: number;
  readonly acidTemperature: AcidTemperatureRule;
};

const defaults: Rules = {
  decision: "guarded",
  coverageFactor: 2,
  currentTolerance: { below: 0.1, above: 0.1 },
  voltageTolerance: { below: 0.015, above: 0.015 },
  sustainedWindowS: 60,
  lifeUses: 100,
  chargerEfficiency: { low: 0.7, high: 0.9 },
  compensation: { leastMVPerKPerCell: -3, mostMVPerKPerCell: -5, fromC: 5, toC: 40 },
  leastRestH: 4,
  acidTemperature: { cautionC: 45, stopC: 50 },
};

const percent = (share: number): string => `${Number((share * 100).toFixed(2))} %`;
const within = (tolerance: Tolerance): string => `from ${percent(tolerance.below)} below to ${percent(tolerance.above)} above the claim`;

/** How each rule is named and explained to a reader. */
const told: { readonly [K in keyof Rules]: { label: string; show: (value: Rules[K]) => string; source: string } } = {
  decision: {
    label: "Decision rule for claims",
    show: (value) =>
      value === "guarded"
        ? "guarded: meets and short of only where the value is clear of the limit by the expanded uncertainty; between them, cannot tell"
        : "simple: the measured value itself decides",
    source: "ILAC-G8:09/2019, guard band w = U, with JCGM 106:2012",
  },
  coverageFactor: { label: "Coverage factor k", show: String, source: "JCGM 100:2008, 6.2: k = 2 for about 95 %" },
  currentTolerance: {
    label: "Tolerance of a current claim",
    show: within,
    source: "Our declaration: rating plates state no tolerance. A tenth either way is common practice; it is no legal limit",
  },
  voltageTolerance: {
    label: "Tolerance of a voltage claim",
    show: within,
    source: "Our declaration: 1.5 % is 0.22 V of 14.4 V, about what separates the makers' own figures for one kind of battery",
  },
  sustainedWindowS: {
    label: "Window of a sustained value",
    show: (value) => `${value} s`,
    source: "Our definition; common practice is one minute",
  },
  lifeUses: { label: "Uses over which a purchase is spread", show: String, source: "Our assumption: ten uses a year for ten years" },
  chargerEfficiency: {
    label: "Mains to battery efficiency, where no energy meter was read",
    show: (value) => `${percent(value.low)} to ${percent(value.high)}`,
    source: "Our bounds, from small transformer to switched-mode chargers (common practice)",
  },
  compensation: {
    label: "Charge voltage against the battery's temperature",
    show: (value) =>
      `${value.leastMVPerKPerCell} to ${value.mostMVPerKPerCell} mV for each K and cell from 25 °C, no further than ${value.fromC} and ${value.toC} °C`,
    source:
      "Battery makers and trade pages: float commonly -3, boost -4 to -5 mV/K a cell, clipped at about 5 and 40 °C (read). A rule of thumb of the trade, about 0.3 V more for 12 V near 0 °C, is -2 mV/K a cell (common practice)",
  },
  leastRestH: {
    label: "Rest before a voltage is turned into a density",
    show: (value) => `${value} h`,
    source: "Vehicle service manuals ask for 2 to 4 h (read), IEC 60095-1 for 24 h (from memory)",
  },
  acidTemperature: {
    label: "Acid on charge: warm from, too hot from",
    show: (value) => `${value.cautionC} °C, ${value.stopC} °C`,
    source: "Common practice: slow the charge from 45 °C, stop it at 50 °C. The battery's maker has the last word",
  },
};

/** The rules that hold for a site. */
export function resolveRules(site: Site): Rules {
  const set = Object.fromEntries(Object.entries(site.rules).filter(([, value]) => value !== undefined));
  return { ...defaults, ...set };
}

/** The rules as the method page prints them. */
export function describeRules(site: Site): { id: string; label: string; value: string; setBy: "default" | "this site"; source: string }[] {
  const rules = resolveRules(site);
  const describe = <K extends keyof Rules>(id: K) => ({
    id,
    label: told[id].label,
    value: told[id].show(rules[id]),
    setBy: site.rules[id] === undefined ? ("default" as const) : ("this site" as const),
    source: told[id].source,
  });
  return (Object.keys(told) as (keyof Rules)[]).map((id) => describe(id));
}

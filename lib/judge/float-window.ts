import type { BatteryTemperature } from "../measure/span-temperature.ts";
import type { Battery } from "../nouns/battery.ts";
import type { CompensationRule } from "../nouns/rules.ts";
import { describeShift, middleOf, shiftAt } from "./voltage-at-temperature.ts";

/** Float windows for 12 V, by construction, as printed. */
const windows: Readonly<Record<Battery["construction"], { low: number; high: number; source: string }>> = {
  "flooded-antimony": { low: 13.2, high: 13.8, source: "makers' figures 13.2 to 13.5 V (from memory), 13.5 to 13.8 V in common practice" },
  "flooded-calcium": { low: 13.5, high: 13.8, source: "13.5 to 13.8 V, makers' figures (from memory) and common practice" },
  flooded: { low: 13.2, high: 13.8, source: "13.2 to 13.8 V over both kinds of flooded battery (from memory and common practice)" },
  EFB: { low: 13.5, high: 13.8, source: "13.5 to 13.8 V, taken as for calcium batteries (common practice)" },
  AGM: { low: 13.5, high: 13.8, source: "13.5 to 13.8 V, makers' figures" },
  gel: { low: 13.1, high: 13.8, source: "13.1 to 13.8 V, makers' figures differ widely" },
};

/** The window as printed for a kind of 12 V battery, at 20 to 25 °C, V. */
export function printedFloatWindow(construction: Battery["construction"]): { readonly low: number; readonly high: number } {
  return windows[construction];
}

/** Makers print their windows for 20 or for 25 °C (IEC 60896-11 takes 20 °C; read), so between the two a window holds as it is, °C. */
const printedForC = { low: 20, high: 25 } as const;

/** A temperature as far from 25 °C as the one given is from the nearer of the two that windows are printed for. */
function fromPrinted(temperatureC: number): number {
  return Math.max(temperatureC, printedForC.high) + Math.min(temperatureC - printedForC.low, 0);
}

export type FloatWindow = {
  /** V of the whole battery, at the temperature it had. */
  readonly lowV: number;
  readonly highV: number;
  /** Of both ends together: how well the temperature and the slope are known, V. */
  readonly standardUncertainty: number;
  readonly words: string;
};

/**
 * The voltages at which a battery may be held for long, at the temperature it had.
 *
 * @param temperature  undefined where nobody read it: the window then is the printed one, and says so
 * @param rule         how a charge voltage should move with temperature
 */
export function floatWindowOf(battery: Battery, temperature: BatteryTemperature | undefined, rule: CompensationRule): FloatWindow {
  const { low, high, source } = windows[battery.construction];
  const share = battery.cells / 6;
  const asPrinted = `${(low * share).toFixed(2)} to ${(high * share).toFixed(2)} V at 20 to 25 °C (${source})`;
  const lastWord = "the battery's maker has the last word";
  if (temperature === undefined)
    return {
      lowV: low * share,
      highV: high * share,
      standardUncertainty: 0,
      words: `${asPrinted}, which is taken, since the battery's temperature was not read; ${lastWord}`,
    };
  const moved = { ...temperature, lowC: fromPrinted(temperature.lowC), highC: fromPrinted(temperature.highC) };
  const shift = shiftAt(battery.cells, moved, rule);
  const { shiftV, standardUncertainty } = middleOf(shift);
  const lowV = low * share + shiftV;
  const highV = high * share + shiftV;
  return {
    lowV,
    highV,
    standardUncertainty,
    words: `${lowV.toFixed(2)} to ${highV.toFixed(2)} V at the temperature of the battery, from ${asPrinted}: ${describeShift(battery.cells, temperature, rule, shift, "20 to 25 °C")}; ${lastWord}`,
  };
}

import type { Battery } from "../nouns/battery.ts";

/** Float windows for 12 V at 25 °C, by construction. */
const windows: Readonly<Record<Battery["construction"], { low: number; high: number; source: string }>> = {
  "flooded-antimony": { low: 13.2, high: 13.8, source: "makers' figures 13.2 to 13.5 V (from memory), 13.5 to 13.8 V in common practice" },
  "flooded-calcium": { low: 13.5, high: 13.8, source: "13.5 to 13.8 V, makers' figures (from memory) and common practice" },
  flooded: { low: 13.2, high: 13.8, source: "13.2 to 13.8 V over both kinds of flooded battery (from memory and common practice)" },
  EFB: { low: 13.5, high: 13.8, source: "13.5 to 13.8 V, taken as for calcium batteries (common practice)" },
  AGM: { low: 13.5, high: 13.8, source: "13.5 to 13.8 V, makers' figures" },
  gel: { low: 13.1, high: 13.8, source: "13.1 to 13.8 V, makers' figures differ widely" },
};

/** The voltages at which this battery may be held for long, V for the whole battery at 25 °C; not compensated for temperature. */
export function floatWindowOf(battery: Battery): { lowV: number; highV: number; words: string } {
  const { low, high, source } = windows[battery.construction];
  const share = battery.cells / 6;
  return {
    lowV: low * share,
    highV: high * share,
    words: `${(low * share).toFixed(2)} to ${(high * share).toFixed(2)} V at 25 °C (${source}); the battery's maker has the last word`,
  };
}

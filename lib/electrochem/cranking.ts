/**
 * Cold-cranking currents of different standards. They differ in time, end voltage and temperature, so nothing converts; the trade's
 * ratios even contradict each other. A conversion may be shown as "about" and never decides anything.
 */
import type { crankingStandards } from "../nouns/battery.ts";

export type CrankingStandard = (typeof crankingStandards)[number];

/** How far a conversion may be off, as a fraction; our assumption. */
const halfWidth = 0.1;

/** Amperes by SAE J537 for one ampere by this standard. DIN × 1.7 = SAE and EN = 0.92 SAE are trade rules (read). */
const saePerAmpere: Partial<Record<CrankingStandard, number>> = {
  "SAE J537": 1,
  // 30 s to 7.2 V at -18 °C is SAE's own test; the 2006 and later editions of IEC 60095-1 took it over.
  "IEC 60095-1": 1,
  "DIN 43539-2": 1.7,
  "EN 50342-1": 1 / 0.92,
};

/**
 * About the current that another standard would print for this battery.
 * @param currentA  rated cranking current, A
 * @returns the middle and an interval of ±10 %, all in A; the same current with no width for the same standard; undefined where the trade
 *   has no rule (JIS tests by fixed currents; "not stated" is nothing to convert) or the current is not positive
 */
export function convertCrankingAbout(
  currentA: number,
  from: CrankingStandard,
  to: CrankingStandard,
): { readonly aboutA: number; readonly lowA: number; readonly highA: number } | undefined {
  const fromFactor = saePerAmpere[from];
  const toFactor = saePerAmpere[to];
  if (fromFactor === undefined || toFactor === undefined || !(currentA > 0)) return undefined;
  const aboutA = (currentA * fromFactor) / toFactor;
  const width = from === to ? 0 : halfWidth;
  return { aboutA, lowA: aboutA * (1 - width), highA: aboutA * (1 + width) };
}

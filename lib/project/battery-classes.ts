/** The batteries a buyer has, and the limits within which a charger suits them. All common practice; a battery's own sheet comes first. */
import { freezingPointC, frostWarningDensity } from "../electrochem/freezing.ts";
import { formatNumber, formatStated } from "../units/format.ts";
import type { Construction } from "./battery-priors.ts";
import type { Range } from "./spread.ts";

/** Usual capacities, Ah at the 20 h rate; one stands for its class. */
export const batteryClasses = [
  { id: "motorcycle", label: "Motorcycle", capacityAh: { low: 4, high: 14 }, typicalAh: 9 },
  { id: "small-car", label: "Small car", capacityAh: { low: 36, high: 52 }, typicalAh: 44 },
  { id: "family-car", label: "Family car", capacityAh: { low: 60, high: 74 }, typicalAh: 68 },
  { id: "diesel", label: "Diesel car", capacityAh: { low: 80, high: 100 }, typicalAh: 90 },
  { id: "van-or-boat", label: "Van or boat", capacityAh: { low: 110, high: 140 }, typicalAh: 120 },
] as const;
export type BatteryClassId = (typeof batteryClasses)[number]["id"];

/** How flat, in a customer's words, as a share of what the battery holds. */
export const flatnesses = [
  { id: "slightly", label: "Slightly flat", stateOfCharge: 0.75 },
  { id: "half", label: "Half flat", stateOfCharge: 0.5 },
  { id: "flat", label: "Flat", stateOfCharge: 0.2 },
  { id: "very-flat", label: "Very flat", stateOfCharge: 0.05 },
] as const;
export type FlatnessId = (typeof flatnesses)[number]["id"];

/** The highest bulk current, as a share of the capacity in Ah: common practice; battery makers' sheets vary between 0.1 and 0.4. */
export const sensibleCurrentShare: Readonly<Record<Construction, number>> = {
  "flooded-antimony": 0.25,
  "flooded-calcium": 0.25,
  flooded: 0.25,
  EFB: 0.3,
  AGM: 0.35,
  gel: 0.2,
};

/**
 * The highest voltage a sealed battery is commonly charged with at 25 °C, V a cell: 14.8 V on a 12 V AGM, 14.4 V on gel (common practice).
 * Surely above that by more than sheets differ, it dries out and may heat.
 */
const sealedLimitVPerCell: Readonly<Partial<Record<Construction, number>>> = { AGM: 14.8 / 6, gel: 14.4 / 6 };
const sheetsDifferVPerCell = 0.03;

/** A sealed battery as flat as this may not recover, and can heat: our line, well below the 20 % of common warnings. */
const sealedTooFlat = 0.1;
/** Margin to the freezing point, K: the layered top of the acid freezes first. Our judgement. */
const frostMarginK = 3;

/** What speaks against a charger, with the numbers that decide. */
export type Against =
  | { readonly id: "frozen" }
  | { readonly id: "sealed-flat" }
  /** V of a 12 V battery. */
  | { readonly id: "sealed-voltage"; readonly peakV: number; readonly limitV: number }
  /** `share` is of the capacity in Ah. */
  | { readonly id: "current"; readonly currentA: number; readonly mostA: number; readonly share: number };

/** A reason in words fit for a reader. */
export function againstWords(against: Against): string {
  switch (against.id) {
    case "frozen":
      return "its acid may be frozen: a frozen battery must not be charged; thaw it and look for cracks first";
    case "sealed-flat":
      return "a sealed battery this flat needs its maker's own procedure, watched";
    case "sealed-voltage":
      return `it goes up to ${formatNumber(against.peakV, 1)} V (12 V battery), and a sealed battery commonly gets no more than ${formatNumber(against.limitV, 1)} V: it dries out and may heat`;
    case "current":
      return `${formatNumber(against.currentA, 1)} A is more than such a battery should get (${formatNumber(against.mostA, 1)} A, ${formatStated(against.share, "")} of its capacity)`;
  }
}

/**
 * Why a battery should not simply be put on this charger.
 * @param densityAt25C  kg/l of its acid as flat as it is
 * @param bulkA  the charger's current at its least, A: only what is sure counts against it
 * @param peakVPerCell  the highest voltage that the charger surely goes to, V a cell; 0 where that is not known
 * @returns none where nothing speaks against it. The battery maker's sheet comes first.
 */
export function whatIsAgainst(
  construction: Construction,
  ratedAh: number,
  stateOfCharge: number,
  densityAt25C: number,
  bulkA: Range,
  airC: number,
  peakVPerCell = 0,
): Against[] {
  const reasons: Against[] = [];
  const freezesAtC = freezingPointC(densityAt25C);
  if (densityAt25C < frostWarningDensity && airC < freezesAtC + frostMarginK) reasons.push({ id: "frozen" });
  if ((construction === "AGM" || construction === "gel") && stateOfCharge <= sealedTooFlat) reasons.push({ id: "sealed-flat" });
  const limitV = sealedLimitVPerCell[construction];
  if (limitV !== undefined && peakVPerCell > limitV + sheetsDifferVPerCell)
    reasons.push({ id: "sealed-voltage", peakV: 6 * peakVPerCell, limitV: 6 * limitV });
  const most = sensibleCurrentShare[construction] * ratedAh;
  if (bulkA.low > most) reasons.push({ id: "current", currentA: bulkA.low, mostA: most, share: sensibleCurrentShare[construction] });
  return reasons;
}

/** The same in words. */
export const reasonsAgainst = (...battery: Parameters<typeof whatIsAgainst>): string[] => whatIsAgainst(...battery).map(againstWords);

/** When a battery left connected wants water, told on the safe side. */
import { formatNumber, withUnit } from "../../units/format.ts";

const daysInMonth = 365.25 / 12;
const longestMonths = 24;

/**
 * When water runs short, the earliest first and then the middle of what is forecast, both rounded down.
 * @param spread  days; null for never
 */
export function topUpWords({ value, low }: { readonly value: number | null; readonly low: number | null }): string {
  const [earliest, middle] = [daysInWords(low), daysInWords(value)];
  return earliest === middle ? earliest : `${earliest}, more likely ${middle}`;
}

/** Days up to two months, then months, up to two years. */
function daysInWords(days: number | null): string {
  if (days === null || days >= longestMonths * daysInMonth) return withUnit(`more than ${longestMonths}`, "months");
  if (days >= 2 * daysInMonth) return withUnit(formatNumber(Math.floor(days / daysInMonth), 0), "months");
  if (days < 2) return withUnit(days < 1 ? "less than 1" : "1", "day");
  return withUnit(formatNumber(Math.floor(days), 0), "days");
}

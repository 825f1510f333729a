/** When a battery left connected wants water, told on the safe side. */
import { formatNumber, withUnit } from "../../units/format.ts";

const daysInMonth = 365.25 / 12;
const longestMonths = 24;

/**
 * The earliest day on which water runs short, in words, rounded down: days up to two months, then months.
 * @param days  the lower end of the forecast; null for never
 */
export function earliestTopUp(days: number | null): string {
  const months = days === null ? longestMonths : days / daysInMonth;
  if (days === null || months >= longestMonths) return withUnit(`more than ${longestMonths}`, "months");
  return months < 2 ? withUnit(formatNumber(Math.floor(days), 0), "days") : withUnit(formatNumber(Math.floor(months), 0), "months");
}

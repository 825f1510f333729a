/** When a battery left connected wants water, told on the safe side. */
import type { Words } from "../words/index.ts";

type TopUpWords = Words["charger"]["forecast"]["topUp"];

const daysInMonth = 365.25 / 12;
const longestMonths = 24;

/**
 * When water runs short, the earliest first and then the middle of what is forecast, both rounded down.
 * @param spread  days; null for never
 */
export function topUpWords({ value, low }: { readonly value: number | null; readonly low: number | null }, words: TopUpWords): string {
  const [earliest, middle] = [daysInWords(low, words), daysInWords(value, words)];
  return earliest === middle ? earliest : words.moreLikely(earliest, middle);
}

/** Days up to two months, then months, up to two years. */
function daysInWords(days: number | null, words: TopUpWords): string {
  if (days === null || days >= longestMonths * daysInMonth) return words.moreThanMonths(longestMonths);
  if (days >= 2 * daysInMonth) return words.months(Math.floor(days / daysInMonth));
  return days < 1 ? words.lessThanADay : words.days(Math.floor(days));
}

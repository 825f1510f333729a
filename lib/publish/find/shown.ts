/** An answer's numbers as a reader sees them. */
import { formatFigure, formatNumber, formatProbability, withUnit } from "../../units/format.ts";
import type { Answer, Middle } from "./answer.ts";

/** What stands behind a verdict: its percentage; nothing where the charger is not advised, since it is then no matter of time. */
export function sureShown({ verdict, probability }: Pick<Answer, "verdict" | "probability">): string {
  return verdict === "not advised" ? "" : percentShown(probability);
}

/** The probability of a forecast, here and in the matrix on a charger's page: the draws tell no finer than one in fifty. */
export function percentShown(probability: number): string {
  return formatProbability(probability, 0.02);
}

/** Hours with the middle 95 % of the draws; "never" is said with the hours that were looked at. */
export function hoursShown({ value, low, high }: Middle, horizonH: number): string {
  const never = `not within ${formatNumber(horizonH, 0)} h`;
  if (!Number.isFinite(value))
    return Number.isFinite(low) ? `${never} in half of the draws or more; ${formatFigure(figure(low, "h"))} at best` : never;
  if (!Number.isFinite(high)) return `${formatFigure(figure(value, "h"))} (from ${formatFigure(figure(low, "h"))}; in some draws ${never})`;
  return formatFigure({ ...figure(value, "h"), low, high });
}

/** Energy with its interval. */
export function energyShown({ value, low, high }: Middle): string {
  return formatFigure({ ...figure(value, "kWh"), low, high });
}

/** What that energy costs; undefined where no price was given. Two decimals, no currency where none is known. */
export function moneyShown({ value, low, high }: Middle, pricePerKWh: number, currency: string | null): string | undefined {
  if (Number.isNaN(pricePerKWh)) return undefined;
  const amount = (kWh: number): string => formatNumber(kWh * pricePerKWh, 2);
  const spread = amount(low) === amount(high) ? "" : ` (${amount(low)} to ${amount(high)})`;
  return `${withUnit(amount(value), currency ?? "")}${spread}`;
}

/** Three significant digits: a number of a forecast that carries no interval of its own carries no more. */
function figure(value: number, unit: string) {
  return { unit, value: Number(value.toPrecision(3)), low: null, high: null, absent: null };
}

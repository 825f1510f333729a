/** An answer's numbers as a reader sees them. */

import type { Middle } from "../../project/spread.ts";
import { withUnit } from "../../units/format.ts";
import type { Formats } from "../../units/formats.ts";
import type { Answer } from "./answer.ts";
import type { FindSpeech } from "./find-speech.ts";

/** What stands behind a verdict: its percentage; nothing where the charger is not advised, since it is then no matter of time. */
export function sureShown({ verdict, probability }: Pick<Answer, "verdict" | "probability">, formats: Formats): string {
  return verdict === "not advised" ? "" : percentShown(probability, formats);
}

/** The draws of a forecast tell no probability nearer to never, or always, than one in fifty. */
const finestTold = 0.02;

/** The probability of a forecast, here and in the matrix on a charger's page. */
export const percentShown = (probability: number, { formatProbability }: Formats): string => formatProbability(probability, finestTold);

type Ready = Pick<Answer, "hoursToReady" | "horizonH" | "neverReady" | "inTime">;

/** Hours with the middle 95 % of the draws; open above, and with their count, where some are not ready within the hours that were looked at. */
export function hoursShown(
  { hoursToReady: { value, low, high }, horizonH, neverReady, inTime }: Ready,
  { formats, words }: FindSpeech,
): string {
  const { formatFigure, formatNumber } = formats;
  const within = formatNumber(horizonH, 0);
  const never = words.shown.notWithin(within, neverReady, inTime.length);
  if (neverReady === inTime.length) return never;
  if (!Number.isFinite(value)) return words.shown.atBest(formatFigure(figure(low, "h")), never);
  const shown = formatFigure({ ...figure(value, "h"), low, high: Number.isFinite(high) ? high : null });
  return neverReady === 0 ? shown : words.shown.someNever(shown, never);
}

/** Energy with its interval. */
export function energyShown({ value, low, high }: Middle, { formatFigure }: Formats): string {
  return formatFigure({ ...figure(value, "kWh"), low, high });
}

/** What that energy costs; undefined where no price was given. Two decimals, no currency where none is known. */
export function moneyShown(
  { value, low, high }: Middle,
  pricePerKWh: number,
  currency: string | null,
  { formats, words }: FindSpeech,
): string | undefined {
  if (Number.isNaN(pricePerKWh)) return undefined;
  const amount = (kWh: number): string => formats.formatNumber(kWh * pricePerKWh, 2);
  const spread = amount(low) === amount(high) ? "" : words.shown.range(amount(low), amount(high));
  return `${withUnit(amount(value), currency ?? "")}${spread}`;
}

/** Three significant digits: a number of a forecast that carries no interval of its own carries no more. */
function figure(value: number, unit: string) {
  return { unit, value: Number(value.toPrecision(3)), low: null, high: null, absent: null };
}

/** What the evidence strip writes: ticks, numbers, letters, and the sentence that stands for the drawing. */
import { withUnit } from "../../units/format.ts";
import type { Formats } from "../../units/formats.ts";
import type { Timeline } from "../results.ts";

/** Steps of the time axis, in hours, from which the first that gives few enough ticks is taken. */
const stepsH = [0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 72, 120, 168, 240, 336, 504, 720, 1440, 2160, 4320, 8760];
const mostTicks = 6;

/** Ticks from 0 to the span, at most seven; one tick for a span of nothing. */
export function axisTicks(spanH: number): number[] {
  const step = stepsH.find((candidate) => spanH / candidate <= mostTicks) ?? spanH / mostTicks;
  const count = Math.floor(spanH / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => index * step);
}

/** Ticks from two days on are written in days, so that "9 d" stands where "216 h" would. */
export function tickLabel(hours: number, spanH: number, { formatNumber }: Formats): string {
  if (hours === 0) return "0";
  return spanH > 48 ? withUnit(formatNumber(hours / 24, hours % 24 === 0 ? 0 : 1), "d") : withUnit(String(hours), "h");
}

/** Numbers nearer to each other than this share of the strip would be drawn over one another. */
const nearestNumbers = 0.025;

/**
 * The numbers to write over marks at given places: each its own, but marks too near to each other share one, "7–8", at the first of them.
 * @param places hours, in rising order; the n-th mark is number n
 * @returns one text for each mark, empty where the mark shares an earlier one's
 */
export function sharedNumbers(places: readonly number[], spanH: number): string[] {
  const texts: string[] = [];
  let first = 0;
  places.forEach((place, index) => {
    if (index > 0 && place - (places[first] ?? 0) < nearestNumbers * spanH) {
      texts[first] = `${first + 1}–${index + 1}`;
      texts.push("");
      return;
    }
    first = index;
    texts.push(String(index + 1));
  });
  return texts;
}

/** Findings that have a moment are lettered; those without one are told in the list of findings only. */
export const lettered = (findings: Timeline["findings"]) =>
  findings
    .filter((finding) => finding.atH !== null)
    .map((finding, index) => ({ ...finding, atH: finding.atH ?? 0, letter: String.fromCharCode("a".charCodeAt(0) + (index % 26)) }));

/** What the sentence that stands for the drawing counts; the full account is the timeline's own words. */
export function stripCounts({ connections, readings }: Timeline) {
  return {
    connections: connections.length,
    stretches: connections.flatMap((connection) => connection.recorded).length,
    readings: readings.length,
    unseenEnds: connections.filter((connection) => !connection.endKnown).length,
  };
}

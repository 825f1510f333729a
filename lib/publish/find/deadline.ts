/** From "Sunday evening" to an instant, on the reader's own clock. */
import type { FindSpeech } from "./find-speech.ts";
import type { Question } from "./question.ts";

/** No forecast is offered beyond this: two weeks on a charger is a season, not a charge. */
export const longestH = 14 * 24;

/**
 * The instant by which the battery must be ready.
 * @param now  the reader's clock; its time zone counts
 * @returns undefined for a date that cannot be read. "Sunday evening" is today's on a Sunday before 18:00, and next week's after it.
 *   Hours are counted on the clock, so that a night in which clocks change is an hour shorter or longer, as it is.
 */
export function deadlineOf({ by, at }: Pick<Question, "by" | "at">, now: Date): Date | undefined {
  const onDay = (daysOn: number, hour: number): Date => new Date(now.getFullYear(), now.getMonth(), now.getDate() + daysOn, hour);
  const inHours = /^(\d+)h$/.exec(by)?.[1];
  if (inHours !== undefined) return new Date(now.getTime() + Number(inHours) * 3_600_000);
  switch (by) {
    case "tomorrow-morning":
      return onDay(1, 8);
    case "tomorrow-evening":
      return onDay(1, 18);
    case "sunday-evening": {
      const daysOn = (7 - now.getDay()) % 7;
      return onDay(daysOn === 0 && now.getHours() >= 18 ? 7 : daysOn, 18);
    }
    default: {
      const instant = new Date(at);
      return Number.isNaN(instant.getTime()) ? undefined : instant;
    }
  }
}

/** Hours left until an instant, to the whole minute, so that a second's delay asks the same question. */
export function hoursUntil(deadline: Date, now: Date): number {
  return Math.round((deadline.getTime() - now.getTime()) / 60_000) / 60;
}

/** Why a deadline cannot be asked for; undefined where it can. */
export function complaintOfDeadline(hoursLeft: number | undefined, { words }: Pick<FindSpeech, "words">): string | undefined {
  if (hoursLeft === undefined) return words.complaints.noDate;
  if (!(hoursLeft > 0)) return words.complaints.passed;
  return hoursLeft > longestH ? words.complaints.tooLate : undefined;
}

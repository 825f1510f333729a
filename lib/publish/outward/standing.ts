/** What a reader of a card, an embed or a quotation must be told before the verdict: that the result no longer stands, is in doubt, or was turned. */
import type { ChargerResult } from "../results.ts";
import type { OutwardSpeech } from "./outward-speech.ts";

export type Notice = { readonly on: string; readonly words: string };

/**
 * The gravest notice on a charger's result: a withdrawal before a concern before a correction that changed the verdict, the newest of
 * equals; null where the result stands as it was published. What was corrected is told in the reviewer's own words.
 */
export function standingNotice({ corrections }: Pick<ChargerResult, "corrections">, { outward, formats }: OutwardSpeech): Notice | null {
  const { notice } = outward;
  const newestFirst = [...corrections].sort((a, b) => (a.on < b.on ? 1 : a.on > b.on ? -1 : 0));
  const withdrawal = newestFirst.find((correction) => correction.kind === "withdrawal");
  if (withdrawal !== undefined) return { on: withdrawal.on, words: notice.withdrawn(formats.formatDay(withdrawal.on)) };
  const concern = newestFirst.find((correction) => correction.kind === "concern");
  if (concern !== undefined) return { on: concern.on, words: notice.concern(formats.formatDay(concern.on), concern.what) };
  const turned = newestFirst.find((correction) => correction.changesVerdict);
  return turned === undefined ? null : { on: turned.on, words: notice.turned(formats.formatDay(turned.on), turned.what) };
}

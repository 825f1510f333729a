/** How the script speaks: the page hands it the words of its language, so that this one script serves all languages. */
import { type Speech, useSpeech } from "../../../lib/publish/pages/speech.tsx";
import type { SideSpeech, SideWords } from "../../../lib/publish/side-by-side/side-speech.ts";
import type { Say } from "../phrases.ts";

/** What the page keeps for the script; no other page loads it. */
export const place = document.querySelector<HTMLElement>("[data-side-by-side]");

export const words = JSON.parse(place?.dataset.words ?? "{}") as SideWords;

/** The language of the reviewer's own words, where the page has another. */
export const ownLanguage = place?.dataset.own;

/** For marks, and for what the results say. */
export const speechWith = (say: Say): Speech => ({ absence: (kind) => words.absences[kind], say });

/** For statements over several chargers, and for texts that the build made for this page. */
export function useSideSpeech(): SideSpeech {
  const { say } = useSpeech();
  return { words, tell: (text) => say(text) ?? text };
}

/** How the page side by side speaks a language, for tests of its statements. */
import type { Language } from "../../../lib/nouns/site.ts";
import type { SideSpeech } from "../../../lib/publish/side-by-side/side-speech.ts";
import { sideWordsIn } from "../../../lib/publish/side-by-side/side-words.ts";
import { sayIn } from "../../../lib/publish/words/speech-in.ts";

/** As the script makes it of what the page hands over, which is JSON. */
export const sideSpeech = (language: Language): SideSpeech => ({
  words: JSON.parse(JSON.stringify(sideWordsIn(language))) as SideSpeech["words"],
  tell: (text) => sayIn(language, text) ?? text,
});

export const english = sideSpeech("en");

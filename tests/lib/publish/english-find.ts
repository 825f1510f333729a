/** How the page that finds a charger speaks English, for tests. */
import type { FindSpeech } from "../../../lib/publish/find/find-speech.ts";
import { wordsIn } from "../../../lib/publish/words/index.ts";
import { formatsIn } from "../../../lib/publish/words/speech-in.ts";

export const englishFind: FindSpeech = { formats: formatsIn("en"), words: wordsIn("en").find };

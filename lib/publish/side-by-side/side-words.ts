/** The words that the page hands to its script, in the page's language. The script fetches none and holds none, so one serves all languages. */
import type { Language } from "../../nouns/site.ts";
import { wordsIn } from "../words/index.ts";
import { notations } from "../words/speech-in.ts";
import type { SideWords } from "./side-speech.ts";

/** All that the script says of itself, as plain data. */
export function sideWordsIn(language: Language): SideWords {
  const { marks, sideBySide } = wordsIn(language);
  const { absences, bases, invented } = marks;
  const { decimalMark, notANumber } = notations[language];
  return { ...sideBySide, language, absences, bases, invented, numbers: { decimalMark, notANumber } };
}

/** The words of the page that finds a charger, in the language that this script is built for. */
import { find as german } from "../../../lib/publish/words/de/find.ts";
import { find as english } from "../../../lib/publish/words/en/find.ts";
import { find as polish } from "../../../lib/publish/words/pl/find.ts";
import { formats } from "../formats.ts";
import { language } from "../language.ts";

const words = PAGE_LANGUAGE === "pl" ? polish : PAGE_LANGUAGE === "de" ? german : english;

export const speech = { formats, words, language };

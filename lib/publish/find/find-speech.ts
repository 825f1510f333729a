/** What the page that finds a charger needs to speak a language, in the build and in its script. */
import type { Formats } from "../../units/formats.ts";
import type { Words } from "../words/index.ts";

export type FindSpeech = { readonly formats: Formats; readonly words: Words["find"] };

/** The words of the small scripts, in the language that they are built for. What a script does not use falls away. */
import * as german from "../../lib/publish/words/de/scripts.ts";
import * as english from "../../lib/publish/words/en/scripts.ts";
import * as polish from "../../lib/publish/words/pl/scripts.ts";

export const sortWords = PAGE_LANGUAGE === "pl" ? polish.sort : PAGE_LANGUAGE === "de" ? german.sort : english.sort;
export const searchWords = PAGE_LANGUAGE === "pl" ? polish.search : PAGE_LANGUAGE === "de" ? german.search : english.search;
export const compareWords = PAGE_LANGUAGE === "pl" ? polish.compare : PAGE_LANGUAGE === "de" ? german.compare : english.compare;
export const exploreButtonWords =
  PAGE_LANGUAGE === "pl" ? polish.exploreButton : PAGE_LANGUAGE === "de" ? german.exploreButton : english.exploreButton;
export const exploreWords = PAGE_LANGUAGE === "pl" ? polish.explore : PAGE_LANGUAGE === "de" ? german.explore : english.explore;

/** Gathers what the card, the embed and the quotations of a charger are made from. */
import type { Language } from "../../nouns/site.ts";
import { languageFolder } from "../links.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { headlinesOf } from "./headlines.ts";
import { eventsOfCharger, testsOf, versionOf } from "./history.ts";
import type { Fingerprints } from "./index.ts";
import { outwardSpeechIn } from "./outward-speech.ts";
import type { Quotable } from "./quotation.ts";

/** Throws where the charger has no fingerprint, which would be our own mistake. */
export function quotableCharger(results: ResultsFolder, fingerprints: Fingerprints, id: string, language: Language): Quotable {
  const { index } = results;
  const charger = results.charger(id);
  const tests = testsOf(results, id);
  const speech = outwardSpeechIn(language);
  const fingerprint = fingerprints[id];
  if (fingerprint === undefined) throw new Error(`no fingerprint was made of ${id}`);
  return {
    index,
    charger,
    headlines: headlinesOf(charger, tests, speech),
    version: versionOf(eventsOfCharger(charger, tests)),
    fingerprint,
    speech,
    folder: languageFolder(index.site.languages, language),
    invented: index.site.invented || charger.invented,
  };
}

/** Writes the small files that the page side by side fetches. */
import type { SitePart } from "../site-part.ts";
import { phrasesPath } from "../words/phrases-path.ts";
import { assembleCompared } from "./assemble-compared.ts";
import { type ComparedIndex, comparedIndexPath, comparedPath } from "./compared.ts";
import { comparedPhrases } from "./compared-phrases.ts";

/** Writes data/compare/index.json. */
export const writeComparedIndex: SitePart = ({ index }, { write }) => {
  const list: ComparedIndex = index.chargers.map(({ id, name }) => ({ id, name }));
  write(comparedIndexPath, `${JSON.stringify(list)}\n`);
};

/** Writes a charger's file, and beside it what its texts mean in each other language of the site. */
export function writeCompared(id: string): SitePart {
  return (results, { write }) => {
    const charger = results.charger(id);
    const tests = charger.tests.map((test) => results.test(test.id));
    const compared = assembleCompared(charger, results.rowsOf(id), tests);
    write(comparedPath(id), `${JSON.stringify(compared)}\n`);
    for (const language of results.index.site.languages.filter((other) => other !== "en")) {
      const told = assembleCompared(charger, results.rowsOf(id), tests, language);
      write(phrasesPath(comparedPath(id), language), `${JSON.stringify(comparedPhrases(compared, told, language))}\n`);
    }
  };
}

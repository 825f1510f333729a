/** Puts the data of the page that finds a charger where its script can fetch them. */
import type { SitePart } from "../site-part.ts";
import { phrasesOf } from "../words/phrases-of.ts";
import { phrasesPath } from "../words/phrases-path.ts";
import { findDataOf, findDataPath } from "./find-data.ts";

/** Writes data/find.json, and what its statements mean in the site's other languages. The same results give the same bytes. */
export const writeFindData: SitePart = (results, { write }) => {
  const data = findDataOf(results);
  write(findDataPath, `${JSON.stringify(data)}\n`);
  const statements = data.modes.flatMap(({ unknowns, leftOnWarning }) =>
    leftOnWarning === null ? unknowns : [...unknowns, leftOnWarning],
  );
  for (const language of results.index.site.languages.filter((other) => other !== "en"))
    write(phrasesPath(findDataPath, language), `${JSON.stringify(phrasesOf(statements, language))}\n`);
};

import type { Problem } from "../nouns/problem.ts";
import { interfaceLanguages } from "../nouns/site.ts";
import type { Workspace } from "../read/workspace.ts";

/** Folders that every site has of its own. */
export const siteFolders: readonly string[] = [
  "assets",
  "cards",
  "cautions",
  "chargers",
  "compare",
  "corrections",
  "data",
  "embed",
  "find",
  "method",
  "pagefind",
  "quote",
  "raw",
  "results",
  "signs",
  "tests",
];

/** A page of words stands in a folder named for its file, which must be neither a language's folder nor one of the site's own. */
export function checkPageAddresses(pages: Workspace["pages"]): Problem[] {
  return [...pages].flatMap(([id, { file }]): Problem[] => {
    const isLanguage = interfaceLanguages.some((language) => language === id);
    if (!isLanguage && !siteFolders.includes(id)) return [];
    return [
      {
        id: "page-address",
        level: "error",
        place: { file },
        found: isLanguage
          ? `the name "${id}", the folder that holds the whole site in that language`
          : `the name "${id}", a folder that the site has of its own`,
        expected: `a name other than ${[...interfaceLanguages, ...siteFolders].join(", ")}`,
        mend: isLanguage
          ? `rename the file, say to about-${id}.md; a page says its own language in its head: language: ${id}`
          : `rename the file, say to our-${id}.md`,
      },
    ];
  });
}

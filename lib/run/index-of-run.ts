/** The index of a run: its rows, kept apart, the reviewer's own pages, and what was kept off the site. */
import { checkPageAddresses } from "../check/page-address.ts";
import type { Problem } from "../nouns/problem.ts";
import { assembleIndex } from "../publish/assemble/index-results.ts";
import { fillProse, testsCalled } from "../publish/assemble/prose.ts";
import type { ProseResult, SiteIndex, TestResult } from "../publish/results.ts";
import type { Prose } from "../read/prose.ts";
import type { Workspace } from "../read/workspace.ts";
import type { AssembledChargers } from "./chargers.ts";
import type { RowText } from "./jobs.ts";
import type { MeasuredTests } from "./tests.ts";

/**
 * @param found     the problems so far
 * @param resultOf  fetches the results of a test by its key
 * @returns all problems, and the index; none where the site's own record has errors
 */
export async function indexOf(
  workspace: Workspace,
  { published }: MeasuredTests,
  { shown }: AssembledChargers,
  found: readonly Problem[],
  resultOf: (key: string) => Promise<TestResult>,
): Promise<{ index: SiteIndex | undefined; rows: readonly RowText[]; problems: Problem[] }> {
  const { site, reviews, chargers, broken, files } = workspace;
  const problems = [...found];
  if (site === undefined) return { index: undefined, rows: [], problems };
  const keyById = new Map(published.map(({ id, key }) => [id, key]));
  const ids = [...keyById.keys()];
  const pages: ProseResult[] = [];
  const misnamed = checkPageAddresses(workspace.pages);
  problems.push(...misnamed);
  for (const [id, words] of workspace.pages) {
    if (misnamed.some(({ place }) => place.file === words.file)) continue;
    const called = testsCalled(words).flatMap((test) => keyById.get(test) ?? []);
    const tests = await Promise.all(called.map(resultOf));
    const filled = fillProse(words, id, `${id}/`, 2, tests, site.value.language, ids);
    problems.push(...filled.problems);
    if (filled.value !== undefined) pages.push(filled.value);
  }
  for (const [id, review] of reviews)
    if (!chargers.has(id) && !broken.has(`charger ${id}`)) problems.push(reviewWithoutCharger(id, review));
  const rowByTest = new Map(shown.flatMap(({ head }) => head.rows.map((row) => [row.test, row] as const)));
  const index = assembleIndex({
    site: site.value,
    rows: [],
    chargers: shown.map(({ id, head }) => ({ id, name: head.name, corrections: head.corrections })),
    tests: published,
    pages,
    notPublished: notPublished(workspace, keyById, problems),
    files,
  });
  return { index, rows: ids.flatMap((id) => rowByTest.get(id) ?? []), problems };
}

function reviewWithoutCharger(id: string, { file }: Prose): Problem {
  return {
    id: "review-without-charger",
    level: "doubt",
    place: { file },
    found: `words on a charger "${id}"`,
    expected: `a record data/chargers/${id}.yaml`,
    mend: "rename the page after the charger it speaks of",
  };
}

function notPublished(
  { tests }: Workspace,
  published: ReadonlyMap<string, string>,
  problems: readonly Problem[],
): SiteIndex["notPublished"] {
  return tests
    .filter((folder) => !published.has(folder.id))
    .map((folder) => {
      const own = problems.filter(
        (problem) => problem.level === "error" && (problem.test === folder.id || problem.place.file.startsWith(`${folder.folder}/`)),
      );
      return {
        what: `test ${folder.id}`,
        why:
          own.length > 0 ? `its files have ${own.length === 1 ? "an error" : `${own.length} errors`}` : "a record that it uses has errors",
      };
    });
}

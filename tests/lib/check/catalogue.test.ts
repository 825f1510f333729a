/** docs/problems.md names every problem that the code can find, and each of its examples is what the code says. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { formatProblem } from "../../../lib/nouns/problem.ts";
import { lockFiles } from "../read/locked-files.ts";
import { mistakes } from "./mistakes.ts";
import { messagesOf } from "./small-workspace.ts";

lockFiles();

const project = fileURLToPath(new URL("../../../", import.meta.url));
const page = readFileSync(path.join(project, "docs/problems.md"), "utf8");

/** Entries of the page: a heading with id and level, words, and one fenced example. */
const entries = [...page.matchAll(/^### `([a-z-]+)` \((error|doubt)\)\n\n([^\n]+)\n\n```\n([\s\S]*?)\n```$/gm)].map(
  ([, id = "", level = "", words = "", example = ""]) => ({ id, level, words, example }),
);

/** Every problem id in the code: `id: "…"` or `id: …["…"]` beside a level, and the ids given to the small functions that make problems. */
function idsInCode(): Set<string> {
  const found = new Set<string>();
  for (const file of sourceFiles()) {
    const text = readFileSync(file, "utf8");
    if (!text.includes("nouns/problem.ts")) continue;
    for (const [, id = ""] of text.matchAll(/\bid: "([a-z-]+)",?\s+level:/g)) found.add(id);
    for (const [, id = ""] of text.matchAll(/\bid: "([a-z-]+)", find:/g)) found.add(id);
    for (const [, id = ""] of text.matchAll(/\b(?:tell|complain)\(\s*(?:"(?:error|doubt)",\s*)?"((?:log|reading|readings)-[a-z]+)"/g))
      found.add(id);
    for (const [, id = ""] of text.matchAll(/^ {2}"(?:a|an|the) [^"]+": "([a-z-]+)",$/gm)) found.add(id);
  }
  return found;
}

function sourceFiles(): string[] {
  return ["read", "check", "measure", "judge", "publish", "run", "commands", "."]
    .flatMap((folder) =>
      readdirSync(path.join(project, "lib", folder), { recursive: folder !== ".", withFileTypes: true }).filter((entry) => entry.isFile()),
    )
    .map((entry) => path.join(entry.parentPath, entry.name))
    .filter((file) => /\.tsx?$/.test(file));
}

describe("the catalogue of problems", () => {
  it("has an entry for each id in the code, and no other", () => {
    expect(entries.map(({ id }) => id).sort()).toEqual([...idsInCode()].sort());
  });

  it("has no heading that this test does not see as an entry", () => {
    expect([...page.matchAll(/^### /gm)]).toHaveLength(entries.length);
  });

  it("has one mistake for each entry", () => {
    expect(Object.keys(mistakes).sort()).toEqual(entries.map(({ id }) => id).sort());
  });

  it.each(entries.map((entry) => [entry.id, entry] as const))("%s is said as the page shows it", async (id, { level, example }) => {
    const mistake = mistakes[id];
    const messages =
      mistake === undefined
        ? []
        : "say" in mistake
          ? (await mistake.say()).map(formatProblem)
          : await messagesOf(mistake.workspace, mistake.prepare);
    expect(messages).toContain(example);
    expect(example).toContain(`: ${level} ${id}: expected `);
  });

  it("sounds like one person: no full stop, no capital letter, no 'invalid', and a way out of at least three words", () => {
    for (const { id, example } of entries) {
      const [, expected = "", found = "", mend = ""] =
        /: expected ([\s\S]+?), found ([\s\S]+?)\n(?: {2}note: .*\n)* {2}mend: (.+)$/.exec(example) ?? [];
      for (const part of [expected, found, mend]) {
        expect(part, id).not.toBe("");
        expect(part, id).not.toMatch(/\.$|invalid|error/i);
      }
      expect(expected, id).toMatch(/^(?:[a-z0-9[<"]|YAML)/);
      expect(mend, id).toMatch(/^[a-z]/);
      expect(mend.split(" ").length, id).toBeGreaterThan(2);
    }
  });
});

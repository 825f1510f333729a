import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { everyFigure } from "../../../../lib/measure/figures/index.ts";
import { readingColumns } from "../../../../lib/nouns/reading.ts";
import { resolveRules } from "../../../../lib/nouns/rules.ts";
import { site } from "../../../../lib/nouns/site.ts";

/** Files of the folder that hold no figure of their own, and why. */
const noFigures = new Set(["index", "shared-doubts", "reading-values"]);
const folder = new URL("../../../../lib/measure/figures/", import.meta.url);
const files = readdirSync(folder).map((name) => name.replace(/\.ts$/, ""));
const figures = everyFigure(resolveRules(site.parse({ title: "Bench" })));

describe("the list of figures", () => {
  it("leaves out no file of the folder", () => {
    const ids = figures.map((figure) => figure.id);
    expect(files.filter((name) => !noFigures.has(name) && !ids.includes(name))).toEqual([]);
  });

  it("has a file, or a column of the readings, for every figure", () => {
    const ofVisits = [
      "density-at-25c",
      "density-spread",
      ...Object.keys(readingColumns).map((name) => name.replace(/_/g, "-").toLowerCase()),
    ];
    expect(figures.map(({ id }) => id).filter((id) => !files.some((name) => id.startsWith(name)) && !ofVisits.includes(id))).toEqual([]);
  });

  it("has a test beside every file that holds figures", () => {
    const tests = readdirSync(new URL("./", import.meta.url));
    expect(files.filter((name) => name !== "shared-doubts" && !tests.includes(`${name}.test.ts`))).toEqual([]);
  });

  it("explains every figure, with a source and a check", () => {
    for (const { id, explain, source, checkedBy } of figures) {
      expect(explain.length, id).toBeGreaterThan(20);
      expect(source, id).toMatch(/\.$/);
      expect(checkedBy, id).not.toHaveLength(0);
    }
  });
});

import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { renderResultsDoc, resultSections } from "./results-doc.ts";

describe("docs/results.md", () => {
  it("explains every field of the results", () => {
    const bare = resultSections().flatMap(({ name, fields }) =>
      fields.filter(({ meaning }) => meaning === undefined).map(({ path }) => `${name}.${path}`),
    );
    expect(bare).toEqual([]);
  });

  it("holds the three files and the forms they share", () => {
    const names = resultSections().map((section) => section.name);
    expect(names.slice(0, 3)).toEqual(["site-index", "test-result", "charger-result"]);
    expect(names).toEqual(expect.arrayContaining(["figure", "evidence", "finding", "judged-claim", "stage", "timeline"]));
    expect(resultSections().flatMap((section) => section.fields).length).toBeGreaterThan(300);
  });

  it("is current (node --import tsx tests/lib/publish/assemble/write-results-doc.ts)", () => {
    expect(readFileSync(new URL("../../../../docs/results.md", import.meta.url), "utf8")).toBe(renderResultsDoc());
  });
});

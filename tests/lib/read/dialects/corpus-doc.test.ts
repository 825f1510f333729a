import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { withCorpusLists } from "../../../dialects/corpus-doc.ts";

describe("docs/dialects.md", () => {
  it("lists the corpus as it is: npx tsx tests/dialects/write-dialects-doc.ts", () => {
    const page = readFileSync(new URL("../../../../docs/dialects.md", import.meta.url), "utf8");
    expect(withCorpusLists(page)).toBe(page);
  });

  it("refuses a mark for a list that there is not", () =>
    expect(() => withCorpusLists("<!-- list: of shops -->\n<!-- end of list -->")).toThrow('no list "of shops"'));

  it("refuses a page without a mark for one of the lists", () =>
    expect(() => withCorpusLists("<!-- list: broken inputs -->\n<!-- end of list -->")).toThrow(
      "no mark for the lists files that are read",
    ));
});

import { describe, expect, it } from "vitest";
import { checkPageAddresses } from "../../../lib/check/page-address.ts";
import { interfaceLanguages } from "../../../lib/nouns/site.ts";
import type { Prose } from "../../../lib/read/prose.ts";

const page = (id: string): readonly [string, Prose] => [id, { file: `content/${id}.md`, head: { title: "Words" }, body: "", bodyLine: 4 }];
const refused = (...ids: readonly string[]): string[] => checkPageAddresses(new Map(ids.map(page))).map(({ place }) => place.file);

describe("a page of words", () => {
  it("may not be named as a language's folder, nor as one of the site's own", () => {
    expect(refused(...interfaceLanguages)).toEqual(["content/en.md", "content/pl.md", "content/de.md"]);
    expect(refused("about", "polish", "method-notes", "method")).toEqual(["content/method.md"]);
  });

  it("is told in the head in which language it is, rather than by its name", () => {
    const [problem] = checkPageAddresses(new Map([page("de")]));
    expect(problem).toMatchObject({ found: expect.stringContaining("in that language"), mend: expect.stringContaining("language: de") });
  });
});

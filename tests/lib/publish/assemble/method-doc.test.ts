import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { resolveRules } from "../../../../lib/nouns/rules.ts";
import { site } from "../../../../lib/nouns/site.ts";
import { assembleMethods } from "../../../../lib/publish/assemble/methods.ts";
import { methodVersion } from "../../../../lib/publish/version.ts";

const docs = new URL("../../../../docs/", import.meta.url);
const textOf = (name: string): string => readFileSync(new URL(name, docs), "utf8");
/** The cells of a visit are named as a row: density-1 to density-12. */
const isNamedAsRow = (id: string): boolean => /^density-(?:[2-9]|1[01])$/.test(id);

describe("docs/method.md", () => {
  it("names every figure, claim and finding by its id", () => {
    const text = textOf("method.md");
    const ids = assembleMethods(resolveRules(site.parse({ title: "Bench" }))).map((method) => method.id);
    expect(ids.filter((id) => !isNamedAsRow(id) && !text.includes(`\`${id}\``))).toEqual([]);
  });
});

describe("docs/method-changes.md", () => {
  it("has an entry for the version that results carry", () => {
    expect(textOf("method-changes.md")).toContain(`\n## ${methodVersion}`);
  });
});

describe("the documents", () => {
  it("link only to files of the repository that are there; addresses of the built site are not theirs to check", () => {
    const broken = readdirSync(docs)
      .filter((name) => name.endsWith(".md"))
      .flatMap((name) =>
        [...textOf(name).matchAll(/\]\((?!https?:|#|\/)([^)#]+)[^)]*\)/g)]
          .map(([, target]) => target ?? "")
          .filter((target) => !existsSync(new URL(target, docs)))
          .map((target) => `${name}: ${target}`),
      );
    expect(broken).toEqual([]);
  });
});

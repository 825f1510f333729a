import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { findings, judgeFindings } from "../../../../lib/judge/findings/index.ts";
import { finding } from "../../../../lib/nouns/finding.ts";
import { contextOf, visit } from "../../measure/bench.ts";

const filesIn = (url: URL): string[] => readdirSync(url).filter((name) => name !== "index.ts" && name !== "index.test.ts");
const files = filesIn(new URL("../../../../lib/judge/findings/", import.meta.url)).map((name) => name.replace(/\.ts$/, ""));

describe("the list of findings", () => {
  it("leaves out no file of the folder, and each file's name is its id", () => {
    expect(findings.map((definition) => definition.id).sort()).toEqual(files.sort());
  });

  it("has a test beside every file", () => {
    expect(
      filesIn(new URL("./", import.meta.url))
        .map((name) => name.replace(/\.test\.ts$/, ""))
        .sort(),
    ).toEqual(files.sort());
  });

  it("publishes findings in their form, each with its id and subject", () => {
    const judged = judgeFindings(contextOf({ readings: [visit(1, -1, { density_1: 1.1, density_2: 1.2, acid_C: 20, rest_V: 12.1 })] }));
    expect(judged.length).toBeGreaterThan(3);
    for (const one of judged) expect(finding.parse(one)).toEqual(one);
  });
});

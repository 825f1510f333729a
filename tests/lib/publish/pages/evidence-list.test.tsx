import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { EvidenceList } from "../../../../lib/publish/pages/evidence-list.tsx";
import { SiteProvider, siteContext } from "../../../../lib/publish/pages/site-context.tsx";
import { fixture } from "../../../pages/fixture.ts";

const digest = "a".repeat(64);
const listOf = (...evidence: Parameters<typeof EvidenceList>[0]["evidence"][number][]) =>
  renderToString(
    <SiteProvider value={siteContext(fixture.index, "tests/example/", "en")}>
      <EvidenceList evidence={evidence} find={(file) => `raw/${file}`} />
    </SiteProvider>,
  );

describe("a figure's evidence", () => {
  it("stands open where it is short", () => {
    const html = listOf({ file: "day-1.csv", sha256: digest, lines: [2, 90] }, { file: "day-2.csv", sha256: digest });
    expect(html).not.toContain("<details");
    expect(html).toContain("lines 2–90");
  });

  it("is folded where it names three files, and still names each of them", () => {
    const html = listOf(...["day-1.csv", "day-2.csv", "day-3.csv"].map((file) => ({ file, sha256: digest })));
    expect(html).toContain("<summary>3 files</summary>");
    expect(html.match(/<a href="[^"]*raw\/day-\d\.csv"/g)).toHaveLength(3);
  });

  it("is folded where the places in one file take many words", () => {
    const cells = Array.from({ length: 12 }, (_, row) => ({
      file: "readings.csv",
      sha256: digest,
      lines: [row + 2, row + 2] as [number, number],
      column: 18,
    }));
    expect(listOf(...cells)).toContain("<summary>1 file</summary>");
  });
});

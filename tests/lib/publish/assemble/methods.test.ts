import { describe, expect, it } from "vitest";
import { resolveRules } from "../../../../lib/nouns/rules.ts";
import { site } from "../../../../lib/nouns/site.ts";
import { assembleMethods } from "../../../../lib/publish/assemble/methods.ts";
import { run } from "../../../../lib/run.ts";
import { noForecast } from "../../../no-forecast.ts";
import { pathIn } from "../../../sites/cases.ts";

const methods = assembleMethods(resolveRules(site.parse({ title: "Bench" })));

describe("method pages", () => {
  it("stand once each, with an explanation and a source", () => {
    expect(new Set(methods.map((method) => method.id)).size).toBe(methods.length);
    for (const { id, explain, source } of methods)
      expect(
        [explain, source].every((text) => text.length > 10),
        id,
      ).toBe(true);
  });

  it("are there for every figure, claim and finding that a workspace publishes", async () => {
    const { results } = await run(pathIn("two-currencies"), { forecast: noForecast });
    const ids = methods.map((method) => method.id);
    const used = (results?.tests ?? []).flatMap((test) => [
      ...[...test.figures, ...test.connections, ...test.recordings, ...test.readings].flatMap((one) =>
        "figures" in one ? one.figures.map((figure) => figure.id) : [one.id],
      ),
      ...test.claims.map((claim) => claim.id),
      ...test.findings.map((finding) => finding.id),
    ]);
    expect(used.length).toBeGreaterThan(50);
    expect([...new Set(used)].filter((id) => !ids.includes(id))).toEqual([]);
  });
});

import { beforeAll, describe, expect, it } from "vitest";
import { fillProse } from "../../../../lib/publish/assemble/prose.ts";
import type { TestResult } from "../../../../lib/publish/results.ts";
import { readProse } from "../../../../lib/read/prose.ts";
import { run } from "../../../../lib/run.ts";
import { noForecast } from "../../../no-forecast.ts";
import { pathIn } from "../../../sites/cases.ts";

let tests: readonly TestResult[] = [];
beforeAll(async () => {
  tests = (await run(pathIn("minimal"), { forecast: noForecast })).results?.tests ?? [];
});

function fill(body: string) {
  const { value } = readProse(`---\ntitle: Bench\n---\n${body}`, "content/reviews/bench-five.md");
  if (value === undefined) throw new Error("the page was not read");
  return fillProse(value, "bench-five", "chargers/bench-five/", 3, tests, "en");
}

describe("the reviewer's words", () => {
  it("have figures filled in by name, linked to where they stand", () => {
    const { value, problems } = fill("It took [[charge-recorded in first]], and [[charge-recorded of recording/day.csv in first]].");
    expect(problems).toEqual([]);
    expect(
      value?.html.match(/<a class="figure-link" href="\.\.\/\.\.\/tests\/first\/index\.html#figure-[^"]+">[\d.]+ ± [\d.]+\u202FAh<\/a>/g),
    ).toHaveLength(2);
    expect(value?.text).not.toContain("[[");
  });

  it("are in error, with the place and the nearest name, where they call a figure that is not there", () => {
    const { problems } = fill("One line.\n\nIt took [[charge-recorder in first]].");
    expect(problems).toMatchObject([
      {
        id: "prose-figure",
        level: "error",
        place: { file: "content/reviews/bench-five.md", line: 6, column: 9 },
        found: '"[[charge-recorder in first]]"',
        mend: 'did you mean "charge-recorded"?',
      },
    ]);
  });

  it("are in error for a test that is not published, and for a call that is none", () => {
    expect(fill("[[charge-recorded in frist]]").problems).toMatchObject([
      { expected: "a published test: first", mend: 'did you mean "first"?' },
    ]);
    expect(fill("[[how much?]]").problems).toMatchObject([{ expected: "[[figure in test]] or [[figure of connection/2 in test]]" }]);
  });

  it("are not published with a hole in them, and each wrong call is told at its own column", () => {
    const { value, problems } = fill("[[charge-recorder in first]] and [[how much?]]");
    expect(value).toBeUndefined();
    expect(problems.map((problem) => problem.place.column)).toEqual([1, 34]);
  });

  it("say why where the figure they call is absent, and give no number", () => {
    const { value } = fill("It costs [[cost-per-result in first]].");
    expect(value?.text).toMatch(/not stated/);
    expect(value?.text).not.toMatch(/\d/);
  });
});

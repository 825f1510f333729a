import path from "node:path";
import { describe, expect, it } from "vitest";
import { formatProblem } from "../../../../lib/nouns/problem.ts";
import { readLog } from "../../../../lib/read/log.ts";
import { brokenInputs, bytesOfBroken, requestOf } from "../../../dialects/corpus.ts";
import { withFiles } from "../temp-files.ts";

const inputs = brokenInputs();

describe("broken inputs", () => {
  it("are at least a hundred and fifty, each by a name of its own", () => {
    expect(inputs.length).toBeGreaterThanOrEqual(150);
    expect(new Set(inputs.map(({ name }) => name)).size).toBe(inputs.length);
  });

  it.each(inputs.map((input) => [input.name, input] as const))("%s is told in these words", async (_, input) => {
    const { value, problems } = await withFiles({ [input.file]: bytesOfBroken(input) }, (root) =>
      readLog(requestOf(path.join(root, input.file), input.file, input.request)),
    );
    expect(problems.map(formatProblem)).toEqual(input.says);
    // Nothing is read beside an error, and nothing is left unsaid.
    expect(value === undefined).toBe(problems.some(({ level }) => level === "error"));
    expect(problems.length).toBeGreaterThan(0);
  });
});

import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { countProblems, printProblems, showControls, showProgress } from "../../../lib/commands/terminal.ts";
import type { Problem } from "../../../lib/nouns/problem.ts";

const problem = (level: Problem["level"], found = '"x"'): Problem => ({
  id: "log-number",
  level,
  place: { file: "a.csv", line: 2, column: 3 },
  found,
  expected: "a voltage",
  mend: "look at the row",
});

describe("what commands say", () => {
  const written = { out: "", err: "" };
  beforeEach(() => {
    written.out = "";
    written.err = "";
    vi.spyOn(process.stdout, "write").mockImplementation((text) => {
      written.out += text;
      return true;
    });
    vi.spyOn(process.stderr, "write").mockImplementation((text) => {
      written.err += text;
      return true;
    });
  });
  afterEach(() => vi.restoreAllMocks());

  it("prints problems to standard output, so that a program can take them up", () => {
    printProblems([problem("error"), problem("doubt")]);
    expect(written.out).toBe(
      'a.csv:2:3: error log-number: expected a voltage, found "x"\n  mend: look at the row\n' +
        'a.csv:2:3: doubt log-number: expected a voltage, found "x"\n  mend: look at the row\n',
    );
    expect(written.err).toBe("");
  });

  it("keeps a log's text from steering the terminal", () => {
    printProblems([problem("error", '"\u001B[2J\u009B31m\r"')]);
    expect(written.out).toContain('found "\u241B[2J\u242631m\u240D"');
    expect(written.out.replaceAll("\n", "")).not.toMatch(/\p{Cc}/u);
  });

  it("shows progress in quarters where nobody watches", () => {
    const progress = showProgress("measuring tests");
    for (let done = 0; done <= 12; done++) progress.update(done, 12);
    progress.stop();
    expect(written.err).toBe("measuring tests: 3 of 12\nmeasuring tests: 6 of 12\nmeasuring tests: 9 of 12\nmeasuring tests: 12 of 12\n");
  });
});

describe("control characters", () => {
  it("are shown, line breaks and letters of any language kept", () =>
    expect(showControls("Napięcie\n\u0000\t\u007F€")).toBe("Napięcie\n\u2400\u2409\u2426€"));
});

describe("counts", () => {
  it.each([
    [[], "0 errors, 0 doubts"],
    [[problem("error")], "1 error, 0 doubts"],
    [[problem("error"), problem("error"), problem("doubt")], "2 errors, 1 doubt"],
  ])("%#", (problems, text) => expect(countProblems(problems)).toBe(text));
});

import { formatPlace, type Problem } from "../../nouns/problem.ts";
import type { TestResult } from "../results.ts";

/** Doubts in the form they are published in. */
export function publishedDoubts(problems: readonly Problem[]): TestResult["doubts"] {
  return problems
    .filter((problem) => problem.level === "doubt")
    .map((problem) => ({
      id: problem.id,
      place: formatPlace(problem.place),
      found: problem.found,
      expected: problem.expected,
      mend: problem.mend,
    }));
}

import type { TestContext } from "../measure/test-context.ts";
import type { Finding } from "../nouns/finding.ts";

export type FindingDefinition = {
  /** Kebab-case, named for the subject and not for the verdict; the file's name and the method page's address. */
  readonly id: string;
  readonly subject: string;
  readonly explain: string;
  readonly source: string;
  readonly checkedBy: readonly string[];
  /** The judgement, without id and subject; undefined where the subject does not arise in this test. */
  judge(context: TestContext): Omit<Finding, "id" | "subject"> | undefined;
};

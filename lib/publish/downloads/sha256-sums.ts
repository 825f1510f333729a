/** Digests of a test's raw files, in the form that `sha256sum -c` reads. */
import { testPath } from "../links.ts";
import type { TestResult } from "../results.ts";

/**
 * One line a file: digest, two spaces, name relative to the test's own folder, sorted by name.
 * Names with a backslash or a line break are written the way the command itself does, with a leading backslash (GNU coreutils manual).
 */
export function sha256Sums(test: TestResult): string {
  const up = "../".repeat(testPath(test.id).split("/").length - 1);
  const files = new Map(test.files.map((file) => [`${up}${file.download}`, file.sha256]));
  for (const recording of test.recordings) files.set(`${up}${recording.download}`, recording.sha256);
  return [...files]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, digest]) => line(name, digest))
    .join("");
}

function line(name: string, digest: string): string {
  const escaped = name.replaceAll("\\", "\\\\").replaceAll("\n", "\\n");
  return `${escaped === name ? "" : "\\"}${digest}  ${escaped}\n`;
}

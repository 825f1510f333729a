/** Digests of files, in the form that `sha256sum -c` reads. */
import { testPath } from "../links.ts";
import type { TestResult } from "../results.ts";

/** The raw files of a test, named relative to the test's own folder. */
export function sha256Sums(test: TestResult): string {
  const up = "../".repeat(testPath(test.id).split("/").length - 1);
  const files = new Map(test.files.map((file) => [`${up}${file.download}`, file.sha256]));
  for (const recording of test.recordings) files.set(`${up}${recording.download}`, recording.sha256);
  return writeSums(files);
}

/**
 * One line a file: digest, two spaces, name, sorted by name; "" where there is none.
 * Names with a backslash or a line break are written the way the command itself does, with a leading backslash (GNU coreutils manual).
 * @param digests SHA-256 in hexadecimal, by the file's name as seen from where the list will lie
 */
export function writeSums(digests: ReadonlyMap<string, string>): string {
  return [...digests]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, digest]) => line(name, digest))
    .join("");
}

function line(name: string, digest: string): string {
  const escaped = name.replaceAll("\\", "\\\\").replaceAll("\n", "\\n");
  return `${escaped === name ? "" : "\\"}${digest}  ${escaped}\n`;
}

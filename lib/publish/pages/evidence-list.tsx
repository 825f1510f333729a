/** Where a figure comes from: file, lines, and the start of the file's SHA-256. */
import type { Evidence } from "../../nouns/evidence.ts";
import type { TestResult } from "../results.ts";
import { Link } from "./site-context.tsx";

/** Finds the published copy of a workspace file; undefined where the file is not among the downloads. */
export type FindDownload = (file: string) => string | undefined;

/** Looks downloads up among the files of some tests. */
export function downloadsOf(tests: readonly TestResult[]): FindDownload {
  const downloads = new Map<string, string>();
  for (const test of tests) {
    for (const file of test.files) downloads.set(file.path, file.download);
    for (const recording of test.recordings) downloads.set(recording.file, recording.download);
  }
  return (file) => downloads.get(file);
}

const baseName = (path: string) => path.split("/").at(-1) ?? path;

function place({ lines, column }: Evidence): string {
  if (lines === undefined) return "";
  const [first, last] = lines;
  const where = first === last ? `line ${first}` : `lines ${first}–${last}`;
  return ` ${where}${column === undefined ? "" : `, column ${column}`}`;
}

/** The start of a digest, long enough to tell files apart by eye; the whole one stands under Downloads. */
export function ShortHash({ sha256 }: { sha256: string }) {
  return <code class="hash">{sha256.slice(0, 10)}…</code>;
}

/** A figure's evidence, one file a line. */
export function EvidenceList({ evidence, find }: { evidence: readonly Evidence[]; find: FindDownload }) {
  if (evidence.length === 0) return <span class="quiet">no file: see the method</span>;
  return (
    <ul class="evidence">
      {evidence.map((item) => {
        const download = find(item.file);
        const name = baseName(item.file);
        return (
          <li key={`${item.file}${place(item)}`}>
            {download === undefined ? name : <Link to={download}>{name}</Link>}
            {place(item)} <ShortHash sha256={item.sha256} />
          </li>
        );
      })}
    </ul>
  );
}

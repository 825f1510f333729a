/** Where a figure comes from: file, lines, and the start of the file's SHA-256. */
import type { Evidence } from "../../nouns/evidence.ts";
import type { TestResult } from "../results.ts";
import type { Words } from "../words/index.ts";
import { Link, useSite } from "./site-context.tsx";

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

type EvidenceWords = Words["parts"]["evidence"];

/** The places in one file, in words: "lines 2–2418", or "line 2, columns 18, 24; line 4, column 18". Empty where the whole file is meant. */
export function placesText(items: readonly Evidence[], words: EvidenceWords): string {
  const columnsByLines = new Map<string, number[]>();
  for (const { lines, column } of items) {
    if (lines === undefined) continue;
    const [first, last] = lines;
    const name = first === last ? words.line(first) : words.lines(first, last);
    columnsByLines.set(name, [...(columnsByLines.get(name) ?? []), ...(column === undefined ? [] : [column])]);
  }
  return [...columnsByLines].map(([lines, columns]) => (columns.length === 0 ? lines : `${lines}, ${words.columns(columns)}`)).join("; ");
}

/** The start of a digest, long enough to tell files apart by eye; the whole one stands under Downloads. */
export function ShortHash({ sha256 }: { sha256: string }) {
  return <code class="hash">{sha256.slice(0, 10)}…</code>;
}

/** More files than these, or more words on the places in them, are folded away until asked for. */
const mostFilesShown = 2;
const mostLettersShown = 60;

/** A figure's evidence, one file a line. */
export function EvidenceList({ evidence, find }: { evidence: readonly Evidence[]; find: FindDownload }) {
  const { evidence: words } = useSite().words.parts;
  if (evidence.length === 0) return <span class="quiet">{words.noFile}</span>;
  const files = new Map<string, Evidence[]>();
  for (const item of evidence) files.set(item.file, [...(files.get(item.file) ?? []), item]);
  const letters = [...files.values()].reduce((sum, items) => sum + placesText(items, words).length, 0);
  const list = (
    <ul class="evidence">
      {[...files].map(([file, items]) => {
        const download = find(file);
        const name = baseName(file);
        return (
          <li key={file}>
            {download === undefined ? name : <Link to={download}>{name}</Link>} {placesText(items, words)}{" "}
            <ShortHash sha256={items[0]?.sha256 ?? ""} />
          </li>
        );
      })}
    </ul>
  );
  if (files.size <= mostFilesShown && letters <= mostLettersShown) return list;
  return (
    <details>
      <summary>{words.files(files.size)}</summary>
      {list}
    </details>
  );
}

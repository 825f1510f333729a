/** Puts the samples of a recording where its page can read them. */
import { logSamplesPath } from "../links.ts";
import type { EncodedLog } from "./encode.ts";

/** The files of a recording's samples, by their path from the site's root. */
export function logSampleFiles(
  testId: string,
  recordingId: string,
  { index, overview, chunks }: EncodedLog,
): [string, string | Uint8Array][] {
  const folder = logSamplesPath(testId, recordingId);
  return [
    [`${folder}log.json`, `${JSON.stringify(index)}\n`],
    [`${folder}overview.bin`, overview],
    ...chunks.map((chunk, place): [string, Uint8Array] => [`${folder}chunk-${place}.bin`, chunk]),
  ];
}

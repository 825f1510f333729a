/** The line that every copy of a result carries, so that it can be held against the newest one. */

import { versionWords } from "./history.ts";
import type { Quotable } from "./quotation.ts";

/** Version, method and fingerprint. */
export function ResultLine({ quotable: { index, version, fingerprint, speech } }: { quotable: Quotable }) {
  return speech.outward.resultLine(versionWords(version, speech), index.methodVersion, <code>{fingerprint}</code>);
}

/** Puts the samples of a recording where its page can read them. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { MeasuredRecording } from "../../measure/recording.ts";
import { logSamplesPath } from "../links.ts";
import { encodeLog } from "./encode.ts";

/**
 * Writes a recording's samples into a site that is being made; nothing for a recording without samples.
 *
 * @param siteDir  the site's folder
 * @param zone     time zone of the bench
 */
export function writeLogSamples(siteDir: string, testId: string, recording: MeasuredRecording, zone: string): void {
  const encoded = encodeLog(recording.trace, recording.startMs, zone);
  if (encoded === undefined) return;
  const folder = join(siteDir, logSamplesPath(testId, recording.id));
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "log.json"), `${JSON.stringify(encoded.index)}\n`);
  writeFileSync(join(folder, "overview.bin"), encoded.overview);
  encoded.chunks.forEach((chunk, place) => {
    writeFileSync(join(folder, `chunk-${place}.bin`), chunk);
  });
}

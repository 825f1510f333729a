import type { FigureDefinition } from "../define.ts";
import { defineSustained } from "../extremes.ts";
import type { MeasuredRecording } from "../recording.ts";

/** @param windowS  how long a value must be held, s; a site may set its own */
export const sustainedCurrent = (windowS: number): FigureDefinition<MeasuredRecording> =>
  defineSustained("sustained-current", "current", windowS, `${windowS} s`);

/** The same over other lengths, since a boost that lasts a minute starts no car and one that lasts an hour fills a battery. */
export const sustainedCurrentOver: readonly FigureDefinition<MeasuredRecording>[] = [
  defineSustained("sustained-current-10-s", "current", 10, "10 s"),
  defineSustained("sustained-current-10-min", "current", 600, "10 min"),
  defineSustained("sustained-current-60-min", "current", 3600, "60 min"),
];

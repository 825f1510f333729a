import type { FigureDefinition } from "../define.ts";
import { defineSustained } from "../extremes.ts";
import type { MeasuredRecording } from "../recording.ts";

/** @param windowS  how long a value must be held, s; a site may set its own */
export const sustainedVoltage = (windowS: number): FigureDefinition<MeasuredRecording> =>
  defineSustained("sustained-voltage", "voltage", windowS, `${windowS} s`);

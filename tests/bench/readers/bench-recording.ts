/** The recording that the bench measures: what a record would say of its log, and its figures. */
import { toFigure } from "../../../lib/measure/define.ts";
import { recordingFigures } from "../../../lib/measure/figures/index.ts";
import type { MeasuredRecording, measureRecording } from "../../../lib/measure/recording.ts";
import { resolveRules } from "../../../lib/nouns/rules.ts";
import { site } from "../../../lib/nouns/site.ts";
import type { LogRequest } from "../../../lib/read/log.ts";

/** A log of the bench, as a test's record would ask for it. */
export function requestOfBench(file: string): LogRequest {
  return {
    absolutePath: file,
    file: "log.csv",
    dialect: undefined,
    dialectPlace: undefined,
    zone: "UTC",
    startedAtMs: undefined,
    badRows: [],
  };
}

/** The battery and recorder that the bench's log is taken for. */
export const facts: Parameters<typeof measureRecording>[0] = {
  id: "log.csv",
  file: "log.csv",
  sha256: "0".repeat(64),
  bytes: 0,
  connection: "1",
  recorderId: "recorder",
  recorder: {
    name: "Recorder of the bench",
    kind: "recorder",
    measures: {
      voltage: { percentOfReading: 0.1, resolution: 0.001, from: "assumed" },
      current: { percentOfReading: 0.5, resolution: 0.001, from: "assumed" },
    },
  },
  capacityAh: 80,
  cells: 6,
};

const rules = resolveRules(site.parse({ title: "Bench" }));

/** Every figure of a recording, in the order in which they are published. */
export function figuresOf(recording: MeasuredRecording): ReturnType<typeof toFigure>[] {
  return recordingFigures(rules).map((definition) => toFigure(definition, "recording/log", recording, rules.coverageFactor));
}

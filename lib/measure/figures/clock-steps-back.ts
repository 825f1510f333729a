import type { FigureDefinition } from "../define.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";

export const clockStepsBack: FigureDefinition<MeasuredRecording> = {
  id: "clock-steps-back",
  label: "Steps back of the clock",
  unit: "",
  version: 1,
  explain:
    "How often the recorder's clock went back. Rows a little out of order are sorted; after a larger step the next row is taken to follow at the usual interval, since nobody knows better.",
  formula: null,
  source: "Our definition: disorder is up to three usual intervals.",
  checkedBy: ["The field log of a 17 Ah battery, whose rows step back by fractions of a second"],
  compute: (recording) => {
    const { clock } = recording.trace;
    const count = clock.outOfOrder + clock.setBack.length;
    return {
      value: count,
      interval: { low: count, high: count },
      evidence: [evidenceOf(recording)],
      doubts: clock.setBack.map((step) => `at line ${step.line} the clock was set back by ${Math.round(step.byS)} s`),
    };
  },
};

import { quantilesByMoving } from "../../signal/order-statistics.ts";
import { firstAfter, firstAtOrAfter } from "../../signal/sorted.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";

/** Fewer samples than this show no spread. */
const fewestSamples = 20;

export const voltageRipple: FigureDefinition<MeasuredRecording> = {
  id: "voltage-ripple",
  label: "Spread of the held voltage",
  unit: "V",
  version: 1,
  explain:
    "From the 5th to the 95th percentile of the voltage in the last stretch in which it was held. It holds what the recorder can see: waves faster than its rows, and its own noise, cannot be told apart.",
  formula: "P95(U) − P5(U)",
  source: "Our definition.",
  checkedBy: ["A held voltage with a wave of known height"],
  compute: (recording) => {
    const { trace, stages } = recording;
    const stage = stages.findLast((candidate) => candidate.kind === "constant-voltage" || candidate.kind === "float");
    if (stage === undefined) return notMeasured("not recorded", "no voltage was held", [evidenceOf(recording)]);
    const from = firstAtOrAfter(trace.elapsedS, stage.startS);
    const to = firstAfter(trace.elapsedS, stage.endS);
    // The first tenth is left out: there the voltage may still be coming to its level.
    const settled = trace.voltagesV.subarray(from + Math.ceil((to - from) / 10), to);
    if (settled.length < fewestSamples)
      return notMeasured("cannot tell", `the held voltage has ${settled.length} rows, too few to show a spread`, [evidenceOf(recording)]);
    const resolution = recording.recorder?.measures?.voltage?.resolution;
    const [low, high] = quantilesByMoving(settled.slice(), [0.05, 0.95]) as [number, number];
    const value = high - low;
    return {
      value,
      evidence: [{ ...evidenceOf(recording), lines: stage.lines }],
      doubts:
        resolution !== undefined && value <= 2 * resolution
          ? [`no more than two steps of the recorder (${resolution} V): its own rounding`]
          : [],
    };
  },
};

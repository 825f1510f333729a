/** The highest value of a channel, in any row or held for a while: one computation for voltage and current. */
import { placeOfHighest } from "../signal/highest.ts";
import { type FigureDefinition, type FigureOutcome, notMeasured } from "./define.ts";
import { missingAccuracy } from "./figures/shared-doubts.ts";
import { highestHeld } from "./held-mean.ts";
import { evidenceOf, type MeasuredRecording } from "./recording.ts";
import { uncertaintyOfReading } from "./uncertainty-of-reading.ts";

export type Channel = "voltage" | "current";

const units = { voltage: "V", current: "A" } as const;

/** The channel's values; undefined where the recorder logs none. */
function valuesOf({ trace }: MeasuredRecording, channel: Channel): Float64Array | undefined {
  const isLogged = channel === "voltage" ? trace.hasVoltage : trace.hasCurrent;
  const values = channel === "voltage" ? trace.voltagesV : trace.currentsA;
  return isLogged && values.length > 0 ? values : undefined;
}

function notLogged(recording: MeasuredRecording, channel: Channel): FigureOutcome {
  return notMeasured("not recorded", `the recorder logs no ${channel}`, [evidenceOf(recording)]);
}

/** The largest single value of a channel, with its row. */
export function defineHighest(channel: Channel): FigureDefinition<MeasuredRecording> {
  return {
    id: `highest-${channel}`,
    label: `Highest ${channel} in any row`,
    unit: units[channel],
    version: 1,
    explain: "The largest single value in the log. A spike of one row counts here; claims are judged on what was sustained.",
    formula: null,
    source: "Definition.",
    checkedBy: ["Rows read by hand in small logs"],
    compute: (recording) => {
      const values = valuesOf(recording, channel);
      if (values === undefined) return notLogged(recording, channel);
      const at = placeOfHighest(values);
      const value = values[at] as number;
      return {
        value,
        standardUncertainty: uncertaintyOfReading(recording, channel, value),
        evidence: [evidenceOf(recording, at, at + 1)],
        doubts: missingAccuracy([recording], channel),
      };
    },
  };
}

/**
 * The highest mean of a channel over any stretch of at least a length, without a gap.
 *
 * Where rows are further apart than the length, the mean is over the longer time between them, which is told as a doubt.
 *
 * @param windowS  how long the value must be held, s
 * @param length   the same in words, such as "10 min"
 */
export function defineSustained(id: string, channel: Channel, windowS: number, length: string): FigureDefinition<MeasuredRecording> {
  return {
    id,
    label: `Highest ${channel} held for ${length}`,
    unit: units[channel],
    version: 1,
    explain: "The highest time-weighted mean over any stretch of that length without a gap. Spikes and ripple of the meter do not count.",
    formula: "max over t of (1/Δt) ∫ from t to t + Δt",
    source: "Our definition; one minute is common practice.",
    checkedBy: ["A step of known height and length"],
    compute: (recording) => {
      const { trace } = recording;
      const values = valuesOf(recording, channel);
      if (values === undefined) return notLogged(recording, channel);
      const held = highestHeld(trace, channel, windowS);
      if (held === undefined) return notMeasured("cannot tell", `no stretch without a gap is ${length} long`, [evidenceOf(recording)]);
      return {
        value: held.mean,
        standardUncertainty: uncertaintyOfReading(recording, channel, held.mean),
        evidence: [evidenceOf(recording, held.from, held.to + 1)],
        doubts: [...missingAccuracy([recording], channel), ...longerThan(windowS, trace.shortIntervalS)],
      };
    },
  };
}

function longerThan(windowS: number, intervalS: number): string[] {
  return intervalS > windowS
    ? [`rows are ${Math.round(intervalS)} s apart or more, so the mean is over that long and a shorter peak is not seen`]
    : [];
}

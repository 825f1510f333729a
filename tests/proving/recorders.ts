/** Six recorders, each with what its record declares and what it really does to the values that it sees. */
import { type Instrument, instrument } from "../../lib/nouns/instrument.ts";
import type { Samples } from "../../lib/nouns/samples.ts";
import type { Random } from "../generator/random.ts";
import { type Channel, measure } from "../generator/recorder.ts";
import { between } from "./plant.ts";
import type { Charge } from "./programme.ts";

export type ProvingRecorder = {
  readonly id: string;
  readonly label: string;
  /** Time between looks, s. */
  readonly intervalS: number;
  /** Writes only when a value moved so far since its last row, or after so long; the look before goes in too. */
  readonly onChange?: { readonly voltageV: number; readonly currentA: number; readonly atLeastEveryS: number };
  readonly voltage: Channel;
  readonly current: Channel;
  /** Share of looks in which one value is a single tooth. */
  readonly teeth?: number;
  /** Silent stretches, each of 5 to 40 min. */
  readonly gaps?: number;
  /** By how much of its range the zero of the current may wander over the log. */
  readonly zeroDriftShare?: number;
  readonly stop: { readonly belowA?: number; readonly forS?: number; readonly afterH?: number; readonly afterRows?: number };
  readonly stopWords: string;
};

const channel = (noise: number, resolution: number): Channel => ({ gain: 1, offset: 0, noise, resolution });

export const recorders: readonly ProvingRecorder[] = [
  {
    id: "fine",
    label: "every 0.2 s, fine and quiet",
    intervalS: 0.2,
    voltage: channel(0.001, 0.001),
    current: channel(0.002, 0.001),
    stop: { afterH: 4 },
    stopWords: "stops after 4 h",
  },
  {
    id: "steps",
    label: "every second in steps of 0.05",
    intervalS: 1,
    voltage: channel(0.01, 0.05),
    current: channel(0.01, 0.05),
    stop: { afterRows: 150_000 },
    stopWords: "stops when its memory of 150 000 rows is full",
  },
  {
    id: "noisy",
    label: "every 10 s with noise and teeth",
    intervalS: 10,
    voltage: channel(0.02, 0.001),
    current: channel(0.05, 0.001),
    teeth: 0.003,
    stop: { afterH: 60 },
    stopWords: "stops after 60 h",
  },
  {
    id: "gaps",
    label: "every 30 s with gaps and a wandering zero",
    intervalS: 30,
    voltage: channel(0.005, 0.01),
    current: channel(0.01, 0.01),
    gaps: 2,
    zeroDriftShare: 0.02,
    stop: {},
    stopWords: "runs until somebody stops it",
  },
  {
    id: "minute",
    label: "every minute, in steps of 0.01",
    intervalS: 60,
    voltage: channel(0.004, 0.01),
    current: channel(0.004, 0.01),
    stop: { belowA: 0.2, forS: 1800 },
    stopWords: "stops when the current has been under 0.2 A for 30 min",
  },
  {
    id: "on-change",
    label: "when something moves, at least every 15 min",
    intervalS: 1,
    onChange: { voltageV: 0.03, currentA: 0.08, atLeastEveryS: 900 },
    voltage: channel(0.002, 0.001),
    current: channel(0.004, 0.001),
    stop: { afterRows: 20_000 },
    stopWords: "stops after 20 000 rows",
  },
];

/** Ranges that such recorders come in, A. */
const rangesA = [3, 10, 30, 100] as const;

/** The smallest range that holds a current, A. */
export function rangeFor(currentA: number): number {
  return rangesA.find((range) => range >= 1.2 * currentA) ?? 100;
}

/** What the recorder's record in the workspace would say. Three times the noise counts into its fixed part. */
export function declared(recorder: ProvingRecorder, rangeA: number): Instrument {
  const { voltage, current, stop } = recorder;
  const accuracyOf = (of: Channel, fixed: number) => ({
    percentOfReading: 0.2,
    plusMinus: Number((fixed + 3 * of.noise + of.resolution).toFixed(4)),
    resolution: of.resolution,
    from: "assumed",
  });
  return instrument.parse({
    name: `Invented recorder: ${recorder.label}`,
    kind: "recorder",
    measures: { voltage: accuracyOf(voltage, 0), current: accuracyOf(current, (recorder.zeroDriftShare ?? 0) * rangeA) },
    ...(recorder.onChange === undefined ? {} : { longestIntervalS: recorder.onChange.atLeastEveryS }),
    stopRule: {
      words: recorder.stopWords,
      ...(stop.belowA === undefined ? {} : { belowCurrentA: stop.belowA, forS: stop.forS }),
      ...(stop.afterH === undefined ? {} : { afterH: stop.afterH }),
      ...(stop.afterRows === undefined ? {} : { afterRows: stop.afterRows }),
    },
  });
}

export type Recorded = {
  readonly samples: Samples;
  /** Seconds from clamps on: the first row, and the last. */
  readonly fromS: number;
  readonly toS: number;
  readonly stoppedByRule: boolean;
  /** It had stopped writing before the last moment that it was meant to see. */
  readonly fellSilent: boolean;
};

export type RecordingPlan = { readonly fromS: number; readonly toS: number; readonly rangeA: number; readonly startMs: number };

/**
 * Returns what a recorder writes of a charge: looks between whole seconds lie on the straight line between them.
 * @param plan  seconds from clamps on; the rule of the recorder may end it sooner
 */
export function record(recorder: ProvingRecorder, charge: Charge, plan: RecordingPlan, random: Random): Recorded {
  const { intervalS, stop } = recorder;
  const spanS = plan.toS - plan.fromS;
  const gaps = Array.from({ length: recorder.gaps ?? 0 }, () => {
    const lengthS = between(random, 5, 40) * 60;
    const startS = between(random, 0.02, 0.95) * spanS;
    return [startS, startS + lengthS] as const;
  });
  const driftA = (recorder.zeroDriftShare ?? 0) * plan.rangeA * between(random, -1, 1);
  const rows: Row[] = [];
  let unwritten: Row | undefined;
  let lowSinceS: number | undefined;
  let stoppedByRule = false;
  let fellSilent = false;
  for (let look = 0; look * intervalS <= spanS && !stoppedByRule; look++) {
    const atS = look * intervalS;
    const row = lookAt(recorder, charge, plan.fromS + atS, atS, (driftA * atS) / spanS, plan.rangeA, random);
    const isSilent = gaps.some(([start, end]) => atS > start && atS < end);
    fellSilent = isSilent;
    if (!isSilent) {
      const why = reasonToWrite(recorder, rows.at(-1), row);
      if (why === "change" && unwritten !== undefined) rows.push(unwritten);
      if (why !== undefined) rows.push(row);
      unwritten = why === undefined ? row : undefined;
    }
    lowSinceS = stop.belowA !== undefined && Math.abs(row.currentA) < stop.belowA ? (lowSinceS ?? atS) : undefined;
    stoppedByRule =
      (lowSinceS !== undefined && atS - lowSinceS >= (stop.forS ?? 0)) ||
      (stop.afterH !== undefined && atS >= stop.afterH * 3600) ||
      (stop.afterRows !== undefined && rows.length >= stop.afterRows);
  }
  return {
    samples: samplesOf(rows, plan.startMs),
    fromS: plan.fromS,
    toS: plan.fromS + (rows.at(-1)?.atS ?? 0),
    stoppedByRule,
    fellSilent,
  };
}

type Row = { readonly atS: number; readonly voltageV: number; readonly currentA: number };

function lookAt(
  recorder: ProvingRecorder,
  charge: Charge,
  momentS: number,
  atS: number,
  zeroA: number,
  rangeA: number,
  random: Random,
): Row {
  const tooth = recorder.teeth !== undefined && random.uniform() < recorder.teeth ? between(random, -1, 1) : 0;
  const voltageV = measure(recorder.voltage, valueAt(charge.voltagesV, momentS) + 2 * tooth, random);
  const currentA = measure(recorder.current, valueAt(charge.currentsA, momentS) + zeroA + 0.5 * rangeA * tooth, random);
  return { atS, voltageV, currentA };
}

function valueAt(values: Float64Array, atS: number): number {
  const below = Math.min(Math.floor(atS), values.length - 1);
  const low = values[below] ?? Number.NaN;
  const high = values[below + 1] ?? low;
  return low + (high - low) * (atS - below);
}

function reasonToWrite({ onChange }: ProvingRecorder, last: Row | undefined, row: Row): "due" | "change" | undefined {
  if (onChange === undefined || last === undefined) return "due";
  const moved = Math.abs(row.voltageV - last.voltageV) >= onChange.voltageV || Math.abs(row.currentA - last.currentA) >= onChange.currentA;
  if (moved) return "change";
  return row.atS - last.atS >= onChange.atLeastEveryS ? "due" : undefined;
}

function samplesOf(rows: readonly Row[], startMs: number): Samples {
  return {
    elapsedS: Float64Array.from(rows, (row) => Number(row.atS.toFixed(3))),
    voltagesV: Float64Array.from(rows, (row) => row.voltageV),
    currentsA: Float64Array.from(rows, (row) => row.currentA),
    temperaturesC: new Float64Array(0),
    // One line of headings stands above the rows.
    lines: Uint32Array.from(rows, (_, index) => index + 2),
    hasVoltage: true,
    hasCurrent: true,
    startMs,
  };
}

/** One planned recording while it runs, who stops it, and the truth about it afterwards. */
import type { Ender } from "../../lib/nouns/stage.ts";
import type { Random } from "./random.ts";
import { type Look, lookAt, type RecorderModel, type RecordingState, startedRecording } from "./recorder.ts";
import type { PlannedRecording } from "./scenario.ts";
import { cutStages, type LoggedStage } from "./stage-log.ts";
import { type RecordingTruth, roundTruth } from "./truth.ts";

export type RecordingRun = {
  readonly plan: PlannedRecording;
  readonly state: RecordingState;
  /** When the clamps went on, seconds from the scenario's start. */
  readonly onS: number;
  stoppedBy: Exclude<Ender, "charger" | "unknown"> | undefined;
  /** Whether the charger was at work, or only pausing, when the recorder last looked. */
  chargerWorkedOn: boolean;
};

/** Returns a recording that waits for its first look. */
export function startRun(plan: PlannedRecording, onS: number): RecordingRun {
  const state = startedRecording(onS + Math.round((plan.fromH ?? 0) * 3600));
  return { plan, state, onS, stoppedBy: undefined, chargerWorkedOn: true };
}

/** Lets the recorder look, where it is due and has not been stopped. */
export function lookIfDue(run: RecordingRun, look: Look, isCharging: boolean, random: Random): void {
  const { plan, state, onS } = run;
  if (run.stoppedBy !== undefined || look.atS < state.nextS) return;
  if (plan.untilH !== undefined && look.atS - onS > plan.untilH * 3600) {
    run.stoppedBy = "person";
    return;
  }
  lookAt(plan.recorder, plan.mishaps ?? {}, state, look, random);
  if (state.stopped) run.stoppedBy = "recorder";
  run.chargerWorkedOn = isCharging;
}

/** Takes the mains away: a recorder that lives on them falls silent and does not begin again by itself. */
export function loseMains(run: RecordingRun): void {
  if (run.plan.recorder.mainsPowered === true) run.stoppedBy ??= "mains";
}

/**
 * Returns the truth about a recording that is over.
 * @param connection  number of its connection, from 1
 * @param isoOf  an instant of the scenario as text
 * @throws where the plan left no time for a single row
 */
export function recordingTruth(
  run: RecordingRun,
  connection: number,
  stages: readonly LoggedStage[],
  isoOf: (atS: number) => string,
): RecordingTruth {
  const { plan, state, onS } = run;
  const first = state.looks[0];
  const last = state.looks.at(-1);
  if (first === undefined || last === undefined) throw new Error(`${plan.file}: a recording without rows`);
  const gap = findGap(run);
  const chargeAh = last.passedAh - first.passedAh;
  const energyWh = last.passedWh - first.passedWh;
  return {
    file: plan.file,
    connection,
    startAt: isoOf(first.atS),
    spanS: last.atS - first.atS,
    rows: state.rows.length,
    chargeAh: roundTruth(chargeAh, 5),
    energyWh: roundTruth(energyWh, 4),
    chargeWithoutGapsAh: roundTruth(chargeAh - (gap?.chargeAh ?? 0), 5),
    energyWithoutGapsWh: roundTruth(energyWh - (gap?.energyWh ?? 0), 4),
    ...shownBy(plan.recorder, first, last, gap?.looks),
    gaps: gap === undefined ? [] : [{ startS: gap.startS, endS: gap.endS, chargeAh: roundTruth(gap.chargeAh, 5) }],
    clockBackS: plan.mishaps?.clockBack?.byS ?? 0,
    highestVoltageV: roundTruth(highest(state.looks, "voltageV"), 4),
    highestCurrentA: roundTruth(highest(state.looks, "currentA"), 4),
    stages: cutStages(stages, first, last, onS),
    // Clamps off by hand end whatever is still running.
    endedBy: run.chargerWorkedOn ? (run.stoppedBy ?? "person") : "charger",
    rowsEndedBy: run.stoppedBy ?? "person",
    chargerWorkedOn: run.chargerWorkedOn,
  };
}

/** Charge and energy as a device shows them: its offsets run on over time, and its leads add a drop to the voltage. */
function shownBy(
  { current, voltage, leadOhm }: RecorderModel,
  first: Look,
  last: Look,
  gap: readonly [Look, Look] | undefined,
): { shownChargeAh: number; shownEnergyWh: number } {
  const over = (quantity: "passedAh" | "passedWh" | "passedVh" | "passedA2h" | "atS"): number =>
    last[quantity] - first[quantity] - (gap === undefined ? 0 : gap[1][quantity] - gap[0][quantity]);
  const hours = over("atS") / 3600;
  const passedVh = over("passedVh") + leadOhm * over("passedAh");
  const passedWh = over("passedWh") + leadOhm * over("passedA2h");
  return {
    shownChargeAh: roundTruth(current.gain * over("passedAh") + current.offset * hours, 5),
    shownEnergyWh: roundTruth(
      voltage.gain * current.gain * passedWh +
        voltage.gain * current.offset * passedVh +
        voltage.offset * current.gain * over("passedAh") +
        voltage.offset * current.offset * hours,
      4,
    ),
  };
}

type Gap = {
  readonly startS: number;
  readonly endS: number;
  readonly chargeAh: number;
  readonly energyWh: number;
  readonly looks: readonly [Look, Look];
};

/** What lies between the last row before the planned gap and the first one after it. */
function findGap(run: RecordingRun): Gap | undefined {
  const { looks } = run.state;
  const planned = run.plan.mishaps?.gap;
  const firstS = looks[0]?.atS ?? 0;
  if (planned === undefined) return undefined;
  const before = looks.findLast((look) => look.atS - firstS <= planned.fromH * 3600);
  const after = looks.find((look) => look.atS - firstS >= planned.toH * 3600);
  if (before === undefined || after === undefined) return undefined;
  return {
    startS: before.atS - firstS,
    endS: after.atS - firstS,
    chargeAh: after.passedAh - before.passedAh,
    energyWh: after.passedWh - before.passedWh,
    looks: [before, after],
  };
}

/** A loop, since a full-length log has more looks than a call may have arguments. */
function highest(looks: readonly Look[], quantity: "voltageV" | "currentA"): number {
  let value = Number.NEGATIVE_INFINITY;
  for (const look of looks) value = Math.max(value, look[quantity]);
  return value;
}

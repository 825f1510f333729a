/** A recorder: looks at the posts now and then, rounds, errs a little, and at some point stops by itself. */
import type { Random } from "./random.ts";

export type Channel = {
  /** Factor and offset by which this very device is off, well inside its stated accuracy. */
  readonly gain: number;
  readonly offset: number;
  /** Standard deviation of its noise, and the smallest step it writes. */
  readonly noise: number;
  readonly resolution: number;
};

export type DialectId = "tern" | "crab" | "mussel" | "shoal" | "curlew";

export type RecorderModel = {
  readonly id: string;
  readonly dialect: DialectId;
  readonly intervalS: number;
  /** A recorder that writes on change: a row when voltage or current moved this far, and the look before it; it looks every `intervalS`. */
  readonly onChange?: { readonly voltageV: number; readonly currentA: number; readonly atLeastEveryS: number };
  readonly voltage: Channel;
  readonly current: Channel;
  readonly temperature?: Channel;
  /** Resistance between where it measures voltage and the posts. */
  readonly leadOhm: number;
  /** It has no battery of its own. */
  readonly mainsPowered?: boolean;
  readonly stop: { readonly belowA?: number; readonly forS?: number; readonly afterH?: number; readonly afterRows?: number };
};

/** What goes wrong in one recording; hours count from its first row. */
export type Mishaps = {
  readonly gap?: { readonly fromH: number; readonly toH: number };
  readonly clockBack?: { readonly atH: number; readonly byS: number };
  /** Every so many rows the recorder writes one with the temperature alone. */
  readonly temperatureOnlyEvery?: number;
  /** Every so many rows it has no current value, and writes its sign for that. */
  readonly missingCurrentEvery?: number;
};

export type Row = {
  /** What the recorder's clock said, seconds from the scenario's start. */
  readonly clockS: number;
  readonly voltageV: number | undefined;
  readonly currentA: number | undefined;
  readonly temperatureC: number | undefined;
};

/** True values at the moment of a look, with the running sums of charge and energy. */
export type Look = {
  readonly atS: number;
  readonly voltageV: number;
  readonly currentA: number;
  readonly temperatureC: number;
  readonly passedAh: number;
  readonly passedWh: number;
  readonly passedVh: number;
  readonly passedA2h: number;
};

/** A look together with the row that it would make. */
type Seen = { readonly look: Look; readonly row: Row };

/** One recording in the making. `looks` are the true values behind `rows`, one for one. */
export type RecordingState = {
  readonly rows: Row[];
  readonly looks: Look[];
  /** The last look, where it was not worth a row. */
  unwritten: Seen | undefined;
  stopped: boolean;
  nextS: number;
  lowSinceS: number | undefined;
};

/** Returns a recording that will write its first row at the given second. */
export function startedRecording(atS: number): RecordingState {
  return { rows: [], looks: [], unwritten: undefined, stopped: false, nextS: atS, lowSinceS: undefined };
}

/** Looks at the posts: may add a row, and may stop the recording by the recorder's own rule. */
export function lookAt(model: RecorderModel, mishaps: Mishaps, state: RecordingState, look: Look, random: Random): void {
  state.nextS = look.atS + model.intervalS;
  const startS = state.looks[0]?.atS ?? look.atS;
  const ranS = look.atS - startS;
  const currentA = measure(model.current, look.currentA, random);
  const voltageV = measure(model.voltage, look.voltageV + look.currentA * model.leadOhm, random);
  const temperatureC = model.temperature === undefined ? undefined : measure(model.temperature, look.temperatureC, random);

  const seen: Seen = { look, row: { clockS: look.atS - clockBackS(mishaps, ranS), voltageV, currentA, temperatureC } };
  if (!isInGap(mishaps, ranS)) {
    const why = reasonToWrite(model, state, voltageV, currentA, look.atS);
    // The look before a change goes in too, else a straight line across the wait would invent current that never flowed.
    if (why === "change" && state.unwritten !== undefined) write(state, mishaps, state.unwritten);
    if (why === undefined) state.unwritten = seen;
    else {
      write(state, mishaps, seen);
      state.unwritten = undefined;
    }
  }
  if (model.stop.belowA === undefined || Math.abs(currentA) >= model.stop.belowA) state.lowSinceS = undefined;
  else state.lowSinceS ??= look.atS;
  const { forS, afterH, afterRows } = model.stop;
  state.stopped =
    (state.lowSinceS !== undefined && look.atS - state.lowSinceS >= (forS ?? 0)) ||
    (afterH !== undefined && ranS >= afterH * 3600) ||
    (afterRows !== undefined && state.rows.length >= afterRows);
}

/** Returns a value as an instrument shows it: off by its gain and offset, noisy, rounded to its step. */
export function measure(channel: Channel, value: number, random: Random): number {
  return roundTo(value * channel.gain + channel.offset + channel.noise * random.normal(), channel.resolution);
}

/** Returns the nearest multiple of a step, without the dust that multiplying leaves behind the last decimal. */
export function roundTo(value: number, step: number): number {
  const rounded = Number((Math.round(value / step) * step).toFixed(6));
  // A recorder writes 0, never -0.
  return rounded === 0 ? 0 : rounded;
}

function isNth(number: number, every: number | undefined): boolean {
  return every !== undefined && number % every === 0;
}

function isInGap(mishaps: Mishaps, ranS: number): boolean {
  return mishaps.gap !== undefined && ranS > mishaps.gap.fromH * 3600 && ranS < mishaps.gap.toH * 3600;
}

function clockBackS(mishaps: Mishaps, ranS: number): number {
  const back = mishaps.clockBack;
  return back !== undefined && ranS >= back.atH * 3600 ? back.byS : 0;
}

function write(state: RecordingState, mishaps: Mishaps, seen: Seen): void {
  const number = state.rows.length + 1;
  const temperatureAlone = isNth(number, mishaps.temperatureOnlyEvery);
  const noCurrent = temperatureAlone || isNth(number, mishaps.missingCurrentEvery);
  const { voltageV, currentA } = seen.row;
  state.rows.push({
    ...seen.row,
    voltageV: temperatureAlone ? undefined : voltageV,
    currentA: noCurrent ? undefined : currentA,
  });
  state.looks.push(seen.look);
}

/** Why a look becomes a row: it is due, or something moved since the last row; undefined where the recorder lets it pass. */
function reasonToWrite(
  model: RecorderModel,
  state: RecordingState,
  voltageV: number,
  currentA: number,
  atS: number,
): "due" | "change" | undefined {
  const lastRow = state.rows.at(-1);
  const lastLook = state.looks.at(-1);
  if (model.onChange === undefined || lastRow === undefined || lastLook === undefined) return "due";
  const moved =
    Math.abs(voltageV - (lastRow.voltageV ?? 0)) >= model.onChange.voltageV ||
    Math.abs(currentA - (lastRow.currentA ?? 0)) >= model.onChange.currentA;
  if (moved) return "change";
  return atS - lastLook.atS >= model.onChange.atLeastEveryS ? "due" : undefined;
}

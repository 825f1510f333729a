/** The phases that the behaviours are made of. Voltages are at the posts; `h` is hours. */
import type { StageKind } from "../../lib/nouns/stage.ts";
import { loadOf } from "./plant.ts";
import type { Moment, Phase } from "./programme.ts";

/** Share of the voltage lost on the clamps at full current: what is left of a lead where the charger senses behind it. */
const clampDropShare = 0.002;

/** Ohms that make a limit of this voltage and current as sharp as a good charger's. */
function clampOhm(voltageV: number, limitA: number): number {
  return (clampDropShare * voltageV) / limitA;
}

/** Returns the voltage that `hold` of a limit gives while so much current flows, V: where another phase hands over without a jump. */
export function heldV(voltageV: number, limitA: number, currentA: number): number {
  return voltageV - clampOhm(voltageV, limitA) * currentA;
}

/** Returns a phase that holds its current, to the last second, until the posts have reached a voltage. */
export function push(
  currentA: number,
  { untilV, kind = "constant-current", maxH }: { untilV: number; kind?: StageKind; maxH?: number },
): Phase {
  // Far enough above to keep the current up, and near enough that a mistake could do no more.
  const source = { limitA: currentA, voltageV: 1.1 * untilV, ohm: clampOhm(untilV, currentA) };
  return { kind, offer: () => source, ends: (now) => now.voltageV >= untilV, holdsS: 1, ...(maxH === undefined ? {} : { maxH }) };
}

/**
 * Returns a phase that holds its voltage, and its current where the battery would take more.
 * @param kneeV how far below the voltage the current begins to fall; none for a sharp corner
 */
export function hold(
  voltageV: number,
  limitA: number,
  rest: { kind?: StageKind; untilBelowA?: number; forS?: number; maxH: number; kneeV?: number },
): Phase {
  const { kind = "constant-voltage", untilBelowA, forS = 600, maxH, kneeV } = rest;
  const ohm = kneeV === undefined ? clampOhm(voltageV, limitA) : kneeV / limitA;
  return {
    kind,
    atLimit: "constant-current",
    // Common practice: a limit counts as reached within half a per cent of it.
    ...(kneeV === undefined ? {} : { reachedV: 0.995 * voltageV }),
    offer: () => ({ limitA, voltageV, ohm }),
    ...(untilBelowA === undefined ? {} : { ends: (now: Moment) => now.currentA < untilBelowA, holdsS: forS }),
    maxH,
  };
}

/**
 * Returns a phase without regulation: the current falls in a straight line from `startA` at `startV`, by `share` of it up to `endV`.
 * @param mayBe other words that are as true of so small a fall
 */
export function sag(
  { startA, startV, share, endV }: { startA: number; startV: number; share: number; endV: number },
  { kind = "drooping", mayBe = [], stops, maxH }: { kind?: StageKind; mayBe?: readonly StageKind[]; stops: boolean; maxH: number },
): Phase {
  const ohm = (endV - startV) / (share * startA);
  const source = { limitA: Number.POSITIVE_INFINITY, voltageV: startV + ohm * startA, ohm };
  return { kind, mayBe, offer: () => source, ...(stops ? { ends: (now: Moment) => now.voltageV >= endV } : {}), maxH };
}

/** Returns a phase without current, until the posts have sunk to a voltage or the time is over. */
export function off(maxH: number, { kind = "rest", belowV }: { kind?: StageKind; belowV?: number } = {}): Phase {
  return { kind, offer: () => undefined, maxH, ...(belowV === undefined ? {} : { ends: (now: Moment) => now.voltageV < belowV }) };
}

/** Returns a phase in which the current goes on and off, up to a ceiling of voltage. */
export function pulses(currentA: number, ceilingV: number, { onS, offS, maxH }: { onS: number; offS: number; maxH: number }): Phase {
  const source = { limitA: currentA, voltageV: ceilingV, ohm: clampOhm(ceilingV, currentA) };
  return { kind: "pulses", offer: (now) => (now.phaseS % (onS + offS) < onS ? source : undefined), maxH };
}

/** Returns a phase with lamps across the battery. */
export function lamps(currentA: number, maxH: number): Phase {
  return { kind: "discharge", offer: () => loadOf(currentA), maxH };
}

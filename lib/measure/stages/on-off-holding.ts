/**
 * Finds a charger that holds a battery between two voltages: it waits until the battery has sunk to the lower one, charges, waits again.
 *
 *   V │ \      /\      /\          Each pause sinks to the same voltage and each charge leaves the battery higher than it found it.
 *     │  `.   /  `.   /  `.        Looked for in the rows themselves: where a charge takes but a row or two, no search for pieces can
 *     │    `-'     `-'     `-      see it, since a tooth of the meter looks alike. But a tooth lifts nothing.
 */
import { median } from "../../signal/order-statistics.ts";
import type { Trace } from "../trace.ts";
import { absorptionVPerCell, stepBelowShare } from "./cell-levels.ts";
import type { Scales } from "./pieces.ts";
import { shortestPauseS } from "./pulses.ts";

/** Fewer rounds than this are breaks and resumptions, not a way of holding. */
const fewestRounds = 3;
/** The voltage at which the charger wakes is the same each time within this share. */
const sameThresholdShare = 0.02;
/** … as the latest of them tell it: it may follow the temperature. */
const latestWakings = 9;
/** A pause of fewer rows than this shows no battery that sinks. */
const fewestRows = 5;
/** Rows at the end of a pause by which the voltage that the charger wakes at is told. */
const rowsOfWaking = 3;
/** A current begins where it is clearly one: so many times what counts as none. It ends where it is none. */
const clearlyCurrent = 2;
/** A charge lifts a voltage by more than this share, or to where a cell gasses: a day's warmth moves a float by up to 4 mV a cell in 25 K. */
const liftedShare = 0.05;

/** A stretch of holding, the pauses before and behind it included; half-open range of samples, and its rounds in words. */
export type Holding = { readonly from: number; readonly to: number; readonly told: string };

/** A pause and the charge behind it: samples [pause, charge) and [charge, end). */
type Round = {
  readonly pause: number;
  readonly charge: number;
  readonly end: number;
  /** Voltage at the end of the pause; undefined where a gap hides it. */
  readonly wakesV: number | undefined;
  /** The highest of the charge. */
  readonly toV: number;
};

/**
 * Finds three or more rounds of pause and charge, the pauses long enough that they are no train of pulses.
 *
 * @param trace   with voltage and current
 * @param scales  noise of the voltage, V, and the current that is none, A
 * @param cells   in series
 * @returns in order, not touching; [] where there are none
 */
export function findOnOffHolding(trace: Trace, { noiseV, idleA }: Pick<Scales, "noiseV" | "idleA">, cells: number): Holding[] {
  const charges = findCharges(trace.currentsA, idleA).filter((charge) => lifts(trace.voltagesV, charge, noiseV));
  const rounds = charges.map(([charge, end], index): Round | undefined => {
    const pause = charges[index - 1]?.[1] ?? 0;
    return roundOf(trace, { pause, charge, end }, { noiseV, idleA, cells });
  });
  const found: Holding[] = [];
  let index = 0;
  while (index < rounds.length) {
    const same = sameRounds(rounds, index);
    if (same.length >= fewestRounds && isCharged(same, cells)) found.push(describeHolding(trace, same, charges[index + same.length]?.[0]));
    index += Math.max(1, same.length);
  }
  return found;
}

/** Half-open ranges of samples in which current flows: from where it is clearly one to where it is none; one row of none is a tooth. */
function findCharges(currentsA: Float64Array, noneA: number): [number, number][] {
  const charges: [number, number][] = [];
  let from: number | undefined;
  for (let sample = 0; sample < currentsA.length; sample++) {
    if (from === undefined && (currentsA[sample] as number) > clearlyCurrent * noneA) from = sample;
    const isNone = (currentsA[sample] as number) <= noneA && (currentsA[sample + 1] ?? 0) <= noneA;
    if (from === undefined || !isNone) continue;
    charges.push([from, sample]);
    from = undefined;
  }
  if (from !== undefined) charges.push([from, currentsA.length]);
  return charges;
}

/** Whether a charge leaves the battery higher than it found it, as no tooth does; so does one that the log's end cuts off. */
function lifts(voltagesV: Float64Array, [from, end]: readonly [number, number], noiseV: number): boolean {
  const beforeV = voltagesV[from - 1];
  const afterV = voltagesV[end];
  return beforeV === undefined || afterV === undefined || afterV > beforeV + 3 * noiseV;
}

/** A pause and a charge as a round; undefined where they are none. */
function roundOf(
  { elapsedS, voltagesV, currentsA, gapAboveS }: Trace,
  { pause, charge, end }: Pick<Round, "pause" | "charge" | "end">,
  { noiseV, idleA, cells }: { readonly noiseV: number; readonly idleA: number; readonly cells: number },
): Round | undefined {
  const pausedS = (elapsedS[charge] as number) - (elapsedS[pause] as number);
  if (charge - pause < fewestRows || pausedS < shortestPauseS || median(currentsA.subarray(pause, charge)) > idleA) return undefined;
  const lastV = median(voltagesV.subarray(charge - rowsOfWaking, charge));
  const toV = voltagesV.subarray(charge, end + 1).reduce((highest, voltageV) => Math.max(highest, voltageV), 0);
  if ((voltagesV[pause] as number) <= lastV + 3 * noiseV || toV <= lastV * (1 + stepBelowShare)) return undefined;
  if ((elapsedS[charge] as number) - (elapsedS[charge - 1] as number) > gapAboveS) return { pause, charge, end, wakesV: undefined, toV };
  return lastV / cells < absorptionVPerCell ? { pause, charge, end, wakesV: lastV, toV } : undefined;
}

/** The rounds from `start` on, as long as the charger wakes at the same voltage. */
function sameRounds(rounds: readonly (Round | undefined)[], start: number): Round[] {
  const same: Round[] = [];
  const wakingsV: number[] = [];
  for (let index = start; index < rounds.length; index++) {
    const round = rounds[index];
    if (round === undefined) break;
    const { wakesV } = round;
    if (wakesV !== undefined) {
      const expectedV = wakingsV.length === 0 ? wakesV : median(wakingsV.slice(-latestWakings));
      if (Math.abs(wakesV - expectedV) > sameThresholdShare * expectedV) break;
      wakingsV.push(wakesV);
    }
    same.push(round);
  }
  return same;
}

/** Whether one charge at least brought the battery further than a float that follows the day's temperature moves by itself. */
function isCharged(rounds: readonly Round[], cells: number): boolean {
  return rounds.some(({ wakesV = Number.NaN, toV }) => toV / cells >= absorptionVPerCell || toV > wakesV * (1 + liftedShare));
}

/** The rounds with the pause behind them, up to the next charge or the end of the log. */
function describeHolding({ elapsedS }: Trace, rounds: readonly Round[], nextCharge: number | undefined): Holding {
  const from = rounds[0]?.pause ?? 0;
  const to = nextCharge ?? elapsedS.length;
  const hours = ((elapsedS[to - 1] as number) - (elapsedS[from] as number)) / 3600;
  const wakesV = median(rounds.flatMap((round) => round.wakesV ?? []));
  const toV = median(rounds.map((round) => round.toV));
  const told = `${rounds.length} times it waited without current until about ${wakesV.toFixed(2)} V and charged to about ${toV.toFixed(2)} V, once in ${(hours / rounds.length).toFixed(1)} h`;
  return { from, to, told };
}

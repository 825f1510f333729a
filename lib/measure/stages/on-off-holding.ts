/** Recognises a charger that holds a battery between two voltages: it waits, charges a little, waits again. */
import { median } from "../../signal/order-statistics.ts";
import type { FoundStage } from "./name-stages.ts";
import type { Series } from "./series.ts";

/** Fewer rounds than this are breaks and resumptions, not a way of holding. */
const fewestRounds = 3;
/** The voltage at which the charger wakes is the same each time within this share. */
const sameThresholdShare = 0.02;

const pauses: ReadonlySet<FoundStage["kind"]> = new Set(["rest", "interrupted"]);

/** One pause and the charging after it: stages [pause, end). */
type Round = { readonly pause: number; readonly end: number; readonly wakesV: number; readonly toV: number };

/**
 * Joins three or more rounds of pause and charge into one stage, with both thresholds measured: the voltage at the end of each pause,
 * and the highest one of each charge. The pause at the end of the recording, if any, belongs to it.
 *
 * @param stages  in order, half-open ranges of the series
 */
export function joinOnOffHolding(stages: readonly FoundStage[], series: Series): FoundStage[] {
  const joined: FoundStage[] = [];
  let index = 0;
  while (index < stages.length) {
    const rounds = roundsFrom(stages, index, series);
    const first = stages[index] as FoundStage;
    if (rounds.length < fewestRounds) {
      joined.push(first);
      index++;
      continue;
    }
    const end = (rounds.at(-1) as Round).end;
    const trailing = stages[end];
    const last = trailing !== undefined && pauses.has(trailing.kind) ? end : end - 1;
    joined.push({
      kind: "on-off-holding",
      from: first.from,
      to: (stages[last] as FoundStage).to,
      confidence: rounds.length > fewestRounds ? "clear" : "likely",
      why: tellRounds(rounds, first, stages[last] as FoundStage, series),
    });
    index = last + 1;
  }
  return joined;
}

/** The rounds that begin at a stage, as long as the charger wakes at the same voltage. */
function roundsFrom(stages: readonly FoundStage[], start: number, series: Series): Round[] {
  const rounds: Round[] = [];
  let index = start;
  for (;;) {
    const pause = stages[index];
    if (pause === undefined || !pauses.has(pause.kind)) return rounds;
    let end = index + 1;
    while (end < stages.length && !pauses.has((stages[end] as FoundStage).kind) && stages[end]?.kind !== "discharge") end++;
    if (end === index + 1) return rounds;
    const wakesV = median(series.voltagesV.subarray(Math.max(pause.from, pause.to - 3), pause.to));
    const expectedV = rounds.length === 0 ? wakesV : median(rounds.map((round) => round.wakesV));
    if (Math.abs(wakesV - expectedV) > sameThresholdShare * expectedV) return rounds;
    rounds.push({ pause: index, end, wakesV, toV: highest(series.voltagesV, pause.to, (stages[end - 1] as FoundStage).to) });
    index = end;
  }
}

function highest(values: Float64Array, from: number, to: number): number {
  let value = Number.NEGATIVE_INFINITY;
  for (let i = from; i < to; i++) value = Math.max(value, values[i] as number);
  return value;
}

function tellRounds(rounds: readonly Round[], first: FoundStage, last: FoundStage, series: Series): string {
  const hours = ((series.timesS[last.to - 1] as number) - (series.timesS[first.from] as number)) / 3600;
  const wakesV = median(rounds.map((round) => round.wakesV));
  const toV = median(rounds.map((round) => round.toV));
  return `${rounds.length} times it waited without current until about ${wakesV.toFixed(2)} V and charged to about ${toV.toFixed(2)} V, once in ${(hours / rounds.length).toFixed(1)} h`;
}

/** What is little current for a battery, and how many cells its voltage is shared by. */
import { quantile } from "../../signal/order-statistics.ts";
import type { Scales } from "./pieces.ts";
import type { Series, StageHints } from "./series.ts";

/** What is little current for this battery, and how large it is. */
export type BatteryScale = {
  /** Below this a charge at its limit has finished, A. */
  readonly finishedA: number;
  /** No more than this keeps a full battery full, A. */
  readonly keepingFullA: number;
  /** Below this a current is none, A. */
  readonly noneA: number;
  readonly capacityAh: number | undefined;
  /** In series. */
  readonly cells: number;
};

/** A charge counts as finished where the current at its end is below this share of the highest. */
const finishedShare = 0.2;
/** … or below this share of the capacity: C/25, the upper end of the tail currents at which a charge is ended (1 to 4 %; common practice). */
const finishedShareOfC = 0.04;
/** … which says something only where the current has fallen to half: a weak charger never gives more than that. Our definition. */
const fallenShare = 0.5;
/** Mean current that only keeps a battery full, A for each Ah: IEC 62485-2, vented, boost, safety factor included. */
const keepingFullAPerAh = 0.004;
/** Where the capacity is not known, the highest current is taken for C/8, between the C/12 and C/5 of usual chargers (common practice). */
const hoursOfTop = 8;
/** No charger gives a lead-acid cell so much, V. */
const beyondAnyCellV = 2.9;

/**
 * Returns the current below which a charge at its limit has finished, A.
 *
 * @param highestA    highest current of the recording, A
 * @param capacityAh  undefined where it is not known; then the highest current alone decides
 */
export function finishedCurrentA(highestA: number, capacityAh: number | undefined): number {
  return Math.max(finishedShare * highestA, Math.min(finishedShareOfC * (capacityAh ?? 0), fallenShare * highestA));
}

/**
 * Returns what is little current for a battery, and its cells.
 *
 * @param scales  of the log: its highest sustained current, and the one that is none, A
 * @param hints   capacity (Ah) and cells by the record; without them the highest current stands for C/8, and the voltage tells the cells
 */
export function batteryScale({ topA, idleA }: Scales, { capacityAh, cells }: StageHints, series: Series): BatteryScale {
  return {
    finishedA: finishedCurrentA(topA, capacityAh),
    keepingFullA: keepingFullAPerAh * (capacityAh ?? hoursOfTop * topA),
    noneA: idleA,
    capacityAh,
    cells: cells ?? likelyCells(series),
  };
}

/** Cells in series, from the highest voltage; 6 where it fits no usual number of them. */
function likelyCells(series: Series): number {
  // A tooth of a few volts must not double the battery.
  const highestV = quantile(series.voltagesV, 0.99);
  return [3, 6, 12, 24].find((cells) => highestV / cells < beyondAnyCellV) ?? 6;
}

/** Which batteries a charger brings back by when: a matrix of battery, how flat, and deadline. */
import { chargeForDensityRise, densityAfterCharge } from "../electrochem/acid-balance.ts";
import { type BatteryClassId, batteryClasses, type FlatnessId, flatnesses, reasonsAgainst } from "./battery-classes.ts";
import { type BatteryBeliefs, beliefsOf, type Condition, type Construction, densitiesByKind } from "./battery-priors.ts";
import type { ChargerBehaviour } from "./charger-behaviour.ts";
import { forecastCharge } from "./forecast.ts";
import type { ChargeMark } from "./simulate.ts";
import { type Range, rangeOf } from "./spread.ts";

/** Hours within which somebody wants the battery back. */
export const deadlinesH = [12, 24, 48] as const;
/** "Ready" is 95 % of what the battery holds. */
export const readyMark: ChargeMark = "95 %";
/** From these probabilities on a charger will, or will not, be in time: our rule. */
export const willFrom = 0.9;
export const willNotUpTo = 0.1;

export type ReadyVerdict = "will" | "may" | "will not" | "not advised";

export type ReadyCell = {
  readonly battery: BatteryClassId;
  readonly flatness: FlatnessId;
  readonly deadlines: readonly { readonly deadlineH: number; readonly probability: number; readonly verdict: ReadyVerdict }[];
  /** Why it is not advised; empty otherwise. */
  readonly because: readonly string[];
  /** Whether the class lies in the range of capacities that the maker names; null where none is named. */
  readonly isClaimed: "all" | "part" | "none" | null;
};

export type ReadyQuestion = {
  readonly construction: Construction;
  readonly condition: Condition;
  readonly airC: number;
  /** What other batteries have taught; the kind's own beliefs where left out. */
  readonly beliefs?: BatteryBeliefs;
  /** The maker's range of capacities, Ah. */
  readonly claimedAh?: Range;
  /** 12 V unless given. */
  readonly cells?: number;
  /** How many draws a cell rests on; the usual number where left out. A matrix of many cells is content with fewer. */
  readonly draws?: number;
};

/** How well "half flat" in a customer's mouth names a state of charge, standard. Our judgement. */
const flatnessUncertainty = 0.06;

/**
 * Fills the matrix.
 * @returns a cell for each class and flatness, in their order. Probabilities are shares of the draws, 64 unless asked otherwise.
 */
export function readyBy(behaviour: ChargerBehaviour, question: ReadyQuestion): ReadyCell[] {
  return batteryClasses.flatMap((battery) => flatnesses.map((flatness) => readyCell(behaviour, question, battery, flatness)));
}

function readyCell(
  behaviour: ChargerBehaviour,
  { construction, condition, airC, beliefs = beliefsOf(construction, condition), claimedAh, cells = 6, draws: count }: ReadyQuestion,
  { id: battery, capacityAh, typicalAh }: (typeof batteryClasses)[number],
  { id: flatness, stateOfCharge }: (typeof flatnesses)[number],
): ReadyCell {
  const density = densitiesByKind[construction];
  const because = reasonsAgainst(
    construction,
    typicalAh,
    stateOfCharge,
    densityAtShare(density, stateOfCharge),
    bulkCurrentOf(behaviour),
    airC,
    peakVoltageOf(behaviour) / cells,
  );
  const { draws } = forecastCharge(
    { beliefs },
    behaviour,
    {
      ratedAh: typicalAh,
      cells,
      density,
      startShare: stateOfCharge,
      startShareUncertainty: Math.min(flatnessUncertainty, stateOfCharge / 2),
      airC,
      horizonH: Math.max(...deadlinesH),
    },
    { stopWhenSettled: true, ...(count === undefined ? {} : { count }) },
  );
  const deadlines = deadlinesH.map((deadlineH) => {
    const probability = draws.filter(({ hoursTo }) => hoursTo[readyMark] <= deadlineH).length / draws.length;
    return { deadlineH, probability, verdict: because.length > 0 ? ("not advised" as const) : verdictOf(probability) };
  });
  return { battery, flatness, deadlines, because, isClaimed: claimedAh === undefined ? null : coverOf(capacityAh, claimedAh) };
}

/** What a probability of being in time is called. NaN is "may": nothing is promised and nothing ruled out. */
export function verdictOf(probability: number): Exclude<ReadyVerdict, "not advised"> {
  if (probability >= willFrom) return "will";
  return probability <= willNotUpTo ? "will not" : "may";
}

/** The highest voltage that a charger surely goes to, V: the least that its recordings allow; 0 where none was seen. */
export function peakVoltageOf({ steps }: ChargerBehaviour): number {
  return Math.max(
    0,
    ...steps.flatMap((step) =>
      "voltageV" in step ? [step.voltageV.low] : "untilV" in step && step.untilV !== undefined ? [step.untilV.low] : [],
    ),
  );
}

/** The current a charger gives while the battery does not limit it, A; the highest of its steps. 0 to 0 for a charger without steps. */
export function bulkCurrentOf({ steps }: ChargerBehaviour): Range {
  const currents = steps.flatMap((step) => {
    if (step.kind === "off") return [];
    if (step.kind === "drooping") return [step.currentAtLowA];
    return "limitA" in step ? [step.limitA] : [step.currentA];
  });
  const lows = rangeOf(currents.map(({ low }) => low));
  const highs = rangeOf(currents.map(({ high }) => high));
  return { low: lows?.high ?? 0, high: highs?.high ?? 0 };
}

/** Density of acid at a state of charge, kg/l: the acid balance, in which the mass of acid cancels. */
function densityAtShare({ full, empty }: { readonly full: number; readonly empty: number }, share: number): number {
  return densityAfterCharge(1, empty, share * chargeForDensityRise(1, empty, full));
}

function coverOf(capacityAh: Range, claimedAh: Range): "all" | "part" | "none" {
  if (capacityAh.high < claimedAh.low || capacityAh.low > claimedAh.high) return "none";
  return capacityAh.low >= claimedAh.low && capacityAh.high <= claimedAh.high ? "all" : "part";
}

/** The answer of one mode to a question: the build's own forecast, run in the page. */
import {
  batteryClasses,
  beliefsOf,
  type ChargerBehaviour,
  densitiesByKind,
  flatnesses,
  forecastCharge,
  whatIsAgainst,
} from "../../project/index.ts";
import { bulkCurrentOf, deadlinesH, peakVoltageOf, type ReadyVerdict, readyMark, verdictOf } from "../../project/ready-by.ts";
import { type Middle, middleOfDraws } from "../../project/spread.ts";
import type { Reason } from "../words/en/find.ts";
import type { AskedMode } from "./asked-and-apart.ts";
import { mayBeFrozen } from "./cautions.ts";
import type { Question } from "./question.ts";
import { cellsOf, type StartOfCharge } from "./start-of-charge.ts";

/** Draws of an answer; and those of a cell of the matrix on a charger's page, which are fewer (lib/judge/forecast/forecast-mode.ts). */
const usualDraws = 64;
const cellDraws = 32;

/** The battery and the time asked for, as the forecast takes them. */
export type Task = { readonly question: Question; readonly start: StartOfCharge; readonly hoursLeft: number };

export type Answer = {
  readonly probability: number;
  readonly verdict: ReadyVerdict;
  /** Why it is not advised; empty where nothing speaks against it. */
  readonly because: readonly Reason[];
  /** Whether draw k is ready in time; draw k met the same battery with every charger. */
  readonly inTime: readonly boolean[];
  /** How many of the draws are not ready within the hours looked at. */
  readonly neverReady: number;
  /** Infinity is "not within the hours looked at". */
  readonly hoursToReady: Middle;
  /** From the mains until the battery is full, the charger is off for good, or the hours looked at are over, kWh. */
  readonly mainsKWh: Middle;
  /** How many hours were looked at. */
  readonly horizonH: number;
};

/**
 * Whether a question is one of the cells of the matrix on every charger's page: then it is answered with that matrix' draws, so that the
 * same question has the same digits on both pages.
 */
export function isCellOfMatrix({ ratedAh, kind, condition, flat, airC, by }: Question): boolean {
  return (
    batteryClasses.some(({ typicalAh }) => typicalAh === ratedAh) &&
    flatnesses.some(({ id }) => id === flat) &&
    (kind === "flooded" || kind === "AGM") &&
    condition === "used" &&
    airC === 20 &&
    deadlinesH.some((hours) => `${hours}h` === by)
  );
}

/** How many draws a question is answered with. */
export const drawsFor = (question: Question): number => (isCellOfMatrix(question) ? cellDraws : usualDraws);

/** How many hours are looked at: at least as many as the matrix does, so that the hours are told of a charger that comes too late. */
export const horizonFor = (hoursLeft: number): number => Math.max(hoursLeft, ...deadlinesH);

/**
 * Forecasts one mode.
 * @returns the share of draws in which the battery is at 95 % of what it holds by the deadline, and what it takes. Deterministic.
 */
export function answerOf({ question, start, hoursLeft }: Task, { behaviour }: AskedMode): Answer {
  const { kind, condition, ratedAh, airC, voltageV } = question;
  const horizonH = horizonFor(hoursLeft);
  const { draws } = forecastCharge(
    { beliefs: beliefsOf(kind, condition) },
    behaviour,
    {
      ratedAh,
      cells: cellsOf(voltageV),
      density: densitiesByKind[kind],
      startShare: start.share,
      startShareUncertainty: start.standardUncertainty,
      airC,
      horizonH,
    },
    { stopWhenSettled: true, count: drawsFor(question) },
  );
  const hours = draws.map(({ hoursTo }) => hoursTo[readyMark]);
  const inTime = hours.map((hoursToReady) => hoursToReady <= hoursLeft);
  const probability = inTime.filter(Boolean).length / draws.length;
  const because = reasonsAgainstCharging({ question, start, hoursLeft }, behaviour);
  return {
    probability,
    verdict: because.length > 0 ? "not advised" : verdictOf(probability),
    because,
    inTime,
    neverReady: hours.filter((hoursToReady) => !Number.isFinite(hoursToReady)).length,
    hoursToReady: middleOfDraws(hours),
    mainsKWh: middleOfDraws(draws.map(({ whole }) => whole.mainsWh / 1000)),
    horizonH,
  };
}

/** What a battery has when it has thawed, °C: an ordinary room's. */
const thawedC = 20;

/**
 * The library's reasons, with frost judged by the weakest acid that the reading allows: a caution above the results and a charger that is
 * advised below it must not contradict each other. At a room's temperature they are the library's own.
 */
function reasonsAgainstCharging({ question, start }: Task, behaviour: ChargerBehaviour): Reason[] {
  const { kind, ratedAh, airC, voltageV } = question;
  const isFrost = mayBeFrozen(question, start);
  const others = whatIsAgainst(
    kind,
    ratedAh,
    start.share,
    start.densityAt25C,
    bulkCurrentOf(behaviour),
    isFrost ? thawedC : airC,
    peakVoltageOf(behaviour) / cellsOf(voltageV),
  );
  return isFrost ? [{ id: "may-be-frozen" }, ...others] : others;
}

/**
 * Orders modes by how promising they are, before anything is forecast: the charge that is missing against what the charger can give in the
 * time; those whose current is too high for the battery last. Only the order of work hangs on it, no result.
 */
export function mostPromisingFirst({ question, start, hoursLeft }: Task, modes: readonly AskedMode[]): AskedMode[] {
  const missingAh = (1 - start.share) * question.ratedAh;
  const rank = ({ behaviour }: AskedMode): number => {
    const isAdvised = reasonsAgainstCharging({ question, start, hoursLeft }, behaviour).length === 0;
    return (isAdvised ? 0 : 1e9) + missingAh / Math.max(1e-6, bulkCurrentOf(behaviour).high * hoursLeft);
  };
  return modes
    .map((mode) => ({ mode, rank: rank(mode) }))
    .sort((a, b) => a.rank - b.rank)
    .map(({ mode }) => mode);
}

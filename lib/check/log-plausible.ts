import type { Battery } from "../nouns/battery.ts";
import type { Place, Problem } from "../nouns/problem.ts";
import type { Samples } from "../nouns/samples.ts";
import { findClockOutside } from "./log/clock-fits.ts";
import { type Finding, type LogFacts, problemOfLog } from "./log/facts.ts";
import { findFrozenChannels } from "./log/frozen-channel.ts";
import { findImpossibleValues } from "./log/impossible-values.ts";
import { findMiddleCurrent, findMiddleVoltage, findSwappedColumns, findTurnedSign } from "./log/middle-values.ts";
import { findChargeMismatch, findPowerMismatch } from "./log/own-sums.ts";
import { findSignFlips } from "./log/sign-flip.ts";
import { findThousandfoldCurrent } from "./log/thousandfold-current.ts";

/** Every check of a log by itself, with the id of the problem that it finds. */
const checks: readonly { readonly id: string; readonly find: (facts: LogFacts) => Finding[] }[] = [
  { id: "log-voltage", find: findMiddleVoltage },
  { id: "log-swapped", find: findSwappedColumns },
  { id: "log-current", find: findMiddleCurrent },
  { id: "log-thousandfold", find: findThousandfoldCurrent },
  { id: "log-sign", find: findTurnedSign },
  { id: "log-sign-flip", find: findSignFlips },
  { id: "log-impossible", find: findImpossibleValues },
  { id: "log-frozen", find: findFrozenChannels },
  { id: "log-power", find: findPowerMismatch },
  { id: "log-charge", find: findChargeMismatch },
  { id: "log-clock", find: findClockOutside },
];

/**
 * A log's values are those of this battery: voltage per cell possible, current not absurd, no channel stuck or turned round, the recorder's
 * own sums borne out, a clock that fits the connection.
 *
 * @param onMs, offMs   the connection's ends, ms since 1970 UTC, where the record has them
 * @param dialectPlace  where the recorder's record describes its way of writing
 */
export function checkLogPlausible(
  samples: Samples,
  battery: Battery,
  file: string,
  testId: string,
  onMs: number | undefined,
  offMs: number | undefined,
  dialectPlace: Place | undefined,
): Problem[] {
  const notes = dialectPlace === undefined ? [] : [`${dialectPlace.file}:${dialectPlace.line ?? 1} describes how this recorder writes`];
  const facts: LogFacts = { samples, battery, file, testId, onMs, offMs, notes };
  return checks.flatMap(({ id, find }) => find(facts).map((finding) => problemOfLog(id, facts, finding)));
}

/** The examination in words: statements for a technician, and two plain sentences for a buyer. */
import { formatAround, formatNumber, formatProbability, narrowSpace } from "../units/format.ts";
import type { Case } from "./case.ts";
import type { Account, Combination, Estimate, Examined, NextReading, WitnessId } from "./examination.ts";
import type { ExplanationId } from "./explanations.ts";
import { nameOf } from "./next-reading.ts";

export type ToSay = Pick<
  Examined,
  | "causes"
  | "best"
  | "combinations"
  | "visits"
  | "intervals"
  | "takenAh"
  | "unrecordedAh"
  | "hydrometerOffset"
  | "trueCapacityAh"
  | "accounts"
  | "readings"
> & { readonly nextReading: NextReading | null };

const witnessWords: Readonly<Record<WitnessId, string>> = {
  density: "density",
  "rest-voltage": "rest voltage",
  "charge-balance": "charge balance",
  cranking: "cranking current",
};

/** Statements for a technician, with 95 % intervals as everywhere on the site: each visit's witnesses side by side, then the causes, then what follows from them. */
export function stateForTechnician(the: Case, outcome: ToSay): string[] {
  return [
    ...outcome.visits.map(({ visit, stateOfCharge }) => sayVisit(visit, stateOfCharge, outcome.accounts)),
    sayCauses(outcome.best, outcome.combinations),
    ...sayTaken(outcome),
    ...sayOfCauses(the, outcome),
    ...(outcome.nextReading === null ? [] : [`Would tell most: ${lowerFirst(outcome.nextReading.label)}; ${outcome.nextReading.why}.`]),
  ];
}

function sayVisit(visit: number, together: Estimate, accounts: readonly Account[]): string {
  const heard = accounts.flatMap(({ witness, visit: of, stateOfCharge }) =>
    of === visit && stateOfCharge !== null ? [`${witnessWords[witness]} ${share(stateOfCharge)}`] : [],
  );
  const single = heard.length === 0 ? "no witness of its own" : heard.join(", ");
  return `Visit ${visit}: ${single}; all visits together: ${share(together)}.`;
}

function sayCauses(best: Combination, combinations: readonly Combination[]): string {
  const second = combinations[1];
  const rival =
    second === undefined || second.probability < 0.02 ? "" : `; next, ${nameOf(second.causes)} (${formatProbability(second.probability)})`;
  return `Most probable: ${nameOf(best.causes)} (${formatProbability(best.probability)})${rival}.`;
}

function sayTaken({ visits, takenAh }: ToSay): string[] {
  const first = visits[0];
  const last = visits.at(-1);
  if (first === undefined || last === undefined || first === last) return [];
  return [`From visit ${first.visit} to visit ${last.visit} the plates took ${amount(takenAh, 0, "Ah")}.`];
}

/** Less than this below the mean is no news of the acid at a visit, kg/l: about what a hydrometer can be read to. */
const tellingDensity = 0.005;

/** What follows from each cause of the most probable combination. Under a cause that is only likely, its numbers are no more than likely either. */
function sayOfCauses(the: Case, outcome: ToSay): string[] {
  return outcome.best.causes.flatMap((cause) => {
    const isSure = (outcome.causes.find(({ id }) => id === cause)?.probability ?? 0) >= surely;
    return sayOfCause(cause, the, outcome).map((says) => (isSure ? says : `If so, ${lowerFirst(says)}`));
  });
}

function sayOfCause(cause: ExplanationId, the: Case, outcome: ToSay): string[] {
  switch (cause) {
    case "charge-unrecorded":
      return [`${amount(outcome.unrecordedAh, 0, "Ah")} went through the posts while nobody recorded.`];
    case "acid-not-mixed":
      return outcome.visits.flatMap(({ visit, topBelowMean }) =>
        topBelowMean === null || topBelowMean.value <= tellingDensity
          ? []
          : [`At visit ${visit} the top of the acid was weaker than the mean by ${amount(topBelowMean, 3, "kg/l")}.`],
      );
    case "hydrometer-off":
      return outcome.hydrometerOffset === null
        ? []
        : [`The hydrometer shows ${amount(outcome.hydrometerOffset, 3, "kg/l")} too much (a minus: too little).`];
    case "weak-cell":
      return [
        the.contrast === undefined
          ? "Which cell is the weak one these readings do not say."
          : `Cell ${the.contrast.cell + 1} stands ${the.contrast.deficit.toFixed(3)} kg/l below the mean of the others; the states of charge are those of the others.`,
      ];
    case "rating-wrong":
      return [`The battery holds ${amount(outcome.trueCapacityAh, 0, "Ah")}, against ${formatNumber(the.ratedAh, 0)} rated.`];
    case "surface-charge":
      return [];
  }
}

/** Two sentences for a buyer: the outcome, and what it means or what would settle it. */
export function sayToBuyer(outcome: ToSay): [string, string] {
  const last = outcome.visits.at(-1);
  const full =
    last === undefined
      ? "How full the battery was cannot be said."
      : `At the last visit the battery was between ${percent(Math.max(0, last.stateOfCharge.low95))} and ${percent(Math.min(1, last.stateOfCharge.high95))}${narrowSpace}% full, by everything that was measured.`;
  return [full, sayMeaning(outcome)];
}

/** What the leading cause means to somebody who buys a charger. */
const meanings: Readonly<Record<ExplanationId, string>> = {
  "acid-not-mixed": "more charge is in the battery than the acid at the top shows",
  "charge-unrecorded": "the charger put in more than the record shows",
  "surface-charge": "the voltage was read too early and promises more than the battery holds",
  "weak-cell": "one cell of the test battery is weak, which is no fault of the charger",
  "rating-wrong": "the test battery does not hold what its label says, which is no fault of the charger",
  "hydrometer-off": "the acid tester shows a little wrong, which is no fault of the charger",
};

/** From these probabilities on a cause is said to be so "very probably" and "probably"; down to the last, it is named as open. */
const surely = 0.95;
const probably = 0.6;
const open = 0.25;

/** Causes are weighed one by one: where two combinations share one, it can be clear while the other stays open. */
function sayMeaning({ causes, nextReading }: ToSay): string {
  const settle = nextReading === null ? "" : ` What would settle it: ${lowerFirst(nextReading.label)}.`;
  const seen = causes.filter((cause) => cause.visible);
  const nothing = seen.find((cause) => cause.id === "nothing-to-explain")?.probability ?? 0;
  if (nothing >= surely) return "The separate measurements agree, so there is nothing to explain away.";
  if (nothing >= probably) return `The separate measurements agree as well as they can.${settle}`;
  const inRange = (from: number, below: number): string[] =>
    seen.flatMap((cause) =>
      cause.id !== "nothing-to-explain" && cause.probability >= from && cause.probability < below ? [meanings[cause.id]] : [],
    );
  const clear = inRange(probably, Number.POSITIVE_INFINITY);
  const left = inRange(open, probably);
  if (clear.length === 0)
    return left.length === 0
      ? `Why the measurements do not quite agree is open.${settle}`
      : `Why the measurements do not quite agree is open; it may be that ${left.join(", or that ")}.${settle}`;
  const isSure = inRange(surely, Number.POSITIVE_INFINITY).length === clear.length;
  const also = left.length === 0 ? "" : ` Whether ${left.join(", and whether ")}, is open.`;
  return `${isSure ? "Very probably" : "Probably"} ${clear.join(", and ")}.${also}${isSure && left.length === 0 ? "" : settle}`;
}

/** 84 % (72 to 93): a share of the capacity, held within 0 and 100. */
function share({ value, low95, high95 }: Estimate): string {
  if (low95 > 1) return "more than full";
  const hold = (x: number): number => Math.min(1, Math.max(0, x));
  return `${percent(hold(value))}${narrowSpace}% (${percent(hold(low95))} to ${percent(hold(high95))})`;
}

function amount({ value, low95, high95 }: Estimate, decimals: number, unit: string): string {
  return formatAround({ value, low: low95, high: high95 }, unit, decimals);
}

function percent(value: number): string {
  return formatNumber(value * 100, 0);
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** The first sentence a buyer reads, made from claims, findings and the forecast of a month connected; nothing in it that they do not carry. */
import { type Finding, type JudgedClaim, missedFirst } from "../../nouns/finding.ts";
import { formatStated } from "../../units/format.ts";
import type { ModeForecastResult, TestResult } from "../results.ts";
import { leftOnOf } from "./left-on.ts";

export type Verdict = { readonly sentence: string; readonly weight: Finding["weight"] };

/** What is summed up of a test. */
export type JudgedTest = Pick<TestResult, "claims" | "findings" | "doubts"> & {
  readonly recordings: readonly Pick<TestResult["recordings"][number], "doubts">[];
};

/** What is summed up of a mode. */
export type JudgedMode = {
  readonly name: string;
  readonly tests: readonly JudgedTest[];
  /** What a month connected would bring; none where that was not asked. */
  readonly season: ModeForecastResult["season"];
};

/**
 * Sums up one test, or all tests of a charger: what every mode does, then what only some do, each under its mode's name, and how many were
 * not tested. Neither a better mode nor a better test hides a worse one.
 */
export function makeVerdict(modes: readonly JudgedMode[]): Verdict {
  const tested = modes.filter(({ tests }) => tests.length > 0);
  const told = tested.map((mode) => ({ name: mode.name, clauses: clausesOf(mode), weight: weigh([mode]) }));
  const common = told[0]?.clauses.filter((clause) => told.every(({ clauses }) => clauses.includes(clause))) ?? [];
  const apart = told
    .map(({ name, clauses, weight }) => ({ name, weight, clauses: clauses.filter((clause) => !common.includes(clause)) }))
    .filter(({ clauses }) => clauses.length > 0)
    .sort((a, b) => gravity.indexOf(a.weight) - gravity.indexOf(b.weight));
  const sentences = [
    ...common.map(capitalised),
    ...apart.map(({ name, clauses }) => `Mode "${name}": ${clauses.join("; ")}`),
    ...untested(modes.length - tested.length, modes.length),
  ];
  const isNothing = common.length === 0 && apart.length === 0;
  return {
    sentence: isNothing ? "Too little was recorded to say what this charger does." : `${sentences.join(". ")}.`,
    weight: weigh(tested),
  };
}

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const untested = (count: number, of: number): string[] => (count === 0 ? [] : [`Not tested: ${count} of its ${of} modes`]);

function clausesOf({ tests, season }: JudgedMode): string[] {
  const findings = tests.flatMap((test) => test.findings);
  return [
    ...aboutCurrent(tests),
    ...aboutVoltage(tests),
    ...aboutFloat(tests),
    ...aboutCharacteristic(tests),
    ...aboutTarget(tests),
    ...leftOnOf(findings, season).clauses,
    ...aboutInstruments(tests),
  ];
}

const isMissed = ({ outcome }: Pick<JudgedClaim, "outcome">): boolean => outcome === "short of" || outcome === "above";

/** The most telling claim of the name, and " in 1 of 2 tests" where others of the mode's tests met what it missed. */
function tellingClaim(tests: readonly JudgedTest[], id: string): { readonly claim: JudgedClaim; readonly inTests: string } | undefined {
  const claims = tests.flatMap((test) => test.claims.filter((claim) => claim.id === id));
  const [claim] = [...claims].sort((a, b) => missedFirst.indexOf(a.outcome) - missedFirst.indexOf(b.outcome));
  if (claim === undefined) return undefined;
  const decided = claims.filter(({ outcome }) => isMissed({ outcome }) || outcome === "meets");
  return { claim, inTests: isMissed(claim) ? inSome(decided.filter(isMissed).length, decided.length) : "" };
}

/** " in 1 of 2 tests"; nothing where it was in all of them. */
const inSome = (count: number, of: number): string => (count === of ? "" : ` in ${count} of ${of} tests`);

function aboutCurrent(tests: readonly JudgedTest[]): string[] {
  const telling = tellingClaim(tests, "claim-current");
  if (telling === undefined) return [];
  const { claim, inTests } = telling;
  const label = claim.claimed === null ? "" : formatStated(claim.claimed, claim.unit);
  const measured = claim.measured === null ? "" : formatStated(Number(claim.measured.toPrecision(2)), claim.unit);
  switch (claim.outcome) {
    case "meets":
      return [`gives the ${label} on its label`];
    case "short of":
      return [`gives ${measured} of the ${label} on its label${inTests}`];
    case "above":
      return [`gives ${measured}, more than the ${label} on its label${inTests}`];
    case "cannot tell":
      return [`whether it gives the ${label} on its label cannot be told`];
    case "not put to the test":
      return [`the ${label} on its label was not put to the test`];
  }
}

const aboutVoltage = (tests: readonly JudgedTest[]): string[] =>
  aboutMissedVoltage(tests, "claim-voltage", { above: "goes to", "short of": "stays at" }, 1);
const aboutFloat = (tests: readonly JudgedTest[]): string[] =>
  aboutMissedVoltage(tests, "claim-float-voltage", { above: "floats at", "short of": "floats at" }, 2);

/** A voltage is told where it was promised otherwise; with the decimals in which such voltages differ. */
function aboutMissedVoltage(
  tests: readonly JudgedTest[],
  id: string,
  does: Readonly<Record<"above" | "short of", string>>,
  decimals: number,
): string[] {
  const telling = tellingClaim(tests, id);
  const { measured, claimed, outcome } = telling?.claim ?? {};
  if (telling === undefined || measured == null || claimed == null || (outcome !== "above" && outcome !== "short of")) return [];
  return [`${does[outcome]} ${measured.toFixed(decimals)}\u202FV, ${outcome} the ${formatStated(claimed, "V")} stated${telling.inTests}`];
}

/** A characteristic that one recording shows whole is one that the charger has; a miss stands where none does. */
function aboutCharacteristic(tests: readonly JudgedTest[]): string[] {
  const claims = tests.flatMap((test) => test.claims.filter(({ id }) => id === "claim-characteristic"));
  return claims.some(isMissed) && !claims.some(({ outcome }) => outcome === "meets")
    ? ["does not go through the charge characteristic stated"]
    : [];
}

/** Verdicts of the target's finding that tell of no reached target, from the worst, with what a buyer is told. */
const shortfalls: readonly { readonly verdicts: readonly string[]; readonly clause: (inTests: string) => string }[] = [
  {
    verdicts: ["not reachable as it goes"],
    clause: () => "did not bring the battery back to full density, and will not as it goes",
  },
  {
    // A longer test might have shown it.
    verdicts: ["not reached", "not reached yet"],
    clause: (inTests) => `did not bring the battery back to full density in ${inTests}`,
  },
  {
    verdicts: ["only after mixing"],
    clause: () => "brought the battery back to full density only after the acid was mixed by hand",
  },
  { verdicts: ["read, not settled"], clause: () => "full density was read, but had not settled by the test's own rule" },
];
const mixedVerdict = "reached, after mixing";

function aboutTarget(tests: readonly JudgedTest[]): string[] {
  const verdicts = tests.flatMap(({ findings }) => findings.filter(({ id }) => id === "target-density").map(({ verdict }) => verdict));
  const reached = verdicts.filter((verdict) => verdict === "reached" || verdict === mixedVerdict);
  const short = verdicts.filter((verdict) => shortfalls.some((shortfall) => shortfall.verdicts.includes(verdict)));
  if (reached.length > 0 && short.length > 0)
    return [`brought the battery back to full density in ${reached.length} of ${reached.length + short.length} tests`];
  if (reached.length > 0 && reached.every((verdict) => verdict === mixedVerdict))
    return ["brought the battery back to full density, read after the acid was mixed by hand"];
  if (reached.length > 0) return ["brought the battery back to full density"];
  const worst = shortfalls.find((shortfall) => shortfall.verdicts.some((verdict) => short.includes(verdict)));
  if (worst !== undefined) return [worst.clause(short.length === 1 ? "this test" : `any of ${short.length} tests`)];
  return verdicts.includes("cannot be read") ? ["full density cannot be read on this sealed battery"] : [];
}

/** Doubts of the checks that an instrument showed what was there, and no more than a slip in a record. */
const instrumentDoubts: readonly string[] = [
  "log-readings",
  "log-thousandfold",
  "log-sign",
  "log-sign-flip",
  "log-impossible",
  "log-frozen",
  "log-power",
  "log-charge",
  "log-coarse",
  "reading-voltage",
];

function isInDoubt({ doubts, recordings }: JudgedTest): boolean {
  return [...doubts, ...recordings.flatMap((recording) => recording.doubts)].some(({ id }) => instrumentDoubts.includes(id));
}

function aboutInstruments(tests: readonly JudgedTest[]): string[] {
  const doubted = tests.filter(isInDoubt).length;
  const isHydrometerOff = tests.some(({ findings }) =>
    findings.some(({ id, verdict }) => id === "cross-examination" && verdict.includes("hydrometer reads off")),
  );
  return [
    ...(doubted === 0 ? [] : [`what an instrument showed is in doubt${inSome(doubted, tests.length)}`]),
    ...(isHydrometerOff ? ["the hydrometer probably reads off"] : []),
  ];
}

/** Weights from the worst. */
const gravity: readonly Finding["weight"][] = ["bad", "caution", "unsure", "good", "note", "untested"];
/** Findings about what the charger does to a battery that stays on it: a caution there outweighs all that was met. */
const leftOnFindings: readonly string[] = ["float-window", "letting-go", "water"];

function weigh(modes: readonly JudgedMode[]): Finding["weight"] {
  const tests = modes.flatMap((mode) => mode.tests);
  const findings = tests.flatMap((test) => test.findings);
  const claims = tests.flatMap((test) => test.claims);
  const main = claims.filter(({ id }) => id === "claim-current" || id === "claim-voltage");
  const isAnyMissed =
    claims.some((claim) => claim.id !== "claim-characteristic" && isMissed(claim)) ||
    modes.some((mode) => aboutCharacteristic(mode.tests).length > 0);
  if (isAnyMissed || findings.some(({ weight }) => weight === "bad")) return "bad";
  const isWarned =
    findings.some(({ id, weight }) => weight === "caution" && leftOnFindings.includes(id)) ||
    modes.some(({ season }) => leftOnOf([], season).warning !== null) ||
    tests.some(isInDoubt);
  const [target] = findings
    .filter(({ id }) => id === "target-density")
    .map(({ weight }) => weight)
    .sort((a, b) => gravity.indexOf(a) - gravity.indexOf(b));
  if (target === "good" && !isWarned && modes.every((mode) => isEveryMainMet(mode))) return "good";
  if (isWarned || findings.some(({ weight }) => weight === "caution")) return "caution";
  return target === "untested" && main.every(({ outcome }) => outcome === "not put to the test") ? "untested" : "unsure";
}

/** Whether some test of the mode shows each of its main claims met: a test that could not tell takes nothing from one that could. */
function isEveryMainMet({ tests }: JudgedMode): boolean {
  return ["claim-current", "claim-voltage"].every((id) => {
    const telling = tellingClaim(tests, id);
    return telling === undefined || telling.claim.outcome === "meets";
  });
}

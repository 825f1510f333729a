/**
 * The six figures that leave the site on a card, in an embed and in quotations: three promises of the label, and three that tell the way
 * to full density. Each comes with its unit and condition; what cannot be told or was not tried is among them, so that no verdict can be
 * cropped to its better half.
 *
 * A charger has modes and tests, a card has room for one of each. What is shown is always the least favourable, and the others are named.
 */
import type { Figure } from "../../nouns/figure.ts";
import type { JudgedClaim, Outcome } from "../../nouns/finding.ts";
import { formatFigure, formatStated } from "../../units/format.ts";
import { figureFinder } from "../figure-finder.ts";
import { chargerPath, findingAnchor, testPath } from "../links.ts";
import type { ChargerResult, TestResult } from "../results.ts";

export type Headline = {
  /** Names it within the charger: "claim-current", "hours-to-target". */
  readonly id: string;
  readonly label: string;
  /** What was promised, with unit; null where nothing was, or where there is nothing to promise. */
  readonly claimed: string | null;
  /** The value with unit and interval; null where it is absent. */
  readonly text: string | null;
  readonly absent: { readonly kind: string; readonly why: string } | null;
  /** The judgement: `kind` draws the mark, `words` say it. */
  readonly outcome: { readonly kind: string; readonly words: string } | null;
  readonly condition: string;
  /** What other modes of the charger say; null where there are none. */
  readonly others: string | null;
  /** Names the figure in the results, as test/of#id. */
  readonly reference: string;
  /** The page and place that show it with its evidence. */
  readonly path: string;
};

export type Headlines = {
  readonly promises: readonly Headline[];
  /** The condition of all promises, where they share one. */
  readonly promisesCondition: string | null;
  readonly way: readonly Headline[];
  /** Which test the way is of, and what the others were. */
  readonly wayCondition: string;
  readonly wayOthers: string | null;
};

/** Picks and words the six figures of a charger. A charger without tests gives six absent ones. */
export function headlinesOf(charger: ChargerResult, tests: readonly TestResult[]): Headlines {
  const hardest = hardestTest(tests);
  const promises = [
    promise(charger, tests, "claim-current", "Output current"),
    promise(charger, tests, "claim-voltage", "Voltage limit"),
    leftConnected(charger, tests),
  ];
  const conditions = [...new Set(promises.filter(({ outcome }) => outcome !== null).map(({ condition }) => condition))];
  return {
    promises,
    promisesCondition: conditions.length === 1 ? (conditions[0] ?? null) : null,
    way: wayFigures.map(({ id, label }) => figureHeadline(charger, hardest, id, label)),
    wayCondition: hardest === undefined ? "no test is published" : conditionOf(hardest),
    wayOthers: otherTests(tests, hardest),
  };
}

const wayFigures = [
  { id: "connections-to-target", label: "Connections to full" },
  { id: "hours-to-target", label: "Hours to full" },
  { id: "cost-per-result", label: "Cost of one battery brought to full" },
] as const;

/** Worst first, as on the charger's own page: the test that says otherwise outweighs the rest. */
const gravity: readonly Outcome[] = ["above", "short of", "meets", "cannot tell", "not put to the test"];

/** Outcomes stand alone on a card, so they say of what. */
const outcomeWords: Readonly<Record<Outcome, string>> = {
  meets: "meets the claim",
  "short of": "short of the claim",
  above: "above the claim",
  "cannot tell": "cannot tell",
  "not put to the test": "not put to the test",
};

type ClaimOfMode = { readonly mode: string; readonly claim: JudgedClaim };

function claimsOf(charger: ChargerResult, id: string): ClaimOfMode[] {
  return charger.modes
    .flatMap((mode) => mode.claims.filter((claim) => claim.id === id).map((claim) => ({ mode: mode.name, claim })))
    .sort((a, b) => gravity.indexOf(a.claim.outcome) - gravity.indexOf(b.claim.outcome));
}

function promise(charger: ChargerResult, tests: readonly TestResult[], id: string, label: string): Headline {
  const [worst, ...rest] = claimsOf(charger, id);
  if (worst !== undefined) return claimHeadline(charger, tests, label, worst, rest);
  return nothing(charger, id, label, { kind: "not stated", why: "the maker states none that could be judged" });
}

function claimHeadline(
  charger: ChargerResult,
  tests: readonly TestResult[],
  label: string,
  { mode, claim }: ClaimOfMode,
  rest: readonly ClaimOfMode[],
): Headline {
  const measured = claim.measured === null ? claim.measuredWords : formatFigure({ ...claim, value: claim.measured, absent: null });
  const text = measured !== null && claim.id === "claim-season" ? `holds ${measured}` : measured;
  const test = testOf(tests, claim.figure ?? undefined);
  const stated = claim.claimed === null ? claim.claimedWords : formatStated(claim.claimed, claim.unit);
  const found = claim.figure === null ? undefined : figureFinder(tests, charger)(claim.figure);
  return {
    id: claim.id,
    label,
    claimed: stated === null ? null : claim.claimed === null ? `“${stated}” (${claim.claimedFrom})` : `${stated} (${claim.claimedFrom})`,
    text,
    absent: text === null ? { kind: claim.outcome === "not put to the test" ? claim.outcome : "not measured", why: claim.why } : null,
    outcome: { kind: claim.outcome, words: outcomeWords[claim.outcome] },
    condition: test === undefined ? `mode “${mode}”` : `mode “${mode}”, on ${batteryWords(test)}`,
    others: rest.length === 0 ? null : rest.map((other) => `mode “${other.mode}”: ${other.claim.outcome}`).join("; "),
    reference: claim.figure ?? `${charger.id}#${claim.id}`,
    path: found ?? `${chargerPath(charger.id)}#claims`,
  };
}

/** Whether it may stay connected: the promise where one was made, unless a finding is graver than what came of the promise. */
function leftConnected(charger: ChargerResult, tests: readonly TestResult[]): Headline {
  const label = "Left connected";
  const [claim, ...rest] = claimsOf(charger, "claim-season");
  const finding = ["letting-go", "float-window"]
    .map((id) => charger.findings.find((candidate) => candidate.id === id))
    .find((candidate) => candidate !== undefined);
  const isGrave = finding?.weight === "bad" || finding?.weight === "caution";
  const isBroken = claim?.claim.outcome === "above" || claim?.claim.outcome === "short of";
  if (claim !== undefined && (isBroken || !isGrave)) return claimHeadline(charger, tests, label, claim, rest);
  if (finding === undefined)
    return nothing(charger, "claim-season", label, { kind: "not put to the test", why: "no test tells what it does when left connected" });
  const [reference] = finding.figures;
  const test = testOf(tests, reference);
  const figure = test?.figures.find((candidate) => candidate.id === "holding-voltage");
  return {
    id: finding.id,
    label,
    claimed: claim === undefined || claim.claim.claimedWords === null ? null : `“${claim.claim.claimedWords}” (${claim.claim.claimedFrom})`,
    text: figure === undefined || figure.value === null ? null : `holds ${formatFigure(figure)}`,
    absent:
      figure !== undefined && figure.value !== null
        ? null
        : { kind: figure?.absent?.kind ?? "not measured", why: figure?.absent?.why ?? finding.sentence },
    outcome: { kind: finding.weight, words: finding.verdict },
    condition: test === undefined ? "as tested" : `mode “${test.mode.name}”, on ${batteryWords(test)}`,
    others: null,
    reference: reference ?? `${charger.id}#${finding.id}`,
    path: `${chargerPath(charger.id)}#${findingAnchor(finding.id)}`,
  };
}

/** The test that a reference such as "<test>/of#id" names; where there is only one test, that is the one. */
function testOf(tests: readonly TestResult[], reference: string | undefined): TestResult | undefined {
  return tests.length === 1 ? tests[0] : tests.find(({ id }) => reference?.startsWith(`${id}/`));
}

function figureHeadline(charger: ChargerResult, test: TestResult | undefined, id: string, label: string): Headline {
  const figure = test?.figures.find((candidate) => candidate.id === id);
  if (test === undefined || figure === undefined) {
    const why = test === undefined ? "no test of this charger is published" : "this test gives no such figure";
    return nothing(charger, id, label, { kind: "not measured", why });
  }
  return {
    id,
    label,
    claimed: null,
    text: figure.value === null ? null : `${formatFigure(figure)}${basisWords(figure)}`,
    absent: figure.absent,
    outcome: null,
    condition: conditionOf(test),
    others: null,
    reference: `${test.id}/${figure.of}#${figure.id}`,
    path: figureFinder([test], charger)(`${test.id}/${figure.of}#${figure.id}`) ?? testPath(test.id),
  };
}

const basisWords = ({ basis }: Figure): string => (basis === "measured" ? "" : `, ${basis}`);

function nothing(charger: ChargerResult, id: string, label: string, absent: { kind: string; why: string }): Headline {
  return {
    id,
    label,
    claimed: null,
    text: null,
    absent,
    outcome: null,
    condition: "all modes",
    others: null,
    reference: `${charger.id}#${id}`,
    path: chargerPath(charger.id),
  };
}

/** The less is known of a way to the target, or the longer it took, the harder the test was on the charger. */
const hardness: readonly TestResult["status"][] = ["abandoned", "not reached", "not known", "reached", "no target"];

/**
 * The test that is hardest on a charger: given up or not reached before reached, then the most hours; the first of equals.
 * A rule, so that nobody chooses the test that flatters. undefined where there is none.
 */
export function hardestTest(tests: readonly TestResult[]): TestResult | undefined {
  const hours = (test: TestResult): number => test.figures.find(({ id }) => id === "hours-to-target")?.value ?? Number.POSITIVE_INFINITY;
  const [hardest] = [...tests].sort((a, b) => {
    const byStatus = hardness.indexOf(a.status) - hardness.indexOf(b.status);
    return byStatus !== 0 || hours(a) === hours(b) ? byStatus : hours(b) - hours(a);
  });
  return hardest;
}

const statusWords: Readonly<Record<TestResult["status"], string>> = {
  reached: "full density reached",
  "not reached": "full density not reached",
  "not known": "not known whether full density was reached",
  abandoned: "given up before full density",
  "no target": "no density to reach",
};

function conditionOf(test: TestResult): string {
  const target = test.target === null ? "" : `, to ${formatStated(test.target.densityAt25C, "kg/l")} at ${formatStated(25, "°C")}`;
  return `mode “${test.mode.name}”, on ${batteryWords(test)}${target}: ${statusWords[test.status]}`;
}

const batteryWords = ({ battery }: TestResult): string =>
  `${battery.name}, ${formatStated(battery.capacityAh, "Ah")}, ${battery.construction.replace("-", " ")}`;

function otherTests(tests: readonly TestResult[], shown: TestResult | undefined): string | null {
  const others = tests.filter((test) => test !== shown);
  if (others.length === 0) return null;
  const counts = hardness.flatMap((status) => {
    const count = others.filter((test) => test.status === status).length;
    return count === 0 ? [] : [`${statusWords[status]} (${count})`];
  });
  return `The hardest of ${tests.length} tests is shown. The others: ${counts.join(", ")}.`;
}

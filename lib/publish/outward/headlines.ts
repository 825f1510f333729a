/**
 * The six figures that leave the site on a card, in an embed and in quotations: three promises of the label, and three that tell the way
 * to full density. Each comes with its unit and condition; what cannot be told or was not tried is among them, so that no verdict can be
 * cropped to its better half.
 *
 * A charger has modes and tests, a card has room for one of each. What is shown is always the least favourable, and the others are named.
 */
import type { Figure } from "../../nouns/figure.ts";
import type { JudgedClaim, Outcome } from "../../nouns/finding.ts";
import { figureFinder } from "../figure-finder.ts";
import { chargerPath, findingAnchor, testPath } from "../links.ts";
import { said, type Told, tell } from "../pages/speech.tsx";
import type { ChargerResult, TestResult } from "../results.ts";
import type { Words } from "../words/index.ts";
import { wordFor } from "../words/word-for.ts";
import type { OutwardSpeech } from "./outward-speech.ts";

export type Headline = {
  /** Names it within the charger: "claim-current", "hours-to-target". */
  readonly id: string;
  readonly label: string;
  /** What was promised, with unit; null where nothing was, or where there is nothing to promise. */
  readonly claimed: string | null;
  /** The value with unit and interval; null where it is absent. */
  readonly text: string | null;
  readonly absent: AbsentHeadline | null;
  /** The judgement: `kind` draws the mark, `id` names it in the results, `words` say it. */
  readonly outcome: ({ readonly kind: string; readonly id: string } & Told) | null;
  readonly condition: string;
  /** What other modes of the charger say; null where there are none. */
  readonly others: string | null;
  /** Names the figure in the results, as test/of#id. */
  readonly reference: string;
  /** The page and place that show it with its evidence. */
  readonly path: string;
};

type AbsentHeadline = { readonly kind: keyof Words["marks"]["absences"]; readonly why: Told };

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
export function headlinesOf(charger: ChargerResult, tests: readonly TestResult[], speech: OutwardSpeech): Headlines {
  const { headlines: words } = speech.outward;
  const hardest = hardestTest(tests);
  const promises = [
    promise(charger, tests, "claim-current", words.current, speech),
    promise(charger, tests, "claim-voltage", words.voltage, speech),
    leftConnected(charger, tests, speech),
  ];
  const conditions = [...new Set(promises.filter(({ outcome }) => outcome !== null).map(({ condition }) => condition))];
  return {
    promises,
    promisesCondition: conditions.length === 1 ? (conditions[0] ?? null) : null,
    way: wayFigures.map(({ id, label }) => figureHeadline(charger, hardest, id, words[label], speech)),
    wayCondition: hardest === undefined ? words.noTest : conditionOf(hardest, speech),
    wayOthers: otherTests(tests, hardest, speech),
  };
}

const wayFigures = [
  { id: "connections-to-target", label: "connections" },
  { id: "hours-to-target", label: "hours" },
  { id: "cost-per-result", label: "cost" },
] as const;

/** Worst first, as on the charger's own page: the test that says otherwise outweighs the rest. */
const gravity: readonly Outcome[] = ["above", "short of", "meets", "cannot tell", "not put to the test"];

type ClaimOfMode = { readonly mode: string; readonly claim: JudgedClaim };

function claimsOf(charger: ChargerResult, id: string): ClaimOfMode[] {
  return charger.modes
    .flatMap((mode) => mode.claims.filter((claim) => claim.id === id).map((claim) => ({ mode: mode.name, claim })))
    .sort((a, b) => gravity.indexOf(a.claim.outcome) - gravity.indexOf(b.claim.outcome));
}

function promise(charger: ChargerResult, tests: readonly TestResult[], id: string, label: string, speech: OutwardSpeech): Headline {
  const [worst, ...rest] = claimsOf(charger, id);
  if (worst !== undefined) return claimHeadline(charger, tests, label, worst, rest, speech);
  return nothing(charger, id, label, { kind: "not stated", why: { words: speech.outward.headlines.noClaim } }, speech);
}

function claimHeadline(
  charger: ChargerResult,
  tests: readonly TestResult[],
  label: string,
  { mode, claim }: ClaimOfMode,
  rest: readonly ClaimOfMode[],
  speech: OutwardSpeech,
): Headline {
  const { formats, marks } = speech;
  const { headlines: words } = speech.outward;
  const measured =
    claim.measured !== null
      ? formats.formatFigure({ ...claim, value: claim.measured, absent: null })
      : claim.measuredWords === null
        ? null
        : said(speech, claim.measuredWords);
  const text = measured !== null && claim.id === "claim-season" ? words.holds(measured) : measured;
  const test = testOf(tests, claim.figure ?? undefined);
  const stated = claim.claimed === null ? claim.claimedWords : formats.formatStated(claim.claimed, claim.unit);
  const found = claim.figure === null ? undefined : figureFinder(tests, charger)(claim.figure);
  return {
    id: claim.id,
    label,
    claimed:
      stated === null ? null : `${claim.claimed === null ? marks.quoted(stated) : stated} (${wordFor(marks.sources, claim.claimedFrom)})`,
    text,
    absent:
      text === null
        ? { kind: claim.outcome === "not put to the test" ? claim.outcome : "not measured", why: tell(speech, claim.why) }
        : null,
    outcome: { kind: claim.outcome, id: claim.outcome, words: words.outcomes[claim.outcome] },
    condition: test === undefined ? words.mode(mode) : words.modeOn(mode, batteryWords(test, speech)),
    others: rest.length === 0 ? null : rest.map((other) => words.modeOutcome(other.mode, marks.outcomes[other.claim.outcome])).join("; "),
    reference: claim.figure ?? `${charger.id}#${claim.id}`,
    path: found ?? `${chargerPath(charger.id)}#claims`,
  };
}

/** Whether it may stay connected: the promise where one was made, unless a finding is graver than what came of the promise. */
function leftConnected(charger: ChargerResult, tests: readonly TestResult[], speech: OutwardSpeech): Headline {
  const { formats, marks } = speech;
  const { headlines: words } = speech.outward;
  const label = words.leftConnected;
  const [claim, ...rest] = claimsOf(charger, "claim-season");
  const finding = ["letting-go", "float-window"]
    .map((id) => charger.findings.find((candidate) => candidate.id === id))
    .find((candidate) => candidate !== undefined);
  const isGrave = finding?.weight === "bad" || finding?.weight === "caution";
  const isBroken = claim?.claim.outcome === "above" || claim?.claim.outcome === "short of";
  if (claim !== undefined && (isBroken || !isGrave)) return claimHeadline(charger, tests, label, claim, rest, speech);
  if (finding === undefined)
    return nothing(charger, "claim-season", label, { kind: "not put to the test", why: { words: words.notLeftOn } }, speech);
  const [reference] = finding.figures;
  const test = testOf(tests, reference);
  const figure = test?.figures.find((candidate) => candidate.id === "holding-voltage");
  return {
    id: finding.id,
    label,
    claimed:
      claim === undefined || claim.claim.claimedWords === null
        ? null
        : `${marks.quoted(claim.claim.claimedWords)} (${wordFor(marks.sources, claim.claim.claimedFrom)})`,
    text: figure === undefined || figure.value === null ? null : words.holds(formats.formatFigure(figure)),
    absent:
      figure !== undefined && figure.value !== null
        ? null
        : { kind: figure?.absent?.kind ?? "not measured", why: tell(speech, figure?.absent?.why ?? finding.sentence) },
    outcome: { kind: finding.weight, id: finding.verdict, ...tell(speech, finding.verdict) },
    condition: test === undefined ? words.asTested : words.modeOn(test.mode.name, batteryWords(test, speech)),
    others: null,
    reference: reference ?? `${charger.id}#${finding.id}`,
    path: `${chargerPath(charger.id)}#${findingAnchor(finding.id)}`,
  };
}

/** The test that a reference such as "<test>/of#id" names; where there is only one test, that is the one. */
function testOf(tests: readonly TestResult[], reference: string | undefined): TestResult | undefined {
  return tests.length === 1 ? tests[0] : tests.find(({ id }) => reference?.startsWith(`${id}/`));
}

function figureHeadline(charger: ChargerResult, test: TestResult | undefined, id: string, label: string, speech: OutwardSpeech): Headline {
  const { headlines: words } = speech.outward;
  const figure = test?.figures.find((candidate) => candidate.id === id);
  if (test === undefined || figure === undefined) {
    const why = test === undefined ? words.noTestOfCharger : words.noFigure;
    return nothing(charger, id, label, { kind: "not measured", why: { words: why } }, speech);
  }
  return {
    id,
    label,
    claimed: null,
    text: figure.value === null ? null : `${speech.formats.formatFigure(figure)}${basisWords(figure, speech)}`,
    absent: figure.absent === null ? null : { kind: figure.absent.kind, why: tell(speech, figure.absent.why) },
    outcome: null,
    condition: conditionOf(test, speech),
    others: null,
    reference: `${test.id}/${figure.of}#${figure.id}`,
    path: figureFinder([test], charger)(`${test.id}/${figure.of}#${figure.id}`) ?? testPath(test.id),
  };
}

const basisWords = ({ basis }: Figure, { marks }: OutwardSpeech): string => (basis === "measured" ? "" : `, ${marks.bases[basis]}`);

function nothing(charger: ChargerResult, id: string, label: string, absent: AbsentHeadline, { outward }: OutwardSpeech): Headline {
  return {
    id,
    label,
    claimed: null,
    text: null,
    absent,
    outcome: null,
    condition: outward.headlines.allModes,
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

function conditionOf(test: TestResult, speech: OutwardSpeech): string {
  const { formats, outward } = speech;
  const { headlines: words } = outward;
  const target =
    test.target === null ? "" : words.toTarget(formats.formatStated(test.target.densityAt25C, "kg/l"), formats.formatStated(25, "°C"));
  return `${words.modeOn(test.mode.name, batteryWords(test, speech))}${target}: ${words.statuses[test.status]}`;
}

const batteryWords = ({ battery }: TestResult, { formats, outward }: OutwardSpeech): string =>
  outward.headlines.battery(
    battery.name,
    formats.formatStated(battery.capacityAh, "Ah"),
    wordFor(outward.headlines.constructions, battery.construction),
  );

function otherTests(tests: readonly TestResult[], shown: TestResult | undefined, { outward }: OutwardSpeech): string | null {
  const { headlines: words } = outward;
  const others = tests.filter((test) => test !== shown);
  if (others.length === 0) return null;
  const counts = hardness.flatMap((status) => {
    const count = others.filter((test) => test.status === status).length;
    return count === 0 ? [] : [words.counted(words.statuses[status], count)];
  });
  return words.hardest(tests.length, counts);
}

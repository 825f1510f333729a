/** Tells the proving ground's results: totals, a table of behaviours by recorders, and every failure with what was true and found. */
import type { CaseResult } from "./case.ts";

/** How the cases did together. */
export type Totals = {
  readonly boundaries: number;
  readonly boundaryHits: number;
  readonly kinds: number;
  readonly kindHits: number;
  readonly falseBoundaries: number;
  readonly endings: { readonly right: number; readonly unknown: number; readonly wrong: number };
};

/** Adds up verdicts; all zero for no cases. */
export function total(cases: readonly CaseResult[]): Totals {
  const verdicts = cases.map(({ verdict }) => verdict);
  const boundaries = verdicts.flatMap((verdict) => verdict.boundaries);
  const kinds = verdicts.flatMap((verdict) => verdict.kinds);
  const endings = (kind: "right" | "unknown" | "wrong"): number => verdicts.filter(({ ending }) => ending === kind).length;
  return {
    boundaries: boundaries.length,
    boundaryHits: boundaries.filter(({ isHit }) => isHit).length,
    kinds: kinds.length,
    kindHits: kinds.filter(({ isHit }) => isHit).length,
    falseBoundaries: verdicts.reduce((sum, { falseBoundariesS }) => sum + falseBoundariesS.length, 0),
    endings: { right: endings("right"), unknown: endings("unknown"), wrong: endings("wrong") },
  };
}

/** Totals as one sentence. */
export function tellTotals(totals: Totals): string {
  const { endings } = totals;
  return (
    `Boundaries right: ${share(totals.boundaryHits, totals.boundaries)}. Kinds right: ${share(totals.kindHits, totals.kinds)}. ` +
    `False boundaries: ${totals.falseBoundaries}. Endings: ${endings.right} right, ${endings.unknown} unknown, ${endings.wrong} wrong.`
  );
}

function share(hits: number, of: number): string {
  return of === 0 ? "none asked for" : `${hits} of ${of} (${((100 * hits) / of).toFixed(1)} %)`;
}

/** Table: a row a behaviour, a column a recorder; in each cell boundaries, kinds, false boundaries and the ending. */
export function tellTable(cases: readonly CaseResult[]): string[] {
  const behaviours = [...new Set(cases.map((one) => one.behaviour))];
  const recorders = [...new Set(cases.map((one) => one.recorder))];
  const cell = (behaviour: string, recorder: string): string => {
    const one = cases.find((candidate) => candidate.behaviour === behaviour && candidate.recorder === recorder);
    return one === undefined ? "" : tellCell(one);
  };
  return [
    `| behaviour | ${recorders.join(" | ")} | boundaries | kinds |`,
    `|---|${recorders.map(() => "---|").join("")}---|---|`,
    ...behaviours.map((behaviour) => {
      const sums = total(cases.filter((one) => one.behaviour === behaviour));
      const cells = recorders.map((recorder) => cell(behaviour, recorder)).join(" | ");
      return `| ${behaviour} | ${cells} | ${sums.boundaryHits}/${sums.boundaries} | ${sums.kindHits}/${sums.kinds} |`;
    }),
    `| **all** | ${recorders.map((recorder) => tellSum(cases.filter((one) => one.recorder === recorder))).join(" | ")} | | |`,
  ];
}

function tellCell(one: CaseResult): string {
  const { boundaries, kinds, falses, ending } = { ...counts(one), ending: one.verdict.ending };
  return `${boundaries} · ${kinds}${falses} · ${ending}`;
}

function counts({ verdict }: CaseResult): { boundaries: string; kinds: string; falses: string } {
  const hit = (of: readonly { isHit: boolean }[]): string => `${of.filter(({ isHit }) => isHit).length}/${of.length}`;
  return {
    boundaries: hit(verdict.boundaries),
    kinds: hit(verdict.kinds),
    falses: verdict.falseBoundariesS.length === 0 ? "" : ` +${verdict.falseBoundariesS.length}`,
  };
}

function tellSum(cases: readonly CaseResult[]): string {
  const sums = total(cases);
  return `${sums.boundaryHits}/${sums.boundaries} · ${sums.kindHits}/${sums.kinds} +${sums.falseBoundaries}`;
}

/** Every case that is not wholly right, in words. */
export function tellFailures(cases: readonly CaseResult[]): string[] {
  return cases.filter((one) => !isRight(one)).flatMap((one) => [...tellCase(one), ""]);
}

function isRight({ verdict }: CaseResult): boolean {
  return (
    verdict.ending !== "wrong" &&
    verdict.falseBoundariesS.length === 0 &&
    [...verdict.boundaries, ...verdict.kinds].every(({ isHit }) => isHit)
  );
}

/** One case: what missed, then true and found stages. */
export function tellCase(one: CaseResult): string[] {
  const { verdict, truth, recording, endedBy } = one;
  const missed = [
    ...verdict.boundaries
      .filter(({ isHit }) => !isHit)
      .map(({ atS, nearestS }) => `boundary at ${hours(atS)} not found (nearest ${hours(nearestS)})`),
    ...verdict.kinds.filter(({ isHit }) => !isHit).map((kind) => `${kind.truth.kind} read as ${kind.found}`),
    ...(verdict.falseBoundariesS.length === 0 ? [] : [`false boundaries at ${listed(verdict.falseBoundariesS.map(hours))}`]),
    ...(verdict.ending === "right" ? [] : [`ended by ${endedBy.truth}, read as ${endedBy.found}`]),
  ];
  return [
    `- **${one.behaviour}:${one.recorder}**: ${missed.length === 0 ? "all right" : missed.join("; ")}`,
    `  - true: ${listed(truth.map((stage) => `${stage.kind}${stage.isAsked ? "" : " (not asked)"} ${hours(stage.startS)} to ${hours(stage.endS)}`))}`,
    `  - found: ${listed(recording.stages.map((stage) => `${stage.kind} ${hours(stage.startS)} to ${hours(stage.endS)}`))}`,
  ];
}

/** A list cut short where it is long. */
function listed(items: readonly string[]): string {
  const most = 14;
  return items.length <= most ? items.join(", ") : `${items.slice(0, most).join(", ")} and ${items.length - most} more`;
}

/** Hours with their minutes' hundredths: 3.25 h. */
function hours(seconds: number): string {
  return Number.isNaN(seconds) ? "none" : `${(seconds / 3600).toFixed(3)} h`;
}

/** docs/calibration.md and its plots, written from scored campaigns. */
import { coverage, mistakes, placedOf, shareRight } from "./campaigns.ts";
import { type CampaignKind, campaignKinds, kindNames } from "./kinds.ts";
import { type CoverageCurve, drawCoverage } from "./plot.ts";
import { type Quantity, quantities, type Score } from "./score.ts";
import type { Placement } from "./self-consistency.ts";
import { chiSquareOfUniform, placedQuantities } from "./self-consistency.ts";

const levels = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95];
const percent = (share: number): string => (Number.isNaN(share) ? "–" : `${(100 * share).toFixed(0)} %`);
const onePlace = (share: number): string => (Number.isNaN(share) ? "–" : `${(100 * share).toFixed(1)} %`);

/** Quantities that may truly be nought, and are then counted apart. */
const mayBeNought: readonly Quantity[] = ["unrecorded charge", "top below mean"];

/** A table, one row a kind: share right, and coverage of the 90 % intervals. */
export function kindTable(scores: readonly Score[]): string {
  const head = ["kind of campaign", "true cause", "most probable is true", ...quantities];
  const row = (name: string, cause: string, some: readonly Score[]): string[] => [
    name,
    cause,
    `${percent(shareRight(some))} of ${some.length}`,
    ...quantities.map((quantity) => percent(coverage(placedOf(some, quantity, false), 0.9))),
  ];
  const ofKind = (kind: CampaignKind): Score[] => scores.filter((score) => score.kind === kind);
  return table(head, [...kindNames.map((kind) => row(kind, campaignKinds[kind], ofKind(kind))), row("**all**", "", scores)]);
}

/** A table of coverage at 50, 90 and 95 %, with truths that are nought and without them. */
export function coverageTable(scores: readonly Score[]): string {
  const rows = quantities.flatMap((quantity) => {
    const line = (name: string, onlySomething: boolean): string[] => {
      const placed = placedOf(scores, quantity, onlySomething);
      return [name, String(placed.length), ...[0.5, 0.9, 0.95].map((level) => onePlace(coverage(placed, level)))];
    };
    return mayBeNought.includes(quantity)
      ? [line(`${quantity}, all`, false), line(`${quantity}, where there was some`, true)]
      : [line(quantity, false)];
  });
  return table(["quantity", "truths", "in the 50 % interval", "in the 90 % interval", "in the 95 % interval"], rows);
}

/** What was mistaken for what, in words. */
export function mistakeList(scores: readonly Score[]): string {
  const lines = kindNames.flatMap((kind) => {
    const wrong = mistakes(scores.filter((score) => score.kind === kind));
    return wrong.length === 0 ? [] : [`- ${kind}: ${wrong.map(([taken, count]) => `${count} × ${taken}`).join(", ")}`];
  });
  return lines.length === 0 ? "None." : lines.join("\n");
}

/** How honest the probabilities are: of the combinations called so probable, how many were true. */
export function honestyTable(said: readonly { readonly probability: number; readonly isRight: boolean }[]): string {
  const edges = [0, 0.5, 0.7, 0.85, 0.95, 1.0001];
  const rows = edges.slice(1).map((high, i) => {
    const low = edges[i] ?? 0;
    const group = said.filter(({ probability }) => probability >= low && probability < high);
    const mean = group.reduce((sum, { probability }) => sum + probability, 0) / group.length;
    return [
      `${percent(low)} to ${percent(Math.min(1, high))}`,
      String(group.length),
      percent(mean),
      percent(group.filter(({ isRight }) => isRight).length / group.length),
    ];
  });
  return table(["probability of the most probable", "cases", "said, on average", "was true"], rows);
}

/** Places of the truth under the model's own readings: chi-square against uniform in ten bins. */
export function selfConsistencyTable(placements: readonly Placement[]): string {
  const rows = Object.keys(placedQuantities).map((name) => {
    const places = placements.map(({ below }) => below[name] ?? Number.NaN);
    const bins = Array.from({ length: 10 }, (_, bin) => places.filter((place) => Math.min(9, Math.floor(place * 10)) === bin).length);
    return [name, bins.join(" "), chiSquareOfUniform(places, 10).toFixed(1)];
  });
  return table(["quantity", "truths in each tenth of the posterior", "chi-square, 9 degrees of freedom"], rows);
}

/** The plot of nominal against observed coverage, for the four quantities that are published first. */
export function coveragePlot(scores: readonly Score[], title: string): string {
  const curves = (["state of charge", "charge taken", "unrecorded charge", "top below mean"] as const).map((quantity): CoverageCurve => {
    const some = mayBeNought.includes(quantity);
    const placed = placedOf(scores, quantity, some);
    return { name: some ? `${quantity} *` : quantity, points: levels.map((level) => [level, coverage(placed, level)] as const) };
  });
  return drawCoverage(curves, title);
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  return [line(head), line(head.map(() => "---")), ...rows.map(line)].join("\n");
}

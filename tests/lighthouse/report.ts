/** Scores and weights as a page of docs, and what falls short of the goals. */
import { total, type Weight } from "./weigh.ts";

export const categories = ["performance", "accessibility", "best-practices", "seo"] as const;
type Category = (typeof categories)[number];

/** 0 to 100. */
export type Scores = Readonly<Record<Category, number>>;

/** The lowest score that will do. */
const goals: Scores = { performance: 99, accessibility: 100, "best-practices": 100, seo: 100 };

export type Measured = {
  readonly kind: string;
  /** From the site's root. */
  readonly path: string;
  readonly scores: Scores;
  /** Ids of audits that cost points. */
  readonly failed: readonly string[];
  readonly weight: Weight;
};

/** One line for each score below its goal; empty where all is well. */
export function shortfalls(measured: readonly Measured[]): string[] {
  return measured.flatMap(({ kind, path, scores, failed }) =>
    categories
      .filter((category) => scores[category] < goals[category])
      .map(
        (category) =>
          `${kind} (${path}): expected ${category} of ${goals[category]} at least, found ${scores[category]} ${failed.join(" ")}`,
      ),
  );
}

/** Kilobytes of 1000 bytes, to a tenth; nothing at all is a dash. */
const kilobytes = (bytes: number): string => (bytes === 0 ? "–" : (bytes / 1000).toFixed(1));

const rowOf = ({ kind, scores, weight }: Measured): string => {
  const weights = [weight.html, weight.svg, weight.css, weight.script, weight.data, weight.font, weight.other, total(weight)];
  return `| ${kind} | ${categories.map((category) => scores[category]).join(" | ")} | ${weights.map(kilobytes).join(" | ")} |`;
};

/**
 * docs/page-weights.md.
 * @param kinds all kinds of page, in the order of the table
 * @param before the page as it stands, which gives the rows of kinds that were not measured now; a kind in neither is left out
 */
export function report(kinds: readonly string[], measured: readonly Measured[], before: string, browserVersion: string): string {
  const rows = kinds.flatMap((kind) => {
    const now = measured.find((one) => one.kind === kind);
    return now === undefined ? before.split("\n").filter((line) => line.startsWith(`| ${kind} |`)) : [rowOf(now)];
  });
  return `# What pages weigh, and how they score

Written by \`npm run lighthouse\`: one page of each kind of the demo's site, of chargers and tests the heaviest. Scores are Lighthouse's, out of
100, the median of three runs with its own defaults (a phone with a slow connection, simulated) in Chromium ${browserVersion}, from a server that
compresses with gzip. The command fails below ${categories.map((category) => `${goals[category]} (${category})`).join(", ")}.

Scores of performance are times of the machine that measures, so whatever else it does lowers them, a page of a few kilobytes without any script
included: measure on a machine at rest, and measure a page again by its name before you believe a drop (\`npm run lighthouse -- charger\` replaces its
row alone). For the same reason the command is no part of \`npm test\`; weights are, in \`tests/pages/weights.test.ts\`.

Weights are kB (1000 bytes) after gzip of all that a first visit asks for, drawings inside the page counted apart from its text. There are no
web fonts and no pictures. What is fetched only on request is not in the table: the word search, once its box has the focus, and the log explorer.

| page | performance | accessibility | best practices | SEO | HTML | SVG | CSS | script | data | fonts | other | all |
|---|---|---|---|---|---|---|---|---|---|---|---|---|
${rows.join("\n")}
`;
}

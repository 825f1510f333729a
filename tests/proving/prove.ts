/**
 * The proving ground: twenty charger behaviours, each seen by six recorders, measured as the tool does and held against the truth.
 *
 *   npx tsx tests/proving/prove.ts                           totals, table and failures
 *   npx tsx tests/proving/prove.ts --write                   the same into docs/proving.md, with the totals of other seeds
 *   npx tsx tests/proving/prove.ts --only iuia[:noisy]       one behaviour, or one case, with every stage's reason
 *   npx tsx tests/proving/prove.ts --seed 7 --battery second other draws; the second battery alone
 */
import { writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { behaviours } from "./behaviours.ts";
import { type CaseResult, play, proveCase } from "./case.ts";
import { comparisonRules } from "./compare.ts";
import { electrochemicalPlant, type PlantMaker } from "./plant.ts";
import { recorders } from "./recorders.ts";
import { tellCase, tellFailures, tellTable, tellTotals, total } from "./report.ts";
import { circuitPlant } from "./second-battery.ts";

/** The seed of the published tables. */
export const publishedSeed = 1;

export type Choice = { readonly behaviour?: string | undefined; readonly recorder?: string | undefined };

/** Runs the chosen cases, in the order of the two lists; a name that is in neither list chooses none. */
export function prove(makePlant: PlantMaker, seed: number, choice: Choice = {}): CaseResult[] {
  return behaviours
    .filter(({ id }) => choice.behaviour === undefined || choice.behaviour === id)
    .flatMap((behaviour) => {
      const played = play(behaviour, makePlant, seed);
      return recorders
        .filter(({ id }) => choice.recorder === undefined || choice.recorder === id)
        .map((recorder) => proveCase(played, recorder));
    });
}

const batteries = [
  { id: "first", title: "The electrochemical battery", makePlant: electrochemicalPlant },
  { id: "second", title: "The circuit battery", makePlant: circuitPlant },
] as const;

/** Seeds whose totals alone are published, so that a method tuned to the first one shows. */
const otherSeeds = [2, 3, 4] as const;

function option(name: string): string | undefined {
  const at = process.argv.indexOf(`--${name}`);
  return at < 0 ? undefined : process.argv[at + 1];
}

function main(): void {
  const [behaviour, recorder] = option("only")?.split(":") ?? [];
  const seed = Number(option("seed") ?? publishedSeed);
  const chosen = batteries.filter(({ id }) => option("battery") === undefined || option("battery") === id);
  const sections = chosen.map(({ title, makePlant }) => ({ title, cases: prove(makePlant, seed, { behaviour, recorder }) }));
  if (behaviour !== undefined) {
    const lines = sections.flatMap(({ title, cases }) => [`## ${title}`, "", ...cases.flatMap(tellWithReasons), ""]);
    process.stdout.write(lines.join("\n"));
    return;
  }
  const isForDocs = process.argv.includes("--write");
  const text = [
    ...intro(seed),
    ...sections.flatMap(({ title, cases }) => tellTotalsOf(title, cases)),
    ...(isForDocs ? tellOtherSeeds() : []),
    ...sections.flatMap(({ title, cases }) => [`## What missed: ${title.toLowerCase()}`, "", ...tellFailures(cases)]),
  ].join("\n");
  if (isForDocs) {
    const project = path.join(path.dirname(fileURLToPath(import.meta.url)), "../..");
    writeFileSync(path.join(project, "docs/proving.md"), `${text.trimEnd()}\n`);
  }
  process.stdout.write(`${text}\n`);
}

function tellTotalsOf(title: string, cases: readonly CaseResult[]): string[] {
  return [`## ${title}`, "", tellTotals(total(cases)), "", ...tellTable(cases), ""];
}

function tellOtherSeeds(): string[] {
  const lines = otherSeeds.flatMap((seed) =>
    batteries.map(({ title, makePlant }) => `- ${title}, seed ${seed}: ${tellTotals(total(prove(makePlant, seed)))}`),
  );
  return ["## Other draws", "", ...lines, ""];
}

function tellWithReasons(one: CaseResult): string[] {
  return [...tellCase(one), ...one.recording.stages.map((stage) => `    - ${stage.kind}: ${stage.why}`)];
}

function intro(seed: number): string[] {
  return [
    "# The proving ground for stages and endings",
    "",
    `Made by \`npx tsx tests/proving/prove.ts --write\` (seed ${seed}). Twenty invented charger behaviours, each on a battery drawn by the seed,`,
    "each seen by six invented recorders; what the tool finds is held against what the charger did. Nothing here is a real device. The first",
    "battery is the generator's electrochemical one; the second is a plain circuit, to show a method that is tuned to the first.",
    "",
    "## Rules of comparison",
    "",
    ...comparisonRules.map((rule, index) => `${index + 1}. ${rule}`),
    "",
    "## Behaviours and recorders",
    "",
    ...behaviours.map(({ id, label }) => `- \`${id}\`: ${label}`),
    "",
    ...recorders.map(({ id, label, stopWords }) => `- \`${id}\` looks ${label}; it ${stopWords}`),
    "",
    "A cell reads: boundaries right/asked · kinds right/asked, with false boundaries behind a plus · ending.",
    "",
  ];
}

if (process.argv[1] === fileURLToPath(import.meta.url)) main();

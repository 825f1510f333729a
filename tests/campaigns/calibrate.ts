/**
 * npx tsx tests/campaigns/calibrate.ts [--seeds 1-4] [--held-out 11-14] [--campaigns 50] [--own 600] [--write]
 *
 * Scores generated campaigns, and readings that the model itself made, and prints the tables; --write puts them into docs/calibration.md
 * with its plots. Seeds given as held out are counted apart: nothing in lib/reconcile was chosen by them.
 */
import { writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { seededRandom } from "../generator/random.ts";
import { scoreCampaigns } from "./campaigns.ts";
import { coveragePlot, coverageTable, honestyTable, kindTable, mistakeList, selfConsistencyTable } from "./report.ts";
import type { Score } from "./score.ts";
import { placeOnce, plainDesign } from "./self-consistency.ts";

const { values } = parseArgs({
  options: {
    seeds: { type: "string", default: "1-4" },
    "held-out": { type: "string", default: "11-14" },
    campaigns: { type: "string", default: "50" },
    own: { type: "string", default: "600" },
    write: { type: "boolean", default: false },
  },
});

/** The seed of the readings that the model makes itself. */
const ownSeed = 7;

/** "1-4" or "3" as a list. */
function seedsOf(text: string): number[] {
  const [first = Number.NaN, last = first] = text.split("-").map(Number);
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}

function section(title: string, intro: string, scores: readonly Score[], plot: string): string {
  return [
    `## ${title}`,
    "",
    intro,
    "",
    kindTable(scores),
    "",
    "The columns on the right say how often the 90 % interval held the truth.",
    "",
    coverageTable(scores),
    "",
    `![Nominal against observed coverage: each curve should follow the diagonal](${plot})`,
    "",
    "\\* where there was some.",
    "",
    "Campaigns in which another combination was the most probable, by what it was taken for:",
    "",
    mistakeList(scores),
    "",
    honestyTable(scores.map(({ probabilityOfBest, isRight }) => ({ probability: probabilityOfBest, isRight }))),
    "",
  ].join("\n");
}

const count = Number(values.campaigns);
const developed = scoreCampaigns(seedsOf(values.seeds), count);
const heldOut = scoreCampaigns(seedsOf(values["held-out"]), count);
const random = seededRandom(ownSeed);
const own = Array.from({ length: Number(values.own) }, () => placeOnce(plainDesign, random));

const text = [
  "# How well the cross-examination is calibrated",
  "",
  "Written by `npx tsx tests/campaigns/calibrate.ts --write`; do not edit. What is examined, and how, is in [reconciliation.md](reconciliation.md).",
  "",
  "Campaigns come from the demo's own battery (`tests/generator/battery.ts`), which shares no code with the model under test: layers,",
  "surface charge, hard sulphate and gas are computed second by second. Batteries, chargers, instruments' errors and habits are drawn by",
  "chance. Each campaign is let through only if the generator's state shows that the intended cause is true and no other: for instance a",
  "top weaker than the mean by more than 0.010 kg/l for acid not mixed, and by less than 0.004 otherwise. So these are clear cases; in a",
  "shop causes come mixed and half-way, and the shares below are then lower. For the same reason the probabilities look too modest here:",
  "the model allows for half-way cases that no campaign holds. Against readings of its own making, further down, they are honest.",
  "",
  section(
    "Held out",
    `Seeds ${values["held-out"]}, ${count} campaigns a kind and seed. No prior and no line of the model was chosen by them.`,
    heldOut,
    "calibration-held-out.svg",
  ),
  section(
    "Developed on",
    `Seeds ${values.seeds}, ${count} campaigns a kind and seed. The priors were chosen with some of these campaigns in view.`,
    developed,
    "calibration.svg",
  ),
  "## The arithmetic alone",
  "",
  "Causes and unknowns are drawn from the priors, the model itself makes the readings, and the place of the truth in the posterior should",
  "be uniform (simulation-based calibration, Talts, Betancourt, Simpson, Vehtari and Gelman 2018). Nine degrees of freedom exceed 21.7 in",
  `one case of a hundred. ${own.length} draws, five visits each.`,
  "",
  selfConsistencyTable(own),
  "",
  honestyTable(own.map(({ probabilityOfBest, isRight }) => ({ probability: probabilityOfBest, isRight }))),
  "",
].join("\n");

process.stdout.write(text);
if (values.write) {
  const docs = new URL("../../docs/", import.meta.url);
  writeFileSync(new URL("calibration.md", docs), text);
  writeFileSync(new URL("calibration.svg", docs), coveragePlot(developed, "Coverage on the campaigns developed on"));
  writeFileSync(new URL("calibration-held-out.svg", docs), coveragePlot(heldOut, "Coverage on held-out campaigns"));
}

/** The README of a test's package: what it holds, what it does not show, how to check it, rebuild it and cite it. */
import type { TestResult } from "../results.ts";
import { type Citable, plainCitation } from "./citation.ts";

/** @returns Markdown that reads as plain text, lines as long as their sentences */
export function readMe(test: TestResult, citable: Citable): string {
  const { site, version } = citable;
  const paragraphs = [
    `# ${test.title}`,
    citable.invented ? `**Invented data.** ${test.inventedNote ?? "Nothing here was measured on a real product."}` : "",
    `Results of one test of ${test.charger.name}, mode "${test.mode.name}", on ${test.battery.name}, published by ${site.site.title}. Version ${version}, method version ${test.methodVersion}.`,
    "## What is in it",
    list([
      "`results.json`: every figure with unit, interval, method and evidence; `test.schema.json` describes its form",
      "`figures.csv`: the same figures as a table",
      "`data/`: the raw recordings, readings and records, byte for byte as they were handed in",
      "`datapackage.json`: all files with sizes and digests, after Data Package v2",
      "`CITATION.cff`: how to cite",
      "`SHA256SUMS`: digests of all files but itself",
    ]),
    "## What it does not show",
    list([...caveats(test), "One unit was tested unless the records say otherwise; how much units differ is not shown."]),
    "## To check it",
    "Run `sha256sum -c SHA256SUMS` in this folder. It shows that the files are those that were published, not that a reading was right.",
    "## To rebuild it",
    `This folder is a workspace. Version ${site.toolVersion} of ampwitness makes the same figures from it: \`npm run build -- --workspace DIR --out NEW-DIR\` in its source folder, with DIR this one.`,
    "## Licence",
    `Data and words: ${site.site.licence ?? "no licence is stated; ask the publisher"}.`,
    "## To cite it",
    plainCitation(citable),
    "Quote no verdict without its conditions, and compare only within one method version.",
    "## Caution",
    "Charging batteries give off hydrogen and hold acid; never charge a frozen battery. Whoever repeats a test follows the local code, the battery maker's sheet and a licensed person's judgement.",
  ];
  return `${paragraphs.filter((part) => part !== "").join("\n\n")}\n`;
}

const list = (items: readonly string[]): string => items.map((item) => `- ${item}`).join("\n");

/** What a reader must know before using the figures, in the words of the results. */
function caveats(test: TestResult): string[] {
  const absent = test.figures
    .filter((figure) => figure.absent !== null)
    .map((figure) => `${figure.label}: ${figure.absent?.kind ?? ""}, ${figure.absent?.why ?? ""}`);
  const open = test.claims
    .filter(({ outcome }) => outcome === "cannot tell" || outcome === "not put to the test")
    .map((claim) => `${claim.label}: ${claim.outcome}, ${claim.why}`);
  const doubts = test.doubts.map((doubt) => `Doubt at ${doubt.place}: expected ${doubt.expected}, found ${doubt.found}`);
  const excluded = test.excluded.map(({ what, why }) => `Left out: ${what}, ${why}`);
  return [...absent, ...open, ...doubts, ...excluded];
}

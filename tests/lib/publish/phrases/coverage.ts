/**
 * Prints which texts of the demo's and the sites' results, and of the documented doubts, the phrase book does not hold, with counts for each kind of field.
 *
 *   npx tsx tests/lib/publish/phrases/coverage.ts          demo without forecasts, and sites
 *   npx tsx tests/lib/publish/phrases/coverage.ts FOLDER   a built site's data/, and sites
 */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { phraseBook, translatePhrase } from "../../../../lib/publish/phrases/translate.ts";
import { kindOf, spoken, type Text, textsOf, unspoken } from "./fields.ts";
import { demoTexts, documentedDoubts, siteTexts } from "./sources.ts";

const [folder] = process.argv.slice(2);
const texts = [...(folder === undefined ? await demoTexts() : textsIn(folder)), ...siteTexts(), ...documentedDoubts()];
const lines: string[] = [];

for (const kind of spoken) {
  const different = [...new Set(texts.filter(({ field }) => kindOf(field) === kind).map(({ text }) => text))];
  const missing = different.filter((text) => translatePhrase(text, "pl") === undefined || translatePhrase(text, "de") === undefined);
  const share = different.length === 0 ? 1 : 1 - missing.length / different.length;
  lines.push(`${kind.name}: ${different.length - missing.length} of ${different.length} (${(100 * share).toFixed(1)} %)`);
  lines.push(...missing.map((text) => `  - ${text}`));
}

const unknown = [
  ...new Set(
    texts.filter(({ field }) => kindOf(field) === undefined && !unspoken.some((one) => one.test(field))).map(({ field }) => field),
  ),
];
lines.push(`fields that are neither spoken nor unspoken: ${unknown.length}`, ...unknown.map((field) => `  - ${field}`));

const entries = [...phraseBook().groups.values()].reduce((sum, { length }) => sum + length, 0);
lines.push(`${entries} phrases in ${phraseBook().groups.size} groups`);
process.stdout.write(`${lines.join("\n")}\n`);

function textsIn(data: string): Text[] {
  const read = (file: string): never => JSON.parse(readFileSync(path.join(data, file), "utf8")) as never;
  const all = (name: string): never[] =>
    readdirSync(path.join(data, name))
      .filter((file) => file.endsWith(".json"))
      .map((file) => read(path.join(name, file)));
  return textsOf({ index: read("index.json"), tests: all("tests"), chargers: all("chargers") });
}

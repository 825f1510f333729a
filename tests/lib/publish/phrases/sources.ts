/** Results to hold the phrase book against: the demo and the whole small sites. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Results } from "../../../../lib/publish/results.ts";
import { run } from "../../../../lib/run.ts";
import { noForecast } from "../../../no-forecast.ts";
import { caseNames, pathIn } from "../../../sites/cases.ts";
import { type Text, textsOf } from "./fields.ts";

/** Texts of the demo, measured anew; forecasts are left out unless they are asked for, since making them takes seconds each. */
export async function demoTexts(forecast = noForecast): Promise<Text[]> {
  const { results } = await run(fileURLToPath(new URL("../../../../", import.meta.url)), { forecast });
  if (results === undefined) throw new Error("the demo has no results");
  return textsOf(results);
}

/** Texts of the results that are kept beside the small sites. */
export function siteTexts(): Text[] {
  return caseNames.flatMap((name) => {
    const results = JSON.parse(readFileSync(pathIn(name, "results.json"), "utf8")) as Partial<Results>;
    return results.index === undefined
      ? []
      : textsOf({ index: results.index, tests: results.tests ?? [], chargers: results.chargers ?? [] });
  });
}

/** Texts of every doubt of docs/problems.md, which has one whole example for each: the demo and the sites meet few of them. */
export function documentedDoubts(): Text[] {
  const page = readFileSync(new URL("../../../../docs/problems.md", import.meta.url), "utf8");
  const examples = [...page.matchAll(/: doubt [\w-]+: expected (.+), found (.+)\n(?: {2}note: .+\n)* {2}mend: (.+)/g)];
  return examples.flatMap(([, expected = "", found = "", mend = ""]) => [
    { field: "test.doubts[].expected", text: expected },
    { field: "test.doubts[].found", text: found },
    { field: "test.doubts[].mend", text: mend },
  ]);
}

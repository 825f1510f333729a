/** Writes results.json and problems.txt of every case, or of those named: node --import tsx tests/sites/write-expected.ts [case …] */
import { writeFileSync } from "node:fs";
import { caseNames, pathIn, runCase } from "./cases.ts";

const wanted = process.argv.slice(2);
for (const name of wanted.length === 0 ? caseNames : wanted) {
  const { results, problems } = await runCase(name);
  writeFileSync(pathIn(name, "results.json"), results);
  writeFileSync(pathIn(name, "problems.txt"), problems);
}

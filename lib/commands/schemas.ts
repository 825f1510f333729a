import { mkdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { recordSchemas, resultSchemas } from "../publish/schemas.ts";
import { tell } from "./terminal.ts";

const schemasDir = fileURLToPath(new URL("../../docs/schemas/", import.meta.url));

/** The schema files as they should stand in docs/schemas, by name. */
export function schemaFiles(): Record<string, string> {
  const results = Object.entries(resultSchemas()).map(([name, schema]) => [`results-${name}.schema.json`, schema] as const);
  const records = Object.entries(recordSchemas()).map(([name, schema]) => [`${name}.schema.json`, schema] as const);
  return Object.fromEntries([...records, ...results].map(([name, schema]) => [name, `${JSON.stringify(schema, null, 2)}\n`]));
}

/** Writes docs/schemas, or only compares. @returns 1 where they differ, else 0 */
export async function writeSchemas(onlyCheck: boolean): Promise<number> {
  await mkdir(schemasDir, { recursive: true });
  let differ = 0;
  for (const [name, text] of Object.entries(schemaFiles())) {
    const file = path.join(schemasDir, name);
    const there = await readFile(file, "utf8").catch(() => undefined);
    if (there === text) continue;
    differ++;
    if (!onlyCheck) await writeFile(file, text);
    tell(`${onlyCheck ? "out of date" : "written"}: docs/schemas/${name}`);
  }
  return onlyCheck && differ > 0 ? 1 : 0;
}

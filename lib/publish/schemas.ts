/** JSON Schemas, generated from the zod schemas: of the results beside the results, of the records for editors. */
import { z } from "zod";
import { battery } from "../nouns/battery.ts";
import { charger } from "../nouns/charger.ts";
import { instrument } from "../nouns/instrument.ts";
import { site } from "../nouns/site.ts";
import { test } from "../nouns/test.ts";
import { proseHead } from "../read/prose.ts";
import { chargerResult, siteIndex, testResult } from "./results.ts";

/** Schemas of the public results, by file name without its ending. */
export function resultSchemas(): Record<string, object> {
  return { index: z.toJSONSchema(siteIndex), test: z.toJSONSchema(testResult), charger: z.toJSONSchema(chargerResult) };
}

/** Schemas of the workspace's records, as a person writes them: fields with a default may be left out. */
export function recordSchemas(): Record<string, object> {
  const schemas = { site, charger, battery, instrument, test, "prose-head": proseHead };
  return Object.fromEntries(
    Object.entries(schemas).map(([name, schema]) => [name, z.toJSONSchema(schema, { io: "input", unrepresentable: "any" })]),
  );
}

/** The digests of all that a step of the site can read, but for the site's own files. */
import { digestOf } from "../cache/digest.ts";
import type { InputFile } from "../read/workspace-files.ts";
import type { Published } from "../run/published.ts";
import type { Source } from "./keep/site-record.ts";
import { chargerField, indexField, rowsOfCharger, testField } from "./keep/watched-results.ts";

/** A test's or charger's results as a whole. */
export const wholeTest = (id: string): Source => `whole test ${id}`;
export const wholeCharger = (id: string): Source => `whole charger ${id}`;
/** A file of the workspace. */
export const inputFile = (path: string): Source => `input/${path}`;

/** A field that is not there, such as those that a program asks of every object. */
const noField = "no such field";

/** @returns a function that tells a source's digest; undefined for one of which nothing is known */
export function digestOfSource(published: Published, files: readonly InputFile[]): (source: Source) => string | undefined {
  const digests = new Map<Source, string>(files.map(({ path, sha256 }) => [inputFile(path), sha256]));
  for (const [field, value] of Object.entries(published.index)) digests.set(indexField(field), digestOf(value));
  digests.set(indexField("rows"), digestOf(published.rows.map((row) => row.digest)));
  for (const { id, key, digests: fields } of published.tests) {
    digests.set(wholeTest(id), key);
    for (const [field, digest] of Object.entries(fields)) digests.set(testField(id, field), digest);
  }
  for (const { id, key, digests: fields, rows } of published.chargers) {
    digests.set(wholeCharger(id), key);
    digests.set(rowsOfCharger(id), digestOf(rows.map((row) => row.digest)));
    for (const [field, digest] of Object.entries(fields)) digests.set(chargerField(id, field), digest);
  }
  const tests = new Set(published.tests.map(({ id }) => id));
  const chargers = new Set(published.chargers.map(({ id }) => id));
  return (source) => {
    const known = digests.get(source);
    if (known !== undefined) return known;
    const [, kind, id = ""] = /^(?:(test|charger)\/([^#]+)|index)#/.exec(source) ?? [];
    if (kind === undefined) return source.startsWith("index#") ? noField : undefined;
    return (kind === "test" ? tests : chargers).has(id) ? noField : undefined;
  };
}

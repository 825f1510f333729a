/** The tables of docs/workspace.md: made from the schemas of the records and the columns of the readings, put between marks in the page. */
import { z } from "zod";
import { battery } from "../../../lib/nouns/battery.ts";
import { charger } from "../../../lib/nouns/charger.ts";
import { instrument } from "../../../lib/nouns/instrument.ts";
import { readingColumns } from "../../../lib/nouns/reading.ts";
import { site } from "../../../lib/nouns/site.ts";
import { test } from "../../../lib/nouns/test.ts";
import { proseHead } from "../../../lib/read/prose.ts";

type Schema = {
  readonly $ref?: string;
  readonly type?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly enum?: readonly unknown[];
  readonly default?: unknown;
  readonly description?: string;
  readonly format?: string;
  readonly pattern?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly minItems?: number;
  readonly $defs?: Readonly<Record<string, Schema>>;
};

const tables: Readonly<Record<string, () => string>> = {
  "fields of site": () => fieldTable(site),
  "fields of charger": () => fieldTable(charger),
  "fields of battery": () => fieldTable(battery),
  "fields of instrument": () => fieldTable(instrument),
  "fields of test": () => fieldTable(test),
  "fields of prose head": () => fieldTable(proseHead),
  "columns of readings": columnTable,
};

/**
 * A page with every table between `<!-- table: name -->` and `<!-- end of table -->` made anew.
 * Throws where a mark names no table, or a table has no mark: then the page would go stale without anybody noticing.
 */
export function withTables(page: string): string {
  const seen = new Set<string>();
  const filled = page.replace(/<!-- table: ([a-z ]+) -->\n[\s\S]*?<!-- end of table -->/g, (_, name: string) => {
    const table = tables[name];
    if (table === undefined) throw new Error(`no table "${name}"`);
    seen.add(name);
    return `<!-- table: ${name} -->\n\n${table()}\n\n<!-- end of table -->`;
  });
  const left = Object.keys(tables).filter((name) => !seen.has(name));
  if (left.length > 0) throw new Error(`no mark for the tables ${left.join(", ")}`);
  return filled;
}

function fieldTable(record: z.ZodType): string {
  const root = z.toJSONSchema(record, { io: "input", unrepresentable: "any" }) as Schema;
  const rows = fieldRows(resolve(root, root), root, "");
  return ["| field | needed | value | what it is |", "|---|---|---|---|", ...rows].join("\n");
}

/** A row for each field, those of its own objects below it, named with a point; `[]` stands for each entry of a list. */
function fieldRows(schema: Schema, root: Schema, prefix: string): string[] {
  return Object.entries(schema.properties ?? {}).flatMap(([name, field]) => {
    const label = `${prefix}${name}`;
    const resolved = resolve(field, root);
    const needed = schema.required?.includes(name) === true ? "yes" : "";
    const words = [resolved.description, defaultWords(resolved.default)].filter((part) => part !== undefined).join(". ");
    return [`| \`${label}\` | ${needed} | ${cell(kindOf(resolved, root))} | ${cell(words)} |`, ...innerRows(resolved, root, label)];
  });
}

function innerRows(schema: Schema, root: Schema, label: string): string[] {
  if (schema.properties !== undefined) return fieldRows(schema, root, `${label}.`);
  if (schema.items !== undefined) return innerRows(resolve(schema.items, root), root, `${label}[]`);
  return (schema.anyOf ?? []).flatMap((branch) => innerRows(resolve(branch, root), root, label));
}

function resolve(schema: Schema, root: Schema): Schema {
  const name = schema.$ref?.replace("#/$defs/", "");
  if (name === undefined) return schema;
  return { ...root.$defs?.[name], ...schema };
}

function kindOf(schema: Schema, root: Schema): string {
  if (schema.enum !== undefined) return schema.enum.map((value) => `\`${value === "\t" ? "\\t" : String(value)}\``).join(", ");
  if (schema.anyOf !== undefined) return schema.anyOf.map((branch) => kindOf(resolve(branch, root), root)).join(", or ");
  switch (schema.type) {
    case "array":
      return `list${schema.minItems === 1 ? " of at least one" : ""}: ${kindOf(resolve(schema.items ?? {}, root), root)}`;
    case "object":
      return "fields below";
    case "integer":
      return ["whole number", rangeWords(schema)].filter(Boolean).join(" ");
    case "number":
      return ["number", rangeWords(schema)].filter(Boolean).join(" ");
    case "boolean":
      return "`true` or `false`";
    default:
      return textKind(schema);
  }
}

function textKind({ format, pattern }: Schema): string {
  if (format === "date") return "date, 2026-03-14";
  if (format === "date-time") return "date and time with offset, 2026-03-14T09:30:00+01:00";
  if (format === "uri") return "web address";
  if (pattern?.startsWith("^logs") === true) return "a file in logs/";
  if (pattern?.startsWith("^[a-z0-9]+(?:-") === true) return "name: lower-case letters, digits, single hyphens";
  if (pattern === "^[A-Z]{3}$") return "three capital letters";
  if (pattern === "^[IUWoa]+$") return "letters I, U, W, o, a";
  if (pattern !== undefined) throw new Error(`no words for the pattern ${pattern}`);
  return "text";
}

function rangeWords({ minimum, maximum, exclusiveMinimum }: Schema): string {
  const isBounded = maximum !== undefined && maximum < Number.MAX_SAFE_INTEGER;
  if (minimum !== undefined && minimum > Number.MIN_SAFE_INTEGER) return isBounded ? `from ${minimum} to ${maximum}` : `from ${minimum}`;
  if (exclusiveMinimum !== undefined) return isBounded ? `above ${exclusiveMinimum}, to ${maximum}` : `above ${exclusiveMinimum}`;
  return "";
}

function defaultWords(value: unknown): string | undefined {
  if (value === undefined || (typeof value === "object" && Object.keys(value ?? {}).length === 0)) return undefined;
  return `\`${String(value)}\` where left out`;
}

const cell = (text: string): string => text.replaceAll("|", "\\|");

function columnTable(): string {
  const rows = Object.entries(readingColumns)
    .filter(([name]) => !/^density_([2-9]|1[01])$/.test(name))
    .map(([name, { label, unit, low, high, instrument: role }]) => {
      return `| \`${name}\` | ${label} | ${unit} | ${low} to ${high} | ${role === undefined ? "" : `\`${role}\``} |`;
    });
  return ["| column | what was read | unit | possible | line of `instruments` in test.yaml |", "|---|---|---|---|---|", ...rows].join("\n");
}

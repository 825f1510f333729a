import { createHash } from "node:crypto";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Ajv from "ajv";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { sitePackagePath } from "../../../../lib/publish/outward/addresses.ts";
import { dataPackage, type Resource } from "../../../../lib/publish/outward/data-package.ts";
import { folderMaker, writeParts } from "../../../../lib/publish/render-site.ts";
import { openResults } from "../../../../lib/publish/results-folder.ts";
import { writeFixture } from "../../../pages/fixture.ts";
import { publishedResults } from "./published.ts";

/** The rules of Data Package v2 that concern what we write: its profile at datapackage.org/profiles/2.0 (read), with our own stricter ones on names and paths. */
const path = { type: "string", pattern: "^(?![./~])(?!.*(^|/)\\.\\.(/|$))[^\\\\]+$" };
const rules = {
  type: "object",
  required: ["$schema", "name", "resources"],
  properties: {
    $schema: { const: "https://datapackage.org/profiles/2.0/datapackage.json" },
    name: { type: "string", minLength: 1 },
    homepage: { type: "string", pattern: "^https?://" },
    licenses: {
      type: "array",
      minItems: 1,
      items: { type: "object", required: ["name"], properties: { name: { type: "string", pattern: "^[-a-zA-Z0-9._]+$" } } },
    },
    contributors: {
      type: "array",
      minItems: 1,
      items: {
        type: "object",
        properties: { title: { type: "string" }, roles: { type: "array", minItems: 1 } },
        additionalProperties: false,
      },
    },
    keywords: { type: "array", minItems: 1 },
    resources: {
      type: "array",
      minItems: 1,
      items: {
        type: "object",
        required: ["name", "path", "bytes", "hash"],
        properties: {
          name: { type: "string", pattern: "^[-a-z0-9._]+$" },
          path,
          bytes: { type: "integer", minimum: 0 },
          hash: { type: "string", pattern: "^sha256:[0-9a-f]{64}$" },
          type: { const: "table" },
          schema: {
            type: "object",
            required: ["fields"],
            properties: {
              fields: {
                type: "array",
                minItems: 1,
                items: { type: "object", required: ["name", "type"], properties: { type: { enum: ["string", "number"] } } },
              },
            },
          },
        },
      },
    },
  },
};

const validate = new Ajv().compile(rules);
const problems = (descriptor: unknown) => (validate(descriptor) ? [] : validate.errors);

let siteDir: string;
let descriptor: { resources: Resource[]; description: string; licenses?: unknown };
beforeAll(async () => {
  siteDir = mkdtempSync(join(tmpdir(), "package-"));
  writeFixture(siteDir, publishedResults());
  const results = openResults(siteDir);
  await writeParts(folderMaker(siteDir, results), results);
  descriptor = JSON.parse(readFileSync(join(siteDir, sitePackagePath), "utf8"));
});
afterAll(() => rmSync(siteDir, { recursive: true }));

describe("the descriptor of the whole site", () => {
  it("fits Data Package v2", () => {
    expect(problems(descriptor)).toEqual([]);
  });

  it("names every resource once", () => {
    const names = descriptor.resources.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    expect(new Set(descriptor.resources.map((resource) => resource.path)).size).toBe(names.length);
  });

  it("has the size and digest of each file as it lies there", () => {
    expect(descriptor.resources.length).toBeGreaterThan(8);
    for (const resource of descriptor.resources) {
      const bytes = readFileSync(join(siteDir, resource.path));
      expect(resource.bytes, resource.path).toBe(bytes.length);
      expect(resource.hash, resource.path).toBe(`sha256:${createHash("sha256").update(bytes).digest("hex")}`);
    }
  });

  it("describes the columns of every table of ours, in their order", () => {
    const tables = descriptor.resources.filter(({ type }) => type === "table");
    expect(tables.map((table) => table.path)).toEqual([
      "data/comparison.csv",
      "data/tests/lantern-first.figures.csv",
      "data/tests/pebble-agm.figures.csv",
    ]);
    for (const table of tables) {
      const [head, ...rows] = parse(readFileSync(join(siteDir, table.path))) as string[][];
      expect(table.schema?.fields.map(({ name }) => name)).toEqual(head);
      table.schema?.fields.forEach(({ type }, column) => {
        if (type === "number") for (const row of rows) expect(Number.isFinite(Number(row[column]))).toBe(true);
      });
    }
  });

  it("says how each recording was read", () => {
    const log = descriptor.resources.find((resource) => resource.path.endsWith("night one.csv"));
    expect(log?.description).toBe("Read with decimal mark: comma; fields split at: semicolon");
  });

  it("says that data are invented", () => {
    expect(descriptor.description).toMatch(/^Invented demonstration data/);
  });
});

describe("a descriptor", () => {
  const { index } = publishedResults({ invented: false });
  const parts = { index, name: "p", title: "t", description: "d", version: "undated", homepage: null, invented: false };
  const file = { path: "a/b.csv", title: "b", bytes: 1, sha256: "0".repeat(64) };

  it("tells two files apart whose names differ in signs only", () => {
    const made = JSON.parse(dataPackage({ ...parts, files: [file, { ...file, path: "a-b.csv" }] }));
    expect(made.resources.map(({ name }: Resource) => name)).toEqual(["a-b.csv", "a-b.csv-2"]);
    expect(problems(made)).toEqual([]);
  });

  it("says in words what licence there is where it has no identifier, and that none is stated", () => {
    const licensed = (licence: string | null) =>
      JSON.parse(dataPackage({ ...parts, index: { ...index, site: { ...index.site, licence } }, files: [file] }));
    expect(licensed("ask us first")).not.toHaveProperty("licenses");
    expect(licensed("ask us first").description).toContain("Licence: ask us first.");
    expect(licensed(null).description).toContain("No licence is stated.");
    expect(licensed("CC-BY-4.0").licenses).toEqual([{ name: "CC-BY-4.0", path: "https://creativecommons.org/licenses/by/4.0/" }]);
  });

  it("needs a file", () => {
    expect(() => dataPackage({ ...parts, files: [] })).toThrow("one file");
  });
});

/** Descriptors after Data Package v2 (datapackage.org): what files there are, how large, with which digest, and what the columns of ours mean. */
import { figureHeadings } from "../downloads/figures-csv.ts";
import { addressPart } from "../links.ts";
import type { RecordingResult, SiteIndex } from "../results.ts";
import { publisherOf } from "./citation.ts";
import { licenceAddress, spdxLike } from "./licence.ts";

export type Field = { readonly name: string; readonly type: "string" | "number"; readonly description: string };

export type Resource = {
  readonly name: string;
  readonly path: string;
  readonly title: string;
  readonly description?: string;
  readonly mediatype?: string;
  readonly bytes: number;
  /** "sha256:" and the digest; without the prefix readers would take it for MD5. */
  readonly hash: string;
  readonly type?: "table";
  readonly dialect?: { readonly delimiter: string; readonly quoteChar: string; readonly header: boolean };
  readonly schema?: { readonly fields: readonly Field[]; readonly missingValues: readonly string[] };
};

/** A file to be described. */
export type DescribedFile = {
  readonly path: string;
  readonly title: string;
  readonly bytes: number;
  readonly sha256: string;
  readonly description?: string;
  /** For tables of ours, whose form we know. */
  readonly fields?: readonly Field[];
};

export type PackageParts = {
  readonly index: SiteIndex;
  readonly name: string;
  readonly title: string;
  readonly description: string;
  readonly version: string;
  /** Whole address of the package's page; null where the site does not state where it stands. */
  readonly homepage: string | null;
  readonly invented: boolean;
  readonly files: readonly DescribedFile[];
};

/**
 * The descriptor as JSON text. Without files it would not be a package, and throws.
 * Resources keep the order of the files; a name that comes twice gets a number.
 */
export function dataPackage({ index, name, title, description, version, homepage, invented, files }: PackageParts): string {
  if (files.length === 0) throw new Error("a data package needs one file at least");
  const { licence } = index.site;
  const spdx = spdxLike(licence);
  const address = licence === null ? undefined : licenceAddress(licence);
  const descriptor = {
    $schema: "https://datapackage.org/profiles/2.0/datapackage.json",
    name,
    title: invented ? `${title} (invented data)` : title,
    description: [
      invented ? "Invented demonstration data: no real product was tested." : "",
      description,
      licence !== null && spdx === null ? `Licence: ${licence}.` : "",
      licence === null ? "No licence is stated." : "",
    ]
      .filter((part) => part !== "")
      .join(" "),
    version,
    ...(homepage === null ? {} : { id: homepage, homepage }),
    ...(spdx === null ? {} : { licenses: [{ name: spdx, ...(address === undefined ? {} : { path: address }) }] }),
    contributors: [{ title: publisherOf(index), roles: ["publisher"] }],
    ...(invented ? { keywords: ["invented data"] } : {}),
    resources: describe(files),
  };
  return `${JSON.stringify(descriptor, null, 1)}\n`;
}

function describe(files: readonly DescribedFile[]): Resource[] {
  const taken = new Map<string, number>();
  return files.map(({ path, title, bytes, sha256, description, fields }) => {
    const plain = addressPart(path.replaceAll("/", "-")).toLowerCase();
    const count = (taken.get(plain) ?? 0) + 1;
    taken.set(plain, count);
    const mediatype = mediatypes[/\.[a-z0-9]+$/i.exec(path)?.[0].toLowerCase() ?? ""];
    return {
      name: count === 1 ? plain : `${plain}-${count}`,
      path,
      title,
      ...(description === undefined ? {} : { description }),
      ...(mediatype === undefined ? {} : { mediatype }),
      bytes,
      hash: `sha256:${sha256}`,
      ...(fields === undefined
        ? {}
        : {
            type: "table" as const,
            dialect: { delimiter: ",", quoteChar: '"', header: true },
            schema: { fields, missingValues: [""] },
          }),
    };
  });
}

/** Only where the name is enough to tell: a recorder's log can be anything. */
const mediatypes: Readonly<Record<string, string>> = {
  ".json": "application/json",
  ".csv": "text/csv",
  ".yaml": "application/yaml",
  ".yml": "application/yaml",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

const meanings: Readonly<Record<(typeof figureHeadings)[number], string>> = {
  of: "What it is a figure of: test, charger, connection/2, recording/day-1.csv, reading/3",
  id: "Names the figure and its method page",
  label: "In words",
  value: "In the unit beside it; empty where absent",
  unit: "Unit symbol; empty for a pure number; an ISO 4217 code for money",
  low: "Lower end of the interval that holds the true value with 95 % probability; empty where none can be defended",
  high: "Upper end of that interval",
  basis: "measured, projected or stated",
  method: "Method and its version",
  absent: "Kind of absence; empty where there is a value",
  absent_why: "Why there is no value",
  doubts: "What limits trust in the figure",
  evidence: "Files, lines and digests that it rests on",
};

const numbers: readonly string[] = ["value", "low", "high"];

/** The columns of a test's figures.csv. */
export const figureFields: readonly Field[] = figureHeadings.map((name) => ({
  name,
  type: numbers.includes(name) ? "number" : "string",
  description: meanings[name],
}));

/** The columns of comparison.csv. */
export const comparisonFields: readonly Field[] = [
  { name: "charger", type: "string", description: "The charger's name" },
  { name: "mode", type: "string", description: "The mode, by the words on the device" },
  { name: "test", type: "string", description: "The test's id" },
  { name: "battery", type: "string", description: "The battery's name" },
  { name: "status", type: "string", description: "Whether the target density was reached" },
  { name: "verdict", type: "string", description: "The verdict in one sentence" },
  {
    name: "characteristic",
    type: "string",
    description: "The charge characteristic in the letters I, U, W, o, a, as seen; empty where too little was",
  },
  ...figureFields,
];

/** How a recording was read, for whoever reads it with a program of their own. */
export function readingAdvice({ readAs }: Pick<RecordingResult, "readAs">): string | undefined {
  return readAs.length === 0 ? undefined : `Read with ${readAs.map(({ what, value }) => `${what}: ${value}`).join("; ")}`;
}

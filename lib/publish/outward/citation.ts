/** How to cite: plain text, BibTeX, and the Citation File Format. Nothing in them depends on the day of the build. */
import { stringify } from "yaml";
import type { SiteIndex } from "../results.ts";
import { undated } from "./history.ts";
import { spdxLike } from "./licence.ts";

export type Citable = {
  /** The key of the BibTeX entry: letters, digits, "-" and ":". */
  readonly key: string;
  readonly title: string;
  readonly site: SiteIndex;
  /** ISO date, or "undated". */
  readonly version: string;
  /** null where the result has no fingerprint of its own, such as the whole site. */
  readonly fingerprint: string | null;
  /** Whole address; null where the site does not state where it stands. */
  readonly address: string | null;
  readonly invented: boolean;
};

/** The publisher, as the site's record names it; the site's own title where it names nobody. */
export function publisherOf({ site }: SiteIndex): string {
  return site.operator.find((fact) => fact.label === "Publisher" || fact.label === "Published by")?.value ?? site.title;
}

/** One line for a letter or a shelf: who, when, what, which version, where. */
export function plainCitation(citable: Citable): string {
  const { title, site, version, fingerprint, address, invented } = citable;
  const parts = [
    `${publisherOf(site)} (${version === undated ? "date not stated" : version}): ${title}.`,
    `${title === site.site.title ? "Method" : `${site.site.title}, method`} version ${site.methodVersion}${fingerprint === null ? "" : `, fingerprint ${fingerprint}`}.`,
    invented ? "Invented data." : "",
    address ?? "",
  ];
  return parts.filter((part) => part !== "").join(" ");
}

/** Characters that BibTeX gives a meaning of its own; a backslash has to be spelt out. */
const escapeBib = (text: string): string =>
  text.replace(/[\\{}&%$#_~^]/g, (character) => {
    if (character === "\\") return "\\textbackslash{}";
    return character === "~" || character === "^" ? `\\${character}{}` : `\\${character}`;
  });

/**
 * An entry of type "misc", which every style knows; double braces keep the publisher from being taken for a person's name.
 * An address goes in as it is: styles that print it use the url package, which reads it verbatim.
 */
export function bibtex(citable: Citable): string {
  const { key, title, site, version, fingerprint, address, invented } = citable;
  const note = [
    `Method version ${site.methodVersion}`,
    fingerprint === null ? "" : `fingerprint ${fingerprint}`,
    invented ? "invented data" : "",
  ].filter((part) => part !== "");
  const fields: [string, string][] = [
    ["author", `{${escapeBib(publisherOf(site))}}`],
    ["title", escapeBib(title)],
    ...(title === site.site.title ? [] : ([["howpublished", escapeBib(site.site.title)]] as [string, string][])),
    ...(version === undated
      ? []
      : ([
          ["year", version.slice(0, 4)],
          ["date", version],
        ] as [string, string][])),
    ["version", escapeBib(version)],
    ["note", escapeBib(note.join(", "))],
    ...(address === null ? [] : ([["url", address]] as [string, string][])),
  ];
  return `@misc{${key},\n${fields.map(([name, value]) => `  ${name} = {${value}}`).join(",\n")}\n}\n`;
}

/** A CITATION.cff, version 1.2.0 of the format, for a data set. */
export function citationFile(citable: Citable): string {
  const { title, site, version, fingerprint, address, invented } = citable;
  const licence = spdxLike(site.site.licence);
  return stringify({
    "cff-version": "1.2.0",
    message: invented
      ? "These data were invented to show how the site works; cite them as invented."
      : "If you use these results, cite them with their version, and quote no verdict without its conditions.",
    type: "dataset",
    title: invented ? `${title} (invented data)` : title,
    authors: [{ name: publisherOf(site) }],
    version: [version, `method ${site.methodVersion}`, ...(fingerprint === null ? [] : [`fingerprint ${fingerprint}`])].join(", "),
    ...(version === undated ? {} : { "date-released": version }),
    ...(address === null ? {} : { url: address }),
    ...(licence === null ? {} : { license: licence }),
  });
}

/** What a page weighs on its way to a reader: bytes after gzip, by kind. */
import { readFileSync, statSync } from "node:fs";
import { extname, join } from "node:path";
import { gzipSync } from "node:zlib";

/** Bytes after gzip. `svg` is what drawings add: those inside the page, and drawings in files of their own. */
export type Weight = Record<"html" | "svg" | "css" | "script" | "data" | "font" | "other", number>;

const kinds: Readonly<Record<string, keyof Weight>> = {
  ".css": "css",
  ".js": "script",
  ".svg": "svg",
  ".json": "data",
  ".bin": "data",
  ".woff2": "font",
};

/**
 * Weighs the files that a visit to a page asks for.
 * @param paths from the site's root, the page itself among them; a folder stands for its index.html; each is counted once
 * Throws where a file is missing.
 */
export function weigh(siteDir: string, paths: Iterable<string>): Weight {
  const weight: Weight = { html: 0, svg: 0, css: 0, script: 0, data: 0, font: 0, other: 0 };
  for (const path of new Set(paths)) {
    const file = fileOf(siteDir, path);
    const content = readFileSync(file);
    const bytes = gzipSync(content).length;
    if (extname(file) === ".html") {
      // The two compress better together than apart: drawings are charged with what they add to the page.
      const withoutDrawings = gzipSync(content.toString("utf8").replace(/<svg\b[\s\S]*?<\/svg>/g, "")).length;
      weight.html += withoutDrawings;
      weight.svg += bytes - withoutDrawings;
    } else {
      weight[kinds[extname(file)] ?? "other"] += bytes;
    }
  }
  return weight;
}

function fileOf(siteDir: string, path: string): string {
  const file = join(siteDir, decodeURIComponent(path));
  return statSync(file).isDirectory() ? join(file, "index.html") : file;
}

/** All of it. */
export const total = (weight: Weight): number => Object.values(weight).reduce((sum, bytes) => sum + bytes, 0);

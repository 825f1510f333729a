/** The word search: built by Pagefind from the finished pages, read by our own small box. */
import { readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { close, createIndex } from "pagefind";
import { htmlFilesIn } from "./check-links.ts";

/** Pagefind's own interface, which this site does not use: its box writes markup, ours writes text only. */
const unusedFiles = ["pagefind-ui.js", "pagefind-ui.css", "pagefind-modular-ui.js", "pagefind-modular-ui.css", "pagefind-highlight.js"];

/**
 * Builds the index into siteDir/pagefind, replacing an old one. Pages are added in the order of their names, so that the same pages give the same files.
 * Throws with Pagefind's own words where it cannot.
 */
export async function buildSearchIndex(siteDir: string): Promise<void> {
  rmSync(join(siteDir, "pagefind"), { recursive: true, force: true });
  try {
    const created = await createIndex({ keepIndexUrl: true });
    const failed = (errors: readonly string[]) => new Error(`the search index could not be built: ${errors.join("; ")}`);
    if (created.index === undefined || created.errors.length > 0) throw failed(created.errors);
    for (const page of htmlFilesIn(siteDir)) {
      const added = await created.index.addHTMLFile({ sourcePath: page, content: readFileSync(join(siteDir, page), "utf8") });
      if (added.errors.length > 0) throw failed(added.errors);
    }
    const written = await created.index.writeFiles({ outputPath: join(siteDir, "pagefind") });
    if (written.errors.length > 0) throw failed(written.errors);
    for (const name of unusedFiles) rmSync(join(siteDir, "pagefind", name), { force: true });
  } finally {
    await close();
  }
}

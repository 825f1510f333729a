/** The word search: built by Pagefind from the finished pages, read by our own small box. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { close, createIndex } from "pagefind";
import { fileOf, type SiteMaker } from "./keep/maker.ts";

/** Pagefind's own interface, which this site does not use: its box writes markup, ours writes text only. */
const unusedFiles = ["pagefind-ui.js", "pagefind-ui.css", "pagefind-modular-ui.js", "pagefind-modular-ui.css", "pagefind-highlight.js"];

/** A site of more pages has its index in parts, so that an edit costs the index of one part; of fewer, one part is the whole. */
const pagesOfPart = 600;
/** More parts than this would cost a reader's first search more requests than an edit saves. */
const mostParts = 16;

/** Where the search box finds the folders of the parts beyond the first, as JSON. */
export const searchPartsPath = "pagefind/parts.json";

/**
 * Builds the index under pagefind/, part by part; a part none of whose pages has changed is kept.
 * @param pages  paths of the pages whose words are searched
 */
export async function buildSearchIndex(maker: SiteMaker, pages: readonly string[]): Promise<void> {
  const parts = partsOf(pages);
  try {
    for (const [place, part] of parts.entries()) {
      const folder = folderOfPart(place);
      await maker.step(`search ${folder}`, async ({ reads, write }) => {
        for (const page of part) reads(fileOf(page));
        for (const { path, content } of await indexPart(maker.dir, part)) write(`${folder}/${path}`, content);
      });
    }
  } finally {
    await close();
  }
  await maker.step(`search parts ${parts.length}`, ({ write }) => {
    write(searchPartsPath, `${JSON.stringify(parts.slice(1).map((_, place) => folderOfPart(place + 1)))}\n`);
  });
}

const folderOfPart = (place: number): string => (place === 0 ? "pagefind" : `pagefind/part-${place}`);

/** Pages of one charger, which change together, fall into one part, decided by the name alone. A part without pages has an empty index. */
function partsOf(pages: readonly string[]): string[][] {
  let count = 1;
  while (count < mostParts && pages.length > count * pagesOfPart) count *= 2;
  const parts = Array.from({ length: count }, (): string[] => []);
  for (const page of [...pages].sort()) parts[partOf(page, count)]?.push(page);
  return parts;
}

function partOf(page: string, count: number): number {
  const steps = page.split("/");
  const subject = steps.length > 2 ? (steps[1] ?? "") : page;
  return createHash("sha256").update(subject).digest().readUInt32BE(0) % count;
}

/** Pages are added in the order of their names, so that the same pages give the same files. Throws with Pagefind's own words where it cannot. */
async function indexPart(siteDir: string, pages: readonly string[]): Promise<{ path: string; content: Uint8Array }[]> {
  const failed = (errors: readonly string[]) => new Error(`the search index could not be built: ${errors.join("; ")}`);
  const { index, errors } = await createIndex({ keepIndexUrl: true });
  if (index === undefined || errors.length > 0) throw failed(errors);
  const added = await Promise.all(
    pages.map((page) => index.addHTMLFile({ sourcePath: page, content: withoutDrawings(readFileSync(join(siteDir, page), "utf8")) })),
  );
  const wrong = added.flatMap((one) => one.errors);
  if (wrong.length > 0) throw failed(wrong);
  const written = await index.getFiles();
  if (written.errors.length > 0) throw failed(written.errors);
  return written.files
    .filter(({ path }) => !unusedFiles.includes(path))
    .sort((a, b) => (a.path < b.path ? -1 : 1))
    .map(({ path, content }) => ({ path, content }));
}

/** Drawings are most of a page's bytes and hold no words that are searched. */
function withoutDrawings(html: string): string {
  return html.replace(/<svg[\s>][\s\S]*?<\/svg>/g, "");
}

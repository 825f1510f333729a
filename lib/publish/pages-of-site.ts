/** The pages of a site that is being made: which must be drawn, and what is noted of each. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type LinksOfPage, linksOf } from "./check-links.ts";
import { type SiteMaker, type Step, valueMadeBy } from "./keep/maker.ts";
import { watchedResults } from "./keep/watched-results.ts";
import { wholeAddress } from "./outward/addresses.ts";
import type { Fingerprints } from "./outward/index.ts";
import { withPageHead } from "./outward/page-head.ts";
import { labelCells } from "./pages/label-cells.ts";
import type { ResultsFolder } from "./results-folder.ts";

/** What is remembered of a page. */
export type PageFacts = LinksOfPage & {
  /** Whether search engines may find it: it asks them neither to stay away nor to show another page instead. */
  readonly found: boolean;
  /** Whether its words are searched. */
  readonly searched: boolean;
};

/** What a page is drawn from; each thing that is read of it is noted. */
export type PageSources = { readonly results: ResultsFolder; readonly fingerprints: Fingerprints };

export type SitePages = {
  /** Whether a page must be drawn; one that need not be is kept as it is. */
  isStale(path: string): boolean;
  /** Draws a page. Whoever calls writes it to its path. */
  draw(path: string, draw: (sources: PageSources) => string | Promise<string>): Promise<string>;
  /** Notes the pages that were drawn since, once they stand in the site's folder. @returns whether others must be drawn in another round */
  endRound(): boolean;
  /** The facts of all pages, once all are drawn. */
  finish(): { readonly facts: ReadonlyMap<string, PageFacts>; readonly drawn: ReadonlySet<string> };
};

/** Eleventy holds every page of a round until the last is drawn: a thousand take as much memory as a build should. */
const pagesOfRound = 400;

/** The step that makes a charger's digests, and gives back their fingerprint. */
export const sumsStep = (charger: string): string => `digests of charger ${charger}`;

/** @param onPage  told after each page that was drawn or kept */
export function sitePages(maker: SiteMaker, results: ResultsFolder, fingerprints: Fingerprints, onPage: () => void): SitePages {
  const facts = new Map<string, PageFacts>();
  const begun = new Map<string, Step>();
  const drawn = new Set<string>();
  let isMoreToDo = false;
  return {
    isStale(path) {
      if (facts.has(path)) return false;
      if (begun.has(path)) return true;
      if (begun.size >= pagesOfRound) {
        isMoreToDo = true;
        return false;
      }
      const kept = maker.keep(`page ${path}`);
      if (kept === undefined) {
        const step = maker.begin(`page ${path}`);
        step.clear(path);
        begun.set(path, step);
        return true;
      }
      facts.set(path, kept.value as PageFacts);
      onPage();
      return false;
    },
    async draw(path, draw) {
      const step = begun.get(path);
      if (step === undefined) throw new Error(`${path} was drawn, though nobody asked whether it must be`);
      const watched = watchedResults(results, step.reads);
      const html = await draw({ results: watched, fingerprints: watchedFingerprints(fingerprints, step) });
      onPage();
      return labelCells(withPageHead(html, watched, addressOf(path)));
    },
    endRound() {
      for (const [path, step] of begun) {
        const html = readFileSync(join(maker.dir, path), "utf8");
        const value: PageFacts = {
          ...linksOf(path, html, results.index.site.baseUrl),
          found: isToBeFound(path, html, results.index.site.baseUrl),
          searched: html.includes("data-pagefind-body"),
        };
        step.wrote(path);
        step.end(value);
        facts.set(path, value);
        drawn.add(path);
      }
      begun.clear();
      const isMore = isMoreToDo;
      isMoreToDo = false;
      return isMore;
    },
    finish: () => ({ facts, drawn }),
  };
}

/** A page's address from the site's root: "tests/first/" for tests/first/index.html. */
const addressOf = (path: string): string => path.replace(/(^|\/)index\.html$/, "$1");

function isToBeFound(path: string, html: string, baseUrl: string | null): boolean {
  if (html.includes('<meta name="robots" content="noindex"')) return false;
  const [, shown] = /<link rel="canonical" href="([^"]+)"/.exec(html) ?? [];
  return baseUrl === null || shown === wholeAddress(baseUrl, addressOf(path));
}

function watchedFingerprints(fingerprints: Fingerprints, step: Step): Fingerprints {
  return new Proxy(fingerprints, {
    get(target, charger) {
      if (typeof charger === "string") step.reads(valueMadeBy(sumsStep(charger)));
      return Reflect.get(target, charger);
    },
  });
}

/**
 * Pages whose links must be looked at: those that were drawn, those that link to a file that is gone, and those that name an element of a
 * page that was drawn. All other links held in the last build, and nothing about them has changed.
 */
export function pagesToCheck(
  facts: ReadonlyMap<string, PageFacts>,
  drawn: ReadonlySet<string>,
  isThere: (path: string) => boolean,
): string[] {
  return [...facts]
    .filter(([path, { files, pages }]) => drawn.has(path) || pages.some((page) => drawn.has(page)) || !files.every(isThere))
    .map(([path]) => path)
    .sort();
}

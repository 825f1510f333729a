/**
 * Measures one page of each kind of the demo's site with Lighthouse, on a simulated phone and its slow connection, and weighs it.
 *
 *   npm run lighthouse                        three runs a page, into docs/page-weights.md; fails where a score is too low
 *   npm run lighthouse -- charger "side by side"      the kinds named only, into their rows
 *   npm run lighthouse -- --runs 1 charger    a quick look; writes nothing
 *   npm run lighthouse -- --site DIR          measures a site that is built already
 *
 * Scores hang on what else the machine does, so each is the median of its runs, and none of this is part of `npm test`.
 */
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import lighthouse, { type Result } from "lighthouse";
import { launchBrowser, noBrowser } from "../pages/browser.ts";
import { serve } from "../pages/serve.ts";
import { pageKindsOf } from "./page-kinds.ts";
import { categories, type Measured, report, type Scores, shortfalls } from "./report.ts";
import { weigh } from "./weigh.ts";

const { values: options, positionals: wanted } = parseArgs({
  allowPositionals: true,
  options: { site: { type: "string" }, runs: { type: "string", default: "3" } },
});
const page = "docs/page-weights.md";
const runs = Number(options.runs);
const scratch = mkdtempSync(join(tmpdir(), "lighthouse-"));
const siteDir = options.site ?? join(scratch, "_site");
if (options.site === undefined) execFileSync(process.execPath, ["lib/start.js", "build", "--out", siteDir]);

const port = await freePort();
const browser = await launchBrowser([`--remote-debugging-port=${port}`]);
if (browser === undefined) throw new Error(noBrowser);
const server = await serve(siteDir, { gzip: true });
const measured: Measured[] = [];
try {
  const kinds = pageKindsOf(siteDir);
  const unknown = wanted.filter((kind) => !(kind in kinds));
  if (unknown.length > 0)
    throw new Error(`no kind of page is called “${unknown.join("”, “")}”; there are ${Object.keys(kinds).join(", ")}`);
  for (const [kind, path] of Object.entries(kinds)) {
    if (wanted.length > 0 && !wanted.includes(kind)) continue;
    const results: Result[] = [];
    for (let run = 0; run < runs; run++) results.push(await audit(server.origin + path));
    measured.push({ kind, path, scores: medianScores(results), failed: failedAudits(results), weight: weigh(siteDir, requested(results)) });
    process.stderr.write(`${kind}: ${categories.map((category) => measured.at(-1)?.scores[category]).join(" / ")}\n`);
  }
  if (runs >= 3) {
    const before = existsSync(page) ? readFileSync(page, "utf8") : "";
    writeFileSync(page, report(Object.keys(kinds), measured, before, browser.version()));
  }
} finally {
  await browser.close();
  await server.close();
  rmSync(scratch, { recursive: true });
}
const tooLow = shortfalls(measured);
for (const line of tooLow) process.stderr.write(`${line}\n`);
process.exitCode = tooLow.length === 0 ? 0 : 1;

/** A port that nobody listens on at this moment. */
async function freePort(): Promise<number> {
  const probe = createServer();
  await new Promise<void>((resolve) => probe.listen(0, "127.0.0.1", resolve));
  const { port } = probe.address() as AddressInfo;
  await new Promise((resolve) => probe.close(resolve));
  return port;
}

/** One run with Lighthouse's own defaults: a phone, throttling simulated. Throws where the page could not be measured. */
async function audit(address: string): Promise<Result> {
  const outcome = await lighthouse(address, { port, logLevel: "error" });
  if (outcome === undefined) throw new Error(`no result for ${address}`);
  const { runtimeError } = outcome.lhr;
  if (runtimeError !== undefined) throw new Error(`${address}: ${runtimeError.message}`);
  return outcome.lhr;
}

/** 0 to 100 by category; a category without a score counts as 0, so that it cannot pass unseen. */
function medianScores(results: readonly Result[]): Scores {
  const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
  const scoreOf = (result: Result, category: string) => Math.round((result.categories[category]?.score ?? 0) * 100);
  return Object.fromEntries(categories.map((category) => [category, median(results.map((result) => scoreOf(result, category)))])) as Scores;
}

/** Ids of audits that cost points in any run, those of speed left out: they cost a little on every page. */
function failedAudits(results: readonly Result[]): string[] {
  const failed = results.flatMap((result) =>
    categories
      .filter((category) => category !== "performance")
      .flatMap((category) => result.categories[category]?.auditRefs ?? [])
      .filter(({ id, weight }) => weight > 0 && (result.audits[id]?.score ?? 1) < 1)
      .map(({ id }) => id),
  );
  return [...new Set(failed)];
}

/** Paths of all that the visits asked the site for. */
function requested(results: readonly Result[]): string[] {
  return results.flatMap((result) => {
    const { details } = result.audits["network-requests"] ?? {};
    if (details?.type !== "table") throw new Error("expected a list of requests");
    return details.items.map(({ url }) => new URL(String(url))).flatMap((url) => (url.origin === server.origin ? [url.pathname] : []));
  });
}

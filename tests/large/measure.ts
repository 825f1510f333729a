/**
 * Builds a large made-up workspace again and again, and tells what each build costs; the table in docs/scaling.md comes from here.
 *
 *   npx tsx tests/large/measure.ts DIR [--chargers 1000] [--tests 2000] [--one-forecast]
 *
 * DIR is made or gone on with: what was measured there before is not measured again. With --one-forecast every mode is given the forecast
 * of one of them: forecasts are most of a first build, and their number, not their content, decides what the others cost.
 */
import { spawnSync } from "node:child_process";
import { appendFileSync, existsSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { diskEntries } from "../../lib/cache/entries.ts";
import { rememberForecasts } from "../../lib/cache/forecasts.ts";
import type { ModeForecast } from "../../lib/judge/forecast/forecast-mode.ts";
import { measureWorkspace } from "../../lib/run.ts";
import { writeLarge } from "./write-large.ts";

const [dir] = process.argv.slice(2);
if (dir === undefined || dir.startsWith("--")) throw new Error("expected a folder to work in");
const asked = (name: string, usual: number): number => {
  const place = process.argv.indexOf(`--${name}`);
  return place < 0 ? usual : Number(process.argv[place + 1]);
};
const size = { chargers: asked("chargers", 1000), tests: asked("tests", 2000) };
const workspace = join(dir, "workspace");
const out = join(dir, "site");
const start = fileURLToPath(new URL("../../lib/start.js", import.meta.url));

const say = (text: string): void => void process.stdout.write(`${text}\n`);

/** One build in a process of its own. */
function build(): { seconds: number; peakMiB: number } {
  const started = performance.now();
  const { status, stderr } = spawnSync(process.execPath, [start, "build", "--workspace", workspace, "--out", out, "--costs"], {
    encoding: "utf8",
    maxBuffer: 1 << 28,
  });
  if (status !== 0) throw new Error(stderr.slice(-2000));
  const [, peak = "0"] = /^peak memory: (\d+) MiB$/m.exec(stderr) ?? [];
  const [, parts = ""] = /^time: (.*)$/m.exec(stderr) ?? [];
  say(`  ${parts}`);
  return { seconds: (performance.now() - started) / 1000, peakMiB: Number(peak) };
}

function timed(what: string): void {
  const { seconds, peakMiB } = build();
  say(`| ${what} | ${seconds.toFixed(1)} s | ${peakMiB} MiB |`);
}

function bytesBelow(folder: string, pattern = /./): { files: number; bytes: number } {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile() && pattern.test(entry.name));
  return { files: files.length, bytes: files.reduce((sum, entry) => sum + statSync(join(entry.parentPath, entry.name)).size, 0) };
}

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;

if (!existsSync(workspace)) writeLarge(workspace, size);
if (process.argv.includes("--one-forecast")) {
  const entries = diskEntries(join(dir, ".ampwitness"));
  const real = rememberForecasts(entries);
  let first: ModeForecast | undefined;
  const started = performance.now();
  const { worked } = await measureWorkspace(workspace, {
    entries,
    forecast: (question) => {
      first ??= real(question);
      return { ...first, ownBatteries: question.ownBatteries.map(() => null) };
    },
  });
  say(
    `${worked.tests.length} tests measured, ${worked.chargers.length} chargers put together: ${((performance.now() - started) / 1000).toFixed(0)} s in one thread`,
  );
}
say(`${size.chargers} chargers, ${size.tests} tests`);
rmSync(out, { recursive: true, force: true });
for (const kind of ["sites", "twins"]) rmSync(join(dir, ".ampwitness", kind), { recursive: true, force: true });
timed("all measured, nothing published before");
timed("nothing changed");
const review = join(workspace, "content/reviews/alder-brook-1.md");
// Once to have this charger's own forecasts remembered, as they are in a workspace that is not made up.
appendFileSync(review, "A word more.\n");
build();
appendFileSync(review, "Another word more.\n");
timed("one review edited");
appendFileSync(join(workspace, "data/tests/birch-brook-1-1/logs/day-1.csv"), `${900_000 + Math.round(performance.now())},12.9,0.1\n`);
timed("one log longer");
const page = readFileSync(join(out, "index.html"));
const index = readFileSync(join(out, "data/index.json"));
const pages = bytesBelow(out, /\.html$/);
const all = bytesBelow(out);
const search = bytesBelow(join(out, "pagefind"));
say(`| pages | ${pages.files} | ${megabytes(pages.bytes)} |`);
say(`| whole site | ${all.files} files | ${megabytes(all.bytes)} |`);
say(`| search index | ${search.files} files | ${megabytes(search.bytes)} |`);
say(`| comparison page | ${megabytes(page.byteLength)} | ${megabytes(gzipSync(page).byteLength)} gzipped |`);
say(`| data/index.json | ${megabytes(index.byteLength)} | ${megabytes(gzipSync(index).byteLength)} gzipped |`);
say(
  `| cache | ${bytesBelow(join(dir, ".ampwitness")).files} names | ${megabytes(bytesBelow(join(dir, ".ampwitness"), /^[0-9a-f]{64}$/).bytes)} of entries |`,
);

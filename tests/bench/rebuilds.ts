/** What a build costs that has been built before: nothing known, everything known, one review edited. */
import { spawnSync } from "node:child_process";
import { appendFileSync, rmSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { writeLarge } from "../large/write-large.ts";
import type { BenchRun } from "./options.ts";

const start = fileURLToPath(new URL("../../lib/start.js", import.meta.url));
type Cost = { readonly wholeS: number; readonly pagesS: number; readonly peakMiB: number };

/** One build as a whole process, from starting Node on. */
function build(workspace: string, out: string): Cost {
  const started = performance.now();
  const { stderr } = spawnSync(process.execPath, [start, "build", "--workspace", workspace, "--out", out, "--costs"], {
    encoding: "utf8",
    maxBuffer: 1 << 28,
  });
  const wholeS = (performance.now() - started) / 1000;
  const [, pages] = /^time: .*\bpages ([\d.]+) s/m.exec(stderr) ?? [];
  const [, peak] = /^peak memory: (\d+) MiB$/m.exec(stderr) ?? [];
  if (pages === undefined || peak === undefined) throw new Error(stderr.slice(-2000));
  return { wholeS, pagesS: Number(pages), peakMiB: Number(peak) };
}

export async function benchRebuilds({ folder, tests, say }: BenchRun): Promise<void> {
  const workspace = path.join(folder, "workspace");
  const out = path.join(folder, "site");
  const size = { chargers: Math.ceil(tests / 2), tests };
  writeLarge(workspace, size);
  const cold = build(workspace, out);
  rmSync(out, { recursive: true });
  for (const kind of ["sites", "twins"]) rmSync(path.join(folder, ".ampwitness", kind), { recursive: true, force: true });
  const measured = build(workspace, out);
  const warm = build(workspace, out);
  appendFileSync(path.join(workspace, "content/reviews/alder-brook-1.md"), "A word more.\n");
  const edited = build(workspace, out);
  appendFileSync(path.join(workspace, "data/tests/birch-brook-1-1/logs/day-1.csv"), "900000,12.9,0.1\n");
  const longer = build(workspace, out);
  say(`Building again: ${size.chargers} chargers, ${size.tests} tests; whole processes`);
  say("");
  for (const [what, { wholeS, pagesS, peakMiB }] of Object.entries({
    "nothing known": cold,
    "all measured": measured,
    "nothing changed": warm,
    "one review edited": edited,
    "one log longer": longer,
  }))
    say(
      `${what.padEnd(22)} ${wholeS.toFixed(1).padStart(6)} s  of which Eleventy ${pagesS.toFixed(2).padStart(6)} s  ${String(peakMiB).padStart(5)} MiB`,
    );
  say("");
  say(`edited review / its pages alone     ${(edited.wholeS / edited.pagesS).toFixed(1)}`);
  say(`edited review, beyond its pages     ${(edited.wholeS - edited.pagesS).toFixed(2)} s`);
  say(`edited review / nothing known       ${(edited.wholeS / cold.wholeS).toFixed(3)}`);
  say(`nothing changed / nothing known     ${(warm.wholeS / cold.wholeS).toFixed(3)}`);
  say(`one log longer / nothing known      ${(longer.wholeS / cold.wholeS).toFixed(3)}`);
}

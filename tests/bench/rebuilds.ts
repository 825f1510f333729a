/** What a build costs that has been built before: nothing known, everything known, one review edited. */
import { spawnSync } from "node:child_process";
import { appendFileSync, rmSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { writeLarge } from "../large/write-large.ts";
import type { BenchRun } from "./options.ts";

const start = fileURLToPath(new URL("../../lib/start.js", import.meta.url));
const size = { chargers: 10, tests: 20 };

type Cost = { readonly wholeS: number; readonly pagesS: number };

/** One build in a process of its own; the time is that of the build, without starting Node. */
function build(workspace: string, out: string): Cost {
  const { stderr } = spawnSync(process.execPath, [start, "build", "--workspace", workspace, "--out", out, "--costs"], {
    encoding: "utf8",
    maxBuffer: 1 << 26,
  });
  const [, whole] = / pages?, ([\d.]+) s$/m.exec(stderr) ?? [];
  const [, pages] = /^time: .*\bpages ([\d.]+) s/m.exec(stderr) ?? [];
  if (whole === undefined || pages === undefined) throw new Error(stderr.slice(-2000));
  return { wholeS: Number(whole), pagesS: Number(pages) };
}

export async function benchRebuilds({ folder, say }: BenchRun): Promise<void> {
  const workspace = path.join(folder, "workspace");
  const out = path.join(folder, "site");
  writeLarge(workspace, size);
  const cold = build(workspace, out);
  rmSync(out, { recursive: true });
  for (const kind of ["sites", "twins"]) rmSync(path.join(folder, ".ampwitness", kind), { recursive: true, force: true });
  const measured = build(workspace, out);
  const warm = build(workspace, out);
  appendFileSync(path.join(workspace, "content/reviews/alder-brook-1.md"), "A word more.\n");
  const edited = build(workspace, out);
  say(`Building again: ${size.chargers} chargers, ${size.tests} tests`);
  say("");
  for (const [what, { wholeS, pagesS }] of Object.entries({
    "nothing known": cold,
    "all measured": measured,
    "nothing changed": warm,
    "one review edited": edited,
  }))
    say(`${what.padEnd(22)} ${wholeS.toFixed(1).padStart(6)} s  of which pages ${pagesS.toFixed(2)} s`);
  say("");
  say(`edited review / its pages alone     ${(edited.wholeS / edited.pagesS).toFixed(1)}`);
  say(`edited review, beyond its pages     ${(edited.wholeS - edited.pagesS).toFixed(2)} s`);
  say(`nothing changed / nothing known     ${(warm.wholeS / cold.wholeS).toFixed(3)}`);
}

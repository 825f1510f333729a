import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { homedir, hostname } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, describe, expect, it } from "vitest";
import { publish } from "../../../lib/publish/publish.ts";
import { run } from "../../../lib/run.ts";
import { noForecast } from "../../no-forecast.ts";
import { type Bench, buildBench, filesBelow, newBench, publishBench, removeBenches } from "../../sites/workspace.ts";

afterEach(removeBenches);

/** A site takes two seconds to write; several of them on a busy machine need room. */
const patienceMs = 120_000;
/** No process has this number: Linux stops at 4 194 304. */
const deadPid = 99_999_999;
const repository = fileURLToPath(new URL("../../../", import.meta.url));

function same(a: Map<string, Buffer>, b: Map<string, Buffer>): string[] {
  return [...new Set([...a.keys(), ...b.keys()])].filter((path) => {
    const [one, other] = [a.get(path), b.get(path)];
    return one === undefined || other === undefined || !one.equals(other);
  });
}

function buildElsewhere({ workspace, out }: Bench, zone: string): void {
  execFileSync(process.execPath, [join(repository, "lib/start.js"), "build", "--workspace", workspace, "--out", out], {
    cwd: repository,
    env: { ...process.env, TZ: zone, LANG: zone.startsWith("Asia") ? "hi_IN.UTF-8" : "de_DE.UTF-8" },
    stdio: "pipe",
  });
}

/** What stands in the bench's folder, but for the forecasts that builds remember. */
const besides = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => name !== ".ampwitness")
    .sort();

describe("publishing", () => {
  it(
    "gives the same bytes under America/New_York and Asia/Kolkata, and no path, user or machine of ours in any of them",
    () => {
      const [one, two] = [newBench(), newBench()];
      buildElsewhere(one, "America/New_York");
      buildElsewhere(two, "Asia/Kolkata");
      const files = filesBelow(one.out);
      expect(files.size).toBeGreaterThan(30);
      expect(same(files, filesBelow(two.out))).toEqual([]);
      const ours = [one.root, two.root, repository.replace(/\/$/, ""), homedir()].filter((text) => text.length > 1);
      const found = [...files].flatMap(([path, bytes]) => ours.filter((text) => bytes.includes(text)).map((text) => `${path}: ${text}`));
      expect(found).toEqual([]);
      // Short host names occur as words by chance; long ones do not.
      if (hostname().length > 7) expect([...files].filter(([, bytes]) => bytes.includes(hostname())).map(([path]) => path)).toEqual([]);
    },
    patienceMs,
  );

  it(
    "copies raw files byte for byte",
    async () => {
      const bench = newBench();
      await publishBench(bench);
      for (const path of ["data/tests/first/logs/day.csv", "data/tests/first/readings.csv", "data/batteries/bench-40.yaml"])
        expect(readFileSync(join(bench.out, "raw", path)).equals(readFileSync(join(bench.workspace, path))), path).toBe(true);
    },
    patienceMs,
  );

  it(
    "replaces a site as a whole: nothing of the old one stays, and nothing is left beside it",
    async () => {
      const bench = newBench();
      await publishBench(bench);
      writeFileSync(join(bench.out, "left-over.html"), "old");
      await publishBench(bench);
      expect(existsSync(join(bench.out, "left-over.html"))).toBe(false);
      expect(besides(bench.root)).toEqual(["site", "workspace"]);
    },
    patienceMs,
  );
});

describe("a build that fails", () => {
  const brokenLink = { "content/about.md": "---\ntitle: About\n---\nSee [nothing](no-such-page/).\n" };

  it(
    "by a link that leads nowhere, leaves the last good site byte for byte and nothing beside it",
    async () => {
      const bench = newBench();
      await publishBench(bench);
      const good = filesBelow(bench.out);
      writeFileSync(join(bench.workspace, "data/site.yaml"), "title: Changed (invented)\n");
      mkdirSync(join(bench.workspace, "content"), { recursive: true });
      writeFileSync(join(bench.workspace, "content/about.md"), brokenLink["content/about.md"]);
      expect(await buildBench(bench)).toBe(1);
      expect(same(filesBelow(bench.out), good)).toEqual([]);
      expect(besides(bench.root)).toEqual(["site", "workspace"]);
    },
    patienceMs,
  );

  it(
    "by a raw file that has gone since it was read, leaves the last good site",
    async () => {
      const bench = newBench();
      await publishBench(bench);
      const good = filesBelow(bench.out);
      const { results, workspace } = await run(bench.workspace, { forecast: noForecast });
      if (results === undefined) throw new Error("nothing can be published");
      const gone = workspace.files.map((file) =>
        file.path.endsWith("day.csv") ? { ...file, absolutePath: join(bench.root, "gone.csv") } : file,
      );
      await expect(publish(results, gone, bench.out)).rejects.toThrow("ENOENT");
      expect(same(filesBelow(bench.out), good)).toEqual([]);
      expect(besides(bench.root)).toEqual(["site", "workspace"]);
    },
    patienceMs,
  );

  it(
    "by results that do not fit their format, leaves the last good site",
    async () => {
      const bench = newBench();
      await publishBench(bench);
      const good = filesBelow(bench.out);
      const { results, workspace } = await run(bench.workspace, { forecast: noForecast });
      if (results === undefined) throw new Error("nothing can be published");
      const wrong = { ...results, index: { ...results.index, schemaVersion: 7 as never } };
      await expect(publish(wrong, workspace.files, bench.out)).rejects.toThrow();
      expect(same(filesBelow(bench.out), good)).toEqual([]);
    },
    patienceMs,
  );

  it(
    "by a site record that cannot be read, publishes nothing and leaves the last good site",
    async () => {
      const bench = newBench();
      await publishBench(bench);
      const good = filesBelow(bench.out);
      writeFileSync(join(bench.workspace, "data/site.yaml"), "titel: misspelt\n");
      expect(await buildBench(bench)).toBe(1);
      expect(same(filesBelow(bench.out), good)).toEqual([]);
    },
    patienceMs,
  );
});

describe("what a killed build leaves behind", () => {
  it(
    "is put back where the old site had been moved aside and no new one came, and cleared away where it is half made",
    async () => {
      const bench = newBench();
      const aside = `${bench.out}.old-${deadPid}`;
      const halfMade = `${bench.out}.new-${deadPid}`;
      mkdirSync(join(aside, "data/schemas"), { recursive: true });
      writeFileSync(join(aside, "index.html"), "the last good site");
      mkdirSync(halfMade, { recursive: true });
      writeFileSync(join(halfMade, "index.html"), "half");
      const { results, workspace } = await run(bench.workspace, { forecast: noForecast });
      if (results === undefined) throw new Error("nothing can be published");
      // This build fails too, so that what was put back can be seen.
      const wrong = { ...results, index: { ...results.index, schemaVersion: 7 as never } };
      await expect(publish(wrong, workspace.files, bench.out)).rejects.toThrow();
      expect(readFileSync(join(bench.out, "index.html"), "utf8")).toBe("the last good site");
      expect(besides(bench.root)).toEqual(["site", "workspace"]);
    },
    patienceMs,
  );

  it(
    "is left alone where its build still lives, and where the folder is somebody's own",
    async () => {
      const bench = newBench();
      // Process 1 lives as long as the machine does.
      for (const name of ["site.new-1", "site.old-backup", "site.old-2026", "site.older", "site2.new-5"]) mkdirSync(join(bench.root, name));
      await publishBench(bench);
      expect(readdirSync(bench.root).sort()).toEqual(["site", "site.new-1", "site.old-backup", "site.older", "site2.new-5", "workspace"]);
    },
    patienceMs,
  );
});

describe("a folder that is no site", () => {
  it("is never replaced: not the workspace itself, not a folder of somebody's files", async () => {
    const bench = newBench();
    const before = filesBelow(bench.workspace);
    await expect(publishBench({ ...bench, out: bench.workspace })).rejects.toThrow("name an empty or new folder with --out");
    expect(same(filesBelow(bench.workspace), before)).toEqual([]);
    const letters = join(bench.root, "letters");
    mkdirSync(letters);
    writeFileSync(join(letters, "dear.txt"), "mine");
    await expect(publishBench({ ...bench, out: letters })).rejects.toThrow("holds other files");
    expect(readFileSync(join(letters, "dear.txt"), "utf8")).toBe("mine");
  });

  it(
    "is published into where it is empty",
    async () => {
      const bench = newBench();
      mkdirSync(bench.out);
      await publishBench(bench);
      expect(existsSync(join(bench.out, "index.html"))).toBe(true);
    },
    patienceMs,
  );
});

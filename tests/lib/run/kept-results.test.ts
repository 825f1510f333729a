import {
  appendFileSync,
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { digestOf } from "../../../lib/cache/digest.ts";
import { diskEntries } from "../../../lib/cache/entries.ts";
import type { Problem } from "../../../lib/nouns/problem.ts";
import { type Measured, measureShard, measureWorkspace, run } from "../../../lib/run.ts";
import { writeLarge } from "../../large/write-large.ts";
import { noForecast } from "../../no-forecast.ts";
import { filesBelow } from "../../sites/workspace.ts";

/** A workspace, and what a first run kept of it: each test begins with a copy. */
let template = "";
let root = "";
let workspace = "";
let kept = "";
const chargers = ["alder-brook-1", "birch-brook-1", "clover-brook-1"];
const tests = [...chargers.map((id) => `${id}-1`), "alder-brook-1-2"].sort();

/** A build's run, in this thread and without forecasts, which are no matter here. */
const measured = (): Promise<Measured> => measureWorkspace(workspace, { entries: diskEntries(kept), forecast: noForecast });
const pathIn = (path: string): string => join(workspace, path);

/** All that a run gives, in a form that can be compared. */
async function whole({ published, problems }: Measured): Promise<unknown> {
  if (published === undefined) throw new Error("nothing can be published");
  return {
    problems,
    index: { ...published.index, rows: published.rows.map(({ text }) => JSON.parse(text)) },
    tests: await Promise.all(published.tests.map(async (test) => [await test.result(), await test.samples()])),
    chargers: await Promise.all(published.chargers.map((charger) => charger.result())),
  };
}
const madeAfresh = new Map<string, unknown>();
/** What a run without any memory gives; of the same workspace it is made once. */
async function afresh(): Promise<unknown> {
  const files = digestOf([...filesBelow(workspace)].map(([path, bytes]) => [path, bytes.toString("latin1")]));
  if (!madeAfresh.has(files)) madeAfresh.set(files, await whole(await measureWorkspace(workspace, { forecast: noForecast })));
  return madeAfresh.get(files);
}

/** toEqual looks at every sample of every log, slowly: it is asked for its words where there is a difference. */
function expectSame(given: unknown, expected: unknown): void {
  if (isDeepStrictEqual(given, expected)) return;
  expect(given).toEqual(expected);
  expect.unreachable("a difference that toEqual passes over");
}

beforeAll(async () => {
  template = mkdtempSync(join(tmpdir(), "kept-template-"));
  writeLarge(join(template, "workspace"), { chargers: 3, tests: 4 });
  await measureWorkspace(join(template, "workspace"), { entries: diskEntries(join(template, "kept")), forecast: noForecast });
}, 60_000);
afterAll(() => rmSync(template, { recursive: true, force: true }));
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "kept-"));
  workspace = join(root, "workspace");
  kept = join(root, "kept");
  cpSync(template, root, { recursive: true });
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

describe("results that were kept", { timeout: 60_000 }, () => {
  it("are not worked out again where nothing changed, and are the very same", async () => {
    rmSync(kept, { recursive: true });
    const first = await measured();
    expect([...first.worked.tests].sort()).toEqual(tests);
    expect([...first.worked.chargers].sort()).toEqual(chargers);
    const second = await measured();
    expect(second.worked).toEqual({ tests: [], chargers: [] });
    expectSame(await whole(second), await whole(first));
    expectSame(await whole(second), await afresh());
  });

  it.each<[string, (path: (name: string) => string) => void, string[], string[]]>([
    [
      "one more line in a log",
      (path) => appendFileSync(path("data/tests/alder-brook-1-1/logs/day-1.csv"), "99999,12.9,0.1\n"),
      ["alder-brook-1-1"],
      ["alder-brook-1"],
    ],
    [
      "a log that its record does not list",
      (path) => writeFileSync(path("data/tests/alder-brook-1-1/logs/more.csv"), "elapsed_s,voltage_V\n0,12\n"),
      ["alder-brook-1-1"],
      ["alder-brook-1"],
    ],
    ["a review", (path) => appendFileSync(path("content/reviews/birch-brook-1.md"), "More.\n"), [], ["birch-brook-1"]],
    [
      "a charger's record",
      (path) => appendFileSync(path("data/chargers/clover-brook-1.yaml"), "whyThisOne: it stood there\n"),
      ["clover-brook-1-1"],
      ["clover-brook-1"],
    ],
    ["an instrument's record", (path) => appendFileSync(path("data/instruments/recorder.yaml"), "notes: old\n"), tests, chargers],
    ["the site's rules", (path) => appendFileSync(path("data/site.yaml"), "rules: { coverageFactor: 2.5 }\n"), tests, chargers],
    ["a page of the site's own", (path) => writeFileSync(path("content/about.md"), "---\ntitle: About\n---\nWords.\n"), [], []],
  ])("after %s: only what rests on it is worked out again, and all is as if nothing had been kept", async (_, change, again, together) => {
    await measured();
    change(pathIn);
    const next = await measured();
    expect([...next.worked.tests].sort()).toEqual(again);
    expect([...next.worked.chargers].sort()).toEqual(together);
    expectSame(await whole(next), await afresh());
  });

  it("notice a log of the same size and date with another digit in it", async () => {
    const log = pathIn("data/tests/birch-brook-1-1/logs/day-1.csv");
    const longAgo = Date.now() / 1000 - 1000;
    utimesSync(log, longAgo, longAgo);
    await measured();
    const text = readFileSync(log, "utf8");
    writeFileSync(log, text.replace("12.4", "12.5"));
    utimesSync(log, longAgo, longAgo);
    const next = await measured();
    expect(next.worked.tests).toEqual(["birch-brook-1-1"]);
    expectSame(await whole(next), await afresh());
  });

  it("are told with their problems, at the same places, as when they were measured", async () => {
    writeFileSync(
      pathIn("data/tests/alder-brook-1-2/test.yaml"),
      readFileSync(pathIn("data/tests/alder-brook-1-2/test.yaml"), "utf8").replace("recorder: recorder", "recorder: recorde"),
    );
    const first = await measured();
    expect(first.problems.filter(({ level }) => level === "error")).toMatchObject([{ id: "reference", mend: 'did you mean "recorder"?' }]);
    expect((await measured()).problems).toEqual(first.problems);
    // A name that the wrong one is nearer to changes the message, though the test itself did not change.
    renameSync(pathIn("data/instruments/thermometer.yaml"), pathIn("data/instruments/recorde.yaml"));
    expect((await measured()).problems).toEqual((await measureWorkspace(workspace, { forecast: noForecast })).problems);
  });

  it.each(["tests", "test-results", "samples", "chargers", "charger-results", "workspaces"])(
    "are worked out again where the entries “%s” are cut short, and again where they are gone",
    async (kind) => {
      const good = await whole(await measured());
      expect(readdirSync(join(kept, kind))).not.toEqual([]);
      for (const name of readdirSync(join(kept, kind))) truncateSync(join(kept, kind, name), 50);
      expectSame(await whole(await measured()), good);
      rmSync(join(kept, kind), { recursive: true });
      appendFileSync(pathIn("content/reviews/birch-brook-1.md"), "More.\n");
      expectSame(await whole(await measured()), await afresh());
    },
  );

  it("are held in memory, with the same results, where the disk takes none", async () => {
    rmSync(kept, { recursive: true });
    writeFileSync(kept, "a file where the folder should be");
    expectSame(await whole(await measured()), await afresh());
  });
});

describe("threads", () => {
  let started = 0;
  const count = (): void => {
    started += 1;
  };
  beforeEach(() => {
    process.on("worker", count);
  });
  afterEach(() => {
    process.off("worker", count);
  });
  const keptBy = (threads: number): string => join(root, `kept-by-${threads}`);
  /** The whole of a run with forecasts, and with nothing else known before. */
  const withThreads = async (threads: number): Promise<unknown> => {
    started = 0;
    const measured = await measureWorkspace(workspace, { entries: diskEntries(keptBy(threads)), threads });
    expect(measured.worked.tests).toHaveLength(tests.length);
    expect(started).toBe(threads === 1 ? 0 : threads);
    return whole(measured);
  };

  it("give the same results in the same order, however many there are", { timeout: 120_000 }, async () => {
    const one = await withThreads(1);
    expectSame(await withThreads(2), one);
    // The others are not about forecasts, which take most of the time.
    for (const threads of [0, 3]) cpSync(join(keptBy(1), "forecasts"), join(keptBy(threads), "forecasts"), { recursive: true });
    expectSame(await withThreads(3), one);
    const { results } = await run(workspace, { entries: diskEntries(keptBy(0)), threads: 1 });
    const { index, chargers: together } = one as { index: unknown; chargers: unknown };
    expectSame({ index, chargers: together }, { index: results?.index, chargers: results?.chargers });
  });
});

describe("shares of a run", { timeout: 60_000 }, () => {
  let shared = "";
  beforeAll(() => {
    shared = mkdtempSync(join(tmpdir(), "shares-"));
  });
  afterAll(() => rmSync(shared, { recursive: true, force: true }));

  it("measure each test once between them, and a run with all of their entries has nothing left to measure", async () => {
    const counts = [];
    for (const number of [1, 2, 3]) {
      const { worked } = await measureShard(workspace, { number, of: 3 }, { entries: diskEntries(shared), forecast: noForecast });
      counts.push(...worked.tests);
    }
    expect(counts.sort()).toEqual(tests);
    const all = await measureWorkspace(workspace, { entries: diskEntries(shared), forecast: noForecast });
    expect(all.worked.tests).toEqual([]);
    expectSame(await whole(all), await afresh());
  });

  it("each tell of every record that cannot be read, as the run of all of them does, whichever share its tests fall into", async () => {
    writeFileSync(pathIn("data/chargers/clover-brook-1.yaml"), "name: [\n");
    writeFileSync(pathIn("data/batteries/unused.yaml"), "name: Nothing's battery (invented)\n");
    const own = ({ place }: Problem): boolean => /clover-brook-1\.yaml|unused\.yaml/.test(place.file);
    const told = (await measured()).problems.filter(own);
    expect(new Set(told.map(({ place }) => place.file)).size).toBe(2);
    for (const number of [1, 2, 3]) {
      const { problems } = await measureShard(workspace, { number, of: 3 }, { entries: diskEntries(kept), forecast: noForecast });
      expect(problems.filter(own)).toEqual(told);
    }
  });
});

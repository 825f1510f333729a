/**
 * The five stages, one after the other.
 *
 *   read ──► check ──► measure ──► judge ──► publish
 *   files     problems   figures     findings   JSON, then pages
 *
 * Tests go through one at a time, so that no more than one test's logs are in memory.
 */
import { checkConnectionTimes } from "./check/connection-times.ts";
import { checkLogAgainstReadings } from "./check/log-against-readings.ts";
import { checkLogPlausible } from "./check/log-plausible.ts";
import { checkLogResolution } from "./check/log-resolution.ts";
import { checkLogsListed } from "./check/logs-listed.ts";
import { checkReadingsFit } from "./check/readings-fit.ts";
import { checkReferences } from "./check/references.ts";
import { checkStated } from "./check/stated.ts";
import { type MeasuredRecording, measureRecording } from "./measure/recording.ts";
import { makeTestContext, type TestContext } from "./measure/test-context.ts";
import type { Evidence } from "./nouns/evidence.ts";
import type { Instrument } from "./nouns/instrument.ts";
import { type Problem, sortProblems } from "./nouns/problem.ts";
import { resolveRules } from "./nouns/rules.ts";
import type { Site } from "./nouns/site.ts";
import { assembleCharger } from "./publish/assemble/charger.ts";
import type { Forecaster } from "./publish/assemble/forecast.ts";
import { assembleIndex, assembleRow } from "./publish/assemble/index-results.ts";
import { fillProse } from "./publish/assemble/prose.ts";
import { assembleTest } from "./publish/assemble/test.ts";
import { chargerPath } from "./publish/links.ts";
import type { Results, TestResult } from "./publish/results.ts";
import { readTestFiles } from "./read/test-files.ts";
import { readWorkspace, type TestFolder, type Workspace } from "./read/workspace.ts";
import type { InputFile } from "./read/workspace-files.ts";

/** What a run tells while it works; passed in, so that a test can run in silence. */
export type RunEffects = {
  onTest?(done: number, total: number, id: string): void;
  /** Every recording of a test that is published, while its samples are still there. */
  onRecording?(testId: string, recording: MeasuredRecording, zone: string): void;
  /** Makes a mode's forecast, or recalls it; made anew where left out. */
  forecast?: Forecaster;
};

export type RunOutcome = {
  /** Undefined where the site's own record has errors: then nothing can be published. */
  readonly results: Results | undefined;
  readonly workspace: Workspace;
  readonly problems: readonly Problem[];
  /** Samples read from logs. */
  readonly rows: number;
  readonly testsRead: number;
};

/**
 * Runs read, check, measure and judge over a workspace, and assembles the results.
 *
 * @param root  the folder that holds data/ and content/; nothing in it is written to
 */
export async function run(root: string, effects: RunEffects = {}): Promise<RunOutcome> {
  const { value: workspace, problems } = await readWorkspace(root);
  for (const folder of workspace.tests)
    problems.push(
      ...checkReferences(workspace, folder),
      ...checkLogsListed(folder),
      ...checkConnectionTimes(folder),
      ...checkStated(workspace, folder),
    );

  const site = workspace.site?.value;
  const published: { context: TestContext; result: TestResult }[] = [];
  let rows = 0;
  effects.onTest?.(0, workspace.tests.length, "");
  for (const [index, folder] of workspace.tests.entries()) {
    const one = await runTest(workspace, folder, site, problems, effects);
    problems.push(...one.problems);
    rows += one.rows;
    if (one.published !== undefined) published.push(one.published);
    effects.onTest?.(index + 1, workspace.tests.length, folder.id);
  }
  const results = site === undefined ? undefined : assemble(workspace, site, published, problems, effects.forecast);
  return { results, workspace, problems: sortProblems(problems), rows, testsRead: workspace.tests.length };
}

/** One test through all stages. Its logs are dropped when it is done; only thinned series and figures stay. */
async function runTest(
  workspace: Workspace,
  folder: TestFolder,
  site: Site | undefined,
  earlier: readonly Problem[],
  effects: RunEffects,
): Promise<{ problems: Problem[]; rows: number; published: { context: TestContext; result: TestResult } | undefined }> {
  // 1. read
  const { value: files, problems } = await readTestFiles(folder, workspace.instruments);
  const rows = files.logs.reduce((sum, { log }) => sum + log.counts.samples, 0);
  const record = folder.record;
  const charger = record === undefined ? undefined : workspace.chargers.get(record.value.charger);
  const battery = record === undefined ? undefined : workspace.batteries.get(record.value.battery)?.value;
  const mode = charger?.value.modes.find((candidate) => candidate.id === record?.value.mode);

  // 2. check
  if (record !== undefined && battery !== undefined) {
    if (folder.readingsFile !== undefined)
      problems.push(...checkReadingsFit(files.readings, folder.readingsFile.path, folder.id, record.value, battery));
    for (const { file, connection, recorderId, log } of files.logs) {
      const times = record.value.connections[connection];
      const recorder = recorderId === undefined ? undefined : workspace.instruments.get(recorderId);
      problems.push(
        ...checkLogPlausible(
          log.samples,
          battery,
          file.path,
          folder.id,
          times?.on === undefined ? undefined : Date.parse(times.on),
          times?.off === undefined ? undefined : Date.parse(times.off),
          recorder?.placeOf(["dialect"]),
        ),
      );
      if (recorder !== undefined)
        problems.push(...checkLogResolution(log.samples, recorder.value.measures, file.path, folder.id, recorder.placeOf(["measures"])));
      if (folder.readingsFile !== undefined)
        problems.push(...checkLogAgainstReadings(log.samples, battery, file.path, folder.id, files.readings, folder.readingsFile.path));
    }
  }
  const ofTest = [...earlier.filter((problem) => problem.test === folder.id), ...problems];
  const isBroken = ofTest.some((problem) => problem.level === "error");
  if (isBroken || record === undefined || charger === undefined || battery === undefined || mode === undefined || site === undefined)
    return { problems, rows, published: undefined };

  // 3. measure
  const { value: test } = record;
  const instrument = (id: string | undefined): Instrument | undefined =>
    id === undefined ? undefined : workspace.instruments.get(id)?.value;
  const roles = Object.fromEntries(
    Object.entries(test.instruments).flatMap(([role, id]) => {
      const found = instrument(id);
      return found === undefined ? [] : [[role, found]];
    }),
  );
  const context = makeTestContext({
    id: folder.id,
    test,
    charger: charger.value,
    chargerId: test.charger,
    mode,
    battery,
    instruments: roles,
    site,
    rules: resolveRules(site),
    readings: files.readings,
    readingsFile: folder.readingsFile === undefined ? undefined : { file: folder.readingsFile.path, sha256: folder.readingsFile.sha256 },
    recordEvidence: evidenceOfFile(folder.recordFile),
    connections: test.connections.map((connection, index) => {
      const id = connection.id ?? String(index + 1);
      return {
        id,
        record: connection,
        recordings: files.logs
          .filter((log) => log.connection === index)
          .map(({ id: recordingId, file, recorderId, log }) =>
            measureRecording(
              {
                id: recordingId,
                file: file.path,
                sha256: file.sha256,
                bytes: file.bytes,
                connection: id,
                recorderId,
                recorder: instrument(recorderId),
                capacityAh: battery.capacityAh,
                cells: battery.cells,
              },
              log,
            ),
          ),
      };
    }),
  });

  // 4. judge, and 5. the first half of publish: the test's results
  const result = assembleTest(context, ofTest, filesBehind(workspace, folder));
  for (const recording of context.connections.flatMap((connection) => connection.recordings))
    effects.onRecording?.(folder.id, recording, test.zone);
  return { problems, rows, published: { context: withoutSamples(context), result } };
}

/** A context that no longer holds the samples: what is left is small, however long the logs were. */
function withoutSamples(context: TestContext): TestContext {
  return {
    ...context,
    connections: context.connections.map((connection) => ({
      ...connection,
      recordings: connection.recordings.map((recording) => ({ ...recording, trace: thinTrace(recording.trace) })),
    })),
  };
}

type Trace = TestContext["connections"][number]["recordings"][number]["trace"];

/** Every n-th sample of a long trace: enough for a small profile. */
function thinTrace(trace: Trace): Trace {
  const stride = Math.ceil(trace.elapsedS.length / 2000);
  if (stride <= 1) return trace;
  const every = (values: Float64Array): Float64Array => values.filter((_, index) => index % stride === 0);
  const elapsedS = every(trace.elapsedS);
  return {
    ...trace,
    elapsedS,
    voltagesV: every(trace.voltagesV),
    currentsA: every(trace.currentsA),
    temperaturesC: every(trace.temperaturesC),
    lines: trace.lines.filter((_, index) => index % stride === 0),
    gaps: [],
    stretches: [[0, elapsedS.length]],
  };
}

function evidenceOfFile(file: InputFile): Evidence {
  return { file: file.path, sha256: file.sha256 };
}

/** The files that a test's figures rest on: its own, and the records of charger, battery, instruments and site. */
function filesBehind(workspace: Workspace, folder: TestFolder): InputFile[] {
  const test = folder.record?.value;
  const recorders = test?.connections.flatMap((connection) =>
    connection.recordings.flatMap((entry) => (typeof entry === "string" || entry.recorder === undefined ? [] : [entry.recorder])),
  );
  const names = new Set([
    "data/site",
    `data/chargers/${test?.charger}`,
    `data/batteries/${test?.battery}`,
    ...Object.values(test?.instruments ?? {}).map((id) => `data/instruments/${id}`),
    ...(recorders ?? []).map((id) => `data/instruments/${id}`),
  ]);
  return workspace.files.filter(
    (file) =>
      (file.path.startsWith(`${folder.folder}/`) && !file.path.includes("/photos/")) || names.has(file.path.replace(/\.ya?ml$/, "")),
  );
}

function assemble(
  workspace: Workspace,
  site: Site,
  published: readonly { context: TestContext; result: TestResult }[],
  problems: Problem[],
  forecaster: Forecaster | undefined,
): Results {
  const tests = published.map(({ result }) => result);
  const chargers = [...workspace.chargers].map(([id, record]) => {
    const review = workspace.reviews.get(id);
    const prose = review === undefined ? undefined : fillProse(review, id, chargerPath(id), 3, tests, site.language);
    problems.push(...(prose?.problems ?? []));
    const file = workspace.files.find((candidate) => candidate.path === record.file);
    if (file === undefined) throw new Error(`${record.file} was read, yet is not among the workspace's files`);
    return assembleCharger({
      id,
      charger: record.value,
      evidence: evidenceOfFile(file),
      tests: published.filter(({ context }) => context.chargerId === id),
      prose: prose?.value ?? null,
      forecaster,
      bench: published.map(({ context }) => context),
    });
  });
  const shown = chargers.filter((charger) => charger.tests.length > 0);
  const pages = [...workspace.pages].flatMap(([id, words]) => {
    const filled = fillProse(words, id, `${id}/`, 2, tests, site.language);
    problems.push(...filled.problems);
    return filled.value === undefined ? [] : [filled.value];
  });
  for (const [id, review] of workspace.reviews)
    if (!workspace.chargers.has(id) && !workspace.broken.has(`charger ${id}`))
      problems.push({
        id: "review-without-charger",
        level: "doubt",
        place: { file: review.file },
        found: `words on a charger "${id}"`,
        expected: `a record data/chargers/${id}.yaml`,
        mend: "rename the page after the charger it speaks of",
      });
  const rows = published.flatMap(({ context, result }) => {
    const charger = shown.find((candidate) => candidate.id === context.chargerId);
    return charger === undefined ? [] : [assembleRow(context, result, charger)];
  });
  return {
    index: assembleIndex({
      site,
      rows,
      chargers: shown,
      tests,
      pages,
      notPublished: notPublished(workspace, tests, problems),
      files: workspace.files,
    }),
    tests,
    chargers: shown,
  };
}

function notPublished(workspace: Workspace, tests: readonly TestResult[], problems: readonly Problem[]): { what: string; why: string }[] {
  return workspace.tests
    .filter((folder) => !tests.some((test) => test.id === folder.id))
    .map((folder) => {
      const own = problems.filter(
        (problem) => problem.level === "error" && (problem.test === folder.id || problem.place.file.startsWith(`${folder.folder}/`)),
      );
      return {
        what: `test ${folder.id}`,
        why:
          own.length > 0 ? `its files have ${own.length === 1 ? "an error" : `${own.length} errors`}` : "a record that it uses has errors",
      };
    });
}

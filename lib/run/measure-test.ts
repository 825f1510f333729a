/** One test through read, check, measure and judge, and into its results. */
import { checkConnectionTimes } from "../check/connection-times.ts";
import { checkLogAgainstReadings } from "../check/log-against-readings.ts";
import { checkLogPlausible } from "../check/log-plausible.ts";
import { checkLogResolution } from "../check/log-resolution.ts";
import { checkLogsListed } from "../check/logs-listed.ts";
import { checkReadingsFit } from "../check/readings-fit.ts";
import { checkReferences } from "../check/references.ts";
import { checkStated } from "../check/stated.ts";
import { measureRecording } from "../measure/recording.ts";
import { makeTestContext, type TestContext } from "../measure/test-context.ts";
import type { Instrument } from "../nouns/instrument.ts";
import type { Problem } from "../nouns/problem.ts";
import { resolveRules } from "../nouns/rules.ts";
import { assembleTest } from "../publish/assemble/test.ts";
import { type EncodedLog, encodeLog } from "../publish/log-samples/encode.ts";
import type { TestResult } from "../publish/results.ts";
import { readTestFiles } from "../read/test-files.ts";
import { type TestBasis, workspaceOf } from "./basis.ts";

/** A recording's samples, as the log explorer reads them. */
export type RecordingSamples = { readonly recording: string; readonly log: EncodedLog };

/** A test whose results can be published: the context is what its charger is put together from, and holds no long columns. */
export type PublishedTest = {
  readonly context: TestContext;
  readonly result: TestResult;
  readonly samples: readonly RecordingSamples[];
};

export type MeasuredTest = {
  /** All that was found amiss with the test, but for what reading the workspace had told already. */
  readonly problems: readonly Problem[];
  /** Samples read from its logs. */
  readonly rows: number;
  /** Undefined where an error keeps it off the site. */
  readonly published: PublishedTest | undefined;
};

/** Measures a test from its basis alone. Its logs are dropped when it is done; figures, thinned series and encoded samples stay. */
export async function measureTest(basis: TestBasis): Promise<MeasuredTest> {
  const { workspace, folder } = workspaceOf(basis);
  const site = workspace.site?.value;
  // 1. read
  const { value: files, problems: found } = await readTestFiles(folder, workspace.instruments);
  const rows = files.logs.reduce((sum, { log }) => sum + log.counts.samples, 0);
  const record = folder.record;
  const charger = record === undefined ? undefined : workspace.chargers.get(record.value.charger);
  const battery = record === undefined ? undefined : workspace.batteries.get(record.value.battery)?.value;
  const mode = charger?.value.modes.find((candidate) => candidate.id === record?.value.mode);

  // 2. check
  const problems = [
    ...checkReferences(workspace, folder),
    ...checkLogsListed(folder),
    ...checkConnectionTimes(folder),
    ...checkStated(workspace, folder),
    ...found,
  ];
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
  const ofTest = [...basis.problems, ...problems];
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
    recordEvidence: { file: folder.recordFile.path, sha256: folder.recordFile.sha256 },
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
  const result = assembleTest(context, ofTest, basis.files);
  const samples = context.connections
    .flatMap((connection) => connection.recordings)
    .flatMap((recording) => {
      const log = encodeLog(recording.trace, recording.startMs, test.zone);
      return log === undefined ? [] : [{ recording: recording.id, log }];
    });
  return { problems, rows, published: { context: withoutSamples(context), result, samples } };
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

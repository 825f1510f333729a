import { judgeClaims } from "../../judge/claims/index.ts";
import { judgeFindings } from "../../judge/findings/index.ts";
import { toFigure } from "../../measure/define.ts";
import { connectionFigures, testFigures } from "../../measure/figures/index.ts";
import { figuresOfVisit } from "../../measure/figures/reading-values.ts";
import { findTargetOutcome, targetStatusOf } from "../../measure/growth.ts";
import { type InstrumentRole, isSealed, type TestContext } from "../../measure/test-context.ts";
import { examinationOf } from "../../measure/witnesses.ts";
import type { Problem } from "../../nouns/problem.ts";
import { formatInstant } from "../../read/clock.ts";
import type { InputFile } from "../../read/workspace-files.ts";
import { schemaVersion, type TestResult } from "../results.ts";
import { methodVersion } from "../version.ts";
import { publishedDoubts } from "./doubts.ts";
import { assembleExamination } from "./examination.ts";
import { batteryFacts, instrumentFacts, roleLabels, testFacts } from "./facts.ts";
import { assembleRecording, rawAddress } from "./recording.ts";
import { makeTimeline, stripStartMs } from "./timeline.ts";

/** The name of a test where its record gives none. */
export function titleOf({ test, charger, mode, battery }: TestContext): string {
  return test.title ?? `${charger.name}, ${mode.name}, on ${battery.name}`;
}

/**
 * The published results of a test: measured, judged, and told with their evidence.
 *
 * @param problems  the doubts that touch this test
 * @param files     the input files that this test rests on
 */
export function assembleTest(context: TestContext, problems: readonly Problem[], files: readonly InputFile[]): TestResult {
  const k = context.rules.coverageFactor;
  const { zone } = context.test;
  const findings = judgeFindings(context);
  const startMs = stripStartMs(context);
  const logFiles = new Set(context.connections.flatMap((connection) => connection.recordings.map((recording) => recording.file)));
  return {
    schemaVersion,
    methodVersion,
    id: context.id,
    title: titleOf(context),
    invented: context.site.invented,
    inventedNote: context.site.inventedNote ?? null,
    charger: { id: context.chargerId, name: context.charger.name },
    mode: { id: context.mode.id, name: context.mode.name },
    battery: {
      id: context.test.battery,
      name: context.battery.name,
      facts: batteryFacts(context),
      sealed: isSealed(context.battery),
      nominalVoltageV: context.battery.nominalVoltageV,
      capacityAh: context.battery.capacityAh,
      construction: context.battery.construction,
    },
    instruments: (Object.entries(context.instruments) as [InstrumentRole, TestContext["instruments"][InstrumentRole]][]).flatMap(
      ([role, instrument]) =>
        instrument === undefined
          ? []
          : [
              {
                id: context.test.instruments[role] ?? role,
                name: instrument.name,
                role: roleLabels[role],
                facts: instrumentFacts(instrument),
              },
            ],
    ),
    facts: testFacts(context),
    status: statusOf(context),
    target:
      context.test.target === undefined
        ? null
        : {
            densityAt25C: context.test.target.densityAt25C,
            stopRule: context.test.target.stopRule ?? null,
            stop: context.test.target.stop ?? null,
          },
    timeline: makeTimeline(context, findings),
    connections: context.connections.map((connection) => ({
      id: connection.id,
      number: connection.number,
      on: connection.onMs === undefined ? null : formatInstant(connection.onMs, zone),
      off: connection.offMs === undefined ? null : formatInstant(connection.offMs, zone),
      note: connection.record.note ?? null,
      endedBy: connection.ending.by,
      endedWords: connection.ending.words,
      recordings: connection.recordings.map((recording) => recording.id),
      figures: connectionFigures.map((definition) => toFigure(definition, `connection/${connection.id}`, connection, k)),
    })),
    recordings: context.connections.flatMap((connection) =>
      connection.recordings.map((recording, place) =>
        assembleRecording(context, recording, connection.endings[place] ?? connection.ending, problems),
      ),
    ),
    readings: context.readings.map((reading) => ({
      number: reading.number,
      at: formatInstant(reading.atMs, zone),
      atH: startMs === undefined ? 0 : (reading.atMs - startMs) / 3_600_000,
      connectionsBefore: reading.connectionsBefore,
      mixed: reading.mixed ?? null,
      charger: reading.charger ?? null,
      note: reading.note ?? null,
      figures: figuresOfVisit(context, reading),
    })),
    figures: testFigures.map((definition) => toFigure(definition, "test", context, k)),
    claims: judgeClaims(context),
    examination: assembleExamination(examinationOf(context)),
    findings,
    doubts: publishedDoubts(problems.filter((problem) => !logFiles.has(problem.place.file))),
    notes: context.test.notes ?? null,
    revisions: context.test.revisions.map((revision) => ({ ...revision, noticedBy: revision.noticedBy ?? null })),
    excluded: context.test.excluded.map((exclusion) => ({ ...exclusion })),
    files: files.map((file) => ({
      path: file.path,
      download: rawAddress(file.path),
      sha256: file.sha256,
      bytes: file.bytes,
      what: whatIs(file.path),
    })),
  };
}

/** Where the visits leave open whether the target was met, that is the status: not knowing is no failure of the charger. */
function statusOf(context: TestContext): TestResult["status"] {
  const status = targetStatusOf(findTargetOutcome(context));
  return status !== "reached" && context.test.abandoned !== undefined ? "abandoned" : status;
}

function whatIs(path: string): string {
  if (path.includes("/logs/")) return "log, as the recorder wrote it";
  if (/readings\./.test(path)) return "readings of the visits";
  if (path.startsWith("data/chargers/")) return "charger record";
  if (path.startsWith("data/batteries/")) return "battery record";
  if (path.startsWith("data/instruments/")) return "instrument record";
  return path === "data/site.yaml" ? "site record" : "test record";
}

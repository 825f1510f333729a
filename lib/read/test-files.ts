/** Reads one test's logs and readings. */
import type { Instrument } from "../nouns/instrument.ts";
import type { Problem } from "../nouns/problem.ts";
import type { Reading } from "../nouns/reading.ts";
import { joinLogs } from "./log/join-logs.ts";
import { type Log, readLog } from "./log.ts";
import { parseReadings, parseSheetReadings } from "./readings.ts";
import type { PlacedRecord } from "./record.ts";
import { entryOf, recordingId } from "./recording-entry.ts";
import type { TestFolder } from "./workspace.ts";
import { type InputFile, readText } from "./workspace-files.ts";

/** A log that a connection lists, read. */
export type RecordedLog = {
  /** Names it in addresses, once in a test. */
  readonly id: string;
  readonly file: InputFile;
  /** The second file, where voltage and current were logged apart. */
  readonly second: InputFile | undefined;
  readonly connection: number;
  readonly recorderId: string | undefined;
  readonly log: Log;
};

export type TestFiles = { readonly logs: readonly RecordedLog[]; readonly readings: readonly Reading[] };

/**
 * Reads all that a test's record lists. A log that is listed but not there has been told by the checks and is passed over.
 * Where the record cannot be read, the readings are looked through all the same, so that all their problems are told at once.
 */
export async function readTestFiles(
  folder: TestFolder,
  instruments: ReadonlyMap<string, PlacedRecord<Instrument>>,
): Promise<{ value: TestFiles; problems: Problem[] }> {
  const problems: Problem[] = [];
  const record = folder.record;
  const ofTest = (found: readonly Problem[]): Problem[] => found.map((problem) => ({ ...problem, test: folder.id }));
  if (record === undefined) {
    const { problems: found } = await readReadings(folder, "UTC");
    return { value: { logs: [], readings: [] }, problems: ofTest(found) };
  }
  const { zone, connections, instruments: used } = record.value;
  const logs: RecordedLog[] = [];
  for (const [index, connection] of connections.entries()) {
    for (const entry of connection.recordings) {
      const listed = entryOf(entry);
      const recorderId = listed.recorder ?? used.recorder;
      const recorder = recorderId === undefined ? undefined : instruments.get(recorderId);
      const read = async (name: string, isFirst: boolean): Promise<{ file: InputFile; log: Log } | undefined> => {
        const file = folder.logs.find((candidate) => candidate.path === `${folder.folder}/${name}`);
        if (file === undefined) return undefined;
        const startedAt = listed.startedAt ?? connection.on;
        const { value, problems: found } = await readLog({
          absolutePath: file.absolutePath,
          file: file.path,
          dialect: recorder?.value.dialect,
          dialectPlace: recorder?.placeOf(recorder.value.dialect === undefined ? [] : ["dialect"]),
          zone,
          startedAtMs: startedAt === undefined ? undefined : Date.parse(startedAt),
          badRows: isFirst ? listed.badRows : [],
          part: isFirst ? listed.part : undefined,
        });
        problems.push(...found);
        return value === undefined ? undefined : { file, log: value };
      };
      const first = await read(listed.file, true);
      const second = listed.with === undefined ? undefined : await read(listed.with, false);
      if (first === undefined || (listed.with !== undefined && second === undefined)) continue;
      const joined =
        second === undefined
          ? { value: first.log, problems: [] }
          : joinLogs({ file: first.file.path, log: first.log }, { file: second.file.path, log: second.log }, listed.withClockAheadS);
      problems.push(...joined.problems);
      if (joined.value !== undefined)
        logs.push({ id: recordingId(listed), file: first.file, second: second?.file, connection: index, recorderId, log: joined.value });
    }
  }
  const readings = await readReadings(folder, zone);
  problems.push(...readings.problems);
  return { value: { logs, readings: readings.value }, problems: ofTest(problems) };
}

async function readReadings(folder: TestFolder, zone: string): Promise<{ value: readonly Reading[]; problems: readonly Problem[] }> {
  const file = folder.readingsFile;
  if (file === undefined) return { value: [], problems: [] };
  if (file.path.endsWith(".xlsx")) {
    try {
      return await parseSheetReadings(file.absolutePath, file.path, zone);
    } catch {
      return {
        value: [],
        problems: [
          unreadable(file.path, "bytes that are no spreadsheet", "an .xlsx workbook", "save it again as .xlsx, or as readings.csv"),
        ],
      };
    }
  }
  const text = await readText(file);
  if (text === undefined)
    return {
      value: [],
      problems: [
        unreadable(
          file.path,
          "bytes that are not UTF-8",
          "text saved as UTF-8",
          "save the file again as UTF-8; in a spreadsheet choose CSV with UTF-8",
        ),
      ],
    };
  return parseReadings(text, file.path, zone);
}

function unreadable(file: string, found: string, expected: string, mend: string): Problem {
  return { id: "readings-encoding", level: "error", place: { file }, found, expected, mend };
}

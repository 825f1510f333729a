import type { Place, Problem } from "../nouns/problem.ts";
import { nearest } from "../read/record.ts";
import { entryOf } from "../read/recording-entry.ts";
import type { TestFolder } from "../read/workspace.ts";

/** Every log that a connection lists is there, once; a log that no connection lists is told, so that no evidence is lost in silence. */
export function checkLogsListed(folder: TestFolder): Problem[] {
  const record = folder.record;
  if (record === undefined) return [];
  const problems: Problem[] = [];
  const there = folder.logs.map((log) => log.path.slice(folder.folder.length + 1));
  const seen = new Set<string>();
  const listed = new Set<string>();
  const tellMissing = (name: string, at: Place): void => {
    if (there.includes(name)) return;
    const near = nearest(name, there);
    problems.push({
      id: "log-missing",
      level: "error",
      place: at,
      found: `"${name}", which is not in ${folder.folder}/logs`,
      expected: there.length === 0 ? "a log in that folder" : `one of ${there.join(", ")}`,
      mend: near === undefined ? "copy the recording there as the recorder wrote it, or take the line out" : `did you mean "${near}"?`,
      test: folder.id,
    });
  };
  record.value.connections.forEach((connection, index) => {
    connection.recordings.forEach((entry, place) => {
      const { file, with: second, part } = entryOf(entry);
      const at = record.placeOf(["connections", index, "recordings", place]);
      // Two recordings of one file are two logs; the same one twice is a slip.
      const key = part === undefined ? file : `${file}, part ${part}`;
      if (seen.has(key) || (part !== undefined && seen.has(file)))
        problems.push({
          id: "log-twice",
          level: "error",
          place: at,
          found: `"${key}" a second time`,
          expected: "each log in one connection",
          mend: "take it out of one of the connections",
          test: folder.id,
        });
      seen.add(key);
      for (const name of second === undefined ? [file] : [file, second]) {
        listed.add(name);
        tellMissing(name, at);
      }
    });
  });
  for (const log of folder.logs) {
    const name = log.path.slice(folder.folder.length + 1);
    if (!listed.has(name) && !record.value.excluded.some(({ what }) => what.includes(name)))
      problems.push({
        id: "log-unlisted",
        level: "doubt",
        place: { file: log.path },
        found: "a log that no connection lists",
        expected: `each log under the recordings of a connection in ${folder.folder}/test.yaml`,
        mend: `list it, or say why it is left out: excluded: [{ what: ${name}, why: … }]`,
        test: folder.id,
      });
  }
  return problems;
}

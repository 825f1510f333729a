import type { Problem } from "../nouns/problem.ts";
import { nearest } from "../read/record.ts";
import type { TestFolder } from "../read/workspace.ts";

/** Every log that a connection lists is there, once; a log that no connection lists is told, so that no evidence is lost in silence. */
export function checkLogsListed(folder: TestFolder): Problem[] {
  const record = folder.record;
  if (record === undefined) return [];
  const problems: Problem[] = [];
  const there = folder.logs.map((log) => log.path.slice(folder.folder.length + 1));
  const seen = new Set<string>();
  record.value.connections.forEach((connection, index) => {
    connection.recordings.forEach((entry, place) => {
      const name = typeof entry === "string" ? entry : entry.file;
      const at = record.placeOf(["connections", index, "recordings", place]);
      if (seen.has(name))
        problems.push({
          id: "log-twice",
          level: "error",
          place: at,
          found: `"${name}" a second time`,
          expected: "each log in one connection",
          mend: "take it out of one of the connections",
          test: folder.id,
        });
      seen.add(name);
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
    });
  });
  for (const log of folder.logs) {
    const name = log.path.slice(folder.folder.length + 1);
    if (!seen.has(name) && !record.value.excluded.some(({ what }) => what.includes(name)))
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

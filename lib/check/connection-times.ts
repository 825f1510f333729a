import type { Problem } from "../nouns/problem.ts";
import type { TestFolder } from "../read/workspace.ts";

/** Connections follow each other in time, and each ends after it began. */
export function checkConnectionTimes(folder: TestFolder): Problem[] {
  const record = folder.record;
  if (record === undefined) return [];
  const problems: Problem[] = [];
  let latest: { text: string; ms: number } | undefined;
  record.value.connections.forEach((connection, index) => {
    const tell = (field: "on" | "off", found: string, expected: string, mend: string): void => {
      problems.push({
        id: "connection-times",
        level: "error",
        place: record.placeOf(["connections", index, field]),
        found,
        expected,
        mend,
        test: folder.id,
      });
    };
    if (connection.on !== undefined && connection.off !== undefined && Date.parse(connection.off) <= Date.parse(connection.on))
      tell("off", `off "${connection.off}"`, `a time after on, ${connection.on}`, "check date and offset of both");
    if (connection.on !== undefined && latest !== undefined && Date.parse(connection.on) < latest.ms)
      tell(
        "on",
        `on "${connection.on}"`,
        `a time after the connection before, ${latest.text}`,
        "put connections in order of time, and check their offsets",
      );
    for (const text of [connection.on, connection.off])
      if (text !== undefined && (latest === undefined || Date.parse(text) > latest.ms)) latest = { text, ms: Date.parse(text) };
  });
  return problems;
}

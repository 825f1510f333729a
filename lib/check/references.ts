import type { Problem } from "../nouns/problem.ts";
import { nearest } from "../read/record.ts";
import type { TestFolder, Workspace } from "../read/workspace.ts";

/** Every name that a test's record uses stands for a record that is there, and a mode for one that the charger has. */
export function checkReferences(workspace: Workspace, folder: TestFolder): Problem[] {
  const record = folder.record;
  if (record === undefined) return [];
  const problems: Problem[] = [];
  const check = (kind: string, id: string, known: readonly string[], path: readonly (string | number)[], where: string): void => {
    if (known.includes(id) || workspace.broken.has(`${kind} ${id}`)) return;
    const near = nearest(id, known);
    problems.push({
      id: "reference",
      level: "error",
      place: record.placeOf(path),
      found: `the ${kind} "${id}"`,
      expected: known.length === 0 ? `a ${kind} that is in ${where}` : `one of ${known.join(", ")}`,
      mend:
        near === undefined
          ? `correct the name, or ${kind === "mode" ? "add the mode to" : "make"} ${where.replace("*", id)}`
          : `did you mean "${near}"?`,
      test: folder.id,
    });
  };
  const { value } = record;
  check("charger", value.charger, [...workspace.chargers.keys()], ["charger"], "data/chargers/*.yaml");
  check("battery", value.battery, [...workspace.batteries.keys()], ["battery"], "data/batteries/*.yaml");
  const modes = workspace.chargers.get(value.charger)?.value.modes.map((mode) => mode.id);
  if (modes !== undefined) check("mode", value.mode, modes, ["mode"], `data/chargers/${value.charger}.yaml`);
  const instruments = [...workspace.instruments.keys()];
  for (const [role, id] of Object.entries(value.instruments))
    if (id !== undefined) check("instrument", id, instruments, ["instruments", role], "data/instruments/*.yaml");
  value.connections.forEach((connection, index) => {
    connection.recordings.forEach((entry, place) => {
      if (typeof entry !== "string" && entry.recorder !== undefined)
        check(
          "instrument",
          entry.recorder,
          instruments,
          ["connections", index, "recordings", place, "recorder"],
          "data/instruments/*.yaml",
        );
    });
  });
  return problems;
}

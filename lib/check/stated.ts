import type { Problem } from "../nouns/problem.ts";
import type { TestFolder, Workspace } from "../read/workspace.ts";

/** What makes a figure mean something is stated: the recorder of each recording, the accuracy of each recorder, and a target for a battery whose acid can be read. */
export function checkStated(workspace: Workspace, folder: TestFolder): Problem[] {
  const record = folder.record;
  if (record === undefined) return [];
  const problems: Problem[] = [];
  const { value } = record;
  const recorderIds = new Set<string>();
  value.connections.forEach((connection, index) => {
    connection.recordings.forEach((entry, place) => {
      const recorderId = (typeof entry === "string" ? undefined : entry.recorder) ?? value.instruments.recorder;
      if (recorderId !== undefined) recorderIds.add(recorderId);
      else
        problems.push({
          id: "recorder-missing",
          level: "doubt",
          place: record.placeOf(["connections", index, "recordings", place]),
          found: `the recording "${typeof entry === "string" ? entry : entry.file}" of no named recorder`,
          expected: 'the line "recorder:" under instruments, or with the recording',
          mend: "name the recorder, so that its values carry an accuracy and its way of writing can be told",
          test: folder.id,
        });
    });
  });
  for (const recorderId of recorderIds) {
    const recorder = workspace.instruments.get(recorderId);
    if (recorder === undefined) continue;
    for (const quantity of ["voltage", "current"] as const)
      if (recorder.value.measures?.[quantity] === undefined)
        problems.push({
          id: "accuracy-missing",
          level: "doubt",
          place: recorder.placeOf(["measures"]),
          found: `no accuracy for ${quantity}`,
          expected: `measures: ${quantity}: with percentOfReading, digits and resolution, or plusMinus`,
          mend: "copy it from the data sheet; without it no claim can be judged",
          test: folder.id,
        });
  }
  const battery = workspace.batteries.get(value.battery)?.value;
  const sealed = battery?.construction === "AGM" || battery?.construction === "gel";
  if (battery !== undefined && !sealed && value.target === undefined)
    problems.push({
      id: "target-missing",
      level: "doubt",
      place: record.placeOf([]),
      found: "no target",
      expected: "target: densityAt25C: …, the density at which this battery counts as full",
      mend: "state it; connections, hours and cost to the target are absent without it",
      test: folder.id,
    });
  return problems;
}

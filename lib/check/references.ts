import type { Instrument } from "../nouns/instrument.ts";
import type { Problem } from "../nouns/problem.ts";
import type { Test } from "../nouns/test.ts";
import { nearest, type PlacedRecord } from "../read/record.ts";
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
  problems.push(...checkKinds(workspace, folder, record));
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

type Role = keyof Test["instruments"];

/** Which kinds of instrument may have a role, and the quantity that lets any other kind have it as well: a clamp meter may measure volts. */
const roles: Readonly<Record<Role, { kinds: readonly Instrument["kind"][]; measures: keyof Instrument["measures"] | undefined }>> = {
  recorder: { kinds: ["recorder"], measures: undefined },
  hydrometer: { kinds: ["hydrometer", "refractometer"], measures: "density" },
  voltmeter: { kinds: ["voltmeter"], measures: "voltage" },
  clampMeter: { kinds: ["clamp-meter"], measures: "current" },
  batteryTester: { kinds: ["battery-tester"], measures: "crankingCurrent" },
  thermometer: { kinds: ["thermometer"], measures: "temperature" },
  energyMeter: { kinds: ["energy-meter"], measures: "energy" },
  scale: { kinds: ["scale"], measures: "weight" },
};

/** Each instrument is of a kind that can do what the test has it do. */
function checkKinds(workspace: Workspace, folder: TestFolder, record: PlacedRecord<Test>): Problem[] {
  return (Object.entries(record.value.instruments) as [Role, string | undefined][]).flatMap(([role, id]) => {
    const instrument = id === undefined ? undefined : workspace.instruments.get(id)?.value;
    if (instrument === undefined) return [];
    const { kinds, measures } = roles[role];
    if (kinds.includes(instrument.kind) || (measures !== undefined && instrument.measures[measures] !== undefined)) return [];
    return [
      {
        id: "instrument-kind",
        level: "doubt",
        place: record.placeOf(["instruments", role]),
        found: `"${id}", a ${instrument.kind}`,
        expected: `a ${kinds.join(" or ")} as ${role}${measures === undefined ? "" : `, or an instrument that states how well it measures ${measures}`}`,
        mend: "name the instrument that was used, or correct its kind in its record",
        test: folder.id,
      },
    ];
  });
}

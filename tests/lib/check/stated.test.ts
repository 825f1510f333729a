import { describe, expect, it } from "vitest";
import { files, messagesOf, replaced, smallWorkspace, written } from "./small-workspace.ts";

describe("what is stated", () => {
  it.each([
    ["voltage", "  voltage: { percentOfReading: 0.2, resolution: 0.01 }\n"],
    ["current", "  current: { percentOfReading: 1, resolution: 0.001 }\n"],
  ])("doubts a recorder without an accuracy of %s", async (quantity, line) => {
    expect(await messagesOf(replaced(files.recorder, line, ""))).toEqual([
      `data/instruments/newt.yaml:4:3: doubt accuracy-missing: expected measures: ${quantity}: with percentOfReading, digits and resolution, or plusMinus, found no accuracy for ${quantity}\n  mend: copy it from the data sheet; without it no claim can be judged`,
    ]);
  });

  it("doubts a test of an open battery without a target", async () => {
    expect(await messagesOf(replaced(files.test, "target:\n  densityAt25C: 1.265\n", ""))).toEqual([
      "data/tests/mole-on-quarry/test.yaml:1:1: doubt target-missing: expected target: densityAt25C: …, the density at which this battery counts as full, found no target\n  mend: state it; connections, hours and cost to the target are absent without it",
    ]);
  });

  it("asks no target of a sealed battery", async () => {
    const sealed = replaced(files.battery, "construction: flooded", "construction: gel");
    const untargeted = replaced(files.test, "target:\n  densityAt25C: 1.265\n", "", sealed);
    expect(await messagesOf(written(files.readings, "at;rest_V\n2026-02-03 13:30;12,11\n", untargeted))).toEqual([]);
  });

  it("doubts a recording of no named recorder, and asks for none where nothing was recorded", async () => {
    expect(await messagesOf(replaced(files.test, "  recorder: newt\n", ""))).toEqual([
      'data/tests/mole-on-quarry/test.yaml:13:18: doubt recorder-missing: expected the line "recorder:" under instruments, or with the recording, found the recording "logs/pomiar.csv" of no named recorder\n  mend: name the recorder, so that its values carry an accuracy and its way of writing can be told',
    ]);
    const { [files.log]: _, ...rest } = smallWorkspace;
    const unrecorded = replaced(files.test, "    recordings: [logs/pomiar.csv]\n", "", rest);
    expect(await messagesOf(replaced(files.test, "  recorder: newt\n", "", unrecorded))).toEqual([]);
  });

  it("doubts the recorder of a single recording like the test's own", async () => {
    const eel = written("data/instruments/eel.yaml", "name: Eel (invented)\nkind: recorder\nmeasures: { voltage: { plusMinus: 0.1 } }\n");
    expect(await messagesOf(replaced(files.test, "[logs/pomiar.csv]", "[{ file: logs/pomiar.csv, recorder: eel }]", eel))).toEqual([
      "data/instruments/eel.yaml:3:11: doubt accuracy-missing: expected measures: current: with percentOfReading, digits and resolution, or plusMinus, found no accuracy for current\n  mend: copy it from the data sheet; without it no claim can be judged",
    ]);
  });
});

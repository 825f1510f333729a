import { describe, expect, it } from "vitest";
import { files, messagesOf, replaced, smallWorkspace } from "./small-workspace.ts";

describe("references", () => {
  it.each([
    [
      "a charger",
      "charger: mole-six",
      "charger: mole-sixx",
      'data/tests/mole-on-quarry/test.yaml:1:10: error reference: expected one of mole-six, found the charger "mole-sixx"\n  mend: did you mean "mole-six"?',
    ],
    [
      "a mode",
      "mode: normal",
      "mode: winter",
      'data/tests/mole-on-quarry/test.yaml:2:7: error reference: expected one of normal, found the mode "winter"\n  mend: correct the name, or add the mode to data/chargers/mole-six.yaml',
    ],
    [
      "a battery",
      "battery: quarry-44",
      "battery: tern-100",
      'data/tests/mole-on-quarry/test.yaml:3:10: error reference: expected one of quarry-44, found the battery "tern-100"\n  mend: correct the name, or make data/batteries/tern-100.yaml',
    ],
    [
      "an instrument",
      "hydrometer: float-glass",
      "hydrometer: flot-glass",
      'data/tests/mole-on-quarry/test.yaml:6:15: error reference: expected one of bench-meter, float-glass, newt, found the instrument "flot-glass"\n  mend: did you mean "float-glass"?',
    ],
    [
      "the recorder of one recording",
      "[logs/pomiar.csv]",
      "[{ file: logs/pomiar.csv, recorder: nwt }]",
      'data/tests/mole-on-quarry/test.yaml:14:53: error reference: expected one of bench-meter, float-glass, newt, found the instrument "nwt"\n  mend: did you mean "newt"?',
    ],
  ])("tells %s that has no record", async (_, from, to, message) => {
    expect(await messagesOf(replaced(files.test, from, to))).toEqual([message]);
  });

  it("tells an instrument whose kind does not measure what it is named for", async () => {
    expect(await messagesOf(replaced(files.test, "hydrometer: float-glass", "hydrometer: bench-meter"))).toEqual([
      'data/tests/mole-on-quarry/test.yaml:6:15: doubt instrument-kind: expected a hydrometer or refractometer as hydrometer, or an instrument that states how well it measures density, found "bench-meter", a voltmeter\n  mend: name the instrument that was used, or correct its kind in its record',
    ]);
  });

  it("takes any instrument that states how well it measures what it is named for: a recorder may be the voltmeter", async () => {
    expect(await messagesOf(replaced(files.test, "voltmeter: bench-meter", "voltmeter: newt"))).toEqual([]);
  });

  it("says nothing more of a record that is there but has errors of its own", async () => {
    const messages = await messagesOf(replaced(files.battery, "cells: 6", "cells: six"));
    expect(messages).toEqual([
      'data/batteries/quarry-44.yaml:3:8: error record-field: expected a number with a decimal point, found cells: "six"\n  mend: change the value to what is expected',
    ]);
  });

  it("says so where there is no record of the kind at all", async () => {
    const { [files.battery]: _, ...rest } = smallWorkspace;
    expect(await messagesOf(rest)).toEqual([
      'data/tests/mole-on-quarry/test.yaml:3:10: error reference: expected a battery that is in data/batteries/*.yaml, found the battery "quarry-44"\n  mend: correct the name, or make data/batteries/quarry-44.yaml',
    ]);
  });
});

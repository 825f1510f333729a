import { describe, expect, it } from "vitest";
import { formatProblem } from "../../../lib/nouns/problem.ts";
import { readWorkspace } from "../../../lib/read/workspace.ts";
import { files, renamed, smallWorkspace, written } from "../check/small-workspace.ts";
import { type Files, withFiles } from "./temp-files.ts";

const read = (workspace: Files) => withFiles(workspace, readWorkspace);
const messages = async (workspace: Files): Promise<string[]> => (await read(workspace)).problems.map(formatProblem);

const unused = (file: string): string =>
  `${file}: doubt file-unused: expected records in data/chargers, data/batteries, data/instruments and data/tests/<test>; words in content/*.md and content/reviews/*.md, found a file that nothing reads\n  mend: move it to where it belongs, or out of the workspace`;
const badName = (file: string, name: string, better: string): string =>
  `${file}: error file-name: expected lower-case letters, digits and single hyphens: the name becomes part of an address that never changes, found the name "${name}"\n  mend: rename it, such as ${better}`;

describe("a workspace in order", () => {
  it("is read whole", async () => {
    const { value, problems } = await read(smallWorkspace);
    expect(problems).toEqual([]);
    expect([...value.chargers.keys()]).toEqual(["mole-six"]);
    expect([...value.batteries.keys()]).toEqual(["quarry-44"]);
    expect([...value.instruments.keys()]).toEqual(["bench-meter", "float-glass", "newt"]);
    expect([...value.reviews.keys()]).toEqual(["mole-six"]);
    expect([...value.pages.keys()]).toEqual(["about"]);
    expect(value.site?.value.title).toBe("Workshop by the weir (invented)");
    expect(value.tests.map(({ id, readingsFile, logs }) => [id, readingsFile?.path, logs.map((log) => log.path)])).toEqual([
      ["mole-on-quarry", files.readings, [files.log]],
    ]);
    expect(value.broken.size).toBe(0);
  });

  it("may have its records as .yml and its readings as .xlsx", async () => {
    const yml = Object.fromEntries(Object.entries(smallWorkspace).map(([name, text]) => [name.replace(/\.yaml$/, ".yml"), text]));
    const { value, problems } = await read(renamed(files.readings, files.readings.replace(".csv", ".xlsx"), yml));
    expect(problems).toEqual([]);
    expect(value.site?.value.title).toBe("Workshop by the weir (invented)");
    expect(value.tests[0]?.readingsFile?.path).toBe("data/tests/mole-on-quarry/readings.xlsx");
  });

  it("may hold photos, which are nobody's stray files", async () => {
    expect(await messages(written("data/tests/mole-on-quarry/photos/label.jpg", Uint8Array.of(0xff, 0xd8)))).toEqual([]);
  });
});

describe("names", () => {
  it.each([
    ["data/batteries/Quarry 44.yaml", "Quarry 44", "quarry-44"],
    ["data/batteries/quarry_44.yaml", "quarry_44", "quarry-44"],
    ["data/batteries/-quarry.yaml", "-quarry", "quarry"],
    ["data/batteries/quarry--44.yaml", "quarry--44", "quarry-44"],
    ["data/batteries/ąę.yaml", "ąę", "test-one"],
    ["content/About.md", "About", "about"],
    ["content/reviews/mole six.md", "mole six", "mole-six"],
  ])("must be fit for an address: %s", async (file, name, better) => {
    expect(await messages(written(file, smallWorkspace[files.battery] ?? ""))).toEqual([badName(file, name, better)]);
  });

  it("of a test must be fit for an address too, and its other files are not told once more", async () => {
    const folder = "data/tests/First Run";
    const workspace = written(`${folder}/test.yaml`, smallWorkspace[files.test] ?? "", written(`${folder}/logs/a.csv`, "0;12;4\n"));
    expect(await messages(workspace)).toEqual([badName(`${folder}/test.yaml`, "First Run", "first-run")]);
  });
});

describe("files at the wrong place", () => {
  it.each([
    "data/notes.txt",
    "data/chargers/old/mole.yaml",
    "data/chargers/mole-six.json",
    "data/tests/mole-on-quarry/Readings.csv",
    "data/tests/mole-on-quarry/readings.ods",
    "data/tests/readings.csv",
    "content/drafts/mole.md",
    "content/about.txt",
  ])("are told: %s", async (file) => expect(await messages(written(file, "x"))).toEqual([unused(file)]));

  it("are told once a test, where the test has no record", async () => {
    const folder = "data/tests/orphan";
    const workspace = written(`${folder}/logs/a.csv`, "", written(`${folder}/logs/b.csv`, "", written(`${folder}/readings.csv`, "")));
    expect(await messages(workspace)).toEqual([
      "data/tests/orphan/logs/a.csv: error test-record-missing: expected the record data/tests/orphan/test.yaml, found a file of a test that has no record\n  mend: make test.yaml, which names the charger, its mode, the battery, the instruments and the connections",
    ]);
  });
});

describe("records that cannot be read", () => {
  it("are kept as broken, so that a reference to them is no misspelling", async () => {
    const { value } = await read(written(files.battery, "cells: 6\n"));
    expect([...value.broken]).toEqual(["battery quarry-44"]);
    expect(value.batteries.size).toBe(0);
  });

  it("must be UTF-8", async () => {
    expect(await messages(written(files.site, Uint8Array.of(0x74, 0xea)))).toEqual([
      "data/site.yaml: error record-encoding: expected text saved as UTF-8, found bytes that are not UTF-8\n  mend: save the file again as UTF-8",
    ]);
  });

  it("must be there once", async () => {
    expect(await messages(written("data/tests/mole-on-quarry/test.yml", smallWorkspace[files.test] ?? ""))).toContain(
      'data/tests/mole-on-quarry/test.yml: error record-twice: expected each record once, found the same record in "data/tests/mole-on-quarry/test.yaml"\n  mend: keep one of the two and move the other out of the workspace',
    );
  });

  it("include a site record that is not there, and a workspace that is not there", async () => {
    const missing =
      'data/site.yaml: error site-missing: expected the site\'s own record, with at least a title, found no such file\n  mend: make data/site.yaml with the line "title: …"; --workspace DIR names another folder';
    const { [files.site]: _, ...rest } = smallWorkspace;
    expect(await messages(rest)).toEqual([missing]);
    expect((await readWorkspace(`${import.meta.dirname}/no-such-folder`)).problems.map(formatProblem)).toEqual([missing]);
  });

  it("include readings that are there twice", async () => {
    expect(await messages(written("data/tests/mole-on-quarry/readings.xlsx", ""))).toEqual([
      'data/tests/mole-on-quarry/readings.xlsx: error readings-twice: expected the readings once, found "readings.csv" and "readings.xlsx"\n  mend: keep the one that holds the visits and move the other out of the workspace',
    ]);
  });
});

import { describe, expect, it } from "vitest";
import { battery } from "../../../lib/nouns/battery.ts";
import { charger } from "../../../lib/nouns/charger.ts";
import { instrument } from "../../../lib/nouns/instrument.ts";
import { formatProblem } from "../../../lib/nouns/problem.ts";
import { test } from "../../../lib/nouns/test.ts";
import { nearest, readRecord } from "../../../lib/read/record.ts";

const good = [
  "name: Quarry 44",
  "nominalVoltageV: 12",
  "cells: 6",
  "construction: flooded",
  "capacityAh: 44",
  "crankingRating: { currentA: 400, standard: EN 50342-1 }",
];
const lines = (changed: Readonly<Record<number, string>>): string => good.map((line, index) => changed[index + 1] ?? line).join("\n");
const ofBattery = (text: string): string[] => readRecord(text, "b.yaml", battery).problems.map(formatProblem);

describe("records in order", () => {
  it("have their defaults filled in, and know where each field stands", () => {
    const { value, problems } = readRecord(lines({}), "b.yaml", battery);
    expect(problems).toEqual([]);
    expect(value?.value).toMatchObject({ name: "Quarry 44", capacityAh: 44, capacityRateH: 20, capacityBasis: "printed" });
    expect(value?.placeOf(["cells"])).toEqual({ file: "b.yaml", line: 3, column: 8 });
    expect(value?.placeOf(["crankingRating", "standard"])).toEqual({ file: "b.yaml", line: 6, column: 44 });
  });

  it("answer with the nearest place above for a field that is not there", () => {
    const { value } = readRecord(lines({}), "b.yaml", battery);
    expect(value?.placeOf(["crankingRating", "nowhere"])).toEqual({ file: "b.yaml", line: 6, column: 17 });
    expect(value?.placeOf([])).toEqual({ file: "b.yaml", line: 1, column: 1 });
  });

  it("may have Windows line ends and comments", () => {
    expect(readRecord(`# ours\r\n${lines({}).replaceAll("\n", "\r\n")}\r\n`, "b.yaml", battery).problems).toEqual([]);
  });

  it("keep a date as text, as it was written", () => {
    const { value } = readRecord("name: Newt\nkind: voltmeter\ncalibratedOn: 2026-02-03\nmeasures: {}\n", "i.yaml", instrument);
    expect(value?.value.calibratedOn).toBe("2026-02-03");
  });
});

describe("records that are no YAML", () => {
  it.each([
    [
      "a field twice",
      lines({ 4: "cells: 3" }),
      'b.yaml:4:1: error record-yaml: expected each field once, found "cells: 3", a field that was there before\n  mend: keep one of the two',
    ],
    [
      "a tab as indentation",
      "crankingRating:\n\tcurrentA: 400",
      "b.yaml:2:1: error record-yaml: expected two spaces for each level, found a tab as indentation\n  mend: put spaces in place of the tab",
    ],
    [
      "a colon in a text",
      lines({ 1: "name: Quarry 44: the old one" }),
      'b.yaml:1:7: error record-yaml: expected YAML: one field a line, two spaces for each level, found "name: Quarry 44: the old one" (nested mappings are not allowed in compact mappings)\n  mend: check the indentation, and put text that holds ": " or starts with a special sign into quotes',
    ],
  ])("tell %s", (_, text, message) => expect(ofBattery(text)).toEqual([message]));

  it("tell one fault a line, each at its own line", () => {
    const messages = ofBattery(lines({ 2: "cells: 6", 4: "cells: 3" }));
    expect(messages.map((message) => message.split(" ")[0])).toEqual(["b.yaml:3:1:", "b.yaml:4:1:"]);
  });

  it.each(["name: &a Quarry\ncondition: *a", "name: Quarry\ncondition: *nowhere"])("refuse an alias: %j", (text) => {
    expect(ofBattery(text)).toEqual([
      "b.yaml:2:11: error record-alias: expected each value written out, found a YAML alias\n  mend: write the value where it is needed; aliases are refused because a small file can unfold into a huge one",
    ]);
  });

  it("refuse the billion laughs at once", () => {
    const levels = Array.from(
      { length: 20 },
      (_, i) =>
        `l${i}: ${
          i === 0
            ? "&l0 [ha]"
            : `&l${i} [${Array(9)
                .fill(`*l${i - 1}`)
                .join(", ")}]`
        }`,
    );
    expect(readRecord(levels.join("\n"), "b.yaml", battery).problems.map(({ id }) => id)).toEqual(["record-alias"]);
  });

  it("refuse a record of more than a million characters", () => {
    expect(ofBattery(`condition: ${"x".repeat(1_000_000)}`)).toEqual([
      "b.yaml: error record-too-large: expected a record of at most 1000000 characters, found 1000011 characters\n  mend: move measurements into readings.csv or logs/; a record only describes",
    ]);
  });

  it("treat an empty file as a record without its fields", () => {
    expect(ofBattery("# nothing yet\n").map((message) => message.split(" found ")[1])).toEqual([
      'no name\n  mend: add the line "name:" with its value',
      'no nominalVoltageV\n  mend: add the line "nominalVoltageV:" with its value',
      'no cells\n  mend: add the line "cells:" with its value',
      'no construction\n  mend: add the line "construction:" with its value',
      'no capacityAh\n  mend: add the line "capacityAh:" with its value',
    ]);
  });
});

describe("records with wrong fields", () => {
  it.each([
    [
      "a decimal comma",
      lines({ 5: "capacityAh: 44,5" }),
      'b.yaml:5:13: error record-field: expected a number with a decimal point, found capacityAh: "44,5"\n  mend: write it with a decimal point: 44.5',
    ],
    [
      "a unit behind the number",
      lines({ 5: "capacityAh: 44 Ah" }),
      'b.yaml:5:13: error record-field: expected a number with a decimal point, found capacityAh: "44 Ah"\n  mend: write the number alone: 44',
    ],
    [
      "a fraction where a whole number is needed",
      lines({ 3: "cells: 6.5" }),
      'b.yaml:3:8: error record-field: expected a whole number, found cells: "6.5"\n  mend: change the value to what is expected',
    ],
    [
      "a number where a text is needed",
      lines({ 1: "name: 44" }),
      'b.yaml:1:7: error record-field: expected a text, found name: "44"\n  mend: put it into quotes: "44"',
    ],
    [
      "an empty text",
      lines({ 1: 'name: ""' }),
      'b.yaml:1:7: error record-field: expected a text that is not empty, found name: ""\n  mend: change the value to what is expected',
    ],
    [
      "a field left open",
      lines({ 5: "capacityAh:" }),
      "b.yaml:5:12: error record-field: expected a number with a decimal point, found capacityAh: nothing\n  mend: change the value to what is expected",
    ],
    [
      "a negative capacity",
      lines({ 5: "capacityAh: -44" }),
      'b.yaml:5:13: error record-field: expected more than 0, found capacityAh: "-44"\n  mend: change the value to what is expected',
    ],
    [
      "a misspelt choice",
      lines({ 4: "construction: floded" }),
      'b.yaml:4:15: error record-field: expected one of flooded-antimony, flooded-calcium, flooded, EFB, AGM, gel, found construction: "floded"\n  mend: did you mean "flooded"?',
    ],
    [
      "a choice that is like none",
      lines({ 4: "construction: lithium" }),
      'b.yaml:4:15: error record-field: expected one of flooded-antimony, flooded-calcium, flooded, EFB, AGM, gel, found construction: "lithium"\n  mend: change the value to what is expected',
    ],
    [
      "a misspelt field, deep inside",
      lines({ 6: "crankingRating: { currentA: 400, standard: EN 50342-1, nrm: 1 }" }),
      'b.yaml:6:56: error record-unknown-field: expected one of the fields currentA, standard, found "nrm"\n  mend: take the field out',
    ],
    [
      "a missing field, deep inside",
      lines({ 6: "crankingRating: { currentA: 400 }" }),
      'b.yaml:6:17: error record-missing-field: expected crankingRating.standard: one of EN 50342-1, SAE J537, IEC 60095-1, DIN 43539-2, JIS D 5301, not stated, found no crankingRating.standard\n  mend: add the line "standard:" with its value',
    ],
    [
      "a text where fields are needed",
      lines({ 6: "crankingRating: 400 A" }),
      'b.yaml:6:17: error record-field: expected fields of its own: currentA, standard, found crankingRating: "400 A"\n  mend: write each on a line of its own below crankingRating, two spaces further in',
    ],
  ])("tell %s", (_, text, message) => expect(ofBattery(text)).toEqual([message]));

  it("tell all faults at once", () => {
    expect(ofBattery(lines({ 2: "nominalVoltageV: twelve", 5: "capacity: 44" })).map((message) => message.split(" found ")[0])).toEqual([
      "b.yaml:2:18: error record-field: expected a number with a decimal point,",
      "b.yaml:1:1: error record-missing-field: expected capacityAh: a number with a decimal point,",
      "b.yaml:5:1: error record-unknown-field: expected one of the fields name, nominalVoltageV, cells, construction, capacityAh, capacityRateH, capacityBasis, crankingRating, fullDensity, emptyDensity, electrolyteKgPerCell, waterReserveGPerCell, madeOn, condition,",
    ]);
  });

  const testRecord = (recordings: string, zone = "Europe/Warsaw"): string =>
    `charger: mole-six\nmode: normal\nbattery: quarry-44\ninstruments: {}\nzone: ${zone}\nconnections:\n  - recordings:\n${recordings}\n`;
  const ofTest = (text: string): string[] => readRecord(text, "t.yaml", test).problems.map(formatProblem);

  it.each([
    [
      "a misspelt field in a list of logs",
      testRecord("      - file: logs/a.csv\n        recoder: newt"),
      't.yaml:9:9: error record-unknown-field: expected one of the fields file, part, with, withClockAheadS, recorder, startedAt, endedBy, badRows, found "recoder"\n  mend: did you mean "recorder"?',
    ],
    [
      "a log outside logs/",
      testRecord("      - ../a.csv"),
      't.yaml:8:9: error record-field: expected a file in this test\'s logs folder, such as logs/day-1.csv or logs/day-1/part-2.csv, found connections[1].recordings[1]: "../a.csv"\n  mend: change the value to what is expected',
    ],
    [
      "a zone that is none",
      testRecord("      - logs/a.csv", "Warsaw"),
      't.yaml:5:7: error record-field: expected a time zone of the IANA list, such as Europe/Lisbon, found zone: "Warsaw"\n  mend: change the value to what is expected',
    ],
    [
      "a time without its offset",
      testRecord("      - logs/a.csv\n    on: 2026-02-03 14:00"),
      't.yaml:9:9: error record-field: expected a date and time with its offset, such as 2026-03-14T09:30:00+01:00, found connections[1].on: "2026-02-03 14:00"\n  mend: change the value to what is expected',
    ],
  ])("tell %s", (_, text, message) => expect(ofTest(text)).toEqual([message]));

  it("tell a list without entries", () => {
    expect(readRecord("name: Mole\nmodes: []\n", "c.yaml", charger).problems.map(formatProblem)).toEqual([
      'c.yaml:2:8: error record-field: expected at least one entry, found modes: "[]"\n  mend: change the value to what is expected',
    ]);
  });

  it("tell what a schema's own rule asks, where a hydrometer says nothing of its scale", () => {
    const text = "name: Glass\nkind: hydrometer\nmeasures: {}\n";
    expect(readRecord(text, "i.yaml", instrument).problems.map(formatProblem)).toEqual([
      "i.yaml:1:1: error record-missing-field: expected density: density: with the convention of its scale, such as 'kg/l at 25 °C' (say 'not stated' where it is not known), found no density\n  mend: add the line \"density:\" with its value",
    ]);
  });
});

describe("the nearest word", () => {
  it.each([
    ["recoder", ["recorder", "hydrometer"], "recorder"],
    ["Rest_v", ["rest_V", "rest_h"], "rest_V"],
    ["volt", ["hydrometer", "scale"], undefined],
    ["log", ["on", "off"], undefined],
    ["onn", ["on", "off"], "on"],
    ["ab", [], undefined],
  ])("to %s", (word, known, near) => expect(nearest(word, known)).toBe(near));
});

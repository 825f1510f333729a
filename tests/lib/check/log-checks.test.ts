/** Each check of a log by itself: what it tells, at which line, and the sound logs at which it must keep silent. */
import { describe, expect, it } from "vitest";
import { findClockOutside } from "../../../lib/check/log/clock-fits.ts";
import { type Finding, type LogFacts, problemOfLog } from "../../../lib/check/log/facts.ts";
import { findFrozenChannels } from "../../../lib/check/log/frozen-channel.ts";
import { findImpossibleValues } from "../../../lib/check/log/impossible-values.ts";
import { findMiddleVoltage, findSwappedColumns } from "../../../lib/check/log/middle-values.ts";
import { findChargeMismatch, findPowerMismatch } from "../../../lib/check/log/own-sums.ts";
import { findSignFlips } from "../../../lib/check/log/sign-flip.ts";
import { findThousandfoldCurrent } from "../../../lib/check/log/thousandfold-current.ts";
import { checkLogAgainstReadings } from "../../../lib/check/log-against-readings.ts";
import { checkLogResolution } from "../../../lib/check/log-resolution.ts";
import type { Samples } from "../../../lib/nouns/samples.ts";
import { sampled, smallBattery, visited } from "./small-logs.ts";

const facts = (change: Partial<Samples> = {}, more: Partial<LogFacts> = {}): LogFacts => ({
  samples: sampled(change),
  battery: smallBattery,
  file: "log.csv",
  testId: "t",
  onMs: undefined,
  offMs: undefined,
  notes: [],
  ...more,
});
/** The small log with the values of some of its rows (counted from 0) put in place of its own. */
const withRows = (column: "voltagesV" | "currentsA", rows: readonly (readonly [number, number])[]): Partial<Samples> => {
  const values = sampled()[column].slice();
  for (const [row, value] of rows) values[row] = value;
  return { [column]: values };
};
const every = (change: (row: number) => number): Float64Array => Float64Array.from({ length: 121 }, (_, row) => change(row));
const found = (find: (facts: LogFacts) => Finding[], of: LogFacts): (string | number)[][] =>
  find(of).map((finding) => [problemOfLog("log-x", of, finding).place.line ?? 0, finding.found]);

const allOfThem = [
  findMiddleVoltage,
  findSwappedColumns,
  findThousandfoldCurrent,
  findSignFlips,
  findImpossibleValues,
  findFrozenChannels,
  findPowerMismatch,
  findChargeMismatch,
  findClockOutside,
];

describe("a sound log", () => {
  it.each(allOfThem.map((find) => [find.name, find] as const))("is nothing to %s", (_, find) => expect(find(facts())).toEqual([]));

  it.each(allOfThem.map((find) => [find.name, find] as const))("of no rows at all is nothing to %s", (_, find) => {
    const none = new Float64Array(0);
    expect(find(facts({ elapsedS: none, voltagesV: none, currentsA: none, lines: new Uint32Array(0) }))).toEqual([]);
  });

  it.each(allOfThem.map((find) => [find.name, find] as const))("of voltage alone is nothing to %s", (_, find) =>
    expect(find(facts({ hasCurrent: false, currentsA: every(() => Number.NaN) }))).toEqual([]),
  );
});

describe("impossible values", () => {
  it("are told with their lines, the first three and how many more", () => {
    const of = facts(
      withRows("voltagesV", [
        [5, 65.53],
        [6, -8],
        [40, 99],
        [41, 99],
        [60, 99],
      ]),
    );
    expect(found(findImpossibleValues, of)).toEqual([[7, "65.53 V in line 7, -8 V in line 8, 99 V in line 42 and 2 more"]]);
  });

  it("of current and of temperature are told beside each other", () => {
    const of = facts({ ...withRows("currentsA", [[3, 500]]), temperaturesC: every((row) => (row === 8 ? 200 : 20)) });
    expect(found(findImpossibleValues, of)).toEqual([
      [5, "500 A in line 5"],
      [10, "200 °C in line 10"],
    ]);
  });

  it("are left to other checks where most of the log is like that", () =>
    expect(findImpossibleValues(facts({ voltagesV: every(() => 12_600) }))).toEqual([]));
});

describe("units and columns", () => {
  it("millivolts taken for volts are told with what they would be", () =>
    expect(findMiddleVoltage(facts({ voltagesV: every((row) => 12_300 + row) }))[0]?.mend).toContain(
      "read as mV it would be 12.36 V: unit: mV",
    ));

  it("swapped columns are told as that, and not as a wrong voltage too", () => {
    const of = facts({ voltagesV: every((row) => 4 - row / 100), currentsA: sampled().voltagesV });
    expect(findMiddleVoltage(of)).toEqual([]);
    expect(found(findSwappedColumns, of)).toEqual([[2, "a middle voltage of 3.4 V and a middle current of 12.9 A"]]);
  });

  it("a current that falls widely is no voltage, so a wrong voltage is told as that", () => {
    const of = facts({ voltagesV: every(() => 0.5), currentsA: every((row) => 20 - row / 6.2) });
    expect(findSwappedColumns(of)).toEqual([]);
    expect(findMiddleVoltage(of)).toHaveLength(1);
  });

  it("amperes a thousandfold too small are told by the rise of the voltage", () => {
    expect(found(findThousandfoldCurrent, facts({ currentsA: every(() => 0.004) }))).toEqual([
      [2, "no current above 0.004 A, with a voltage that rises by 1.2 V"],
    ]);
    // A battery at rest has next to no current, and its voltage does not rise.
    expect(findThousandfoldCurrent(facts({ currentsA: every(() => 0.004), voltagesV: every((row) => 12.7 - row / 1000) }))).toEqual([]);
  });
});

describe("a sign that turns", () => {
  it("is told where it turns and where it turns back", () =>
    expect(
      found(
        findSignFlips,
        facts(
          withRows("currentsA", [
            [50, -4],
            [51, -4],
          ]),
        ),
      ),
    ).toEqual([[52, "3.99 A and then -4 A in line 52, -4 A and then 4 A in line 54"]]));

  it("is none where the voltage moves with it: a load was put on", () =>
    expect(findSignFlips(facts({ ...withRows("currentsA", [[50, -4]]), ...withRows("voltagesV", [[50, 12.1]]) }))).toEqual([]));

  it("is none where the current is small, or of another size", () => {
    expect(findSignFlips(facts({ currentsA: every((row) => (row % 2 === 0 ? 0.3 : -0.3)) }))).toEqual([]);
    expect(findSignFlips(facts(withRows("currentsA", [[50, -8]])))).toEqual([]);
  });
});

describe("a channel that stands still", () => {
  it("is told of a voltage while charge goes in below the limit: 4 A over 2 h", () =>
    expect(found(findFrozenChannels, facts({ voltagesV: every(() => 12.61) }))).toEqual([
      [2, "12.61 V in every row from line 2 to 122, while 7.998 Ah went in"],
    ]));

  it("is none of a voltage at the charger's limit, nor of one at rest", () => {
    expect(findFrozenChannels(facts({ voltagesV: every(() => 14.4) }))).toEqual([]);
    expect(findFrozenChannels(facts({ voltagesV: every(() => 12.61), currentsA: every(() => 0) }))).toEqual([]);
  });

  it("is told of a current while the voltage falls", () =>
    expect(found(findFrozenChannels, facts({ voltagesV: every((row) => 14.4 - row / 100), currentsA: every(() => 4) }))).toEqual([
      [2, "4 A in every row from line 2 to 122, while the voltage fell by 1.2 V"],
    ]));

  it("is none of a constant current while the voltage climbs", () =>
    expect(findFrozenChannels(facts({ currentsA: every(() => 4) }))).toEqual([]));
});

describe("the recorder's own sums", () => {
  const { voltagesV, currentsA } = sampled();
  const powersW = (factor: number): Float64Array => voltagesV.map((voltageV, row) => voltageV * (currentsA[row] ?? 0) * factor);
  /** Trapezoids of one minute each. */
  const chargesAh = (factor: number): Float64Array => {
    let sum = 0;
    return currentsA.map((currentA, row) => {
      sum += row === 0 ? 0 : ((currentA + (currentsA[row - 1] ?? 0)) / 2 / 60) * factor;
      return sum;
    });
  };

  it("bear voltage and current out, or are told by how much not", () => {
    expect(findPowerMismatch(facts({ powersW: powersW(1.03) }))).toEqual([]);
    expect(found(findPowerMismatch, facts({ powersW: powersW(1000) }))).toEqual([
      [2, "12.3 V times 4 A beside 49200 W in line 2, 0.001 times the power in the middle of all rows"],
    ]);
  });

  it("are let off a few rows that were written while something moved", () => {
    const some = powersW(1);
    some[3] = 90;
    expect(findPowerMismatch(facts({ powersW: some }))).toEqual([]);
  });

  it("bear the current out, up or down, or are told by how much not", () => {
    expect(findChargeMismatch(facts({ chargesAh: chargesAh(1.02) }))).toEqual([]);
    expect(findChargeMismatch(facts({ chargesAh: chargesAh(-1) }))).toEqual([]);
    expect(found(findChargeMismatch, facts({ chargesAh: chargesAh(2) }))).toEqual([
      [2, "7.998 Ah from the current and 16 Ah from the recorder's own count, lines 2 to 122"],
    ]);
  });

  it("are not compared over a gap", () => {
    const elapsedS = sampled().elapsedS.map((timeS, row) => (row < 60 ? timeS : timeS + 36_000));
    const counted = chargesAh(1).map((chargeAh, row) => (row < 60 ? chargeAh : chargeAh + 20));
    expect(findChargeMismatch(facts({ elapsedS, chargesAh: counted }))).toEqual([]);
  });
});

describe("a clock outside the connection", () => {
  const at = (text: string): number => Date.parse(text);
  it.each([
    ["an hour early", "2026-02-03T15:00:00Z", "2026-02-03T17:05:00Z", "; set 1 h forward"],
    ["two hours late", "2026-02-03T11:58:00Z", "2026-02-03T14:02:00Z", "; set 2 h back"],
    ["early by no whole hour", "2026-02-03T14:40:00Z", "2026-02-03T16:10:00Z", ""],
  ])("is told, and whole hours that would mend it: %s", (_, on, off, words) => {
    const [finding] = findClockOutside(facts({}, { onMs: at(on), offMs: at(off) }));
    if (words === "") expect(finding?.mend).toBe("check the recorder's clock and the test's zone, or the times of the connection");
    else expect(finding?.mend).toContain(words);
  });

  it("is none where the recorder ran on after the clamps were off", () =>
    expect(findClockOutside(facts({}, { onMs: at("2026-02-03T13:55:00Z"), offMs: at("2026-02-03T15:10:00Z") }))).toEqual([]));

  it("is none where only the recording's length is known", () =>
    expect(findClockOutside(facts({ startMs: undefined }, { onMs: 0, offMs: 1 }))).toEqual([]));
});

describe("a log against the visits", () => {
  const check = (column: Parameters<typeof visited>[0], value: number, change: Partial<Samples> = {}) =>
    checkLogAgainstReadings(sampled(change), smallBattery, "log.csv", "t", [visited(column, value)], "readings.csv").map(
      ({ place, found: said }) => [place.line, said],
    );

  it.each([
    ["terminal_V", 12.9],
    ["terminal_V", 13.1],
    ["clamp_A", 4.4],
    ["clamp_A", 3.4],
  ] as const)("is silent where %s %d lies within what two meters may differ by", (column, value) =>
    expect(check(column, value)).toEqual([]),
  );

  it.each([
    ["terminal_V", 13.9, '12.88 to 12.92 V in lines 60 to 64, and terminal_V "13,9" at 2026-02-03 16:00'],
    ["clamp_A", 6.5, '3.99 to 4 A in lines 60 to 64, and clamp_A "6,5" at 2026-02-03 16:00'],
    ["clamp_A", -4, '3.99 to 4 A in lines 60 to 64, and clamp_A "-4" at 2026-02-03 16:00'],
  ] as const)("tells %s %d", (column, value, said) => expect(check(column, value)).toEqual([[60, said]]));

  it("is silent on a visit before or after the log, and on a log that only counts", () => {
    expect(check("terminal_V", 2, { startMs: Date.parse("2026-02-03T16:00:00Z") })).toEqual([]);
    expect(check("terminal_V", 2, { startMs: undefined })).toEqual([]);
  });
});

describe("steps coarser than stated", () => {
  const place = { file: "newt.yaml", line: 4, column: 3 };
  const check = (resolution: number, change: Partial<Samples> = {}) =>
    checkLogResolution(sampled(change), { voltage: { resolution, from: "data sheet" } }, "log.csv", "t", place).map(
      ({ found: said }) => said,
    );
  it("are told: hundredths, where thousandths are stated", () => expect(check(0.001)).toEqual(["no step of voltage below 0.01 V"]));
  it.each([0.01, 0.02, 0.007])("are none where %d V is stated: its own step, a coarser one, one and a half", (resolution) =>
    expect(check(resolution)).toEqual([]),
  );
  it("are not told of a short log, nor of one that hardly moves", () => {
    expect(check(0.001, { voltagesV: every((row) => (row < 90 ? Number.NaN : 12 + row / 100)) })).toEqual([]);
    expect(check(0.001, { voltagesV: every((row) => (row % 2 === 0 ? 14.4 : 14.41)) })).toEqual([]);
  });
});

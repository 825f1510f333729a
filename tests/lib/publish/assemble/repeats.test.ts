import { describe, expect, it } from "vitest";
import { assembleRepeats } from "../../../../lib/publish/assemble/repeats.ts";
import { assembleTest } from "../../../../lib/publish/assemble/test.ts";
import type { TestResult } from "../../../../lib/publish/results.ts";
import { absorption, bulk, contextOf, logOf, recordingOf } from "../../measure/bench.ts";

/** A test with one recording for each voltage: a bulk of 5 A and a limit at that voltage. */
function testAt(id: string, ...voltagesV: readonly number[]): TestResult {
  const connections = voltagesV.map((voltageV, place) => ({
    onH: 20 * place,
    offH: 20 * place + 10,
    recordings: [recordingOf(logOf([bulk, { ...absorption, v: () => voltageV }]), { id: `run-${place + 1}.csv` })],
  }));
  return assembleTest({ ...contextOf({ connections }), id }, [], []);
}

describe("repeats of a mode", () => {
  it("show every recording's limit with its spread: 14.3 and 14.5 V scatter by 0.141 V, by hand", () => {
    const limit = assembleRepeats("normal", [testAt("first", 14.3, 14.5)]).find(({ id }) => id === "limit-voltage");
    expect(limit?.runs.map(({ value }) => value)).toEqual([expect.closeTo(14.3, 2), expect.closeTo(14.5, 2)]);
    expect(limit?.runs[0]?.figure).toBe("first/recording/run-1.csv#limit-voltage");
    const [within, between] = limit?.figures ?? [];
    expect(within).toMatchObject({ value: expect.closeTo(0.2 / Math.SQRT2, 2), doubts: [expect.stringContaining("from 2 values")] });
    expect(between).toMatchObject({ value: null, absent: { kind: "not measured", why: "only one test of this mode recorded it" } });
  });

  it("tell the scatter from test to test apart from that within a test", () => {
    const limit = assembleRepeats("normal", [testAt("first", 14.4), testAt("second", 14.6)]).find(({ id }) => id === "limit-voltage");
    expect(limit?.figures).toMatchObject([{ value: null }, { value: expect.closeTo(0.2 / Math.SQRT2, 2) }]);
  });

  it("leave out what no recording shows", () => {
    expect(assembleRepeats("normal", [testAt("first", 14.4)]).map(({ id }) => id)).toEqual(["charger-limited-current", "limit-voltage"]);
    expect(assembleRepeats("normal", [])).toEqual([]);
  });
});

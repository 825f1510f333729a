import { describe, expect, it } from "vitest";
import { chargerLimitedCurrent } from "../../../../lib/measure/figures/charger-limited-current.ts";
import { absorption, bulk, logOf, recordingOf, rest, rows, unstatedRecorder, valueIn } from "../bench.ts";

const figure = chargerLimitedCurrent({ sustainedWindowS: 60 });

describe("current held while the charger limited it", () => {
  it("is the 5 A of the bulk, and more that a battery took at the limit, hours before, does not count", () => {
    const atLimit = { ...absorption, a: (h: number) => 0.3 + 5.7 * Math.exp(-h / 1.2) };
    expect(valueIn(figure.compute(recordingOf(logOf([atLimit, rest, bulk]))))).toBeCloseTo(5, 1);
  });

  it("is absent where only the battery limited it, and where no current was logged", () => {
    expect(figure.compute(recordingOf(logOf([absorption])))).toMatchObject({ absent: "not recorded" });
    const s = rows(200, 60);
    expect(figure.compute(recordingOf({ s, v: s.map(() => 13) }))).toMatchObject({ absent: "not recorded" });
  });

  it("names the rows it rests on, and has no uncertainty where the accuracy is not stated", () => {
    const outcome = figure.compute(recordingOf(logOf([bulk, absorption]), { recorder: unstatedRecorder }));
    expect(outcome).toMatchObject({ standardUncertainty: undefined, evidence: [{ lines: [expect.any(Number), expect.any(Number)] }] });
  });
});

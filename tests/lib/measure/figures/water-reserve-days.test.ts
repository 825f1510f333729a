import { describe, expect, it } from "vitest";
import { waterReserveDays } from "../../../../lib/measure/figures/water-reserve-days.ts";
import { instrument } from "../../../../lib/nouns/instrument.ts";
import { benchInstruments, contextOf, float, logOf, recordingOf, unstatedRecorder, visit } from "../bench.ts";

const readings = [visit(1, 30, { terminal_V: 13.6, clamp_A: 0.2 }, { charger: "connected" })];
const fineClamp = instrument.parse({ name: "Fine clamp (invented)", kind: "clamp-meter", measures: { current: { plusMinus: 0.01 } } });
const left = (more: Parameters<typeof contextOf>[0] = {}) =>
  waterReserveDays.compute(
    contextOf({
      battery: { waterReserveGPerCell: 60 },
      connections: [{ onH: 0, offH: 60 }],
      instruments: { ...benchInstruments, clampMeter: fineClamp },
      readings,
      ...more,
    }),
  );
/** W005: 0.336087 g an ampere-hour and cell. */
const daysAt = (currentA: number): number => 60 / (0.336087 * 24 * currentA);

describe("days until the water reserve is gone, at least", () => {
  it("is 60 g over what 0.2 A split in a day, 37.2 d (W005), with the meter's ±0.01 A in its interval", () => {
    const halfWidthA = (2 * 0.01) / Math.sqrt(3);
    expect(left()).toMatchObject({
      value: expect.closeTo(daysAt(0.2), 3),
      basis: "projected",
      interval: { low: expect.closeTo(daysAt(0.2 + halfWidthA), 3), high: expect.closeTo(daysAt(0.2 - halfWidthA), 3) },
    });
  });

  it("takes the current at the end of the recorded float before a clamp meter's", () => {
    const recordings = [recordingOf(logOf([{ ...float, hours: 30, a: () => 0.5 }]))];
    const outcome = left({ connections: [{ onH: 0, offH: 60, recordings }] });
    // The log's ripple is 4 mA of 500 mA.
    expect(outcome).toMatchObject({ value: expect.closeTo(daysAt(0.5), 0) });
  });

  it("gives no interval, and the surer end in words, where the meter's error is as large as the current", () => {
    const coarse = left({
      instruments: benchInstruments,
      readings: [visit(1, 30, { terminal_V: 13.6, clamp_A: 0.05 }, { charger: "connected" })],
    });
    expect(coarse).toMatchObject({ interval: undefined });
    const surer = daysAt(0.05 + (2 * 0.05) / Math.sqrt(3)).toFixed(0);
    expect(coarse.doubts?.join(" ")).toContain(`lasts ${surer} d at least`);
  });

  it("gives no interval where the meter's accuracy is not stated", () => {
    const recordings = [recordingOf(logOf([{ ...float, hours: 30, a: () => 0.5 }]), { recorder: unstatedRecorder })];
    expect(left({ connections: [{ onH: 0, offH: 60, recordings }] })).toMatchObject({
      interval: undefined,
      doubts: expect.arrayContaining([expect.stringContaining("no accuracy is stated for current")]),
    });
  });

  it.each([
    ["sealed", { battery: { construction: "AGM", waterReserveGPerCell: 60 } }, "not applicable"],
    ["of a battery without a stated reserve", { battery: {} }, "not stated"],
    ["in which nothing was held for long", { readings: [] }, "not recorded"],
    [
      "without current at the end",
      { readings: [visit(1, 30, { terminal_V: 13.6, clamp_A: 0 }, { charger: "connected" as const })] },
      "cannot tell",
    ],
  ] as const)("is absent for a test %s", (_, options, absent) => {
    expect(left(options)).toMatchObject({ absent });
  });
});

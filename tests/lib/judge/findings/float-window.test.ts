import { describe, expect, it } from "vitest";
import { floatWindow } from "../../../../lib/judge/findings/float-window.ts";
import type { Instrument } from "../../../../lib/nouns/instrument.ts";
import { absorption, bulk, contextOf, float, logOf, plainRecorder, recordingOf, unstatedRecorder, visit } from "../../measure/bench.ts";

const finer: Instrument = { ...plainRecorder, measures: { ...plainRecorder.measures, voltage: { plusMinus: 0.02, from: "data sheet" } } };
const judged = (floatV: number, recorder = finer) =>
  floatWindow.judge(
    contextOf({
      connections: [
        { onH: 0, offH: 14, recordings: [recordingOf(logOf([bulk, absorption, { ...float, v: () => floatV }]), { recorder })] },
      ],
    }),
  );

describe("safe to leave connected? (a calcium battery's window: 13.5 to 13.8 V)", () => {
  it.each([
    ["yes, by its voltage", "good", 13.65],
    ["no", "bad", 14.0],
    ["too low to keep it full", "caution", 13.3],
    ["cannot tell", "unsure", 13.79],
  ] as const)("%s (%s) at %f V", (verdict, weight, floatV) => {
    expect(judged(floatV)).toMatchObject({ verdict, weight, figures: ["test#holding-voltage"] });
  });

  it("cannot tell with a recorder of unstated accuracy: a value without an interval decides nothing", () => {
    expect(judged(13.65, unstatedRecorder)).toMatchObject({
      verdict: "cannot tell",
      weight: "unsure",
      wouldSettle: expect.stringContaining("accuracy"),
    });
  });

  it("no, where a voltage above the window was held for more than a day", () => {
    const held = { hours: 30, v: () => 14.4, a: (h: number) => 0.2 + 4.8 * Math.exp(-h / 1.5) };
    const recording = recordingOf(logOf([bulk, held]), { recorder: finer });
    expect(floatWindow.judge(contextOf({ connections: [{ onH: 0, offH: 40, recordings: [recording] }] }))).toMatchObject({
      verdict: "no",
      weight: "bad",
    });
  });

  it("probably not, where one voltmeter reading after a day is all that shows it", () => {
    const readings = [visit(1, 30, { terminal_V: 14.4, clamp_A: 0.1 }, { charger: "connected" })];
    expect(floatWindow.judge(contextOf({ connections: [{ onH: 0, offH: 40 }], readings }))).toMatchObject({
      verdict: "probably not",
      weight: "caution",
    });
  });

  it("not put to the test, where no recording shows what it holds afterwards", () => {
    expect(floatWindow.judge(contextOf())).toMatchObject({
      verdict: "not put to the test",
      weight: "untested",
      wouldSettle: expect.any(String),
    });
  });
});

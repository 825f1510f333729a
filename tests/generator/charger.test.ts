import { describe, expect, it } from "vitest";
import { advanceCharger, type ChargerModel, offer, stageNow, startedCharger } from "./charger.ts";

const plain = { leadOhm: 0.02, warmSag: 0, efficiency: 0.8, standbyW: 1 } as const;

/** Lets seconds pass with the posts at one voltage and current. */
function pass(model: ChargerModel, state: ReturnType<typeof startedCharger>, seconds: number, voltageV: number, currentA: number): void {
  for (let second = 0; second < seconds; second++) advanceCharger(model, state, voltageV, currentA);
}

describe("charger", () => {
  const threeSteps: ChargerModel = {
    ...plain,
    steps: [
      { kind: "current", currentA: 6, untilV: 14.4 },
      { kind: "voltage", voltageV: 14.4, limitA: 6, untilBelowA: 0.5, forS: 120 },
      { kind: "float", voltageV: 13.5, limitA: 6 },
    ],
  };

  it("leaves constant current after five seconds at the limit, and constant voltage after the current was small for long enough", () => {
    const state = startedCharger();
    pass(threeSteps, state, 100, 13, 6);
    expect(state.step).toBe(0);
    pass(threeSteps, state, 4, 14.4, 6);
    expect(state.step).toBe(0);
    pass(threeSteps, state, 1, 14.4, 6);
    expect(state.step).toBe(1);
    pass(threeSteps, state, 119, 14.4, 0.4);
    pass(threeSteps, state, 1, 14.4, 0.6);
    expect(state.step).toBe(1);
    pass(threeSteps, state, 120, 14.4, 0.4);
    expect(state.step).toBe(2);
    expect(offer(threeSteps, state).voltageV).toBe(13.5);
  });

  it("is at constant current while it promises a voltage that the battery has not reached", () => {
    const state = { ...startedCharger(), step: 1 };
    const source = offer(threeSteps, state);
    expect(stageNow(threeSteps, state, source, 6)).toBe("constant-current");
    expect(stageNow(threeSteps, state, source, 3)).toBe("constant-voltage");
  });

  it("rests by itself and goes on where it was", () => {
    const pausing: ChargerModel = { ...threeSteps, pause: { everyS: 100, forS: 50 } };
    const state = startedCharger();
    pass(pausing, state, 100, 13, 6);
    expect(offer(pausing, state).limitA).toBe(0);
    expect(stageNow(pausing, state, offer(pausing, state), 0)).toBe("interrupted");
    pass(pausing, state, 50, 12.8, 0);
    expect(offer(pausing, state).limitA).toBe(6);
  });

  it("gives its current in pulses of the stated lengths", () => {
    const pulsing: ChargerModel = { ...plain, steps: [{ kind: "current", currentA: 4, pulse: { onS: 3, offS: 2 } }] };
    const state = startedCharger();
    const limits = Array.from({ length: 10 }, () => {
      const { limitA } = offer(pulsing, state);
      pass(pulsing, state, 1, 13, limitA);
      return limitA;
    });
    expect(limits).toEqual([4, 4, 4, 0, 0, 4, 4, 4, 0, 0]);
  });

  it("switches off for good, or wakes when the battery has sunk", () => {
    const off: ChargerModel = { ...plain, steps: [{ kind: "current", currentA: 4, maxH: 1 / 3600 }, { kind: "off" }] };
    const state = startedCharger();
    pass(off, state, 5000, 11, 0);
    expect(offer(off, state).limitA).toBe(0);
    expect(stageNow(off, state, offer(off, state), 0)).toBe("rest");

    const waking: ChargerModel = {
      ...off,
      steps: [
        { kind: "current", currentA: 4 },
        { kind: "off", wakeBelowV: 12.7, wakeTo: 0 },
      ],
    };
    const asleep = { ...startedCharger(), step: 1 };
    pass(waking, asleep, 200, 12.8, 0);
    expect(asleep.step).toBe(1);
    pass(waking, asleep, 1, 12.6, 0);
    expect(asleep.step).toBe(0);
  });
});

import { describe, expect, it } from "vitest";
import type { Stage, StageKind } from "../../../lib/nouns/stage.ts";
import { type ChargerKnowledge, chargerBehaviourOf } from "../../../lib/project/behaviour-of-stages.ts";
import { middleDraw, settleCharger } from "../../../lib/project/charger-behaviour.ts";

const known: ChargerKnowledge = {
  standardUncertaintyA: 0.02,
  standardUncertaintyV: 0.01,
  nominalVoltageV: 12,
  efficiency: { low: 0.7, high: 0.9 },
};

/** A stage from `startH` to `endH`, voltage and current each going from one value to another. */
function stage(
  kind: StageKind,
  [startH, endH]: [number, number],
  [startV, endV]: [number, number],
  [startA, endA]: [number, number],
): Stage {
  return {
    kind,
    startS: startH * 3600,
    endS: endH * 3600,
    lines: [2, 3],
    limitedBy: "unknown",
    voltageMeanV: (startV + endV) / 2,
    voltageSpreadV: Math.abs(endV - startV) / 4,
    voltageStartV: startV,
    voltageEndV: endV,
    currentMeanA: (startA + endA) / 2,
    currentSpreadA: 0,
    currentStartA: startA,
    currentEndA: endA,
    chargeAh: null,
    energyWh: null,
    taper: null,
    taperRefused: null,
    confidence: "clear",
    why: "invented",
  };
}

const bulk = stage("constant-current", [0, 5], [12.4, 14.4], [6, 6]);
const limit = stage("constant-voltage", [5, 8], [14.4, 14.4], [6, 0.5]);
const float = stage("float", [8, 20], [13.6, 13.6], [0.2, 0.1]);

describe("a charger's behaviour from stages", () => {
  it("is bulk, limit and float with their numbers for an IUoU charger, each within its recorder's error", () => {
    const behaviour = chargerBehaviourOf([{ stages: [bulk, limit, float], endedBy: "recorder" }], known);
    expect(behaviour?.steps.map(({ kind }) => kind)).toEqual(["constant-voltage", "float"]);
    const [first, second] = behaviour === undefined ? [] : settleCharger(behaviour, { ...middleDraw, rule: 0 }).steps;
    expect(first).toMatchObject({ kind: "voltage", voltageV: 14.4, limitA: 6 });
    expect(first?.kind === "voltage" && first.belowA).toBeCloseTo(0.5, 9);
    expect(second).toMatchObject({ kind: "voltage", voltageV: 13.6, isFloat: true });
  });

  it("leaves open whether a current or a time ended a limit seen to end once, and prefers what repeats where it was seen twice", () => {
    const once = chargerBehaviourOf([{ stages: [bulk, limit, float], endedBy: "recorder" }], known);
    expect(once?.steps[0]).toMatchObject({ end: { belowA: expect.anything(), afterH: expect.anything() } });
    const longer = [bulk, stage("constant-voltage", [5, 12], [14.4, 14.4], [6, 0.5]), stage("float", [12, 20], [13.6, 13.6], [0.2, 0.1])];
    const twice = chargerBehaviourOf(
      [
        { stages: [bulk, limit, float], endedBy: "recorder" },
        { stages: longer, endedBy: "recorder" },
      ],
      known,
    );
    expect(twice?.steps[0]).toHaveProperty("end.belowA");
    expect(twice?.steps[0]).not.toHaveProperty("end.afterH");
  });

  it("never takes a recording's end for the charger's: an end nobody saw lies anywhere below the last current, or is never", () => {
    const behaviour = chargerBehaviourOf([{ stages: [bulk, limit], endedBy: "recorder" }], known);
    expect(behaviour?.steps[0]).toMatchObject({ end: { belowA: { low: 0, high: 0.5 } } });
    expect(behaviour?.unknowns.join()).toContain("nobody recorded the end");
    const ended = chargerBehaviourOf([{ stages: [bulk, limit], endedBy: "charger" }], known);
    expect(ended?.unknowns.join()).not.toContain("nobody recorded the end");
  });

  it("takes a limit held for days for what it holds as long as it is connected, and no shorter one", () => {
    const heldFor = (hours: number) =>
      chargerBehaviourOf(
        [{ stages: [bulk, stage("constant-voltage", [5, 5 + hours], [14.7, 14.7], [6, 0.3])], endedBy: "recorder" }],
        known,
      );
    expect(heldFor(159)?.steps).toMatchObject([{ kind: "constant-voltage", end: {} }]);
    expect(heldFor(159)?.unknowns.join()).toContain("held its voltage limit for 6\u202Fd 15\u202Fh");
    expect(heldFor(40)?.steps.map(({ kind }) => kind)).toEqual(["constant-voltage", "off"]);
    expect(heldFor(40)?.steps[0]).toMatchObject({ end: { belowA: { low: 0, high: 0.3 } } });
  });

  it("takes leads that come off, or change places, for no end of the charger's", () => {
    for (const kind of ["no-battery", "reversed"] as const) {
      const off = stage(kind, [8, 9], [0, 0], [0, 0]);
      const cut = chargerBehaviourOf([{ stages: [bulk, limit, off], endedBy: "unknown" }], known);
      expect(cut?.steps[0]).toMatchObject({ end: { belowA: { low: 0, high: 0.5 } } });
      expect(cut?.unknowns.join()).toContain("nobody recorded the end of its voltage limit");
    }
  });

  it("keeps an end that was seen at a current below the recorder's error apart from one that nobody saw", () => {
    const faint = stage("constant-voltage", [5, 8], [14.4, 14.4], [6, 0.001]);
    const seen = chargerBehaviourOf([{ stages: [bulk, faint], endedBy: "charger" }], { ...known, standardUncertaintyA: 0.05 });
    const [first] = seen?.steps ?? [];
    expect(first?.kind === "constant-voltage" && first.end.belowA?.low).toBeGreaterThan(0);
  });

  it("does not take a pause of the mains, or a rest after a person pulled the clamps, for the charger's end", () => {
    const rest = stage("rest", [8, 9], [13.5, 13], [0, 0]);
    const pause = stage("interrupted", [8, 9], [13.5, 13], [0, 0]);
    const openEnd = { end: { belowA: { low: 0, high: 0.5 } } };
    for (const endedBy of ["person", "mains"] as const)
      expect(chargerBehaviourOf([{ stages: [bulk, limit, rest], endedBy }], known)?.steps[0]).toMatchObject(openEnd);
    expect(chargerBehaviourOf([{ stages: [bulk, limit, pause], endedBy: "recorder" }], known)?.steps[0]).toMatchObject(openEnd);
    expect(chargerBehaviourOf([{ stages: [bulk, limit, rest], endedBy: "charger" }], known)?.steps[0]).not.toMatchObject(openEnd);
  });

  it("takes the limit from the label, and says so, where no recording got that far", () => {
    const short = { stages: [stage("constant-current", [0, 2], [12.4, 13], [6, 6])], endedBy: "recorder" as const };
    const behaviour = chargerBehaviourOf([short], { ...known, claimedLimitV: 14.7 });
    expect(behaviour?.steps[0]).toMatchObject({ kind: "constant-voltage", voltageV: { low: 14.7, high: 14.7 } });
    expect(behaviour?.unknowns.join()).toContain("from the label");
    expect(chargerBehaviourOf([short], known)?.steps[0]).toMatchObject({ voltageV: { low: 14.1, high: 15 } });
  });

  it("reads the line of a charger that regulates neither, and joins to it the stretch where the battery only stands still", () => {
    // 16 V behind 0.5 Ω: 7 A at 12.5 V, 3 A at 14.5 V, and 2.4 A at 14.8 V, where the battery settles.
    const drooping = stage("drooping", [0, 8], [12.5, 14.5], [7, 3]);
    const settled = stage("constant-voltage", [8, 20], [14.8, 14.8], [2.4, 2.4]);
    const behaviour = chargerBehaviourOf([{ stages: [drooping, settled], endedBy: "recorder" }], known);
    expect(behaviour?.steps.map(({ kind }) => kind)).toEqual(["drooping", "off"]);
    const [line] = behaviour === undefined ? [] : settleCharger(behaviour, middleDraw).steps;
    expect(line?.kind === "line" ? line.openV - line.ohm * 5 : Number.NaN).toBeCloseTo(13.5, 6);
    const limited = stage("constant-voltage", [8, 20], [14.5, 14.5], [2.5, 0.3]);
    expect(chargerBehaviourOf([{ stages: [drooping, limited], endedBy: "recorder" }], known)?.steps.map(({ kind }) => kind)).toContain(
      "constant-voltage",
    );
  });

  it("goes on and off between the voltages measured for it", () => {
    const onOff = stage("on-off-holding", [5, 20], [13.4, 13.4], [0, 0]);
    const behaviour = chargerBehaviourOf([{ stages: [bulk, onOff], endedBy: "recorder" }], {
      ...known,
      holding: { wakeV: 12.9, stopV: 14.4 },
    });
    const steps = behaviour === undefined ? [] : settleCharger(behaviour, middleDraw).steps;
    expect(steps).toMatchObject([
      { kind: "current", endsAtCeiling: true },
      { kind: "off", wakeBelowV: 12.9, wakeTo: 2 },
      { kind: "current", ceilingV: 14.4 },
      { kind: "off", wakeTo: 2 },
    ]);
  });

  it("keeps a throttle's rhythm", () => {
    const throttled = stage("throttled", [1, 1.25], [13, 13.1], [3, 3]);
    const parts = [
      stage("constant-current", [0, 1], [12.4, 13], [6, 6]),
      throttled,
      stage("constant-current", [1.25, 3], [13.1, 14], [6, 6]),
    ];
    expect(chargerBehaviourOf([{ stages: parts, endedBy: "recorder" }], known)?.throttle).toMatchObject({
      afterH: { low: 1, high: 1 },
      forH: { low: 0.25, high: 0.25 },
      share: { low: 0.5, high: 0.5 },
    });
  });

  it("is undefined where no charging was recorded", () => {
    expect(chargerBehaviourOf([], known)).toBeUndefined();
    expect(chargerBehaviourOf([{ stages: [stage("rest", [0, 2], [12.6, 12.5], [0, 0])], endedBy: "unknown" }], known)).toBeUndefined();
  });
});

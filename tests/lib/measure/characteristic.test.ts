import { describe, expect, it } from "vitest";
import { spellCharacteristic } from "../../../lib/measure/characteristic.ts";
import type { Stage, StageKind } from "../../../lib/nouns/stage.ts";

const stage = (kind: StageKind, place: number): Stage => ({
  kind,
  startS: place * 3600,
  endS: (place + 1) * 3600,
  lines: [1, 2],
  limitedBy: "unknown",
  voltageMeanV: 13,
  voltageSpreadV: 0,
  voltageStartV: 13,
  voltageEndV: 13,
  currentMeanA: 1,
  currentSpreadA: 0,
  currentStartA: 1,
  currentEndA: 1,
  chargeAh: 1,
  energyWh: 13,
  taper: null,
  taperRefused: null,
  confidence: "clear",
  why: "",
});
const lettersOf = (kinds: readonly StageKind[], endedByCharger: boolean) => spellCharacteristic(kinds.map(stage), endedByCharger).letters;

describe("the characteristic in letters (DIN 41772: I, U, W, o, a)", () => {
  it.each<[string | null, StageKind[], boolean]>([
    ["IU", ["constant-current", "constant-voltage"], false],
    ["IUoU", ["constant-current", "constant-voltage", "float"], false],
    ["IUa", ["constant-current", "constant-voltage", "rest"], true],
    ["Wa", ["drooping", "rest"], true],
    ["WU", ["drooping", "constant-voltage"], false],
    ["IU", ["constant-current", "interrupted", "constant-current", "constant-voltage"], false],
    [null, ["rest", "discharge"], false],
    [null, [], false],
  ])("are %s for %j, the charger seen to end: %s", (letters, kinds, endedByCharger) => {
    expect(lettersOf(kinds, endedByCharger)).toBe(letters);
  });

  it("have no 'a' where the current fell to none but it was not seen to be the charger's doing", () => {
    expect(lettersOf(["constant-current", "constant-voltage", "rest"], false)).toBe("IU");
  });

  it("have the 'a' where the charger later woke by itself, and tell the topping up in words", () => {
    const { letters, words } = spellCharacteristic(
      (["constant-current", "constant-voltage", "rest", "constant-voltage", "rest"] as const).map(stage),
      false,
    );
    expect(letters).toBe("IUa");
    expect(words).toBe("constant current, then constant voltage, current tapering, then switched off, then topped up once");
  });

  it("tell pulses in words, since they have no letter", () => {
    expect(spellCharacteristic((["constant-current", "pulses"] as const).map(stage), false)).toEqual({
      letters: "I",
      words: "constant current, then pulses",
    });
  });

  it("say that no charging was seen where none was", () => {
    expect(spellCharacteristic([], false).words).toBe("no charging seen");
  });
});

describe("the characteristic in words", () => {
  const wordsOf = (kinds: readonly StageKind[]) => spellCharacteristic(kinds.map(stage), false).words;
  const [full, low, limit] = ["constant-current", "throttled", "constant-voltage"] as const;

  it("tells two stages that take turns once, whichever of them ends the turns", () => {
    const turns = "constant current and throttled current in turn, then constant voltage, current tapering";
    expect(wordsOf([full, low, full, low, limit])).toBe(turns);
    expect(wordsOf([full, low, full, low, full, low, full, limit])).toBe(turns);
    expect(wordsOf([limit, full, low, full, low])).toBe(
      "constant voltage, current tapering, then constant current and throttled current in turn",
    );
  });

  it("says nothing of switching off where the charge that follows a rest is one that somebody began: the leads had come off", () => {
    expect(wordsOf([full, limit, "rest", full])).toContain("switched off");
    for (const off of ["no-battery", "reversed"] as const) expect(wordsOf([full, limit, "rest", off, full])).not.toContain("switched off");
  });

  it("tells three entries one by one: once down and up again is no taking turns", () => {
    expect(wordsOf([full, low, full])).toBe("constant current, then throttled current, then constant current");
    expect(wordsOf([full, low, limit])).toBe("constant current, then throttled current, then constant voltage, current tapering");
    expect(wordsOf([full])).toBe("constant current");
  });
});

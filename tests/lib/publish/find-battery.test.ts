import { describe, expect, it } from "vitest";
import { askedAndApart } from "../../../lib/publish/find/asked-and-apart.ts";
import { beyondEvidence } from "../../../lib/publish/find/beyond-evidence.ts";
import { cautionsFor } from "../../../lib/publish/find/cautions.ts";
import { findDataOf } from "../../../lib/publish/find/find-data.ts";
import { canBeToldApart, groupsOfTies } from "../../../lib/publish/find/groups-of-ties.ts";
import { defaultQuestion, type Question } from "../../../lib/publish/find/question.ts";
import { readyMatrices } from "../../../lib/publish/find/ready-matrix.ts";
import { isComplaint, type StartOfCharge, startOfCharge } from "../../../lib/publish/find/start-of-charge.ts";
import { voltageWarning } from "../../../lib/publish/find/voltage-warning.ts";
import { renderFindPage } from "../../../lib/publish/pages/find-page.tsx";
import { englishFind as english } from "./english-find.ts";
import { findResults, threeStage } from "./find-chargers.ts";

const results = findResults();
const data = findDataOf(results);
const asking = (parts: Partial<Question>): Question => ({ ...defaultQuestion, ...parts });
function startOf(parts: Partial<Question>): StartOfCharge {
  const start = startOfCharge(asking(parts), english);
  if (isComplaint(start)) throw new Error(start.words);
  return start;
}

describe("how flat a battery is", () => {
  it("is about the same by rest voltage and by density (12.24 V and 1.20 kg/l are both taken for half full in the trade)", () => {
    const byDensity = startOf({ flat: "density", densityAt25C: 1.2 });
    const byVoltage = startOf({ flat: "rest-voltage", restV: 12.24 });
    expect(byDensity.share).toBeGreaterThan(0.4);
    expect(byDensity.share).toBeLessThan(0.6);
    // Two of the difference's own standard uncertainties.
    expect(Math.abs(byVoltage.share - byDensity.share)).toBeLessThan(
      2 * Math.hypot(byVoltage.standardUncertainty, byDensity.standardUncertainty),
    );
  });

  it("scales with the cells: 6.12 V on 6 V is 12.24 V on 12 V", () => {
    expect(startOf({ voltageV: 6, flat: "rest-voltage", restV: 6.12 }).share).toBeCloseTo(
      startOf({ flat: "rest-voltage", restV: 12.24 }).share,
      10,
    );
  });

  it.each([
    ["a voltage that no resting acid has", { flat: "rest-voltage", restV: 8 }, "volts"],
    ["no voltage", { flat: "rest-voltage" }, "volts"],
    ["a density that no acid has", { flat: "density", densityAt25C: 12 }, "density"],
    ["no density", { flat: "density" }, "density"],
  ] as const)("is refused for %s", (_, parts, field) => {
    const start = startOfCharge(asking(parts), english);
    expect(isComplaint(start) && start.field).toBe(field);
  });
});

describe("cautions", () => {
  const sections = (parts: Partial<Question>) => cautionsFor(asking(parts), startOf(parts), english).map(({ section }) => section);

  it("warns of frost where a flat battery is cold, and not where it is full or warm", () => {
    expect(sections({ flat: "very-flat", airC: -15 })[0]).toBe("frozen");
    expect(sections({ flat: "slightly", airC: -15 })).not.toContain("frozen");
    expect(sections({ flat: "very-flat", airC: 10 })).not.toContain("frozen");
  });

  it("counts a reading's own uncertainty against the frost", () => {
    // 1.13 kg/l freezes near -12 °C (trade tables); a hydrometer that reads 0.01 too much stands on 1.12.
    expect(sections({ flat: "density", densityAt25C: 1.13, airC: -9 })).toContain("frozen");
  });

  it("speaks of very flat, of sealed, of hot, and always of the current", () => {
    expect(cautionsFor(asking({ flat: "very-flat" }), startOf({ flat: "very-flat" }), english)[0]?.words).toMatch(/^It is very flat/);
    expect(sections({ kind: "gel" })).toContain("sealed");
    expect(cautionsFor(asking({ airC: 45 }), startOf({}), english)[0]?.words).toMatch(/^It is hot/);
    expect(cautionsFor(asking({ kind: "gel", ratedAh: 100 }), startOf({ kind: "gel" }), english).at(-1)?.words).toMatch(
      /no more than about 20 A/,
    );
  });

  it("names a charger that goes above what such a battery commonly gets, and no other", () => {
    expect(voltageWarning("AGM", 6, threeStage(8, 15.8), english)).toMatch(/15\.8 V or more.*14\.8\u202FV.*dry it out/);
    expect(voltageWarning("flooded", 6, threeStage(8, 15.8), english)).toMatch(/15\.0\u202FV/);
    expect(voltageWarning("AGM", 6, threeStage(8, 14.7), english)).toBeUndefined();
    expect(voltageWarning("flooded", 3, threeStage(2, 7.8), english)).toMatch(/7\.5\u202FV/);
  });
});

describe("which chargers are asked", () => {
  const names = (parts: Partial<Question>) => {
    const { asked, apart } = askedAndApart(asking(parts), data.modes, english);
    expect(asked.length + apart.length).toBe(data.modes.length);
    return { asked: asked.map(({ name }) => name), apart: apart.map(({ mode, because }) => `${mode.name}: ${because}`) };
  };

  it("puts a flooded 12 V question to those tested on such, and names the others with the reason", () => {
    const { asked, apart } = names({});
    expect(asked).toHaveLength(2);
    expect(apart).toContainEqual(expect.stringMatching(/^Pebble Trickle.*not for flooded as far as is known/));
    expect(apart).toContainEqual(expect.stringMatching(/SNOW: no recording shows/));
  });

  it("sets all apart for another voltage", () => {
    const { asked, apart } = names({ voltageV: 24 });
    expect(asked).toEqual([]);
    expect(apart).toContainEqual(expect.stringMatching(/it was tested on 12 V batteries, and yours has 24 V/));
  });
});

describe("beyond the evidence", () => {
  const mode = {
    testedOn: [{ test: "t", title: "T", capacityAh: 60, construction: "flooded-calcium" as const }],
    claimedAh: { low: 40, high: 100 },
    kindWords: { words: "wet", from: "box" },
    temperatureWords: { words: "0 to 40 °C", from: "manual" },
  };
  it.each([
    [{ ratedAh: 60 }, []],
    [{ ratedAh: 121 }, [/^Outside the 40 to 100 Ah/, /largest battery .* 60 Ah/]],
    [{ ratedAh: 29 }, [/^Outside/, /smallest battery .* 60 Ah/]],
    [{ kind: "AGM" }, [/tested on flooded, not on AGM.*“wet” \(box\)/]],
    [{ kind: "flooded-antimony" }, []],
    [{ airC: -5 }, [/“0 to 40 °C”/]],
  ] as const)("%o", (parts, expected) => {
    const warnings = beyondEvidence(asking(parts), mode, english);
    expect(warnings).toHaveLength(expected.length);
    for (const [place, pattern] of expected.entries()) expect(warnings[place]).toMatch(pattern);
  });
});

describe("groups of ties", () => {
  const inTime = (name: string, count: number, of = 64) => ({ name, inTime: Array.from({ length: of }, (_, k) => k < count) });

  it("needs four of 64 draws that all speak for one (McNemar: 4 > 1.96·√4, 3 < 1.96·√3)", () => {
    expect(canBeToldApart(inTime("a", 64), inTime("b", 60))).toBe(true);
    expect(canBeToldApart(inTime("a", 64), inTime("b", 61))).toBe(false);
    expect(canBeToldApart(inTime("a", 64), inTime("b", 64))).toBe(false);
  });

  it("ranks groups, never within one, and loses nobody", () => {
    const groups = groupsOfTies([inTime("c", 63), inTime("late", 20), inTime("b", 64), inTime("a", 61), inTime("never", 0)]);
    expect(groups.map((group) => group.map(({ name }) => name))).toEqual([["a", "b", "c"], ["late"], ["never"]]);
    expect(groupsOfTies([])).toEqual([]);
  });
});

describe("the matrix without scripts", () => {
  it("counts every charger once in every cell, and names those that will or may", () => {
    const [matrix, ...others] = readyMatrices(results.index.chargers.map(({ id }) => results.charger(id)));
    expect(others).toEqual([]);
    expect(matrix?.voltageV).toBe(12);
    expect(matrix?.rows).toHaveLength(20);
    for (const { cells } of matrix?.rows ?? [])
      for (const { will, may, willNot, notAdvised } of cells) expect(will.length + may.length + willNot + notAdvised).toBe(2);
    const half = matrix?.rows.find(({ battery, flatness }) => battery.startsWith("Family car") && flatness === "Half flat");
    expect(half?.cells.at(-1)?.will.map(({ charger }) => charger)).toEqual(["lantern-eight", "lantern-two"]);
  });

  it("says behind a charger's name that it is to come off a full battery, where something speaks against leaving it there", () => {
    const warned = "lantern-eight";
    const charger: typeof results.charger = (id) => {
      const one = results.charger(id);
      return { ...one, modes: one.modes.map((mode) => ({ ...mode, leftOnWarning: id === warned ? "It holds 14.10 V." : null })) };
    };
    const html = renderFindPage({ ...results, charger }, "en");
    const names = [...html.matchAll(/<a href="\.\.\/chargers\/([\w-]+)\/index\.html#battery">[^<]*<\/a>( \(take it off when full\))?/g)];
    expect(new Set(names.map(([, id]) => id))).toEqual(new Set([warned, "lantern-two"]));
    for (const [, id, note] of names) expect(note !== undefined, id).toBe(id === warned);
  });
});

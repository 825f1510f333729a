/** A small part of the proving ground on every run, and the ground's own soundness. `prove.ts` runs all of it. */
import { beforeAll, describe, expect, it } from "vitest";
import { behaviours } from "./behaviours.ts";
import { type CaseResult, type Played, play, proveCase } from "./case.ts";
import { type Asked, compare } from "./compare.ts";
import { electrochemicalPlant, type PlantMaker } from "./plant.ts";
import { recorders } from "./recorders.ts";
import { total } from "./report.ts";
import { circuitPlant } from "./second-battery.ts";

/** What the part below must reach at least (shares) or at most (counts). Raise them when the method gets better; never lower them unexplained. */
const floors = {
  first: { boundaryShare: 0.98, kindShare: 0.99, falseBoundaries: 2, wrongEndings: 0, unknownEndings: 1 },
  second: { boundaryShare: 0.95, kindShare: 0.99, falseBoundaries: 4, wrongEndings: 0, unknownEndings: 2 },
} as const;

/** Another draw than the published one. */
const seed = 11;

/** The recorders that write least, so that all of it takes seconds. */
const quickRecorders = recorders.filter(({ id }) => ["noisy", "gaps", "minute", "on-change"].includes(id));

/** Each behaviour twice, the recorders taking turns. */
function provePart(charges: readonly Played[]): CaseResult[] {
  return charges.flatMap((played, index) =>
    quickRecorders.filter((_, turn) => turn % 2 === index % 2).map((recorder) => proveCase(played, recorder)),
  );
}

describe.each([
  ["first", electrochemicalPlant],
  ["second", circuitPlant],
] as const)("the proving ground on the %s battery", (id, makePlant: PlantMaker) => {
  let charges: Played[] = [];
  beforeAll(() => {
    charges = behaviours.map((behaviour) => play(behaviour, makePlant, seed));
  });

  it("finds stages and endings at least as well as its floors say", () => {
    const totals = total(provePart(charges));
    expect(totals.boundaryHits / totals.boundaries).toBeGreaterThanOrEqual(floors[id].boundaryShare);
    expect(totals.kindHits / totals.kinds).toBeGreaterThanOrEqual(floors[id].kindShare);
    expect(totals.falseBoundaries).toBeLessThanOrEqual(floors[id].falseBoundaries);
    expect(totals.endings.wrong).toBeLessThanOrEqual(floors[id].wrongEndings);
    expect(totals.endings.unknown).toBeLessThanOrEqual(floors[id].unknownEndings);
    // Each behaviour asks for one kind at least: a part that asks for nothing would pass in silence.
    expect(totals.kinds).toBeGreaterThanOrEqual(behaviours.length);
  });

  it("has true stages that follow each other without a hole, up to where the recorder can see", () => {
    for (const { charge } of charges) {
      expect(charge.stages[0]?.startS).toBe(0);
      charge.stages.slice(1).forEach((stage, index) => {
        expect(stage.startS).toBe(charge.stages[index]?.endS);
      });
      expect(charge.stages.at(-1)?.endS).toBe(charge.voltagesV.length - 1);
    }
  });

  it("holds what the truth says is held", () => {
    for (const { charge, given, behaviour } of charges) {
      for (const stage of charge.stages.filter(({ startS, endS }) => endS - startS >= 600)) {
        const lastA = charge.currentsA[stage.endS - 1] ?? Number.NaN;
        const lastV = charge.voltagesV[stage.endS - 1] ?? Number.NaN;
        // A charger counts as at its limit within 0.1 %. The sagging bulk is called constant current too, with the sag it is named for.
        const sag = behaviour.id === "sagging-bulk" ? 0.15 : 0.001;
        if (stage.kind === "constant-current") expect(Math.abs(lastA / given.bulkA - 1)).toBeLessThanOrEqual(sag + 1e-9);
        if (stage.kind === "discharge") expect(lastA).toBeLessThan(0);
        // Nothing flows but the solver's dust.
        if (stage.kind === "rest" || stage.kind === "interrupted") expect(Math.abs(lastA)).toBeLessThan(1e-9);
        // The clamps drop 0.2 % of the limit at full current, a rounded corner up to 0.05 V a cell at a third of it.
        if (stage.kind === "constant-voltage" && stage.endS < charge.clampsOffS && behaviour.id !== "two-limits")
          expect(Math.abs(lastV / given.limitV - 1)).toBeLessThan(behaviour.id === "rounded-knee" ? 0.007 : 0.002);
      }
    }
  });

  it("plays every behaviour as its name says", () => {
    const kinds = (id: string): string[] =>
      charges.find(({ behaviour }) => behaviour.id === id)?.charge.stages.map(({ kind }) => kind) ?? [];
    expect(kinds("iuou")).toEqual(["constant-current", "constant-voltage", "float"]);
    expect(kinds("soft-start")[0]).toBe("soft-start");
    expect(kinds("w-clock")).toEqual(["drooping", "rest"]);
    expect(kinds("w-held")).toEqual(["drooping", "constant-voltage", "rest"]);
    expect(kinds("two-limits")).toEqual(["constant-current", "constant-voltage", "constant-voltage", "float"]);
    expect(kinds("iuia")).toEqual(["constant-current", "constant-voltage", "finishing-current", "rest"]);
    expect(kinds("pulse-train")).toEqual(["constant-current", "pulses", "float"]);
    expect(kinds("on-off")).toEqual(["constant-current", "constant-voltage", "on-off-holding"]);
    expect(kinds("heat").filter((kind) => kind === "throttled").length).toBeGreaterThan(1);
    expect(kinds("mains-hour").slice(0, 3)).toEqual(["constant-current", "interrupted", "constant-current"]);
    expect(kinds("clamps-off").at(-1)).toBe("rest");
    expect(kinds("lamps-first").slice(0, 3)).toEqual(["discharge", "rest", "constant-current"]);
    expect(kinds("too-weak")).toEqual(["constant-current"]);
    expect(kinds("never-leaves")).toEqual(["constant-current", "constant-voltage"]);
  });
});

describe("the truth of an ending", () => {
  it("is the recorder's own where it had fallen silent while the charge went on, whoever took the clamps off later", () => {
    const behaviour = behaviours.find(({ id }) => id === "mains-hour");
    const recorder = recorders.find(({ id }) => id === "gaps");
    if (behaviour === undefined || recorder === undefined) throw new Error("the lists have changed");
    // By this draw the recorder's last silence lasts beyond the end: no row of the last 24 min.
    const played = play(behaviour, electrochemicalPlant, 4);
    const { recording, endedBy, verdict } = proveCase(played, recorder);
    expect(recording.trace.spanS).toBeLessThan(played.charge.clampsOffS - 20 * 60);
    expect(endedBy).toEqual({ truth: "recorder", found: "recorder" });
    expect(verdict.ending).toBe("right");
  });
});

describe("the comparison", () => {
  const stage = (kind: Asked["kind"], startS: number, endS: number): Asked => ({
    kind,
    mayBe: [],
    startS,
    startsFromS: startS,
    startsByS: startS,
    endS,
    isAsked: true,
    isDoubtful: false,
  });
  const truth = [stage("constant-current", 0, 10_000), stage("constant-voltage", 10_000, 20_000)];
  const everyTenS = Float64Array.from({ length: 2001 }, (_, index) => 10 * index);
  const found = (changeS: number) => [
    { kind: "constant-current" as const, startS: 0, endS: changeS },
    { kind: "constant-voltage" as const, startS: changeS, endS: 20_000 },
  ];

  it("takes a boundary 1 % of the stage away, and calls one farther off missed and false", () => {
    const near = compare(truth, found(10_099), everyTenS, ["person"], "person");
    const far = compare(truth, found(10_101), everyTenS, ["person"], "person");
    expect([near.boundaries[0]?.isHit, near.falseBoundariesS]).toEqual([true, []]);
    expect([far.boundaries[0]?.isHit, far.falseBoundariesS]).toEqual([false, [10_101]]);
  });

  it("takes any boundary inside a gap that holds the change", () => {
    const withGap = everyTenS.filter((atS) => atS <= 9000 || atS >= 11_000);
    expect(compare(truth, found(9000), withGap, ["person"], "person").boundaries[0]?.isHit).toBe(true);
  });

  it("takes the end of a train from the last pulse that a row fell into, where nothing showed up to the next stage", () => {
    const train = [stage("pulses", 0, 10_000), { ...stage("float", 10_000, 20_000), startsFromS: 9_500 }];
    const at = (changeS: number) => [
      { kind: "pulses" as const, startS: 0, endS: changeS },
      { kind: "float" as const, startS: changeS, endS: 20_000 },
    ];
    expect(compare(train, at(9_401), everyTenS, ["person"], "person").boundaries[0]?.isHit).toBe(true);
    expect(compare(train, at(9_399), everyTenS, ["person"], "person").boundaries[0]?.isHit).toBe(false);
  });

  it("misses the change and a kind where one stage was found", () => {
    const verdict = compare(truth, [{ kind: "constant-current", startS: 0, endS: 20_000 }], everyTenS, ["person"], "charger");
    expect(verdict.boundaries.map(({ isHit }) => isHit)).toEqual([false]);
    expect(verdict.kinds.map(({ isHit }) => isHit)).toEqual([true, false]);
    expect(verdict.ending).toBe("wrong");
  });

  it("counts every needless cut", () => {
    const cut = [...found(10_000), { kind: "constant-voltage" as const, startS: 15_000, endS: 20_000 }];
    expect(compare(truth, cut, everyTenS, ["person"], "unknown")).toMatchObject({ falseBoundariesS: [15_000], ending: "unknown" });
  });
});

import { describe, expect, it } from "vitest";
import { type CrossExamination, crossExamine, type Examined, type Witnesses } from "../../../lib/reconcile/index.ts";
import { witnessesOf } from "./example.ts";

/**
 * Densities, voltages and charges of one story, from the acid balance of 0.93 kg a cell and Bode's polynomial: 14, 28 and 36 Ah after
 * 1.160 kg/l give 1.1995, 1.2362 and 1.2560 kg/l, and 12.118, 12.326, 12.526 and 12.638 V.
 */
const agreeing = { densities: [1.16, 1.2, 1.236, 1.256], restV: [12.12, 12.33, 12.53, 12.64], recordedAh: [14.1, 14.1, 8.1] };

function examined(witnesses: Witnesses): Examined {
  const outcome: CrossExamination = crossExamine(witnesses);
  if (!outcome.examined) throw new Error(outcome.why);
  return outcome;
}

/** The same with one kind of reading never taken. */
function mute(witnesses: Witnesses, silent: "densityAt25C" | "restV"): Witnesses {
  return { ...witnesses, visits: witnesses.visits.map(({ [silent]: _, ...visit }) => visit) };
}

/** Width of the 90 % interval of the state of charge at the fourth visit. */
function widthAtLast(outcome: Examined): number {
  const last = outcome.visits[3]?.stateOfCharge;
  return (last?.high90 ?? Number.NaN) - (last?.low90 ?? Number.NaN);
}

describe("the cross-examination", () => {
  it("finds nothing to explain where all witnesses tell one story, and is surer with all of them than with one silent", () => {
    const outcome = examined(witnessesOf(agreeing));
    expect(outcome.best.causes).toEqual([]);
    expect(outcome.causes[0]?.id).toBe("nothing-to-explain");
    const last = outcome.visits[3];
    // 36 Ah of 60 into a battery that lacked 46 leave some 10 Ah missing.
    expect(last?.stateOfCharge.low90).toBeLessThan(0.83);
    expect(last?.stateOfCharge.high90).toBeGreaterThan(0.83);
    const withoutDensity = examined(mute(witnessesOf(agreeing), "densityAt25C"));
    const withoutVoltage = examined(mute(witnessesOf(agreeing), "restV"));
    for (const fewer of [withoutDensity, withoutVoltage]) expect(widthAtLast(fewer)).toBeGreaterThan(widthAtLast(outcome));
    expect(outcome.unrecordedAh.high90).toBe(0);
    expect(outcome.takenAh.low90).toBeLessThan(36);
    expect(outcome.takenAh.high90).toBeGreaterThan(35.5);
  });

  it("finds acid that is not mixed where the hydrometer stays behind voltage and charge", () => {
    const outcome = examined(witnessesOf({ ...agreeing, densities: [1.16, 1.177, 1.194, 1.204] }));
    expect(outcome.best.causes).toEqual(["acid-not-mixed"]);
    const last = outcome.visits[3]?.topBelowMean;
    // 1.256 less 1.204.
    expect(last?.low90).toBeLessThan(0.052);
    expect(last?.high90).toBeGreaterThan(0.052);
    expect(outcome.visits[3]?.stateOfCharge.low90).toBeGreaterThan(0.7);
  });

  it("finds charge that nobody recorded where density and voltage rise by more than the log gives", () => {
    const outcome = examined(witnessesOf({ ...agreeing, recordedAh: [6, 6, 3], unseenH: 6 }));
    expect(outcome.best.causes).toEqual(["charge-unrecorded"]);
    // 36 Ah and a little gas, less 15 recorded.
    expect(outcome.unrecordedAh.low90).toBeLessThan(21.5);
    expect(outcome.unrecordedAh.high90).toBeGreaterThan(21);
  });

  it("does not call charge unrecorded where the recorder saw every hour, and says that it cannot", () => {
    const outcome = examined(witnessesOf({ ...agreeing, recordedAh: [6, 6, 3] }));
    expect(outcome.causes.find(({ id }) => id === "charge-unrecorded")?.visible).toBe(false);
    expect(outcome.unseen.join()).toContain("the recorder saw every hour");
    expect(outcome.best.causes).not.toContain("charge-unrecorded");
  });

  it("finds surface charge where the voltage was read within the hour", () => {
    const outcome = examined(witnessesOf({ ...agreeing, restV: [12.12, 12.56, 12.77, 12.9], restH: [24, 1, 1, 1] }));
    expect(outcome.best.causes).toEqual(["surface-charge"]);
    expect(outcome.visits[3]?.surfaceChargeV?.low90).toBeGreaterThan(0.15);
  });

  it("finds the weak cell, and which", () => {
    const cells = [1.262, 1.264, 1.266, 1.205, 1.263, 1.265];
    const mean = cells.reduce((sum, value) => sum + value, 0) / 6;
    const densities = [1.16 - 0.01, 1.2 - 0.01, 1.236 - 0.01, mean];
    const outcome = examined(witnessesOf({ ...agreeing, densities, restV: [12.06, 12.27, 12.47, 12.62], cells }));
    expect(outcome.best.causes).toContain("weak-cell");
    expect(outcome.statements.join("\n")).toMatch(/[Cc]ell 4 stands 0\.059 kg\/l below/);
  });

  it("finds a hydrometer that reads off, the same at every visit", () => {
    const outcome = examined(witnessesOf({ ...agreeing, densities: agreeing.densities.map((density) => density + 0.022) }));
    expect(outcome.best.causes).toEqual(["hydrometer-off"]);
    expect(outcome.hydrometerOffset?.low90).toBeGreaterThan(0.01);
    expect(outcome.hydrometerOffset?.high90).toBeGreaterThan(0.022);
  });

  it("gives the same answer to the last digit when asked twice, whatever was asked between", () => {
    const first = crossExamine(witnessesOf(agreeing));
    crossExamine(witnessesOf({ ...agreeing, recordedAh: [6, 6, 3], unseenH: 6 }));
    expect(crossExamine(witnessesOf(agreeing))).toEqual(first);
  });

  it("gives probabilities that sum to one, over combinations, and intervals in order", () => {
    const outcome = examined(witnessesOf({ ...agreeing, recordedAh: [9, 9, 6], unseenH: 4 }));
    const sum = outcome.combinations.reduce((total, { probability }) => total + probability, 0);
    // Those under one in a thousand are not listed: at most 21 of them.
    expect(sum).toBeGreaterThan(0.979);
    expect(sum).toBeLessThan(1 + 1e-9);
    for (const { stateOfCharge } of outcome.visits) {
      const { low95, low90, value, high90, high95 } = stateOfCharge;
      expect([low95, low90, value, high90, high95]).toEqual([low95, low90, value, high90, high95].sort((a, b) => a - b));
    }
  });

  it("is no surer with a worse hydrometer", () => {
    const good = witnessesOf(agreeing);
    const worse: Witnesses = {
      ...good,
      visits: good.visits.map((visit) =>
        visit.densityAt25C === undefined
          ? visit
          : { ...visit, densityAt25C: { ...visit.densityAt25C, commonStandardUncertainty: 0.01, randomStandardUncertainty: 0.008 } },
      ),
    };
    // The walk's own noise is about 4 % of a width.
    expect(widthAtLast(examined(worse))).toBeGreaterThan(0.96 * widthAtLast(examined(good)));
  });
});

describe("the next reading", () => {
  it("is one that tells the two most probable explanations apart, and says what it would show", () => {
    // Whether the rating is wrong or charge went unseen: a discharge, or a clamp meter while the recorder is silent.
    const witnesses = witnessesOf({ ...agreeing, recordedAh: [10.5, 10.5, 6], unseenH: 2 });
    const { electrolyteKgPerCell: _, ...battery } = witnesses.battery;
    const outcome = examined({ ...witnesses, battery: { ...battery, capacityBasis: "printed" } });
    expect(outcome.readings.map(({ expectedBits }) => expectedBits)).toEqual(
      outcome.readings.map(({ expectedBits }) => expectedBits).sort((a, b) => b - a),
    );
    expect(["clamp-current-before-disconnecting", "measured-discharge"]).toContain(outcome.nextReading?.id);
    expect(outcome.nextReading?.why).toMatch(/ if the cause is “.+”, and .+ if it is “.+”/);
  });

  it("never promises more than there is to learn", () => {
    const outcome = examined(witnessesOf({ ...agreeing, recordedAh: [9, 9, 6], unseenH: 4 }));
    const entropy = outcome.combinations.reduce((sum, { probability }) => sum - probability * Math.log2(probability), 0);
    // The rare combinations that are not listed may add a little to the true entropy.
    for (const { expectedBits } of outcome.readings) expect(expectedBits).toBeLessThan(entropy + 0.05);
  });

  it("is not the temperature where that was taken, and may be where it was not", () => {
    const taken = examined(witnessesOf(agreeing));
    expect(taken.readings.map(({ id }) => id)).not.toContain("acid-temperature");
    const witnesses = witnessesOf(agreeing);
    const guessed = examined({
      ...witnesses,
      visits: witnesses.visits.map((visit) =>
        visit.densityAt25C === undefined ? visit : { ...visit, densityAt25C: { ...visit.densityAt25C, temperatureMeasured: false } },
      ),
    });
    expect(guessed.readings.map(({ id }) => id)).toContain("acid-temperature");
  });
});

describe("what a shop may lack", () => {
  const bare = { battery: { cells: 6, construction: "flooded", capacityAh: 60, capacityBasis: "printed" } } as const;

  it("says why there is too little to examine", () => {
    expect(crossExamine({ ...bare, visits: [], intervals: [] })).toEqual({ examined: false, why: "nobody visited the battery" });
    const voltageOnly = { number: 1, atMs: 0, restV: { value: 12.5, standardUncertainty: 0.01 } };
    expect(crossExamine({ ...bare, visits: [voltageOnly], intervals: [] })).toEqual({
      examined: false,
      why: "only one witness was heard; with nothing to hold it against there is nothing to examine",
    });
    expect(
      crossExamine({ ...bare, battery: { ...bare.battery, capacityAh: Number.NaN }, visits: [voltageOnly], intervals: [] }),
    ).toMatchObject({
      examined: false,
    });
    const backwards = [
      { ...voltageOnly, atMs: 5 },
      { ...voltageOnly, number: 2 },
    ];
    expect(crossExamine({ ...bare, visits: backwards, intervals: [{}] })).toEqual({
      examined: false,
      why: "the visits do not stand in the order of time",
    });
  });

  it("examines one visit with two witnesses", () => {
    const visit = witnessesOf({ densities: [1.236], restV: [12.53], recordedAh: [] });
    expect(examined(visit).visits[0]?.stateOfCharge.value).toBeGreaterThan(0.5);
  });

  it("takes what is not finite as lacking, and leaves charge that nobody logged wide open", () => {
    const witnesses = witnessesOf(agreeing);
    const holed: Witnesses = {
      ...witnesses,
      visits: witnesses.visits.map((visit, k) =>
        k === 1 && visit.restV !== undefined ? { ...visit, restV: { ...visit.restV, value: Number.NaN } } : visit,
      ),
      intervals: [{ recordedAh: { value: Number.NaN, standardUncertainty: 0.1 }, hours: 48 }, ...witnesses.intervals.slice(1)],
    };
    const outcome = examined(holed);
    expect(outcome.accounts.find(({ witness, visit }) => witness === "rest-voltage" && visit === 2)?.stateOfCharge).toBeNull();
    expect(outcome.accounts.find(({ witness, visit }) => witness === "charge-balance" && visit === 4)?.why).toBe(
      "nothing was recorded between visits 1 and 2",
    );
    expect(outcome.assumptions.join()).toContain("nothing was recorded");
    const seen = examined(witnesses).intervals[0]?.takenAh;
    const open = outcome.intervals[0]?.takenAh;
    expect((open?.high90 ?? 0) - (open?.low90 ?? 0)).toBeGreaterThan((seen?.high90 ?? 0) - (seen?.low90 ?? 0));
  });

  it("examines a sealed battery by voltage, charge and cranking, and says what cannot be seen", () => {
    const witnesses = witnessesOf({ ...agreeing, restV: [12.1, 12.4, 12.68, 12.83], crankingA: [330, 410, 470, 500] });
    const { fullDensityAt25C: _, electrolyteKgPerCell: __, ...battery } = witnesses.battery;
    const outcome = examined({ ...witnesses, battery: { ...battery, construction: "AGM" } });
    expect(outcome.hydrometerOffset).toBeNull();
    expect(outcome.visits[3]?.topBelowMean).toBeNull();
    expect(outcome.accounts.filter(({ witness }) => witness === "density").every(({ stateOfCharge }) => stateOfCharge === null)).toBe(true);
    expect(outcome.unseen.join()).toContain("no hydrometer reaches");
  });
});

describe("the words", () => {
  it("tell a technician of every visit and the causes, and a buyer in two sentences without jargon", () => {
    const outcome = examined(witnessesOf({ ...agreeing, recordedAh: [6, 6, 3], unseenH: 6 }));
    expect(outcome.statements.slice(0, 4).every((sentence, k) => sentence.startsWith(`Visit ${k + 1}: density `))).toBe(true);
    expect(outcome.buyer).toHaveLength(2);
    expect(outcome.buyer[0]).toMatch(/^At the last visit the battery was between \d+ and \d+\s% full, by everything that was measured/u);
    expect(outcome.buyer.join(" ")).not.toMatch(/prior|posterior|entropy|likelihood|kg\/l|NaN|undefined/);
    expect(outcome.statements.join(" ")).not.toMatch(/NaN|undefined/);
  });
});

import { describe, expect, it } from "vitest";
import { reasonsAgainst } from "../../../lib/project/battery-classes.ts";
import { readyBy, verdictOf } from "../../../lib/project/ready-by.ts";
import { behaviourIUoU } from "./cases.ts";

describe("ready by", () => {
  const cells = readyBy(behaviourIUoU(4), { construction: "flooded", condition: "new", airC: 20, claimedAh: { low: 20, high: 90 } });

  it("has a cell for each of five batteries and four states", () => {
    expect(cells).toHaveLength(20);
  });

  it("is never less likely with more time, and never more likely for a flatter or bigger battery", () => {
    const probability = (battery: string, flatness: string, deadline: number) =>
      cells.find((cell) => cell.battery === battery && cell.flatness === flatness)?.deadlines[deadline]?.probability ?? Number.NaN;
    for (const { deadlines } of cells) {
      const [first, second, third] = deadlines.map((deadline) => deadline.probability);
      expect(second ?? 0).toBeGreaterThanOrEqual(first ?? 1);
      expect(third ?? 0).toBeGreaterThanOrEqual(second ?? 1);
    }
    // Flatter alone does not lengthen a long tail, so a draw or two of 64 may turn; within four hours of bulk they cannot.
    expect(probability("van-or-boat", "flat", 0)).toBeLessThan(probability("van-or-boat", "slightly", 0));
    expect(probability("van-or-boat", "flat", 0)).toBeLessThan(probability("small-car", "flat", 0));
  });

  it("will not fill 120 Ah from very flat at 4 A in 12 h: 48 Ah go in at most (definition of the ampere-hour)", () => {
    const van = cells.find((cell) => cell.battery === "van-or-boat" && cell.flatness === "very-flat");
    expect(van?.deadlines[0]).toMatchObject({ deadlineH: 12, probability: 0, verdict: "will not" });
  });

  it("advises against 4 A on a motorcycle battery, and holds the maker's range against each class", () => {
    const motorcycle = cells.find((cell) => cell.battery === "motorcycle");
    expect(motorcycle?.deadlines.every(({ verdict }) => verdict === "not advised")).toBe(true);
    expect(motorcycle?.because[0]).toContain("4.0 A is more than");
    const claimed = Object.fromEntries(cells.map(({ battery, isClaimed }) => [battery, isClaimed]));
    expect(claimed).toEqual({ motorcycle: "none", "small-car": "all", "family-car": "all", diesel: "part", "van-or-boat": "none" });
  });

  it("says will from 0.9, will not up to 0.1, may between", () => {
    expect([0.9, 0.89, 0.11, 0.1].map(verdictOf)).toEqual(["will", "may", "may", "will not"]);
  });
});

describe("reasons against charging", () => {
  it("warns of frost for a flat battery in hard frost, not for a full one", () => {
    expect(reasonsAgainst("flooded", 60, 0.05, 1.1, { low: 4, high: 4 }, -10).join()).toContain("frozen");
    expect(reasonsAgainst("flooded", 60, 0.9, 1.265, { low: 4, high: 4 }, -10)).toEqual([]);
  });

  it("sends a very flat sealed battery to its maker's procedure", () => {
    expect(reasonsAgainst("AGM", 60, 0.05, 1.11, { low: 4, high: 4 }, 20).join()).toContain("maker's own procedure");
    expect(reasonsAgainst("flooded", 60, 0.05, 1.13, { low: 4, high: 4 }, 20)).toEqual([]);
    // 15.8 V on a sealed 12 V battery: commonly 14.8 V at most for AGM (common practice); flooded ones are brought there on purpose.
    expect(reasonsAgainst("AGM", 60, 0.5, 1.2, { low: 4, high: 4 }, 20, 15.8 / 6).join()).toContain("dries out");
    expect(reasonsAgainst("AGM", 60, 0.5, 1.2, { low: 4, high: 4 }, 20, 14.8 / 6)).toEqual([]);
    expect(reasonsAgainst("flooded", 60, 0.5, 1.2, { low: 4, high: 4 }, 20, 15.8 / 6)).toEqual([]);
  });
});

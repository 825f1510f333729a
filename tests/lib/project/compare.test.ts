import { describe, expect, it } from "vitest";
import { type Contender, rankContenders, shareWon } from "../../../lib/project/compare.ts";

const never = Number.POSITIVE_INFINITY;
const contender = (id: string, draws: number[], more: Partial<Contender> = {}): Contender => ({
  id,
  draws,
  basis: "projected",
  batteryKind: "flooded",
  target: "95 %",
  ...more,
});
const around = (centre: number) => Array.from({ length: 100 }, (_, k) => centre + k / 100);

describe("ranking", () => {
  it("puts apart what wins nearly every draw and ties the rest; common chance decides draw by draw", () => {
    // b is slower than a in every single draw, though their intervals overlap almost wholly.
    const { groups, pairs } = rankContenders(
      [contender("a", around(10)), contender("b", around(10.05)), contender("c", around(12))],
      "less",
    );
    expect(groups).toEqual([["a"], ["b"], ["c"]]);
    expect(pairs[0]).toMatchObject({ a: "a", b: "b", aBeatsB: 1, isTie: false });
  });

  it("ties chargers of which neither wins more than 95 in 100", () => {
    const mixed = around(10).map((draw, k) => draw + (k % 10 === 0 ? -0.2 : 0.2));
    expect(rankContenders([contender("a", around(10)), contender("b", mixed)], "less")).toMatchObject({
      groups: [["a", "b"]],
      pairs: [{ aBeatsB: 0.9, isTie: true }],
    });
  });

  it("counts never against never as half a win each, and never as worse than any hours", () => {
    expect(shareWon(contender("a", [never, 5]), contender("b", [never, never]), "less")).toBe(0.75);
    expect(shareWon(contender("a", [3]), contender("b", [2]), "more")).toBe(1);
  });

  it("leaves out what was tried otherwise, with the reason", () => {
    const { groups, notComparable } = rankContenders(
      [
        contender("a", around(10)),
        contender("gel", around(5), { batteryKind: "gel" }),
        contender("half", around(5), { target: "80 %" }),
        contender("seen", around(5), { basis: "measured" }),
      ],
      "less",
    );
    expect(groups).toEqual([["a"]]);
    expect(notComparable.map(({ id }) => id)).toEqual(["gel", "half", "seen"]);
    expect(notComparable[0]?.because).toContain("another kind of battery");
  });

  it("is empty for nobody", () => {
    expect(rankContenders([], "less")).toEqual({ groups: [], pairs: [], notComparable: [] });
  });
});

import { describe, expect, it } from "vitest";
import { judgeClaims } from "../../../../lib/judge/claims/index.ts";
import type { Finding, JudgedClaim, Outcome } from "../../../../lib/nouns/finding.ts";
import { makeVerdict } from "../../../../lib/publish/assemble/verdict.ts";
import { contextOf } from "../../measure/bench.ts";

const [plainClaim] = judgeClaims(contextOf({ claims: { currentA: { value: 8, from: "label" } } }));
function currentClaim(outcome: Outcome, measured: number | null): JudgedClaim {
  if (plainClaim === undefined) throw new Error("the claim is missing");
  return { ...plainClaim, outcome, measured };
}
const finding = (id: string, verdict: string, weight: Finding["weight"]): Finding => ({
  id,
  subject: "",
  verdict,
  weight,
  sentence: "",
  why: [],
  wouldSettle: null,
  figures: [],
  doubts: [],
});

describe("the first sentence a buyer reads", () => {
  it.each<[Outcome, number | null, string]>([
    ["meets", 8, "Gives the 8\u202FA on its label."],
    ["short of", 5.04, "Gives 5\u202FA of the 8\u202FA on its label."],
    ["above", 9.9, "Gives 9.9\u202FA, more than the 8\u202FA on its label."],
    ["cannot tell", 7.2, "Whether it gives the 8\u202FA on its label cannot be told."],
    ["not put to the test", null, "The 8\u202FA on its label was not put to the test."],
  ])("says of a current claim that is %s only what was judged", (outcome, measured, sentence) => {
    expect(makeVerdict([currentClaim(outcome, measured)], []).sentence).toBe(sentence);
  });

  it("warns of a charger that was not seen to let go, and not of one that did after a day", () => {
    expect(makeVerdict([], [finding("letting-go", "no", "bad")]).sentence).toContain("do not leave it connected");
    expect(makeVerdict([], [finding("letting-go", "only after a day", "caution")]).sentence).not.toContain("do not leave it connected");
  });

  it("never says that a charge finished because a recording did", () => {
    const endings = [finding("recording-endings", "the recorder stopped first", "caution")];
    expect(makeVerdict([currentClaim("meets", 8)], endings)).toEqual({ sentence: "Gives the 8\u202FA on its label.", weight: "caution" });
  });

  it("says nothing of a target that was not put to the test", () => {
    expect(makeVerdict([], [finding("target-density", "not put to the test", "untested")]).sentence).toBe(
      "Too little was recorded to say what this charger does.",
    );
  });

  it("is bad with one bad finding, good only with a reached target and claims met, untested where nothing was tested", () => {
    const reached = finding("target-density", "reached", "good");
    expect(makeVerdict([currentClaim("meets", 8)], [reached]).weight).toBe("good");
    expect(makeVerdict([currentClaim("meets", 8)], [reached, finding("float-window", "no", "bad")]).weight).toBe("bad");
    expect(makeVerdict([currentClaim("short of", 5)], [reached]).weight).toBe("bad");
    expect(makeVerdict([currentClaim("cannot tell", 7.2)], [reached]).weight).toBe("unsure");
    expect(
      makeVerdict([currentClaim("not put to the test", null)], [finding("target-density", "not put to the test", "untested")]).weight,
    ).toBe("untested");
  });
});

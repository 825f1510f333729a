import { describe, expect, it } from "vitest";
import { claimMethods, judgeClaims } from "../../../../lib/judge/claims/index.ts";
import { judgedClaim } from "../../../../lib/nouns/finding.ts";
import { contextOf } from "../../measure/bench.ts";

const every = {
  currentA: { value: 5, from: "label" },
  voltageV: { value: 14.4, from: "label" },
  floatVoltageV: { value: 13.6, from: "manual" },
  characteristic: { value: "IUoU", from: "manual" },
  holdsForSeason: { value: true, from: "box" },
};

describe("the claims of a mode", () => {
  it("are judged each, and each has its method page", () => {
    const ids = judgeClaims(contextOf({ claims: every })).map((claim) => claim.id);
    expect(ids).toEqual(claimMethods.map((method) => method.id));
  });

  it("are not put to the test where nothing was recorded, in the published form, saying what would", () => {
    for (const claim of judgeClaims(contextOf({ claims: every }))) {
      expect(judgedClaim.parse(claim)).toEqual(claim);
      expect(claim, claim.id).toMatchObject({ outcome: "not put to the test", measured: null, wouldSettle: expect.any(String) });
    }
  });

  it("are none where the maker claims nothing", () => {
    expect(judgeClaims(contextOf())).toEqual([]);
  });
});

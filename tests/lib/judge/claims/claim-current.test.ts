import { describe, expect, it } from "vitest";
import { judgeCurrent } from "../../../../lib/judge/claims/claim-current.ts";
import { absorption, bulk, contextOf, logOf, recordingOf, rows, unstatedRecorder } from "../../measure/bench.ts";

const claims = { currentA: { value: 5, words: "5 A", from: "label" } };
/** A charge whose bulk is held at a current; the recorder is off by ±0.1 A, so U is 0.115 A. */
function judged(currentA: number, more: Parameters<typeof contextOf>[0] = {}, recorder?: typeof unstatedRecorder) {
  const recording = recordingOf(
    logOf([
      { ...bulk, a: () => currentA },
      { ...absorption, a: (h) => currentA * Math.exp(-h / 1.2) + 0.2 * (1 - Math.exp(-h / 1.2)) },
    ]),
    recorder === undefined ? {} : { recorder },
  );
  return judgeCurrent(contextOf({ claims, connections: [{ onH: 0, offH: 10, recordings: [recording] }], ...more }));
}

describe("claim: output current, 5 A with the site's tolerance of a tenth either way", () => {
  it.each([
    ["meets", 5.0, /inside the tolerance/],
    ["short of", 4.0, /below the lower limit/],
    ["above", 6.0, /above the upper limit/],
    // Guarded by U = 0.115 A at the limit of 4.5 A.
    ["cannot tell", 4.52, /nearer to a limit than the expanded uncertainty/],
  ] as const)("%s at %f A held", (outcome, currentA, why) => {
    const claim = judged(currentA);
    expect(claim).toMatchObject({ outcome, acceptLow: 4.5, acceptHigh: expect.closeTo(5.5, 9), claimedWords: "5 A" });
    expect(claim?.why).toMatch(why);
    expect(claim?.measured).toBeCloseTo(currentA, 1);
  });

  it("is not put to the test where the battery, and not the charger, limited the current", () => {
    const recording = recordingOf(logOf([absorption]));
    expect(judgeCurrent(contextOf({ claims, connections: [{ onH: 0, offH: 10, recordings: [recording] }] }))).toMatchObject({
      outcome: "not put to the test",
      why: expect.stringContaining("no recording shows a stretch in which the charger"),
    });
  });

  it("gives the true reason where no current was logged, or nothing recorded", () => {
    const s = rows(100, 60);
    const voltageOnly = recordingOf({ s, v: s.map(() => 13) });
    expect(judgeCurrent(contextOf({ claims, connections: [{ onH: 0, offH: 2, recordings: [voltageOnly] }] }))?.why).toBe(
      "no recorder logged both voltage and current",
    );
    expect(judgeCurrent(contextOf({ claims }))?.why).toBe("nothing was recorded");
  });

  it("cannot be told with a recorder of unstated accuracy, and has no interval", () => {
    expect(judged(5, {}, unstatedRecorder)).toMatchObject({
      outcome: "cannot tell",
      low: null,
      high: null,
      wouldSettle: expect.stringContaining("accuracy"),
    });
  });

  it("is decided by the value alone where the site's rule is simple", () => {
    expect(judged(4.52, { site: { rules: { decision: "simple" } } })).toMatchObject({
      outcome: "meets",
      rule: expect.stringContaining("simple"),
    });
  });

  it("keeps to the tolerance that was declared for the claim", () => {
    const tolerated = { currentA: { value: 5, from: "label", tolerance: { below: 0.3, above: 0 } } };
    expect(judged(4, { claims: tolerated })).toMatchObject({ outcome: "meets", acceptLow: 3.5, acceptHigh: 5 });
  });

  it("is undefined where the mode claims no current", () => {
    expect(judgeCurrent(contextOf())).toBeUndefined();
  });
});

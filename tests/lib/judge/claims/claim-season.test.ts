import { describe, expect, it } from "vitest";
import { judgeSeason } from "../../../../lib/judge/claims/claim-season.ts";
import type { Instrument } from "../../../../lib/nouns/instrument.ts";
import { absorption, bulk, contextOf, float, logOf, plainRecorder, recordingOf, unstatedRecorder } from "../../measure/bench.ts";

const finer: Instrument = { ...plainRecorder, measures: { ...plainRecorder.measures, voltage: { plusMinus: 0.02, from: "data sheet" } } };
/** A calcium battery's window is 13.5 to 13.8 V; the recorder is off by ±0.02 V, so U is 0.023 V. */
const judged = (floatV: number, recorder = finer, rules = {}) =>
  judgeSeason(
    contextOf({
      site: { rules },
      claims: { holdsForSeason: { value: true, from: "box" } },
      connections: [
        { onH: 0, offH: 14, recordings: [recordingOf(logOf([bulk, absorption, { ...float, v: () => floatV }]), { recorder })] },
      ],
    }),
  );

describe("claim: may stay connected, by the voltage it holds", () => {
  it.each([
    ["meets", 13.65],
    ["short of", 13.3],
    ["above", 14.0],
    ["cannot tell", 13.79],
  ] as const)("%s at %f V", (outcome, floatV) => {
    expect(judged(floatV)).toMatchObject({ outcome, acceptLow: 13.5, acceptHigh: 13.8 });
  });

  it("keeps to the site's decision rule", () => {
    expect(judged(13.79, finer, { decision: "simple" })).toMatchObject({ outcome: "meets" });
  });

  it("cannot be told with a recorder of unstated accuracy, and says that this is why", () => {
    expect(judged(13.65, unstatedRecorder)).toMatchObject({
      outcome: "cannot tell",
      low: null,
      high: null,
      why: expect.stringContaining("accuracy is not stated"),
      wouldSettle: expect.stringContaining("accuracy"),
    });
  });

  it("is not put to the test where no recording shows what it holds", () => {
    expect(judgeSeason(contextOf({ claims: { holdsForSeason: { value: true, from: "box" } } }))).toMatchObject({
      outcome: "not put to the test",
      wouldSettle: expect.any(String),
    });
  });

  it("is no claim where the maker says that it must come off, or says nothing", () => {
    expect(judgeSeason(contextOf({ claims: { holdsForSeason: { value: false, from: "box" } } }))).toBeUndefined();
    expect(judgeSeason(contextOf())).toBeUndefined();
  });
});

import { describe, expect, it } from "vitest";
import { judgeCharacteristic } from "../../../../lib/judge/claims/claim-characteristic.ts";
import { absorption, bulk, contextOf, float, logOf, type Part, recordingOf, rest, rows } from "../../measure/bench.ts";

const judged = (value: string, parts: readonly Part[]) =>
  judgeCharacteristic(
    contextOf({
      claims: { characteristic: { value, from: "manual" } },
      connections: [{ onH: 0, offH: 100, recordings: [recordingOf(logOf(parts))] }],
    }),
  );

describe("claim: charge characteristic, in letters", () => {
  it("meets where the recording shows what is named", () => {
    expect(judged("IUoU", [bulk, absorption, float])).toMatchObject({ outcome: "meets", measuredWords: "IUoU", doubts: [] });
    expect(judged("IUa", [bulk, absorption, rest])).toMatchObject({ outcome: "meets", measuredWords: "IUa" });
  });

  it("says that a further stage may follow where the recording ended before the charger did", () => {
    expect(judged("IU", [bulk, absorption])).toMatchObject({
      outcome: "meets",
      doubts: [expect.stringContaining("a further stage may follow")],
    });
  });

  it("is short of where the charger was seen to end without the float that is named", () => {
    expect(judged("IUoU", [bulk, absorption, rest])).toMatchObject({ outcome: "short of", measuredWords: "IUa" });
  });

  it("is short of where the limit was held for a day without the change-over that is named", () => {
    const held = { hours: 30, v: () => 14.4, a: (h: number) => 0.2 + 4.8 * Math.exp(-h / 1.5) };
    expect(judged("IUoU", [bulk, held])).toMatchObject({ outcome: "short of", why: expect.stringContaining("without a change-over") });
  });

  it("cannot be told where the recording ended in the middle of what is named", () => {
    expect(judged("IUoU", [bulk, absorption])).toMatchObject({
      outcome: "cannot tell",
      why: expect.stringContaining("ended before the charger did"),
      wouldSettle: "a recording that goes on until the charger stops or holds",
    });
  });

  it("cannot be told where the recording began late: a battery nearly full shows no beginning", () => {
    expect(judged("IUoU", [absorption, float])).toMatchObject({ outcome: "cannot tell", why: expect.stringContaining("began late") });
  });

  it("is not put to the test without a recording of voltage and current", () => {
    expect(judgeCharacteristic(contextOf({ claims: { characteristic: { value: "IU", from: "box" } } }))).toMatchObject({
      outcome: "not put to the test",
      why: "nothing was recorded",
    });
    const s = rows(100, 60);
    const voltageOnly = recordingOf({ s, v: s.map(() => 13) });
    expect(
      judgeCharacteristic(
        contextOf({
          claims: { characteristic: { value: "IU", from: "box" } },
          connections: [{ onH: 0, offH: 2, recordings: [voltageOnly] }],
        }),
      ),
    ).toMatchObject({ outcome: "not put to the test", why: "no recorder logged both voltage and current" });
  });
});

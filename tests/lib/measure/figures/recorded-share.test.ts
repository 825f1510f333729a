import { describe, expect, it } from "vitest";
import { recordedShare } from "../../../../lib/measure/figures/recorded-share.ts";
import { bulk, contextOf, logOf, recordingOf } from "../bench.ts";

const shareOf = (offH: number | null, recordings = [recordingOf(logOf([bulk]))]) => {
  const [connection] = contextOf({ connections: [{ onH: 0, offH, recordings }] }).connections;
  if (connection === undefined) throw new Error("the bench has one connection");
  return recordedShare.compute(connection);
};

describe("share of a connection that was recorded", () => {
  it("is half where five of ten hours were recorded; the log's last row stands a minute short of them", () => {
    expect(shareOf(10)).toMatchObject({ value: expect.closeTo((100 * (300 - 1)) / 600, 9) });
  });

  it("leaves out the hours in which the recorder ran with its leads off the battery: five of ten, and five more that show nothing", () => {
    const off = recordingOf(logOf([bulk, { hours: 5, v: () => 0, a: () => 0 }]));
    const share = shareOf(10, [off]);
    expect(share).toMatchObject({ value: expect.closeTo(50, 0) });
  });

  it("is nothing where nothing was recorded: that much is known", () => {
    expect(shareOf(10, [])).toMatchObject({ value: 0 });
  });

  it("cannot be told, yet is bounded, where nobody saw the clamps come off", () => {
    expect(shareOf(null)).toMatchObject({ absent: "cannot tell", bounds: { low: 0, high: 100 } });
  });
});

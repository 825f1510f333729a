import { describe, expect, it } from "vitest";
import { entryOf, recordingId } from "../../../lib/read/recording-entry.ts";

describe("entries under recordings", () => {
  it("may be a file's name alone", () =>
    expect(entryOf("logs/day-1.csv")).toEqual({
      file: "logs/day-1.csv",
      with: undefined,
      withClockAheadS: 0,
      recorder: undefined,
      startedAt: undefined,
      badRows: [],
      part: undefined,
    }));

  it("keep what stands beside the name", () => {
    const entry = {
      file: "logs/v.csv",
      recorder: "eel",
      badRows: [{ from: 2, to: 3, why: "loose" }],
      with: "logs/i.csv",
      withClockAheadS: 12,
      part: 2,
    };
    expect(entryOf(entry)).toMatchObject({ ...entry, startedAt: undefined });
  });

  it.each([
    ["logs/day-1.csv", undefined, "day-1.csv"],
    ["logs/day-1/part-2.csv", undefined, "day-1~part-2.csv"],
    ["logs/day-1.csv", 2, "day-1.csv~2"],
  ])("%s, part %s, is %s in addresses", (file, part, id) => expect(recordingId({ file, part })).toBe(id));
});

import { describe, expect, it } from "vitest";
import { agree } from "../../../dialects/agree.ts";

describe("the fast reader of plain rows", () => {
  it("finds what csv-parse finds, row for row and to the last bit: 40,000 lines of seed 3", async () => {
    const { failures, plainRows, faults, lines } = await agree(40_000, 3);
    expect(failures).toEqual([]);
    // Were few rows plain, or none odd, agreement would show nothing.
    expect(plainRows).toBeGreaterThan(0.3 * lines);
    expect(faults).toBeGreaterThan(5);
  }, 60_000);
});

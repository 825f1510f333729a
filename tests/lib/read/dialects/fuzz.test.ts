import { describe, expect, it } from "vitest";
import { fuzz } from "../../../dialects/fuzz.ts";

// Longer runs: npx tsx tests/dialects/fuzz.ts --count N --seed S; docs/dialects.md tells how many were made.
describe("spoilt files of the corpus", () => {
  it("neither crash nor hang the reader, and nothing is taken in that is not there: 3000 of seed 1", async () => {
    const tally = await fuzz(3000, 1);
    expect(tally.failures).toEqual([]);
    // The test would show nothing if all were refused, or all were read.
    expect(tally.read).toBeGreaterThan(150);
    expect(tally.refused).toBeGreaterThan(1000);
  }, 180_000);
});

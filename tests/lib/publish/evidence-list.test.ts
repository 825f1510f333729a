import { describe, expect, it } from "vitest";
import type { Evidence } from "../../../lib/nouns/evidence.ts";
import { placesText } from "../../../lib/publish/pages/evidence-list.tsx";
import { wordsIn } from "../../../lib/publish/words/index.ts";

const { evidence: words } = wordsIn("en").parts;
const at = (lines?: [number, number], column?: number): Evidence => ({
  file: "data/tests/t/readings.csv",
  sha256: "0".repeat(64),
  ...(lines === undefined ? {} : { lines }),
  ...(column === undefined ? {} : { column }),
});

describe("the places of evidence in a file", () => {
  it("gathers the columns of a line", () => {
    expect(placesText([at([2, 2], 18), at([2, 2], 24), at([4, 4], 18)], words)).toBe("line 2, columns 18, 24; line 4, column 18");
  });

  it("names a range of lines", () => {
    expect(placesText([at([2, 2418])], words)).toBe("lines 2–2418");
  });

  it("is empty where the whole file is meant", () => {
    expect(placesText([at()], words)).toBe("");
  });
});

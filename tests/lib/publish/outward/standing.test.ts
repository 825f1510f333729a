import { describe, expect, it } from "vitest";
import { outwardSpeechIn } from "../../../../lib/publish/outward/outward-speech.ts";
import { standingNotice } from "../../../../lib/publish/outward/standing.ts";

const correction = (kind: string, on: string, changesVerdict = false) => ({
  on,
  kind,
  what: `what of ${on}`,
  why: "because",
  noticedBy: null,
  changesVerdict,
});

describe("what must be read before a verdict", () => {
  it("is nothing where nothing was corrected, or only words and values", () => {
    expect(standingNotice({ corrections: [] }, outwardSpeechIn("en"))).toBeNull();
    expect(
      standingNotice(
        { corrections: [correction("clarification", "2026-01-01"), correction("correction", "2026-01-02")] },
        outwardSpeechIn("en"),
      ),
    ).toBeNull();
  });

  it("is the withdrawal, however many corrections came after it", () => {
    const corrections = [
      correction("withdrawal", "2026-01-01"),
      correction("concern", "2026-02-01"),
      correction("correction", "2026-03-01", true),
    ];
    expect(standingNotice({ corrections }, outwardSpeechIn("en"))?.words).toBe("Withdrawn on 2026-01-01: this result no longer stands.");
  });

  it("is a concern before a changed verdict", () => {
    const corrections = [correction("concern", "2026-01-01"), correction("correction", "2026-03-01", true)];
    expect(standingNotice({ corrections }, outwardSpeechIn("en"))?.words).toBe("In doubt since 2026-01-01: what of 2026-01-01");
  });

  it("is the newest of several changed verdicts", () => {
    const corrections = [correction("correction", "2026-01-01", true), correction("revision", "2026-03-01", true)];
    expect(standingNotice({ corrections }, outwardSpeechIn("en"))?.on).toBe("2026-03-01");
  });
});

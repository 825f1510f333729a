/** Pieces that several pages share: facts, findings, claims, figures with their evidence, the evidence strip, charts. */
import { oneOrMany } from "../plural.ts";

export const parts = {
  nothingStated: "Nothing is stated.",
  drawing: (caption: string) => `${caption} (drawing)`,
  caution: {
    name: "Caution",
    lead: "Before you repeat any of this:",
    dangers:
      "a charging battery gives off hydrogen, holds acid and can drive hundreds of amperes through a dropped spanner. Eye protection, air, no sparks, never a frozen battery.",
    sealed: "A sealed battery must not be opened, and too high a voltage dries it out for good.",
    authority: "What holds is your local code, the battery maker's sheet and a licensed person's judgement.",
    all: "All cautions",
  },
  doubt: {
    expected: "Expected",
    found: ", found",
    mend: "to mend:",
  },
  wouldSettle: "What would settle it",
  strip: {
    recorded: "recorded",
    connected: "connected, not recorded",
    endNotSeen: "end not seen",
    reading: "reading",
    numbered: "reading, numbered above; connections are numbered below",
    /** What the drawing shows, for those who do not see it. */
    sentence: (span: string, connections: number, stretches: number, readings: number, unseenEnds: number) =>
      [
        `Evidence strip over ${span}: ${connections} ${oneOrMany(connections, "connection", "connections")}`,
        `${stretches} ${oneOrMany(stretches, "recorded stretch", "recorded stretches")}`,
        `${readings} ${oneOrMany(readings, "reading", "readings")}`,
        unseenEnds === 0 ? "every end is known" : `${unseenEnds} ${oneOrMany(unseenEnds, "end that nobody saw", "ends that nobody saw")}`,
      ].join(", "),
  },
  findings: {
    none: "Nothing was judged here.",
    why: "Why",
    how: "How this is judged",
    restsOn: "Rests on",
  },
  claims: {
    none: "Nothing was claimed for this mode that could be judged.",
    columns: {
      claim: "Claim",
      claimed: "Claimed",
      measured: "Measured",
      drawn: "Claim and measurement",
      outcome: "Outcome",
      why: "Why",
    },
    key: "In the drawings the band is what still counts as meeting the claim, the dashed rule is the claim itself, and the dot with its whiskers is the measurement with its 95 % interval.",
    notANumber: "not a number",
    accepted: (interval: string) => `accepted: ${interval}`,
    probability: (probability: string) => `within the limits with probability ${probability}`,
    rule: "Rule:",
  },
  figures: {
    columns: { figure: "Figure", value: "Value, 95 % interval", method: "Method", evidence: "Evidence" },
  },
  evidence: {
    files: (count: number) => `${count} ${oneOrMany(count, "file", "files")}`,
    noFile: "no file: see the method",
    line: (line: number) => `line ${line}`,
    lines: (first: number, last: number) => `lines ${first}–${last}`,
    columns: (columns: readonly number[]) => `${columns.length === 1 ? "column" : "columns"} ${columns.join(", ")}`,
  },
  repeats: {
    caption: (mode: string) => `The same again: mode “${mode}” over its recordings`,
    columns: {
      quantity: "Quantity",
      each: "Each recording",
      spread: "Spread, as a standard deviation with its 95 % interval",
      spreadShort: "Spread",
    },
    within: "Connection to connection",
    between: "Test to test",
  },
};

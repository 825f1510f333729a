/** Invented things for the page of signs, so that every component that draws a judgement, a value or an absence can be looked at in one place. */
import type { Figure } from "../../nouns/figure.ts";
import type { Finding, JudgedClaim } from "../../nouns/finding.ts";
import type { Stage } from "../../nouns/stage.ts";
import type { ComparisonRow, TestResult, Timeline } from "../results.ts";

/** A test of two connections: one recorded in part, one whose end nobody saw. */
export const exampleTimeline: Timeline = {
  start: null,
  end: null,
  spanH: 100,
  connections: [
    { id: "1", startH: 4, endH: 40, endKnown: true, recorded: [{ startH: 4, endH: 22, recording: "day-1.csv" }], endedBy: "recorder" },
    { id: "2", startH: 52, endH: 80, endKnown: false, recorded: [{ startH: 52, endH: 80, recording: "day-3.csv" }], endedBy: "unknown" },
  ],
  readings: [1, 46, 98].map((atH, place) => ({ number: place + 1, atH, label: `visit ${place + 1}` })),
  findings: [],
  words: "",
};

const claimAt = (outcome: JudgedClaim["outcome"], measured: number | null, halfWidth: number): JudgedClaim => ({
  id: outcome,
  label: outcome,
  unit: "A",
  claimed: 8,
  claimedWords: null,
  claimedFrom: "label",
  acceptLow: 7.2,
  acceptHigh: 8.8,
  measured,
  low: measured === null ? null : measured - halfWidth,
  high: measured === null ? null : measured + halfWidth,
  measuredWords: null,
  outcome,
  probability: null,
  rule: "",
  why: "",
  wouldSettle: null,
  figure: null,
  doubts: [],
});

/** A label of 8 A, and what may be measured of it. */
export const exampleClaims: readonly JudgedClaim[] = [
  claimAt("meets", 8.05, 0.12),
  claimAt("short of", 6.2, 0.15),
  claimAt("above", 9.6, 0.2),
  claimAt("cannot tell", 7.25, 0.3),
  claimAt("not put to the test", null, 0),
];

const example: Figure = {
  id: "example-measured",
  of: "test",
  label: "Current held while the charger limited it",
  unit: "A",
  value: 8.05,
  low: 7.93,
  high: 8.17,
  basis: "measured",
  method: "example/1",
  evidence: [],
  absent: null,
  doubts: [],
};

/** Two files, one of them at a certain place. */
const evidence: Figure["evidence"] = [
  { file: "logs/day-1.csv", sha256: "0".repeat(64), lines: [2, 4320] },
  { file: "readings.csv", sha256: "1".repeat(64), lines: [4, 4], column: 7 },
];

/** Each way in which a value can stand. */
export const exampleFigures = {
  measured: { ...example, evidence },
  lopsided: { ...example, id: "example-lopsided", unit: "h", value: 66, low: 23, high: 66 },
  projected: { ...example, id: "example-projected", unit: "EUR", value: 0.42, low: null, high: null, basis: "projected" },
  stated: { ...example, id: "example-stated", unit: "EUR", value: 89, low: null, high: null, basis: "stated" },
  absent: {
    ...example,
    id: "example-absent",
    label: "Charge that the recorder missed",
    unit: "Ah",
    value: null,
    low: null,
    high: null,
    absent: { kind: "not recorded", why: "the recorder stopped after 18 h, the charger had not" },
    evidence,
    doubts: ["the clock of the recorder was not set"],
  },
} as const satisfies Readonly<Record<string, Figure>>;

/** A finding with all that one can have. */
export const exampleFinding: Finding = {
  id: "example-finding",
  subject: "Who stopped: charger or recorder?",
  verdict: "the recorder stopped first",
  weight: "caution",
  sentence: "In 1 of 2 recordings the recorder stopped before the charger did, so the end of the charge was not seen.",
  why: ["at the last row of day-1.csv 0.4 A still flowed", "the recorder stops by itself after 18 h"],
  wouldSettle: "a clamp-meter reading before disconnecting",
  figures: [],
  doubts: ["what happened after the recorder stopped rests on readings alone"],
};

/** What a check found in a file. */
export const exampleDoubts: TestResult["doubts"] = [
  {
    id: "rest-before-reading",
    place: "readings.csv:4:7",
    expected: "a rest of 4 h or more before the voltage is read",
    found: "1 h",
    mend: "read again after a rest, or leave the voltage out",
  },
];

/** A gap in the log lifts the pen. */
export const exampleProfile: NonNullable<ComparisonRow["profile"]> = {
  elapsedH: [0, 2, 4, 6, 7, 8, 10, 14, 18],
  voltageV: [12.4, 13.2, 13.8, 14.4, null, 14.4, 14.4, 13.6, 13.6],
  currentA: [8, 8, 8, 8, null, 4, 2, 0.3, 0.3],
};

/** What a drawing takes for granted of a stage, and the levels that tell one from the next. */
const stageAt = (
  kind: Stage["kind"],
  startH: number,
  endH: number,
  levels: Pick<Stage, "voltageStartV" | "voltageEndV" | "currentStartA" | "currentEndA">,
): Stage => ({
  kind,
  startS: startH * 3600,
  endS: endH * 3600,
  lines: [startH * 240 + 2, endH * 240 + 1],
  limitedBy: "unknown",
  voltageMeanV: null,
  voltageSpreadV: null,
  currentMeanA: null,
  currentSpreadA: null,
  ...levels,
  chargeAh: null,
  energyWh: null,
  taper: null,
  taperRefused: null,
  confidence: "clear",
  why: "",
});

/** Current, limit, float. */
export const exampleStages: readonly Stage[] = [
  stageAt("constant-current", 0, 6, { voltageStartV: 12.4, voltageEndV: 14.4, currentStartA: 8, currentEndA: 8 }),
  stageAt("constant-voltage", 6, 10, { voltageStartV: 14.4, voltageEndV: 14.4, currentStartA: 8, currentEndA: 0.6 }),
  stageAt("float", 10, 18, { voltageStartV: 13.6, voltageEndV: 13.6, currentStartA: 0.3, currentEndA: 0.3 }),
];

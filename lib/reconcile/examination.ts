/** What the cross-examination of a battery's witnesses gives back. */
import type { CauseId, ExplanationId } from "./explanations.ts";

/** The middle (median) of what a quantity may be, and the ends that hold it with 90 and 95 % probability, in the unit of its field. */
export type Estimate = {
  readonly value: number;
  readonly low90: number;
  readonly high90: number;
  readonly low95: number;
  readonly high95: number;
};

export type RankedCause = {
  readonly id: CauseId;
  readonly label: string;
  readonly explain: string;
  /** Probability before any reading was looked at, of this cause among others. */
  readonly prior: number;
  /** Probability after all readings, of this cause alone or together with others. For "nothing to explain": of none at all. */
  readonly probability: number;
  /** Whether any reading could show it; if not, its probability is its prior left as it was, and it is not ranked. */
  readonly visible: boolean;
  /** Why no reading could show it; null where one could. */
  readonly hiddenBecause: string | null;
};

export type Combination = {
  /** The switches that are on; empty for "nothing to explain". */
  readonly causes: readonly ExplanationId[];
  readonly probability: number;
};

export const witnessIds = ["density", "rest-voltage", "charge-balance", "cranking"] as const;
export type WitnessId = (typeof witnessIds)[number];

/** What one witness alone says of one visit. */
export type Account = {
  readonly witness: WitnessId;
  readonly visit: number;
  /** State of charge, 0 to 1, by this witness alone; null where it cannot say. It may leave 0 to 1 where the witness errs. */
  readonly stateOfCharge: Estimate | null;
  /** How it was reached, or why it was not. */
  readonly why: string;
};

export type VisitOutcome = {
  readonly visit: number;
  /** State of charge, 0 to 1: charge held over the battery's true capacity. Of the sound cells, where one is weak. */
  readonly stateOfCharge: Estimate;
  /** How much weaker the top of the acid is than the mean, kg/l at 25 °C; null for a sealed battery. */
  readonly topBelowMean: Estimate | null;
  /** Mean density of the cell, top to bottom, kg/l at 25 °C; null for a sealed battery. */
  readonly meanDensityAt25C: Estimate | null;
  /** What surface charge adds to the rest voltage, V of the battery; null where none was read. */
  readonly surfaceChargeV: Estimate | null;
};

export type IntervalOutcome = {
  readonly fromVisit: number;
  readonly toVisit: number;
  /** Charge that nobody recorded, at the posts, Ah. */
  readonly unrecordedAh: Estimate;
  /** Charge the plates really took, Ah; less than zero where the battery lost charge. */
  readonly takenAh: Estimate;
  /** Share of the charge at the posts that went into gas; null where none passed. */
  readonly gassingShare: Estimate | null;
};

export const candidateReadings = [
  "density-after-mixing",
  "rest-voltage-after-24-h",
  "clamp-current-before-disconnecting",
  "every-cell",
  "second-hydrometer",
  "measured-discharge",
  "acid-temperature",
] as const;
export type CandidateReadingId = (typeof candidateReadings)[number];

export type NextReading = {
  readonly id: CandidateReadingId;
  readonly label: string;
  /** Expected fall of the entropy over the combinations of causes, bit; 0 where it would tell nothing. */
  readonly expectedBits: number;
  readonly why: string;
};

export type Examined = {
  readonly examined: true;
  /** The causes, most probable first. */
  readonly causes: readonly RankedCause[];
  /** The most probable causes taken together; empty for "nothing to explain". */
  readonly best: Combination;
  /** All combinations with at least one in a thousand, most probable first. */
  readonly combinations: readonly Combination[];
  readonly visits: readonly VisitOutcome[];
  readonly intervals: readonly IntervalOutcome[];
  /** Charge the plates really took from the first to the last visit, Ah. */
  readonly takenAh: Estimate;
  /** Charge at the posts that nobody recorded, first to last visit, Ah. */
  readonly unrecordedAh: Estimate;
  /** What the hydrometer shows too much, kg/l; negative for too little; null for a sealed battery or where density was never read. */
  readonly hydrometerOffset: Estimate | null;
  readonly trueCapacityAh: Estimate;
  /** The reading that would tell most, and all of the list, best first; null where none would tell anything. */
  readonly nextReading: NextReading | null;
  readonly readings: readonly NextReading[];
  /** The four witnesses side by side: one entry a witness and visit. */
  readonly accounts: readonly Account[];
  /** For a technician, in order. */
  readonly statements: readonly string[];
  /** For a buyer: the outcome, and what it means or what would settle it. */
  readonly buyer: readonly [outcome: string, meaning: string];
  /** What these witnesses cannot show, in words. */
  readonly unseen: readonly string[];
  /** What was taken for want of a record, in words. */
  readonly assumptions: readonly string[];
};

export type NotExamined = { readonly examined: false; readonly why: string };

export type CrossExamination = Examined | NotExamined;

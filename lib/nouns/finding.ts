/** A finding: one published judgement over figures. What, how sure, why, and what would settle it. */
import { z } from "zod";

export const outcomes = ["meets", "short of", "above", "cannot tell", "not put to the test"] as const;
export type Outcome = (typeof outcomes)[number];

/** The same, missed before met: of one claim judged several times, what a buyer must know of stands first. */
export const missedFirst: readonly Outcome[] = ["above", "short of", "meets", "cannot tell", "not put to the test"];

/** How a finding weighs for the reader; drawn as a mark and a word, never as colour alone. */
export const weights = ["good", "bad", "caution", "unsure", "untested", "note"] as const;
export type Weight = (typeof weights)[number];

export const finding = z
  .strictObject({
    id: z.string(),
    subject: z.string().describe("What it is about, in words"),
    verdict: z.string().describe("The verdict, in a few words"),
    weight: z.enum(weights),
    sentence: z.string().describe("One plain sentence a buyer understands"),
    why: z.array(z.string()).describe("The reasons, with the numbers that decided"),
    wouldSettle: z.string().nullable().describe("The measurement that would settle it, where it is open"),
    figures: z.array(z.string()).describe("The figures it rests on, as of#id"),
    doubts: z.array(z.string()),
  })
  .meta({ id: "finding", title: "Finding" });
export type Finding = z.infer<typeof finding>;

export const judgedClaim = z
  .strictObject({
    id: z.string().describe("claim-current, claim-voltage, …"),
    label: z.string(),
    unit: z.string(),
    claimed: z.number().nullable(),
    claimedWords: z.string().nullable().describe("As printed"),
    claimedFrom: z.string(),
    acceptLow: z.number().nullable().describe("The lowest true value that still meets the claim, with the declared tolerance"),
    acceptHigh: z.number().nullable(),
    measured: z.number().nullable(),
    low: z.number().nullable(),
    high: z.number().nullable(),
    measuredWords: z.string().nullable().describe("For claims that are not numbers, such as a characteristic"),
    outcome: z.enum(outcomes),
    probability: z
      .number()
      .min(0)
      .max(1)
      .nullable()
      .describe("Probability that the true value lies within the tolerance, given the instrument"),
    rule: z.string().describe("The decision rule applied, in words"),
    why: z.string(),
    wouldSettle: z.string().nullable(),
    figure: z.string().nullable().describe("The figure it rests on, as of#id"),
    doubts: z.array(z.string()),
  })
  .meta({ id: "judged-claim", title: "Judged claim" });
export type JudgedClaim = z.infer<typeof judgedClaim>;

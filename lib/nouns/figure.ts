/** A figure: one published number with unit, interval, method and evidence; or its absence, with the reason. */
import { z } from "zod";
import { evidence } from "./evidence.ts";

export const absenceKinds = ["not recorded", "not measured", "not stated", "not reached", "not applicable", "cannot tell"] as const;
export type AbsenceKind = (typeof absenceKinds)[number];

export const figure = z
  .strictObject({
    id: z.string().describe("Names the figure and its method page"),
    of: z.string().describe("What it is a figure of: test, charger, connection/2, recording/day-1.csv, reading/3, stage/day-1.csv/2"),
    label: z.string(),
    unit: z.string().describe("Unit symbol; empty for a pure number; an ISO 4217 code for money"),
    value: z.number().nullable(),
    low: z
      .number()
      .nullable()
      .describe(
        "Lower end of the interval that holds the true value with 95 % probability; null where no interval can be defended. An absent value may still have bounds",
      ),
    high: z.number().nullable(),
    basis: z.enum(["measured", "projected", "stated"]).describe("Measured on the bench, projected by a model, or stated by somebody"),
    method: z.string().describe("Method and its version, such as charge-recorded/1"),
    evidence: z.array(evidence),
    absent: z
      .strictObject({ kind: z.enum(absenceKinds), why: z.string() })
      .nullable()
      .describe("Set when, and only when, value is null"),
    doubts: z.array(z.string()).describe("What limits trust in this figure, in words"),
  })
  .meta({ id: "figure", title: "Figure" });

export type Figure = z.infer<typeof figure>;

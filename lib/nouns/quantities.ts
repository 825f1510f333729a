/** Pieces that several records share: amounts of money, dates, instants, and where a statement was read. */
import { z } from "zod";

/** A calendar date, as 2026-03-14. */
export const isoDate = z.iso.date("a date such as 2026-03-14");

/** An instant with its offset from UTC, as 2026-03-14T09:30:00+01:00. */
export const isoInstant = z.iso.datetime({ offset: true, error: "a date and time with its offset, such as 2026-03-14T09:30:00+01:00" });

/** An ISO 4217 amount of money and the day it was true. */
export const money = z
  .strictObject({
    amount: z.number().nonnegative().describe("The amount, as a number: 49.90"),
    currency: z
      .string()
      .regex(/^[A-Z]{3}$/, "three capital letters of ISO 4217, such as EUR")
      .describe("ISO 4217 code, such as EUR"),
    on: isoDate.optional().describe("The day on which this price was true"),
    where: z.string().optional().describe("The kind of shop, in words"),
  })
  .describe("An amount of money");

export type Money = z.infer<typeof money>;

/** Lower-case words joined by hyphens; it becomes part of an address that never changes. */
export const slug = z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, "lower-case letters, digits and single hyphens, such as quay-six");

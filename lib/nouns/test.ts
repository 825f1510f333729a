/** A test: one charger in one mode on one battery, from a known discharged state to a target density or to giving up. data/tests/<id>/test.yaml. */
import { z } from "zod";
import { isoDate, isoInstant, slug } from "./quantities.ts";

/** The names of IANA time zones that this machine's Node knows are the ones that can be used. */
const zone = z.string().refine(isKnownZone, "a time zone of the IANA list, such as Europe/Lisbon");

function isKnownZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat("en", { timeZone: name });
    return true;
  } catch {
    return false;
  }
}

const logName = z
  .string()
  .regex(/^logs(?:\/(?!\.)[^/\\]+)+$/, "a file in this test's logs folder, such as logs/day-1.csv or logs/day-1/part-2.csv");

export const connection = z
  .strictObject({
    id: slug.optional().describe("Left out: its place in the list, from 1"),
    on: isoInstant.optional().describe("Clamps on, or mains on"),
    off: isoInstant.optional().describe("Clamps off, or mains off. Leave out when nobody saw it"),
    endedBy: z.enum(["charger", "person", "mains"]).optional().describe("Only what a person saw; the log is judged on its own"),
    recordings: z
      .array(
        z.union([
          logName,
          z.strictObject({
            file: logName,
            part: z.int().positive().optional().describe("Which recording, counted from 1, where the file holds several"),
            with: logName.optional().describe("The log of the other of voltage and current, where they were recorded in two files"),
            withClockAheadS: z.number().optional().describe("How far that file's clock runs ahead of this one's, s"),
            recorder: slug.optional().describe("Where this log comes from another recorder than the test's"),
            startedAt: isoInstant.optional().describe("For a log that counts from its start"),
            endedBy: z
              .enum(["charger", "recorder", "person", "mains"])
              .optional()
              .describe("Only where a person saw what ended this recording; else it is judged from the log"),
            badRows: z
              .array(z.strictObject({ from: z.int().positive(), to: z.int().positive(), why: z.string() }))
              .optional()
              .describe("Lines of the file, counted from 1, that are not to be used. The log itself is never edited"),
          }),
        ]),
      )
      .default([]),
    note: z.string().optional(),
  })
  .describe("From clamps on to clamps off; the trade says charge cycle");

/** The stop rule as numbers, so that the visits can be held against it. Readings count as corrected to 25 °C. */
export const stopRuleOfTarget = z
  .strictObject({
    equalReadings: z.int().min(2).max(12).describe("How many readings, one after the other, must be equal: 3 after IEC 60095-1"),
    apartMin: z
      .number()
      .positive()
      .max(1440)
      .describe("Minutes on charge from one to the next: 15 after IEC 60095-1, 60 in other practice"),
    withinKgPerL: z
      .number()
      .positive()
      .max(0.02)
      .default(0.002)
      .describe("They count as equal where the highest is no further than this above the lowest, kg/l at 25 °C"),
  })
  .describe("The stop rule in numbers; with it the site says whether the visits show that it was met");
export type StopRuleOfTarget = z.infer<typeof stopRuleOfTarget>;

export const test = z
  .strictObject({
    title: z.string().optional().describe("Left out: charger, mode and battery"),
    charger: slug,
    mode: slug,
    battery: slug,
    instruments: z.strictObject({
      recorder: slug.optional(),
      hydrometer: slug.optional(),
      voltmeter: slug.optional(),
      clampMeter: slug.optional(),
      batteryTester: slug.optional(),
      thermometer: slug.optional(),
      energyMeter: slug.optional(),
      scale: slug.optional(),
    }),
    zone: zone.describe("The time zone of the bench; clock times without a zone are read in it"),
    tester: z.string().optional().describe("Who did the bench work"),
    place: z.string().optional(),
    dischargedHow: z.string().optional().describe("How the battery was brought to its known state"),
    dischargedAh: z.number().positive().optional().describe("Charge taken out before the first connection, where measured"),
    target: z
      .strictObject({
        densityAt25C: z.number().min(1.1).max(1.35).describe("kg/l at 25 °C"),
        stopRule: z
          .string()
          .optional()
          .describe("What counts as reached, such as three equal corrected readings 15 min apart (IEC 60095-1)"),
        stop: stopRuleOfTarget.optional(),
      })
      .optional()
      .describe("What the test was run to; left out for sealed batteries"),
    abandoned: z.strictObject({ on: isoDate, why: z.string() }).optional(),
    connections: z.array(connection).min(1),
    notes: z.string().optional(),
    excluded: z.array(z.strictObject({ what: z.string(), why: z.string() })).default([]),
    publishedOn: isoDate.optional(),
    revisions: z.array(z.strictObject({ on: isoDate, what: z.string(), why: z.string(), noticedBy: z.string().optional() })).default([]),
  })
  .meta({ id: "test", title: "Test record" });

export type Test = z.infer<typeof test>;
export type Connection = z.infer<typeof connection>;

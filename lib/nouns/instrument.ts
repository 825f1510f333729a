/** An instrument: what a value was read with, how good it is, and for a recorder how its files are written. data/instruments/<id>.yaml. */
import { z } from "zod";
import { isoDate } from "./quantities.ts";

/**
 * "Specific gravity" has no single meaning; the same printed figure is different acid under each of these.
 * `kg/l` is a density at the reference temperature; the others are ratios to water, acid and water at the temperatures named.
 */
export const densityConventions = [
  "kg/l at 25 °C",
  "kg/l at 20 °C",
  "SG 25/25 °C",
  "SG 20/20 °C",
  "SG 60/60 °F",
  "SG 80/80 °F",
  "not stated",
] as const;
export const hydrometerConvention = z
  .enum(densityConventions)
  .describe("Which density the scale shows. Where it is not known, say 'not stated': the figures then carry a wider interval");
export type DensityConvention = z.infer<typeof hydrometerConvention>;

/** How far off an instrument may be. The parts add up; the whole is taken as a rectangular distribution. */
export const accuracy = z
  .strictObject({
    percentOfReading: z.number().nonnegative().optional().describe("For ±(0.5 % + 2 digits) this is 0.5"),
    digits: z.number().nonnegative().optional().describe("For ±(0.5 % + 2 digits) this is 2; needs the resolution"),
    plusMinus: z.number().nonnegative().optional().describe("A fixed part, in the unit of the value"),
    resolution: z.number().positive().optional().describe("The smallest step the instrument shows, in the unit of the value"),
    from: z.enum(["data sheet", "calibration", "assumed"]).default("data sheet").describe("Where these numbers come from"),
  })
  .refine(
    (a) =>
      a.percentOfReading !== undefined ||
      a.plusMinus !== undefined ||
      (a.digits !== undefined && a.resolution !== undefined) ||
      a.resolution !== undefined,
    {
      error: "at least one of percentOfReading, plusMinus, digits with resolution, or resolution",
    },
  )
  .refine((a) => a.digits === undefined || a.resolution !== undefined, { error: "a resolution beside digits" });
export type Accuracy = z.infer<typeof accuracy>;

export const quantityUnits = {
  time: ["s", "ms", "min", "h", "d"],
  voltage: ["V", "mV"],
  current: ["A", "mA"],
  temperature: ["°C", "°F", "K"],
  power: ["W", "mW"],
  charge: ["Ah", "mAh"],
  energy: ["Wh", "mWh", "kWh"],
} as const;

const column = <U extends readonly [string, ...string[]]>(units: U) =>
  z.strictObject({
    name: z.string().optional().describe("The column's heading, as the file writes it"),
    number: z.int().positive().optional().describe("Or its place, counted from 1, for a file without headings"),
    unit: z.enum(units).optional().describe("Where it differs from the first of the list, or from what the heading says"),
  });

/** How a recorder writes its files. Everything left out is detected from the file, and the site says what was detected. */
export const dialect = z
  .strictObject({
    encoding: z.string().optional().describe("A WHATWG encoding label such as utf-8, utf-16le or windows-1250"),
    delimiter: z.enum([",", ";", "\t", "|", " "]).optional(),
    columnStarts: z
      .array(z.int().positive())
      .min(2)
      .optional()
      .describe("For columns by place: the character, counted from 1, at which each starts; takes the place of delimiter"),
    decimalMark: z.enum([".", ","]).optional(),
    thousandsMark: z.enum([",", ".", "'", "blank"]).optional().describe("What stands between groups of three digits, where something does"),
    sheet: z.string().min(1).optional().describe("For a spreadsheet: the sheet's name. `the first` where left out"),
    preambleLines: z.int().nonnegative().optional().describe("Lines above the heading that are not data"),
    headings: z.boolean().optional().describe("Whether the first line after the preamble names the columns"),
    time: z
      .strictObject({
        name: z.string().optional(),
        number: z.int().positive().optional(),
        dateName: z.string().optional().describe("A separate date column, where date and time stand apart"),
        kind: z
          .enum(["elapsed", "iso", "local", "unix", "time-of-day", "serial"])
          .optional()
          .describe(
            "elapsed: counts from the start; iso: carries its zone; local: wall-clock time of the test's zone; unix: seconds since 1970; time-of-day: without a date, which the connection's on gives; serial: days of a spreadsheet, in the test's zone",
          ),
        unit: z.enum(quantityUnits.time).optional().describe("For elapsed and unix times"),
        clock: z.enum(["h:mm", "mm:ss"]).optional().describe("For elapsed times of two parts, such as 05:30"),
        order: z
          .enum(["year-month-day", "day-month-year", "month-day-year"])
          .optional()
          .describe("For local times: the order of the date's parts"),
      })
      .optional(),
    voltage: column(quantityUnits.voltage).optional(),
    current: column(quantityUnits.current).optional(),
    temperature: column(quantityUnits.temperature).optional(),
    power: column(quantityUnits.power).optional().describe("Read only to check voltage and current by it"),
    charge: column(quantityUnits.charge).optional().describe("A column that counts charge; read only to check the current by it"),
    part: z.string().optional().describe("The column that numbers the recordings of one file, by its heading"),
    chargingSign: z
      .enum(["positive", "negative"])
      .optional()
      .describe("The sign that this recorder gives to current flowing into the battery"),
    missing: z.array(z.string()).optional().describe("Texts that stand for 'no value', beside an empty field: OL, ---, NaN"),
  })
  .describe("How this recorder writes its files");
export type Dialect = z.infer<typeof dialect>;

/** When a recorder ends a recording by itself. Without it, an ending can rarely be told apart. */
export const stopRule = z
  .strictObject({
    words: z.string().describe("The rule as the recorder's maker states it, or as the reviewer found it"),
    belowCurrentA: z.number().positive().optional().describe("It stops when the current has been below this …"),
    forS: z.number().nonnegative().optional().describe("… for this long"),
    afterH: z.number().positive().optional().describe("It stops after this many hours in any case"),
    afterRows: z.int().positive().optional().describe("It stops after this many rows"),
  })
  .describe("When the recorder ends a recording by itself");
export type StopRule = z.infer<typeof stopRule>;

export const instrumentKinds = [
  "recorder",
  "hydrometer",
  "refractometer",
  "voltmeter",
  "clamp-meter",
  "battery-tester",
  "thermometer",
  "energy-meter",
  "scale",
] as const;

export const instrument = z
  .strictObject({
    name: z.string().min(1),
    kind: z.enum(instrumentKinds),
    calibratedOn: isoDate.optional(),
    measures: z
      .strictObject({
        voltage: accuracy.optional(),
        current: accuracy.optional(),
        temperature: accuracy.optional(),
        density: accuracy.optional(),
        crankingCurrent: accuracy.optional(),
        energy: accuracy.optional(),
        weight: accuracy.optional(),
        time: accuracy.optional().describe("percentOfReading only: how far the clock may drift"),
      })
      .describe(
        "What it measures and how well: voltage in V, current in A, temperature in K, density in kg/l, energy in kWh, weight in kg",
      ),
    density: z
      .strictObject({
        convention: hydrometerConvention,
        correctsTemperature: z
          .boolean()
          .default(false)
          .describe("true where the instrument shows the value already brought to its reference temperature"),
      })
      .optional(),
    cranking: z
      .strictObject({ standard: z.string(), method: z.enum(["load", "conductance", "not stated"]) })
      .optional()
      .describe("For a battery tester: the standard its figure is in, and whether it loads the battery or estimates"),
    temperatureOf: z
      .enum(["battery", "acid", "air"])
      .optional()
      .describe("What a recorder's temperature column measures: where its probe sits. Left out, it is not taken for the battery's"),
    dialect: dialect.optional(),
    stopRule: stopRule.optional(),
    longestIntervalS: z
      .number()
      .positive()
      .optional()
      .describe("The longest pause between rows that this recorder makes by design; anything longer is a gap"),
    leadResistanceOhm: z
      .number()
      .nonnegative()
      .optional()
      .describe("Between where the recorder measures voltage and the battery's posts, both leads together"),
    notes: z.string().optional(),
  })
  .check((context) => {
    const { kind, density } = context.value;
    if ((kind === "hydrometer" || kind === "refractometer") && density === undefined)
      context.issues.push({
        code: "custom",
        message: "density: with the convention of its scale, such as 'kg/l at 25 °C' (say 'not stated' where it is not known)",
        input: context.value,
        path: ["density"],
      });
  })
  .meta({ id: "instrument", title: "Instrument record" });

export type Instrument = z.infer<typeof instrument>;

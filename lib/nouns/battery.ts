/** The test battery: a known load against which chargers are measured. One file each, data/batteries/<id>.yaml. */
import { z } from "zod";
import { hydrometerConvention } from "./instrument.ts";

export const constructions = ["flooded-antimony", "flooded-calcium", "flooded", "EFB", "AGM", "gel"] as const;

export const crankingStandards = ["EN 50342-1", "SAE J537", "IEC 60095-1", "DIN 43539-2", "JIS D 5301", "not stated"] as const;

export const battery = z
  .strictObject({
    name: z.string().min(1).describe("What the shop calls this battery"),
    nominalVoltageV: z.number().positive().describe("6, 12 or 24"),
    cells: z.int().positive().describe("Cells in series: 3 for 6 V, 6 for 12 V, 12 for 24 V"),
    construction: z.enum(constructions).describe("How it is built; AGM and gel are sealed, so no density can be read"),
    capacityAh: z.number().positive().describe("Rated capacity in ampere-hours"),
    capacityRateH: z.number().positive().default(20).describe("The hour rate of that capacity: 20 for C20, 10 for C10"),
    capacityBasis: z.enum(["printed", "measured"]).default("printed").describe("Read off the label, or measured on this battery"),
    crankingRating: z
      .strictObject({
        currentA: z.number().positive(),
        standard: z.enum(crankingStandards).describe("Cold-cranking figures of different standards do not convert; say which it is"),
      })
      .optional(),
    fullDensity: z
      .strictObject({ value: z.number().min(1).max(1.4), convention: hydrometerConvention })
      .optional()
      .describe("Density of this battery's acid when full, with the convention it is written in"),
    emptyDensity: z.strictObject({ value: z.number().min(1).max(1.4), convention: hydrometerConvention }).optional(),
    electrolyteKgPerCell: z.number().positive().optional().describe("Mass of acid in one cell when the battery is full, where known"),
    waterReserveGPerCell: z
      .number()
      .positive()
      .optional()
      .describe("Water that one cell may lose before its plates fall dry, g: from the upper mark to the top of the plates, where known"),
    madeOn: z.string().optional().describe("Date of manufacture or date code"),
    condition: z.string().optional().describe("Age, history and state, in the reviewer's words"),
  })
  .meta({ id: "battery", title: "Battery record" });

export type Battery = z.infer<typeof battery>;

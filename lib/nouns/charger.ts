/** A charger on sale, its modes, and what its label, box and manual claim. data/chargers/<id>.yaml. */
import { z } from "zod";
import { constructions } from "./battery.ts";
import { isoDate, money, slug } from "./quantities.ts";

export const claimSources = ["label", "box", "manual", "web page", "seller"] as const;

/** How far a measured value may fall from a claim and still count: "-10 %" of it, or "±0.1" in its unit. */
const tolerance = z
  .strictObject({
    below: z.number().nonnegative().describe("Allowed shortfall, as a fraction of the claim: 0.1 is 10 %"),
    above: z.number().nonnegative().describe("Allowed excess, as a fraction of the claim"),
  })
  .describe("Declared before the test. Where it is left out, the site's own tolerance for this claim holds");

const numberClaim = (unit: string) =>
  z.strictObject({
    value: z.number().positive().describe(`In ${unit}`),
    words: z.string().optional().describe("The words or marking as printed"),
    from: z.enum(claimSources).describe("Where it is printed"),
    tolerance: tolerance.optional(),
  });

export const claims = z
  .strictObject({
    currentA: numberClaim("A").optional().describe("The rated DC output current of this mode"),
    voltageV: numberClaim("V").optional().describe("The voltage limit of this mode (absorption)"),
    floatVoltageV: numberClaim("V").optional().describe("The voltage held afterwards"),
    compensation: z
      .strictObject({
        mVPerKPerCell: z
          .number()
          .min(-10)
          .max(0)
          .describe("How the voltage moves with the battery's temperature, from 25 °C; 0 for not at all"),
        fromC: z.number().default(5).describe("Colder than this it moves no further, °C"),
        toC: z.number().default(40).describe("Warmer than this it moves no further, °C"),
        words: z.string().optional(),
        from: z.enum(claimSources),
      })
      .optional()
      .describe("Compensation of the charge voltage for temperature, where the maker states it"),
    characteristic: z
      .strictObject({
        value: z.string().regex(/^[IUWoa]+$/, "letters of DIN 41772: I, U, W, o, a, such as IUoU"),
        words: z.string().optional(),
        from: z.enum(claimSources),
      })
      .optional()
      .describe("The charge characteristic in the letters I, U, W, o, a"),
    batteryKinds: z
      .strictObject({ value: z.array(z.enum(constructions)).min(1), words: z.string().optional(), from: z.enum(claimSources) })
      .optional(),
    capacityAh: z
      .strictObject({
        from: z.number().nonnegative(),
        to: z.number().positive(),
        words: z.string().optional(),
        source: z.enum(claimSources),
      })
      .optional()
      .describe("The range of battery capacities the maker names"),
    temperatureC: z
      .strictObject({ from: z.number(), to: z.number(), words: z.string().optional(), source: z.enum(claimSources) })
      .optional(),
    holdsForSeason: z
      .strictObject({ value: z.boolean(), words: z.string().optional(), from: z.enum(claimSources) })
      .optional()
      .describe("Whether the maker says it may stay connected"),
  })
  .describe("What the maker states for this mode");
export type Claims = z.infer<typeof claims>;

export const charger = z
  .strictObject({
    name: z.string().min(1),
    maker: z.string().optional(),
    price: money.optional().describe("What a buyer pays"),
    input: z.string().optional().describe("Mains voltage and power, as marked"),
    standbyW: z.number().nonnegative().optional(),
    lifeUses: z.number().positive().optional().describe("Uses over which the purchase is spread; the site's default holds where left out"),
    sample: z
      .strictObject({
        obtained: z
          .enum(["bought at retail", "lent by a customer", "given by the maker", "lent by the maker", "reviewer's own", "second hand"])
          .optional()
          .describe("How the tested unit came to the shop"),
        on: isoDate.optional(),
        paid: money.optional(),
        condition: z.enum(["new", "used"]).optional(),
        serial: z.string().optional().describe("Serial or batch, or a hash of it"),
        count: z.int().positive().optional().describe("How many units were tested; one says little about spread"),
        afterwards: z.string().optional().describe("Kept, returned, given back"),
      })
      .optional(),
    labelsReadOn: isoDate.optional().describe("When label and manual were read for the claims"),
    whyThisOne: z.string().optional(),
    makerAnswer: z
      .strictObject({
        toldOn: isoDate.optional(),
        answeredOn: isoDate.optional(),
        answer: z.string().optional().describe("In full"),
      })
      .optional()
      .describe("Whether the maker was told of the result, and the answer"),
    modes: z
      .array(
        z.strictObject({
          id: slug,
          name: z.string().min(1).describe("The words printed on the device"),
          claims: claims.default({}),
        }),
      )
      .min(1),
    corrections: z
      .array(
        z.strictObject({
          on: isoDate,
          kind: z.enum(["clarification", "revision", "correction", "concern", "withdrawal"]),
          what: z.string().describe("What changed, old value and new"),
          why: z.string(),
          noticedBy: z.string().optional(),
          changesVerdict: z.boolean(),
        }),
      )
      .default([]),
  })
  .meta({ id: "charger", title: "Charger record" });

export type Charger = z.infer<typeof charger>;
export type Mode = Charger["modes"][number];

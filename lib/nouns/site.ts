/** The site's own record: who publishes, and the rules that the workspace sets for itself. data/site.yaml. */
import { z } from "zod";
import { isoDate } from "./quantities.ts";

/** Languages that the interface speaks; the reviewer's own words may be in any. */
export const interfaceLanguages = ["en", "pl", "de"] as const;
export type Language = (typeof interfaceLanguages)[number];

export const site = z
  .strictObject({
    title: z.string().min(1),
    tagline: z.string().optional().describe("One sentence under the title"),
    language: z.string().default("en").describe("BCP 47 tag of the reviewer's words"),
    languages: z
      .array(z.enum(interfaceLanguages))
      .min(1)
      .refine((languages) => new Set(languages).size === languages.length, "each language once")
      .optional()
      .describe(
        "Languages of the pages around the reviewer's words. The first stands at the site's root, each other one in a folder of its name. Default: the reviewer's language where the pages speak it, else en",
      ),
    baseUrl: z.url().optional().describe("Where the site will stand; needed for feeds and absolute links"),
    invented: z.boolean().default(false).describe("true for demonstration data: every page then says so"),
    inventedNote: z.string().optional().describe("What to say where it is shown"),
    operator: z
      .strictObject({
        name: z.string().optional(),
        trade: z.string().optional(),
        contact: z.string().optional(),
        funding: z.string().optional().describe("Who owns and funds the site"),
        ties: z.string().optional().describe("Any tie to makers, sellers or rivals; write 'none' where there is none"),
        sells: z.boolean().optional().describe("true where the publisher sells chargers or batteries: every page then says so"),
      })
      .default({}),
    licence: z.string().optional().describe("Licence of data and words, such as CC-BY-4.0"),
    electricity: z
      .strictObject({
        pricePerKWh: z.number().positive(),
        currency: z.string().regex(/^[A-Z]{3}$/),
        on: isoDate,
        source: z.string().optional(),
      })
      .optional(),
    exchangeRates: z
      .array(
        z.strictObject({
          from: z.string().regex(/^[A-Z]{3}$/),
          to: z.string().regex(/^[A-Z]{3}$/),
          rate: z.number().positive().describe("How much of the second currency one unit of the first buys"),
          on: isoDate,
          source: z.string().optional(),
        }),
      )
      .optional()
      .describe("Rates by which a charger's price and the price of electricity in another currency are brought together"),
    ownersTime: z
      .strictObject({
        minutesPerVisit: z.number().positive(),
        valuePerHour: z.number().nonnegative(),
        currency: z.string().regex(/^[A-Z]{3}$/),
      })
      .optional()
      .describe("What a visit to the battery costs its owner; left out of the costs where it is left out here"),
    rules: z
      .strictObject({
        decision: z
          .enum(["simple", "guarded"])
          .optional()
          .describe(
            "simple: accept at the limit; guarded: 'meets' and 'short of' only beyond the expanded uncertainty (guard band w = U), between them 'cannot tell'",
          ),
        coverageFactor: z.number().positive().optional(),
        currentTolerance: z.strictObject({ below: z.number().nonnegative(), above: z.number().nonnegative() }).optional(),
        voltageTolerance: z.strictObject({ below: z.number().nonnegative(), above: z.number().nonnegative() }).optional(),
        sustainedWindowS: z.number().positive().optional(),
        lifeUses: z.number().positive().optional(),
        compensation: z
          .strictObject({
            leastMVPerKPerCell: z.number().max(0),
            mostMVPerKPerCell: z.number().max(0),
            fromC: z.number(),
            toC: z.number(),
          })
          .refine((rule) => rule.mostMVPerKPerCell <= rule.leastMVPerKPerCell, "most no nearer to 0 than least: both are negative")
          .refine((rule) => rule.fromC < 25 && rule.toC > 25, "a range of temperatures with 25 °C in it")
          .optional()
          .describe("How a charge voltage should move with the battery's temperature, in mV for each K and cell, both negative"),
        leastRestH: z.number().positive().optional().describe("Rest after which a rest voltage may be turned into a density, h"),
        acidTemperature: z
          .strictObject({ cautionC: z.number(), stopC: z.number() })
          .refine((rule) => rule.cautionC < rule.stopC, "cautionC below stopC")
          .optional()
          .describe("Acid on charge, °C: from which to take care, and from which to stop"),
        chargerEfficiency: z.strictObject({ low: z.number().positive().max(1), high: z.number().positive().max(1) }).optional(),
      })
      .default({})
      .describe("Where a rule is left out, the project's default holds; the method page prints all of them"),
    correctionsPolicy: z.string().optional(),
  })
  .meta({ id: "site", title: "Site record" });

export type Site = z.infer<typeof site>;

/** The languages of a site's pages, the first one at its root: as stated, else the reviewer's own where the interface speaks it, else English. */
export function pageLanguages({ languages, language }: Pick<Site, "languages" | "language">): readonly Language[] {
  if (languages !== undefined) return languages;
  const spoken = interfaceLanguages.find((candidate) => candidate === language.split("-")[0]?.toLowerCase());
  return [spoken ?? "en"];
}

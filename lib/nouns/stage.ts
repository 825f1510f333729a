/** A stage: a stretch of a recording in which the charger does one thing. And who limited the current, and who ended the recording. */
import { z } from "zod";

export const stageKinds = {
  "soft-start": {
    label: "Soft start",
    letter: "I",
    explain: "A low current first, before the full one, while the battery's voltage is still low.",
  },
  "constant-current": {
    label: "Constant current",
    letter: "I",
    explain: "The charger holds its current and the battery's voltage climbs.",
  },
  drooping: {
    label: "Falling current, rising voltage",
    letter: "W",
    explain: "The current falls as the battery's voltage climbs: the charger regulates neither.",
  },
  "constant-voltage": {
    label: "Constant voltage, current tapering",
    letter: "U",
    explain: "The charger holds its voltage limit and the battery takes less and less.",
  },
  "finishing-current": {
    label: "Constant current at high voltage",
    letter: "I",
    explain: "After the limit the charger holds a small current and lets the voltage climb above the limit, to gas and mix the acid.",
  },
  throttled: {
    label: "Throttled current",
    letter: "I",
    explain: "The charger holds a lower current than before for a while, as one does that has grown too warm, and then goes back.",
  },
  "on-off-holding": {
    label: "Holding between two voltages",
    letter: null,
    explain: "The charger waits until the voltage has sunk to a lower threshold, charges up to an upper one, and waits again.",
  },
  float: { label: "Float", letter: "U", explain: "A lower voltage is held after the limit was reached, with little current." },
  pulses: { label: "Pulses", letter: null, explain: "The current goes on and off, over and over." },
  rest: { label: "Rest", letter: null, explain: "No charging current; the battery's voltage relaxes." },
  interrupted: { label: "Interrupted", letter: null, explain: "No current for a while, in the middle of a charge that then went on." },
  discharge: { label: "Discharge", letter: null, explain: "Current flows out of the battery." },
  "no-battery": {
    label: "No battery at the leads",
    letter: null,
    explain: "No current and next to no voltage: the clamps, or the recorder's own leads, were off the battery.",
  },
  reversed: {
    label: "Leads the wrong way round",
    letter: null,
    explain: "A negative voltage: clamps or recorder were on the wrong posts. Danger: a charger connected so can burn or make sparks.",
  },
  unexplained: { label: "Unexplained", letter: null, explain: "Fits none of the kinds." },
} as const;
export type StageKind = keyof typeof stageKinds;

/** Whether the recorder was off the battery, or on it the wrong way round: what the charger did meanwhile was not seen. */
export function isOffBattery({ kind }: { readonly kind: StageKind }): boolean {
  return kind === "no-battery" || kind === "reversed";
}

export const limiters = ["charger", "throttle", "battery", "nobody", "unknown"] as const;
export type Limiter = (typeof limiters)[number];

/** Who ended a recording. "The recording ended" is never published as "the charger finished". */
export const enders = ["charger", "recorder", "person", "mains", "unknown"] as const;
export type Ender = (typeof enders)[number];

export const stage = z
  .strictObject({
    kind: z.enum(Object.keys(stageKinds) as [StageKind, ...StageKind[]]),
    startS: z.number().describe("Seconds from the recording's first row"),
    endS: z.number(),
    lines: z.tuple([z.int(), z.int()]).describe("First and last line of the file"),
    limitedBy: z.enum(limiters).describe("Who limited the current"),
    voltageMeanV: z.number().nullable(),
    voltageSpreadV: z.number().nullable().describe("Standard deviation"),
    voltageStartV: z.number().nullable(),
    voltageEndV: z.number().nullable(),
    currentMeanA: z.number().nullable(),
    currentSpreadA: z.number().nullable(),
    currentStartA: z.number().nullable(),
    currentEndA: z.number().nullable(),
    chargeAh: z.number().nullable(),
    energyWh: z.number().nullable(),
    taper: z
      .strictObject({
        tauH: z.number().describe("Time constant, h"),
        tauLowH: z.number(),
        tauHighH: z.number(),
        levelA: z.number().describe("Current that the fit settles at, A"),
        endCurrentA: z.number().describe("Current at the end of the stage, A"),
        stillToComeAh: z.number().describe("Charge above that level still to come if the voltage stayed held, Ah"),
        rmsA: z.number().describe("Root mean square of what the fit misses, A"),
      })
      .nullable()
      .describe("Single exponential fitted to the falling current, where it fits"),
    taperRefused: z.string().nullable().describe("Why no taper is given"),
    confidence: z.enum(["clear", "likely", "doubtful"]),
    why: z.string().describe("The rule and the numbers that decided"),
  })
  .meta({ id: "stage", title: "Stage" });

export type Stage = z.infer<typeof stage>;

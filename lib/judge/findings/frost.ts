import { freezingPointC, frostWarningDensity } from "../../electrochem/freezing.ts";
import { type TemperatureRead, temperaturesRead } from "../../measure/temperatures-read.ts";
import type { MeasuredReading, TestContext } from "../../measure/test-context.ts";
import type { FindingDefinition } from "../define-finding.ts";

/** How far freezing points of the tables differ, K: this near to freezing a battery may be frozen. */
const tableErrorK = 3;

export const frost: FindingDefinition = {
  id: "frost",
  subject: "Could it have frozen?",
  explain:
    "Weak acid freezes: at 1.15 kg/l near −15 °C, at 1.10 near −8 °C. Where a visit read a temperature near the freezing point of the acid, the battery may have been frozen. A frozen battery must not be charged: it can be cracked inside, short, and burst.",
  source: "Freezing points of sulphuric acid, as in service manuals and the CRC Handbook; ±3 K between tables.",
  checkedBy: ["Freezing-point table of the reference pack"],
  judge(context) {
    const frozen = temperaturesRead(context).flatMap((read) => nearFreezing(read, context));
    const worst = frozen.sort((a, b) => a.aboveK - b.aboveK)[0];
    if (worst !== undefined) {
      const { read, density, freezesC } = worst;
      return {
        verdict: "may have been frozen",
        weight: "bad",
        sentence: `At ${read.where} the ${read.of} was at ${read.lowC} °C, and acid of ${density.at25C.toFixed(3)} kg/l freezes at about ${freezesC.toFixed(0)} °C: the battery may have been frozen. Never charge a frozen battery.`,
        why: frozen.map(
          (one) =>
            `${one.read.where}: ${one.read.of} ${one.read.lowC} °C (±${one.read.errorK.toFixed(1)} K), freezing point ${one.freezesC.toFixed(0)} °C (±${tableErrorK} K) by the ${one.density.at25C.toFixed(3)} kg/l of visit ${one.density.visit}`,
        ),
        wouldSettle:
          "the battery brought into warmth for a day without charging, the case then searched for cracks and leaks, and the density of each cell read",
        figures: [`reading/${density.visit}#freezing-point`],
        doubts: read.of === "air" ? ["the air was read, not the acid, which follows it only over many hours"] : [],
      };
    }
    const weakest = weakestRead(context);
    if (weakest === undefined || weakest.at25C >= frostWarningDensity) return undefined;
    return {
      verdict: "in hard frost",
      weight: "caution",
      sentence: `At ${weakest.at25C.toFixed(3)} kg/l this acid freezes at about ${freezingPointC(weakest.at25C).toFixed(0)} °C. Never charge a frozen battery.`,
      why: [`lowest density read, at visit ${weakest.visit}`],
      wouldSettle: null,
      figures: [`reading/${weakest.visit}#freezing-point`],
      doubts: [],
    };
  },
};

type DensityRead = { readonly visit: number; readonly at25C: number };

function densitiesRead(readings: readonly MeasuredReading[]): DensityRead[] {
  return readings.flatMap(({ number, density }) => (density === undefined ? [] : [{ visit: number, at25C: density.meanAt25C }]));
}

function weakestRead({ readings }: TestContext): DensityRead | undefined {
  return densitiesRead(readings).reduce<DensityRead | undefined>(
    (lowest, next) => (lowest === undefined || next.at25C < lowest.at25C ? next : lowest),
    undefined,
  );
}

/**
 * A temperature near the freezing point of the acid by then: the density of that visit or, since a hydrometer says little in the cold, of
 * the last one before. Air counts only where that visit read neither acid nor battery.
 */
function nearFreezing(
  read: TemperatureRead,
  { readings }: TestContext,
): { read: TemperatureRead; density: DensityRead; freezesC: number; aboveK: number }[] {
  const { reading } = read;
  if (reading === undefined) return [];
  if (read.of === "air" && (reading.values.acid_C !== undefined || reading.values.battery_C !== undefined)) return [];
  const density = densitiesRead(readings.filter(({ atMs }) => atMs <= reading.atMs)).at(-1);
  if (density === undefined) return [];
  const freezesC = freezingPointC(density.at25C);
  const aboveK = read.lowC - read.errorK - (freezesC + tableErrorK);
  return aboveK <= 0 ? [{ read, density, freezesC, aboveK }] : [];
}

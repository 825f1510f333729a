import type { Evidence } from "../../nouns/evidence.ts";
import { combine, standardUncertaintyOf } from "../../units/uncertainty.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOfCell, type MeasuredReading, type TestContext } from "../test-context.ts";

export const waterLostWeighed: FigureDefinition<TestContext> = {
  id: "water-lost-weighed",
  label: "Water lost, by weighing",
  unit: "g",
  version: 1,
  explain:
    "What the battery lost between the first and the last weighing with the clamps off, with water topped up between them added. Charging moves no mass in or out but gas, vapour and mist, so weight is the measurement of lost water, and the only one for a sealed battery. It counts before any estimate from charge.",
  formula: "m = m_first − m_last + Σ topped up between; u² = u²(m_first) + u²(m_last)",
  source: "Definition; weighing is what IEC 60095-1 and EN 50342-1 prescribe for water consumption (from memory).",
  checkedBy: ["Worked by hand in a small test record", "W007: 50 g from six cells stand for 24.795 Ah"],
  compute: (context) => {
    const weighed = findWeighings(context);
    if (weighed === undefined)
      return notMeasured("not measured", "the battery was not weighed at two visits with the clamps off", [context.recordEvidence]);
    const { first, last, firstKg, lastKg, evidence } = weighed;
    const toppedUpG = weighed.toppedUpG;
    const lostG = 1000 * (firstKg - lastKg) + toppedUpG;
    const accuracy = context.instruments.scale?.measures?.weight;
    const u =
      accuracy === undefined
        ? undefined
        : 1000 * combine(standardUncertaintyOf(accuracy, firstKg), standardUncertaintyOf(accuracy, lastKg));
    const halfWidth = u === undefined ? undefined : context.rules.coverageFactor * u;
    if (lostG + (halfWidth ?? 0) < 0)
      return {
        ...notMeasured(
          "cannot tell",
          `the battery grew heavier by ${(-lostG).toFixed(0)} g between visits ${first.number} and ${last.number}: water was added that nobody noted, or a weighing is wrong`,
          evidence,
        ),
      };
    return {
      value: Math.max(0, lostG),
      interval: halfWidth === undefined ? undefined : { low: Math.max(0, lostG - halfWidth), high: lostG + halfWidth },
      evidence,
      doubts: [
        ...(accuracy === undefined ? ["the scale's accuracy is not stated, so no interval is given"] : []),
        toppedUpG === 0
          ? "nobody noted that water was added between the weighings"
          : `${toppedUpG.toFixed(0)} g that were topped up are added as noted, without an error of their own`,
        "vapour, acid mist and drops wiped off count as water too",
      ],
    };
  },
};

export type Weighings = {
  readonly first: MeasuredReading;
  readonly last: MeasuredReading;
  readonly firstKg: number;
  readonly lastKg: number;
  /** Water topped up from the first weighing to before the last, g. */
  readonly toppedUpG: number;
  readonly evidence: readonly Evidence[];
};

/** The first and the last weighing with the clamps off, as leads on the posts would weigh too; undefined for fewer than two. */
export function findWeighings(context: TestContext): Weighings | undefined {
  const weighed = context.readings.filter((reading) => reading.values.weight_kg !== undefined && reading.charger !== "connected");
  const first = weighed[0];
  const last = weighed.at(-1);
  const firstKg = first?.values.weight_kg?.value;
  const lastKg = last?.values.weight_kg?.value;
  if (first === undefined || last === undefined || firstKg === undefined || lastKg === undefined || first === last) return undefined;
  // A visit's topping up comes after its readings: that of the first weighing is between the two, that of the last is not.
  const between = context.readings.filter((reading) => reading.atMs >= first.atMs && reading.atMs < last.atMs);
  return {
    first,
    last,
    firstKg,
    lastKg,
    toppedUpG: between.reduce((sum, { values }) => sum + (values.topped_up_g?.value ?? 0), 0),
    evidence: [
      ...evidenceOfCell(context, first, "weight_kg"),
      ...evidenceOfCell(context, last, "weight_kg"),
      ...between.flatMap((reading) => evidenceOfCell(context, reading, "topped_up_g")),
    ],
  };
}

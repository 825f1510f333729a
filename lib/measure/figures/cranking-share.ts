import { convertCrankingAbout } from "../../electrochem/cranking.ts";
import { crankingStandards } from "../../nouns/battery.ts";
import type { Instrument } from "../../nouns/instrument.ts";
import { standardUncertaintyOf } from "../../units/uncertainty.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOfCell, type MeasuredReading, type TestContext } from "../test-context.ts";

/** Colder than this a cranking figure is told with a doubt, °C; our rule. */
const coldC = 15;

export const crankingShare: FigureDefinition<TestContext> = {
  id: "cranking-share",
  label: "Cranking current at the last visit, of its rating",
  unit: "%",
  version: 2,
  explain:
    "The tester's figure over the battery's rating, only where both are in the same standard: figures of different standards do not convert. A tester that loads the battery and one that estimates from conductance do not measure the same, and their figures are not to be compared with each other; which it was stands beside the figure. Ratings hold at −18 °C in a cooled battery, a tester's figure is its maker's estimate of that at the temperature it met.",
  formula: "I_read / I_rated",
  source: "EN 50342-1, SAE J537 and others test differently; see docs/electrochemistry.md.",
  checkedBy: ["Worked by hand in a small test record", "EN = 0.92 SAE, a trade rule (read), for the words beside an absence"],
  compute: (context) => {
    const rating = context.battery.crankingRating;
    const tester = context.instruments.batteryTester;
    const reading = context.readings.findLast((candidate) => candidate.values.cranking_A !== undefined);
    const value = reading?.values.cranking_A?.value;
    if (reading === undefined || value === undefined) return notMeasured("not measured", "no cranking current was read");
    const evidence = evidenceOfCell(context, reading, "cranking_A");
    if (rating === undefined) return notMeasured("not stated", "the battery's rating is not stated", evidence);
    const read = tester?.cranking?.standard;
    if (rating.standard === "not stated" || read === undefined || read === "not stated")
      return notMeasured(
        "cannot tell",
        `${value} A were read by ${nameOf(read)}, the rating of ${rating.currentA} A is by ${nameOf(rating.standard)}; without both standards they do not compare`,
        evidence,
      );
    if (read !== rating.standard)
      return notMeasured(
        "cannot tell",
        `the tester reads ${read}, the rating is ${rating.standard}; they do not convert${aboutIn(value, read, rating.standard)}`,
        evidence,
      );
    const accuracy = tester?.measures?.crankingCurrent;
    return {
      value: (100 * value) / rating.currentA,
      standardUncertainty: accuracy === undefined ? undefined : (100 * standardUncertaintyOf(accuracy, value)) / rating.currentA,
      evidence,
      doubts: [
        ...doubtsOfMethod(tester),
        ...(accuracy === undefined ? ["the tester's accuracy is not stated, so no interval is given"] : []),
        ...doubtsOfWarmth(reading),
      ],
    };
  },
};

function nameOf(standard: string | undefined): string {
  return standard === undefined || standard === "not stated" ? "a standard that is not stated" : standard;
}

/** What another standard might print, in words and for orientation only; empty where the trade has no rule. */
function aboutIn(currentA: number, from: string, to: (typeof crankingStandards)[number]): string {
  const known = crankingStandards.find((standard) => standard === from);
  const converted = known === undefined ? undefined : convertCrankingAbout(currentA, known, to);
  if (converted === undefined) return "";
  return `. For orientation only: ${currentA} A by ${from} is about ${converted.aboutA.toFixed(0)} A by ${to}, ±10 %, by rules of the trade that contradict each other elsewhere`;
}

function doubtsOfMethod(tester: Instrument | undefined): string[] {
  const method = tester?.cranking?.method;
  if (method === "load") return [];
  return method === "conductance"
    ? ["estimated from conductance, not under load; not to be compared with figures of a load tester"]
    : ["whether the tester loads the battery or estimates from conductance is not stated"];
}

/** Cold lowers what any tester finds; air is told as air. */
function doubtsOfWarmth({ values, number }: MeasuredReading): string[] {
  const [what, read] =
    values.battery_C !== undefined
      ? ["the battery", values.battery_C]
      : values.acid_C !== undefined
        ? ["the acid", values.acid_C]
        : ["the air", values.air_C];
  if (read === undefined) return [`the battery's temperature was not read at visit ${number}; cold lowers the figure`];
  return read.value < coldC ? [`read with ${what} at ${read.value} °C; cold lowers the figure`] : [];
}

import { freezingPointC } from "../../electrochem/freezing.ts";
import { warmerThanAirK } from "../../measure/battery-temperature.ts";
import { type TemperatureOf, type TemperatureRead, temperaturesRead, warmthOverAir } from "../../measure/temperatures-read.ts";
import type { TestContext } from "../../measure/test-context.ts";
import type { FindingDefinition } from "../define-finding.ts";

const names: Readonly<Record<TemperatureOf, string>> = { acid: "the acid", battery: "the battery", air: "the air" };

export const temperature: FindingDefinition = {
  id: "temperature",
  subject: "Was it too cold or too hot to charge?",
  explain:
    "Acid, battery and air, each as it was read: on charge they can be 5 to 20 K apart, so none stands for another without saying so. Below 0 °C a battery takes little charge and a flat one may be frozen; from 45 °C acid on charge should be watched, at 50 °C the charge should stop, unless the site sets its own limits.",
  source: "45 and 50 °C: common practice, the battery's maker has the last word. Freezing points as in the figure freezing-point.",
  checkedBy: ["Small invented test records, by hand"],
  judge(context) {
    const read = temperaturesRead(context);
    const rule = context.rules.acidTemperature;
    if (read.length === 0)
      return {
        verdict: "not read",
        weight: "untested",
        sentence: "Whether it was too cold or too hot to charge is not known: nobody read a temperature.",
        why: ["no temperature of acid, battery or air was read, and no recorder's record says what its probe measures"],
        wouldSettle: "the temperature of acid, or of the battery's case, and of the air at each visit, once with the charger connected",
        figures: [],
        doubts: [],
      };
    const coldest = read.reduce((a, b) => (b.lowC - b.errorK < a.lowC - a.errorK ? b : a));
    const warmest = read.reduce((a, b) => (highestC(b) > highestC(a) ? b : a));
    const common = { why: whyOf(read), figures: figuresOf([coldest, warmest]), doubts: doubtsOf(read, context) };
    const surelyHot = read.find((one) => one.of !== "air" && one.highC - one.errorK >= rule.stopC);
    if (surelyHot !== undefined)
      return {
        ...common,
        verdict: "too hot",
        weight: "bad",
        sentence: `It grew too hot: ${names[surelyHot.of]} was at ${surelyHot.highC} °C (${surelyHot.where}), and from ${rule.stopC} °C a charge should be stopped.`,
        wouldSettle: null,
      };
    if (highestC(warmest) >= rule.cautionC)
      return {
        ...common,
        verdict: "warm",
        weight: "caution",
        sentence: `It grew warm: ${names[warmest.of]} was at ${warmest.highC} °C (${warmest.where})${warmest.of === "air" ? `, and a battery on charge is warmer still, by up to ${warmerThanAirK} K` : ""}; from ${rule.cautionC} °C watch the charge, at ${rule.stopC} °C stop it.`,
        wouldSettle: warmest.of === "acid" ? null : "the temperature of the acid during the charge",
      };
    if (coldest.lowC - coldest.errorK < 0)
      return {
        ...common,
        why: [...common.why, freezingWords(context)],
        verdict: "in the cold",
        weight: "caution",
        sentence: `It was charged in the cold: ${names[coldest.of]} was at ${coldest.lowC} °C (${coldest.where}). A cold battery takes less, a flat one may be frozen, and a frozen battery must never be charged.`,
        wouldSettle: coldest.of === "air" ? "the temperature of the acid or of the battery's case" : null,
      };
    const onlyAir = read.every(({ of }) => of === "air");
    return {
      ...common,
      verdict: onlyAir ? "ordinary, by the air" : "no, ordinary",
      weight: onlyAir ? "note" : "good",
      sentence: `It was neither too cold nor too hot: ${rangesOf(read)
        .map(({ of, lowC, highC }) => `${names[of]} ${rangeWords(lowC, highC)}`)
        .join(", ")}.`,
      wouldSettle: null,
    };
  },
};

/** The highest that the battery can have been by one reading, °C: air stands for a battery up to 10 K warmer. */
function highestC({ of, highC, errorK }: TemperatureRead): number {
  return highC + errorK + (of === "air" ? warmerThanAirK : 0);
}

function rangesOf(read: readonly TemperatureRead[]): { of: TemperatureOf; lowC: number; highC: number; where: string[] }[] {
  return (Object.keys(names) as TemperatureOf[]).flatMap((of) => {
    const ofIt = read.filter((one) => one.of === of);
    return ofIt.length === 0
      ? []
      : [
          {
            of,
            lowC: Math.min(...ofIt.map(({ lowC }) => lowC)),
            highC: Math.max(...ofIt.map(({ highC }) => highC)),
            where: ofIt.map(({ where }) => where),
          },
        ];
  });
}

function rangeWords(lowC: number, highC: number): string {
  return lowC === highC ? `${lowC} °C` : `${lowC} to ${highC} °C`;
}

function whyOf(read: readonly TemperatureRead[]): string[] {
  const errorK = Math.max(...read.map((one) => one.errorK));
  return [
    ...rangesOf(read).map(({ of, lowC, highC, where }) => `${names[of]}: ${rangeWords(lowC, highC)} (${where.join(", ")})`),
    ...warmthOverAir(read).map(
      ({ visit, of, ofC, airC }) =>
        `visit ${visit}, on charge: ${names[of]} ${ofC} °C, the air ${airC} °C, ${comparedWords(ofC - airC)} the air`,
    ),
    `the thermometer is taken as within ±${errorK.toFixed(1)} K`,
  ];
}

function comparedWords(differenceK: number): string {
  if (Math.abs(differenceK) < 0.5) return "as warm as";
  return `${Math.abs(differenceK).toFixed(0)} K ${differenceK < 0 ? "colder" : "warmer"} than`;
}

function figuresOf(read: readonly TemperatureRead[]): string[] {
  const ids = read.flatMap(({ of, reading }) => (reading === undefined ? [] : [`reading/${reading.number}#${of}-c`]));
  return [...new Set(ids)];
}

function doubtsOf(read: readonly TemperatureRead[], { instruments }: TestContext): string[] {
  return [
    ...(read.some(({ of, onCharge }) => onCharge && of !== "air")
      ? []
      : ["neither acid nor battery was read while the charger was connected, when they are warmest"]),
    ...(read.some(({ reading }) => reading !== undefined) && instruments.thermometer?.measures?.temperature === undefined
      ? ["the thermometer's accuracy is not stated"]
      : []),
  ];
}

/** Where the weakest acid of the test freezes; a battery of unknown density is told as a flat one. */
function freezingWords(context: TestContext): string {
  const weakest = context.readings
    .flatMap((reading) => (reading.density === undefined ? [] : [{ number: reading.number, at25C: reading.density.meanAt25C }]))
    .reduce<{ number: number; at25C: number } | undefined>((a, b) => (a === undefined || b.at25C < a.at25C ? b : a), undefined);
  const freezesC = weakest === undefined ? Number.NaN : freezingPointC(weakest.at25C);
  return weakest === undefined || Number.isNaN(freezesC)
    ? "its density is not known; the acid of a flat battery freezes from about −8 °C (at 1.10 kg/l), that of a full one below −50 °C"
    : `the weakest acid read, ${weakest.at25C.toFixed(3)} kg/l at visit ${weakest.number}, freezes near ${freezesC.toFixed(0)} °C (±3 K)`;
}

/** What the records state, as label and value; what they leave out is null and shown as "not stated". */
import type { InstrumentRole, TestContext } from "../../measure/test-context.ts";
import type { Accuracy, Instrument } from "../../nouns/instrument.ts";
import type { Money } from "../../nouns/quantities.ts";
import { formatStated } from "../../units/format.ts";
import type { ChargerResult, TestResult } from "../results.ts";

type Fact = { label: string; value: string | null };

const fact = (label: string, value: string | number | undefined): Fact => ({ label, value: value === undefined ? null : String(value) });

export const roleLabels: Readonly<Record<InstrumentRole, string>> = {
  recorder: "Recorder",
  hydrometer: "Hydrometer",
  voltmeter: "Voltmeter",
  clampMeter: "Clamp meter",
  batteryTester: "Battery tester",
  thermometer: "Thermometer",
  energyMeter: "Energy meter",
  scale: "Scale",
};

export function batteryFacts({ battery }: TestContext): Fact[] {
  const rating = battery.crankingRating;
  return [
    fact("Nominal voltage", `${formatStated(battery.nominalVoltageV, "V")}, ${battery.cells} cells`),
    fact("Capacity", `${formatStated(battery.capacityAh, "Ah")} (C${battery.capacityRateH}, ${battery.capacityBasis})`),
    fact("Construction", battery.construction.replace("-", ", ")),
    fact("Cranking rating", rating === undefined ? undefined : `${formatStated(rating.currentA, "A")} (${rating.standard})`),
    fact(
      "Full density",
      battery.fullDensity === undefined ? undefined : `${battery.fullDensity.value} (${battery.fullDensity.convention})`,
    ),
    fact(
      "Acid per cell when full",
      battery.electrolyteKgPerCell === undefined ? undefined : formatStated(battery.electrolyteKgPerCell, "kg"),
    ),
    fact("Made", battery.madeOn),
    fact("Condition", battery.condition),
  ];
}

/** An accuracy as data sheets write it: ±(0.5 % + 2 digits of 0.01 V). */
export function formatAccuracy(accuracy: Accuracy, unit: string): string {
  const parts = [
    accuracy.percentOfReading === undefined ? undefined : `${accuracy.percentOfReading} % of reading`,
    accuracy.digits === undefined ? undefined : `${accuracy.digits} digits of ${formatStated(accuracy.resolution ?? 0, unit)}`,
    accuracy.plusMinus === undefined ? undefined : formatStated(accuracy.plusMinus, unit),
  ].filter((part) => part !== undefined);
  const shown = parts.length === 0 ? `resolution ${formatStated(accuracy.resolution ?? 0, unit)} only` : `±(${parts.join(" + ")})`;
  return `${shown}, from ${accuracy.from === "assumed" ? "an assumption" : accuracy.from === "calibration" ? "a calibration" : "the data sheet"}`;
}

const measuredUnits = {
  voltage: "V",
  current: "A",
  temperature: "K",
  density: "kg/l",
  crankingCurrent: "A",
  energy: "kWh",
  weight: "kg",
  time: "s",
} as const;

export function instrumentFacts(instrument: Instrument): Fact[] {
  const accuracies = (Object.keys(measuredUnits) as (keyof typeof measuredUnits)[]).flatMap((quantity) => {
    const accuracy = instrument.measures?.[quantity];
    return accuracy === undefined
      ? []
      : [
          fact(
            `Accuracy, ${quantity === "crankingCurrent" ? "cranking current" : quantity}`,
            formatAccuracy(accuracy, measuredUnits[quantity]),
          ),
        ];
  });
  const recorder =
    instrument.kind === "recorder"
      ? [
          fact("Stops by itself", instrument.stopRule?.words),
          fact(
            "Lead resistance",
            instrument.leadResistanceOhm === undefined ? undefined : formatStated(instrument.leadResistanceOhm * 1000, "mΩ"),
          ),
        ]
      : [];
  return [
    ...(accuracies.length === 0 ? [fact("Accuracy", undefined)] : accuracies),
    fact("Calibrated on", instrument.calibratedOn),
    ...(instrument.density === undefined ? [] : [fact("Density scale", instrument.density.convention)]),
    ...(instrument.cranking === undefined
      ? []
      : [fact("Cranking standard", `${instrument.cranking.standard}, by ${instrument.cranking.method}`)]),
    ...recorder,
    ...(instrument.notes === undefined ? [] : [fact("Notes", instrument.notes)]),
  ];
}

export function testFacts(context: TestContext): TestResult["facts"] {
  const { test } = context;
  return [
    fact("Tester", test.tester),
    fact("Place", test.place),
    fact("Time zone of the bench", test.zone),
    fact("Battery discharged", test.dischargedHow),
    fact("Charge taken out before", test.dischargedAh === undefined ? undefined : formatStated(test.dischargedAh, "Ah")),
    fact("Target density at 25 °C", test.target === undefined ? undefined : formatStated(test.target.densityAt25C, "kg/l")),
    fact("What counts as reached", test.target?.stopRule),
    ...(test.abandoned === undefined ? [] : [fact("Given up", `${test.abandoned.on}: ${test.abandoned.why}`)]),
    fact("Published on", test.publishedOn),
  ];
}

export function formatMoney(money: Money): string {
  const when = money.on === undefined ? "" : `, ${money.on}`;
  const where = money.where === undefined ? "" : `, ${money.where}`;
  return `${money.amount.toFixed(2)}\u202F${money.currency}${when}${where}`;
}

/** The disclosures that make a review trustworthy; each that the records leave out is told as not stated. */
export function disclosures({ site, charger, test }: TestContext): ChargerResult["disclosures"] {
  const sample = charger.sample;
  return [
    fact("Tested by", test.tester),
    fact("Publisher", site.operator.name),
    fact("Trade", site.operator.trade),
    fact("Contact", site.operator.contact),
    fact("Who pays for the site", site.operator.funding),
    fact("Ties to makers, sellers or rivals", site.operator.ties),
    fact("Publisher sells chargers or batteries", site.operator.sells === undefined ? undefined : site.operator.sells ? "yes" : "no"),
    fact("How the sample was obtained", sample?.obtained),
    fact("When", sample?.on),
    fact("Price paid", sample?.paid === undefined ? undefined : formatMoney(sample.paid)),
    fact("New or used", sample?.condition),
    fact("Serial or batch", sample?.serial),
    fact("Units tested", sample?.count),
    fact("What became of it", sample?.afterwards),
    fact("Why this one", charger.whyThisOne),
    fact("Labels read on", charger.labelsReadOn),
    fact("Maker told on", charger.makerAnswer?.toldOn),
    fact("Maker's answer", charger.makerAnswer?.answer),
  ];
}

/** The page of one charger, its modes, tests and forecasts. */

import type { ComponentChildren } from "preact";
import { withUnit } from "../../../units/format.ts";
import { oneOrMany } from "../plural.ts";
import type { Wrap } from "../slot.ts";

export const charger = {
  sections: {
    claims: "Does it do what it says?",
    time: "How long does it take?",
    cost: "What does it cost?",
    safe: "Is it safe to leave on?",
    battery: "Which battery does it suit?",
    "not-seen": "What was not seen",
    words: "The reviewer's words",
    evidence: "Evidence",
    disclosures: "Disclosures and corrections",
  },
  makerNotStated: "Maker not stated",
  priceNotStated: "price not stated",
  priced: (amount: string, where: string | null, on: string | null) =>
    `${amount}${where === null ? "" : `, ${where}`}, on ${on ?? "a day not stated"}`,
  noTime: "No test tells yet how long it takes.",
  figures: "Figures of this charger",
  noPrice: "No price is stated.",
  notLeftOn: "None of the tests tells what it does when left connected.",
  nothingMissing: "Nothing is missing that these tests set out to see.",
  nothingWritten: "The reviewer has written nothing about this charger.",
  by: (name: string) => `, by ${name}`,
  elsewhere: "This result elsewhere",
  card: "Card to print for the shop counter",
  quote: "Quote or embed this result",
  versions: "Versions of this result",
  asJson: "All results of this charger, JSON",

  mode: (name: string) => `Mode “${name}”`,
  lettersMayGoOn: "No recording lasted until the charger was done, so the letters may go on.",
  asRecorded: (recording: string, test: string) => `As recorded in ${recording} of test ${test}.`,
  drawn: "Voltage is solid, current dashed, each at its own scale; stages have one width, whatever they lasted.",
  moreStages: (count: number) => `${count} more ${oneOrMany(count, "stage is", "stages are")} in the test's table.`,
  stageDrawn: (stage: string, length: string, levels: string) => `${stage} for ${length}: ${levels}`,
  untestedMode: "This mode has not been put to the test.",
  claimsOfMode: (name: string) => `Claims of mode “${name}”, judged over its tests`,
  statedOf: (name: string) => `What the maker states of “${name}”`,

  costs: "Costs by test",
  cost: "Cost",
  notTested: "It has not been tested yet.",
  tests: "Tests of this charger",
  testColumns: { test: "Test", mode: "Mode", battery: "Battery", target: "Target" },
  notMeasured: "not measured",
  noEvidence: "There is no evidence yet: no test has been made.",
  profile: (recording: string) => `Charge profile, ${recording}`,
  longest: "The longest of the test's recordings. Numbers and shading are its stages:",
  endedBy: "Recording ended by:",

  makerTold: {
    notStated: "Whether the maker was told: not stated.",
    told: (on: string | null) => `The maker was told of the results on ${on ?? "a day that is not stated"}`,
    noAnswer: "; no answer is stated.",
    answered: (on: string | null) => `, and answered on ${on ?? "a day that is not stated"}:`,
  },
  noCorrections: "No corrections so far.",
  howCorrected: "How corrections are made",
  changesVerdict: "It changes the verdict.",
  verdictStands: "The verdict stands.",
  noticedBy: (name: string) => ` Noticed by ${name}.`,

  forecast: {
    otherVoltage: (mode: string, voltage: string) =>
      `Mode “${mode}” is for ${voltage}, so it cannot be held against others on the 12 V reference battery.`,
    projectedFor: (battery: ComponentChildren, how: Wrap) => (
      <>
        Projected for {battery}: {how("how")}. Nobody saw this charge; it is what the charger, as recorded, would do.
      </>
    ),
    onReference: (mode: string) => `Mode “${mode}” on the reference battery, projected`,
    behaves: (mode: string) => `How mode “${mode}” behaves, as the forecast takes it`,
    notKnownOfIt: "Not known of it:",
    readyBy: (mode: string, kind: string, airC: string) =>
      `Mode “${mode}”: used ${kind} batteries at ${airC}, ready (95 %) by when, projected`,
    kinds: { flooded: "flooded", AGM: "AGM" },
    columns: { battery: "Battery", flat: "How flat", note: "Note" },
    inHours: (hours: number) => `in ${hours} h`,
    outside: (low: string, high: string) => `Outside the ${low} to ${high} Ah that the maker names.`,
    partlyOutside: (low: string, high: string) => `Partly outside the ${low} to ${high} Ah that the maker names.`,
    asBefore: (battery: string, test: string) => `${battery}, found as before test ${test}`,
    onOwnBatteries: (mode: string) => `Mode “${mode}” on batteries of this bench once more, projected`,
    topUp: {
      moreLikely: (earliest: string, middle: string) => `${earliest}, more likely ${middle}`,
      moreThanMonths: (months: number) => withUnit(`more than ${months}`, "months"),
      months: (months: number) => withUnit(String(months), "months"),
      days: (days: number) => withUnit(String(days), oneOrMany(days, "day", "days")),
      lessThanADay: withUnit("less than 1", "day"),
    },
    season: {
      unseenLead: (mode: string) => `A month connected in mode “${mode}”:`,
      unseen: "nobody recorded what it does with a full battery",
      caption: (mode: string) => `Mode “${mode}”, a month connected to a full 60 Ah flooded battery, projected`,
      columns: {
        place: "Place",
        held: "Voltage held",
        window: "Against the float window there",
        windowShort: "Float window",
        energy: "Energy",
        water: "Water, at most",
        topUp: "Top up after, at the earliest",
        restarts: "Restarts a day",
      },
      topUpNote:
        "Water is the most that can go, so the time to top up is the earliest. Look at the level each month all the same; purified water only, after charging, never acid.",
      windows: {
        inside: "inside the float window",
        below: "below the float window: it may not keep the battery full",
        above: "above the float window: it costs water and life",
        partly: "partly inside the float window",
        "holds no voltage": "holds no voltage: it is off, or goes on and off",
        "not known": "nobody recorded what it does with a full battery",
      },
    },
  },
};

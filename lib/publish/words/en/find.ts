/** What the page that finds a charger says, before and after its script has run: choices, complaints, cautions, answers. */

import type { Construction } from "../../../project/battery-priors.ts";
import { type Against, againstWords } from "../../../project/index.ts";
import type { Formats } from "../../../units/formats.ts";
import { oneOrMany } from "../plural.ts";

/** What speaks against charging: the library's reasons, and frost as the page judges it. */
export type Reason = Against | { readonly id: "may-be-frozen" };

export const find = {
  kinds: {
    flooded: "flooded, no more is known",
    "flooded-antimony": "flooded, with caps to top up (antimony)",
    "flooded-calcium": "flooded, maintenance-free (calcium)",
    EFB: "EFB (start-stop, flooded)",
    AGM: "AGM (sealed)",
    gel: "gel (sealed)",
  },
  /** A kind amid a sentence. */
  kindNames: {
    flooded: "flooded",
    "flooded-antimony": "flooded antimony",
    "flooded-calcium": "flooded calcium",
    EFB: "EFB",
    AGM: "AGM",
    gel: "gel",
  } as Readonly<Record<Construction, string>>,
  conditions: {
    new: "as good as new",
    used: "used, looked after",
    neglected: "neglected: left flat for weeks",
    "not stated": "I do not know",
  },
  flat: {
    slightly: "Slightly flat",
    half: "Half flat",
    flat: "Flat",
    "very-flat": "Very flat",
    left: (word: string, percent: string) => `${word} (about ${percent} left)`,
    "rest-voltage": "I have read its rest voltage",
    density: "I have read its acid's density",
  },
  deadlines: {
    "tomorrow-morning": "tomorrow morning, 8:00",
    "tomorrow-evening": "tomorrow evening, 18:00",
    "sunday-evening": "Sunday evening, 18:00",
    "12h": "in 12 hours",
    "24h": "in 24 hours",
    "48h": "in 48 hours",
    at: "at a date and time",
  },
  verdicts: { will: "will", may: "may", "will not": "will not", "not advised": "not advised" },

  invented: "invented data",

  complaints: {
    capacity: (low: number, high: number) => `The capacity must be a number from ${low} to ${high} Ah, as printed on the battery.`,
    temperature: (low: number, high: number) => `The temperature must be a number from ${low} to ${high} °C.`,
    price: "The price of a kWh must be a number, not below zero.",
    density: "State the density in kg/l, such as 1.15; battery acid lies between 1.00 and 1.35.",
    restVoltage: (cells: number, dead: string) =>
      `No resting acid in ${cells} sound cells gives that voltage. State the rest voltage in V; far below ${dead} V a cell may be dead: have the battery looked at before it is charged.`,
    noDate: "State the date and the time by which the battery must be ready.",
    passed: "That time has passed.",
    tooLate: "That is more than two weeks away: any charger of a sensible current has long been done, or never will be.",
  },

  apart: {
    notRecorded: "no recording shows what this mode does, so nothing can be projected",
    voltage: (tested: number, yours: number) => `it was tested on ${tested} V batteries, and yours has ${yours} V`,
    kind: (kind: string, named: string | null, family: "vented" | "sealed") =>
      `not for ${kind} as far as is known: ${named === null ? "the maker names no kinds of battery" : `the maker's words are ${named}`}, and nobody tested it on a ${family} one`,
  },
  /** The maker's own words, and where they are printed. */
  stated: (words: string, from: string) => `“${words}” (${from})`,

  sources: { label: "label", box: "box", manual: "manual", "web page": "web page", seller: "seller" },

  warnings: {
    outside: (low: string, high: string) => `Outside the ${low} to ${high} Ah that the maker names.`,
    largest: (ah: string) => `Beyond the evidence: the largest battery it was tested on has ${ah} Ah.`,
    smallest: (ah: string) => `Beyond the evidence: the smallest battery it was tested on has ${ah} Ah.`,
    otherKind: (tested: readonly string[], asked: string, named: string | null) =>
      `Beyond the evidence: tested on ${tested.join(" and ")}, not on ${asked}.${named === null ? "" : ` The maker's words: ${named}.`}`,
    temperatures: (named: string) => `Mind the temperatures that the maker names: ${named}.`,
    voltage: (highest: string, limit: string, isSealed: boolean) =>
      `Caution: as recorded it goes up to ${highest} V or more, and such a battery commonly gets at most ${limit}. That is hard on it${isSealed ? ", can dry it out and heat it" : " and gasses hard"}; ask its maker's sheet first.`,
  },
  /** The library writes its reasons itself, as the results hold them; other languages write their numbers by the formats. */
  against: (reason: Reason, _formats: Formats) =>
    reason.id === "may-be-frozen" ? "the battery may be frozen: thaw it, and look for cracks first" : againstWords(reason),

  /** Before the reason why a charger should not stay on a full battery. */
  leftOn: "Take it off when the battery is full:",

  cautions: {
    frozen: (freezesAt: string) =>
      `It may be frozen: as flat as this its acid freezes at about ${freezesAt} °C, and its top sooner. Never charge a frozen battery. Thaw it slowly in an aired place, look for cracks and bulges, and ask again with the temperature it then has.`,
    veryFlat:
      "It is very flat: it may not come back, a dead cell can make it hot, and some chargers do not start on a battery below some volts, of which no forecast here knows. Watch the first hour; stop when it grows hot, hisses or smells.",
    sealed:
      "It is sealed: do not open it, and use only a mode that its maker allows. Too high a voltage dries it out for good and can heat it without end.",
    hot: "It is hot where it stands: let it cool first; a hot battery gasses hard and takes harm.",
    current: (most: string, share: string) =>
      `Such a battery should get no more than about ${most} A (${share} of its capacity, common practice) unless its maker's sheet says otherwise. Air the place: charging gives off hydrogen.`,
    name: "Cautions for this battery",
    sections: { frozen: "On frozen batteries", sealed: "On sealed batteries", hydrogen: "On hydrogen" },
  },

  shown: {
    notWithin: (hours: string, never: number, draws: number) =>
      never === draws ? `not within ${hours} h` : `not within ${hours} h in ${never} of ${draws} draws`,
    atBest: (best: string, never: string) => `${best} at best; ${never}`,
    someNever: (ready: string, never: string) => `${ready}; ${never}`,
    range: (low: string, high: string) => ` (${low} to ${high})`,
  },

  answer: {
    columns: { charger: "Charger", inTime: "In time", ready: "Ready after", cost: "Cost", mind: "Mind this", evidence: "Evidence" },
    caption: (battery: string, charged: string, temperature: string, deadline: string) =>
      `${battery}, ${charged} charged, ${temperature}: ready by ${deadline}, projected`,
    heading: "Which chargers",
    table: "Chargers for your battery (table)",
    fromNow: (day: string, length: string) => `${day}, ${length} from now`,
    notAdvised: "Not advised on this battery as it is",
    others: (count: number) => (count === 1 ? "Show the other one of this group" : `Show the ${count} others of this group`),
    key: (draws: number, horizon: string, isCellOfMatrix: boolean) =>
      `What is not known of your battery and of a charger is drawn ${draws} times, the same for all chargers; a percentage is the share of draws in time, and an interval holds the middle 95 % of them. Chargers that the draws cannot tell apart stand together, in the order of their names; nobody can pay for a place. Energy counts until the battery is full, the charger is off for good, or ${horizon} h have passed. No forecast knows of layered acid or a weak cell.${isCellOfMatrix ? " Your question is a cell of the table on a charger's own page, and is answered with the same draws." : ""}`,
    priceNotStated: "Price not stated",
    toBuy: (amount: string, on: string | null) => `${amount} to buy, ${on === null ? "on a day not stated" : on}`,
    thisCharge: (energy: string, money: string | null) => `This charge: ${energy}${money === null ? "" : `, ${money}`}`,
    group: (size: number, place: number, groups: number, draws: number) => {
      const tied = size > 1 ? `: ${size} that ${draws} draws cannot tell apart` : "";
      if (groups === 1) return size > 1 ? `All alike${tied}` : "The only one";
      return `${place === 0 ? "Likeliest to be in time" : "Less likely than those above"}${tied}`;
    },
    notKnown: (count: number) => `Not known of it: ${count}`,
    forecasts: "its forecasts",
    apart: "Not put to the question",
  },

  status: {
    noneAsked: "No charger here was tested on such a battery. Those below stand apart, each with its reason.",
    working: (chargers: number) => `Working out ${chargers} ${oneOrMany(chargers, "charger", "chargers")}…`,
    done: (chargers: number) => `${chargers} of ${chargers} ${oneOrMany(chargers, "charger", "chargers")} worked out.`,
    doneSoFar: (done: number, chargers: number) => `${done} of ${chargers} chargers worked out, most promising first…`,
    failed: "The forecasts could not be run in this browser. The table below stands without them.",
    fetching: "Fetching what is known of the chargers…",
    fromFolder:
      "Opened straight from a folder, this page cannot read its data: browsers do not allow it. Put the site on any web server, or use the table below.",
    notFetched: (why: string) => `What is known of the chargers could not be fetched: ${why}. The table below stands without it.`,
  },
};

/** The page that finds a charger: its form and the table that stands without scripts. */
import type { Wrap } from "../slot.ts";

export const findPage = {
  title: "Find a charger",
  description: "My battery, how flat, how cold, ready by when: which chargers make it, how sure that is, and what it costs. Projected.",
  lead: "Which charger brings my battery back, by when, and at what cost?",
  projected: (lead: Wrap, forecast: Wrap) => (
    <>
      {lead("Projected, not seen:")} each answer is a {forecast("forecast")} of what a charger, as recorded, would do on your battery.
      Nobody saw that charge. “Ready” is 95 % of what the battery holds.
    </>
  ),
  caution: (lead: Wrap) => (
    <>
      {lead("The sheet of the battery's maker, your local code and licensed practice come first.")} Acid burns, hydrogen explodes, a short
      circuit melts spanners, and a frozen battery must never be charged.
    </>
  ),
  needsScripts: "The form for your own battery needs scripts. The table below does not.",
  usual: "Usual batteries",
  none: "No recording tells yet what a charger would do on a flooded battery.",
  key: (word: Wrap, data: Wrap) => (
    <>
      {word("Will")} is at least 90 % of the draws in time, {word("may")} more than 10 %. Within a cell the chargers stand in the order of
      their names. Percentages, and what speaks against a charger, stand on its own page. All that the form knows: {data("find.json")}.
    </>
  ),
  form: {
    battery: "Your battery",
    voltage: "Voltage",
    capacity: "Capacity, Ah",
    capacityHint: "As printed, at the 20 h rate",
    kind: "Kind",
    condition: "Condition",
    flatHeading: "How flat it is",
    flat: "How flat",
    restV: "Rest voltage, V",
    restVHint: "At its posts, after four hours or more of rest, nothing connected",
    density: "Density of its acid, kg/l",
    densityHint: "At 25 °C, mean of the cells. For each 10 °C that the acid is colder, take off 0.006",
    air: "How cold it is there, °C",
    airHint: "The battery has stood there",
    when: "By when, and the price of power",
    by: "Ready by",
    at: "Date and time",
    atHint: "On this device's clock",
    price: "Price of a kWh",
    priceHint: "May be left empty; in the currency of the chargers' prices",
    submit: "Find chargers",
    reset: "Start again",
  },
  matrix: (voltage: number, airC: number) =>
    `Used flooded ${voltage} V batteries at ${airC} °C: which chargers have them ready (95 %) by when, projected`,
  will: "will:",
  may: "may:",
  willNot: (count: number) => `${count} will not`,
  notAdvised: (count: number) => `${count} not advised`,
  toComeOff: "take it off when full",
  more: (count: number) => `; and ${count} more`,
};

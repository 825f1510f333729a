import { holdingVoltage } from "../../measure/figures/holding-voltage.ts";
import { lastLongHold, temperatureOfHold } from "../../measure/long-hold.ts";
import { combine } from "../../units/uncertainty.ts";
import type { FindingDefinition } from "../define-finding.ts";
import { floatWindowOf } from "../float-window.ts";

export const floatWindow: FindingDefinition = {
  id: "float-window",
  subject: "Safe to leave connected?",
  explain:
    "The voltage held for long, against the float window of this kind of battery, moved to the temperature that the battery had. Too high costs water and corrodes; too low lets the battery sulphate.",
  source:
    "Makers' figures and common practice (13.5 to 13.8 V for 12 V; antimony 13.2 to 13.5 V, from memory); -3 to -5 mV/K a cell unless the site sets its own.",
  checkedBy: ["Published float windows", "A printed compensation: 13.50 V at 25 °C is 13.77 V at 10 °C and 13.32 V at 35 °C"],
  judge(context) {
    const temperature = temperatureOfHold(context);
    const window = floatWindowOf(context.battery, temperature, context.rules.compensation);
    const outcome = holdingVoltage.compute(context);
    const figures = ["test#holding-voltage"];
    if ("absent" in outcome) {
      return {
        verdict: "not put to the test",
        weight: "untested",
        sentence: "Whether it may stay connected is not known: no recording shows what it holds afterwards.",
        why: [outcome.why],
        wouldSettle: "a recording, or a voltmeter reading with the charger connected, days after it reported full",
        figures,
        doubts: [],
      };
    }
    if (outcome.standardUncertainty === undefined)
      return {
        verdict: "cannot tell",
        weight: "unsure",
        sentence: `It holds about ${outcome.value.toFixed(2)} V, but how far the meter may be off is not stated, so it cannot be held against the float window.`,
        why: [`${outcome.value.toFixed(2)} V was read; float window ${window.words}`],
        wouldSettle: "the meter's accuracy, from its data sheet or a calibration",
        figures,
        doubts: [...(outcome.doubts ?? [])],
      };
    const halfWidth = context.rules.coverageFactor * combine(outcome.standardUncertainty, window.standardUncertainty);
    const why = [
      `${outcome.value.toFixed(2)} V is held (± ${halfWidth.toFixed(2)} V with the meter's error and the window's own); float window ${window.words}`,
    ];
    const doubts = [...(outcome.doubts ?? []), "one battery at one temperature; whether the charger follows heat and cold was not tried"];
    if (outcome.value - halfWidth > window.highV && lastLongHold(context) === undefined)
      return {
        verdict: "probably not",
        weight: "caution",
        sentence: `A voltmeter found ${outcome.value.toFixed(2)} V after more than a day, above the float window; one reading does not show what it holds for a season.`,
        why,
        wouldSettle: "a recording of some days after the charger reported full",
        figures,
        doubts,
      };
    if (outcome.value - halfWidth > window.highV)
      return {
        verdict: "no",
        weight: "bad",
        sentence: `It holds ${outcome.value.toFixed(2)} V, above the float window: left connected it costs water and life.`,
        why,
        wouldSettle: null,
        figures,
        doubts,
      };
    if (outcome.value + halfWidth < window.lowV)
      return {
        verdict: "too low to keep it full",
        weight: "caution",
        sentence: `It holds ${outcome.value.toFixed(2)} V, below the float window: safe, but it may not keep the battery full.`,
        why,
        wouldSettle: null,
        figures,
        doubts,
      };
    if (outcome.value - halfWidth >= window.lowV && outcome.value + halfWidth <= window.highV)
      return {
        verdict: "yes, by its voltage",
        weight: "good",
        sentence: `It holds ${outcome.value.toFixed(2)} V, inside the float window.`,
        why,
        wouldSettle: null,
        figures,
        doubts,
      };
    return {
      verdict: "cannot tell",
      weight: "unsure",
      sentence: `It holds about ${outcome.value.toFixed(2)} V; the recorder's error and the temperature leave open whether that is inside the float window.`,
      why,
      wouldSettle:
        window.standardUncertainty > outcome.standardUncertainty ? "the same with the battery at 25 °C" : "a more accurate voltmeter",
      figures,
      doubts,
    };
  },
};

/** Remembers forecasts: they take tenths of a second to seconds each, and depend on nothing but the question and the code. */
import { forecastMode, hoursOnOwnBattery, type ModeForecast, type ModeQuestion } from "../judge/forecast/forecast-mode.ts";
import { codeVersion } from "./code-version.ts";
import { digestOf } from "./digest.ts";
import type { Entries } from "./entries.ts";

/** The code that a forecast is made by: an edit of a check or of a page does not make them anew. */
export const forecastSources = [
  "lib/project",
  "lib/electrochem",
  "lib/signal",
  "lib/units",
  "lib/judge/forecast",
  "lib/judge/float-window.ts",
  "lib/judge/voltage-at-temperature.ts",
  "lib/measure/battery-temperature.ts",
  "lib/nouns",
];

/** A forecaster that looks its answers up first. */
export function rememberForecasts(entries: Entries): (question: ModeQuestion) => ModeForecast {
  const code = codeVersion(forecastSources);
  const recall = <T>(asked: unknown, make: () => T): T => {
    const key = digestOf([code, asked]);
    const known = entries.get<{ made: T }>("forecasts", key);
    if (known !== undefined) return known.made;
    const made = make();
    entries.put("forecasts", key, { made });
    return made;
  };
  // Apart, since another test of a battery changes what is known of it, and nothing of the charger.
  return ({ ownBatteries, ...mode }) => ({
    ...recall(mode, () => forecastMode({ ...mode, ownBatteries: [] })),
    ownBatteries: ownBatteries.map((own) => recall([mode.behaviour, own], () => hoursOnOwnBattery(mode.behaviour, own))),
  });
}

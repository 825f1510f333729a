/** Findings and forecasts as they are judged elsewhere, with no more in them than a verdict asks for. */
import type { Finding } from "../../../../lib/nouns/finding.ts";
import type { ModeForecastResult } from "../../../../lib/publish/results.ts";

export const finding = (id: string, verdict: string, weight: Finding["weight"] = "note", sentence = `${id}: ${verdict}.`): Finding => ({
  id,
  subject: "",
  verdict,
  weight,
  sentence,
  why: [],
  wouldSettle: null,
  figures: [],
  doubts: [],
});

export type Month = ModeForecastResult["season"][number];

/** A month connected in one place. */
export const monthAt = (temperatureC: number, inWindow: Month["inWindow"]): Month => ({
  place: "cellar",
  temperatureC,
  mainsKWh: null,
  waterG: null,
  restartsPerDay: null,
  topUpDays: null,
  heldV: null,
  windowV: { low: 13.4, high: 14.1 },
  inWindow,
});

/** What is known of a mode that stays connected to a full battery: the findings of its tests before the forecast of a month. */
import type { Finding } from "../../nouns/finding.ts";
import type { ModeForecastResult } from "../results.ts";

export type LeftOn = {
  /** Clauses for the first sentence that a buyer reads; none where nobody saw, or nothing tells. */
  readonly clauses: readonly string[];
  /** Why it should not stay connected, in a sentence; null where nothing speaks against it. */
  readonly warning: string | null;
};

type Season = readonly ModeForecastResult["season"][number][];

/**
 * Gathers it for one mode.
 * @param findings  of all tests of the mode; of several tests the one that warns stands, since a battery is worn by the worst
 * @param season    the mode's forecast of a month connected; none where nothing is projected
 */
export function leftOnOf(findings: readonly Finding[], season: Season): LeftOn {
  const found = (id: string, verdict: string) => findings.find((finding) => finding.id === id && finding.verdict === verdict);
  const never = found("letting-go", "no");
  if (never !== undefined) return { clauses: ["holds a gassing voltage for days: do not leave it connected"], warning: never.sentence };
  const late = found("letting-go", "only after a day") === undefined ? [] : ["lets go of a gassing voltage only after a day"];
  const above = found("float-window", "no");
  if (above !== undefined) return { clauses: [...late, "do not leave it connected"], warning: above.sentence };
  const once = found("float-window", "probably not");
  if (once !== undefined) return { clauses: [...late, "by one voltmeter reading it should not stay connected"], warning: once.sentence };
  const forecast = forecastAbove(season);
  const clauses = [...late, ...heldClauses(found), ...(forecast === undefined ? [] : [forecast.clause])];
  return { clauses, warning: forecast?.warning ?? null };
}

function heldClauses(found: (id: string, verdict: string) => Finding | undefined): string[] {
  if (found("float-window", "too low to keep it full") !== undefined) return ["may stay connected, but may not keep the battery full"];
  // One test that cannot tell is no test that says yes.
  if (found("float-window", "cannot tell") !== undefined) return [];
  return found("float-window", "yes, by its voltage") === undefined ? [] : ["may stay connected, by the voltage it holds"];
}

/** Places where the forecast holds a full battery above the float window; undefined for none. */
function forecastAbove(season: Season): { readonly clause: string; readonly warning: string } | undefined {
  const temperatures = season.filter(({ inWindow }) => inWindow === "above").map(({ temperatureC }) => temperatureC);
  if (temperatures.length === 0) return undefined;
  const at = `${[temperatures.slice(0, -1).join(", "), temperatures.at(-1)].filter((part) => part !== "").join(" and ")} °C`;
  return {
    clause: `by its forecast it should not stay connected at ${at}`,
    warning: `By its forecast a month connected at ${at} keeps the battery above the float window: it costs water and life.`,
  };
}

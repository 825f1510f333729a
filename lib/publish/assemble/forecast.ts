/** The published form of a mode's forecast: distributions as figures, each with its method and the recordings it rests on. */

import { type BenchTest, benchTestOf, ownBatteryOf } from "../../judge/forecast/battery-tests.ts";
import { behaviourOfMode } from "../../judge/forecast/behaviour.ts";
import {
  forecastMode,
  type HoursToMark,
  type ModeForecast,
  type ModeQuestion,
  type PublishedSpread,
} from "../../judge/forecast/forecast-mode.ts";
import { tellBehaviour } from "../../judge/forecast/tell-behaviour.ts";
import { evidenceOf } from "../../measure/recording.ts";
import { pricePerKWh } from "../../measure/stated-costs.ts";
import type { TestContext } from "../../measure/test-context.ts";
import type { Evidence } from "../../nouns/evidence.ts";
import type { Figure } from "../../nouns/figure.ts";
import { batteryClasses, type Construction, flatnesses, referenceCase } from "../../project/index.ts";
import type { ModeForecastResult } from "../results.ts";
import { referenceCostMethods, referenceCosts } from "./reference-costs.ts";

/** Makes a forecast, or recalls one that was made of the very same question. */
export type Forecaster = (question: ModeQuestion) => ModeForecast;

const referenceWords = `a used flooded 12 V battery of ${referenceCase.ratedAh} Ah, found at ${referenceCase.startDensityAt25C.toFixed(2)} kg/l (full: ${referenceCase.density.full} kg/l), in a room of ${referenceCase.airC} °C`;

/** How the reference figures are explained, for their method pages. */
export const referenceMethods = [
  {
    id: "reference-hours",
    version: 2,
    label: "Hours to a share of full, reference battery",
    unit: "h",
    explain: `Hours on charge until ${referenceWords} holds 80 %, 95 % or 99 % of what it can. Every charger is forecast on this one battery, whatever it was tested on, by a simulator fitted to how the charger behaved in its recordings. What is not known of the charger, and what no label says of a battery, is drawn 64 times; the interval holds the middle 95 % of the draws, and is open above where any of them does not get there within ${referenceCase.horizonH} h.`,
    formula: "median and middle 95 % of 64 fixed draws",
    source: "docs/projection.md: charge resistance after Copetti, Lorenzo and Chenlo 1993 (from memory), gassing after Schiffer 2007.",
    checkedBy: ["Generated campaigns with one test left out", "Closed forms: constant current, exponential taper"],
  },
  {
    id: "own-battery-hours",
    version: 2,
    label: "Hours to a share of full, a battery of the bench",
    unit: "h",
    explain:
      "Hours on charge until a battery of the bench, found as flat as before a test of this mode, holds 80 %, 95 % or 99 % of what it can. The simulator is fitted to the logs of that battery's charges, by this charger and by others: at most five, the nearest in time. What the logs leave open is drawn 64 times; the interval is open above where any draw does not get there. Such a forecast is much surer than one for a battery that nobody logged; how much surer, the checks tell.",
    formula: "median and middle 95 % of 64 fixed draws",
    source: "docs/projection.md: least squares with normal priors over several logs.",
    checkedBy: ["Generated campaigns with one test left out"],
  },
  {
    id: "reference-energy",
    version: 3,
    label: "Mains energy to 95 %, reference battery",
    unit: "kWh",
    explain:
      "Energy from the mains until the reference battery holds 95 % of what it can, in the same draws as the hours, and open above where theirs is. What a charger that stays connected takes after that is told in the month connected.",
    formula: "DC energy over the efficiency, with standby where it is stated",
    source: "docs/projection.md.",
    checkedBy: ["Energy balance of the simulator"],
  },
  ...referenceCostMethods,
] as const;

/**
 * Forecasts a mode from its tests.
 *
 * @param tests  tests of one mode
 * @param bench  the tests of the shop from which its batteries are known
 * @returns null where no recording shows what it does
 */
export function assembleForecast(
  modeId: string,
  tests: readonly TestContext[],
  forecaster: Forecaster = forecastMode,
  bench: readonly BenchTest[] = tests.map(benchTestOf),
): ModeForecastResult | null {
  const first = tests[0];
  const behaviour = behaviourOfMode(tests);
  if (first === undefined || behaviour === undefined) return null;
  const { capacityAh, compensation } = first.mode.claims;
  const claimedAh = capacityAh === undefined ? null : { low: capacityAh.from, high: capacityAh.to };
  const { nominalVoltageV } = first.battery;
  const own = tests.flatMap((test) => {
    const known = ownBatteryOf(benchTestOf(test), bench);
    return known === undefined ? [] : [{ test, known }];
  });
  const forecast = forecaster({
    behaviour,
    nominalVoltageV,
    claimedAh,
    kinds: kindsOf(tests),
    compensation: first.rules.compensation,
    statedCompensationMVPerK: compensation?.mVPerKPerCell ?? null,
    ownBatteries: own.map(({ test, known: { asked, others } }) => ({ asked, others, construction: test.battery.construction })),
  });
  const evidence = tests.flatMap((test) =>
    test.connections.flatMap((connection) => connection.recordings.map((recording) => evidenceOf(recording))),
  );
  return {
    behaviour: { ...behaviour },
    told: tellBehaviour(behaviour),
    unknowns: [...behaviour.unknowns],
    nominalVoltageV,
    claimedAh,
    reference:
      forecast.reference === null
        ? null
        : {
            words: referenceWords,
            figures: referenceFigures(forecast.reference, first, modeId, evidence),
            drawsH: [...forecast.reference.drawsH],
            drawsKWh: [...forecast.reference.drawsKWh],
            pricePerKWh: pricePerKWh(first),
          },
    ownBatteries: own.flatMap(({ test, known: { asked, others, evidence: ofBattery } }, place) => {
      const hours = forecast.ownBatteries[place];
      if (hours === undefined || hours === null) return [];
      const knownBy = [asked, ...others].filter(({ points }) => points.length > 0).length;
      const known = `known by ${knownBy === 1 ? "one log" : `${knownBy} logs`} of its charges`;
      const figures = hoursFigures("own-battery-hours", "", `${modeId}/${test.id}`, hours, [known], together(evidence, ofBattery));
      return [{ test: test.id, battery: test.battery.name, knownBy, figures }];
    }),
    readyBy: forecast.readyBy.map(({ construction, airC, cells }) => ({
      construction,
      airC,
      cells: cells.map((cell) => ({
        ...cell,
        battery: classLabel(cell.battery),
        flatness: flatnesses.find(({ id }) => id === cell.flatness)?.label ?? cell.flatness,
        deadlines: cell.deadlines.map((deadline) => ({ ...deadline })),
        because: [...cell.because],
      })),
    })),
    season: forecast.season.map((row) => ({ ...row })),
  };
}

/** Each piece once: a battery's own log is among the charger's. */
function together(...evidence: readonly (readonly Evidence[])[]): Evidence[] {
  return [...new Map(evidence.flat().map((piece) => [JSON.stringify(piece), piece])).values()];
}

/** Hours to each mark as figures. */
function hoursFigures(
  method: string,
  where: string,
  of: string,
  hoursTo: readonly HoursToMark[],
  doubts: readonly string[],
  evidence: Figure["evidence"],
): Figure[] {
  return hoursTo.map((toMark) => {
    const { mark, hours } = toMark;
    const label = `Hours to ${mark === "full" ? "full (99 %)" : mark}${where}`;
    return figureOf(
      `${method}-${mark.replace(/\s?%/, "")}`,
      `${method}/2`,
      label,
      "h",
      of,
      hours,
      [...doubts, ...shortOf(toMark)],
      evidence,
    );
  });
}

/** Hours, energy and costs on the reference battery; energy and costs are to 95 %, and as open above as its hours. */
function referenceFigures(
  { hours, mainsKWh }: NonNullable<ModeForecast["reference"]>,
  first: TestContext,
  modeId: string,
  evidence: Figure["evidence"],
): Figure[] {
  const short = shortOf(hours.find(({ mark }) => mark === "95 %"));
  const energyLabel = "Mains energy to 95 %, reference battery";
  return [
    ...hoursFigures("reference-hours", ", reference battery", modeId, hours, [], evidence),
    figureOf("reference-energy", "reference-energy/3", energyLabel, "kWh", modeId, mainsKWh, short, evidence),
    ...referenceCosts(first, modeId, mainsKWh, short, evidence),
  ];
}

/** How often a mark is not reached, which leaves an interval open above; nothing where it always is. */
function shortOf(toMark: HoursToMark | undefined): string[] {
  if (toMark === undefined || toMark.reaches >= 1) return [];
  return [`in ${(100 * (1 - toMark.reaches)).toFixed(0)} % of the draws not within ${referenceCase.horizonH} h`];
}

function classLabel(id: string): string {
  const found = batteryClasses.find((candidate) => candidate.id === id);
  return found === undefined ? id : `${found.label}, ${found.capacityAh.low} to ${found.capacityAh.high} Ah`;
}

/** A vented and a sealed kind at most: finer kinds differ by less than one battery from the next. */
function kindsOf(tests: readonly TestContext[]): Construction[] {
  const named = tests.flatMap(({ battery, mode }) => [battery.construction, ...(mode.claims.batteryKinds?.value ?? [])]);
  const isSealedKind = (kind: Construction): boolean => kind === "AGM" || kind === "gel";
  return [
    ...(named.some((kind) => !isSealedKind(kind)) ? ["flooded" as const] : []),
    ...(named.some(isSealedKind) ? ["AGM" as const] : []),
  ];
}

function figureOf(
  id: string,
  method: string,
  label: string,
  unit: string,
  modeId: string,
  { value, low, high }: PublishedSpread,
  doubts: string[],
  evidence: Figure["evidence"],
): Figure {
  const common = { id, of: `mode/${modeId}`, label, unit, basis: "projected" as const, method, evidence: [...evidence] };
  if (value === null)
    return {
      ...common,
      value: null,
      low,
      high: null,
      absent: { kind: "not reached", why: `not within ${referenceCase.horizonH} h in half of the draws or more` },
      doubts: ["projected, not seen", ...doubts],
    };
  // An end at "never" is open; the doubt says how often.
  return { ...common, value, low, high, absent: null, doubts: ["projected, not seen", ...doubts] };
}

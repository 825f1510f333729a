/**
 * What each witness alone says of the state of charge, before anybody reconciles them: density, rest voltage, charge balance, cranking
 * current. Each by its plain formula with the usual values, its uncertainty carried through to first order (JCGM 100, 5.1.2).
 */
import { acidKgPerAh, waterKgPerAh } from "../electrochem/constants.ts";
import { densityFromRestVoltage, restVoltageFromDensity } from "../electrochem/rest-voltage.ts";
import { leastRestH } from "../electrochem/surface-charge.ts";
import { combine } from "../units/uncertainty.ts";
import { weightFractionOf } from "./acid-tables.ts";
import type { Case } from "./case.ts";
import { missingAfterCharge } from "./charge-path.ts";
import type { Account, Estimate } from "./examination.ts";
import { priors } from "./priors.ts";

type Said = { readonly stateOfCharge: number; readonly uncertainty: number; readonly why: string } | { readonly silent: string };

/** All accounts, visit by visit, in the order density, rest voltage, charge balance, cranking. */
export function hearWitnesses(the: Case): Account[] {
  return the.visits.flatMap((visit, k) => [
    account("density", visit.number, byDensity(the, k)),
    account("rest-voltage", visit.number, byRestVoltage(the, k)),
    account("charge-balance", visit.number, byChargeBalance(the, k)),
    account("cranking", visit.number, byCranking(the, k)),
  ]);
}

function account(witness: Account["witness"], visit: number, said: Said): Account {
  if ("silent" in said) return { witness, visit, stateOfCharge: null, why: said.silent };
  if (!Number.isFinite(said.stateOfCharge + said.uncertainty))
    return { witness, visit, stateOfCharge: null, why: "the value read lies outside what such a battery can show" };
  return { witness, visit, stateOfCharge: normalEstimate(said.stateOfCharge, said.uncertainty), why: said.why };
}

function normalEstimate(value: number, uncertainty: number): Estimate {
  const [z90, z95] = [1.6449, 1.96];
  return {
    value,
    low90: value - z90 * uncertainty,
    high90: value + z90 * uncertainty,
    low95: value - z95 * uncertainty,
    high95: value + z95 * uncertainty,
  };
}

function byDensity(the: Case, k: number): Said {
  const visit = the.visits[k];
  if (the.sealed) return { silent: "the battery is sealed" };
  if (visit === undefined || Number.isNaN(visit.density)) return { silent: "density was not read at this visit" };
  const densityUncertainty = combine(visit.densityUncertainty, the.hydrometerUncertainty, the.temperatureUncertainty);
  return { ...fromDensity(the, visit.density, densityUncertainty), why: "from the density at the top of the cells, by the acid balance" };
}

function byRestVoltage(the: Case, k: number): Said {
  const visit = the.visits[k];
  if (visit === undefined || Number.isNaN(visit.restV)) return { silent: "rest voltage was not read at this visit" };
  const temperatureC = Number.isNaN(visit.temperatureC) ? 25 : visit.temperatureC;
  const density = densityFromRestVoltage(visit.restV, the.cells, temperatureC);
  const voltPerDensity = (restVoltageFromDensity(density + 0.001, the.cells) - restVoltageFromDensity(density - 0.001, the.cells)) / 0.002;
  const uncertaintyV = combine(visit.restUncertaintyV, the.voltmeterUncertaintyV, the.cells * priors.restVoltageModelV);
  const isEarly = k > 0 && !(visit.restH >= leastRestH.manuals);
  const rested = Number.isNaN(visit.restH) ? "after a rest that nobody noted" : `after ${visit.restH} h of rest`;
  return {
    ...fromDensity(the, density, uncertaintyV / voltPerDensity),
    why: `from the acid that this voltage stands for, ${rested}${isEarly ? `; under ${leastRestH.manuals} h, or not noted, it may say too much` : ""}`,
  };
}

/** State of charge that evenly mixed acid of this mean density stands for. */
function fromDensity(the: Case, density: number, densityUncertainty: number): { stateOfCharge: number; uncertainty: number } {
  const growth = acidKgPerAh - waterKgPerAh;
  const full = weightFractionOf(the.fullDensity);
  const missingShare = (at: number): number => {
    const strength = weightFractionOf(at);
    return (the.acidKg * (full - strength)) / (acidKgPerAh - growth * strength) / usualCapacityAh(the);
  };
  const missing = missingShare(density);
  const perDensity = (missingShare(density - 0.001) - missingShare(density + 0.001)) / 0.002;
  const uncertainty = combine(
    perDensity * combine(densityUncertainty, the.fullDensityUncertainty),
    missing * combine(the.acidSpread, priors.capacityShare[the.capacityBasis].spread),
  );
  return { stateOfCharge: 1 - missing, uncertainty };
}

function byChargeBalance(the: Case, k: number): Said {
  const start = [byDensity(the, 0), byRestVoltage(the, 0)].find((said) => !("silent" in said));
  if (start === undefined || "silent" in start)
    return { silent: "neither density nor rest voltage was read at the first visit, so the sum has no start" };
  const passed = the.intervals.slice(0, k);
  const silent = passed.findIndex(({ recordedAh, mayHide }) => Number.isNaN(recordedAh) && mayHide);
  if (silent >= 0)
    return {
      silent: `nothing was recorded between visits ${the.visits[silent]?.number ?? "?"} and ${the.visits[silent + 1]?.number ?? "?"}`,
    };
  const capacityAh = usualCapacityAh(the);
  const missingBy = (missingAtStart: number, gain: number, gassingScale: number, capacity: number): number =>
    passed.reduce((missing, { recordedAh, recordedUncertaintyAh }) => {
      const throughAh = Number.isNaN(recordedAh) ? 0 : recordedAh + gain * recordedUncertaintyAh;
      return missingAfterCharge(Math.max(0, missing), throughAh / capacity, gassingScale, 1 - priors.bulkLoss.median);
    }, missingAtStart);
  const startMissing = 1 - start.stateOfCharge;
  const { median, spread } = priors.gassingShare;
  const missing = missingBy(startMissing, 0, median, capacityAh);
  const uncertainty = combine(
    missingBy(startMissing + start.uncertainty, 0, median, capacityAh) - missing,
    missingBy(startMissing, 1, median, capacityAh) - missing,
    missingBy(startMissing, 0, median * Math.exp(spread), capacityAh) - missing,
    missingBy(startMissing, 0, median, capacityAh * (1 + priors.capacityShare[the.capacityBasis].spread)) - missing,
  );
  return {
    stateOfCharge: 1 - missing,
    uncertainty,
    why:
      k === 0
        ? "the start of the sum: the first visit's own reading"
        : "from the first visit on, by the recorded charge less the usual gassing",
  };
}

function byCranking(the: Case, k: number): Said {
  const currentA = the.visits[k]?.crankingA ?? Number.NaN;
  if (Number.isNaN(the.crankingRatingA)) return { silent: "the battery's rated cranking current is not stated" };
  if (Number.isNaN(currentA)) return { silent: "cranking current was not read at this visit" };
  const { centre, spread } = priors.crankingFloor;
  const stateBy = (current: number, health: number, floor: number): number =>
    (current / (the.crankingRatingA * health) - floor) / (1 - floor);
  const health = priors.crankingHealth.median;
  const stateOfCharge = stateBy(currentA, health, centre);
  const readingUncertaintyA = combine(the.visits[k]?.crankingUncertaintyA ?? 0, priors.crankingModel * the.crankingRatingA);
  const uncertainty = combine(
    stateBy(currentA + readingUncertaintyA, health, centre) - stateOfCharge,
    stateBy(currentA, health * (1 + priors.crankingHealth.spread), centre) - stateOfCharge,
    stateBy(currentA, health, centre + spread) - stateOfCharge,
  );
  return { stateOfCharge, uncertainty, why: "from the share of the rating that a tester shows; it tells wear from charge badly" };
}

function usualCapacityAh(the: Case): number {
  return the.ratedAh * priors.capacityShare[the.capacityBasis].median;
}

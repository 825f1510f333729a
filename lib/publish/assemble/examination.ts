/** The published form of a cross-examination. */
import type { CrossExamination, Estimate } from "../../reconcile/index.ts";
import type { ExaminationResult } from "../results.ts";

/** Digits that a probability, a share or an estimate is published to: as many as the model's sampling carries on any machine. */
const digits = 4;

/** Estimates carry their 95 % interval, as every figure of the site does. */
export function assembleExamination(examination: CrossExamination): ExaminationResult {
  if (!examination.examined) return { ...nothing, examined: false, why: examination.why };
  return {
    examined: true,
    why: null,
    buyer: [...examination.buyer],
    accounts: examination.accounts.map((account) => ({ ...account, stateOfCharge: published(account.stateOfCharge) })),
    visits: examination.visits.map((visit) => ({
      visit: visit.visit,
      stateOfCharge: publishedEstimate(visit.stateOfCharge),
      topBelowMean: published(visit.topBelowMean),
      meanDensityAt25C: published(visit.meanDensityAt25C),
      surfaceChargeV: published(visit.surfaceChargeV),
    })),
    intervals: examination.intervals.map((interval) => ({
      fromVisit: interval.fromVisit,
      toVisit: interval.toVisit,
      takenAh: publishedEstimate(interval.takenAh),
      unrecordedAh: publishedEstimate(interval.unrecordedAh),
      gassingShare: published(interval.gassingShare),
    })),
    causes: examination.causes.map(({ id, label, explain, prior, probability, hiddenBecause }) => ({
      id,
      label,
      explain,
      prior: rounded(prior),
      probability: rounded(probability),
      hiddenBecause,
    })),
    combinations: examination.combinations.map(({ causes, probability }) => ({ causes: [...causes], probability: rounded(probability) })),
    takenAh: publishedEstimate(examination.takenAh),
    unrecordedAh: publishedEstimate(examination.unrecordedAh),
    hydrometerOffset: published(examination.hydrometerOffset),
    capacityAh: published(examination.trueCapacityAh),
    statements: [...examination.statements],
    readings: examination.readings.map((reading) => ({ ...reading, expectedBits: rounded(reading.expectedBits) })),
    unseen: [...examination.unseen],
    assumptions: [...examination.assumptions],
  };
}

const nothing: Omit<ExaminationResult, "examined" | "why"> = {
  buyer: [],
  accounts: [],
  visits: [],
  intervals: [],
  causes: [],
  combinations: [],
  takenAh: null,
  unrecordedAh: null,
  hydrometerOffset: null,
  capacityAh: null,
  statements: [],
  readings: [],
  unseen: [],
  assumptions: [],
};

function published(estimate: Estimate | null): { value: number; low: number; high: number } | null {
  return estimate === null ? null : publishedEstimate(estimate);
}

function publishedEstimate({ value, low95, high95 }: Estimate): { value: number; low: number; high: number } {
  return { value: rounded(value), low: rounded(low95), high: rounded(high95) };
}

function rounded(value: number): number {
  return Number(value.toPrecision(digits));
}

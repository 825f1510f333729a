/** For each worked example, how we compute it. */

import {
  densityAtTemperature,
  densityOfAcid,
  molalityFromWeightFraction,
  molarity,
  weightFractionFromMolality,
  weightFractionOfAcid,
} from "../../../lib/electrochem/acid.ts";
import { densityAfterCharge } from "../../../lib/electrochem/acid-balance.ts";
import { compensatedVoltageV } from "../../../lib/electrochem/compensation.ts";
import { ampereHoursPerMol, secondsPerHour } from "../../../lib/electrochem/constants.ts";
import {
  acidReleasedG,
  hydrogenVolumeL,
  meanGassingCurrentA,
  overchargeFromLossAh,
  waterElectrolysedG,
  waterFormedG,
} from "../../../lib/electrochem/faraday.ts";
import { gassingCurrentMA, gassingRatio } from "../../../lib/electrochem/gassing.ts";
import { type CorrectionRule, correctByRule } from "../../../lib/electrochem/hydrometer.ts";
import {
  densityFromRestVoltage,
  errorOfRuleOfThumb,
  restVoltageFromDensity,
  restVoltagePerCell,
} from "../../../lib/electrochem/rest-voltage.ts";
import { selfDischargeCurrentMA } from "../../../lib/electrochem/self-discharge.ts";
import { ventilationAirFlowM3PerH, ventilationOpeningCm2 } from "../../../lib/electrochem/ventilation.ts";
import { densityOfWater } from "../../../lib/electrochem/water.ts";
import { acceptanceLimitForRisk, decide, falseAcceptBound, globalRisk } from "../../../lib/judge/decision-rule.ts";
import { fitLine, valueOnLine } from "../../../lib/signal/fit-line.ts";
import { fitNonlinear } from "../../../lib/signal/fit-nonlinear.ts";
import { isRefused } from "../../../lib/signal/fit-result.ts";
import { fitSaturating } from "../../../lib/signal/fit-saturating.ts";
import { trapezoid } from "../../../lib/signal/trapezoid.ts";
import {
  covarianceOf,
  covarianceOfMeans,
  coverageFactor95,
  effectiveDegreesOfFreedom,
  meanOfRepeats,
  propagate,
  standardUncertaintyOf,
} from "../../../lib/units/uncertainty.ts";
import { readDataSet } from "../nist-nonlinear/data-sets.ts";

/** The inputs of a row: numbers by name, as the row writes them. */
export type Inputs = (name: string) => number;
export type Evaluator = (input: Inputs) => number | string;

const celsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;

const densityByPercent: Evaluator = (input) => densityOfAcid(input("wt_percent") / 100, input("temp_c"));
const densityByMolality: Evaluator = (input) => densityOfAcid(weightFractionFromMolality(input("molality")), input("temp_c"));
const densityByFraction: Evaluator = (input) => densityOfAcid(input("wt_fraction"), input("temp_c"));
const densityAt25: Evaluator = (input) => densityAtTemperature(input("density_read"), input("temp_c"), 25);
const restVoltage: Evaluator = (input) => restVoltagePerCell(input("molality"), input("temp_c"));
const restVoltageByDensity: Evaluator = (input) => restVoltageFromDensity(input("density"), 1, input("temp_c"));
const densityByRestVoltage: Evaluator = (input) => densityFromRestVoltage(input("rest_V"), input("cells"), input("temp_c"));
const byRuleFahrenheit =
  (rule: CorrectionRule): Evaluator =>
  (input) =>
    correctByRule(input("sg_read"), celsius(input("temp_f")), rule);
const byRuleCelsius =
  (rule: CorrectionRule): Evaluator =>
  (input) =>
    correctByRule(input("sg_read"), input("temp_c"), rule);

/** The falling current of W062 to W068, with the voltage that goes with it. */
const currentAt = (elapsedS: number): number => 5 * Math.exp(-elapsedS / 1200);
const voltageAt = (elapsedS: number): number => 14.4 - 1.8 * Math.exp(-elapsedS / 1200);
const evenlyTo3600 = (stepS: number): number[] => Array.from({ length: 3600 / stepS + 1 }, (_, i) => i * stepS);
const integrateOver = (elapsedS: readonly number[], f: (elapsedS: number) => number): number =>
  trapezoid(Float64Array.from(elapsedS), Float64Array.from(elapsedS, f)) / secondsPerHour;
const withoutGap = (elapsedS: number): boolean => elapsedS < 660 || elapsedS > 1740;
/** Fine enough that the trapezoid's own error, h²/(12 tau²) of the sum, is 6e-10. */
const allButExactStepS = 0.1;

/** Annex H.2 of JCGM 100: five readings each of a voltage, a current and their phase, taken together. */
const alternating = {
  voltagesV: [5.007, 4.994, 5.005, 4.99, 4.999],
  currentsA: [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
  phasesRad: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
};

function evaluateImpedance(): { resistance: number; reactance: number; uR: number; uX: number; correlation: number } {
  const { voltagesV, currentsA, phasesRad } = alternating;
  const [voltage, current, phase] = [voltagesV, currentsA, phasesRad].map((values) => meanOfRepeats(values).mean);
  if (voltage === undefined || current === undefined || phase === undefined) throw new Error("three series give three means");
  const covariance = covarianceOfMeans([voltagesV, currentsA, phasesRad]);
  const resistance = (voltage / current) * Math.cos(phase);
  const reactance = (voltage / current) * Math.sin(phase);
  const gradientR = [resistance / voltage, -resistance / current, -reactance];
  const gradientX = [reactance / voltage, -reactance / current, resistance];
  const uR = propagate(gradientR, covariance);
  const uX = propagate(gradientX, covariance);
  return { resistance, reactance, uR, uX, correlation: covarianceOf(gradientR, gradientX, covariance) / (uR * uX) };
}

/** Annex H.3 of JCGM 100: eleven corrections of a thermometer, °C, with the line through them counted from 20 °C. */
const thermometer = {
  temperaturesC: [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511],
  correctionsC: [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16],
};

function calibrationLine() {
  const line = fitLine(thermometer.temperaturesC, thermometer.correctionsC, 20);
  if (isRefused(line)) throw new Error(line.refused);
  return line;
}

/** JCGM 106, 9.5.4: run-out of ball bearings, µm; gamma prior of shape 4 and scale 1/4, whose density is 4⁴/3! · x³ · exp(-4x). */
const bearings = {
  priorDensity: (runOut: number): number => (256 / 6) * runOut ** 3 * Math.exp(-4 * runOut),
  priorUpTo: 12,
  upperLimit: 2,
  standardUncertainty: 0.25,
};

function saturatingFit(name: string) {
  const { x, y } = readDataSet(name);
  const fit = fitSaturating(x, y);
  if (isRefused(fit)) throw new Error(fit.refused);
  return fit;
}

function chwirut2Fit() {
  const { model, x, y, starts } = readDataSet("Chwirut2");
  const fit = fitNonlinear(model, x, y, starts[0]);
  if (isRefused(fit)) throw new Error(fit.refused);
  return fit;
}

const probability = (value: number, standardUncertainty: number, acceptLow: number | null, acceptHigh: number | null): number =>
  decide({ value, standardUncertainty, acceptLow, acceptHigh, rule: "simple", coverageFactor: 2 }).probabilityWithin;
const boundOf: Evaluator = (input) => falseAcceptBound(input("w_over_U"), input("k"));

export const evaluators: Readonly<Record<string, Evaluator>> = {
  W001: () => ampereHoursPerMol,
  W002: (input) => acidReleasedG(input("charge_Ah"), input("cells")),
  W003: (input) => acidReleasedG(input("charge_Ah"), input("cells")),
  W004: (input) => waterFormedG(input("charge_Ah"), input("cells")),
  W005: (input) => waterElectrolysedG(input("charge_Ah"), input("cells")),
  W006: (input) => waterElectrolysedG(input("charge_Ah"), input("cells")),
  W007: (input) => overchargeFromLossAh(input("loss_g"), input("cells")),
  W008: (input) => 1000 * meanGassingCurrentA(input("loss_g"), input("cells"), input("hours")),
  W009: (input) => hydrogenVolumeL(input("charge_Ah"), input("cells"), input("temp_c"), input("pressure_kPa")),
  W010: (input) => hydrogenVolumeL(input("charge_Ah"), input("cells"), input("temp_c"), input("pressure_kPa")),
  W011: (input) => ventilationAirFlowM3PerH(input("n"), input("Igas_mA_per_Ah"), input("C_Ah")),
  W012: (input) => ventilationOpeningCm2(input("Q_m3_h")),
  W013: densityByPercent,
  W014: densityByPercent,
  W015: densityByPercent,
  W016: densityByPercent,
  W017: densityByPercent,
  W018: densityByPercent,
  W019: densityByPercent,
  W020: densityByPercent,
  W021: densityByPercent,
  W022: densityByPercent,
  W023: densityByMolality,
  W024: densityByMolality,
  W025: densityByMolality,
  W026: densityByFraction,
  W027: densityByFraction,
  W028: densityByFraction,
  W029: densityByFraction,
  W030: (input) => molalityFromWeightFraction(input("wt_percent") / 100),
  W031: (input) => molarity(input("wt_percent") / 100, input("density")),
  W032: (input) => 100 * weightFractionOfAcid(input("density"), input("temp_c")),
  W033: (input) => 100 * weightFractionOfAcid(input("sg_25_25") * densityOfWater(25), 25),
  W034: byRuleFahrenheit("0.001 per 3 °F from 77 °F"),
  W035: byRuleFahrenheit("0.001 per 3 °F from 77 °F"),
  W036: byRuleCelsius("0.001 per 3 °F from 77 °F"),
  W037: byRuleFahrenheit("0.004 per 10 °F from 80 °F"),
  W038: byRuleFahrenheit("0.004 per 10 °F from 80 °F"),
  W039: byRuleCelsius("0.0007 per K from 20 °C"),
  W040: densityAt25,
  W041: densityAt25,
  W042: densityAt25,
  W043: densityAt25,
  W044: restVoltage,
  W045: restVoltage,
  W046: restVoltage,
  W047: restVoltage,
  W048: restVoltage,
  W049: restVoltage,
  W050: restVoltage,
  W051: restVoltageByDensity,
  W052: restVoltageByDensity,
  W053: restVoltageByDensity,
  W054: restVoltageByDensity,
  W055: densityByRestVoltage,
  W056: densityByRestVoltage,
  W057: densityByRestVoltage,
  W058: densityByRestVoltage,
  W059: (input) => 1000 * errorOfRuleOfThumb(input("density")),
  W060: (input) => densityAfterCharge(input("electrolyte_kg_per_cell"), input("density_start"), input("accepted_Ah")),
  W062: () => integrateOver(evenlyTo3600(60), currentAt),
  W063: () => integrateOver(evenlyTo3600(allButExactStepS), currentAt),
  W064: () => integrateOver(evenlyTo3600(600), currentAt),
  W065: () => integrateOver([0, 100, 500, 600, 1800, 3600], currentAt),
  W066: () => integrateOver(evenlyTo3600(60).filter(withoutGap), currentAt),
  W067: () => integrateOver(evenlyTo3600(allButExactStepS), (elapsedS) => currentAt(elapsedS) * voltageAt(elapsedS)),
  W068: () => integrateOver(evenlyTo3600(60), (elapsedS) => currentAt(elapsedS) * voltageAt(elapsedS)),
  W069: () => integrateOver([0, 7, 100, 3600], (elapsedS) => 2 + 0.001 * elapsedS),
  W070: () => saturatingFit("Misra1a").parameters[0],
  W071: () => saturatingFit("Misra1a").parameters[1],
  W072: () => saturatingFit("Misra1a").residualStandardDeviation,
  W073: () => saturatingFit("BoxBOD").parameters[0],
  W074: () => saturatingFit("BoxBOD").parameters[1],
  W075: () => chwirut2Fit().parameters[0] ?? Number.NaN,
  W076: () => evaluateImpedance().resistance,
  W077: () => evaluateImpedance().uR,
  W078: () => evaluateImpedance().reactance,
  W079: () => evaluateImpedance().uX,
  W080: () => evaluateImpedance().correlation,
  W081: () => calibrationLine().intercept,
  W082: () => calibrationLine().interceptError,
  W083: () => calibrationLine().slope,
  W084: () => calibrationLine().slopeError,
  W085: () => valueOnLine(calibrationLine(), 30).value,
  W086: () => valueOnLine(calibrationLine(), 30).standardUncertainty,
  W087: (input) => probability(input("y"), input("u"), null, input("limit_max")),
  W088: (input) => probability(input("y"), input("u"), input("lower"), input("upper")),
  W089: () => globalRisk({ ...bearings, acceptUpTo: 2 }).nonconforming,
  W090: (input) => globalRisk({ ...bearings, acceptUpTo: input("acceptance") }).consumers,
  W091: () => globalRisk({ ...bearings, acceptUpTo: 2 }).producers,
  W092: (input) => acceptanceLimitForRisk(bearings, input("target")),
  W093: boundOf,
  W094: boundOf,
  W095: boundOf,
  W096: (input) => falseAcceptBound(input("w_over_U"), 2),
  W097: (input) => probability(input("measured_A"), input("u_A"), input("claim_A") * (1 + input("tol_rel")), null),
  W098: (input) => {
    const { outcome } = decide({
      value: input("measured_A"),
      standardUncertainty: input("U_A") / 2,
      acceptLow: input("limit_A"),
      acceptHigh: null,
      rule: "guarded",
      coverageFactor: 2,
    });
    return outcome === "cannot tell" ? "not shown (inside +-U of the limit)" : outcome;
  },
  W099: (input) =>
    standardUncertaintyOf({ percentOfReading: 0.5, digits: 2, resolution: input("resolution"), from: "data sheet" }, input("reading")),
  W100: (input) =>
    effectiveDegreesOfFreedom([
      { standardUncertainty: input("u1"), degreesOfFreedom: input("nu1") },
      { standardUncertainty: input("u2"), degreesOfFreedom: Number.POSITIVE_INFINITY },
    ]),
  W101: (input) => coverageFactor95(input("nu")),
  W102: (input) => compensatedVoltageV(input("U25"), input("temp_c"), input("cells"), input("k") / 1000),
  W103: (input) => gassingRatio(input("dU_per_cell"), 0),
  W104: (input) => gassingRatio(0, input("dT")),
  W105: (input) => gassingCurrentMA(input("C_Ah"), input("U_cell"), input("temp_c"), input("I0_mA")),
  W106: (input) => selfDischargeCurrentMA(input("C_Ah"), input("percent_per_month")),
};

/** Rows that we do not reproduce, and why. */
export const notReproduced: Readonly<Record<string, string>> = {
  W061: "the share of acid that dissociates to sulphate belongs to the activity model, which was used to check the rest voltage and is no part of the product",
};

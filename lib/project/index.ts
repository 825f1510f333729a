/** Everything a page or a figure may ask of the forecasting library. */
export {
  type Against,
  againstWords,
  batteryClasses,
  flatnesses,
  reasonsAgainst,
  sensibleCurrentShare,
  whatIsAgainst,
} from "./battery-classes.ts";
export { type BatteryBeliefs, beliefsOf, type Condition, type Construction, densitiesByKind } from "./battery-priors.ts";
export { type ChargerKnowledge, chargerBehaviourOf, type RecordedCharge } from "./behaviour-of-stages.ts";
export { type ChargerBehaviour, isHoldingUnknown, type ProgrammeStep } from "./charger-behaviour.ts";
export { type Contender, type Ranking, rankContenders } from "./compare.ts";
export { type CostInputs, type CostOfResult, costPerResult, type Estimate, known, rateBetween, showAmount } from "./cost.ts";
export { type BatteryTest, type FittedBattery, fitBattery, fitBatteryTests, type KnownBattery } from "./fit-battery.ts";
export { type ChargeCase, type ChargeForecast, forecastCharge } from "./forecast.ts";
export { findHoldingThresholds, type HoldingThresholds, samplesBeforeFirstRestart } from "./holding-thresholds.ts";
export { type LogPoint, thinLog } from "./log-points.ts";
export { poolBatteries } from "./pool-batteries.ts";
export { type ReadyCell, readyBy } from "./ready-by.ts";
export { forecastReference, referenceCase } from "./reference-case.ts";
export { cellReserveGPerAh, type FloatWindow, holdSeason, type SeasonAt } from "./season.ts";
export { type ChargeMark, chargeMarks } from "./simulate.ts";
export { exactly, type Middle, middleOfDraws, type Range, type Spread } from "./spread.ts";
export { type StartShare, type StatedDensities, startShareFromDensity, startShareFromRestVoltage } from "./start-share.ts";
export { type FullDensity, type GrowthVisit, projectToTarget, type ToTarget } from "./to-target.ts";

/** Every figure, by what it is a figure of. A test lists the folder and names any file that is left out here. */

import { type ReadingColumn, readingColumns } from "../../nouns/reading.ts";
import type { Rules } from "../../nouns/rules.ts";
import type { FigureDefinition } from "../define.ts";
import type { MeasuredRecording } from "../recording.ts";
import type { MeasuredConnection, TestContext } from "../test-context.ts";
import { chargeInGaps } from "./charge-in-gaps.ts";
import { chargeMissed } from "./charge-missed.ts";
import { chargeRecorded } from "./charge-recorded.ts";
import { chargeRequired } from "./charge-required.ts";
import { chargeTaken } from "./charge-taken.ts";
import { chargeUnrecorded } from "./charge-unrecorded.ts";
import { chargerLimitedCurrent } from "./charger-limited-current.ts";
import { clockStepsBack } from "./clock-steps-back.ts";
import { connectionsMade } from "./connections-made.ts";
import { connectionsToTarget } from "./connections-to-target.ts";
import { costFirstResult } from "./cost-first-result.ts";
import { costPerAh } from "./cost-per-ah.ts";
import { costPerDensity } from "./cost-per-density.ts";
import { costPerResult } from "./cost-per-result.ts";
import { crankingShare } from "./cranking-share.ts";
import { densityByRestVoltage } from "./density-by-rest-voltage.ts";
import { densityFirst } from "./density-first.ts";
import { densityLast } from "./density-last.ts";
import { energyMains } from "./energy-mains.ts";
import { energyRecorded } from "./energy-recorded.ts";
import { floatVoltage } from "./float-voltage.ts";
import { freezingPoint } from "./freezing-point.ts";
import { gapTime } from "./gap-time.ts";
import { highestCurrent } from "./highest-current.ts";
import { highestVoltage } from "./highest-voltage.ts";
import { holdingVoltage } from "./holding-voltage.ts";
import { hoursConnected } from "./hours-connected.ts";
import { hoursToTarget } from "./hours-to-target.ts";
import { hydrogen } from "./hydrogen.ts";
import { limitVoltage } from "./limit-voltage.ts";
import { overchargeWater } from "./overcharge-water.ts";
import { densityAtVisit, densitySpread, valueAsRead } from "./reading-values.ts";
import { recordedShare } from "./recorded-share.ts";
import { rows } from "./rows.ts";
import { sampleInterval } from "./sample-interval.ts";
import { span } from "./span.ts";
import { stateOfCharge } from "./state-of-charge.ts";
import { sustainedCurrent, sustainedCurrentOver } from "./sustained-current.ts";
import { sustainedVoltage } from "./sustained-voltage.ts";
import { timeAboveGassing } from "./time-above-gassing.ts";
import { timeConnected } from "./time-connected.ts";
import { timeRecorded } from "./time-recorded.ts";
import { timeUnrecorded } from "./time-unrecorded.ts";
import { ventilationNeed } from "./ventilation-need.ts";
import { voltageRipple } from "./voltage-ripple.ts";
import { waterLostWeighed } from "./water-lost-weighed.ts";
import { waterReserveDays } from "./water-reserve-days.ts";

export const recordingFigures = (rules: Rules): readonly FigureDefinition<MeasuredRecording>[] => [
  chargeRecorded.recording,
  energyRecorded.recording,
  chargerLimitedCurrent(rules),
  limitVoltage,
  floatVoltage,
  sustainedCurrent(rules.sustainedWindowS),
  sustainedVoltage(rules.sustainedWindowS),
  ...sustainedCurrentOver,
  highestCurrent,
  highestVoltage,
  voltageRipple,
  timeAboveGassing,
  span,
  rows,
  sampleInterval,
  gapTime,
  chargeInGaps,
  clockStepsBack,
];

export const connectionFigures: readonly FigureDefinition<MeasuredConnection>[] = [
  timeConnected,
  timeRecorded,
  timeUnrecorded,
  recordedShare,
  chargeRecorded.connection,
  chargeMissed,
  energyRecorded.connection,
];

export const testFigures: readonly FigureDefinition<TestContext>[] = [
  connectionsToTarget,
  hoursToTarget,
  costPerResult,
  costFirstResult,
  costPerAh,
  costPerDensity,
  connectionsMade,
  hoursConnected,
  chargeRecorded.test,
  energyRecorded.test,
  densityFirst,
  densityLast,
  chargeRequired,
  chargeUnrecorded,
  chargeTaken,
  stateOfCharge,
  holdingVoltage,
  waterLostWeighed,
  overchargeWater,
  waterReserveDays,
  hydrogen,
  ventilationNeed,
  energyMains,
  crankingShare,
];

/** One definition for each method page: a figure that exists at several levels has one method. */
export function everyFigure(
  rules: Rules,
): readonly Pick<FigureDefinition<never>, "id" | "label" | "version" | "explain" | "formula" | "source" | "checkedBy" | "unit">[] {
  const all = [
    ...recordingFigures(rules),
    ...connectionFigures,
    ...testFigures,
    densityAtVisit,
    densitySpread,
    densityByRestVoltage,
    freezingPoint,
    ...(Object.keys(readingColumns) as ReadingColumn[]).map(valueAsRead),
  ];
  return all.filter((definition, index) => all.findIndex((other) => other.id === definition.id) === index);
}

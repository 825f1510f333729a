/** Leaves one test of a campaign out, learns from the others, and forecasts the one left out. */
import { findStages } from "../../lib/measure/stages/find-stages.ts";
import { measureStages } from "../../lib/measure/stages/measure-stages.ts";
import { makeTrace } from "../../lib/measure/trace.ts";
import { beliefsOf, densitiesByKind } from "../../lib/project/battery-priors.ts";
import { chargerBehaviourOf, type RecordedCharge } from "../../lib/project/behaviour-of-stages.ts";
import type { ChargerBehaviour } from "../../lib/project/charger-behaviour.ts";
import { type BatteryTest, type FittedBattery, fitBattery, fitBatteryTests } from "../../lib/project/fit-battery.ts";
import { type ChargeForecast, forecastCharge } from "../../lib/project/forecast.ts";
import { findHoldingThresholds, type HoldingThresholds, samplesBeforeFirstRestart } from "../../lib/project/holding-thresholds.ts";
import { thinLog } from "../../lib/project/log-points.ts";
import { poolBatteries } from "../../lib/project/pool-batteries.ts";
import { type StartShare, type StatedDensities, startShareFromDensity } from "../../lib/project/start-share.ts";
import { median } from "../../lib/signal/order-statistics.ts";
import { horizonH, type ObservedTest } from "./run-test.ts";

const construction = "flooded-calcium";
const nominalVoltageV = 12;
const cells = 6;
/** Recorder: what its sheet would say, as standard uncertainties. */
const standardUncertaintyA = 0.02;
const standardUncertaintyV = 0.012;
/** Six cells to a step of 0.005 kg/l: how well their mean repeats. The hydrometer's own error was there when full, too; see StartShare. */
const densityRepeatability = 0.002;

/** The battery's record states its density when full; when empty, its kind's is taken. */
function densityOf({ fullDensity }: ObservedTest): StatedDensities {
  return { full: fullDensity, empty: densitiesByKind[construction].empty, fullUncertainty: densityRepeatability };
}

/** What is learnt of the charger from one observed test: the stages of its log, and the voltages between which it holds. */
export type LearntOfCharger = { readonly recorded: RecordedCharge; readonly holding: HoldingThresholds | undefined };

/** Reads one observed test as the tool would: its log through the stage finder. */
export function learnCharger({ test, elapsedS, voltagesV, currentsA, endedBy }: ObservedTest): LearntOfCharger {
  const trace = makeTrace(
    {
      elapsedS,
      voltagesV,
      currentsA,
      temperaturesC: new Float64Array(0),
      lines: Uint32Array.from(elapsedS, (_, i) => i + 2),
      hasVoltage: true,
      hasCurrent: true,
      startMs: undefined,
    },
    undefined,
  );
  const stages = measureStages(trace, findStages(trace, { capacityAh: test.ratedAh }));
  return { recorded: { stages, endedBy }, holding: findHoldingThresholds(voltagesV, currentsA) };
}

/** The charger's behaviour from its other tests; undefined where they recorded no charge at all. */
export function behaviourFrom(others: readonly LearntOfCharger[]): ChargerBehaviour | undefined {
  const held = others.flatMap(({ holding }) => (holding === undefined ? [] : [holding]));
  return chargerBehaviourOf(
    others.map(({ recorded }) => recorded),
    {
      standardUncertaintyA,
      standardUncertaintyV,
      nominalVoltageV,
      efficiency: { low: 0.7, high: 0.9 },
      ...(held.length === 0
        ? {}
        : { holding: { wakeV: median(held.map(({ wakeV }) => wakeV)), stopV: median(held.map(({ stopV }) => stopV)) } }),
    },
  );
}

/** One test as a battery's fit sees it: what was known before, and the first hours of its log (none of it for 0). */
export function batteryTestOf(observed: ObservedTest, hours: number): BatteryTest {
  const seen = observed.elapsedS.filter((elapsedS) => elapsedS <= hours * 3600).length;
  const rows = Math.min(seen, samplesBeforeFirstRestart(observed.currentsA));
  const { share, standardUncertainty, perEmptyDensity } = startOf(observed);
  return {
    points: hours > 0 ? thinLog(observed.elapsedS.subarray(0, rows), observed.voltagesV, observed.currentsA, 60) : [],
    known: {
      ratedAh: observed.test.ratedAh,
      cells,
      density: densityOf(observed),
      startShare: share,
      startShareUncertainty: standardUncertainty,
      startSharePerEmptyDensity: perEmptyDensity,
      airC: observed.test.airC,
    },
  };
}

/** Fits a test's battery to the whole of that test's log, under what is believed of its kind. */
export function learnBattery(observed: ObservedTest): FittedBattery | undefined {
  const { points, known } = batteryTestOf(observed, Number.POSITIVE_INFINITY);
  return fitBattery(points, known, beliefsOf(construction, observed.test.condition));
}

/** What the forecaster may know of the battery. */
export type BatteryEvidence = {
  /** Fits of other batteries. */
  readonly strangers: readonly (FittedBattery | undefined)[];
  /** Other tests of this very battery. */
  readonly earlier: readonly ObservedTest[];
  /** How much of the left-out test's own log may be seen, h. */
  readonly ownLogH: number;
};

/** Forecasts an observed test. Of the test itself nothing is seen but label, start and `ownLogH` of its log. */
export function forecastFrom(behaviour: ChargerBehaviour, observed: ObservedTest, evidence: BatteryEvidence): ChargeForecast {
  const { test } = observed;
  const beliefs = poolBatteries(
    beliefsOf(construction, test.condition),
    evidence.strangers.flatMap((fit) => (fit === undefined ? [] : [fit])),
  );
  const asked = batteryTestOf(observed, evidence.ownLogH);
  const fit = fitBatteryTests(
    evidence.earlier.map((other) => batteryTestOf(other, Number.POSITIVE_INFINITY)),
    asked,
    beliefs,
  );
  return forecastCharge(
    { beliefs, ...(fit === undefined ? {} : { fit }) },
    behaviour,
    { ...asked.known, horizonH },
    { stopWhenSettled: true },
  );
}

function startOf(observed: ObservedTest): StartShare {
  return startShareFromDensity(observed.startDensity, densityRepeatability, densityOf(observed));
}

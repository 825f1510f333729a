/** Runs one drawn test with the generator: what the recorder would have written, and what truly happened. */
import type { Ender } from "../../lib/nouns/stage.ts";
import { type ChargeMark, chargeMarks } from "../../lib/project/simulate.ts";
import { acidDensity } from "../generator/acid.ts";
import { massFractions, restedBattery, stepBattery } from "../generator/battery.ts";
import { advanceCharger, offer, startedCharger } from "../generator/charger.ts";
import { type Random, seededRandom } from "../generator/random.ts";
import { roundTo } from "../generator/recorder.ts";
import type { DrawnCampaign, DrawnTest } from "./draw-campaign.ts";

/** Hours beyond which "never" is said, by truth and by forecast alike. */
export const horizonH = 60;

export type ObservedTest = {
  readonly test: DrawnTest;
  readonly elapsedS: Float64Array;
  readonly voltagesV: Float64Array;
  readonly currentsA: Float64Array;
  readonly endedBy: Ender;
  /** Mean of six cells as the hydrometer shows it, kg/l at 25 °C: before the charge, and at an earlier time when full. */
  readonly startDensity: number;
  readonly fullDensity: number;
  /** Hours to each mark of what this battery holds; Infinity where not within the horizon. */
  readonly truth: Readonly<Record<ChargeMark, number>>;
};

const recordEveryS = 60;

/** Runs a test second by second until the battery is full, the charger is off for good and recorded, or the horizon. */
export function runTest(campaign: DrawnCampaign, index: number): ObservedTest {
  const test = campaign.tests[index];
  if (test === undefined) throw new Error(`the campaign has no test ${index}`);
  const random = seededRandom(campaign.noiseSeed + index * 101 + 3);
  const { battery: model } = test;
  const battery = restedBattery(model, test.startShare * model.capacityAh, test.airC);
  const startDensity = readDensity(acidDensity(massFractions(battery).mean, 25), campaign, random);
  const fullDensity = readDensity(model.fullDensityAt25C, campaign, random);
  const charger = startedCharger();
  const rows = { elapsedS: [] as number[], voltagesV: [] as number[], currentsA: [] as number[] };
  const truth: Record<ChargeMark, number> = {
    "80 %": Number.POSITIVE_INFINITY,
    "95 %": Number.POSITIVE_INFINITY,
    full: Number.POSITIVE_INFINITY,
  };
  let offSinceS: number | undefined;
  for (let second = 0; second < horizonH * 3600; second++) {
    const source = offer(campaign.charger, charger);
    const isOff = source.limitA <= 0;
    const currentA = stepBattery(model, battery, isOff ? undefined : source, test.airC, 1);
    advanceCharger(campaign.charger, charger, battery.cellV * model.cells, currentA);
    const hours = (second + 1) / 3600;
    for (const [mark, share] of Object.entries(chargeMarks) as [ChargeMark, number][])
      if (truth[mark] > hours && battery.storedAh >= share * model.capacityAh) truth[mark] = hours;
    if (second % recordEveryS === 0 && hours <= test.recordedH) note(rows, second, battery.cellV * model.cells, currentA, campaign, random);
    const isOver = isOffForGood(campaign, charger.step);
    offSinceS = isOver ? (offSinceS ?? second) : undefined;
    const isRecorded = hours > test.recordedH || (offSinceS !== undefined && second - offSinceS > 3600);
    if (isRecorded && (Number.isFinite(truth.full) || isOver)) break;
  }
  const endedBy: Ender = offSinceS !== undefined && (rows.elapsedS.at(-1) ?? 0) > offSinceS ? "charger" : "recorder";
  return {
    test,
    elapsedS: Float64Array.from(rows.elapsedS),
    voltagesV: Float64Array.from(rows.voltagesV),
    currentsA: Float64Array.from(rows.currentsA),
    endedBy,
    startDensity,
    fullDensity,
    truth,
  };
}

/** The mean over six cells that differ a little, each read to a step of 0.005 kg/l: the steps average out in part. */
function readDensity(density: number, { hydrometerError }: DrawnCampaign, random: Random): number {
  let sum = 0;
  for (let cell = 0; cell < 6; cell++) sum += roundTo(density + hydrometerError + 0.003 * random.normal(), 0.005);
  return sum / 6;
}

function isOffForGood({ charger }: DrawnCampaign, stepIndex: number): boolean {
  const step = charger.steps[stepIndex];
  return step === undefined || (step.kind === "off" && step.wakeBelowV === undefined);
}

/** A row with the recorder's own gain and offset, its noise, and its steps of 10 mV and 10 mA. */
function note(
  rows: { elapsedS: number[]; voltagesV: number[]; currentsA: number[] },
  second: number,
  voltageV: number,
  currentA: number,
  { recorder }: DrawnCampaign,
  random: Random,
): void {
  rows.elapsedS.push(second);
  rows.voltagesV.push(roundTo(voltageV + recorder.offsetV + 0.004 * random.normal(), 0.01));
  rows.currentsA.push(roundTo(currentA * recorder.gainA + 0.004 * random.normal(), 0.01));
}

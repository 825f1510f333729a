/** Runs a scenario second by second and returns the files that the bench would have left, with the truth behind them. */
import { acidDensity } from "./acid.ts";
import { type BatteryState, massFractions, mixAcid, platesV, restedBattery, stepBattery } from "./battery.ts";
import { advanceCharger, type ChargerState, currentLimit, offer, stageNow, startedCharger } from "./charger.ts";
import { isoWithOffset, writeLog } from "./dialects.ts";
import { type Random, seededRandom, seedFromName } from "./random.ts";
import { type NotedVisit, readVisit, writeReadings } from "./readings.ts";
import type { Look } from "./recorder.ts";
import { lookIfDue, loseMains, type RecordingRun, recordingTruth, startRun } from "./recording-run.ts";
import type { PlanStep, Scenario, Visit } from "./scenario.ts";
import { type Doing, type LoggedStage, logSecond, stageTruth } from "./stage-log.ts";
import { type ConnectionTruth, type RecordingTruth, roundTruth, type TestTruth, type VisitTruth } from "./truth.ts";

export type BenchFiles = {
  /** By name without folder, such as day-1.csv. */
  readonly logs: ReadonlyMap<string, Buffer>;
  readonly readings: string;
  readonly truth: TestTruth;
};

type ConnectStep = Extract<PlanStep, { do: "connect" }>;

/** Everything that moves while a scenario runs. Seconds count from its start. */
type Bench = {
  readonly scenario: Scenario;
  readonly random: Random;
  readonly startMs: number;
  readonly battery: BatteryState;
  atS: number;
  restS: number;
  mainsWh: number;
  readonly visits: NotedVisit[];
  readonly visitTruths: VisitTruth[];
  readonly connections: ConnectionTruth[];
  readonly recordings: RecordingTruth[];
  readonly logs: Map<string, Buffer>;
};

/** Returns logs, readings and truth of one scenario. The same scenario gives the same bytes, always. */
export function runScenario(scenario: Scenario): BenchFiles {
  const startMs = Date.parse(`${scenario.startLocal}:00Z`) - scenario.offsetMin * 60_000;
  const battery = restedBattery(scenario.battery, scenario.storedAh, airTemperature(scenario, startMs, 0), scenario.upperDeficit);
  const bench: Bench = {
    scenario,
    random: seededRandom(seedFromName(scenario.id)),
    startMs,
    battery,
    atS: 0,
    // Every scenario opens after a day of rest.
    restS: 24 * 3600,
    mainsWh: 0,
    visits: [],
    visitTruths: [],
    connections: [],
    recordings: [],
    logs: new Map(),
  };
  const start = { ...battery };
  for (const step of scenario.plan) {
    if (step.do === "visit") makeVisit(bench, step, 0, false);
    else if (step.do === "rest") rest(bench, step.hours);
    else connect(bench, step);
  }
  return { logs: bench.logs, readings: writeReadings(scenario, bench.visits), truth: testTruth(bench, start) };
}

/** Coldest at four in the morning, warmest at four in the afternoon, bench time. */
function airTemperature(scenario: Scenario, startMs: number, atS: number): number {
  const benchHour = ((startMs / 1000 + scenario.offsetMin * 60 + atS) / 3600) % 24;
  return scenario.air.meanC + scenario.air.swingC * Math.cos(((benchHour - 16) / 24) * 2 * Math.PI);
}

function rest(bench: Bench, hours: number): void {
  for (let minute = 0; minute < Math.round(hours * 60); minute++) {
    stepBattery(bench.scenario.battery, bench.battery, undefined, airTemperature(bench.scenario, bench.startMs, bench.atS), 60);
    bench.atS += 60;
    bench.restS += 60;
  }
}

function makeVisit(bench: Bench, visit: Visit, currentA: number, connected: boolean): void {
  const { battery, scenario, atS } = bench;
  if (visit.mixed === true) mixAcid(battery);
  const airC = airTemperature(scenario, bench.startMs, atS);
  const arrival = { atS, restS: bench.restS, currentA, connected, mainsKWh: bench.mainsWh / 1000, airC };
  bench.visits.push(readVisit(scenario, battery, visit, arrival, bench.random));
  const { upper, mean } = massFractions(battery);
  bench.visitTruths.push({
    number: bench.visits.length,
    at: isoOf(bench, atS),
    stateOfCharge: roundTruth(battery.storedAh / scenario.battery.capacityAh, 5),
    storedAh: roundTruth(battery.storedAh, 4),
    upperDensityAt25C: roundTruth(acidDensity(upper, 25), 5),
    meanDensityAt25C: roundTruth(acidDensity(mean, 25), 5),
    acidC: roundTruth(battery.temperatureC, 2),
    terminalV: roundTruth(battery.cellV * scenario.battery.cells, 4),
    relaxedV: roundTruth(platesV(battery) * scenario.battery.cells, 4),
    currentA: roundTruth(currentA, 4),
  });
}

function connect(bench: Bench, step: ConnectStep): void {
  const { scenario, battery } = bench;
  const onS = bench.atS;
  const before = { ...battery };
  const mainsBeforeWh = bench.mainsWh;
  const stages: LoggedStage[] = [];
  const visits = [...(step.visits ?? [])];
  const runs: RecordingRun[] = step.recordings.map((plan) => startRun(plan, onS));
  let charger = startedCharger();
  let currentA = 0;

  const lastSecond = Math.round(step.hours * 3600);
  for (let second = 0; second <= lastSecond; second++) {
    bench.atS = onS + second;
    const isDark = step.mainsOff !== undefined && second >= step.mainsOff.fromH * 3600 && second < step.mainsOff.toH * 3600;
    if (isDark) for (const run of runs) loseMains(run);
    // One that is off, whether or not it may wake, has finished; one that pauses has not.
    const isCharging = scenario.charger.steps[charger.step]?.kind !== "off";
    for (const run of runs) lookIfDue(run, trueLook(bench, currentA), isCharging, bench.random);
    while (visits[0] !== undefined && visits[0].atH * 3600 <= second) {
      const visit = visits.shift();
      if (visit !== undefined) makeVisit(bench, visit, currentA, true);
    }
    if (second === lastSecond) break;
    // A charger without mains forgets its programme and begins again when they return.
    if (isDark) charger = startedCharger();
    const from = { passedAh: battery.passedAh, passedWh: battery.passedWh };
    const charged = isDark ? waitInTheDark(bench) : chargeForASecond(bench, charger);
    currentA = charged.currentA;
    logSecond(stages, charged.doing, second, from, { passedAh: battery.passedAh, passedWh: battery.passedWh });
  }

  const number = bench.connections.length + 1;
  for (const run of runs) {
    bench.recordings.push(recordingTruth(run, number, stages, (atS) => isoOf(bench, atS)));
    const { file, recorder } = run.plan;
    const head = { startMs: bench.startMs, offsetMin: scenario.offsetMin, number: Number(/\d+/.exec(file)?.[0] ?? 1) };
    bench.logs.set(file, writeLog(recorder.dialect, run.state.rows, head));
  }
  bench.connections.push({
    number,
    on: isoOf(bench, onS),
    off: isoOf(bench, bench.atS),
    chargeAh: roundTruth(battery.passedAh - before.passedAh, 5),
    energyWh: roundTruth(battery.passedWh - before.passedWh, 4),
    reactedAh: roundTruth(battery.reactedAh - before.reactedAh, 5),
    gassedAh: roundTruth(battery.gassedAh - before.gassedAh, 5),
    mainsKWh: roundTruth((bench.mainsWh - mainsBeforeWh) / 1000, 5),
    stages: stages.map((stage) => stageTruth(stage, 0)),
  });
  bench.restS = 0;
}

function chargeForASecond(bench: Bench, charger: ChargerState): { currentA: number; doing: Doing } {
  const { scenario, battery } = bench;
  const source = offer(scenario.charger, charger);
  const airC = airTemperature(scenario, bench.startMs, bench.atS);
  const currentA = stepBattery(scenario.battery, battery, source.limitA > 0 ? source : undefined, airC, 1);
  const kind = stageNow(scenario.charger, charger, source, currentA);
  const limitA = kind === "constant-current" ? currentLimit(scenario.charger, charger) : undefined;
  const terminalV = battery.cellV * scenario.battery.cells;
  const outputW = currentA * (terminalV + currentA * scenario.charger.leadOhm);
  bench.mainsWh += (outputW / scenario.charger.efficiency + scenario.charger.standbyW) / 3600;
  advanceCharger(scenario.charger, charger, terminalV, currentA);
  return { currentA, doing: { kind, limitA } };
}

function waitInTheDark(bench: Bench): { currentA: number; doing: Doing } {
  const { scenario, battery } = bench;
  const airC = airTemperature(scenario, bench.startMs, bench.atS);
  const currentA = stepBattery(scenario.battery, battery, undefined, airC, 1);
  return { currentA, doing: { kind: "interrupted", limitA: undefined } };
}

function trueLook(bench: Bench, currentA: number): Look {
  const { battery, scenario } = bench;
  return {
    atS: bench.atS,
    voltageV: battery.cellV * scenario.battery.cells,
    currentA,
    temperatureC: battery.temperatureC,
    passedAh: battery.passedAh,
    passedWh: battery.passedWh,
    passedVh: battery.passedVh,
    passedA2h: battery.passedA2h,
  };
}

function testTruth(bench: Bench, start: BatteryState): TestTruth {
  const { battery, scenario } = bench;
  const { capacityAh, cells, fullDensityAt25C, electrolyteFullG } = scenario.battery;
  return {
    test: scenario.id,
    seed: seedFromName(scenario.id),
    startAt: isoOf(bench, 0),
    battery: {
      capacityAh,
      cells,
      fullDensityAt25C,
      electrolyteFullG,
      startStoredAh: roundTruth(start.storedAh, 5),
      endStoredAh: roundTruth(battery.storedAh, 5),
    },
    chargeAh: roundTruth(battery.passedAh, 5),
    reactedAh: roundTruth(battery.reactedAh, 5),
    gassedAh: roundTruth(battery.gassedAh, 5),
    acidStartG: roundTruth(start.upperAcidG + start.lowerAcidG, 5),
    acidEndG: roundTruth(battery.upperAcidG + battery.lowerAcidG, 5),
    waterStartG: roundTruth(start.upperWaterG + start.lowerWaterG, 5),
    waterEndG: roundTruth(battery.upperWaterG + battery.lowerWaterG, 5),
    connections: bench.connections,
    recordings: bench.recordings,
    visits: bench.visitTruths,
  };
}

function isoOf(bench: Bench, atS: number): string {
  return isoWithOffset(bench.startMs + atS * 1000, bench.scenario.offsetMin);
}

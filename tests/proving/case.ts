/** One case of the proving ground: a behaviour on a battery, seen by a recorder, measured as the tool would and compared. */
import { type EndingFacts, findEnding } from "../../lib/measure/ending.ts";
import { type MeasuredRecording, measureRecording } from "../../lib/measure/recording.ts";
import type { Ender } from "../../lib/nouns/stage.ts";
import { type Random, seededRandom, seedFromName } from "../generator/random.ts";
import type { Behaviour, Given, Setup } from "./behaviours.ts";
import { type Asked, compare, stagesSeen, type Verdict } from "./compare.ts";
import { between, type PlantMaker, type Size } from "./plant.ts";
import { type Charge, runConnection } from "./programme.ts";
import { declared, type ProvingRecorder, type Recorded, rangeFor, record } from "./recorders.ts";

/** A charge together with what led to it; every recorder looks at the same one. */
export type Played = {
  readonly behaviour: Behaviour;
  readonly given: Given;
  readonly setup: Setup;
  readonly charge: Charge;
  readonly name: string;
};

export type CaseResult = {
  readonly behaviour: string;
  readonly recorder: string;
  readonly truth: readonly Asked[];
  readonly recording: MeasuredRecording;
  readonly endedBy: { readonly truth: Ender; readonly found: Ender };
  readonly verdict: Verdict;
};

/** Noon of an invented day. */
const startMs = Date.UTC(2026, 2, 2, 12);

/** Runs a behaviour on a battery drawn for it. The same behaviour, maker and seed give the same charge. */
export function play(behaviour: Behaviour, makePlant: PlantMaker, seed: number): Played {
  const name = `${behaviour.id}/${seed}`;
  const random = seededRandom(seedFromName(name));
  const size = drawSize(behaviour, random);
  const [lowShare, highShare] = behaviour.bulkShare ?? [1 / 12, 1 / 6];
  const given: Given = {
    random,
    size,
    bulkA: size.capacityAh * between(random, lowShare, highShare),
    limitV: size.cells * between(random, 2.38, 2.45),
    floatV: size.cells * between(random, 2.23, 2.28),
    fullA: size.capacityAh * between(random, 1 / 45, 1 / 30),
  };
  const setup = behaviour.build(given);
  const { airC = () => size.airC, maxH = 80 } = setup;
  const charge = runConnection({ ...setup, plant: makePlant(size, random), airC, maxH });
  return { behaviour, given, setup, charge, name };
}

/** Capacities are drawn evenly by ratio, so that small batteries are not rare. */
function drawSize(behaviour: Behaviour, random: Random): Size {
  const drawn: Size = {
    cells: random.uniform() < 0.3 ? 3 : 6,
    capacityAh: 12 * (100 / 12) ** random.uniform(),
    startCharge: between(random, 0.1, 0.5),
    airC: between(random, 12, 28),
  };
  return { ...drawn, ...behaviour.size?.(random) };
}

/** Lets a recorder see a played charge, measures the recording as the tool does, and compares. */
export function proveCase(played: Played, recorder: ProvingRecorder): CaseResult {
  const { given, setup, charge, behaviour } = played;
  const random = seededRandom(seedFromName(`${played.name}/${recorder.id}`));
  const rangeA = rangeFor(1.3 * given.bulkA);
  const lastS = charge.voltagesV.length - 1;
  const cutS = Math.min(lastS, setup.cut?.atS ?? lastS);
  const recorded = record(recorder, charge, { fromS: startFor(recorder, charge, cutS), toS: cutS, rangeA, startMs }, random);
  const recording = measureRecording(
    {
      id: `${recorder.id}.csv`,
      file: `${behaviour.id}/${recorder.id}.csv`,
      sha256: "0".repeat(64),
      bytes: 0,
      connection: "1",
      recorderId: recorder.id,
      recorder: declared(recorder, rangeA),
      capacityAh: given.size.capacityAh,
      cells: given.size.cells,
    },
    {
      samples: recorded.samples,
      counts: { lines: recorded.samples.elapsedS.length + 1, samples: recorded.samples.elapsedS.length, blank: 0, excluded: 0, empty: 0 },
      readAs: [],
      sampleRead: undefined,
    },
  );
  const truth = stagesSeen(charge, recorded);
  const mayEndBy = endings(charge, setup, recorded, truth);
  const found = findEnding(recording, factsOf(charge, setup, recorded)).by;
  return {
    behaviour: behaviour.id,
    recorder: recorder.id,
    truth,
    recording,
    endedBy: { truth: mayEndBy[0] ?? "unknown", found },
    verdict: compare(truth, recording.stages, recorded.samples.elapsedS, mayEndBy, found),
  };
}

/** A recorder of a few hours is started by hand where something is about to happen: two hours before the first stage ends. */
function startFor(recorder: ProvingRecorder, charge: Charge, cutS: number): number {
  if (recorder.stop.afterH === undefined || recorder.stop.afterH * 3600 >= cutS) return 0;
  return Math.max(0, Math.min((charge.stages[0]?.endS ?? 0) - 7200, cutS - 3600));
}

/** Every ending that would be right; the first is the truth. */
function endings(charge: Charge, setup: Setup, recorded: Recorded, truth: readonly Asked[]): Ender[] {
  if (recorded.toS > charge.clampsOffS) return ["person"];
  if (charge.finishedS !== undefined && recorded.toS > charge.finishedS) return ["charger"];
  const others: Ender[] = truth.at(-1)?.kind === "on-off-holding" ? ["charger"] : [];
  if (recorded.stoppedByRule) return ["recorder", ...others];
  const by = setup.cut?.by ?? "person";
  return recorded.fellSilent ? ["recorder", by, ...others] : [by, ...others];
}

/** The visitor who takes the clamps off reads the clamp meter within this time before. A recording that ends in it has no later reading. */
const visitS = 1800;

function factsOf(charge: Charge, setup: Setup, recorded: Recorded): EndingFacts {
  const { noted } = setup;
  const offS = noted?.offAtS ?? charge.clampsOffS;
  // A clamp meter shows tenths of an ampere; less than that the visitor does not see.
  const lastA = charge.currentsA[charge.clampsOffS - 1] ?? 0;
  const seesCurrent = noted?.sawCurrent === true && recorded.toS < charge.clampsOffS - visitS && lastA >= 0.1;
  return {
    offMs: startMs + (offS - recorded.fromS) * 1000,
    seen: noted?.seen,
    seenRecording: undefined,
    laterCurrentA: seesCurrent ? Number(lastA.toFixed(1)) : undefined,
    laterConnected: false,
    followed: false,
  };
}

/** Names what shows no current: a rest, an interruption, a voltage held with too little current to see, or no battery at all. */
import { quantile } from "../../signal/order-statistics.ts";
import { trapezoid } from "../../signal/trapezoid.ts";
import { emptyLeadsVPerCell, highestRestVPerCell, isBelow, longRestVPerCell } from "./cell-levels.ts";
import { fallsToHold, isFloatLevel, kindOfNextHold } from "./floats.ts";
import { durationS, near, sameVoltageShare } from "./merging.ts";
import { endsOf } from "./pieces.ts";
import { confidenceOf, type Naming, type Scene } from "./scene.ts";

/** A voltage that moves less than this share over a stretch without current is held, not relaxing. */
const flatShare = 0.0015;
/** So long without current is a long rest, s. */
const longRestS = 5400;
/** After so long, s, little surface charge is left, whatever the charge before (6 h: the longest of the usual waits; common practice). */
const settledS = 21_600;

/** The caution stands where the stage is read, since a table of kinds is seldom read beside it. */
const reversedBecause =
  "the voltage is the wrong way round (danger: on the wrong posts a charger can spark and burn; mains off before a hand goes to the clamps)";

/** What a recorder reads when no battery, or a battery the wrong way round, is at its leads; undefined where one is. */
export function nameWithoutBattery({ segment, battery }: Scene): Naming | undefined {
  const { regime, ends } = segment;
  const emptyV = emptyLeadsVPerCell * battery.cells;
  if (ends.meanV < -emptyV) return { kind: "reversed", sure: "clear", because: reversedBecause };
  if (regime === "idle" && ends.meanV < emptyV)
    return { kind: "no-battery", sure: "clear", because: `no current, and a voltage below ${emptyV.toFixed(1)} V` };
  return undefined;
}

/** Names a segment without current that can be told from none. */
export function nameIdle(scene: Scene): Naming {
  const { segment, before, later, battery, story } = scene;
  const { ends } = segment;
  const isHeld = staysUp(scene) || (near(ends.startV, ends.endV, flatShare) && near(ends.meanV, story.reachedV, sameVoltageShare));
  if (fallsToHold(scene))
    return {
      kind: kindOfNextHold(scene),
      sure: "likely",
      because: "no current until the battery has come down to the lower voltage",
      leadsIn: true,
    };
  if (isHeld)
    return {
      kind: isBelow(ends.endV, story.reachedV) && isFloatLevel(segment, later, battery) ? "float" : "constant-voltage",
      sure: "likely",
      because: "the voltage is held, with a current too small to tell from none",
    };
  const isBesideDischarge = before.at(-1)?.regime === "discharge" || later[0]?.regime === "discharge";
  if (before.length > 0 && !isBesideDischarge && goesOn(scene))
    return { kind: "interrupted", sure: "likely", because: "no current for a while in the middle of a charge that then goes on" };
  return { kind: "rest", sure: confidenceOf(scene), because: "no current that can be told from none" };
}

/**
 * Whether the voltage stays where no battery rests, although no current can be told from none: then something holds it.
 *
 * A battery left alone sinks below 2.20 V a cell within an hour or so, even after a long charge (surface charge; common practice), save
 * after one to very high voltages, and then it still sinks, for some hours. What is above that later is held, even if it sinks, as a
 * float does while the day grows warm. Over a shorter time it must stand still, above 2.22 V.
 */
function staysUp(scene: Scene): boolean {
  const { segment, series, battery } = scene;
  const half = segment.from + Math.floor((segment.to - segment.from) / 2);
  const laterEnds = endsOf(series.voltagesV, series.currentsA, half, segment.to);
  const lowestV = Math.min(laterEnds.startV, laterEnds.endV, laterEnds.meanV);
  const stillSinks = isBelow(laterEnds.endV, laterEnds.startV);
  const seconds = durationS(segment, series);
  if (seconds >= settledS) return lowestAfter(scene, settledS) / battery.cells > longRestVPerCell;
  if (seconds >= longRestS) return !stillSinks && lowestV / battery.cells > longRestVPerCell;
  return near(laterEnds.startV, laterEnds.endV, flatShare) && lowestV / battery.cells > highestRestVPerCell;
}

/** The lowest voltage so many seconds or more into a segment, by the fifth percentile, so that teeth do not count. */
function lowestAfter({ segment, series }: Scene, seconds: number): number {
  const fromS = (series.timesS[segment.from] as number) + seconds;
  const from = series.timesS.subarray(segment.from, segment.to).findIndex((atS) => atS >= fromS);
  return from < 0 ? Number.NaN : quantile(series.voltagesV.subarray(segment.from + from, segment.to), 0.05);
}

/**
 * Whether the charge goes on after a pause: not only the little that keeps a full battery full.
 *
 * Where the capacity is known, the mean current over the pause and the charge after it decides: 4 mA for each Ah is what IEC 62485-2
 * reckons with for a battery gassing at boost voltage, so more than that goes into the plates. Else it goes on unless it had finished.
 */
function goesOn({ segment, later, series, battery, story }: Scene): boolean {
  const end = later.findIndex((other) => other.regime === "idle");
  const charging = end < 0 ? later : later.slice(0, end);
  const first = charging[0];
  const last = charging.at(-1);
  if (first === undefined || last === undefined) return false;
  if (battery.capacityAh === undefined) return !story.isFinished;
  const chargeAs = trapezoid(series.timesS, series.currentsA, first.from, last.to);
  const overS = (series.timesS[last.to - 1] as number) - (series.timesS[segment.from] as number);
  return chargeAs / overS > battery.keepingFullA;
}

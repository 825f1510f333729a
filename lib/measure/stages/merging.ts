/** Joins pieces into the stretches that a person would see: alike neighbours, splinters, still stretches, rounded corners. */
import { currentHeldBelow, elasticityOf, endsOf, type Regime, regimeOf, type Scales, softlyHeldAbove, stillShareV } from "./pieces.ts";
import type { Segment } from "./segments.ts";
import type { Series } from "./series.ts";

/** A battery at rest does not jump by more than this from one value to the next. */
const idleJumpShareV = 0.03;
/** Two stretches at held currents (voltages) within this share of each other are one stage. */
export const sameCurrentShare = 0.06;
export const sameVoltageShare = 0.006;
/** What is unsettled before a limit is shorter than this share of the charge before it. */
const unsettledShare = 0.25;
/** A current that falls to less than one over this from one value to the next has been lowered. */
export const jumpShareA = 1.15;
/** Less than this, between two stages, is the change itself. */
const splinterS = 30;
const splinterIntervals = 3.5;
/** A falling stretch between a held current and a held voltage is a rounded corner where it is this much shorter than the former. */
const kneeShare = 0.5;

/** Joins the pieces of a series. */
export function mergeSegments(segments: readonly Segment[], series: Series): Segment[] {
  const whole = mergeAlike(absorbSplinters(mergeAlike(segments, series), series), series);
  const settled = mergeAlike(reconsider(mergeAlike(settleSteady(whole), series)), series);
  return mergeAlike(joinRuns(dissolveCorners(settled, series), series), series);
}

/** Whether two values lie within a share of the larger of them. */
export function near(a: number, b: number, share: number): boolean {
  return Math.abs(a - b) <= share * Math.max(Math.abs(a), Math.abs(b));
}

/** Joins neighbours that do the same thing at the same level. */
function mergeAlike(segments: readonly Segment[], series: Series): Segment[] {
  const merged: Segment[] = [];
  for (const segment of segments) {
    const last = merged.at(-1);
    if (last !== undefined && continues(last, segment)) merged[merged.length - 1] = join(last, segment, last.regime, series);
    else merged.push(segment);
  }
  return merged;
}

function continues(a: Segment, b: Segment): boolean {
  if (a.regime !== b.regime) return false;
  switch (a.regime) {
    case "I":
      return near(a.ends.endA, b.ends.startA, sameCurrentShare) || near(a.ends.meanA, b.ends.meanA, sameCurrentShare);
    case "U":
      return near(a.ends.endV, b.ends.startV, sameVoltageShare) && near(a.ends.meanV, b.ends.meanV, 2 * sameVoltageShare);
    case "idle":
      // A held voltage with next to no current is no rest: the voltage jumps where the charger lets go or takes up again.
      return near(a.ends.endV, b.ends.startV, idleJumpShareV) && !fallsAway(a, b);
    case "steady":
      return near(a.ends.meanA, b.ends.meanA, sameCurrentShare) && near(a.ends.meanV, b.ends.meanV, sameVoltageShare);
    default:
      return true;
  }
}

/** Whether a voltage that had stood still falls: a battery at rest comes down slower and slower, so something had held it. */
function fallsAway(a: Segment, b: Segment): boolean {
  return near(a.ends.startV, a.ends.endV, stillShareV) && b.ends.endV < a.ends.endV * (1 - 2 * sameVoltageShare);
}

function join(a: Segment, b: Segment, regime: Regime, series: Series): Segment {
  return { regime, from: a.from, to: b.to, ends: endsOf(series.voltagesV, series.currentsA, a.from, b.to) };
}

/** A stretch where nothing moves continues what its neighbour holds; alone it stays steady. */
function settleSteady(segments: readonly Segment[]): Segment[] {
  const settled: Segment[] = [];
  segments.forEach((segment, index) => {
    if (segment.regime !== "steady") {
      settled.push(segment);
      return;
    }
    const neighbours = [settled.at(-1), segments[index + 1]].filter((other) => other !== undefined);
    // Where the current jumps, the battery is not what sets it, however still the voltage stands.
    const before = settled.at(-1);
    const hasJumped = before?.regime === "U" && before.ends.endA > jumpShareA * segment.ends.startA;
    const holdsVoltage =
      !hasJumped &&
      neighbours.some(({ regime, ends }) => regime === "U" && touches(ends.startV, ends.endV, segment.ends.meanV, sameVoltageShare));
    const holdsCurrent = neighbours.some(
      ({ regime, ends }) => regime === "I" && touches(ends.startA, ends.endA, segment.ends.meanA, sameCurrentShare),
    );
    settled.push({ ...segment, regime: holdsVoltage ? "U" : holdsCurrent ? "I" : "steady" });
  });
  return settled;
}

/** A voltage that crept up piece by piece may not have been held after all, now that the pieces are one. */
function reconsider(segments: readonly Segment[]): Segment[] {
  return segments.map((segment, index) => {
    if (segment.regime !== "U") return segment;
    const before = segments[index - 1];
    // An unregulated charger nears its end with both nearly still: what creeps on, or back, where a falling current left off is no limit.
    const creeps =
      before?.regime === "W" &&
      near(before.ends.endV, segment.ends.startV, sameVoltageShare) &&
      elasticityOf(segment.ends) < softlyHeldAbove;
    return creeps || regimeOf(segment.ends, quietScales) === "W" ? { ...segment, regime: "W" } : segment;
  });
}

/** Scales for stretches long enough that noise does not matter. */
const quietScales: Scales = { noiseV: 0, noiseA: 0, idleA: 0, topA: 0 };

function touches(start: number, end: number, value: number, share: number): boolean {
  return near(start, value, share) || near(end, value, share);
}

/**
 * Gives what is unsettled just before a limit to the stretch before it: a load that comes and goes while the limit is neared makes
 * current and voltage swing, and the search sees pieces of every kind there. Where the limit was reached is looked for afterwards.
 *
 * Only what is short against the charge so far, and lies before a voltage held higher than it, is such a corner.
 */
function dissolveCorners(segments: readonly Segment[], series: Series): Segment[] {
  const dissolved: Segment[] = [];
  for (const segment of segments) {
    dissolved.push(segment);
    if (segment.regime !== "U") continue;
    const held = dissolved.findLastIndex((other) => other.regime === "I");
    const tail = dissolved.slice(held + 1, -1);
    const before = dissolved[held];
    if (before === undefined || tail.length === 0 || !tail.every((other) => isUnsettled(other, segment))) continue;
    const run = dissolved.slice(0, held + 1);
    const start = run.findLastIndex((other) => other.regime !== "I" && other.regime !== "W") + 1;
    const length = (part: readonly Segment[]): number => part.reduce((sum, other) => sum + durationS(other, series), 0);
    if (length(tail) > unsettledShare * length(run.slice(start)) || segment.ends.meanV < before.ends.endV) continue;
    const to = (tail.at(-1) as Segment).to;
    dissolved.splice(held, tail.length + 2, { ...before, to, remark: "unsettled as it neared the voltage limit" }, segment);
  }
  return dissolved;
}

function isUnsettled(segment: Segment, limit: Segment): boolean {
  if (segment.regime === "U" || segment.regime === "steady") return segment.ends.meanV < limit.ends.meanV * (1 - sameVoltageShare);
  return segment.regime === "W" || segment.regime === "pulses" || segment.regime === "unexplained";
}

/**
 * Takes a run of held and falling currents as one, where each goes on where the one before left off: chargers droop as the battery's
 * voltage climbs, and an unregulated one falls faster at some states of charge than at others. What the whole run does decides.
 *
 * A last, short, falling stretch before a held voltage is the corner rounded off, and does not count.
 */
function joinRuns(segments: readonly Segment[], series: Series): Segment[] {
  const joined: Segment[] = [];
  let index = 0;
  while (index < segments.length) {
    let end = index + 1;
    while (end < segments.length && goesOn(segments[end - 1] as Segment, segments[end] as Segment)) end++;
    const run = segments.slice(index, end);
    joined.push(...(run.length > 1 ? [joinRun(run, segments[end], series)] : run));
    index = end;
  }
  return joined;
}

function goesOn(a: Segment, b: Segment): boolean {
  const isRun = (segment: Segment): boolean => segment.regime === "I" || segment.regime === "W";
  return isRun(a) && isRun(b) && near(a.ends.endA, b.ends.startA, sameCurrentShare);
}

function joinRun(run: readonly Segment[], next: Segment | undefined, series: Series): Segment {
  const first = run[0] as Segment;
  const last = run.at(-1) as Segment;
  const core = next?.regime === "U" ? withoutCorner(run, series) : run;
  const coreEnds = endsOf(series.voltagesV, series.currentsA, first.from, (core.at(-1) as Segment).to);
  const isHeld = elasticityOf(coreEnds) < currentHeldBelow;
  const hasCorner = core.length < run.length;
  return {
    regime: isHeld ? "I" : "W",
    from: first.from,
    to: last.to,
    ends: isHeld ? coreEnds : endsOf(series.voltagesV, series.currentsA, first.from, last.to),
    ...(isHeld && hasCorner ? { remark: "the corner to the voltage limit is rounded" } : {}),
  };
}

/** A run less the falling stretches at its end, where they are short against the rest. */
function withoutCorner(run: readonly Segment[], series: Series): readonly Segment[] {
  const corner = run.findLastIndex((segment) => segment.regime === "I") + 1;
  if (corner === 0 || corner === run.length) return run;
  const [core, tail] = [run.slice(0, corner), run.slice(corner)];
  const length = (part: readonly Segment[]): number => part.reduce((sum, segment) => sum + durationS(segment, series), 0);
  return length(tail) < kneeShare * length(core) ? core : run;
}

/** First to last place, s. */
export function durationS(segment: { from: number; to: number }, series: Series): number {
  return (series.timesS[segment.to - 1] as number) - (series.timesS[segment.from] as number);
}

/** What happens in a moment and still is a stage. */
const eventRegimes: ReadonlySet<Regime> = new Set(["idle", "discharge", "pulses", "on-off"]);

/** A stretch of a few samples between two stages is the change itself, not a stage; it goes to the stage that follows. */
function absorbSplinters(segments: readonly Segment[], series: Series): Segment[] {
  const queue = [...segments];
  const kept: Segment[] = [];
  while (queue.length > 0) {
    const segment = queue.shift() as Segment;
    const next = queue[0];
    const isEvent = eventRegimes.has(segment.regime);
    const untilS = (series.timesS[segment.to] ?? series.timesS.at(-1)) as number;
    const isSplinter = untilS - (series.timesS[segment.from] as number) < Math.max(splinterS, splinterIntervals * series.stepS);
    if (!isSplinter || isEvent || next === undefined) {
      kept.push(segment);
      continue;
    }
    const last = kept.at(-1);
    if (last !== undefined && continues(last, next)) {
      kept[kept.length - 1] = join(last, next, last.regime, series);
      queue.shift();
    } else queue[0] = { ...next, from: segment.from };
  }
  return kept;
}

/** The highest mean of a channel held for a while; stages and figures ask for the same ones, so each is worked out once for a trace. */
import { highestSlidingMean } from "../signal/sliding-mean.ts";
import type { Trace } from "./trace.ts";

type Held = ReturnType<typeof highestSlidingMean>;

const known = new WeakMap<Trace, Map<string, Held>>();

/**
 * The highest time-weighted mean over any stretch without a gap that is at least a length.
 *
 * @param windowS  the length, s
 * @returns the mean and its samples; undefined where no stretch is that long
 */
export function highestHeld(trace: Trace, channel: "voltage" | "current", windowS: number): Held {
  const ofTrace = known.get(trace) ?? new Map<string, Held>();
  known.set(trace, ofTrace);
  const key = `${channel} ${windowS}`;
  if (!ofTrace.has(key)) {
    const values = channel === "voltage" ? trace.voltagesV : trace.currentsA;
    ofTrace.set(key, highestSlidingMean(trace.elapsedS, values, trace.stretches, windowS));
  }
  return ofTrace.get(key);
}

/** How long the charger was connected within a span of time: for certain, and at most. */
import type { MeasuredConnection, TestContext } from "./test-context.ts";

export type HoursBounds = { readonly low: number; readonly high: number };

/**
 * Hours of one connection within a span. Of a connection whose end nobody saw, those to the last sign of it are certain, and those to the
 * next connection, or to the end of the span, are possible.
 *
 * @param fromMs, toMs  the span, ms since 1970
 * @returns undefined where nobody noted when the connection began
 */
export function connectedWithin(
  context: TestContext,
  connection: MeasuredConnection,
  fromMs: number,
  toMs: number,
): HoursBounds | undefined {
  const { onMs, offMs, lastKnownMs } = connection;
  if (onMs === undefined) return undefined;
  const nextOnMs = context.connections[connection.number]?.onMs ?? Number.POSITIVE_INFINITY;
  const hoursUntil = (endMs: number): number => Math.max(0, Math.min(toMs, endMs) - Math.max(fromMs, onMs)) / 3_600_000;
  return { low: hoursUntil(offMs ?? lastKnownMs ?? onMs), high: hoursUntil(offMs ?? nextOnMs) };
}

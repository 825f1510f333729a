/** What may have flowed after a connection's last row, while the charger was still on. */
import { isOffBattery } from "../nouns/stage.ts";
import type { MeasuredConnection } from "./test-context.ts";

export type AfterLastRow = {
  /** The most that can have flowed, A: at a held voltage the current only falls, so the last current is the most. */
  readonly mostA: number;
  /** Whether the recording ends in a pause, so that the current before it is taken: a charger may take up again what it gave. */
  readonly inPause: boolean;
};

/** @returns undefined where nothing was recorded, no current, or no stages, and where the recorder was off the battery at its end: its 0 A is no current seen */
export function currentAfterLastRow(connection: Pick<MeasuredConnection, "recordings">): AfterLastRow | undefined {
  const last = connection.recordings.at(-1);
  const stage = last?.stages.at(-1);
  const lastA = stage?.currentEndA;
  if (last === undefined || !last.trace.hasCurrent || stage === undefined || lastA === null || lastA === undefined) return undefined;
  if (isOffBattery(stage)) return undefined;
  const inPause = stage.kind === "rest" || stage.kind === "interrupted" || stage.kind === "on-off-holding";
  const before = last.stages.findLast((candidate) => candidate.kind !== "rest" && candidate.kind !== "interrupted");
  return { mostA: Math.max(0, inPause ? (before?.currentMeanA ?? lastA) : lastA), inPause };
}

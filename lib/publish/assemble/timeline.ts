/** The evidence strip of a test: what was seen and what was not, from the first event to the last. */
import { partsOnBattery } from "../../measure/integrals.ts";
import type { TestContext } from "../../measure/test-context.ts";
import type { Finding } from "../../nouns/finding.ts";
import { formatInstant } from "../../read/clock.ts";
import type { Timeline } from "../results.ts";

const hourMs = 3_600_000;

/** The strip's first event, ms; undefined where nothing has a time. */
export function stripStartMs(context: TestContext): number | undefined {
  const events = eventsOf(context);
  return events.length === 0 ? undefined : Math.min(...events);
}

function eventsOf(context: TestContext): number[] {
  return [
    ...context.readings.map((reading) => reading.atMs),
    ...context.connections.flatMap((connection) => [
      connection.onMs,
      connection.offMs,
      connection.lastKnownMs,
      ...connection.recordings.flatMap((recording) =>
        recording.startMs === undefined ? [] : [recording.startMs, recording.startMs + recording.trace.spanS * 1000],
      ),
    ]),
  ].filter((ms) => ms !== undefined && Number.isFinite(ms)) as number[];
}

/** Makes the strip. Where no event has a time it is empty, and says so. */
export function makeTimeline(context: TestContext, findings: readonly Finding[]): Timeline {
  const events = eventsOf(context);
  const { zone } = context.test;
  if (events.length === 0)
    return {
      start: null,
      end: null,
      spanH: 0,
      connections: [],
      readings: [],
      findings: [],
      words: "No event of this test has a time, so nothing can be drawn.",
    };
  const startMs = Math.min(...events);
  const endMs = Math.max(...events);
  const hours = (ms: number): number => (ms - startMs) / hourMs;
  const connections = context.connections.flatMap((connection) => {
    if (connection.onMs === undefined) return [];
    const until = connection.offMs ?? connection.lastKnownMs ?? connection.onMs;
    return [
      {
        id: connection.id,
        startH: hours(connection.onMs),
        endH: hours(Math.max(until, connection.onMs)),
        endKnown: connection.offMs !== undefined,
        recorded: connection.recordings.flatMap((recording) => {
          if (recording.startMs === undefined) return [];
          const { startMs: recordingStartMs, id } = recording;
          return partsOnBattery(recording).map(({ fromS, toS }) => ({
            startH: hours(recordingStartMs + fromS * 1000),
            endH: hours(recordingStartMs + toS * 1000),
            recording: id,
          }));
        }),
        endedBy: connection.ending.by,
      },
    ];
  });
  return {
    start: formatInstant(startMs, zone),
    end: formatInstant(endMs, zone),
    spanH: hours(endMs),
    connections,
    readings: context.readings.map((reading) => ({
      number: reading.number,
      atH: hours(reading.atMs),
      label:
        reading.density === undefined ? `visit ${reading.number}` : `visit ${reading.number}: ${reading.density.meanAt25C.toFixed(3)} kg/l`,
    })),
    findings: findings.map((finding) => ({ id: finding.id, atH: null, verdict: finding.verdict, weight: finding.weight })),
    words: tell(context, connections, hours(endMs)),
  };
}

function tell(context: TestContext, connections: Timeline["connections"], spanH: number): string {
  const total = connections.reduce((sum, connection) => sum + connection.endH - connection.startH, 0);
  const recorded = connections.reduce(
    (sum, connection) => sum + connection.recorded.reduce((inner, span) => inner + span.endH - span.startH, 0),
    0,
  );
  const unknownEnds = connections.filter((connection) => !connection.endKnown).length;
  const count = (number: number, one: string, many: string): string => (number === 1 ? `one ${one}` : `${number} ${many}`);
  const parts = [
    `Over ${spanH < 72 ? `${spanH.toFixed(0)} h` : `${(spanH / 24).toFixed(1)} days`}: ${count(connections.length, "connection", "connections")} of ${total.toFixed(0)} h in all`,
    total > 0
      ? `${recorded.toFixed(0)} h of it recorded (${Math.round((100 * recorded) / total)} %), ${Math.max(0, total - recorded).toFixed(0)} h not`
      : "none of it recorded",
    `${count(context.readings.length, "visit", "visits")} with readings`,
  ];
  const open = unknownEnds === 0 ? "" : ` The end of ${count(unknownEnds, "connection", "connections")} was not seen.`;
  const undrawn = context.connections.length - connections.length;
  const lost =
    undrawn === 0 ? "" : ` When ${count(undrawn, "further connection", "further connections")} began is not known, so it is not drawn.`;
  return `${parts.join("; ")}.${open}${lost}`;
}

import type { Finding, LogFacts } from "./facts.ts";

/** A recorder may be started a little before the clamps are on. */
const earlyMs = 15 * 60_000;
/** People note the ends of a connection to the nearest minutes. */
const slackMs = 5 * 60_000;

/** An instant to the minute, in UTC. */
const utcMinute = (ms: number): string => `${new Date(ms).toISOString().slice(0, 16).replace("T", " ")} UTC`;

/** The log begins within its connection; where it does not, but a whole number of hours would mend it, the zone is suspected. */
export function findClockOutside({ samples, onMs, offMs }: LogFacts): Finding[] {
  if (samples.startMs === undefined || onMs === undefined) return [];
  const endMs = samples.startMs + ((samples.elapsedS.at(-1) ?? 0) - (samples.elapsedS[0] ?? 0)) * 1000;
  const hours = offMs === undefined ? undefined : wholeHours(samples.startMs, endMs, onMs, offMs);
  const startsEarly = samples.startMs < onMs - earlyMs;
  const startsAfterOff = offMs !== undefined && samples.startMs > offMs;
  // A log may run on after the clamps are off; where whole hours would bring all of it inside, that is the likelier reason.
  const endsLate = offMs !== undefined && endMs > offMs + earlyMs && hours !== undefined;
  if (!startsEarly && !startsAfterOff && !endsLate) return [];
  const off = offMs === undefined ? "" : `, and before its off, ${utcMinute(offMs)}`;
  const zone =
    hours === undefined
      ? ""
      : `; set ${Math.abs(hours)} h ${hours < 0 ? "back" : "forward"} the log would lie within the connection, as it does when a zone or summer time is wrong`;
  return [
    {
      level: "doubt",
      found:
        startsEarly || startsAfterOff
          ? `a first row at ${utcMinute(samples.startMs)}`
          : `rows from ${utcMinute(samples.startMs)} to ${utcMinute(endMs)}`,
      expected:
        startsEarly || startsAfterOff
          ? `a start after the connection's on, ${utcMinute(onMs)}${off}`
          : `rows within the connection, ${utcMinute(onMs)} to ${utcMinute(offMs ?? 0)}`,
      mend: `check the recorder's clock and the test's zone, or the times of the connection${zone}`,
    },
  ];
}

/** The fewest whole hours that bring the log into its connection; undefined where none of a day's do. */
function wholeHours(startMs: number, endMs: number, onMs: number, offMs: number): number | undefined {
  for (let size = 1; size <= 14; size++)
    for (const hours of [-size, size]) {
      const moved = hours * 3_600_000;
      if (startMs + moved >= onMs - slackMs && endMs + moved <= offMs + slackMs) return hours;
    }
  return undefined;
}

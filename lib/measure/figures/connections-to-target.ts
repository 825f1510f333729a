import { type FigureDefinition, notMeasured } from "../define.ts";
import { findTargetOutcome, type MixedPoint } from "../growth.ts";
import { isSealed, type TestContext } from "../test-context.ts";

export const connectionsToTarget: FigureDefinition<TestContext> = {
  id: "connections-to-target",
  label: "Connections to target density",
  unit: "",
  version: 4,
  explain:
    "How many connections had begun when the target density was first read or, where the visits show the test's own stop rule, when it was met. A visit only says 'by now': the interval starts at the first connection after the visit before. Acid is read as found, at the top of the cells; a target met only after mixing by hand does not count. It is the owner's effort, not the charger's time. Not reached, it is projected with the hours, in connections as long as those seen, and open above where they are.",
  formula: null,
  source:
    "Our definition: no standard defines it. Stop rule: three equal readings 15 min apart after IEC 60095-1 (from memory), one hour in other practice, or the test's own.",
  checkedBy: ["Small invented test records, counted by hand"],
  compute: (context) => {
    if (isSealed(context.battery)) return notMeasured("not applicable", "the battery is sealed, so its density cannot be read");
    const outcome = findTargetOutcome(context);
    switch (outcome.kind) {
      case "no target":
        return notMeasured("not stated", outcome.why, [context.recordEvidence]);
      case "no density":
        return notMeasured("not measured", outcome.why, [context.recordEvidence]);
      case "unplaced":
        return notMeasured("cannot tell", outcome.why, [context.recordEvidence]);
      case "reached":
        return {
          value: outcome.at.connections,
          interval: { low: Math.min(outcome.at.connections, (outcome.before?.connections ?? 0) + 1), high: outcome.at.connections },
          evidence: outcome.at.density.evidence,
          doubts: [outcome.rule.words, ...outcome.doubts],
        };
      case "unsettled":
        return notMeasured(
          "cannot tell",
          `the target was read at visit ${outcome.at.reading.number}, but ${outcome.why}`,
          outcome.at.density.evidence,
        );
      case "projected":
        if (outcome.connections === null)
          return notMeasured(
            "not reached",
            `not reached in ${context.connections.length} connections; hours to target are projected${afterMixing(outcome)}`,
            [context.recordEvidence],
          );
        return {
          value: outcome.connections.value,
          interval: outcome.connections,
          basis: "projected",
          evidence: context.readings.flatMap((reading) => reading.density?.evidence.slice(0, 1) ?? []),
          doubts: [
            `projected, not seen: not reached in ${context.connections.length} connections; further ones are taken to last as long as those seen`,
            ...(afterMixing(outcome) === "" ? [] : [afterMixing(outcome).replace(/^; /, "")]),
          ],
        };
      case "not reachable":
        return notMeasured("not reached", `not reachable as it goes: ${outcome.why}${afterMixing(outcome)}`, [context.recordEvidence]);
      case "cannot tell":
        return notMeasured(
          "not reached",
          `not reached in ${context.connections.length} connections, and ${outcome.why}${afterMixing(outcome)}`,
          [context.recordEvidence],
        );
    }
  },
};

/** What mixing by hand brought to light, where it did: charge had gone in, and lay at the bottom of the cells. */
export function afterMixing({ mixed }: { readonly mixed: MixedPoint | undefined }): string {
  if (mixed === undefined) return "";
  const read = `visit ${mixed.reading.number} read ${mixed.density.meanAt25C.toFixed(3)} kg/l`;
  const connections = mixed.connections === 1 ? "one connection" : `${mixed.connections} connections`;
  return mixed.isAtTarget
    ? `; only once the acid was mixed by hand ${read}, at the target, after ${connections} and ${mixed.hours.toFixed(0)} h connected`
    : `; once the acid was mixed by hand ${read}`;
}

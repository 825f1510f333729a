import { type FigureDefinition, notMeasured } from "../define.ts";
import { findTargetOutcome } from "../growth.ts";
import { isSealed, type TestContext } from "../test-context.ts";

export const connectionsToTarget: FigureDefinition<TestContext> = {
  id: "connections-to-target",
  label: "Connections to target density",
  unit: "",
  version: 1,
  explain:
    "How many connections had begun when the target density was first read. A visit only says 'by now': the interval starts at the first connection after the visit before. It is the owner's effort, not the charger's time.",
  formula: null,
  source: "Our definition: no standard defines it.",
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
          doubts: outcome.doubts,
        };
      case "projected":
        return notMeasured("not reached", `not reached in ${context.connections.length} connections; hours to target are projected`, [
          context.recordEvidence,
        ]);
      case "not reachable":
        return notMeasured("not reached", `not reachable as it goes: ${outcome.why}`, [context.recordEvidence]);
      case "cannot tell":
        return notMeasured("not reached", `not reached in ${context.connections.length} connections, and ${outcome.why}`, [
          context.recordEvidence,
        ]);
    }
  },
};

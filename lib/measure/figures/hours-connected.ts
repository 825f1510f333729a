import { type FigureDefinition, notMeasured } from "../define.ts";
import type { TestContext } from "../test-context.ts";

export const hoursConnected: FigureDefinition<TestContext> = {
  id: "hours-connected",
  label: "Hours connected in all",
  unit: "h",
  version: 1,
  explain: "All connections together. Where nobody noted an end, only the time known to be connected counts, and there is no upper end.",
  formula: "Σ (t_off − t_on)",
  source: "Definition.",
  checkedBy: ["Small invented test records"],
  compute: (context) => {
    const unknown = context.connections.filter((connection) => connection.offMs === undefined);
    const hours = context.connections.map((connection) =>
      connection.onMs === undefined
        ? Number.NaN
        : ((connection.offMs ?? connection.lastKnownMs ?? connection.onMs) - connection.onMs) / 3_600_000,
    );
    const total = hours.reduce((sum, hour) => sum + hour, 0);
    if (Number.isNaN(total)) return notMeasured("not recorded", "nobody noted when a connection began", [context.recordEvidence]);
    return {
      value: total,
      evidence: [context.recordEvidence],
      doubts: unknown.map(
        (connection) => `nobody noted when connection ${connection.number} ended; only the time known to be connected is counted`,
      ),
    };
  },
};

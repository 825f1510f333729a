import type { FigureDefinition } from "../define.ts";
import type { TestContext } from "../test-context.ts";

export const connectionsMade: FigureDefinition<TestContext> = {
  id: "connections-made",
  label: "Connections made",
  unit: "",
  version: 1,
  explain: "How often the charger was connected in this test.",
  formula: null,
  source: "Definition.",
  checkedBy: ["Small invented test records"],
  compute: (context) => {
    const count = context.connections.length;
    return { value: count, interval: { low: count, high: count }, evidence: [context.recordEvidence] };
  },
};

import type { FindingDefinition } from "../define-finding.ts";

/** Spread at which vehicle service manuals begin to reject a battery, kg/l. */
const rejectSpread = 0.04;

export const cellSpread: FindingDefinition = {
  id: "cell-spread",
  subject: "Is a cell weak?",
  explain: "A cell that lags behind its neighbours limits the battery, and makes any charger look weak.",
  source: "Vehicle service manuals reject at 0.040 to 0.050 (common practice).",
  checkedBy: ["Small invented test records"],
  judge(context) {
    const visit = context.readings.findLast((reading) => (reading.density?.cells.length ?? 0) > 1);
    const cells = visit?.density?.cells ?? [];
    if (visit === undefined) return undefined;
    const lowest = cells.reduce((a, b) => (b.at25C < a.at25C ? b : a));
    const highest = cells.reduce((a, b) => (b.at25C > a.at25C ? b : a));
    const spread = highest.at25C - lowest.at25C;
    if (spread < rejectSpread) return undefined;
    return {
      verdict: "a cell lags",
      weight: "caution",
      sentence: `Cell ${lowest.cell} read ${spread.toFixed(3)} kg/l below cell ${highest.cell} at the last visit: the battery itself may be at fault.`,
      why: [`cell ${lowest.cell} ${lowest.at25C.toFixed(3)}, cell ${highest.cell} ${highest.at25C.toFixed(3)} kg/l at 25 °C`],
      wouldSettle: "the same test on another battery",
      figures: [`reading/${visit.number}#density-spread`],
      doubts: [],
    };
  },
};

import { waterElectrolysedG } from "../../electrochem/faraday.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { findHoldingCurrent } from "../holding-current.ts";
import { isSealed, type TestContext } from "../test-context.ts";

export const waterReserveDays: FigureDefinition<TestContext> = {
  id: "water-reserve-days",
  label: "Days until the water reserve is gone, at least",
  unit: "d",
  version: 1,
  explain:
    "The water that one cell may lose before its plates fall dry, as the battery's record states it, over the most that the current held at the end can cost. That current holds the make-up for self-discharge too, so the reserve lasts at least so long, at that voltage and that temperature: some 12 K warmer or 0.06 V a cell higher halves it. The interval is that of this lower bound.",
  formula: "t = reserve / (0.336 g/Ah · I_held · 24 h/d)",
  source: "Faraday's law; growth of gassing with voltage and warmth after Schiffer et al. 2007.",
  checkedBy: ["W005: 0.336087 g an ampere-hour and cell"],
  compute: (context) => {
    if (isSealed(context.battery))
      return notMeasured("not applicable", "a sealed battery cannot be topped up, so it has no reserve to use");
    const reserveG = context.battery.waterReserveGPerCell;
    if (reserveG === undefined)
      return notMeasured("not stated", "how much water a cell may lose before its plates fall dry is not stated in the battery's record");
    const held = findHoldingCurrent(context);
    if (held === undefined) return notMeasured("not recorded", "no current was read at a voltage held for long", [context.recordEvidence]);
    if (held.currentA <= 0) return notMeasured("cannot tell", `no current could be told from none ${held.words}`, held.evidence);
    const daysAt = (currentA: number): number => reserveG / (24 * waterElectrolysedG(currentA, 1));
    const u = held.standardUncertainty;
    const halfWidthA = u === undefined ? undefined : context.rules.coverageFactor * u;
    const isClear = halfWidthA !== undefined && halfWidthA < held.currentA;
    return {
      value: daysAt(held.currentA),
      interval: isClear ? { low: daysAt(held.currentA + halfWidthA), high: daysAt(held.currentA - halfWidthA) } : undefined,
      basis: "projected",
      evidence: [...held.evidence, context.recordEvidence],
      doubts: [
        `a lower bound: all of ${held.currentA.toFixed(3)} A counts as gassing, ${held.words}`,
        ...(halfWidthA === undefined || isClear
          ? []
          : [
              `the meter's error is as large as the current; by its upper end the reserve lasts ${daysAt(held.currentA + halfWidthA).toFixed(0)} d at least`,
            ]),
        ...held.doubts,
      ],
    };
  },
};

import { type FigureDefinition, notMeasured } from "../define.ts";
import { chargeInGaps as boundsInGaps } from "../integrals.ts";
import { evidenceOf, type MeasuredRecording } from "../recording.ts";

export const chargeInGaps: FigureDefinition<MeasuredRecording> = {
  id: "charge-in-gaps",
  label: "Charge that gaps may hide",
  unit: "Ah",
  version: 1,
  explain:
    "A straight line over each gap, with bounds: from nothing at all to the recording's highest current all along. It is not part of the charge recorded.",
  formula: "Σ (I_before + I_after)/2 · Δt; bounds 0 and I_max · Σ Δt",
  source: "Our definition.",
  checkedBy: ["A log with rows cut out: reference W066"],
  compute: (recording) => {
    if (!recording.trace.hasCurrent) return notMeasured("not recorded", "the recorder logs no current", [evidenceOf(recording)]);
    if (recording.trace.gaps.length === 0) return notMeasured("not applicable", "the recording has no gaps", [evidenceOf(recording)]);
    const { low, high, straight } = boundsInGaps(recording);
    return {
      value: straight,
      interval: { low: Math.min(low, straight), high: Math.max(high, straight) },
      evidence: [evidenceOf(recording)],
    };
  },
};

import { type FigureDefinition, notMeasured } from "../define.ts";
import { findTargetOutcome } from "../growth.ts";
import { isSealed, type TestContext } from "../test-context.ts";
import { afterMixing } from "./connections-to-target.ts";

export const hoursToTarget: FigureDefinition<TestContext> = {
  id: "hours-to-target",
  label: "Hours connected to target density",
  unit: "h",
  version: 4,
  explain:
    "Hours on charge by the visit that first read the target density or, where the visits show the test's own stop rule, that completed it; the interval starts at the hours of the visit before. Where the target was not reached it is projected: saturating and straight growth are weighed by how well they explain the visits, hydrometer steps and error allowed for; the middle and the middle 95 % are given, no further than three times the hours seen: an interval that goes on beyond is open above.",
  formula: "d(h) = d₀ + a (1 − exp(−h/τ)), and straight growth with a knee, by marginal likelihood",
  source: "Our definition; docs/projection.md. The curve is the saturating form of NIST StRD Misra1a and BoxBOD.",
  checkedBy: ["NIST certified fits of the same form", "Small invented test records, counted by hand"],
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
          value: outcome.at.hours,
          interval: { low: outcome.before?.hours ?? 0, high: outcome.at.mostHours },
          evidence: outcome.at.density.evidence,
          doubts: [
            outcome.rule.words,
            ...outcome.doubts,
            ...(outcome.at.mostHours > outcome.at.hours + 0.01
              ? [
                  "nobody saw a connection end before that visit: the value counts the hours known to be connected, the upper end those possible",
                ]
              : []),
          ],
        };
      case "projected":
        return {
          value: outcome.hours.value,
          interval: outcome.hours,
          basis: "projected",
          evidence: context.readings.flatMap((reading) => reading.density?.evidence.slice(0, 1) ?? []),
          doubts: [`projected, not seen: ${outcome.why}${afterMixing(outcome)}`],
        };
      case "unsettled":
        return notMeasured(
          "cannot tell",
          `the target was read at visit ${outcome.at.reading.number}, but ${outcome.why}`,
          outcome.at.density.evidence,
        );
      case "not reachable":
        return notMeasured("not reached", `not reachable as it goes: ${outcome.why}${afterMixing(outcome)}`, [context.recordEvidence]);
      case "cannot tell":
        return notMeasured("cannot tell", `${outcome.why}${afterMixing(outcome)}`, [context.recordEvidence]);
    }
  },
};

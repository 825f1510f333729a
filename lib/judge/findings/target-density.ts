import { findTargetOutcome } from "../../measure/growth.ts";
import { isSealed } from "../../measure/test-context.ts";
import type { FindingDefinition } from "../define-finding.ts";

export const targetDensity: FindingDefinition = {
  id: "target-density",
  subject: "Back at full density?",
  explain: "Whether the acid came back to the test's target density, by when, or whether it will as it goes.",
  source: "Our definition; the stop rule is the test's own, for example three equal readings 15 min apart after IEC 60095-1.",
  checkedBy: ["Small invented test records, counted by hand"],
  judge(context) {
    if (isSealed(context.battery))
      return {
        verdict: "cannot be read",
        weight: "untested",
        sentence: "This battery is sealed, so its acid cannot be read; the verdict rests on voltage and charge.",
        why: [`${context.battery.construction} batteries have no access to the acid`],
        wouldSettle: "a capacity test after the charge",
        figures: [],
        doubts: [],
      };
    const outcome = findTargetOutcome(context);
    const goal = context.test.target?.densityAt25C.toFixed(3);
    const figures = ["test#connections-to-target", "test#hours-to-target", "test#density-last"];
    const abandoned =
      context.test.abandoned === undefined ? [] : [`the test was given up on ${context.test.abandoned.on}: ${context.test.abandoned.why}`];
    const stopRule =
      context.test.target?.stopRule === undefined ? "no stop rule is stated" : `counted as reached by: ${context.test.target.stopRule}`;
    switch (outcome.kind) {
      case "no target":
      case "no density":
      case "unplaced":
        return {
          verdict: "not put to the test",
          weight: "untested",
          sentence: `Whether the battery came back to full density is not known: ${outcome.why}.`,
          why: [outcome.why],
          wouldSettle:
            outcome.kind === "unplaced" ? "the time at which each connection began" : "density readings at each visit, and a target",
          figures: [],
          doubts: [],
        };
      case "reached": {
        const hours = outcome.at.mostHours.toFixed(0);
        const after = outcome.at.connections === 1 ? "one connection" : `${outcome.at.connections} connections`;
        return {
          verdict: "reached",
          weight: "good",
          sentence: `The battery read its target density of ${goal} kg/l after ${after}, ${hours} h connected at most.`,
          why: [
            `${outcome.at.density.meanAt25C.toFixed(3)} kg/l at 25 °C was read ${outcome.before === undefined ? "" : `after ${outcome.before.density.meanAt25C.toFixed(3)} at the visit before; it was reached between the two`}`.trim(),
            stopRule,
          ],
          wouldSettle: null,
          figures,
          doubts: [...outcome.doubts],
        };
      }
      case "projected":
        return {
          verdict: "not reached yet",
          weight: "unsure",
          sentence: `The battery did not come back to ${goal} kg/l in this test; as it goes it would take ${outcome.hours.low.toFixed(0)} to ${outcome.hours.high.toFixed(0)} h connected.`,
          why: [`projected ${outcome.why}`, ...abandoned],
          wouldSettle: "further connections until the target is read",
          figures,
          doubts: ["projected, not seen"],
        };
      case "not reachable":
        return {
          verdict: "not reachable as it goes",
          weight: "bad",
          sentence: `The battery did not come back to ${goal} kg/l, and will not as it goes.`,
          why: [outcome.why, ...abandoned],
          wouldSettle: "a further connection with acid mixed before reading",
          figures,
          doubts: [],
        };
      case "cannot tell":
        return {
          verdict: "not reached",
          weight: "unsure",
          sentence: `The battery did not come back to ${goal} kg/l in this test; whether it would cannot be told.`,
          why: [outcome.why, ...abandoned],
          wouldSettle: "further visits with density readings",
          figures,
          doubts: [],
        };
    }
  },
};

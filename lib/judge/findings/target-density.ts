import { describeConditions, findTargetOutcome, type GrowthPoint, type MixedPoint, type TargetOutcome } from "../../measure/growth.ts";
import { isSealed, type TestContext } from "../../measure/test-context.ts";
import type { FindingDefinition } from "../define-finding.ts";

const figures = ["test#connections-to-target", "test#hours-to-target", "test#density-last"];

export const targetDensity: FindingDefinition = {
  id: "target-density",
  subject: "Back at full density?",
  explain:
    "Whether the acid came back to the test's target density, by when, by which stop rule that counts, and whether the visits show that the rule was met. Acid as found is the top of the cell, so a target read there is met by the mean as well; a target read only after mixing by hand is told as that.",
  source:
    "Our definition. Stop rules: three equal corrected readings 15 min apart (IEC 60095-1:2006, 8.2.1, from memory), one hour apart in vehicle service manuals (common practice), or the test's own.",
  checkedBy: ["IEC 60095-1's stop rule, worked by hand on invented visits", "Small invented test records, counted by hand"],
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
    return judgeOutcome(findTargetOutcome(context), context);
  },
};

function judgeOutcome(outcome: TargetOutcome, context: TestContext): ReturnType<FindingDefinition["judge"]> {
  const goal = context.test.target?.densityAt25C.toFixed(3);
  const abandoned =
    context.test.abandoned === undefined ? [] : [`the test was given up on ${context.test.abandoned.on}: ${context.test.abandoned.why}`];
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
    case "reached":
      return {
        verdict: outcome.at.reading.mixed === true ? "reached, after mixing" : "reached",
        weight: "good",
        sentence: `The battery read its target density of ${goal} kg/l after ${countOf(outcome.at)}, ${outcome.at.mostHours.toFixed(0)} h connected at most${outcome.at.reading.mixed === true ? "; the acid was mixed by hand before it was read" : ""}.`,
        why: [
          `${outcome.at.density.meanAt25C.toFixed(3)} kg/l at 25 °C was read ${outcome.before === undefined ? "" : `after ${outcome.before.density.meanAt25C.toFixed(3)} at the visit before; it was reached between the two`}`.trim(),
          outcome.rule.words,
        ],
        wouldSettle: settlesRule(outcome.rule.kind, context),
        figures,
        doubts: [...outcome.doubts],
      };
    case "unsettled":
      return {
        verdict: "read, not settled",
        weight: "unsure",
        sentence: `The battery read its target density of ${goal} kg/l at visit ${outcome.at.reading.number}, but the test's own stop rule says that the density was still moving.`,
        why: [outcome.why, describeConditions(outcome.at.reading), ...abandoned],
        wouldSettle: settlesRule("contradicted", context),
        figures,
        doubts: [],
      };
    case "projected":
      return openly(outcome.mixed, context, {
        verdict: "not reached yet",
        weight: "unsure",
        sentence: `The battery did not come back to ${goal} kg/l in this test; as it goes it would take ${tellHours(outcome.hours)}.`,
        why: [`projected ${outcome.why}`, ...abandoned],
        wouldSettle: "further connections until the target is read",
        figures,
        doubts: ["projected, not seen"],
      });
    case "not reachable":
      return openly(outcome.mixed, context, {
        verdict: "not reachable as it goes",
        weight: "bad",
        sentence: `The battery did not come back to ${goal} kg/l, and will not as it goes.`,
        why: [outcome.why, ...abandoned],
        wouldSettle: "a further connection with acid mixed before reading",
        figures,
        doubts: [],
      });
    case "cannot tell":
      return openly(outcome.mixed, context, {
        verdict: "not reached",
        weight: "unsure",
        sentence: `The battery did not come back to ${goal} kg/l in this test; whether it would cannot be told.`,
        why: [outcome.why, ...abandoned],
        wouldSettle: "further visits with density readings",
        figures,
        doubts: [],
      });
  }
}

/** An open end is told as one: nobody knows whether the target ever comes. */
function tellHours({ low, high }: { readonly low: number; readonly high: number }): string {
  return Number.isFinite(high)
    ? `${low.toFixed(0)} to ${high.toFixed(0)} h connected`
    : `${low.toFixed(0)} h connected or more, and may never get there`;
}

type Judged = NonNullable<ReturnType<FindingDefinition["judge"]>>;

/** A test that did not read its target as found, told with what mixing by hand brought to light, where it did. */
function openly(mixed: MixedPoint | undefined, context: TestContext, judged: Judged): Judged {
  const goal = context.test.target?.densityAt25C;
  if (mixed === undefined || goal === undefined) return judged;
  const read = `visit ${mixed.reading.number}, after ${countOf(mixed)} and ${mixed.hours.toFixed(0)} h connected, ${describeConditions(mixed.reading)}: ${mixed.density.meanAt25C.toFixed(3)} kg/l`;
  if (!mixed.isAtTarget)
    return {
      ...judged,
      sentence: `${judged.sentence} Mixed by hand, the acid read ${mixed.density.meanAt25C.toFixed(3)} kg/l: more charge had gone in than the top of the cells shows.`,
      why: [...judged.why, `${read}, ${(goal - mixed.density.meanAt25C).toFixed(3)} short of the target`],
    };
  return {
    ...judged,
    verdict: "only after mixing",
    weight: "caution",
    sentence: `The battery read its target of ${goal.toFixed(3)} kg/l only after the acid was mixed by hand: the charge had gone in, but the charger left the heavy acid at the bottom of the cells.`,
    why: [read, `as found, without mixing: ${judged.verdict}; ${judged.why[0] ?? ""}`, ...judged.why.slice(1)],
    wouldSettle: "a charge long enough above the gassing voltage to mix the acid, with fresh air, and a reading as found",
  };
}

function countOf({ connections }: GrowthPoint): string {
  return connections === 1 ? "one connection" : `${connections} connections`;
}

/** What would show that the target's stop rule was met; null where nothing is open. */
function settlesRule(kind: "none" | "in words" | "shown" | "not shown" | "contradicted", context: TestContext): string | null {
  const stop = context.test.target?.stop;
  if (stop === undefined || kind === "shown") return null;
  return `${stop.equalReadings} readings ${stop.apartMin} min apart with the charger still connected`;
}

/** Pages about the site: method, data, signs, and pages without results. */
import type { ComponentChildren } from "preact";
import { type StageKind, stageKinds } from "../../../nouns/stage.ts";

export const reference = {
  method: {
    title: "Method",
    description: "How each figure is computed, how each claim is judged, and which rules hold on this site.",
    lead: (method: string, tool: string) =>
      `Raw logs and readings go in; figures are computed from them; findings are judged from the figures; pages show the result. Nothing is typed in by hand on the way. This is method version ${method}, computed by version ${tool} of the tool.`,
    kinds: { figure: "Figures", finding: "Findings", claim: "Claims", rule: "Rules" },
    kind: { figure: "figure", finding: "finding", claim: "claim", rule: "rule" },
    rules: "Rules and constants",
    rulesLead: "Each is the project's default or was set by this site; either way it was set before the claims were judged.",
    intervals: "Intervals",
    intervalsNote:
      "A value such as 5.84 ± 0.12 A comes with an interval that holds the true value with 95 % probability, worked out from the instrument's accuracy, its resolution and the sampling. The interval is written with two digits and the value to the same place (JCGM 100:2008, 7.2.6). Where the interval is wider on one side its two ends are written out. Where none can be defended, none is shown.",
    noRules: "No rules are listed.",
    rulesCaption: "Rules that hold on this site",
    columns: { rule: "Rule", value: "Value", setBy: "Set by", source: "Source" },
    thisSite: "this site",
    byDefault: "default",
    all: "All methods and rules",
    facts: { kind: "Kind", unit: "Unit", version: "Method and version", source: "Source", checked: "Checked against" },
    noUnit: "none",
    notChecked: "no outside source yet",
  },

  data: {
    title: "Data",
    description: "Results as JSON and CSV, raw files as the recorders wrote them, and their SHA-256 sums.",
    lead: (licence: string | null) =>
      `Every page is made from the files below, and from nothing else. Raw files are published byte for byte as they were handed in. Licence of data and words: ${licence ?? "not stated"}.`,
    index: (version: string) =>
      `: the comparison, the methods, the rules and every input file with its digest (format version ${version}).`,
    comparison: ": the comparison as a table, one figure a row.",
    dataPackage: ": all files of the site with their digests, as a Data Package.",
    citation: ": how to cite the site; ",
    quote: "how to quote a result",
    byTest: "By test",
    noTest: "No test has been published yet.",
    caption: "Downloads of each test",
    columns: { test: "Test", everything: "Everything", results: "Results", figures: "Figures", digests: "Digests of raw files" },
    byCharger: "By charger",
    csv: "Form of the CSV files",
    csvNote:
      "UTF-8, commas between fields, a point as decimal mark, the unit in a column of its own, absent values left empty with the kind of absence and its reason beside them. Text that a spreadsheet could take for a formula starts with an apostrophe; numbers are never touched.",
    digests: "What the digests show",
    digestsNote:
      "A SHA-256 digest shows that a file is the one that was published. It does not show that a reading was right: for that look at the instruments, their calibration dates, and the doubts printed on each test's page.",
  },

  signs: {
    title: "What the signs mean",
    description: "Marks, kinds of absence, the evidence strip, drawn claims and the letters of a charge profile, with their meanings.",
    lead: "No sign rests on colour alone: each has its own shape and its word beside it.",
    columns: { sign: "Sign", meaning: "Meaning" },
    outcomes: "Outcomes of a claim",
    outcomesCaption: "The five outcomes",
    outcomeMeanings: {
      meets: "the measured value is inside the claim's tolerance by at least its own uncertainty",
      "short of": "below the tolerance by more than the uncertainty",
      above: "above the tolerance by more than the uncertainty",
      "cannot tell": "nearer to a limit than the uncertainty: the measurement cannot tell",
      "not put to the test": "nothing measured bears on the claim; what would is said beside it",
    },
    findings: "Findings",
    findingsCaption: "How a finding weighs",
    weightMeanings: {
      good: "speaks for the charger",
      bad: "speaks against it",
      caution: "mind this before you use it, or before you trust the figure",
      unsure: "the evidence does not decide it",
      untested: "nobody tried it",
      note: "neither for nor against",
    },
    absent: "What is absent",
    absentLead: "An absent value is never a zero and never a blank.",
    absentCaption: "The kinds of absence",
    absenceMeanings: {
      "not recorded": "it happened, and no recorder saw it",
      "not measured": "nobody took the reading",
      "not stated": "the record does not say",
      "not reached": "the test did not come that far",
      "not applicable": "it makes no sense here",
      "cannot tell": "it was looked at, and the evidence does not allow a number",
    },
    claims: "Claim against measurement",
    claimsCaption: "Drawn claims",
    strip: "The evidence strip",
    stripLead: "A test from its first to its last event, at its three sizes. What was not seen takes as much room as what was.",
    letters: "The charge profile in letters",
    lettersLead: (whole: ComponentChildren, off: ComponentChildren) => (
      <>
        Letters of DIN 41772, in the order in which the charger does it: {whole} is a current, then a limit, then a change-over to a lower
        limit; {off} at the end is a charger that switches off.
      </>
    ),
    stagesCaption: "Stages and their letters",
    stageMeanings: Object.fromEntries(Object.entries(stageKinds).map(([kind, { explain }]) => [kind, explain])) as Readonly<
      Record<StageKind, string>
    >,
    numbers: "Numbers",
    numbersCaption: "How numbers are written",
    even: "the true value lies within these ends with 95 % probability",
    uneven: "the same where the ends do not stand evenly about the value",
    projected: "made by a model from what was measured, not seen on the bench",
    stated: "said by somebody, such as a price",
    tie: "in a sorted table: cannot be told apart from the row above",
    nothingClaimed: "the maker promises nothing of the kind, so there is nothing to judge",
    example: "An example.",
    small: "The same as small as in the comparison; a gap in the log lifts the pen:",
    smallExample: "Example of a small profile with a gap",
    absentNumber: "no value, and why",
    figureLead: "With its method and the places in files that it rests on, a figure stands so:",
    twoFigures: "Example of two figures",
    findingHeading: "A finding, a doubt, a caution",
    findingLead: "A finding says what would settle it where it is open, and unfolds its reasons; a bar at the side is a doubt about it:",
    doubtLead: "What the checks found in a file stands with its line and column:",
    cautionLead: "Where somebody might pick up the clamps, and wherever a battery is sealed:",
    madeUp: "Whatever is made up for a demonstration has this mark at its title:",
  },

  notFound: {
    title: "No such page",
    description: "This address leads nowhere on this site.",
    lead: "This address leads nowhere. Addresses of published results never change, so the link that brought you here may be mistyped.",
    all: "See all tested chargers",
  },

  writtenBy: (name: string) => `By ${name}`,
  feeds: {
    ofCharger: (charger: string) => `Changes to the result of ${charger}`,
    ofSite: (site: string) => `Results and corrections of ${site}`,
  },
};

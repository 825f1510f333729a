/** Every sign of the site with its meaning, made by the very components that draw it elsewhere: a key for readers, and a proof sheet. */
import type { ComponentChildren } from "preact";
import { absenceKinds } from "../../nouns/figure.ts";
import { type JudgedClaim, outcomes, weights } from "../../nouns/finding.ts";
import { stageKinds } from "../../nouns/stage.ts";
import type { SiteIndex, Timeline } from "../results.ts";
import { ClaimsKey } from "./claims-table.tsx";
import { renderPage } from "./document.tsx";
import { EvidenceStrip } from "./evidence-strip.tsx";
import { IntervalBar } from "./interval-bar.tsx";
import { Absent, Mark } from "./mark.tsx";
import { siteContext } from "./site-context.tsx";
import { StripKey } from "./strip-figure.tsx";
import { Columns, Table } from "./table.tsx";

const outcomeWords: Readonly<Record<(typeof outcomes)[number], string>> = {
  meets: "the measured value is inside the claim's tolerance by at least its own uncertainty",
  "short of": "below the tolerance by more than the uncertainty",
  above: "above the tolerance by more than the uncertainty",
  "cannot tell": "nearer to a limit than the uncertainty: the measurement cannot tell",
  "not put to the test": "nothing measured bears on the claim; what would is said beside it",
};

const weightWords: Readonly<Record<(typeof weights)[number], string>> = {
  good: "speaks for the charger",
  bad: "speaks against it",
  caution: "mind this before you use it, or before you trust the figure",
  unsure: "the evidence does not decide it",
  untested: "nobody tried it",
  note: "neither for nor against",
};

const absenceWords: Readonly<Record<(typeof absenceKinds)[number], string>> = {
  "not recorded": "it happened, and no recorder saw it",
  "not measured": "nobody took the reading",
  "not stated": "the record does not say",
  "not reached": "the test did not come that far",
  "not applicable": "it makes no sense here",
  "cannot tell": "it was looked at, and the evidence does not allow a number",
};

/** An invented test: two connections, one recorded in part, one whose end nobody saw. */
const example: Timeline = {
  start: null,
  end: null,
  spanH: 100,
  connections: [
    { id: "1", startH: 4, endH: 40, endKnown: true, recorded: [{ startH: 4, endH: 22, recording: "day-1.csv" }], endedBy: "recorder" },
    { id: "2", startH: 52, endH: 80, endKnown: false, recorded: [{ startH: 52, endH: 80, recording: "day-3.csv" }], endedBy: "unknown" },
  ],
  readings: [1, 46, 98].map((atH, place) => ({ number: place + 1, atH, label: `visit ${place + 1}` })),
  findings: [],
  words: "",
};

const claimAt = (outcome: JudgedClaim["outcome"], measured: number | null, halfWidth: number): JudgedClaim => ({
  id: outcome,
  label: outcome,
  unit: "A",
  claimed: 8,
  claimedWords: null,
  claimedFrom: "label",
  acceptLow: 7.2,
  acceptHigh: 8.8,
  measured,
  low: measured === null ? null : measured - halfWidth,
  high: measured === null ? null : measured + halfWidth,
  measuredWords: null,
  outcome,
  probability: null,
  rule: "",
  why: "",
  wouldSettle: null,
  figure: null,
  doubts: [],
});
const drawn: readonly JudgedClaim[] = [
  claimAt("meets", 8.05, 0.12),
  claimAt("short of", 6.2, 0.15),
  claimAt("above", 9.6, 0.2),
  claimAt("cannot tell", 7.25, 0.3),
  claimAt("not put to the test", null, 0),
];

/** Renders the key to the site's signs. */
export function renderSignsPage(index: SiteIndex): string {
  return renderPage(siteContext(index, "signs/"), {
    title: "What the signs mean",
    description: "Marks, kinds of absence, the evidence strip, drawn claims and the letters of a charge profile, with their meanings.",
    children: (
      <>
        <p class="lead">No sign rests on colour alone: each has its own shape and its word beside it.</p>
        <h2>Outcomes of a claim</h2>
        <Signs caption="The five outcomes" rows={outcomes.map((kind) => [<Mark kind={kind}>{kind}</Mark>, outcomeWords[kind]])} />
        <h2>Findings</h2>
        <Signs caption="How a finding weighs" rows={weights.map((kind) => [<Mark kind={kind}>{kind}</Mark>, weightWords[kind]])} />
        <h2>What is absent</h2>
        <p>An absent value is never a zero and never a blank.</p>
        <Signs caption="The kinds of absence" rows={absenceKinds.map((kind) => [<Absent kind={kind} />, absenceWords[kind]])} />
        <h2>Claim against measurement</h2>
        <Signs caption="Drawn claims" rows={drawn.map((claim) => [<IntervalBar claim={claim} />, claim.outcome])} />
        <ClaimsKey claims={drawn} />
        <h2>The evidence strip</h2>
        <p>A test from its first to its last event, at its three sizes. What was not seen takes as much room as what was.</p>
        {(["row", "card", "page"] as const).map((size) => (
          <div key={size} class="strip-frame">
            <EvidenceStrip timeline={example} size={size} />
          </div>
        ))}
        <StripKey numbered />
        <h2>The charge profile in letters</h2>
        <p>
          Letters of DIN 41772, in the order in which the charger does it: <span class="letters">IUoU</span> is a current, then a limit,
          then a change-over to a lower limit; <span class="letters">a</span> at the end is a charger that switches off.
        </p>
        <Signs
          caption="Stages and their letters"
          rows={Object.values(stageKinds).map(({ label, letter, explain }) => [
            <>
              {label} {letter === null ? null : <span class="letters">{letter}</span>}
            </>,
            explain,
          ])}
        />
        <h2>Numbers</h2>
        <Signs
          caption="How numbers are written"
          rows={[
            [<span class="value">8.05 ± 0.12 A</span>, "the true value lies within these ends with 95 % probability"],
            [<span class="value">66 h (23 to 66)</span>, "the same where the ends do not stand evenly about the value"],
            [<span class="basis">projected</span>, "made by a model from what was measured, not seen on the bench"],
            [<span class="basis">stated</span>, "said by somebody, such as a price"],
            ["≈", "in a sorted table: cannot be told apart from the row above"],
          ]}
        />
      </>
    ),
  });
}

function Signs({ caption, rows }: { caption: string; rows: readonly (readonly [sign: ComponentChildren, meaning: string])[] }) {
  return (
    <Table caption={caption}>
      <Columns names={["Sign", "Meaning"]} />
      <tbody>
        {rows.map(([sign, meaning]) => (
          <tr key={meaning}>
            <td>{sign}</td>
            <td class="words">{meaning}</td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

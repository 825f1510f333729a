/** Every sign of the site with its meaning, made by the very components that draw it elsewhere: a key for readers, and a proof sheet. */
import type { ComponentChildren } from "preact";
import { absenceKinds } from "../../nouns/figure.ts";
import { outcomes, weights } from "../../nouns/finding.ts";
import { stageKinds } from "../../nouns/stage.ts";
import type { SiteIndex } from "../results.ts";
import { CautionBox } from "./caution-box.tsx";
import { CharacteristicDrawing } from "./characteristic-drawing.tsx";
import { ClaimsKey } from "./claims-table.tsx";
import { renderPage } from "./document.tsx";
import { Doubts } from "./doubts.tsx";
import { EvidenceStrip } from "./evidence-strip.tsx";
import { FigureValue } from "./figure-value.tsx";
import { FiguresTable } from "./figures-table.tsx";
import { Findings } from "./findings.tsx";
import { IntervalBar } from "./interval-bar.tsx";
import { Absent, Mark } from "./mark.tsx";
import {
  exampleClaims,
  exampleDoubts,
  exampleFigures,
  exampleFinding,
  exampleProfile,
  exampleStages,
  exampleTimeline,
} from "./signs-examples.ts";
import { siteContext } from "./site-context.tsx";
import { SmallProfile } from "./small-profile.tsx";
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

/** Renders the key to the site's signs. */
export function renderSignsPage(index: SiteIndex): string {
  const context = siteContext(index, "signs/");
  const { linkTo } = context;
  return renderPage(context, {
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
        <Signs
          caption="The kinds of absence"
          rows={[
            ...absenceKinds.map((kind) => [<Absent kind={kind} />, absenceWords[kind]] as const),
            [<Absent kind="nothing claimed" />, "the maker promises nothing of the kind, so there is nothing to judge"],
          ]}
        />
        <h2>Claim against measurement</h2>
        <Signs caption="Drawn claims" rows={exampleClaims.map((claim) => [<IntervalBar claim={claim} />, claim.outcome])} />
        <ClaimsKey claims={exampleClaims} />
        <h2>The evidence strip</h2>
        <p>A test from its first to its last event, at its three sizes. What was not seen takes as much room as what was.</p>
        {(["row", "card", "page"] as const).map((size) => (
          <div key={size} class="strip-frame">
            <EvidenceStrip timeline={exampleTimeline} size={size} />
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
        <CharacteristicDrawing stages={exampleStages} caption="An example." />
        <p>The same as small as in the comparison; a gap in the log lifts the pen:</p>
        <SmallProfile profile={exampleProfile} words="Example of a small profile with a gap" />
        <h2>Numbers</h2>
        <Signs
          caption="How numbers are written"
          rows={[
            [<FigureValue figure={exampleFigures.measured} />, "the true value lies within these ends with 95 % probability"],
            [<FigureValue figure={exampleFigures.lopsided} />, "the same where the ends do not stand evenly about the value"],
            [<FigureValue figure={exampleFigures.projected} />, "made by a model from what was measured, not seen on the bench"],
            [<FigureValue figure={exampleFigures.stated} />, "said by somebody, such as a price"],
            [<FigureValue figure={exampleFigures.absent} why />, "no value, and why"],
            ["≈", "in a sorted table: cannot be told apart from the row above"],
          ]}
        />
        <p>With its method and the places in files that it rests on, a figure stands so:</p>
        <FiguresTable caption="Example of two figures" figures={[exampleFigures.measured, exampleFigures.absent]} find={() => undefined} />
        <h2>A finding, a doubt, a caution</h2>
        <p>A finding says what would settle it where it is open, and unfolds its reasons; a bar at the side is a doubt about it:</p>
        <Findings findings={[exampleFinding]} find={() => undefined} linkTo={linkTo} />
        <p>What the checks found in a file stands with its line and column:</p>
        <Doubts doubts={exampleDoubts} />
        <p>Where somebody might pick up the clamps, and wherever a battery is sealed:</p>
        <CautionBox sealed />
        <p>
          Whatever is made up for a demonstration has this mark at its title: <span class="invented">invented data</span>
        </p>
      </>
    ),
  });
}

function Signs({ caption, rows }: { caption: string; rows: readonly (readonly [sign: ComponentChildren, meaning: string])[] }) {
  return (
    // A meaning is not invented, whatever the site's data are.
    <Table caption={caption} isData={false}>
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

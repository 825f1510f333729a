/** Every sign of the site with its meaning, made by the very components that draw it elsewhere: a key for readers, and a proof sheet. */

import type { ComponentChildren } from "preact";
import { absenceKinds } from "../../nouns/figure.ts";
import { outcomes, weights } from "../../nouns/finding.ts";
import type { Language } from "../../nouns/site.ts";
import { type StageKind, stageKinds } from "../../nouns/stage.ts";
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
import { siteContext, useSite } from "./site-context.tsx";
import { SmallProfile } from "./small-profile.tsx";
import { StripKey } from "./strip-figure.tsx";
import { Columns, Table } from "./table.tsx";

const stageIds = Object.keys(stageKinds) as StageKind[];

/** Renders the key to the site's signs. */
export function renderSignsPage(index: SiteIndex, language: Language): string {
  const context = siteContext(index, "signs/", language);
  const { linkTo } = context;
  const { marks, reference } = context.words;
  const { signs: words } = reference;
  return renderPage(context, {
    title: words.title,
    description: words.description,
    children: (
      <>
        <p class="lead">{words.lead}</p>
        <h2>{words.outcomes}</h2>
        <Signs
          caption={words.outcomesCaption}
          rows={outcomes.map((kind) => [<Mark kind={kind}>{marks.outcomes[kind]}</Mark>, words.outcomeMeanings[kind]])}
        />
        <h2>{words.findings}</h2>
        <Signs
          caption={words.findingsCaption}
          rows={weights.map((kind) => [<Mark kind={kind}>{marks.weights[kind]}</Mark>, words.weightMeanings[kind]])}
        />
        <h2>{words.absent}</h2>
        <p>{words.absentLead}</p>
        <Signs
          caption={words.absentCaption}
          rows={[
            ...absenceKinds.map((kind) => [<Absent kind={kind} />, words.absenceMeanings[kind]] as const),
            [<Absent kind="nothing claimed" />, words.nothingClaimed],
          ]}
        />
        <h2>{words.claims}</h2>
        <Signs
          caption={words.claimsCaption}
          rows={exampleClaims.map((claim) => [<IntervalBar claim={claim} />, marks.outcomes[claim.outcome]])}
        />
        <ClaimsKey claims={exampleClaims} />
        <h2>{words.strip}</h2>
        <p>{words.stripLead}</p>
        {(["row", "card", "page"] as const).map((size) => (
          <div key={size} class="strip-frame">
            <EvidenceStrip timeline={exampleTimeline} size={size} />
          </div>
        ))}
        <StripKey numbered />
        <h2>{words.letters}</h2>
        <p>{words.lettersLead(<span class="letters">IUoU</span>, <span class="letters">a</span>)}</p>
        <Signs
          caption={words.stagesCaption}
          rows={stageIds.map((kind) => [
            <>
              {marks.stages[kind]} {stageKinds[kind].letter === null ? null : <span class="letters">{stageKinds[kind].letter}</span>}
            </>,
            words.stageMeanings[kind],
          ])}
        />
        <CharacteristicDrawing stages={exampleStages} caption={words.example} />
        <p>{words.small}</p>
        <SmallProfile profile={exampleProfile} words={words.smallExample} />
        <h2>{words.numbers}</h2>
        <Signs
          caption={words.numbersCaption}
          rows={[
            [<FigureValue figure={exampleFigures.measured} />, words.even],
            [<FigureValue figure={exampleFigures.lopsided} />, words.uneven],
            [<FigureValue figure={exampleFigures.projected} />, words.projected],
            [<FigureValue figure={exampleFigures.stated} />, words.stated],
            [<FigureValue figure={exampleFigures.absent} why />, words.absentNumber],
            ["≈", words.tie],
          ]}
        />
        <p>{words.figureLead}</p>
        <FiguresTable caption={words.twoFigures} figures={[exampleFigures.measured, exampleFigures.absent]} find={() => undefined} />
        <h2>{words.findingHeading}</h2>
        <p>{words.findingLead}</p>
        <Findings findings={[exampleFinding]} find={() => undefined} linkTo={linkTo} />
        <p>{words.doubtLead}</p>
        <Doubts doubts={exampleDoubts} />
        <p>{words.cautionLead}</p>
        <CautionBox sealed />
        <p>
          {words.madeUp} <span class="invented">{marks.invented}</span>
        </p>
      </>
    ),
  });
}

function Signs({ caption, rows }: { caption: string; rows: readonly (readonly [sign: ComponentChildren, meaning: string])[] }) {
  const { signs: words } = useSite().words.reference;
  return (
    <Table caption={caption} isData={false}>
      <Columns names={[words.columns.sign, words.columns.meaning]} />
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

/** Figures aligned by id, and in words which of them tell the chargers apart. */
import { FigureValue } from "../../../lib/publish/pages/figure-value.tsx";
import { Absent } from "../../../lib/publish/pages/mark.tsx";
import { sentence } from "../../../lib/publish/pages/sentence.ts";
import { breakEvenStatements } from "../../../lib/publish/side-by-side/break-even.ts";
import type { ComparedFigure } from "../../../lib/publish/side-by-side/compared.ts";
import { compareFigure, type Statement } from "../../../lib/publish/side-by-side/differences.ts";
import { finishingOrder } from "../../../lib/publish/side-by-side/finishing-order.ts";
import type { Entrant } from "../../../lib/publish/side-by-side/line-up.ts";
import { cellLabel, type Shown, SideTable, To } from "./parts.tsx";

type Group = { readonly name: string; readonly figuresOf: (entrant: Entrant) => readonly ComparedFigure[] };

const ofReference: Group = {
  name: "On the reference battery, projected",
  figuresOf: ({ mode }) => mode.figures,
};
const groups: readonly Group[] = [
  ofReference,
  { name: "On the bench", figuresOf: ({ run }) => run?.figures ?? [] },
  { name: "To buy", figuresOf: ({ charger }) => charger.figures },
];

/** The id of the heading above FinishingOrder. */
export const finishingOrderId = "done-first";

/** One row a figure that any of the chargers has; what a charger lacks is told as absent. */
export function FiguresTable({ entrants, invented }: Shown) {
  return (
    <SideTable caption="Figures with their 95 % intervals" first="Figure" last="Told apart?" entrants={entrants} invented={invented}>
      {groups.map((group) => (
        <FigureGroup key={group.name} group={group} entrants={entrants} />
      ))}
    </SideTable>
  );
}

function FigureGroup({ group, entrants }: { group: Group; entrants: readonly Entrant[] }) {
  const labels = new Map(entrants.flatMap(group.figuresOf).map(({ id, label }) => [id, label]));
  if (labels.size === 0) return null;
  return (
    <tbody>
      <tr class="group">
        <th scope="rowgroup" colSpan={entrants.length + 2}>
          {group.name}
        </th>
      </tr>
      {[...labels].map(([id, label]) => (
        <FigureRow
          key={id}
          label={label}
          isOfReference={group === ofReference}
          entrants={entrants}
          figures={entrants.map((one) => group.figuresOf(one).find((figure) => figure.id === id))}
        />
      ))}
    </tbody>
  );
}

type RowProps = {
  readonly label: string;
  readonly entrants: readonly Entrant[];
  readonly figures: readonly (ComparedFigure | undefined)[];
  readonly isOfReference: boolean;
};

function FigureRow({ label, entrants, figures, isOfReference }: RowProps) {
  const held = entrants.map(({ letter, run }, place) => ({ letter, figure: figures[place], conditions: run?.conditions }));
  const hasDraws = figures.some((figure) => figure?.id === "reference-hours-95");
  return (
    <tr>
      <th scope="row">{label}</th>
      {entrants.map((entrant, place) => (
        <td key={entrant.letter} class="number" data-label={cellLabel(entrant)}>
          <FigureCell figure={figures[place]} entrant={entrant} isOfReference={isOfReference} />
        </td>
      ))}
      <td>
        {/* Draws on the same batteries tell more than two intervals do. */}
        {hasDraws ? <a href={`#${finishingOrderId}`}>by draws: who is done first</a> : <Statements statements={compareFigure(held)} />}
      </td>
    </tr>
  );
}

type CellProps = { readonly figure: ComparedFigure | undefined; readonly entrant: Entrant; readonly isOfReference: boolean };

function FigureCell({ figure, entrant, isOfReference }: CellProps) {
  if (figure === undefined) return <Missing entrant={entrant} isOfReference={isOfReference} />;
  return (
    <>
      <p>
        <To path={figure.to}>
          <FigureValue figure={{ ...figure, of: "", method: "", evidence: [] }} />
        </To>
      </p>
      {figure.value === null && figure.absent !== null ? <p class="quiet">{figure.absent.why}</p> : null}
      {figure.id === "price" && entrant.charger.priced !== null ? <p class="quiet">{entrant.charger.priced}</p> : null}
      <Doubts doubts={figure.doubts} />
    </>
  );
}

/** A figure that the others have and this charger has not. */
function Missing({ entrant: { mode, run }, isOfReference }: { entrant: Entrant; isOfReference: boolean }) {
  if (isOfReference && "because" in mode.reference) return <Absent kind="not applicable" why={mode.reference.because} />;
  return <Absent kind={run === undefined ? "not put to the test" : "not stated"} />;
}

/** Folded, so that a row stays readable with four chargers. */
function Doubts({ doubts }: { doubts: readonly string[] }) {
  if (doubts.length === 0) return null;
  return (
    <details>
      <summary>{doubts.length === 1 ? "1 doubt" : `${doubts.length} doubts`}</summary>
      {doubts.map((doubt) => (
        <p key={doubt} class="doubt">
          {sentence(doubt)}
        </p>
      ))}
    </details>
  );
}

function Statements({ statements }: { statements: readonly Statement[] }) {
  return (
    <ul class="plain outcomes">
      {statements.map(({ sign, words }) => (
        <li key={words}>
          {sign === "" ? null : <strong aria-hidden="true">{sign} </strong>}
          {words}
        </li>
      ))}
    </ul>
  );
}

/** From how many charges on the dearer of two is the cheaper one, pair by pair. */
export function PayingBack({ entrants }: { entrants: readonly Entrant[] }) {
  const buyables = entrants.map((entrant) => ({
    name: cellLabel(entrant),
    price: entrant.charger.figures.find(({ id }) => id === "price"),
    reference: entrant.mode.reference,
  }));
  return <Statements statements={breakEvenStatements(buyables)} />;
}

/** Hours to 95 % of the reference battery, pair by pair. */
export function FinishingOrder({ entrants }: { entrants: readonly Entrant[] }) {
  const references = entrants.map((entrant) => ({ name: cellLabel(entrant), reference: entrant.mode.reference }));
  const words = references.flatMap(({ reference }) => ("words" in reference ? [reference.words] : []))[0];
  return (
    <>
      {words === undefined ? null : <p>Projected for {words}, until it holds 95 % of what it can.</p>}
      <Statements statements={finishingOrder(references)} />
    </>
  );
}

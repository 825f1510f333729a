/** Figures aligned by id, and in words which of them tell the chargers apart. */
import { Absent } from "../../../lib/publish/pages/mark.tsx";
import { Said } from "../../../lib/publish/pages/speech.tsx";
import { WrittenFigure } from "../../../lib/publish/pages/written-figure.tsx";
import { breakEvenStatements } from "../../../lib/publish/side-by-side/break-even.ts";
import type { ComparedFigure } from "../../../lib/publish/side-by-side/compared.ts";
import { compareFigure, type Statement } from "../../../lib/publish/side-by-side/differences.ts";
import { finishingOrder } from "../../../lib/publish/side-by-side/finishing-order.ts";
import type { Entrant } from "../../../lib/publish/side-by-side/line-up.ts";
import { fill, fillCounted } from "../../../lib/publish/words/fill.ts";
import { cellLabel, Row, type Shown, SideTable, To } from "./parts.tsx";
import { useSideSpeech, words } from "./speech.ts";

type Group = { readonly name: string; readonly figuresOf: (entrant: Entrant) => readonly ComparedFigure[] };

const ofReference: Group = {
  name: words.groups.reference,
  figuresOf: ({ mode }) => mode.figures,
};
const groups: readonly Group[] = [
  ofReference,
  { name: words.groups.bench, figuresOf: ({ run }) => run?.figures ?? [] },
  { name: words.groups.buy, figuresOf: ({ charger }) => charger.figures },
];

/** The id of the heading above FinishingOrder. */
export const finishingOrderId = "done-first";

/** One row a figure that any of the chargers has; what a charger lacks is told as absent. */
export function FiguresTable({ entrants, invented }: Shown) {
  return (
    <SideTable caption={words.figuresCaption} first={words.figure} last={words.toldApart} entrants={entrants} invented={invented}>
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
    <Row
      label={<Said text={label} />}
      entrants={entrants}
      kind="number"
      cell={(entrant, place) => <FigureCell figure={figures[place]} entrant={entrant} isOfReference={isOfReference} />}
    >
      <td>
        {/* Draws on the same batteries tell more than two intervals do. */}
        {hasDraws ? <a href={`#${finishingOrderId}`}>{words.byDraws}</a> : <Statements statements={compareFigure(held, words)} />}
      </td>
    </Row>
  );
}

type CellProps = { readonly figure: ComparedFigure | undefined; readonly entrant: Entrant; readonly isOfReference: boolean };

function FigureCell({ figure, entrant, isOfReference }: CellProps) {
  const { tell } = useSideSpeech();
  if (figure === undefined) return <Missing entrant={entrant} isOfReference={isOfReference} />;
  const { written, absent, basis } = figure;
  return (
    <>
      <p>
        <To path={figure.to}>
          {written === null ? (
            <Absent kind={absent?.kind ?? "not stated"} />
          ) : (
            <WrittenFigure
              value={tell(written.value)}
              interval={written.interval === null ? null : tell(written.interval)}
              basis={basis === "measured" ? null : words.bases[basis]}
            />
          )}
        </To>
      </p>
      {written === null && absent !== null ? (
        <p class="quiet">
          <Said text={absent.why} />
        </p>
      ) : null}
      {figure.id === "price" && entrant.charger.priced !== null ? <p class="quiet">{tell(entrant.charger.priced)}</p> : null}
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
      <summary>{fillCounted(words.doubts, doubts.length, words.language)}</summary>
      {doubts.map((doubt) => (
        <p key={doubt} class="doubt">
          <Said text={doubt} asSentence />
        </p>
      ))}
    </details>
  );
}

function Statements({ statements }: { statements: readonly Statement[] }) {
  return (
    <ul class="plain outcomes">
      {statements.map(({ sign, words: told }) => (
        <li key={told}>
          {sign === "" ? null : <strong aria-hidden="true">{sign} </strong>}
          {told}
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
  return (
    <>
      <ProjectedFor entrants={entrants} />
      <Statements statements={breakEvenStatements(buyables, useSideSpeech())} />
    </>
  );
}

/** Hours to 95 % of the reference battery, pair by pair. */
export function FinishingOrder({ entrants }: { entrants: readonly Entrant[] }) {
  const references = entrants.map((entrant) => ({ name: cellLabel(entrant), reference: entrant.mode.reference }));
  return (
    <>
      <ProjectedFor entrants={entrants} />
      <Statements statements={finishingOrder(references, useSideSpeech())} />
    </>
  );
}

/** Says before statements by draws that nobody saw these charges, and which battery they are of; nothing where no charger has draws. */
function ProjectedFor({ entrants }: { entrants: readonly Entrant[] }) {
  const { tell } = useSideSpeech();
  const battery = entrants.flatMap(({ mode: { reference } }) => ("words" in reference ? [reference.words] : []))[0];
  return battery === undefined ? null : <p>{fill(words.projectedFor, { battery: tell(battery) })}</p>;
}

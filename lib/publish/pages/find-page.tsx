/** Which charger brings my battery back, by when, at what cost? The form works with its script; the table below it without. */

import type { ComponentChildren } from "preact";
import type { Language } from "../../nouns/site.ts";
import { batteryClasses, flatnesses } from "../../project/index.ts";
import { scriptPath } from "../assets.ts";
import {
  conditionChoices,
  deadlineChoices,
  defaultQuestion,
  flatChoices,
  kindChoices,
  type Question,
  questionFields,
  questionRanges,
  voltagesV,
} from "../find/question.ts";
import { type MatrixCell, type NamedMode, type ReadyMatrix, readyMatrices } from "../find/ready-matrix.ts";
import { chargerPath } from "../links.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { renderPage } from "./document.tsx";
import { Mark } from "./mark.tsx";
import { Link, MethodLink, siteContext, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";
import { Columns, Table } from "./table.tsx";

/** Renders the page; its table is of the results, its form asks data/find.json. */
export function renderFindPage(results: ResultsFolder, language: Language): string {
  const chargers = results.index.chargers.map(({ id }) => results.charger(id));
  const matrices = readyMatrices(chargers);
  const context = siteContext(results.index, "find/", language);
  const { findPage: words } = context.words;
  return renderPage(context, {
    title: words.title,
    description: words.description,
    children: (
      <>
        <p class="lead">{words.lead}</p>
        <p>
          {words.projected(
            (lead) => (
              <strong>{lead}</strong>
            ),
            (forecast) => (
              <MethodLink method="reference-hours/2">{forecast}</MethodLink>
            ),
          )}
        </p>
        <aside class="caution" aria-label={context.words.parts.caution.name}>
          <p>
            {words.caution((lead) => (
              <strong>{lead}</strong>
            ))}{" "}
            <Link to="cautions/">{context.words.parts.caution.all}</Link>
          </p>
        </aside>
        <Form />
        <noscript>
          <p>{words.needsScripts}</p>
        </noscript>
        <div data-find-results />
        <h2 id="usual">{words.usual}</h2>
        {matrices.length === 0 ? <p>{words.none}</p> : null}
        {matrices.map((matrix) => (
          <Matrix key={matrix.voltageV} matrix={matrix} />
        ))}
        <p class="key">
          {words.key(
            (word) => (
              <em>{word}</em>
            ),
            (file) => (
              <Link to="data/find.json">{file}</Link>
            ),
          )}
        </p>
      </>
    ),
  });
}

function Form() {
  const { formats, language, linkTo, root, say, words } = useSite();
  const { find } = words;
  const { form } = words.findPage;
  const flatLabel = (id: (typeof flatChoices)[number]["id"]): string => {
    const stateOfCharge = flatnesses.find((flatness) => flatness.id === id)?.stateOfCharge;
    return stateOfCharge === undefined ? find.flat[id] : find.flat.left(find.flat[id], `${formats.formatNumber(100 * stateOfCharge, 0)} %`);
  };
  return (
    <>
      {/* Revealed by its script. */}
      <link rel="stylesheet" href={linkTo("assets/find.css")} />
      <form class="find" hidden data-find={root} novalidate>
        <fieldset class="find-part">
          <legend>{form.battery}</legend>
          <Choice name="voltageV" label={form.voltage} choices={voltagesV.map((volts) => ({ id: String(volts), label: `${volts} V` }))} />
          <Field
            name="ratedAh"
            label={form.capacity}
            type="number"
            range={questionRanges.ratedAh}
            step="any"
            hint={form.capacityHint}
            list={batteryClasses.map(({ typicalAh, label }) => ({ value: typicalAh, label: say(label) ?? label }))}
          />
          <Choice name="kind" label={form.kind} choices={kindChoices.map(({ id }) => ({ id, label: find.kinds[id] }))} />
          <Choice
            name="condition"
            label={form.condition}
            choices={conditionChoices.map(({ id }) => ({ id, label: find.conditions[id] }))}
          />
        </fieldset>
        <fieldset class="find-part">
          <legend>{form.flatHeading}</legend>
          <Choice name="flat" label={form.flat} choices={flatChoices.map(({ id }) => ({ id, label: flatLabel(id) }))} />
          <Field name="restV" label={form.restV} type="number" step="0.01" hint={form.restVHint} />
          <Field name="densityAt25C" label={form.density} type="number" step="0.001" hint={form.densityHint} />
          <Field name="airC" label={form.air} type="number" range={questionRanges.airC} step="any" hint={form.airHint} />
        </fieldset>
        <fieldset class="find-part">
          <legend>{form.when}</legend>
          <Choice name="by" label={form.by} choices={deadlineChoices.map(({ id }) => ({ id, label: find.deadlines[id] }))} />
          <Field name="at" label={form.at} type="datetime-local" hint={form.atHint} />
          <Field name="pricePerKWh" label={form.price} type="number" range={questionRanges.pricePerKWh} step="any" hint={form.priceHint} />
        </fieldset>
        <p>
          <button type="submit">{form.submit}</button> <button type="reset">{form.reset}</button>
        </p>
        <p role="status" data-find-status />
      </form>
      <script defer src={linkTo(scriptPath("find", language))} />
    </>
  );
}

type Name = keyof Question;
const idOf = (name: Name) => `find-${questionFields[name]}`;

type ChoiceProps = {
  readonly name: Name;
  readonly label: string;
  readonly choices: readonly { readonly id: string; readonly label: string }[];
};

function Choice({ name, label, choices }: ChoiceProps) {
  return (
    <p class="find-field">
      <label for={idOf(name)}>{label}</label>
      <select id={idOf(name)} name={questionFields[name]}>
        {choices.map((choice) => (
          <option key={choice.id} value={choice.id} selected={choice.id === String(defaultQuestion[name])}>
            {choice.label}
          </option>
        ))}
      </select>
    </p>
  );
}

type FieldProps = {
  readonly name: Name;
  readonly label: string;
  readonly type: "number" | "datetime-local";
  readonly hint: string;
  readonly step?: string;
  readonly range?: { readonly low: number; readonly high: number };
  readonly list?: readonly { readonly value: number; readonly label: string }[];
};

function Field({ name, label, type, hint, step, range, list }: FieldProps) {
  const id = idOf(name);
  const given = defaultQuestion[name];
  return (
    <p class="find-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        name={questionFields[name]}
        type={type}
        step={step}
        min={range?.low}
        max={range?.high}
        value={given === "" || Number.isNaN(given) ? undefined : String(given)}
        list={list === undefined ? undefined : `${id}-usual`}
        aria-describedby={`${id}-hint`}
        autocomplete="off"
      />
      <span class="quiet" id={`${id}-hint`}>
        {hint}
      </span>
      {list === undefined ? null : (
        <datalist id={`${id}-usual`}>
          {list.map((usual) => (
            <option key={usual.value} value={usual.value} label={usual.label} />
          ))}
        </datalist>
      )}
    </p>
  );
}

function Matrix({ matrix }: { matrix: ReadyMatrix }) {
  const { charger, findPage: words } = useSite().words;
  const { columns, inHours } = charger.forecast;
  const deadlines = matrix.rows[0]?.cells.map(({ deadlineH }) => inHours(deadlineH)) ?? [];
  return (
    <Table caption={words.matrix(matrix.voltageV, matrix.airC)} class="ready-by cards">
      <Columns names={[columns.battery, columns.flat, ...deadlines]} />
      <tbody>
        {matrix.rows.map((row) => (
          <tr key={`${row.battery} ${row.flatness}`}>
            <th scope="row">
              <Said text={row.battery} />
            </th>
            <td data-label={columns.flat}>
              <Said text={row.flatness} />
            </td>
            {row.cells.map((cell) => (
              <td key={cell.deadlineH} data-label={inHours(cell.deadlineH)} class="words">
                <Cell cell={cell} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function Cell({ cell: { will, may, willNot, notAdvised } }: { cell: MatrixCell }) {
  const { findPage: words } = useSite().words;
  return (
    <>
      {will.length === 0 ? null : (
        <p>
          <Mark kind="meets">
            {words.will} <Names modes={will} />
          </Mark>
        </p>
      )}
      {may.length === 0 ? null : (
        <p>
          <Mark kind="cannot tell">
            {words.may} <Names modes={may} />
          </Mark>
        </p>
      )}
      <Rest counts={[willNot > 0 ? words.willNot(willNot) : "", notAdvised > 0 ? words.notAdvised(notAdvised) : ""]} />
    </>
  );
}

function Rest({ counts }: { counts: readonly string[] }) {
  const told = counts.filter((count) => count !== "").join(", ");
  return told === "" ? null : <p class="quiet">{told}</p>;
}

/** So many names a cell holds; a longer list is for the form. */
const mostNames = 12;

function Names({ modes }: { modes: readonly NamedMode[] }) {
  const { findPage: words } = useSite().words;
  const shown = modes.slice(0, mostNames);
  return (
    <>
      {shown.map(
        ({ charger, name, isToComeOff }, place): ComponentChildren => (
          <>
            {place === 0 ? "" : "; "}
            <Link key={name} to={`${chargerPath(charger)}#battery`}>
              {name}
            </Link>
            {isToComeOff ? ` (${words.toComeOff})` : ""}
          </>
        ),
      )}
      {modes.length > mostNames ? words.more(modes.length - mostNames) : ""}
    </>
  );
}

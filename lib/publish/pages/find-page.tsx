/** Which charger brings my battery back, by when, at what cost? The form works with its script; the table below it without. */
import type { ComponentChildren } from "preact";
import { batteryClasses } from "../../project/index.ts";
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
import { Columns, Table } from "./table.tsx";

const description =
  "My battery, how flat, how cold, ready by when: which chargers make it, how sure that is, and what it costs. Projected.";

/** Renders the page; its table is of the results, its form asks data/find.json. */
export function renderFindPage(results: ResultsFolder): string {
  const chargers = results.index.chargers.map(({ id }) => results.charger(id));
  const matrices = readyMatrices(chargers);
  return renderPage(siteContext(results.index, "find/"), {
    title: "Find a charger",
    description,
    children: (
      <>
        <p class="lead">Which charger brings my battery back, by when, and at what cost?</p>
        <p>
          <strong>Projected, not seen:</strong> each answer is a <MethodLink method="reference-hours/1">forecast</MethodLink> of what a
          charger, as recorded, would do on your battery. Nobody saw that charge. “Ready” is 95 % of what the battery holds.
        </p>
        <aside class="caution" aria-label="Caution">
          <p>
            <strong>The sheet of the battery's maker, your local code and licensed practice come first.</strong> Acid burns, hydrogen
            explodes, a short circuit melts spanners, and a frozen battery must never be charged. <Link to="cautions/">All cautions</Link>
          </p>
        </aside>
        <Form />
        <noscript>
          <p>The form for your own battery needs scripts. The table below does not.</p>
        </noscript>
        <div data-find-results />
        <h2 id="usual">Usual batteries</h2>
        {matrices.length === 0 ? <p>No recording tells yet what a charger would do on a flooded battery.</p> : null}
        {matrices.map((matrix) => (
          <Matrix key={matrix.voltageV} matrix={matrix} />
        ))}
        <p class="key">
          <em>Will</em> is at least 90 % of the draws in time, <em>may</em> more than 10 %. Within a cell the chargers stand in the order of
          their names. Percentages, and what speaks against a charger, stand on its own page. All that the form knows:{" "}
          <Link to="data/find.json">find.json</Link>.
        </p>
      </>
    ),
  });
}

function Form() {
  const { linkTo } = useSite();
  const root = linkTo("").replace(/index\.html$/, "");
  return (
    <>
      {/* Revealed by its script. */}
      <link rel="stylesheet" href={linkTo("assets/find.css")} />
      <form class="find" hidden data-find={root} novalidate>
        <fieldset class="find-part">
          <legend>Your battery</legend>
          <Choice name="voltageV" label="Voltage" choices={voltagesV.map((volts) => ({ id: String(volts), label: `${volts} V` }))} />
          <Field
            name="ratedAh"
            label="Capacity, Ah"
            type="number"
            range={questionRanges.ratedAh}
            step="any"
            hint="As printed, at the 20 h rate"
            list={batteryClasses.map(({ typicalAh, label }) => ({ value: typicalAh, label }))}
          />
          <Choice name="kind" label="Kind" choices={kindChoices} />
          <Choice name="condition" label="Condition" choices={conditionChoices} />
        </fieldset>
        <fieldset class="find-part">
          <legend>How flat it is</legend>
          <Choice name="flat" label="How flat" choices={flatChoices} />
          <Field
            name="restV"
            label="Rest voltage, V"
            type="number"
            step="0.01"
            hint="At its posts, after four hours or more of rest, nothing connected"
          />
          <Field
            name="densityAt25C"
            label="Density of its acid, kg/l"
            type="number"
            step="0.001"
            hint="At 25 °C, mean of the cells. For each 10 °C that the acid is colder, take off 0.006"
          />
          <Field
            name="airC"
            label="How cold it is there, °C"
            type="number"
            range={questionRanges.airC}
            step="any"
            hint="The battery has stood there"
          />
        </fieldset>
        <fieldset class="find-part">
          <legend>By when, and the price of power</legend>
          <Choice name="by" label="Ready by" choices={deadlineChoices} />
          <Field name="at" label="Date and time" type="datetime-local" hint="On this device's clock" />
          <Field
            name="pricePerKWh"
            label="Price of a kWh"
            type="number"
            range={questionRanges.pricePerKWh}
            step="any"
            hint="May be left empty; in the currency of the chargers' prices"
          />
        </fieldset>
        <p>
          <button type="submit">Find chargers</button> <button type="reset">Start again</button>
        </p>
        <p role="status" data-find-status />
      </form>
      <script defer src={linkTo("assets/find.js")} />
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
  const deadlines = matrix.rows[0]?.cells.map(({ deadlineH }) => `in ${deadlineH} h`) ?? [];
  return (
    <Table
      caption={`Used flooded ${matrix.voltageV} V batteries at ${matrix.airC} °C: which chargers have them ready (95 %) by when, projected`}
      class="ready-by cards"
    >
      <Columns names={["Battery", "How flat", ...deadlines]} />
      <tbody>
        {matrix.rows.map((row) => (
          <tr key={`${row.battery} ${row.flatness}`}>
            <th scope="row">{row.battery}</th>
            <td data-label="How flat">{row.flatness}</td>
            {row.cells.map((cell) => (
              <td key={cell.deadlineH} data-label={`in ${cell.deadlineH} h`} class="words">
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
  return (
    <>
      {will.length === 0 ? null : (
        <p>
          <Mark kind="meets">
            will: <Names modes={will} />
          </Mark>
        </p>
      )}
      {may.length === 0 ? null : (
        <p>
          <Mark kind="cannot tell">
            may: <Names modes={may} />
          </Mark>
        </p>
      )}
      <Rest counts={[willNot > 0 ? `${willNot} will not` : "", notAdvised > 0 ? `${notAdvised} not advised` : ""]} />
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
  const shown = modes.slice(0, mostNames);
  return (
    <>
      {shown.map(
        ({ charger, name }, place): ComponentChildren => (
          <>
            {place === 0 ? "" : "; "}
            <Link key={name} to={`${chargerPath(charger)}#battery`}>
              {name}
            </Link>
          </>
        ),
      )}
      {modes.length > mostNames ? `; and ${modes.length - mostNames} more` : ""}
    </>
  );
}

/** The first page: every tested charger and mode in one table, results first. */
import type { Figure } from "../../nouns/figure.ts";
import { formatStated } from "../../units/format.ts";
import { figureFinder } from "../figure-finder.ts";
import { chargerPath, testPath } from "../links.ts";
import type { ComparisonRow, SiteIndex } from "../results.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { renderPage } from "./document.tsx";
import { EvidenceStrip } from "./evidence-strip.tsx";
import { FigureValue } from "./figure-value.tsx";
import { Absent, Mark } from "./mark.tsx";
import { Link, siteContext } from "./site-context.tsx";
import { SmallProfile } from "./small-profile.tsx";
import { StripKey } from "./strip-figure.tsx";
import { Table } from "./table.tsx";

/** The figures a buyer compares by, in the order of the columns; any other figure of a row follows them. */
const firstFigures = ["hours-to-target", "connections-to-target", "cost-per-result", "price"];

const statusWords: Readonly<Record<string, string>> = {
  reached: "target reached",
  "not reached": "target not reached",
  abandoned: "given up before the target",
  "no target": "no target set",
};

type Column = { readonly id: string; readonly label: string };

/** One column for each figure that any row has. */
export function figureColumns(rows: readonly ComparisonRow[]): Column[] {
  const labels = new Map<string, string>();
  for (const row of rows) for (const figure of row.figures) labels.set(figure.id, labels.get(figure.id) ?? figure.label);
  const rank = (id: string) => (firstFigures.includes(id) ? firstFigures.indexOf(id) : firstFigures.length);
  return [...labels].map(([id, label]) => ({ id, label })).sort((a, b) => rank(a.id) - rank(b.id));
}

/** Renders the comparison. */
export function renderComparisonPage(results: ResultsFolder): string {
  const { index } = results;
  return renderPage(siteContext(index, ""), {
    title: index.site.title,
    description: index.site.tagline ?? "Battery chargers measured on the bench, each figure with its evidence.",
    children: (
      <>
        <p class="lead">{index.site.tagline ?? "Battery chargers measured on the bench, each figure with its evidence."}</p>
        {index.rows.length === 0 ? <p>No test has been published yet.</p> : <ComparisonTable results={results} />}
        <NotPublished index={index} />
      </>
    ),
  });
}

function ComparisonTable({ results }: { results: ResultsFolder }) {
  const { rows } = results.index;
  const columns = figureColumns(rows);
  const first = columns.filter((column) => firstFigures.includes(column.id));
  const rest = columns.filter((column) => !firstFigures.includes(column.id));
  return (
    <>
      <Table caption="Tests, one row for each charger and mode" class="comparison cards" sortable>
        <thead>
          <tr>
            <th scope="col" data-sort="text">
              Charger and mode
            </th>
            <th scope="col">Verdict, and what was seen</th>
            <th scope="col">Against its claims</th>
            <FigureHeadings columns={first} />
            <th scope="col" data-sort="text">
              Charge profile
            </th>
            <FigureHeadings columns={rest} />
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <Row
              key={row.test.id}
              row={row}
              first={first}
              rest={rest}
              results={results}
              again={rows[index - 1]?.charger.id === row.charger.id}
            />
          ))}
        </tbody>
      </Table>
      <StripKey id="comparison" />
      <p class="key">
        Small profiles show voltage as a solid line and current as a dashed one. Rows stand in the order of the results, charger by charger;
        nobody can pay for a place. Sorting puts absent values last and marks with ≈ neighbours whose 95 % intervals overlap: they cannot be
        told apart.
      </p>
      <p>
        <Link to="data/comparison.csv">This table as CSV</Link> · <Link to="data/">all data</Link> ·{" "}
        <Link to="method/">how it is measured</Link>
      </p>
    </>
  );
}

type RowProps = {
  readonly row: ComparisonRow;
  readonly first: readonly Column[];
  readonly rest: readonly Column[];
  readonly results: ResultsFolder;
  /** Whether the row above is of the same charger. */
  readonly again: boolean;
};

function FigureHeadings({ columns }: { columns: readonly Column[] }) {
  return (
    <>
      {columns.map((column) => (
        <th key={column.id} scope="col" data-sort="number">
          {column.label}
        </th>
      ))}
    </>
  );
}

function Row({ row, first, rest, results, again }: RowProps) {
  const find = figureFinder([results.test(row.test.id)], results.charger(row.charger.id));
  // A figure that neither page shows, which would be a slip in the results, still leads to the test.
  const targetOf = (figure: Figure | undefined) => (figure && find(`${figure.of}#${figure.id}`)) ?? testPath(row.test.id);
  const cellOf = (column: Column) => {
    const figure = row.figures.find((candidate) => candidate.id === column.id);
    return <FigureCell key={column.id} label={column.label} figure={figure} target={targetOf(figure)} />;
  };
  return (
    <tr class={again ? "again" : undefined}>
      <th scope="row" data-value={`${row.charger.name} ${row.mode.name}`}>
        <Link to={chargerPath(row.charger.id)} class="charger-name">
          {row.charger.name}
        </Link>
        <span class="quiet block">{row.mode.name}</span>
        {row.charger.maker === null ? null : <span class="quiet block">{row.charger.maker}</span>}
        <span class="quiet block">
          on {row.battery.name} ({formatStated(row.battery.nominalVoltageV, "V")}, {formatStated(row.battery.capacityAh, "Ah")},{" "}
          {row.battery.construction})
        </span>
      </th>
      <td class="seen">
        <Mark kind={row.verdict.weight}>{row.verdict.sentence}</Mark>
        <EvidenceStrip timeline={row.timeline} size="row" id={`strip-${row.test.id}-${row.mode.id}`} />
        <Link to={testPath(row.test.id)}>
          Evidence<span class="unseen"> of {row.test.name}</span>
        </Link>
        , {statusWords[row.status] ?? row.status}
      </td>
      <td data-label="Against its claims">
        <ul class="outcomes">
          {row.claims.map((claim) => (
            <li key={claim.id}>
              <Mark kind={claim.outcome}>
                {claim.label}: {claim.outcome}
              </Mark>
            </li>
          ))}
        </ul>
        {row.claims.length === 0 ? <Absent kind="nothing claimed" /> : null}
      </td>
      {first.map(cellOf)}
      <td data-label="Charge profile" data-value={row.characteristic ?? ""}>
        {row.characteristic === null ? <Absent kind="cannot tell" /> : <span class="letters">{row.characteristic}</span>}
        {row.profile === null ? null : (
          <SmallProfile profile={row.profile} words={`Profile of voltage and current, ${row.charger.name}, ${row.mode.name}`} />
        )}
      </td>
      {rest.map(cellOf)}
    </tr>
  );
}

type CellProps = {
  readonly label: string;
  readonly figure: Figure | undefined;
  /** Where the figure is told in full. */
  readonly target: string;
};

function FigureCell({ label, figure, target }: CellProps) {
  if (figure === undefined) {
    return (
      <td class="number" data-label={label} data-value="">
        <Absent kind="not stated" />
      </td>
    );
  }
  return (
    <td class="number" data-label={label} data-value={figure.value ?? ""} data-low={figure.low ?? ""} data-high={figure.high ?? ""}>
      <Link to={target}>
        <FigureValue figure={figure} />
      </Link>
    </td>
  );
}

function NotPublished({ index }: { index: SiteIndex }) {
  if (index.notPublished.length === 0) return null;
  return (
    <section>
      <h2>Kept off the site</h2>
      <p>Errors in their files keep these from being published:</p>
      <ul>
        {index.notPublished.map((item) => (
          <li key={item.what}>
            <strong>{item.what}</strong>: {item.why}
          </li>
        ))}
      </ul>
    </section>
  );
}

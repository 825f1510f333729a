/** The first page: every charger in one table, results first. */
import { figureFinder } from "../figure-finder.ts";
import type { ComparisonRow, SiteIndex } from "../results.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { Facets } from "./comparison/facets.tsx";
import { GroupRow } from "./comparison/group-row.tsx";
import { chargerGroups, figureColumns, firstFigures, type Group } from "./comparison/groups.ts";
import { renderPage } from "./document.tsx";
import { Link, siteContext, useSite } from "./site-context.tsx";
import { StripKey } from "./strip-figure.tsx";
import { Table } from "./table.tsx";

/** Renders the comparison. */
export function renderComparisonPage(results: ResultsFolder): string {
  const { index } = results;
  return renderPage(siteContext(index, ""), {
    title: index.site.title,
    description: index.site.tagline ?? "Battery chargers measured on the bench, each figure with its evidence.",
    children: (
      <>
        <p class="lead">{index.site.tagline ?? "Battery chargers measured on the bench, each figure with its evidence."}</p>
        {index.rows.length === 0 ? <p>No test has been published yet.</p> : <Comparison results={results} />}
        <NotPublished index={index} />
      </>
    ),
  });
}

function Comparison({ results }: { results: ResultsFolder }) {
  const { rows } = results.index;
  const { linkTo } = useSite();
  const groups = chargerGroups(rows);
  const columns = figureColumns(rows);
  const first = columns.filter((column) => firstFigures.includes(column.id));
  const rest = columns.filter((column) => !firstFigures.includes(column.id));
  const findOf = (row: ComparisonRow) => figureFinder([results.test(row.test.id)], results.charger(row.charger.id));
  return (
    <>
      <Facets groups={groups} columns={columns} />
      <Table caption="Chargers, one row each" class="comparison cards" sortable>
        <thead>
          <tr>
            <th scope="col" data-sort="text">
              Charger
            </th>
            <th scope="col">Verdict, and what was seen</th>
            <th scope="col" data-column="claims">
              Against its claims
            </th>
            <FigureHeadings columns={first} />
            <th scope="col" data-sort="text" data-column="profile">
              Charge profile
            </th>
            <FigureHeadings columns={rest} />
          </tr>
        </thead>
        <tbody>
          {groups.map((group: Group) => (
            <GroupRow key={group.shown.charger.id} group={group} first={first} rest={rest} find={findOf(group.shown)} />
          ))}
        </tbody>
      </Table>
      {/* In this order: the second presses the buttons that the first makes. */}
      <script defer src={linkTo("assets/sort.js")} />
      <script defer src={linkTo("assets/compare.js")} />
      <StripKey />
      <p class="key">
        A row shows the charger's most telling test: one that reached its target before one that did not, and the longer of two; its other
        tests unfold under its name. Small profiles show voltage as a solid line and current as a dashed one. Rows stand in the order of the
        names; nobody can pay for a place. Sorting puts absent values last and marks with ≈ neighbours whose 95 % intervals overlap: they
        cannot be told apart.
      </p>
      <p>
        <Link to="data/comparison.csv">All tests as CSV</Link> · <Link to="data/index.json">as JSON</Link> ·{" "}
        <Link to="data/">all data</Link> · <Link to="method/">how it is measured</Link>
      </p>
    </>
  );
}

function FigureHeadings({ columns }: { columns: ReturnType<typeof figureColumns> }) {
  return (
    <>
      {columns.map((column) => (
        <th key={column.id} scope="col" data-sort="number" data-column={column.id}>
          {column.label}
        </th>
      ))}
    </>
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

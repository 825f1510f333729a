/** The first page: every charger in one table, results first. */
import type { Language } from "../../nouns/site.ts";
import { scriptPath } from "../assets.ts";
import { figureFinder } from "../figure-finder.ts";
import type { SiteIndex } from "../results.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { Facets } from "./comparison/facets.tsx";
import { GroupRow } from "./comparison/group-row.tsx";
import { chargerGroups, figureColumns, firstFigures, type Group } from "./comparison/groups.ts";
import { renderPage } from "./document.tsx";
import { Link, Own, siteContext, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";
import { StripKey } from "./strip-figure.tsx";
import { Table } from "./table.tsx";

/** Renders the comparison. */
export function renderComparisonPage(results: ResultsFolder, language: Language): string {
  const { index } = results;
  const context = siteContext(index, "", language);
  const { comparison } = context.words;
  return renderPage(context, {
    title: index.site.title,
    description: index.site.tagline ?? comparison.tagline,
    children: (
      <>
        <p class="lead">{index.site.tagline === null ? comparison.tagline : <Own>{index.site.tagline}</Own>}</p>
        {index.rows.length === 0 ? <p>{comparison.noTest}</p> : <Comparison results={results} />}
        <NotPublished index={index} />
      </>
    ),
  });
}

function Comparison({ results }: { results: ResultsFolder }) {
  const { rows } = results.index;
  const { language, linkTo, words } = useSite();
  const { comparison } = words;
  const groups = chargerGroups(rows);
  const columns = figureColumns(rows);
  const first = columns.filter((column) => firstFigures.includes(column.id));
  const rest = columns.filter((column) => !firstFigures.includes(column.id));
  const rowOf = (group: Group) => {
    const charger = results.charger(group.shown.charger.id);
    const find = figureFinder([results.test(group.shown.test.id)], charger);
    return <GroupRow key={charger.id} group={group} charger={charger} first={first} rest={rest} find={find} />;
  };
  return (
    <>
      <Facets groups={groups} columns={columns} />
      <Table caption={comparison.caption} class="comparison cards" sortable>
        <thead>
          <tr>
            <th scope="col" data-sort="text">
              {comparison.columns.charger}
            </th>
            <th scope="col">{comparison.columns.seen}</th>
            <th scope="col" data-column="claims">
              {comparison.columns.claims}
            </th>
            <FigureHeadings columns={first} />
            <th scope="col" data-sort="text" data-column="profile">
              {comparison.columns.profile}
            </th>
            <FigureHeadings columns={rest} />
          </tr>
        </thead>
        <tbody>{groups.map(rowOf)}</tbody>
      </Table>
      {/* In this order: the second presses the buttons that the first makes. */}
      <script defer src={linkTo(scriptPath("sort", language))} />
      <script defer src={linkTo(scriptPath("compare", language))} />
      <StripKey />
      <p class="key">{comparison.key}</p>
      <p>
        <Link to="data/comparison.csv">{comparison.asCsv}</Link> · <Link to="data/index.json">{comparison.asJson}</Link> ·{" "}
        <Link to="data/">{comparison.allData}</Link> · <Link to="method/">{comparison.howMeasured}</Link>
      </p>
    </>
  );
}

function FigureHeadings({ columns }: { columns: ReturnType<typeof figureColumns> }) {
  return (
    <>
      {columns.map((column) => (
        <th key={column.id} scope="col" data-sort="number" data-column={column.id}>
          <Said text={column.label} />
        </th>
      ))}
    </>
  );
}

function NotPublished({ index }: { index: SiteIndex }) {
  const { comparison } = useSite().words;
  if (index.notPublished.length === 0) return null;
  return (
    <section>
      <h2>{comparison.notPublished}</h2>
      <p>{comparison.notPublishedWhy}</p>
      <ul>
        {index.notPublished.map((item) => (
          <li key={item.what}>
            <strong>{item.what}</strong>: <Said text={item.why} />
          </li>
        ))}
      </ul>
    </section>
  );
}

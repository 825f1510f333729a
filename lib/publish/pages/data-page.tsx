/** What can be downloaded, in which form, and how to see that it is unchanged. */
import type { Language } from "../../nouns/site.ts";
import { chargerPath, testPath } from "../links.ts";
import { packagePath, siteCitationPath, sitePackagePath, siteQuotePath } from "../outward/addresses.ts";
import type { SiteIndex } from "../results.ts";
import { renderPage } from "./document.tsx";
import { Link, siteContext } from "./site-context.tsx";
import { Columns, Table } from "./table.tsx";

/** Renders the page about downloads. */
export function renderDataPage(index: SiteIndex, language: Language): string {
  const context = siteContext(index, "data/", language);
  const { data: words } = context.words.reference;
  const { columns } = words;
  return renderPage(context, {
    title: words.title,
    description: words.description,
    children: (
      <>
        <p class="lead">{words.lead(index.site.licence)}</p>
        <ul>
          <li>
            <Link to="data/index.json">index.json</Link>
            {words.index(index.schemaVersion)}
          </li>
          <li>
            <Link to="data/comparison.csv">comparison.csv</Link>
            {words.comparison}
          </li>
          <li>
            <Link to={sitePackagePath}>datapackage.json</Link>
            {words.dataPackage}
          </li>
          <li>
            <Link to={siteCitationPath}>CITATION.cff</Link>
            {words.citation}
            <Link to={siteQuotePath}>{words.quote}</Link>.
          </li>
        </ul>
        <h2>{words.byTest}</h2>
        {index.tests.length === 0 ? (
          <p>{words.noTest}</p>
        ) : (
          <Table caption={words.caption} class="cards labelled short">
            <Columns names={[columns.test, columns.everything, columns.results, columns.figures, columns.digests]} />
            <tbody>
              {index.tests.map((test) => (
                <tr key={test.id}>
                  <th scope="row">
                    <Link to={`${testPath(test.id)}#downloads`}>{test.name}</Link>
                  </th>
                  <td>
                    <Link to={packagePath(test.id)}>zip</Link>
                  </td>
                  <td>
                    <Link to={`data/tests/${test.id}.json`}>JSON</Link>
                  </td>
                  <td>
                    <Link to={`data/tests/${test.id}.figures.csv`}>CSV</Link>
                  </td>
                  <td>
                    <Link to={`${testPath(test.id)}SHA256SUMS`}>SHA256SUMS</Link>
                  </td>
                </tr>
              ))}
            </tbody>
          </Table>
        )}
        <h2>{words.byCharger}</h2>
        <ul>
          {index.chargers.map((charger) => (
            <li key={charger.id}>
              <Link to={chargerPath(charger.id)}>{charger.name}</Link>: <Link to={`data/chargers/${charger.id}.json`}>JSON</Link>
            </li>
          ))}
        </ul>
        <h2>{words.csv}</h2>
        <p>{words.csvNote}</p>
        <h2>{words.digests}</h2>
        <p>{words.digestsNote}</p>
      </>
    ),
  });
}

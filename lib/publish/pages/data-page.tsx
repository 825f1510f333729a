/** What can be downloaded, in which form, and how to see that it is unchanged. */
import { chargerPath, testPath } from "../links.ts";
import { packagePath, siteCitationPath, sitePackagePath, siteQuotePath } from "../outward/addresses.ts";
import type { SiteIndex } from "../results.ts";
import { renderPage } from "./document.tsx";
import { Link, siteContext } from "./site-context.tsx";
import { Columns, Table } from "./table.tsx";

/** Renders the page about downloads. */
export function renderDataPage(index: SiteIndex): string {
  return renderPage(siteContext(index, "data/"), {
    title: "Data",
    description: "Results as JSON and CSV, raw files as the recorders wrote them, and their SHA-256 sums.",
    children: (
      <>
        <p class="lead">
          Every page is made from the files below, and from nothing else. Raw files are published byte for byte as they were handed in.
          Licence of data and words: {index.site.licence ?? "not stated"}.
        </p>
        <ul>
          <li>
            <Link to="data/index.json">index.json</Link>: the comparison, the methods, the rules and every input file with its digest
            (format version {index.schemaVersion}).
          </li>
          <li>
            <Link to="data/comparison.csv">comparison.csv</Link>: the comparison as a table, one figure a row.
          </li>
          <li>
            <Link to={sitePackagePath}>datapackage.json</Link>: all files of the site with their digests, as a Data Package.
          </li>
          <li>
            <Link to={siteCitationPath}>CITATION.cff</Link>: how to cite the site; <Link to={siteQuotePath}>how to quote a result</Link>.
          </li>
        </ul>
        <h2>By test</h2>
        {index.tests.length === 0 ? (
          <p>No test has been published yet.</p>
        ) : (
          <Table caption="Downloads of each test" class="cards labelled short">
            <Columns names={["Test", "Everything", "Results", "Figures", "Digests of raw files"]} />
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
        <h2>By charger</h2>
        <ul>
          {index.chargers.map((charger) => (
            <li key={charger.id}>
              <Link to={chargerPath(charger.id)}>{charger.name}</Link>: <Link to={`data/chargers/${charger.id}.json`}>JSON</Link>
            </li>
          ))}
        </ul>
        <h2>Form of the CSV files</h2>
        <p>
          UTF-8, commas between fields, a point as decimal mark, the unit in a column of its own, absent values left empty with the kind of
          absence and its reason beside them. Text that a spreadsheet could take for a formula starts with an apostrophe; numbers are never
          touched.
        </p>
        <h2>What the digests show</h2>
        <p>
          A SHA-256 digest shows that a file is the one that was published. It does not show that a reading was right: for that look at the
          instruments, their calibration dates, and the doubts printed on each test's page.
        </p>
      </>
    ),
  });
}

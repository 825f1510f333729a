/** The page of one test: status and findings first, then every figure down to file and line. */

import { formatBytes, formatInstant } from "../../units/format.ts";
import type { TestCharts } from "../charts/index.ts";
import { figureFinder } from "../figure-finder.ts";
import { chargerPath, testPath } from "../links.ts";
import { packagePath } from "../outward/addresses.ts";
import type { TestResult } from "../results.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { CautionBox } from "./caution-box.tsx";
import { ChartFigure } from "./chart-figure.tsx";
import { ClaimsKey, ClaimsTable } from "./claims-table.tsx";
import { Contents } from "./contents.tsx";
import { renderPage } from "./document.tsx";
import { Doubts } from "./doubts.tsx";
import { downloadsOf, type FindDownload } from "./evidence-list.tsx";
import { ExaminationSection } from "./examination-section.tsx";
import { Facts } from "./facts.tsx";
import { FiguresTable, GroupedFiguresTable } from "./figures-table.tsx";
import { Findings } from "./findings.tsx";
import { Mark } from "./mark.tsx";
import { ReadingsTable } from "./readings-table.tsx";
import { RecordingSection, recordingAnchor } from "./recording-section.tsx";
import { sentence } from "./sentence.ts";
import { Link, siteContext } from "./site-context.tsx";
import { EvidenceStripFigure } from "./strip-figure.tsx";
import { Columns, Table } from "./table.tsx";

const statusWords = {
  reached: { mark: "good", words: "The target density was reached" },
  "not reached": { mark: "unsure", words: "The target density has not been reached" },
  "not known": { mark: "unsure", words: "Whether the target density was reached is not known" },
  abandoned: { mark: "bad", words: "The test was given up before the target" },
  "no target": { mark: "note", words: "No target density was set" },
} as const;

const sections = [
  { id: "findings", name: "Findings" },
  { id: "witnesses", name: "Cross-examination" },
  { id: "figures", name: "Figures" },
  { id: "density", name: "Acid density" },
  { id: "connections", name: "Connections" },
  { id: "recordings", name: "Recordings" },
  { id: "readings", name: "Readings" },
  { id: "claims", name: "Claims" },
  { id: "doubts", name: "Doubts" },
  { id: "conditions", name: "How it was tested" },
  { id: "downloads", name: "Downloads" },
];

/** Renders a test's page from its results and its drawings. */
export function renderTestPage(results: ResultsFolder, test: TestResult, charts: TestCharts): string {
  const context = siteContext(results.index, testPath(test.id), results.index.site.invented || test.invented);
  const find = figureFinder([test], results.charger(test.charger.id));
  const findFile = downloadsOf([test]);
  const status = statusWords[test.status];
  return renderPage(context, {
    title: test.title,
    description: `${test.charger.name}, ${test.mode.name}, on ${test.battery.name}: ${status.words.toLowerCase()}.`,
    children: (
      <>
        <p class="lead">
          <Link to={chargerPath(test.charger.id)}>{test.charger.name}</Link>, mode “{test.mode.name}”, on {test.battery.name}
        </p>
        <p class="status">
          <Mark kind={status.mark}>
            <strong>{status.words}</strong>
            {test.target === null ? "" : `: ${test.target.densityAt25C} kg/l at 25 °C`}
          </Mark>
        </p>
        <StopRule target={test.target} />
        <Contents sections={sections} />
        <EvidenceStripFigure timeline={test.timeline} />
        <h2 id="findings">Findings</h2>
        <Findings findings={test.findings} find={find} linkTo={context.linkTo} />
        <h2 id="witnesses">Do the witnesses agree?</h2>
        <ExaminationSection examination={test.examination} chart={charts.witnesses} />
        <h2 id="figures">Figures of the whole test</h2>
        <FiguresTable caption="Each with its interval, method and evidence" figures={test.figures} find={findFile} />
        <h2 id="density">Acid density</h2>
        <Density test={test} charts={charts} />
        <CautionBox sealed={test.battery.sealed} />
        <h2 id="connections">Connections</h2>
        <ConnectionsTable test={test} find={findFile} />
        <h2 id="recordings">Recordings</h2>
        {test.recordings.length === 0 ? <p>Nothing was recorded; only readings were taken.</p> : null}
        {test.recordings.map((recording) => (
          <RecordingSection
            key={recording.id}
            test={test.id}
            recording={recording}
            chart={charts.profiles.get(recording.id)}
            find={findFile}
          />
        ))}
        <script defer src={context.linkTo("assets/explore-button.js")} />
        <h2 id="readings">Readings</h2>
        <ReadingsTable readings={test.readings} find={findFile} />
        <h2 id="claims">Claims</h2>
        <ClaimsTable caption="Claims judged by this test" claims={test.claims} find={find} />
        <ClaimsKey claims={test.claims} />
        <h2 id="doubts">Doubts</h2>
        {test.doubts.length === 0 ? <p>The checks raised no doubts about this test's files.</p> : <Doubts doubts={test.doubts} />}
        <Conditions test={test} />
        <h2 id="downloads">Downloads</h2>
        <Downloads test={test} />
      </>
    ),
  });
}

/** What counts as reached, in the reviewer's words and in numbers. */
function StopRule({ target }: { target: TestResult["target"] }) {
  if (target === null || (target.stopRule === null && target.stop === null)) return null;
  const { stop } = target;
  return (
    <p class="quiet">
      Counted as reached by: {target.stopRule ?? "the rule in numbers"}
      {stop === null ? "" : ` (${stop.equalReadings} readings equal within ${stop.withinKgPerL} kg/l, ${stop.apartMin} min apart)`}
    </p>
  );
}

function Density({ test, charts }: { test: TestResult; charts: TestCharts }) {
  if (charts.density === undefined) {
    const why = test.battery.sealed ? "The battery is sealed, so its acid cannot be reached." : "No density was read.";
    return <p>{why}</p>;
  }
  return (
    <ChartFigure chart={charts.density} caption="Acid density at 25 °C">
      Diamonds are readings with their 95 % intervals; the dotted line only joins them, nobody looked in between. The values stand under{" "}
      <a href="#readings">Readings</a>.
    </ChartFigure>
  );
}

function ConnectionsTable({ test, find }: { test: TestResult; find: FindDownload }) {
  return (
    <>
      <Table caption="Connections, from clamps on to clamps off" class="cards labelled">
        <Columns names={["Connection", "On", "Off", "How it ended", "Recordings", "Note"]} />
        <tbody>
          {test.connections.map((connection) => (
            <tr key={connection.id}>
              <th scope="row">{connection.number}</th>
              <td>{formatInstant(connection.on)}</td>
              <td>{connection.off === null ? "not seen" : formatInstant(connection.off)}</td>
              <td class="words">{sentence(connection.endedWords)}</td>
              <td>
                {connection.recordings.length === 0 ? "nothing recorded" : null}
                <ul class="plain">
                  {connection.recordings.map((id) => (
                    <li key={id}>
                      <a href={`#${recordingAnchor(id)}`}>{id}</a>
                    </li>
                  ))}
                </ul>
              </td>
              <td class="words">{sentence(connection.note ?? "")}</td>
            </tr>
          ))}
        </tbody>
      </Table>
      <GroupedFiguresTable
        caption="Figures of each connection"
        groups={test.connections.map((connection) => ({ name: `Connection ${connection.number}`, figures: connection.figures }))}
        find={find}
      />
    </>
  );
}

function Conditions({ test }: { test: TestResult }) {
  return (
    <>
      <h2 id="conditions">How it was tested</h2>
      <Facts facts={test.facts} />
      {test.notes === null ? null : <p>{test.notes}</p>}
      {test.excluded.length === 0 ? null : (
        <>
          <h3>Left out, and why</h3>
          <ul>
            {test.excluded.map((item) => (
              <li key={item.what}>
                {item.what}: {item.why}
              </li>
            ))}
          </ul>
        </>
      )}
      <h3>Battery: {test.battery.name}</h3>
      <Facts facts={test.battery.facts} />
      {test.instruments.map((instrument) => (
        <section key={`${instrument.role} ${instrument.id}`}>
          <h3>
            {instrument.role}: {instrument.name}
          </h3>
          <Facts facts={instrument.facts} />
        </section>
      ))}
      <h3>Revisions</h3>
      {test.revisions.length === 0 ? <p>None since publication.</p> : null}
      <ul>
        {test.revisions.map((revision) => (
          <li key={`${revision.on} ${revision.what}`}>
            {revision.on}: {revision.what}{" "}
            <span class="quiet">
              ({revision.why}
              {revision.noticedBy === null ? "" : `; noticed by ${revision.noticedBy}`})
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

function Downloads({ test }: { test: TestResult }) {
  return (
    <>
      <ul>
        <li>
          <Link to={packagePath(test.id)}>Everything of this test in one file, zip</Link>: results, records and raw files, with which every
          figure can be rebuilt.
        </li>
        <li>
          <Link to={`data/tests/${test.id}.json`}>All results of this test, JSON</Link>
        </li>
        <li>
          <Link to={`data/tests/${test.id}.figures.csv`}>All figures of this test, CSV</Link>
        </li>
        <li>
          <Link to={`${testPath(test.id)}SHA256SUMS`}>SHA256SUMS</Link>: run <code>sha256sum -c SHA256SUMS</code> beside it to see that no
          raw file has changed since. It shows that the files are the same, not that a reading was right.
        </li>
      </ul>
      <Table caption="Files as they were handed in" class="cards labelled">
        <Columns names={["File", "What it is", "Size", "SHA-256"]} />
        <tbody>
          {test.files.map((file) => (
            <tr key={file.path}>
              <th scope="row">
                <Link to={file.download}>{file.path}</Link>
              </th>
              <td>{file.what}</td>
              <td>{formatBytes(file.bytes)}</td>
              <td>
                <code class="hash">{file.sha256}</code>
              </td>
            </tr>
          ))}
        </tbody>
      </Table>
    </>
  );
}

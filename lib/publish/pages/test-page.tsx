/** The page of one test: status and findings first, then every figure down to file and line. */

import type { Language } from "../../nouns/site.ts";
import { scriptPath } from "../assets.ts";
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
import { Link, Own, siteContext, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";
import { EvidenceStripFigure } from "./strip-figure.tsx";
import { Columns, Table } from "./table.tsx";

const statusMarks = { reached: "good", "not reached": "unsure", "not known": "unsure", abandoned: "bad", "no target": "note" } as const;

const sections = [
  "findings",
  "witnesses",
  "figures",
  "density",
  "connections",
  "recordings",
  "readings",
  "claims",
  "doubts",
  "conditions",
  "downloads",
] as const;

/** Renders a test's page from its results and its drawings. */
export function renderTestPage(results: ResultsFolder, test: TestResult, charts: TestCharts, language: Language): string {
  const context = siteContext(results.index, testPath(test.id), language, { invented: results.index.site.invented || test.invented });
  const find = figureFinder([test], results.charger(test.charger.id));
  const findFile = downloadsOf([test]);
  const { test: words } = context.words;
  const status = words.statuses[test.status];
  return renderPage(context, {
    title: test.title,
    description: words.description(test.charger.name, test.mode.name, test.battery.name, status),
    children: (
      <>
        <p class="lead">
          {words.onBattery(<Link to={chargerPath(test.charger.id)}>{test.charger.name}</Link>, test.mode.name, test.battery.name)}
        </p>
        <p class="status">
          <Mark kind={statusMarks[test.status]}>
            <strong>{status}</strong>
            {test.target === null ? "" : `: ${words.targetAt25C(context.formats.formatStated(test.target.densityAt25C, ""))}`}
          </Mark>
        </p>
        <StopRule target={test.target} />
        <Contents sections={sections.map((id) => ({ id, name: words.sections[id] }))} />
        <EvidenceStripFigure timeline={test.timeline} />
        <h2 id="findings">{words.sections.findings}</h2>
        <Findings findings={test.findings} find={find} linkTo={context.linkTo} />
        <h2 id="witnesses">{words.witnessesHeading}</h2>
        <ExaminationSection examination={test.examination} chart={charts.witnesses} />
        <h2 id="figures">{words.figuresHeading}</h2>
        <FiguresTable caption={words.figuresCaption} figures={test.figures} find={findFile} />
        <h2 id="density">{words.sections.density}</h2>
        <Density test={test} charts={charts} />
        <CautionBox sealed={test.battery.sealed} />
        <h2 id="connections">{words.sections.connections}</h2>
        <ConnectionsTable test={test} find={findFile} />
        <h2 id="recordings">{words.sections.recordings}</h2>
        {test.recordings.length === 0 ? <p>{words.nothingRecorded}</p> : null}
        {test.recordings.map((recording) => (
          <RecordingSection
            key={recording.id}
            test={test.id}
            recording={recording}
            chart={charts.profiles.get(recording.id)}
            find={findFile}
          />
        ))}
        <script defer src={context.linkTo(scriptPath("explore-button", language))} />
        <h2 id="readings">{words.sections.readings}</h2>
        <ReadingsTable readings={test.readings} find={findFile} />
        <h2 id="claims">{words.sections.claims}</h2>
        <ClaimsTable caption={words.claimsCaption} claims={test.claims} find={find} />
        <ClaimsKey claims={test.claims} />
        <h2 id="doubts">{words.sections.doubts}</h2>
        {test.doubts.length === 0 ? <p>{words.noDoubts}</p> : <Doubts doubts={test.doubts} />}
        <Conditions test={test} />
        <h2 id="downloads">{words.sections.downloads}</h2>
        <Downloads test={test} />
      </>
    ),
  });
}

/** What counts as reached, in the reviewer's words and in numbers. */
function StopRule({ target }: { target: TestResult["target"] }) {
  const { formats, words } = useSite();
  const { reachedBy, ruleInNumbers, stopNumbers } = words.test;
  if (target === null || (target.stopRule === null && target.stop === null)) return null;
  const { stop } = target;
  return (
    <p class="quiet">
      {reachedBy} {target.stopRule === null ? ruleInNumbers : <Own>{target.stopRule}</Own>}
      {stop === null ? "" : stopNumbers(stop.equalReadings, `${formats.formatStated(stop.withinKgPerL, "")} kg/l`, `${stop.apartMin} min`)}
    </p>
  );
}

function Density({ test, charts }: { test: TestResult; charts: TestCharts }) {
  const { test: words } = useSite().words;
  if (charts.density === undefined) return <p>{test.battery.sealed ? words.sealed : words.noDensity}</p>;
  return (
    <ChartFigure chart={charts.density} caption={words.densityCaption}>
      {words.densityNote((readings) => (
        <a href="#readings">{readings}</a>
      ))}
    </ChartFigure>
  );
}

function ConnectionsTable({ test, find }: { test: TestResult; find: FindDownload }) {
  const { formats, words: all } = useSite();
  const { connections: words } = all.test;
  const { columns } = words;
  return (
    <>
      <Table caption={words.caption} class="cards labelled">
        <Columns names={[columns.connection, columns.on, columns.off, columns.ended, columns.recordings, columns.note]} />
        <tbody>
          {test.connections.map((connection) => (
            <tr key={connection.id}>
              <th scope="row">{connection.number}</th>
              <td>{formats.formatInstant(connection.on)}</td>
              <td>{connection.off === null ? words.notSeen : formats.formatInstant(connection.off)}</td>
              <td class="words">
                <Said text={connection.endedWords} asSentence />
              </td>
              <td>
                {connection.recordings.length === 0 ? words.nothingRecorded : null}
                <ul class="plain">
                  {connection.recordings.map((id) => (
                    <li key={id}>
                      <a href={`#${recordingAnchor(id)}`}>{id}</a>
                    </li>
                  ))}
                </ul>
              </td>
              <td class="words">{connection.note === null ? null : <Own>{sentence(connection.note)}</Own>}</td>
            </tr>
          ))}
        </tbody>
      </Table>
      <GroupedFiguresTable
        caption={words.figures}
        groups={test.connections.map((connection) => ({ name: words.name(connection.number), figures: connection.figures }))}
        find={find}
      />
    </>
  );
}

function Conditions({ test }: { test: TestResult }) {
  const { formats, words: all } = useSite();
  const { test: words } = all;
  return (
    <>
      <h2 id="conditions">{words.sections.conditions}</h2>
      <Facts facts={test.facts} />
      {test.notes === null ? null : (
        <p>
          <Own>{test.notes}</Own>
        </p>
      )}
      {test.excluded.length === 0 ? null : (
        <>
          <h3>{words.leftOut}</h3>
          <ul>
            {test.excluded.map((item) => (
              <li key={item.what}>
                <Own>
                  {item.what}: {item.why}
                </Own>
              </li>
            ))}
          </ul>
        </>
      )}
      <h3>{words.battery(test.battery.name)}</h3>
      <Facts facts={test.battery.facts} />
      {test.instruments.map((instrument) => (
        <section key={`${instrument.role} ${instrument.id}`}>
          <h3>
            <Said text={instrument.role} />: {instrument.name}
          </h3>
          <Facts facts={instrument.facts} />
        </section>
      ))}
      <h3>{words.revisions}</h3>
      {test.revisions.length === 0 ? <p>{words.noRevisions}</p> : null}
      <ul>
        {test.revisions.map((revision) => (
          <li key={`${revision.on} ${revision.what}`}>
            {formats.formatDay(revision.on)}: <Own>{revision.what}</Own>{" "}
            <span class="quiet">
              (<Own>{revision.why}</Own>
              {revision.noticedBy === null ? "" : words.noticedBy(revision.noticedBy)})
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

function Downloads({ test }: { test: TestResult }) {
  const { formats, words: all } = useSite();
  const { downloads: words } = all.test;
  return (
    <>
      <ul>
        <li>
          <Link to={packagePath(test.id)}>{words.everything}</Link>
          {words.everythingNote}
        </li>
        <li>
          <Link to={`data/tests/${test.id}.json`}>{words.json}</Link>
        </li>
        <li>
          <Link to={`data/tests/${test.id}.figures.csv`}>{words.csv}</Link>
        </li>
        <li>
          <Link to={`${testPath(test.id)}SHA256SUMS`}>SHA256SUMS</Link>
          {words.sums(<code>sha256sum -c SHA256SUMS</code>)}
        </li>
      </ul>
      <Table caption={words.caption} class="cards labelled">
        <Columns names={[words.columns.file, words.columns.what, words.columns.size, "SHA-256"]} />
        <tbody>
          {test.files.map((file) => (
            <tr key={file.path}>
              <th scope="row">
                <Link to={file.download}>{file.path}</Link>
              </th>
              <td>
                <Said text={file.what} />
              </td>
              <td>{formats.formatBytes(file.bytes)}</td>
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

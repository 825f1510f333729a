/**
 * What became of each version of a charger's result. Quotations link here, to the place of the version they quote: they cannot know what
 * came after them, this page can.
 */
import { chargerPath } from "../links.ts";
import { chargerFeedPath, chargerSumsPath, quotePath, versionAnchor, versionsPath } from "../outward/addresses.ts";
import { eventsOfCharger, type ResultEvent, testsOf, undated, verdictWords, versionsOf } from "../outward/history.ts";
import type { Quotable } from "../outward/quotation.ts";
import { standingNotice } from "../outward/standing.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { renderPage } from "./document.tsx";
import { sentence } from "./sentence.ts";
import { Link, siteContext } from "./site-context.tsx";
import { Columns, Table } from "./table.tsx";

/** Renders the versions of a charger's result. */
export function renderVersionsPage(results: ResultsFolder, quotable: Quotable): string {
  const { index, charger, version, fingerprint, invented } = quotable;
  const events = eventsOfCharger(charger, testsOf(results, charger.id));
  const notice = standingNotice(charger);
  return renderPage(siteContext(index, versionsPath(charger.id), invented), {
    title: `Versions of the result: ${charger.name}`,
    description: `Which result of ${charger.name} is the newest, and what changed since an earlier one.`,
    children: (
      <>
        {notice === null ? null : (
          <p class="lead">
            <strong>{notice.words}</strong>
          </p>
        )}
        <p class="lead" id={version === undated ? versionAnchor(undated) : undefined}>
          {version === undated ? (
            "The records state no date for this result, so its versions can be told by their fingerprint only."
          ) : (
            <>
              The newest result is of <strong>{version}</strong>.
            </>
          )}{" "}
          It was made by method version {index.methodVersion}, and its fingerprint is <code>{fingerprint}</code>.{" "}
          <Link to={chargerPath(charger.id)}>{charger.name}, as it stands</Link>
        </p>
        <p>
          You come from a copy with another date, method version or fingerprint? Then it shows an older result. The table says what changed
          since its date; a change that is not in the table, such as a better wording, changes the fingerprint alone.
        </p>
        <VersionsTable events={events} />
        {version === undated ? null : (
          <p id={versionAnchor(undated)}>A copy that names no date was made before any date was stated: compare its fingerprint.</p>
        )}
        <h2>The fingerprint</h2>
        <p>
          It is the beginning of the SHA-256 digest of <Link to={chargerSumsPath(charger.id)}>SHA256SUMS</Link>, the list of digests of all
          results and raw files of this charger: <code>sha256sum SHA256SUMS</code> prints it, and <code>sha256sum -c SHA256SUMS</code> tries
          the files. It shows that files are the same, not that a reading was right.
        </p>
        <ul>
          <li>
            <Link to={quotePath(charger.id)}>How to quote this result</Link>
          </li>
          {index.site.baseUrl === null || events.length === 0 ? null : (
            <li>
              <Link to={chargerFeedPath(charger.id)}>Feed of changes to this result, Atom</Link>
            </li>
          )}
        </ul>
      </>
    ),
  });
}

function VersionsTable({ events }: { events: readonly ResultEvent[] }) {
  const versions = versionsOf(events);
  if (versions.length === 0) return <p>No publication, revision or correction is dated in the records.</p>;
  return (
    <Table caption="Versions, newest first" class="cards labelled">
      <Columns names={["Version", "Does it still hold?", "What happened that day"]} />
      <tbody>
        {versions.map(({ version, events: ofDay }, index) => (
          <tr key={version} id={versionAnchor(version)}>
            <th scope="row">{version}</th>
            <td>
              {index === 0 ? "This is the newest." : <Superseded later={versions.slice(0, index).flatMap((later) => later.events)} />}
            </td>
            <td class="words">
              <ul class="plain">
                {ofDay.map((event) => (
                  <li key={event.id}>
                    <EventWords event={event} />
                  </li>
                ))}
              </ul>
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function Superseded({ later }: { later: readonly ResultEvent[] }) {
  const turned = later.some((event) => event.changesVerdict === true);
  const count = later.length === 1 ? "one change" : `${later.length} changes`;
  return (
    <>
      A newer result exists: {count} since. {turned ? <strong>The verdict changed.</strong> : "No change to the verdict was noted."}
    </>
  );
}

function EventWords({ event }: { event: ResultEvent }) {
  const { kind, what, why } = event;
  if (kind === "published") return <>{sentence(what)}</>;
  return (
    <>
      <strong>{kind}</strong>: {sentence(what)} {sentence(why ?? "")} {verdictWords(event)}
    </>
  );
}

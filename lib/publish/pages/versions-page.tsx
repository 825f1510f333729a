/**
 * What became of each version of a charger's result. Quotations link here, to the place of the version they quote: they cannot know what
 * came after them, this page can.
 */
import type { Language } from "../../nouns/site.ts";
import { chargerPath } from "../links.ts";
import { chargerFeedPath, chargerSumsPath, quotePath, versionAnchor, versionsPath } from "../outward/addresses.ts";
import { eventsOfCharger, type ResultEvent, testsOf, undated, versionsOf } from "../outward/history.ts";
import type { Quotable } from "../outward/quotation.ts";
import { standingNotice } from "../outward/standing.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { wordFor } from "../words/word-for.ts";
import { renderPage } from "./document.tsx";
import { sentence } from "./sentence.ts";
import { Link, Own, siteContext, useSite } from "./site-context.tsx";
import { Columns, Table } from "./table.tsx";

/** Renders the versions of a charger's result. */
export function renderVersionsPage(results: ResultsFolder, quotable: Quotable, language: Language): string {
  const { index, charger, version, fingerprint, invented } = quotable;
  const events = eventsOfCharger(charger, testsOf(results, charger.id));
  const notice = standingNotice(charger, quotable.speech);
  const context = siteContext(index, versionsPath(charger.id), language, { invented });
  const { versions: words } = context.words.outward;
  return renderPage(context, {
    title: words.title(charger.name),
    description: words.description(charger.name),
    children: (
      <>
        {notice === null ? null : (
          <p class="lead">
            <strong>{notice.words}</strong>
          </p>
        )}
        <p class="lead" id={version === undated ? versionAnchor(undated) : undefined}>
          {version === undated ? words.undated : words.newest(<strong>{context.formats.formatDay(version)}</strong>)}{" "}
          {words.madeBy(index.methodVersion, <code>{fingerprint}</code>)}{" "}
          <Link to={chargerPath(charger.id)}>{words.asItStands(charger.name)}</Link>
        </p>
        <p>{words.fromCopy}</p>
        <VersionsTable events={events} />
        {version === undated ? null : <p id={versionAnchor(undated)}>{words.undatedCopy}</p>}
        <h2>{words.fingerprint}</h2>
        <p>
          {words.fingerprintNote(
            <Link to={chargerSumsPath(charger.id)}>SHA256SUMS</Link>,
            <code>sha256sum SHA256SUMS</code>,
            <code>sha256sum -c SHA256SUMS</code>,
          )}
        </p>
        <ul>
          <li>
            <Link to={quotePath(charger.id)}>{words.howToQuote}</Link>
          </li>
          {index.site.baseUrl === null || events.length === 0 ? null : (
            <li>
              <Link to={chargerFeedPath(charger.id)}>{words.feed}</Link>
            </li>
          )}
        </ul>
      </>
    ),
  });
}

function VersionsTable({ events }: { events: readonly ResultEvent[] }) {
  const { formats, words: all } = useSite();
  const { versions: words } = all.outward;
  const versions = versionsOf(events);
  if (versions.length === 0) return <p>{words.nothingDated}</p>;
  return (
    <Table caption={words.caption} class="cards labelled">
      <Columns names={[words.columns.version, words.columns.holds, words.columns.happened]} />
      <tbody>
        {versions.map(({ version, events: ofDay }, index) => (
          <tr key={version} id={versionAnchor(version)}>
            <th scope="row">{formats.formatDay(version)}</th>
            <td>{index === 0 ? words.isNewest : <Superseded later={versions.slice(0, index).flatMap((later) => later.events)} />}</td>
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
  const { versions: words } = useSite().words.outward;
  return (
    <>
      {words.superseded(later.length)} {turned ? <strong>{words.verdictChanged}</strong> : words.noChangeNoted}
    </>
  );
}

function EventWords({ event }: { event: ResultEvent }) {
  const { versions: words, corrections } = useSite().words.outward;
  const { kind, what, why, published, changesVerdict } = event;
  if (published !== null) return <>{words.published(published)}</>;
  return (
    <>
      <strong>{wordFor(corrections.kinds, kind)}</strong>:{" "}
      <Own>
        {sentence(what)} {sentence(why ?? "")}
      </Own>{" "}
      {changesVerdict === null ? "" : changesVerdict ? words.verdictChanged : words.verdictStands}
    </>
  );
}

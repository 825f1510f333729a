/** Every correction of the site in one place, newest first. */
import type { Language } from "../../nouns/site.ts";
import { chargerPath } from "../links.ts";
import type { SiteIndex } from "../results.ts";
import { wordFor } from "../words/word-for.ts";
import { renderPage } from "./document.tsx";
import { Link, Own, siteContext } from "./site-context.tsx";
import { Columns, Table } from "./table.tsx";

const kinds = ["clarification", "revision", "correction", "concern", "withdrawal"] as const;

/** Renders the corrections. */
export function renderCorrectionsPage(index: SiteIndex, language: Language): string {
  const nameOf = (id: string) => index.chargers.find((charger) => charger.id === id)?.name ?? id;
  const newestFirst = [...index.corrections].sort((a, b) => (a.on < b.on ? 1 : a.on > b.on ? -1 : 0));
  const context = siteContext(index, "corrections/", language);
  const { formats } = context;
  const { corrections: words } = context.words.outward;
  const { columns } = words;
  return renderPage(context, {
    title: words.title,
    description: words.description,
    children: (
      <>
        <p class="lead">{index.site.correctionsPolicy === null ? words.noPolicy : <Own>{index.site.correctionsPolicy}</Own>}</p>
        {newestFirst.length === 0 ? (
          <p>{words.none}</p>
        ) : (
          <Table caption={words.caption} class="cards labelled">
            <Columns names={[columns.date, columns.charger, columns.kind, columns.what, columns.why, columns.verdict]} />
            <tbody>
              {newestFirst.map((correction) => (
                <tr key={`${correction.charger} ${correction.on} ${correction.what}`}>
                  <th scope="row">{formats.formatDay(correction.on)}</th>
                  <td>
                    {index.chargers.some((charger) => charger.id === correction.charger) ? (
                      <Link to={`${chargerPath(correction.charger)}#disclosures`}>{nameOf(correction.charger)}</Link>
                    ) : (
                      correction.charger
                    )}
                  </td>
                  <td>{wordFor(words.kinds, correction.kind)}</td>
                  <td class="words">
                    <Own>{correction.what}</Own>
                  </td>
                  <td class="words">
                    <Own>{correction.why}</Own>
                  </td>
                  <td>{correction.changesVerdict ? <strong>{words.changed}</strong> : words.stands}</td>
                </tr>
              ))}
            </tbody>
          </Table>
        )}
        <h2>{words.kindsHeading}</h2>
        <dl class="facts">
          {kinds.map((kind) => (
            <div key={kind}>
              <dt>{words.kinds[kind]}</dt>
              <dd>{words.meanings[kind]}</dd>
            </div>
          ))}
        </dl>
      </>
    ),
  });
}

/** Every correction of the site in one place, newest first. */
import { chargerPath } from "../links.ts";
import type { SiteIndex } from "../results.ts";
import { renderPage } from "./document.tsx";
import { Link, siteContext } from "./site-context.tsx";
import { Columns, Table } from "./table.tsx";

const kinds = {
  clarification: "the words were unclear; no value changes",
  revision: "better data or a better method; the old value was right by what was known",
  correction: "a mistake was made and is mended",
  concern: "a doubt is being looked into",
  withdrawal: "the result no longer stands; its page stays, marked",
} as const;

/** Renders the corrections. */
export function renderCorrectionsPage(index: SiteIndex): string {
  const nameOf = (id: string) => index.chargers.find((charger) => charger.id === id)?.name ?? id;
  const newestFirst = [...index.corrections].sort((a, b) => (a.on < b.on ? 1 : a.on > b.on ? -1 : 0));
  return renderPage(siteContext(index, "corrections/"), {
    title: "Corrections",
    description: "What was changed after publication, why, and whether a verdict changed.",
    children: (
      <>
        <p class="lead">{index.site.correctionsPolicy ?? "This site states no policy on corrections."}</p>
        {newestFirst.length === 0 ? (
          <p>Nothing has been corrected so far.</p>
        ) : (
          <Table caption="Corrections, newest first" class="cards labelled">
            <Columns names={["Date", "Charger", "Kind", "What changed", "Why", "Verdict"]} />
            <tbody>
              {newestFirst.map((correction) => (
                <tr key={`${correction.charger} ${correction.on} ${correction.what}`}>
                  <th scope="row">{correction.on}</th>
                  <td>
                    {index.chargers.some((charger) => charger.id === correction.charger) ? (
                      <Link to={`${chargerPath(correction.charger)}#disclosures`}>{nameOf(correction.charger)}</Link>
                    ) : (
                      correction.charger
                    )}
                  </td>
                  <td>{correction.kind}</td>
                  <td class="words">{correction.what}</td>
                  <td class="words">{correction.why}</td>
                  <td>{correction.changesVerdict ? <strong>changed</strong> : "stands"}</td>
                </tr>
              ))}
            </tbody>
          </Table>
        )}
        <h2>Kinds</h2>
        <dl class="facts">
          {Object.entries(kinds).map(([kind, meaning]) => (
            <div key={kind}>
              <dt>{kind}</dt>
              <dd>{meaning}</dd>
            </div>
          ))}
        </dl>
      </>
    ),
  });
}

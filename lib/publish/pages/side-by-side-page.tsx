/** Two to four chargers side by side. The script lays them out; without it the page says where else to compare. */
import { chargerPath } from "../links.ts";
import type { SiteIndex } from "../results.ts";
import { sideBySidePath } from "../side-by-side/compared.ts";
import { renderPage } from "./document.tsx";
import { Link, siteContext, useSite } from "./site-context.tsx";

/** Renders the page, which holds no figures of its own: they come with the charger's small file under data/compare/. */
export function renderSideBySidePage(index: SiteIndex): string {
  return renderPage(siteContext(index, sideBySidePath), {
    title: "Side by side",
    description: "Two to four chargers next to each other: profiles, figures with their intervals, claims, and what was not seen of each.",
    children: (
      <>
        <p class="lead">
          Two to four chargers next to each other. Differences are named only where they are larger than the uncertainty, and figures from
          batteries that were not alike are not held against each other.
        </p>
        <Workbench invented={index.site.invented} />
        <h2>Other ways to compare</h2>
        <p>
          Laying chargers side by side needs scripts, and a page that comes from a web server. Everything shown here also stands in the{" "}
          <Link to="">comparison of all chargers</Link>, in <Link to="data/comparison.csv">its CSV file</Link>, and on each charger's page:
        </p>
        <Chargers index={index} />
      </>
    ),
  });
}

function Workbench({ invented }: { invented: boolean }) {
  const { linkTo } = useSite();
  return (
    <>
      <div data-side-by-side data-root={linkTo("").replace(/index\.html$/, "")} data-invented={invented ? "" : undefined} hidden />
      <script defer src={linkTo("assets/side-by-side.js")} />
    </>
  );
}

function Chargers({ index }: { index: SiteIndex }) {
  if (index.chargers.length === 0) return <p>No charger has been published yet.</p>;
  return (
    <ul class="columns">
      {index.chargers.map(({ id, name }) => (
        <li key={id}>
          <Link to={chargerPath(id)}>{name}</Link>
        </li>
      ))}
    </ul>
  );
}

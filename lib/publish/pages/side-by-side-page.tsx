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
        <p>
          A battery on charge gives off gas that can explode. Before one stays connected, read the <Link to="cautions/">cautions</Link>; the
          makers of battery and charger and the rules where you are come first.
        </p>
        <Workbench invented={index.site.invented} />
        <HowToRead />
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
      <link rel="stylesheet" href={linkTo("assets/side-by-side.css")} />
      <div data-side-by-side data-root={linkTo("").replace(/index\.html$/, "")} data-invented={invented ? "" : undefined} hidden />
      <script defer src={linkTo("assets/side-by-side.js")} />
    </>
  );
}

/** What the signs and statements mean; it stands in the page, so that the script stays small. */
function HowToRead() {
  return (
    <section class="key">
      <h2>How to read it</h2>
      <p>Over the charge put in, a profile adds up the current between its drawn points; gaps add nothing.</p>
      <p>
        ≠ the intervals do not overlap, so the figures differ. ≈ they overlap: cannot be told apart by these measurements. = the very same.
        ∦ not comparable. A figure leads to its evidence. What each was tested on stands in the first table; how flat each battery was, and
        how warm, on the page of its test.
      </p>
      <p>
        Who is done first is told by draws: in each, all chargers meet the very same battery. A draw in which both take equally long, or
        neither comes to an end, counts half. One is said to be before another only where it is so in more than 95 % of the draws.
      </p>
      <p>
        What pays off is told by price and by the energy of the reference charge at the site's price, draw by draw as well: a range holds
        the middle 95 % of the draws. How long a charger lives, and what a better kept battery is worth, is not in it.
      </p>
    </section>
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

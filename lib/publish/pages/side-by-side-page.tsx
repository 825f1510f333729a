/** Two to four chargers side by side. The script lays them out; without it the page says where else to compare. */
import type { Language } from "../../nouns/site.ts";
import { scriptPath } from "../assets.ts";
import { chargerPath } from "../links.ts";
import type { SiteIndex } from "../results.ts";
import { sideBySidePath } from "../side-by-side/compared.ts";
import { sideWordsIn } from "../side-by-side/side-words.ts";
import { renderPage } from "./document.tsx";
import { Link, siteContext, useSite } from "./site-context.tsx";

/** Renders the page, which holds no figures of its own: they come with the charger's small file under data/compare/. */
export function renderSideBySidePage(index: SiteIndex, language: Language): string {
  const context = siteContext(index, sideBySidePath, language);
  const { sidePage: words } = context.words;
  return renderPage(context, {
    title: words.title,
    description: words.description,
    children: (
      <>
        <p class="lead">{words.lead}</p>
        <p>
          {words.caution((cautions) => (
            <Link to="cautions/">{cautions}</Link>
          ))}
        </p>
        <Workbench index={index} />
        <HowToRead />
        <h2>{words.other}</h2>
        <p>
          {words.otherNote(
            (comparison) => (
              <Link to="">{comparison}</Link>
            ),
            (csv) => (
              <Link to="data/comparison.csv">{csv}</Link>
            ),
          )}
        </p>
        <Chargers index={index} />
      </>
    ),
  });
}

/** The place that the script takes over, with the words of the page's language for it. */
function Workbench({ index: { site } }: { index: SiteIndex }) {
  const { language, linkTo, root } = useSite();
  return (
    <>
      <link rel="stylesheet" href={linkTo("assets/side-by-side.css")} />
      <div
        data-side-by-side
        data-root={root}
        data-invented={site.invented ? "" : undefined}
        data-own={site.language.startsWith(language) ? undefined : site.language}
        data-words={JSON.stringify(sideWordsIn(language))}
        hidden
      />
      <script defer src={linkTo(scriptPath("side-by-side", language))} />
    </>
  );
}

/** What the signs and statements mean; it stands in the page, so that the script stays small. */
function HowToRead() {
  const { sidePage: words } = useSite().words;
  return (
    <section class="key">
      <h2>{words.read}</h2>
      <p>{words.readDrawing}</p>
      <p>{words.readShare}</p>
      <p>{words.readSigns}</p>
      <p>{words.readDraws}</p>
      <p>{words.readPaying}</p>
    </section>
  );
}

function Chargers({ index }: { index: SiteIndex }) {
  const { sidePage: words } = useSite().words;
  if (index.chargers.length === 0) return <p>{words.noCharger}</p>;
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

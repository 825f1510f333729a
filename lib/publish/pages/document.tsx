/** The frame of every page: head, header, banners, footer. */
import type { ComponentChildren } from "preact";
import { renderToString } from "preact-render-to-string";
import type { Language } from "../../nouns/site.ts";
import { scriptPath } from "../assets.ts";
import { isPage, languageFolder } from "../links.ts";
import { wholeAddress } from "../outward/addresses.ts";
import { SharedLink } from "../outward/shared-link.tsx";
import { wordsIn } from "../words/index.ts";
import { Link, Own, type SiteContext, SiteProvider, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";
import { Sprite } from "./sprite.tsx";

/**
 * What a page may load: its own scripts and styles, and the search's WebAssembly; nothing inline, nothing from elsewhere.
 * frame-ancestors cannot be set from a page; a server that can send headers should add it.
 */
export const contentPolicy =
  "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; " +
  "worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; object-src 'none'";

export type PageProps = {
  readonly title: string;
  readonly description: string;
  readonly children: ComponentChildren;
  /** Pages that should not be found by the site's own search or others'. */
  readonly hidden?: boolean;
};

/** Renders a page to HTML. The same context and content give the same bytes. */
export function renderPage(context: SiteContext, page: PageProps): string {
  const html = renderToString(
    <SiteProvider value={context}>
      <Document {...page} />
    </SiteProvider>,
  );
  return `<!doctype html>\n${html}\n`;
}

function Document({ title, description, children, hidden = false }: PageProps) {
  const { index, place, language, words, invented, root, linkTo } = useSite();
  const { site } = index;
  const name = title === site.title ? title : `${title} · ${site.title}`;
  return (
    <html lang={language}>
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content={contentPolicy} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="referrer" content="no-referrer" />
        <meta name="color-scheme" content="light dark" />
        <meta name="description" content={description} />
        {hidden ? <meta name="robots" content="noindex" /> : null}
        <title>{invented ? words.frame.inventedTitle(name) : name}</title>
        {site.baseUrl === null || hidden ? null : <link rel="canonical" href={wholeAddress(site.baseUrl, place)} />}
        {hidden ? null : <Alternates />}
        {hidden ? null : <SharedLink title={title} description={description} />}
        <link rel="icon" href={linkTo("assets/icon.svg")} type="image/svg+xml" />
        <link rel="stylesheet" href={linkTo("assets/site.css")} />
        <script defer src={linkTo(scriptPath("search", language))} data-root={root} />
      </head>
      <body>
        <Sprite />
        <a class="skip" href="#content">
          {words.frame.skip}
        </a>
        <Header />
        <Banners />
        <main id="content" tabindex={-1} data-pagefind-body={hidden ? undefined : ""}>
          <h1 data-pagefind-meta="title">{title}</h1>
          {children}
        </main>
        <Footer />
      </body>
    </html>
  );
}

/** The same page in every language, for search engines; they want whole addresses. */
function Alternates() {
  const { index, here } = useSite();
  const { baseUrl, languages } = index.site;
  if (baseUrl === null || languages.length < 2) return null;
  const inLanguage = (language: Language) => wholeAddress(baseUrl, languageFolder(languages, language) + here);
  return (
    <>
      {languages.map((language) => (
        <link key={language} rel="alternate" hreflang={language} href={inLanguage(language)} />
      ))}
      <link rel="alternate" hreflang="x-default" href={inLanguage(languages[0] ?? "en")} />
    </>
  );
}

const sections = [
  { path: "", name: "compare" },
  { path: "find/", name: "find" },
  { path: "method/", name: "method" },
  { path: "data/", name: "data" },
  { path: "quote/", name: "quote" },
  { path: "cautions/", name: "cautions" },
  { path: "corrections/", name: "corrections" },
] as const;

function Header() {
  const { index, here, words, linkTo } = useSite();
  const { frame } = words;
  return (
    <header class="top">
      <p class="site-name">
        <Link to="">{index.site.title}</Link>
      </p>
      <nav aria-label={frame.site}>
        <ul class="sections">
          {sections.map((section) => (
            <li key={section.path}>
              <a href={linkTo(section.path)} aria-current={here === section.path ? "page" : undefined}>
                {frame.sections[section.name]}
              </a>
            </li>
          ))}
        </ul>
      </nav>
      <Languages />
      {/* Revealed by the search script: without scripts there is nothing behind it. */}
      <search class="search" hidden>
        <label for="search-words">{frame.search}</label>
        <input id="search-words" type="search" autocomplete="off" spellcheck={false} />
        <p class="unseen" role="status" data-search-status />
        <ol data-search-results hidden />
      </search>
    </header>
  );
}

/** The way to this page in the site's other languages, each named in itself. */
function Languages() {
  const { index, here, language, words, linkIn } = useSite();
  const others = index.site.languages.filter((other) => other !== language);
  if (others.length === 0) return null;
  return (
    <nav aria-label={words.frame.languages}>
      <ul class="sections">
        {others.map((other) => (
          <li key={other}>
            <a href={linkIn(other, isPage(here) ? here : "")} hreflang={other} lang={other}>
              {wordsIn(other).frame.languageName}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function Banners() {
  const { index, invented, words } = useSite();
  const { frame } = words;
  const { site } = index;
  if (!invented && site.sells !== true) return null;
  return (
    <aside aria-label={frame.aboutData}>
      {invented ? (
        <p class="banner banner-invented">
          <strong>{frame.inventedLead}</strong> {site.inventedNote === null ? frame.inventedNote : <Own>{site.inventedNote}</Own>}
        </p>
      ) : null}
      {site.sells === true ? (
        <p class="banner banner-sells">
          <strong>{frame.sellsLead}</strong> {frame.sellsNote}
        </p>
      ) : null}
    </aside>
  );
}

function Footer() {
  const { index, words } = useSite();
  const { frame } = words;
  return (
    <footer class="bottom">
      <dl class="facts">
        {index.site.operator.map((fact) => (
          <div key={fact.label}>
            <dt>
              <Said text={fact.label} />
            </dt>
            <dd>{fact.value === null ? frame.notStated : <Own>{fact.value}</Own>}</dd>
          </div>
        ))}
        <div>
          <dt>{frame.licence}</dt>
          <dd>{index.site.licence ?? frame.notStated}</dd>
        </div>
        <div>
          <dt>{frame.method}</dt>
          <dd>
            <Link to="method/">{frame.version(index.methodVersion)}</Link>
          </dd>
        </div>
      </dl>
      <ul class="more" aria-label={frame.morePages}>
        <li>
          <Link to="signs/">{frame.signs}</Link>
        </li>
        {index.pages.map((page) => (
          <li key={page.id}>
            <Link to={`${page.id}/`}>
              <Own>{page.title}</Own>
            </Link>
          </li>
        ))}
      </ul>
    </footer>
  );
}

/** The frame of every page: head, header, banners, footer. */
import type { ComponentChildren } from "preact";
import { renderToString } from "preact-render-to-string";
import { wholeAddress } from "../outward/addresses.ts";
import { SharedLink } from "../outward/shared-link.tsx";
import { Link, type SiteContext, SiteProvider, useSite } from "./site-context.tsx";
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
  const { index, here, invented, linkTo } = useSite();
  const { site } = index;
  const name = title === site.title ? title : `${title} · ${site.title}`;
  return (
    <html lang={site.language}>
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content={contentPolicy} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="referrer" content="no-referrer" />
        <meta name="color-scheme" content="light dark" />
        <meta name="description" content={description} />
        {hidden ? <meta name="robots" content="noindex" /> : null}
        <title>{invented ? `${name} (invented data)` : name}</title>
        {site.baseUrl === null || hidden ? null : <link rel="canonical" href={wholeAddress(site.baseUrl, here)} />}
        {hidden ? null : <SharedLink title={title} description={description} />}
        <link rel="icon" href={linkTo("assets/icon.svg")} type="image/svg+xml" />
        <link rel="stylesheet" href={linkTo("assets/site.css")} />
        <script defer src={linkTo("assets/search.js")} data-root={linkTo("").replace(/index\.html$/, "")} />
      </head>
      <body>
        <Sprite />
        <a class="skip" href="#content">
          To the content
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

const sections = [
  { path: "", name: "Compare" },
  { path: "find/", name: "Find" },
  { path: "method/", name: "Method" },
  { path: "data/", name: "Data" },
  { path: "quote/", name: "Quote" },
  { path: "cautions/", name: "Cautions" },
  { path: "corrections/", name: "Corrections" },
];

function Header() {
  const { index, here, linkTo } = useSite();
  return (
    <header class="top">
      <p class="site-name">
        <Link to="">{index.site.title}</Link>
      </p>
      <nav aria-label="Site">
        <ul class="sections">
          {sections.map((section) => (
            <li key={section.path}>
              <a href={linkTo(section.path)} aria-current={here === section.path ? "page" : undefined}>
                {section.name}
              </a>
            </li>
          ))}
        </ul>
      </nav>
      {/* Revealed by the search script: without scripts there is nothing behind it. */}
      <search class="search" hidden>
        <label for="search-words">Search</label>
        <input id="search-words" type="search" autocomplete="off" spellcheck={false} />
        <p class="unseen" role="status" data-search-status />
        <ol data-search-results hidden />
      </search>
    </header>
  );
}

function Banners() {
  const { index, invented } = useSite();
  const { site } = index;
  if (!invented && site.sells !== true) return null;
  return (
    <aside aria-label="About the data and the publisher">
      {invented ? (
        <p class="banner banner-invented">
          <strong>Invented data.</strong>{" "}
          {site.inventedNote ?? "Chargers, batteries and measurements on this page are made up to show how the site works."}
        </p>
      ) : null}
      {site.sells === true ? (
        <p class="banner banner-sells">
          <strong>The publisher sells chargers or batteries.</strong> Read the results with that in mind; every figure links to its
          evidence.
        </p>
      ) : null}
    </aside>
  );
}

function Footer() {
  const { index } = useSite();
  return (
    <footer class="bottom">
      <dl class="facts">
        {index.site.operator.map((fact) => (
          <div key={fact.label}>
            <dt>{fact.label}</dt>
            <dd>{fact.value ?? "not stated"}</dd>
          </div>
        ))}
        <div>
          <dt>Licence of data and words</dt>
          <dd>{index.site.licence ?? "not stated"}</dd>
        </div>
        <div>
          <dt>Method</dt>
          <dd>
            <Link to="method/">version {index.methodVersion}</Link>
          </dd>
        </div>
      </dl>
      <ul class="more" aria-label="More pages">
        <li>
          <Link to="signs/">What the signs mean</Link>
        </li>
        {index.pages.map((page) => (
          <li key={page.id}>
            <Link to={`${page.id}/`}>{page.title}</Link>
          </li>
        ))}
      </ul>
    </footer>
  );
}

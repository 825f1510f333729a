/** The frame of pages that leave the site: a card to be printed, and the embed in other people's pages. No header, no script. */
import type { ComponentChildren } from "preact";
import { renderToString } from "preact-render-to-string";
import { languageFolder } from "../links.ts";
import { type SiteContext, SiteProvider, useSite } from "../pages/site-context.tsx";
import { Sprite } from "../pages/sprite.tsx";
import { wholeAddress } from "./addresses.ts";

/**
 * What such a page may load: its stylesheet and its icon. There is nothing on it that could run, so nothing of it ever connects;
 * connect-src lets a browser that audits the page ask for robots.txt.
 */
export const barePolicy = "default-src 'none'; style-src 'self'; img-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'";

export type BarePage = {
  readonly title: string;
  readonly description: string;
  readonly kind: "card" | "embed";
  /** The page that search engines should show instead, from the site's root. */
  readonly insteadShow: string;
  readonly children: ComponentChildren;
};

/** Renders the page to HTML. The same context and content give the same bytes. */
export function renderBarePage(context: SiteContext, page: BarePage): string {
  const html = renderToString(
    <SiteProvider value={context}>
      <BareDocument {...page} />
    </SiteProvider>,
  );
  return `<!doctype html>\n${html}\n`;
}

function BareDocument({ title, description, kind, insteadShow, children }: BarePage) {
  const { language, words, invented, linkTo } = useSite();
  return (
    <html lang={language}>
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content={barePolicy} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="referrer" content="no-referrer" />
        <meta name="color-scheme" content="light dark" />
        <meta name="description" content={description} />
        <title>{invented ? words.frame.inventedTitle(title) : title}</title>
        <InsteadShow path={insteadShow} />
        <link rel="icon" href={linkTo("assets/icon.svg")} type="image/svg+xml" />
        <link rel="stylesheet" href={linkTo("assets/card.css")} />
      </head>
      <body class={kind}>
        <Sprite />
        {children}
      </body>
    </html>
  );
}

/** One of the two and never both: a page that may not be looked at cannot hand its standing on to the page that it names. */
function InsteadShow({ path }: { path: string }) {
  const { index, language } = useSite();
  const { baseUrl, languages } = index.site;
  if (baseUrl === null) return <meta name="robots" content="noindex" />;
  return <link rel="canonical" href={wholeAddress(baseUrl, languageFolder(languages, language) + path)} />;
}

/** What every component may know about the page it is on: the site's index, the page's language, and where the page stands. */
import { type ComponentChildren, createContext } from "preact";
import { useContext } from "preact/hooks";
import type { Figure } from "../../nouns/figure.ts";
import type { Language } from "../../nouns/site.ts";
import type { Formats } from "../../units/formats.ts";
import { isPage, languageFolder, methodId, methodPath, type PagePath, relativeLink } from "../links.ts";
import type { SiteIndex } from "../results.ts";
import { type Words, wordsIn } from "../words/index.ts";
import { speechIn } from "../words/speech-in.ts";
import { type Speech, SpeechProvider } from "./speech.tsx";

export type SiteContext = Speech & {
  readonly language: Language;
  readonly formats: Formats;
  /** How a figure came about, in a word. */
  basis(basis: Figure["basis"]): string;
  readonly index: SiteIndex;
  readonly words: Words;
  /** The page's address, which is the same in every language, below the language's folder. */
  readonly here: PagePath;
  /** The page's path from the site's root, its language's folder included. */
  readonly place: PagePath;
  /** Whether the figures on this page are invented; it marks every caption. */
  readonly invented: boolean;
  /** The way from this page to the site's root, such as "../"; files stand there once, whatever the language. */
  readonly root: string;
  /** Turns an address into a link from this page: to the page in this language, or to the one file there is. */
  linkTo(target: string): string;
  /** A link to a page in another language of the site; this page where the address is left out. */
  linkIn(language: Language, target?: string): string;
};

const Context = createContext<SiteContext | null>(null);

type Options = {
  readonly invented?: boolean;
  /** Replaces relative links for the one page that is served at any address (404.html). */
  readonly relative?: (path: string) => string;
};

/** The language at the site's root. */
export const defaultLanguage = ({ site }: SiteIndex): Language => site.languages[0] ?? "en";

/** The context of a page. */
export function siteContext(index: SiteIndex, here: PagePath, language: Language, options: Options = {}): SiteContext {
  const { languages } = index.site;
  const place = languageFolder(languages, language) + here;
  const relative = options.relative ?? ((path: string) => relativeLink(place, path));
  const linkIn = (other: Language, target = here) => relative(isPage(target) ? languageFolder(languages, other) + target : target);
  return {
    ...speechIn(language),
    words: wordsIn(language),
    index,
    here,
    place,
    invented: options.invented ?? index.site.invented,
    root: relative("").replace(/index\.html$/, ""),
    linkTo: (target) => linkIn(language, target),
    linkIn,
  };
}

export function SiteProvider({ value, children }: { value: SiteContext; children: ComponentChildren }) {
  return (
    <Context.Provider value={value}>
      <SpeechProvider value={value}>{children}</SpeechProvider>
    </Context.Provider>
  );
}

/** The context of the page being rendered. Throws outside of a page, which would be our own mistake. */
export function useSite(): SiteContext {
  const value = useContext(Context);
  if (value === null) throw new Error("a component was rendered outside of a page");
  return value;
}

/** A link to an address of the site. */
export function Link({ to, children, class: className }: { to: string; children: ComponentChildren; class?: string }) {
  return (
    <a href={useSite().linkTo(to)} class={className}>
      {children}
    </a>
  );
}

/** A link to a method's page by its versioned name; plain text where the site's index has no such method. */
export function MethodLink({ method, children }: { method: string; children?: ComponentChildren }) {
  const id = methodId(method);
  const known = useSite().index.methods.some((entry) => entry.id === id);
  return known ? <Link to={methodPath(id)}>{children ?? method}</Link> : <span>{children ?? method}</span>;
}

/** The words that go with a caption where its figures are invented. */
export function InventedMark() {
  const { invented, words } = useSite();
  return invented ? <span class="invented"> {words.marks.invented}</span> : null;
}

/** Words of the reviewer or of the records, which are in the site's own language, marked where the page speaks another. */
export function Own({ children }: { children: ComponentChildren }) {
  const { index, language } = useSite();
  return index.site.language.startsWith(language) ? children : <span lang={index.site.language}>{children}</span>;
}

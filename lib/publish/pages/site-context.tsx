/** What every component may know about the page it is on: the site's index, and where the page stands. */
import { type ComponentChildren, createContext } from "preact";
import { useContext } from "preact/hooks";
import { methodId, methodPath, type PagePath, relativeLink } from "../links.ts";
import type { SiteIndex } from "../results.ts";

export type SiteContext = {
  readonly index: SiteIndex;
  readonly here: PagePath;
  /** Whether the figures on this page are invented; it marks every caption. */
  readonly invented: boolean;
  /** Turns a path from the site's root into a link from this page. */
  linkTo(target: string): string;
};

const Context = createContext<SiteContext | null>(null);

/** The context of a page. `linkTo` can be replaced for the one page that is served at any address (404.html). */
export function siteContext(
  index: SiteIndex,
  here: PagePath,
  invented = index.site.invented,
  linkTo = (target: string) => relativeLink(here, target),
): SiteContext {
  return { index, here, invented, linkTo };
}

export function SiteProvider({ value, children }: { value: SiteContext; children: ComponentChildren }) {
  return <Context.Provider value={value}>{children}</Context.Provider>;
}

/** The context of the page being rendered. Throws outside of a page, which would be our own mistake. */
export function useSite(): SiteContext {
  const value = useContext(Context);
  if (value === null) throw new Error("a component was rendered outside of a page");
  return value;
}

/** A link to a path from the site's root. */
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
  return useSite().invented ? <span class="invented"> invented data</span> : null;
}

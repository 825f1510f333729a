/** The search box. It loads its index when it is first used, and writes text only, never markup. */
import { searchWords as told } from "./script-words.ts";

type Hit = { readonly raw_url?: string; readonly url: string; readonly meta: { readonly title?: string }; readonly plain_excerpt?: string };
type Pagefind = {
  mergeIndex(folder: string): Promise<void>;
  options(options: { excerptLength: number }): Promise<void>;
  debouncedSearch(words: string): Promise<{ results: { data(): Promise<Hit> }[] } | null>;
};

const mostResults = 8;
const root = new URL(document.currentScript?.dataset.root || "./", location.href);
const box = document.querySelector<HTMLElement>(".search");
const input = box?.querySelector("input");
const status = box?.querySelector<HTMLElement>("[data-search-status]");
const list = box?.querySelector<HTMLOListElement>("[data-search-results]");

let loading: Promise<Pagefind> | undefined;

function load(): Promise<Pagefind> {
  loading ??= import(new URL("pagefind/pagefind.js", root).href).then(async (pagefind: Pagefind) => {
    await pagefind.options({ excerptLength: 18 });
    // The index of a large site is in parts; the first is the one that loads the others.
    const parts: readonly string[] = await (await fetch(new URL("pagefind/parts.json", root))).json();
    await Promise.all(parts.map((part) => pagefind.mergeIndex(new URL(part, root).href)));
    return pagefind;
  });
  return loading;
}

function entry(hit: Hit): HTMLLIElement {
  const item = document.createElement("li");
  const link = document.createElement("a");
  link.href = new URL((hit.raw_url ?? hit.url).replace(/^\//, ""), root).href;
  link.textContent = hit.meta.title ?? link.href;
  const excerpt = document.createElement("p");
  excerpt.className = "excerpt";
  excerpt.textContent = hit.plain_excerpt ?? "";
  item.append(link, excerpt);
  return item;
}

async function search(words: string): Promise<void> {
  let hits: Hit[] = [];
  let message = "";
  try {
    if (words.trim() !== "") {
      const found = await (await load()).debouncedSearch(words);
      // null: a later key press has taken over.
      if (found === null) return;
      hits = await Promise.all(found.results.slice(0, mostResults).map((result) => result.data()));
      message = hits.length === 0 ? told.nothing(words) : told.found(found.results.length);
    }
  } catch {
    message = told.needsServer;
  }
  // A slower answer to older words must not stand in place of a newer one.
  if (!list || !status || input?.value !== words) return;
  list.replaceChildren(...hits.map(entry));
  const hasHits = hits.length > 0;
  list.hidden = !hasHits;
  status.classList.toggle("unseen", hasHits);
  status.textContent = message;
}

if (box && input) {
  box.hidden = false;
  input.addEventListener("focus", () => void load().catch(() => undefined), { once: true });
  input.addEventListener("input", () => void search(input.value));
  box.addEventListener("keydown", (event) => {
    if (event.key !== "Escape" || !list) return;
    list.hidden = true;
    input.focus();
  });
}

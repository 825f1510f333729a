/** The way through a long page: its sections, as links. */

import { useSite } from "./site-context.tsx";

export type Section = { readonly id: string; readonly name: string };

export function Contents({ sections }: { sections: readonly Section[] }) {
  return (
    <nav class="contents" aria-label={useSite().words.frame.onThisPage} data-pagefind-ignore>
      <ul class="contents-list">
        {sections.map((section) => (
          <li key={section.id}>
            <a href={`#${section.id}`}>{section.name}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

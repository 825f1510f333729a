/** The way through a long page: its sections, as links. */

export type Section = { readonly id: string; readonly name: string };

export function Contents({ sections }: { sections: readonly Section[] }) {
  return (
    <nav class="contents" aria-label="On this page" data-pagefind-ignore>
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

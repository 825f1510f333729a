/** A table with its caption, inside a region that scrolls by itself so that the page never does. */
import type { ComponentChildren } from "preact";
import { InventedMark, useSite } from "./site-context.tsx";

type Props = {
  readonly caption: string;
  readonly children: ComponentChildren;
  readonly class?: string;
  /** Lets the sorting script offer its buttons. */
  readonly sortable?: boolean;
  /** Data are marked where they are invented; what explains them is not. */
  readonly isData?: boolean;
};

/** The region can be reached and scrolled by keyboard. Numbers in tables stay out of the word search. */
export function Table({ caption, children, class: className, sortable = false, isData = true }: Props) {
  const { words } = useSite();
  return (
    // A region that scrolls must be reachable by keyboard
    <section class="scroll" tabindex={0} aria-label={words.marks.table(caption)} data-pagefind-ignore>
      <table class={className} data-sortable={sortable ? "" : undefined}>
        <caption>
          {caption}
          {isData ? <InventedMark /> : null}
        </caption>
        {children}
      </table>
    </section>
  );
}

/** A row of column headings. */
export function Columns({ names }: { names: readonly string[] }) {
  return (
    <thead>
      <tr>
        {names.map((name) => (
          <th key={name} scope="col">
            {name}
          </th>
        ))}
      </tr>
    </thead>
  );
}

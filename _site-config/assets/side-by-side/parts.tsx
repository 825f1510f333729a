/** Pieces that several tables share. */
import type { ComponentChildren } from "preact";
import { chargerPath, relativeLink } from "../../../lib/publish/links.ts";
import { sideBySidePath } from "../../../lib/publish/side-by-side/compared.ts";
import type { Entrant } from "../../../lib/publish/side-by-side/line-up.ts";
import { fill } from "../../../lib/publish/words/fill.ts";

import { words } from "./speech.ts";

export type Shown = { readonly entrants: readonly Entrant[]; readonly invented: boolean };

/** A link to a path from the site's root. */
export function To({ path, children }: { path: string; children: ComponentChildren }) {
  return <a href={relativeLink(sideBySidePath, path)}>{children}</a>;
}

/** The letter by which lines and sentences name a charger. */
export function Letter({ letter }: { letter: string }) {
  return <span class="strip-letter">{letter}</span>;
}

/** Letter and name, the name leading to the charger's page. */
export function ChargerName({ entrant: { letter, charger } }: { entrant: Entrant }) {
  return (
    <>
      <Letter letter={letter} /> <To path={chargerPath(charger.id)}>{charger.name}</To>
    </>
  );
}

/** How a narrow screen, which stacks the cells of a row, names a cell. */
export const cellLabel = ({ letter, charger }: Entrant): string => `${letter} ${charger.name}`;

type RowProps = {
  readonly label: ComponentChildren;
  readonly entrants: readonly Entrant[];
  /** The class of its cells. */
  readonly kind?: string;
  readonly cell: (entrant: Entrant, place: number) => ComponentChildren;
  /** A cell after the chargers. */
  readonly children?: ComponentChildren;
};

/** A row with one cell a charger. */
export function Row({ label, entrants, kind, cell, children }: RowProps) {
  return (
    <tr>
      <th scope="row">{label}</th>
      {entrants.map((entrant, place) => (
        <td key={entrant.letter} class={kind} data-label={cellLabel(entrant)}>
          {cell(entrant, place)}
        </td>
      ))}
      {children}
    </tr>
  );
}

type TableProps = Shown & {
  readonly caption: string;
  readonly first: string;
  /** Heading of a column after the chargers. */
  readonly last?: string;
  readonly children: ComponentChildren;
};

/** A table with one column a charger, in a region that scrolls by itself and can be reached by keyboard. */
export function SideTable({ caption, first, last, entrants, invented, children }: TableProps) {
  return (
    <section class="scroll" tabindex={0} aria-label={fill(words.table, { caption })}>
      <table class="cards">
        <caption>
          {caption}
          {invented ? <span class="invented"> {words.invented}</span> : null}
        </caption>
        <thead>
          <tr>
            <th scope="col">{first}</th>
            {entrants.map((entrant) => (
              <th key={entrant.letter} scope="col">
                <ChargerName entrant={entrant} />
              </th>
            ))}
            {last === undefined ? null : <th scope="col">{last}</th>}
          </tr>
        </thead>
        {children}
      </table>
    </section>
  );
}

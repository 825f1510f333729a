/** What a reader can narrow the table by, and which columns stand in it. Revealed by the script: without it the whole table stands. */
import { useSite } from "../site-context.tsx";
import { Said, said } from "../speech.tsx";
import { type Column, facetsOf, type Group } from "./groups.ts";

export function Facets({ groups, columns }: { groups: readonly Group[]; columns: readonly Column[] }) {
  const { comparison } = useSite().words;
  const facets = facetsOf(groups);
  const choosable = [
    { id: "claims", label: comparison.columns.claims },
    { id: "profile", label: comparison.columns.profile },
    ...columns.map(({ id, label }) => ({ id, label: <Said text={label} /> })),
  ];
  return (
    <form class="facets" hidden data-facets>
      {/* Closed, so that the first charger is in sight. */}
      <details class="narrowing">
        <summary>{comparison.filters.narrow}</summary>
        <div class="facet-choices">
          <SortChoice columns={columns} />
          {facets.map((facet) => (
            <fieldset key={facet.id}>
              <legend>{[comparison.facets[facet.id], facet.currency].filter(Boolean).join(", ")}</legend>
              {facet.choices.map((choice) => (
                <label key={choice.value}>
                  <input type="checkbox" name={facet.id} value={choice.value} />
                  {comparison.choices[choice.value]} <span class="quiet count">{choice.count}</span>
                </label>
              ))}
            </fieldset>
          ))}
          <details class="columns">
            <summary>{comparison.filters.columns}</summary>
            <fieldset>
              <legend class="unseen">{comparison.filters.columnsToShow}</legend>
              {choosable.map((column) => (
                <label key={column.id}>
                  <input type="checkbox" name="column" value={column.id} checked />
                  {column.label}
                </label>
              ))}
            </fieldset>
          </details>
          <p class="facet-actions">
            <button type="reset">{comparison.filters.showAll}</button>{" "}
            <button type="button" data-copy>
              {comparison.filters.copyLink}
            </button>
          </p>
        </div>
      </details>
      <p class="shown" role="status" data-shown>
        {comparison.filters.shown(groups.length, groups.length)}
      </p>
    </form>
  );
}

/** Does what the buttons in the column headings do, which a narrow screen has no room for. */
function SortChoice({ columns }: { columns: readonly Column[] }) {
  const speech = useSite();
  const { comparison } = speech.words;
  const sortable = [
    { id: "charger", label: comparison.columns.charger },
    { id: "profile", label: comparison.columns.profile },
    ...columns.map(({ id, label }) => ({ id, label: said(speech, label) })),
  ];
  return (
    <p class="sort-choice">
      <label>
        {comparison.filters.sortBy}{" "}
        <select data-sort-choice>
          {sortable.map((column) => (
            <option key={column.id} value={column.id}>
              {column.label}
            </option>
          ))}
        </select>
      </label>
      <button type="button" data-sort-turn>
        {comparison.filters.turn}
      </button>
    </p>
  );
}

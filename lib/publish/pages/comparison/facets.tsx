/** What a reader can narrow the table by, and which columns stand in it. Revealed by the script: without it the whole table stands. */
import { type Column, facetsOf, type Group } from "./groups.ts";

export function Facets({ groups, columns }: { groups: readonly Group[]; columns: readonly Column[] }) {
  const facets = facetsOf(groups);
  const choosable = [{ id: "claims", label: "Against its claims" }, { id: "profile", label: "Charge profile" }, ...columns];
  return (
    <form class="facets" hidden data-facets>
      {/* On a narrow screen the script closes it, so that the first charger is in sight. */}
      <details class="narrowing" open data-narrowing>
        <summary>Narrow and sort</summary>
        <div class="facet-choices">
          <SortChoice columns={columns} />
          {facets.map((facet) => (
            <fieldset key={facet.id}>
              <legend>{facet.label}</legend>
              {facet.choices.map((choice) => (
                <label key={choice.value}>
                  <input type="checkbox" name={facet.id} value={choice.value} />
                  {choice.label} <span class="quiet count">{choice.count}</span>
                </label>
              ))}
            </fieldset>
          ))}
          <details class="columns">
            <summary>Columns</summary>
            <fieldset>
              <legend class="unseen">Columns to show</legend>
              {choosable.map((column) => (
                <label key={column.id}>
                  <input type="checkbox" name="column" value={column.id} checked />
                  {column.label}
                </label>
              ))}
            </fieldset>
          </details>
          <p class="facet-actions">
            <button type="reset">Show all</button>{" "}
            <button type="button" data-copy>
              Copy link to this view
            </button>
          </p>
        </div>
      </details>
      <p class="shown" role="status" data-shown>
        {groups.length} of {groups.length} chargers
      </p>
    </form>
  );
}

/** Stands in for the column headings and their buttons, which a narrow screen has no room for. */
function SortChoice({ columns }: { columns: readonly Column[] }) {
  const sortable = [{ id: "charger", label: "Charger" }, { id: "profile", label: "Charge profile" }, ...columns];
  return (
    <p class="sort-choice">
      <label>
        Sort by{" "}
        <select data-sort-choice>
          {sortable.map((column) => (
            <option key={column.id} value={column.id}>
              {column.label}
            </option>
          ))}
        </select>
      </label>
      <button type="button" data-sort-turn>
        Turn the order
      </button>
    </p>
  );
}

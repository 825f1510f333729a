/** What a reader can narrow the table by, and which columns stand in it. Revealed by the script: without it the whole table stands. */
import { type Column, facetsOf, type Group } from "./groups.ts";

export function Facets({ groups, columns }: { groups: readonly Group[]; columns: readonly Column[] }) {
  const facets = facetsOf(groups);
  const choosable = [{ id: "claims", label: "Against its claims" }, { id: "profile", label: "Charge profile" }, ...columns];
  return (
    <form class="facets" hidden data-facets>
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
        <span role="status" data-shown>
          {groups.length} of {groups.length} chargers
        </span>{" "}
        <button type="reset">Show all</button>{" "}
        <button type="button" data-copy>
          Copy link to this view
        </button>
      </p>
    </form>
  );
}

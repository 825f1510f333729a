/** A figure whose value and interval are text already. */
import type { FigureText } from "../../units/format.ts";

/** `basis` is the word for how it came about; null for a measured one, which needs none. */
export function WrittenFigure({ value, interval, basis }: FigureText & { readonly basis: string | null }) {
  return (
    <>
      <span class="value">{value}</span>
      {interval === null ? null : <span class="value interval-text"> ({interval})</span>}
      {basis === null ? null : <span class="basis"> {basis}</span>}
    </>
  );
}

/** What must be read before the verdict, wherever it is copied to. */
import type { Quotable } from "./quotation.ts";
import { standingNotice } from "./standing.ts";

/** Invented data, a publisher who sells, and a result that no longer stands; nothing where none of them holds. */
export function Warnings({ quotable: { index, charger, invented } }: { quotable: Quotable }) {
  const notice = standingNotice(charger);
  return (
    <>
      {invented ? (
        <p class="warning">
          <strong>Invented data</strong>: no real product is judged here.
        </p>
      ) : null}
      {index.site.sells === true ? <p class="warning warning-sells">The publisher sells chargers or batteries.</p> : null}
      {notice === null ? null : (
        <p class="warning warning-sells">
          <strong>{notice.words}</strong>
        </p>
      )}
    </>
  );
}

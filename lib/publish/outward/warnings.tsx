/** What must be read before the verdict, wherever it is copied to. */
import type { Quotable } from "./quotation.ts";
import { standingNotice } from "./standing.ts";

/** Invented data, a publisher who sells, and a result that no longer stands; nothing where none of them holds. */
export function Warnings({ quotable: { index, charger, invented, speech } }: { quotable: Quotable }) {
  const notice = standingNotice(charger, speech);
  const { warnings } = speech.outward;
  return (
    <>
      {invented ? (
        <p class="warning">
          {warnings.invented((lead) => (
            <strong>{lead}</strong>
          ))}
        </p>
      ) : null}
      {index.site.sells === true ? <p class="warning warning-sells">{warnings.sells}</p> : null}
      {notice === null ? null : (
        <p class="warning warning-sells">
          <strong>{notice.words}</strong>
        </p>
      )}
    </>
  );
}

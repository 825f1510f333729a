/** Doubts: what the checks found in the files, published beside the figures it touches. */
import type { TestResult } from "../results.ts";
import { useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";

type Doubt = TestResult["doubts"][number];

/** Nothing at all where there are none: the page says so once, in its own section. */
export function Doubts({ doubts }: { doubts: readonly Doubt[] }) {
  const { doubt: words } = useSite().words.parts;
  if (doubts.length === 0) return null;
  return (
    <ul class="doubts" data-pagefind-ignore>
      {doubts.map((doubt) => (
        <li key={`${doubt.place} ${doubt.id}`}>
          <p>
            {words.expected} <Said text={doubt.expected} />
            {words.found} <Said text={doubt.found} />.
          </p>
          <p class="quiet">
            <code>{doubt.place}</code> · {doubt.id} · {words.mend} <Said text={doubt.mend} />
          </p>
        </li>
      ))}
    </ul>
  );
}

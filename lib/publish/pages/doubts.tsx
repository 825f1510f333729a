/** Doubts: what the checks found in the files, published beside the figures it touches. */
import type { TestResult } from "../results.ts";

type Doubt = TestResult["doubts"][number];

/** Nothing at all where there are none: the page says so once, in its own section. */
export function Doubts({ doubts }: { doubts: readonly Doubt[] }) {
  if (doubts.length === 0) return null;
  return (
    <ul class="doubts" data-pagefind-ignore>
      {doubts.map((doubt) => (
        <li key={`${doubt.place} ${doubt.id}`}>
          <p>
            Expected {doubt.expected}, found {doubt.found}.
          </p>
          <p class="quiet">
            <code>{doubt.place}</code> · {doubt.id} · to mend: {doubt.mend}
          </p>
        </li>
      ))}
    </ul>
  );
}

/** The evidence strip as a figure of its own: drawing, key, and the same told in words. */
import { findingAnchor } from "../links.ts";
import type { Timeline } from "../results.ts";
import { EvidenceStrip } from "./evidence-strip.tsx";
import { useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";
import { hatchId, readingId } from "./sprite.tsx";
import { lettered } from "./strip-scale.ts";

/** What the strip's signs mean. Stands once on a page, under the first strip. */
export function StripKey({ numbered = false }: { numbered?: boolean }) {
  const { strip } = useSite().words.parts;
  return (
    <ul class="strip-key">
      <li>
        <svg width="26" height="14" aria-hidden="true">
          <rect width="26" height="14" class="strip-recorded" />
        </svg>
        {strip.recorded}
      </li>
      <li>
        <svg width="26" height="14" aria-hidden="true">
          <rect width="26" height="14" fill={`url(#${hatchId})`} />
          <path d="M0 .5H26M0 13.5H26M.5 0V14" class="strip-edge" />
        </svg>
        {strip.connected}
      </li>
      <li>
        <svg width="26" height="14" aria-hidden="true" class="strip-open">
          <path d="M0 .5H26M0 13.5H26" />
        </svg>
        {strip.endNotSeen}
      </li>
      <li>
        <svg width="14" height="14" aria-hidden="true">
          <use href={`#${readingId("large")}`} x="7" y="7" />
        </svg>
        {numbered ? strip.numbered : strip.reading}
      </li>
    </ul>
  );
}

/** What the letters on the strip stand for. */
function FindingKey({ findings }: { findings: Timeline["findings"] }) {
  const letters = lettered(findings);
  if (letters.length === 0) return null;
  return (
    <ul class="strip-key">
      {letters.map((finding) => (
        <li key={finding.id}>
          <span class="strip-letter">{finding.letter}</span>
          <a href={`#${findingAnchor(finding.id)}`}>
            <Said text={finding.verdict} />
          </a>
        </li>
      ))}
    </ul>
  );
}

/** The strip as a figure of its own: drawing, key and the same told in words. */
export function EvidenceStripFigure({ timeline, size = "page" }: { timeline: Timeline; size?: "card" | "page" }) {
  return (
    <figure class="strip-figure">
      <div class="strip-frame">
        <EvidenceStrip timeline={timeline} size={size} />
      </div>
      <figcaption>
        {size === "page" ? <StripKey numbered /> : null}
        {size === "page" ? <FindingKey findings={timeline.findings} /> : null}
        <p>
          <Said text={timeline.words} />
        </p>
      </figcaption>
    </figure>
  );
}

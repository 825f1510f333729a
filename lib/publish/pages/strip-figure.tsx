/** The evidence strip as a figure of its own: drawing, key, and the same told in words. */
import { findingAnchor } from "../links.ts";
import type { Timeline } from "../results.ts";
import { EvidenceStrip } from "./evidence-strip.tsx";
import { lettered } from "./strip-scale.ts";

/** What the strip's signs mean. Stands once on a page, under the first strip. */
export function StripKey({ id, numbered = false }: { id: string; numbered?: boolean }) {
  const hatch = `${id}-key-hatch`;
  return (
    <ul class="strip-key">
      <li>
        <svg width="26" height="14" aria-hidden="true">
          <rect width="26" height="14" class="strip-recorded" />
        </svg>
        recorded
      </li>
      <li>
        <svg width="26" height="14" aria-hidden="true">
          <defs>
            <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
              <line x1="0" y1="0" x2="0" y2="5" class="strip-hatch" />
            </pattern>
          </defs>
          <rect width="26" height="14" fill={`url(#${hatch})`} />
          <path d="M0 .5H26M0 13.5H26M.5 0V14" class="strip-edge" />
        </svg>
        connected, not recorded
      </li>
      <li>
        <svg width="26" height="14" aria-hidden="true" class="strip-open">
          <path d="M0 .5H26M0 13.5H26" />
        </svg>
        end not seen
      </li>
      <li>
        <svg width="14" height="14" aria-hidden="true">
          <path d="M7 1.5 12.5 7 7 12.5 1.5 7Z" class="strip-reading" />
        </svg>
        {numbered ? "reading, numbered above; connections are numbered below" : "reading"}
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
          <a href={`#${findingAnchor(finding.id)}`}>{finding.verdict}</a>
        </li>
      ))}
    </ul>
  );
}

/** The strip as a figure of its own: drawing, key and the same told in words. */
export function EvidenceStripFigure({ timeline, id, size = "page" }: { timeline: Timeline; id: string; size?: "card" | "page" }) {
  return (
    <figure class="strip-figure">
      <div class="strip-frame">
        <EvidenceStrip timeline={timeline} size={size} id={id} />
      </div>
      <figcaption>
        {size === "page" ? <StripKey id={id} numbered /> : null}
        {size === "page" ? <FindingKey findings={timeline.findings} /> : null}
        <p>{timeline.words}</p>
      </figcaption>
    </figure>
  );
}

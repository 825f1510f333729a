/**
 * The evidence strip: a test from first to last event, what was seen and what was not.
 *
 *      ◆1            ◆2        ◆3          readings
 *   ┌────────▓▓▓▓▓▓┐   ┌▓▓▓▒▒▒▒▒▒▒▒· · ·   connections: solid is recorded, hatched is not, dotted is an end nobody saw
 *   ──┴──────┴──────┴──────┴──────┴──      time
 *
 * Horizontal places are percentages and vertical ones pixels, so that the strip fills any width while its lettering keeps its size.
 */
import { formatDuration, formatNumber, withUnit } from "../../units/format.ts";
import { findingAnchor } from "../links.ts";
import type { Timeline } from "../results.ts";

type Size = "row" | "card" | "page";

type Layout = { readonly height: number; readonly barTop: number; readonly barHeight: number; readonly axisTop: number | null };

const layouts: Record<Size, Layout> = {
  row: { height: 30, barTop: 12, barHeight: 14, axisTop: null },
  card: { height: 66, barTop: 20, barHeight: 18, axisTop: 46 },
  page: { height: 96, barTop: 32, barHeight: 26, axisTop: 72 },
};

/** Steps of the time axis, in hours, from which the first that gives few enough ticks is taken. */
const stepsH = [0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 72, 120, 168, 240, 336, 504, 720, 1440, 2160, 4320, 8760];
const mostTicks = 6;

/** Ticks from 0 to the span, at most seven; one tick for a span of nothing. */
export function axisTicks(spanH: number): number[] {
  const step = stepsH.find((candidate) => spanH / candidate <= mostTicks) ?? spanH / mostTicks;
  const count = Math.floor(spanH / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => index * step);
}

/** Ticks from two days on are written in days, so that "9 d" stands where "216 h" would. */
function tickLabel(hours: number, spanH: number): string {
  if (hours === 0) return "0";
  return spanH > 48 ? withUnit(formatNumber(hours / 24, hours % 24 === 0 ? 0 : 1), "d") : withUnit(String(hours), "h");
}

const counted = (number: number, one: string, many: string) => `${number} ${number === 1 ? one : many}`;

/** One sentence that says what the drawing shows; the full account is the timeline's own words. */
export function stripSentence({ spanH, connections, readings }: Timeline): string {
  const stretches = connections.flatMap((connection) => connection.recorded).length;
  const unseen = connections.filter((connection) => !connection.endKnown).length;
  return [
    `Evidence strip over ${formatDuration(spanH)}: ${counted(connections.length, "connection", "connections")}`,
    counted(stretches, "recorded stretch", "recorded stretches"),
    counted(readings.length, "reading", "readings"),
    unseen === 0 ? "every end is known" : counted(unseen, "end that nobody saw", "ends that nobody saw"),
  ].join(", ");
}

type Props = { readonly timeline: Timeline; readonly size: Size; readonly id: string };

/**
 * @param id unique on the page: patterns are named from it
 */
export function EvidenceStrip({ timeline, size, id }: Props) {
  const layout = layouts[size];
  const span = timeline.spanH > 0 ? timeline.spanH : 1;
  const at = (hours: number) => `${Number((Math.min(1, Math.max(0, hours / span)) * 100).toFixed(3))}%`;
  const hatch = `${id}-hatch`;
  return (
    <svg class={`strip strip-${size}`} width="100%" height={layout.height} role="img" aria-label={stripSentence(timeline)}>
      <defs>
        <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" y1="0" x2="0" y2="5" class="strip-hatch" />
        </pattern>
      </defs>
      <line x1="0%" x2="100%" y1={layout.barTop + layout.barHeight / 2} y2={layout.barTop + layout.barHeight / 2} class="strip-rest" />
      {timeline.connections.map((connection, index) => (
        <ConnectionBar
          key={connection.id}
          connection={connection}
          number={index + 1}
          nextH={timeline.connections[index + 1]?.startH ?? timeline.spanH}
          layout={layout}
          size={size}
          fill={`url(#${hatch})`}
          at={at}
        />
      ))}
      {timeline.readings.map((reading) => (
        <ReadingMark key={reading.number} x={at(reading.atH)} number={reading.number} layout={layout} size={size} />
      ))}
      {size === "page" ? <FindingLetters findings={timeline.findings} layout={layout} at={at} /> : null}
      {layout.axisTop === null ? null : <TimeAxis top={layout.axisTop} spanH={timeline.spanH} at={at} />}
    </svg>
  );
}

type BarProps = {
  readonly connection: Timeline["connections"][number];
  readonly number: number;
  readonly nextH: number;
  readonly layout: Layout;
  readonly size: Size;
  readonly fill: string;
  readonly at: (hours: number) => string;
};

/** Width between two places; a stretch too short to see still gets a pixel from its stroke. */
const between = (from: string, to: string) => `${Number((Number.parseFloat(to) - Number.parseFloat(from)).toFixed(3))}%`;

function ConnectionBar({ connection, number, nextH, layout, size, fill, at }: BarProps) {
  const { barTop, barHeight } = layout;
  const start = at(connection.startH);
  const end = at(connection.endH);
  const bottom = barTop + barHeight;
  return (
    <g>
      <rect x={start} y={barTop} width={between(start, end)} height={barHeight} fill={fill} />
      <line x1={start} x2={end} y1={barTop} y2={barTop} class="strip-edge" />
      <line x1={start} x2={end} y1={bottom} y2={bottom} class="strip-edge" />
      <line x1={start} x2={start} y1={barTop - 3} y2={bottom + 3} class="strip-edge" />
      {connection.endKnown ? (
        <line x1={end} x2={end} y1={barTop} y2={bottom} class="strip-edge" />
      ) : (
        <g class="strip-open">
          <line x1={end} x2={at(nextH)} y1={barTop} y2={barTop} />
          <line x1={end} x2={at(nextH)} y1={bottom} y2={bottom} />
        </g>
      )}
      {connection.recorded.map((stretch) => (
        <rect
          key={`${stretch.recording} ${stretch.startH}`}
          x={at(stretch.startH)}
          y={barTop}
          width={between(at(stretch.startH), at(stretch.endH))}
          height={barHeight}
          class="strip-recorded"
        />
      ))}
      {size === "page" ? (
        <svg x={start} y={bottom} overflow="visible" aria-hidden="true">
          <text x="3" y="13" class="strip-number">
            {number}
          </text>
        </svg>
      ) : null}
    </g>
  );
}

type ReadingProps = { readonly x: string; readonly number: number; readonly layout: Layout; readonly size: Size };

function ReadingMark({ x, number, layout, size }: ReadingProps) {
  const half = size === "row" ? 3.5 : 5;
  const middle = layout.barTop - half - 3;
  return (
    <>
      <line x1={x} x2={x} y1={middle + half} y2={layout.barTop + layout.barHeight} class="strip-stem" />
      <svg x={x} y={middle} overflow="visible" aria-hidden="true">
        <path d={`M0 ${-half}L${half} 0L0 ${half}L${-half} 0Z`} class="strip-reading" />
        {size === "page" ? (
          <text x="0" y={-half - 4} text-anchor="middle" class="strip-number">
            {number}
          </text>
        ) : null}
      </svg>
    </>
  );
}

type LettersProps = { readonly findings: Timeline["findings"]; readonly layout: Layout; readonly at: (hours: number) => string };

/** Findings that have a moment are lettered; those without one are told in the list of findings only. */
const lettered = (findings: Timeline["findings"]) =>
  findings
    .filter((finding) => finding.atH !== null)
    .map((finding, index) => ({ ...finding, atH: finding.atH ?? 0, letter: String.fromCharCode("a".charCodeAt(0) + (index % 26)) }));

function FindingLetters({ findings, layout, at }: LettersProps) {
  return (
    <>
      {lettered(findings).map((finding) => (
        <svg key={finding.id} x={at(finding.atH)} y={layout.barTop + layout.barHeight / 2} overflow="visible" aria-hidden="true">
          <circle r="8.5" class="strip-finding" />
          <text y="4" text-anchor="middle" class="strip-number">
            {finding.letter}
          </text>
        </svg>
      ))}
    </>
  );
}

function TimeAxis({ top, spanH, at }: { top: number; spanH: number; at: (hours: number) => string }) {
  return (
    <g class="strip-axis">
      <line x1="0%" x2="100%" y1={top} y2={top} />
      {axisTicks(spanH).map((hours, index) => (
        <g key={hours}>
          <line x1={at(hours)} x2={at(hours)} y1={top} y2={top + 5} />
          <text
            x={at(hours)}
            y={top + 18}
            text-anchor={index === 0 ? "start" : "middle"}
            class={index % 2 === 1 ? "strip-spare" : undefined}
          >
            {tickLabel(hours, spanH)}
          </text>
        </g>
      ))}
    </g>
  );
}

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

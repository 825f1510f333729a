/**
 * The evidence strip: a test from first to last event, what was seen and what was not.
 *
 *      ◆1            ◆2        ◆3          readings
 *   ┌────────▓▓▓▓▓▓┐   ┌▓▓▓▒▒▒▒▒▒▒▒· · ·   connections: solid is recorded, hatched is not, dotted is an end nobody saw
 *   ──┴──────┴──────┴──────┴──────┴──      time
 *
 * Horizontal places are percentages and vertical ones pixels, so that the strip fills any width while its lettering keeps its size.
 */
import type { Timeline } from "../results.ts";
import { useSite } from "./site-context.tsx";
import { hatchId, readingId } from "./sprite.tsx";
import { axisTicks, lettered, sharedNumbers, stripCounts, tickLabel } from "./strip-scale.ts";

type Size = "row" | "card" | "page";

type Layout = { readonly height: number; readonly barTop: number; readonly barHeight: number; readonly axisTop: number | null };

const layouts: Record<Size, Layout> = {
  row: { height: 30, barTop: 12, barHeight: 14, axisTop: null },
  card: { height: 66, barTop: 20, barHeight: 18, axisTop: 46 },
  page: { height: 96, barTop: 32, barHeight: 26, axisTop: 72 },
};

type Props = { readonly timeline: Timeline; readonly size: Size };

/** The strip at one of its three sizes; the sprite of the page holds its hatching and its diamonds. */
export function EvidenceStrip({ timeline, size }: Props) {
  const { formats, words } = useSite();
  const { connections, stretches, readings, unseenEnds } = stripCounts(timeline);
  const layout = layouts[size];
  const span = timeline.spanH > 0 ? timeline.spanH : 1;
  const at = (hours: number) => `${Number((Math.min(1, Math.max(0, hours / span)) * 100).toFixed(3))}%`;
  const numbered = size === "page";
  const connectionNumbers = sharedNumbers(
    timeline.connections.map((connection) => connection.startH),
    span,
  );
  const readingNumbers = sharedNumbers(
    timeline.readings.map((reading) => reading.atH),
    span,
  );
  return (
    <svg
      class={`strip strip-${size}`}
      width="100%"
      height={layout.height}
      role="img"
      aria-label={words.parts.strip.sentence(formats.formatDuration(timeline.spanH), connections, stretches, readings, unseenEnds)}
    >
      <line x1="0%" x2="100%" y1={layout.barTop + layout.barHeight / 2} y2={layout.barTop + layout.barHeight / 2} class="strip-rest" />
      {timeline.connections.map((connection, index) => (
        <ConnectionBar
          key={connection.id}
          connection={connection}
          number={numbered ? (connectionNumbers[index] ?? "") : ""}
          nextH={timeline.connections[index + 1]?.startH ?? timeline.spanH}
          layout={layout}
          at={at}
        />
      ))}
      {timeline.readings.map((reading, index) => (
        <ReadingMark
          key={reading.number}
          x={at(reading.atH)}
          number={numbered ? (readingNumbers[index] ?? "") : ""}
          layout={layout}
          half={size === "row" ? 3.5 : 5}
        />
      ))}
      {numbered ? <FindingLetters findings={timeline.findings} layout={layout} at={at} /> : null}
      {layout.axisTop === null ? null : <TimeAxis top={layout.axisTop} spanH={timeline.spanH} at={at} />}
    </svg>
  );
}

type BarProps = {
  readonly connection: Timeline["connections"][number];
  /** Empty where none is written. */
  readonly number: string;
  readonly nextH: number;
  readonly layout: Layout;
  readonly at: (hours: number) => string;
};

/** Width between two places; a stretch too short to see still gets a pixel from its stroke. */
const between = (from: string, to: string) => `${Number((Number.parseFloat(to) - Number.parseFloat(from)).toFixed(3))}%`;

function ConnectionBar({ connection, number, nextH, layout, at }: BarProps) {
  const { barTop, barHeight } = layout;
  const start = at(connection.startH);
  const end = at(connection.endH);
  const bottom = barTop + barHeight;
  return (
    <g>
      <rect
        x={start}
        y={barTop}
        width={between(start, end)}
        height={barHeight}
        fill={`url(#${hatchId})`}
        class={connection.endKnown ? "strip-connection" : undefined}
      />
      <line x1={start} x2={start} y1={barTop - 3} y2={bottom + 3} class="strip-edge" />
      {connection.endKnown ? null : (
        <g class="strip-open">
          <line x1={start} x2={at(nextH)} y1={barTop} y2={barTop} />
          <line x1={start} x2={at(nextH)} y1={bottom} y2={bottom} />
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
      {number === "" ? null : (
        <text x={start} y={bottom + 13} dx="3" class="strip-number">
          {number}
        </text>
      )}
    </g>
  );
}

type ReadingProps = { readonly x: string; readonly number: string; readonly layout: Layout; readonly half: number };

function ReadingMark({ x, number, layout, half }: ReadingProps) {
  const middle = layout.barTop - half - 3;
  return (
    <>
      <line x1={x} x2={x} y1={middle + half} y2={layout.barTop + layout.barHeight} class="strip-stem" />
      <use href={`#${readingId(half < 5 ? "small" : "large")}`} x={x} y={middle} />
      {number === "" ? null : (
        <text x={x} y={middle - half - 4} text-anchor="middle" class="strip-number">
          {number}
        </text>
      )}
    </>
  );
}

type LettersProps = { readonly findings: Timeline["findings"]; readonly layout: Layout; readonly at: (hours: number) => string };

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
  const { formats } = useSite();
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
            {tickLabel(hours, spanH, formats)}
          </text>
        </g>
      ))}
    </g>
  );
}

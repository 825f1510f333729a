/** The charge characteristic drawn: voltage and current of each stage from its start to its end, one stage beside the next. */
import { type Stage, stageKinds } from "../../nouns/stage.ts";
import { withUnit } from "../../units/format.ts";
import type { Formats } from "../../units/formats.ts";
import type { Words } from "../words/index.ts";
import { useSite } from "./site-context.tsx";

const stageWidth = 76;
const top = 28;
const plotHeight = 84;
const height = 140;
/** More stages than these are not told apart in a drawing; the rest is counted in words. */
const mostStages = 8;
/** Up to so many stages a phone of 320 px has room for; more of them scroll there. */
const stagesOfPhone = 3;

type Drawn = Stage & { readonly leftX: number };

/** Stages stand side by side at one width each, so the drawing shows the order and the levels, and says the hours. */
export function CharacteristicDrawing({ stages, caption }: { stages: readonly Stage[]; caption: string }) {
  const { formats, words } = useSite();
  const { charger } = words;
  const drawn = stages.slice(0, mostStages).map((stage, place): Drawn => ({ ...stage, leftX: place * stageWidth }));
  if (drawn.length === 0) return null;
  const width = drawn.length * stageWidth;
  const left = stages.length - drawn.length;
  const drawing = (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} role="img" aria-label={describe(drawn, words, formats)}>
      {drawn.map((stage) => (
        <g key={stage.leftX}>
          <line x1={stage.leftX} x2={stage.leftX} y1={top - 6} y2={top + plotHeight} class="stage-edge" />
          <text x={stage.leftX + stageWidth / 2} y={15} text-anchor="middle" class="stage-letter">
            {stageKinds[stage.kind].letter ?? "·"}
          </text>
          <text x={stage.leftX + stageWidth / 2} y={height - 8} text-anchor="middle" class="stage-hours">
            {formats.formatDuration((stage.endS - stage.startS) / 3600)}
          </text>
        </g>
      ))}
      <Ends stages={drawn} start="voltageStartV" end="voltageEndV" fromZero={false} name="profile-voltage" />
      <Ends stages={drawn} start="currentStartA" end="currentEndA" fromZero name="profile-current" />
    </svg>
  );
  return (
    <figure class="characteristic">
      {drawn.length <= stagesOfPhone ? (
        drawing
      ) : (
        // A region that scrolls must be reachable by keyboard.
        <section class="scroll" tabindex={0} aria-label={words.parts.drawing(caption)}>
          {drawing}
        </section>
      )}
      <figcaption>
        {caption} {charger.drawn}
        {left > 0 ? ` ${charger.moreStages(left)}` : ""}
      </figcaption>
    </figure>
  );
}

type EndsProps = {
  readonly stages: readonly Drawn[];
  readonly start: "voltageStartV" | "currentStartA";
  readonly end: "voltageEndV" | "currentEndA";
  readonly fromZero: boolean;
  readonly name: string;
};

/** A stroke from the start to the end of every stage that has both. */
function Ends({ stages, start, end, fromZero, name }: EndsProps) {
  const seen = stages.flatMap((stage) => [stage[start], stage[end]]).filter((value) => value !== null);
  const low = fromZero ? Math.min(0, ...seen) : Math.min(...seen);
  const high = Math.max(...seen);
  const y = (value: number): string => (top + (1 - (value - low) / (high - low || 1)) * plotHeight).toFixed(1);
  const path = stages
    .map((stage) => {
      const from = stage[start];
      const to = stage[end];
      return from === null || to === null
        ? ""
        : `M${stage.leftX + 2} ${y(from)}${stroke(stage, y(from), y(to))}${stage.leftX + stageWidth - 2} ${y(to)}`;
    })
    .join("");
  return path === "" ? null : <path d={path} class={name} />;
}

/** A current that falls at a held voltage falls steeply first; all else is drawn straight. */
function stroke({ kind, leftX }: Drawn, fromY: string, toY: string): string {
  return kind === "constant-voltage" && fromY !== toY ? `Q${leftX + stageWidth * 0.25} ${toY} ` : "L";
}

function describe(stages: readonly Drawn[], { charger, marks }: Words, formats: Formats): string {
  return stages
    .map((stage) => {
      const levels = [
        span(stage.voltageStartV, stage.voltageEndV, "V", formats),
        span(stage.currentStartA, stage.currentEndA, "A", formats),
      ].filter((text) => text !== "");
      return charger.stageDrawn(marks.stages[stage.kind], formats.formatDuration((stage.endS - stage.startS) / 3600), levels.join(", "));
    })
    .join("; ");
}

function span(from: number | null, to: number | null, unit: string, { between, formatNumber }: Formats): string {
  if (from === null || to === null) return "";
  return between(formatNumber(from, 2), withUnit(formatNumber(to, 2), unit));
}

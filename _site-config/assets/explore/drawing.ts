/** Draws two panels, voltage above and current below, onto anything that takes lines and letters: a canvas, or an SVG text. */
import type { LogIndex, Points } from "./log-data.ts";
import { digitsFor, elapsed, timeTicks, valueTicks } from "./scale.ts";

export type Colours = {
  readonly ink: string;
  readonly grid: string;
  readonly sheet: string;
  readonly voltage: string;
  readonly current: string;
};

/** What a drawing is made with. */
export interface Pen {
  line(points: readonly (readonly [x: number, y: number])[], colour: string, width: number, dash?: readonly number[]): void;
  letters(text: string, x: number, y: number, align: "left" | "center" | "right"): void;
}

export type View = { readonly fromS: number; readonly toS: number };
export type Frame = { readonly width: number; readonly height: number };

const left = 64;
const right = 10;
const top = 8;
const between = 14;
const bottom = 24;

export function xOf(timeS: number, { fromS, toS }: View, { width }: Frame): number {
  return left + ((timeS - fromS) / (toS - fromS)) * (width - left - right);
}

export function timeAt(x: number, { fromS, toS }: View, { width }: Frame): number {
  return fromS + ((x - left) / (width - left - right)) * (toS - fromS);
}

/** Draws what lies in view. Lines break where the log has a gap. */
export function draw(
  pen: Pen,
  points: Points,
  index: LogIndex,
  view: View,
  frame: Frame,
  colours: Colours,
  cursorS: number | undefined,
): void {
  const panels = [
    ...(index.hasVoltage ? [{ values: points.voltage, unit: "V", colour: colours.voltage, dash: [] as number[] }] : []),
    ...(index.hasCurrent ? [{ values: points.current, unit: "A", colour: colours.current, dash: [] as number[] }] : []),
  ];
  const height = (frame.height - top - bottom - between * (panels.length - 1)) / panels.length;
  const ticks = timeTicks(view.fromS, view.toS, Math.max(2, Math.floor(frame.width / 110)));
  const timeDigits = digitsFor(ticks);
  panels.forEach((panel, place) => {
    const panelTop = top + place * (height + between);
    drawPanel(pen, points, panel, index, view, frame, { top: panelTop, bottom: panelTop + height }, colours);
    for (const tick of ticks) {
      const x = xOf(tick, view, frame);
      pen.line(
        [
          [x, panelTop],
          [x, panelTop + height],
        ],
        colours.grid,
        1,
      );
    }
    if (cursorS === undefined) return;
    const x = xOf(cursorS, view, frame);
    pen.line(
      [
        [x, panelTop],
        [x, panelTop + height],
      ],
      colours.ink,
      1,
      [3, 3],
    );
  });
  for (const tick of ticks) pen.letters(elapsed(tick, timeDigits), xOf(tick, view, frame), frame.height - 7, "center");
}

type Panel = { readonly values: Points["voltage"]; readonly unit: string; readonly colour: string };

function drawPanel(
  pen: Pen,
  points: Points,
  { values, unit, colour }: Panel,
  index: LogIndex,
  view: View,
  frame: Frame,
  box: { readonly top: number; readonly bottom: number },
  colours: Colours,
): void {
  const { from, to } = inView(points, view);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = from; i < to; i++) {
    low = Math.min(low, values.low[i] as number);
    high = Math.max(high, values.high[i] as number);
  }
  if (!(low <= high)) return;
  const margin = Math.max((high - low) * 0.06, 1e-3);
  low -= margin;
  high += margin;
  const y = (value: number): number => box.bottom - ((value - low) / (high - low)) * (box.bottom - box.top);
  const ticks = valueTicks(low, high, 5);
  const digits = digitsFor(ticks);
  ticks.forEach((tick, place) => {
    pen.line(
      [
        [left, y(tick)],
        [frame.width - right, y(tick)],
      ],
      colours.grid,
      1,
    );
    pen.letters(`${tick.toFixed(digits)}${place === ticks.length - 1 ? ` ${unit}` : ""}`, left - 6, y(tick) + 4, "right");
  });
  for (const [start, end] of strokes(points, index, from, to)) {
    pen.line(
      columns(points, values, start, end, (timeS) => xOf(timeS, view, frame), y),
      colour,
      1.5,
    );
  }
}

/** Points from the one before the view to the one after it, so that lines run out of the picture and do not end in it. */
function inView({ timesS }: Points, { fromS, toS }: View): { from: number; to: number } {
  let from = 0;
  while (from + 1 < timesS.length && (timesS[from + 1] as number) < fromS) from++;
  let to = timesS.length;
  while (to > from + 1 && (timesS[to - 2] as number) > toS) to--;
  return { from, to };
}

function strokes({ timesS }: Points, { gaps }: LogIndex, from: number, to: number): [number, number][] {
  const parts: [number, number][] = [];
  let start = from;
  for (let i = from + 1; i < to; i++) {
    const a = timesS[i - 1] as number;
    const b = timesS[i] as number;
    if (!gaps.some((gap) => gap.startS >= a - 1e-6 && gap.endS <= b + 1e-6)) continue;
    parts.push([start, i]);
    start = i;
  }
  parts.push([start, to]);
  return parts;
}

/** One lowest and one highest place for each column of pixels: a million samples draw no more than the picture holds. */
function columns(
  { timesS }: Points,
  { low, high }: Points["voltage"],
  from: number,
  to: number,
  x: (timeS: number) => number,
  y: (value: number) => number,
): [number, number][] {
  const path: [number, number][] = [];
  let i = from;
  while (i < to) {
    const column = Math.floor(x(timesS[i] as number));
    const first = i;
    let lowest = i;
    let highest = i;
    for (; i < to && Math.floor(x(timesS[i] as number)) === column; i++) {
      if ((low[i] as number) < (low[lowest] as number)) lowest = i;
      if ((high[i] as number) > (high[highest] as number)) highest = i;
    }
    const place = x(timesS[first] as number);
    path.push([place, y(low[first] as number)]);
    if (i - first > 1 || low[first] !== high[first]) path.push([place, y(low[lowest] as number)], [place, y(high[highest] as number)]);
    if (i - first > 1) path.push([x(timesS[i - 1] as number), y(high[i - 1] as number)]);
  }
  return path;
}

/** A pen for a canvas whose context is already scaled to the screen's pixels. */
export function canvasPen(context: CanvasRenderingContext2D, ink: string): Pen {
  return {
    line(points, colour, width, dash = []) {
      context.beginPath();
      points.forEach(([x, y], place) => {
        if (place === 0) context.moveTo(x, y);
        else context.lineTo(x, y);
      });
      context.strokeStyle = colour;
      context.lineWidth = width;
      context.setLineDash([...dash]);
      context.stroke();
    },
    letters(text, x, y, align) {
      context.fillStyle = ink;
      context.font = "12px system-ui, sans-serif";
      context.textAlign = align;
      context.fillText(text, x, y);
    },
  };
}

/** A pen that writes SVG. */
export function svgPen(ink: string): Pen & { text(frame: Frame, sheet: string): string } {
  const parts: string[] = [];
  const anchors = { left: "start", center: "middle", right: "end" } as const;
  return {
    line(points, colour, width, dash = []) {
      const path = points.map(([x, y], place) => `${place === 0 ? "M" : "L"}${x.toFixed(1)} ${y.toFixed(1)}`).join("");
      const dashed = dash.length === 0 ? "" : ` stroke-dasharray="${dash.join(" ")}"`;
      parts.push(`<path d="${path}" fill="none" stroke="${colour}" stroke-width="${width}"${dashed}/>`);
    },
    letters(text, x, y, align) {
      parts.push(
        `<text x="${x.toFixed(1)}" y="${y.toFixed(1)}" text-anchor="${anchors[align]}" font-family="sans-serif" font-size="12" fill="${ink}">${text}</text>`,
      );
    },
    text: ({ width, height }, sheet) =>
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}"><rect width="100%" height="100%" fill="${sheet}"/>${parts.join("")}</svg>`,
  };
}

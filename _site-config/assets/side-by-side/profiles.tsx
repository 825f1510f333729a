/** The recorded profiles over each other: voltage above, current below, one style of line a charger. */

import { Said } from "../../../lib/publish/pages/speech.tsx";
import type { Over } from "../../../lib/publish/side-by-side/choice.ts";
import type { Entrant } from "../../../lib/publish/side-by-side/line-up.ts";
import { listed } from "../../../lib/publish/side-by-side/side-speech.ts";
import { fill } from "../../../lib/publish/words/fill.ts";
import { writeNumber } from "../../../lib/units/write-number.ts";
import { digitsFor, valueTicks } from "../explore/scale.ts";
import { type Axis, lastPoint, pathThrough, placeOn, spreadLabels } from "./drawing.ts";
import { cellLabel, type Shown, To } from "./parts.tsx";
import { words } from "./speech.ts";

type Values = readonly (number | null)[];
type Line = {
  readonly letter: string;
  readonly name: string;
  readonly xs: Values;
  readonly voltages: Values;
  readonly currentsA: Values;
  /** Whether the charger had switched off before the recording ended. */
  readonly hasSwitchedOff: boolean;
};

type Props = Shown & {
  readonly over: Over;
  readonly setOver: (over: Over) => void;
  /** The room that the drawing has, px. */
  readonly width: number;
};

const panelHeight = 190;
const left = 52;
const top = 30;
const axisHeight = 40;
const labelHeight = 15;
/** From this width on a line's label has room for the charger's name. */
const wideFrom = 640;

/** The drawing with its switch and its key; chargers without a recording are named in the key. */
export function Profiles({ entrants, invented, over, setOver, width }: Props) {
  const drawn = entrants.flatMap((entrant) =>
    entrant.run?.profile ? [{ ...entrant, run: entrant.run, profile: entrant.run.profile }] : [],
  );
  if (drawn.length === 0) return <p>{words.noDrawing}</p>;
  const isPerCell = new Set(drawn.map(({ run }) => run.conditions.nominalVoltageV)).size > 1;
  const lines = drawn.map(
    ({ letter, charger, run, profile }): Line => ({
      letter,
      name: charger.name,
      xs: over === "hours" ? profile.elapsedH : profile.chargeShare.map((share) => (share === null ? null : 100 * share)),
      // Lead-acid cells are counted by their nominal 2 V.
      voltages: isPerCell
        ? profile.voltageV.map((voltageV) => (voltageV === null ? null : (2 * voltageV) / run.conditions.nominalVoltageV))
        : profile.voltageV,
      currentsA: profile.currentA,
      hasSwitchedOff: run.recording?.endedBy === "charger",
    }),
  );
  return (
    <figure class="chart side-profiles">
      <fieldset class="side-switch">
        <legend>{words.drawnOver}</legend>
        {(["hours", "share"] as const).map((choice) => (
          <label key={choice}>
            <input type="radio" name="over" checked={over === choice} onChange={() => setOver(choice)} />
            {words.over[choice]}
          </label>
        ))}
      </fieldset>
      <Drawing lines={lines} width={width} over={over} voltageUnit={isPerCell ? words.perCell : "V"} />
      <figcaption>
        <ul class="plain">
          {entrants.map((entrant) => (
            <LineKey key={entrant.letter} entrant={entrant} />
          ))}
        </ul>
        {invented ? <span class="invented"> {words.invented}</span> : null}
      </figcaption>
    </figure>
  );
}

/** The style of an entrant's line, and which recording it shows. */
function LineKey({ entrant }: { entrant: Entrant }) {
  const { letter, run } = entrant;
  return (
    <li>
      <svg width="44" height="10" aria-hidden="true">
        <path d="M0 5H44" class={lineClass(letter)} />
      </svg>{" "}
      {cellLabel(entrant)}:{" "}
      {run?.profile && run.recording !== null ? (
        <>
          <To path={run.recording.to}>{run.recording.id}</To>
          {words.endedBy}
          <Said text={run.recording.endedWords} />
        </>
      ) : (
        words.absences["not recorded"]
      )}
    </li>
  );
}

const lineClass = (letter: string): string => `side-line side-${letter.toLowerCase()}`;

type DrawingProps = { readonly lines: readonly Line[]; readonly width: number; readonly over: Over; readonly voltageUnit: string };

function Drawing({ lines, width, over, voltageUnit }: DrawingProps) {
  const isWide = width >= wideFrom;
  const right = width - (isWide ? 150 : 26);
  const height = 2 * (top + panelHeight) + axisHeight;
  const x: Axis = { from: 0, to: Math.max(...seen(lines.map(({ xs }) => xs)), 1e-3), fromPx: left, toPx: right };
  const ticks = valueTicks(x.from, x.to, Math.max(3, Math.floor((right - left) / 90)));
  const chargers = listed(
    lines.map(({ letter, name }) => `${letter} ${name}`),
    words,
  );
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} role="img" aria-label={fill(words.drawing[over], { chargers })}>
      {[
        { unit: voltageUnit, name: words.voltage, of: (line: Line) => line.voltages, fromZero: false },
        { unit: "A", name: words.current, of: (line: Line) => line.currentsA, fromZero: true },
      ].map((panel, place) => (
        <Panel key={panel.name} {...panel} lines={lines} x={x} ticks={ticks} topPx={top + place * (top + panelHeight)} isWide={isWide} />
      ))}
      <g class="strip-axis">
        {ticks.map((tick) => (
          <text key={tick} x={placeOn(x, tick)} y={height - axisHeight + 16} text-anchor="middle">
            {writeNumber(tick, digitsFor(ticks), words.numbers)}
          </text>
        ))}
        <text x={left} y={height - 6}>
          {words.axes[over]}
        </text>
      </g>
    </svg>
  );
}

const seen = (lists: readonly Values[]): number[] => lists.flat().filter((value) => value !== null);

type PanelProps = {
  readonly name: string;
  readonly unit: string;
  readonly of: (line: Line) => Values;
  readonly fromZero: boolean;
  readonly lines: readonly Line[];
  readonly x: Axis;
  readonly ticks: readonly number[];
  readonly topPx: number;
  readonly isWide: boolean;
};

function Panel({ name, unit, of, fromZero, lines, x, ticks, topPx, isWide }: PanelProps) {
  const values = seen(lines.map(of));
  const low = Math.min(...values, ...(fromZero ? [0] : []));
  const high = Math.max(...values, low + 1e-3);
  const spare = fromZero ? 0 : (high - low) / 20;
  const bottomPx = topPx + panelHeight;
  const y: Axis = { from: low - spare, to: high + (high - low) / 20, fromPx: bottomPx, toPx: topPx };
  const levels = values.length === 0 ? [] : valueTicks(y.from, y.to, 5);
  const ends = lines.flatMap((line) => {
    const end = lastPoint(line.xs, of(line));
    return end === undefined ? [] : [{ line, xPx: placeOn(x, end.x), yPx: placeOn(y, end.y) }];
  });
  const labels = spreadLabels(
    ends.map(({ yPx }) => yPx),
    labelHeight,
    bottomPx,
  );
  return (
    <g>
      <g class="strip-axis">
        {levels.map((level) => (
          <g key={level}>
            <path d={`M${x.fromPx} ${placeOn(y, level).toFixed(1)}H${x.toPx}`} class="side-grid" />
            <text x={x.fromPx - 6} y={placeOn(y, level) + 4} text-anchor="end">
              {writeNumber(level, digitsFor(levels), words.numbers)}
            </text>
          </g>
        ))}
        {ticks.map((tick) => (
          <path key={tick} d={`M${placeOn(x, tick).toFixed(1)} ${topPx}V${bottomPx}`} class="side-grid" />
        ))}
        <text x={x.fromPx} y={topPx - 8}>
          {name}, {unit}
          {values.length === 0 ? `: ${words.absences["not recorded"]}` : ""}
        </text>
      </g>
      {lines.map((line) => (
        <path key={line.letter} d={pathThrough(line.xs, of(line), x, y)} class={lineClass(line.letter)} />
      ))}
      {ends.map(({ line, xPx, yPx }, place) => (
        <g key={line.letter}>
          <path d={`M${xPx.toFixed(1)} ${yPx.toFixed(1)}L${x.toPx + 4} ${(labels[place] ?? yPx).toFixed(1)}`} class="side-leader" />
          <circle cx={xPx} cy={yPx} r="3.5" class={line.hasSwitchedOff ? "side-end side-off" : "side-end"} />
          <text x={x.toPx + 7} y={(labels[place] ?? yPx) + 4} class="strip-number">
            {isWide ? `${line.letter} ${line.name}` : line.letter}
          </text>
        </g>
      ))}
    </g>
  );
}

/** The log explorer: from the whole log down to single rows, by pointer, by keys or by buttons. Loaded only when it is asked for. */

import { formats } from "../formats.ts";
import { language } from "../language.ts";
import { exploreWords as words } from "../script-words.ts";
import { type Colours, canvasPen, draw, type Frame, svgPen, timeAt, type View } from "./drawing.ts";
import { LogData, nearest, type Points } from "./log-data.ts";
import { elapsed } from "./scale.ts";

/** No closer than this many seconds. */
const closestS = 2;
const height = 360;

class Explorer {
  readonly #data: LogData;
  readonly #name: string;
  readonly #canvas = document.createElement("canvas");
  readonly #readout = document.createElement("p");
  #view: View;
  #points: Points | undefined;
  #cursorS: number | undefined;
  #asked = 0;

  constructor(place: HTMLElement, data: LogData, name: string) {
    this.#data = data;
    this.#name = name;
    this.#view = this.#whole();
    this.#canvas.tabIndex = 0;
    this.#canvas.setAttribute("role", "application");
    this.#canvas.setAttribute("aria-label", words.label(name, data.index.rows));
    this.#readout.setAttribute("role", "status");
    this.#readout.className = "explore-readout";
    this.#readout.textContent = words.hint;
    place.replaceChildren(this.#controls(), this.#canvas, this.#readout);
    this.#canvas.addEventListener("keydown", (event) => this.#onKey(event));
    this.#canvas.addEventListener("wheel", (event) => this.#onWheel(event), { passive: false });
    this.#listenToPointer();
    new ResizeObserver(() => this.#redraw()).observe(place);
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => this.#redraw());
    void this.#show(this.#view).then(() => this.#canvas.focus({ preventScroll: true }));
  }

  #whole(): View {
    return { fromS: 0, toS: Math.max(closestS, this.#data.index.spanS) };
  }

  #controls(): HTMLElement {
    const bar = document.createElement("div");
    bar.className = "explore-controls";
    const button = (label: string, act: () => void): void => {
      const made = document.createElement("button");
      made.type = "button";
      made.textContent = label;
      made.addEventListener("click", act);
      bar.append(made);
    };
    button(words.zoomIn, () => this.#zoom(0.5));
    button(words.zoomOut, () => this.#zoom(2));
    button(words.earlier, () => this.#pan(-0.5));
    button(words.later, () => this.#pan(0.5));
    button(words.whole, () => void this.#show(this.#whole()));
    bar.append(this.#lineField());
    button(words.csv, () => void this.#saveCsv());
    button("SVG", () => this.#saveSvg());
    button("PNG", () => this.#canvas.toBlob((blob) => blob && save(blob, `${this.#name}.png`)));
    return bar;
  }

  #lineField(): HTMLElement {
    const form = document.createElement("form");
    const label = document.createElement("label");
    const field = document.createElement("input");
    field.type = "number";
    field.min = "1";
    label.append(words.line, field);
    const go = document.createElement("button");
    go.textContent = words.go;
    form.append(label, go);
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      if (field.value !== "") void this.#goToLine(Number(field.value));
    });
    return form;
  }

  async #goToLine(line: number): Promise<void> {
    const timeS = await this.#data.timeOfLine(line);
    const half = Math.min(this.#data.index.spanS, (300 * this.#data.index.spanS) / this.#data.index.rows) / 2;
    await this.#show({ fromS: timeS - Math.max(closestS, half), toS: timeS + Math.max(closestS, half) });
    this.#moveCursor(timeS);
  }

  async #show(view: View): Promise<void> {
    const spanS = Math.min(Math.max(closestS, view.toS - view.fromS), this.#whole().toS);
    const fromS = Math.min(Math.max(0, view.fromS), this.#whole().toS - spanS);
    this.#view = { fromS, toS: fromS + spanS };
    const asked = ++this.#asked;
    this.#redraw();
    try {
      const points = await this.#data.between(fromS, fromS + spanS);
      // A later view has been asked for meanwhile.
      if (asked !== this.#asked) return;
      this.#points = points;
      this.#redraw();
    } catch (error) {
      this.#readout.textContent = words.partNotRead(error instanceof Error ? error.message : String(error));
    }
  }

  #redraw(): void {
    if (this.#points === undefined) return;
    const frame = this.#frame();
    const ratio = window.devicePixelRatio || 1;
    this.#canvas.width = Math.round(frame.width * ratio);
    this.#canvas.height = Math.round(frame.height * ratio);
    const context = this.#canvas.getContext("2d");
    if (context === null) return;
    const colours = coloursOf(this.#canvas);
    context.scale(ratio, ratio);
    context.fillStyle = colours.sheet;
    context.fillRect(0, 0, frame.width, frame.height);
    draw(canvasPen(context, colours.ink), this.#points, this.#data.index, this.#view, frame, colours, this.#cursorS);
  }

  #frame(): Frame {
    return { width: Math.max(280, this.#canvas.clientWidth), height };
  }

  #zoom(factor: number, aboutS = this.#cursorS ?? (this.#view.fromS + this.#view.toS) / 2): void {
    const { fromS, toS } = this.#view;
    void this.#show({ fromS: aboutS - (aboutS - fromS) * factor, toS: aboutS + (toS - aboutS) * factor });
  }

  #pan(share: number): void {
    const byS = share * (this.#view.toS - this.#view.fromS);
    void this.#show({ fromS: this.#view.fromS + byS, toS: this.#view.toS + byS });
  }

  #moveCursor(timeS: number): void {
    const points = this.#points;
    if (points === undefined) return;
    const at = nearest(points, timeS);
    this.#cursorS = points.timesS[at];
    this.#readout.textContent = this.#describe(points, at);
    this.#redraw();
  }

  #describe(points: Points, at: number): string {
    const { index } = this.#data;
    const timeS = points.timesS[at] as number;
    const span = (values: Points["voltage"], unit: string): string => {
      const low = formats.formatNumber(values.low[at] as number, 3);
      const high = formats.formatNumber(values.high[at] as number, 3);
      return low === high ? `${low} ${unit}` : words.range(low, high, unit);
    };
    const line = points.lines?.[at];
    return [
      line === undefined ? words.several : words.atLine(line.toLocaleString(language)),
      words.fromFirst(elapsed(timeS, 1)),
      ...(index.startMs === null ? [] : [instant(index.startMs + timeS * 1000, index.zone)]),
      ...(index.hasVoltage ? [span(points.voltage, "V")] : []),
      ...(index.hasCurrent ? [span(points.current, "A")] : []),
    ].join(" · ");
  }

  #onKey(event: KeyboardEvent): void {
    const step = (direction: -1 | 1): void => {
      const points = this.#points;
      if (points === undefined) return;
      const { fromS, toS } = this.#view;
      const at = nearest(points, this.#cursorS ?? (fromS + toS) / 2);
      const target = event.shiftKey
        ? (points.timesS[at] as number) + (direction * (toS - fromS)) / 10
        : (points.timesS[Math.min(points.timesS.length - 1, Math.max(0, at + direction))] as number);
      this.#moveCursor(target);
      const cursorS = this.#cursorS ?? fromS;
      if (cursorS < fromS || cursorS > toS) this.#pan(direction * 0.5);
    };
    const keys: Record<string, () => void> = {
      ArrowLeft: () => step(-1),
      ArrowRight: () => step(1),
      "+": () => this.#zoom(0.5),
      "=": () => this.#zoom(0.5),
      "-": () => this.#zoom(2),
      Home: () => void this.#show(this.#whole()),
      PageUp: () => this.#pan(-0.9),
      PageDown: () => this.#pan(0.9),
    };
    const act = keys[event.key];
    if (act === undefined) return;
    event.preventDefault();
    act();
  }

  /** Only with a modifier, or once the drawing has the focus: otherwise the wheel scrolls the page, as readers expect. */
  #onWheel(event: WheelEvent): void {
    if (!event.ctrlKey && !event.metaKey && document.activeElement !== this.#canvas) return;
    event.preventDefault();
    this.#zoom(event.deltaY > 0 ? 1.25 : 0.8, timeAt(event.offsetX, this.#view, this.#frame()));
  }

  #listenToPointer(): void {
    let from: { x: number; view: View } | undefined;
    this.#canvas.addEventListener("pointerdown", (event) => {
      from = { x: event.offsetX, view: this.#view };
      this.#canvas.setPointerCapture(event.pointerId);
    });
    this.#canvas.addEventListener("pointermove", (event) => {
      if (from === undefined || Math.abs(event.offsetX - from.x) < 4) {
        this.#moveCursor(timeAt(event.offsetX, this.#view, this.#frame()));
        return;
      }
      const byS = timeAt(from.x, from.view, this.#frame()) - timeAt(event.offsetX, from.view, this.#frame());
      void this.#show({ fromS: from.view.fromS + byS, toS: from.view.toS + byS });
    });
    const release = (): void => {
      from = undefined;
    };
    this.#canvas.addEventListener("pointerup", release);
    this.#canvas.addEventListener("pointercancel", release);
    this.#canvas.addEventListener("dblclick", (event) => this.#zoom(0.4, timeAt(event.offsetX, this.#view, this.#frame())));
  }

  async #saveCsv(): Promise<void> {
    const { fromS, toS } = this.#view;
    const points = await this.#data.between(fromS, toS);
    if (points.lines === undefined) {
      this.#readout.textContent = words.tooMany;
      return;
    }
    const rows = ["line,elapsed_s,voltage_V,current_A"];
    points.timesS.forEach((timeS, at) => {
      if (timeS < fromS || timeS > toS) return;
      const value = (values: Float32Array): string =>
        Number.isNaN(values[at]) ? "" : String(Number((values[at] as number).toPrecision(7)));
      rows.push(`${points.lines?.[at]},${timeS},${value(points.voltage.low)},${value(points.current.low)}`);
    });
    save(new Blob([`${rows.join("\n")}\n`], { type: "text/csv" }), `${this.#name}-view.csv`);
  }

  #saveSvg(): void {
    if (this.#points === undefined) return;
    const colours = coloursOf(this.#canvas);
    const pen = svgPen(colours.ink);
    draw(pen, this.#points, this.#data.index, this.#view, this.#frame(), colours, this.#cursorS);
    save(new Blob([pen.text(this.#frame(), colours.sheet)], { type: "image/svg+xml" }), `${this.#name}-view.svg`);
  }
}

function save(blob: Blob, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}

/** The page's own colours; the system's where the reader has set their own. */
function coloursOf(element: HTMLElement): Colours {
  if (matchMedia("(forced-colors: active)").matches)
    return { ink: "CanvasText", grid: "GrayText", sheet: "Canvas", voltage: "CanvasText", current: "LinkText" };
  const style = getComputedStyle(element);
  const of = (name: string): string => style.getPropertyValue(name).trim();
  return { ink: of("--ink"), grid: of("--grid"), sheet: of("--sheet"), voltage: of("--voltage"), current: of("--current") };
}

function instant(ms: number, zone: string): string {
  return new Intl.DateTimeFormat("sv-SE", { dateStyle: "short", timeStyle: "medium", timeZone: zone }).format(ms);
}

addEventListener("ampwitness-explore", (event) => {
  const { place, folder, name } = (event as CustomEvent<{ place: HTMLElement; folder: string; name: string }>).detail;
  LogData.open(new URL(folder, location.href)).then(
    (data) => new Explorer(place, data, name),
    (error: unknown) => {
      place.textContent = words.notOpened(error instanceof Error ? error.message : String(error));
    },
  );
});

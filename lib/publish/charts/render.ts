/** Draws a chart's specification as SVG, at build time, the same bytes on every machine. */
import type { TopLevelSpec } from "vega-lite";
import { narrowSpace } from "../../units/format.ts";
import { colour, followTheme } from "./palette.ts";

/** A system font stack: without a canvas text widths are estimates, so charts leave room and keep labels short. */
const font = "system-ui, sans-serif";

const config: NonNullable<TopLevelSpec["config"]> = {
  background: "transparent",
  font,
  // Marks carry no labels of their own: a line's label would read only its first point. The figure around the chart speaks for it.
  aria: false,
  view: { stroke: null },
  axis: {
    labelColor: colour.quiet,
    titleColor: colour.ink,
    tickColor: colour.line,
    domainColor: colour.quiet,
    gridColor: colour.line,
    labelFontSize: 13,
    titleFontSize: 13,
    titleFontWeight: 600,
    labelFlush: false,
    labelOverlap: true,
  },
  // A missing sample breaks the line: gaps are shown, never bridged.
  line: { invalid: "break-paths-show-domains" },
};

/**
 * @param spec a Vega-Lite specification whose data stand inside it
 * @param decimalMark how numbers on axes are written; thousands are parted by a narrow space, as everywhere on the site
 * @param id letters, digits and hyphens, unique on the page; every id inside the drawing starts with it
 * @returns an `<svg>` element that scales with its container
 * Throws where the specification is not valid, which is our own mistake.
 */
export async function renderChart(spec: TopLevelSpec, id: string, decimalMark = "."): Promise<string> {
  // Loaded where a chart is drawn: most builds draw none anew, and the two take half a second.
  const [{ parse, resetSVGDefIds, View }, { compile }] = await Promise.all([import("vega"), import("vega-lite")]);
  resetSVGDefIds();
  const compiled = compile({ ...spec, config: { ...config, ...numbersWith(decimalMark), ...spec.config } });
  const view = new View(parse(compiled.spec), { renderer: "none" });
  try {
    return scalable(followTheme(prefixIds(await view.toSVG(), id)));
  } finally {
    view.finalize();
  }
}

/** English numbers are Vega's own. */
function numbersWith(decimalMark: string): NonNullable<TopLevelSpec["config"]> {
  if (decimalMark === ".") return {};
  return { locale: { number: { decimal: decimalMark, thousands: narrowSpace, grouping: [3], currency: ["", ""] } } };
}

/** Vega counts its clip paths from a global counter, so two charts on a page would share names. */
function prefixIds(svg: string, id: string): string {
  return svg.replace(/\bid="([^"]+)"/g, `id="${id}-$1"`).replace(/url\(#([^)]+)\)/g, `url(#${id}-$1)`);
}

/** The figure around the drawing is the image with the words; the drawing itself is left out of the reading order. */
function scalable(svg: string): string {
  return svg.replace(/^<svg /, '<svg aria-hidden="true" focusable="false" ');
}

/**
 * Colours of charts. Vega only draws plain colours, so each role has a placeholder that is swapped, after drawing,
 * for a custom property of the stylesheet: charts then follow light, dark, forced colours and print like the text around them.
 */

/** Placeholder and the property that replaces it. The placeholder is also what a reader without the stylesheet sees. */
export const palette = {
  ink: { placeholder: "#1b2b31", property: "--ink" },
  quiet: { placeholder: "#55646a", property: "--quiet" },
  line: { placeholder: "#dfe1d8", property: "--grid" },
  sheet: { placeholder: "#fffefa", property: "--sheet" },
  band: { placeholder: "#eaede2", property: "--band" },
  gap: { placeholder: "#e8dcc8", property: "--gap" },
  voltage: { placeholder: "#0a5a6b", property: "--voltage" },
  current: { placeholder: "#9a3d12", property: "--current" },
  density: { placeholder: "#3f4f9a", property: "--density" },
} as const;

/** The colour to write into a chart's specification. */
export const colour = Object.fromEntries(Object.entries(palette).map(([role, { placeholder }]) => [role, placeholder])) as {
  readonly [role in keyof typeof palette]: string;
};

/** Swaps every placeholder in a drawing for its property, the placeholder staying as the fallback. */
export function followTheme(svg: string): string {
  return Object.values(palette).reduce(
    (text, { placeholder, property }) => text.replaceAll(`"${placeholder}"`, `"var(${property},${placeholder})"`),
    svg,
  );
}

/** The calibration plot: nominal against observed coverage, drawn by hand as SVG so that it needs no chart library. */

export type CoverageCurve = { readonly name: string; readonly points: readonly (readonly [nominal: number, observed: number])[] };

const size = { width: 560, height: 420, left: 64, right: 200, top: 20, bottom: 52 };
/** Distinct in lightness as well as hue, and each with its own mark; the palette's dark blue, orange and their kin. */
const looks = [
  { colour: "#1b4f8f", dash: "none" },
  { colour: "#c2570c", dash: "7 3" },
  { colour: "#2f7d4f", dash: "2 3" },
  { colour: "#7a3d8f", dash: "10 3 2 3" },
] as const;

/** Draws curves over levels from 0 to 1; the thin diagonal is perfect calibration. At most four curves. */
export function drawCoverage(curves: readonly CoverageCurve[], title: string): string {
  const plotWidth = size.width - size.left - size.right;
  const plotHeight = size.height - size.top - size.bottom;
  const x = (share: number): string => (size.left + share * plotWidth).toFixed(1);
  const y = (share: number): string => (size.top + (1 - share) * plotHeight).toFixed(1);
  const ticks = [0, 0.2, 0.4, 0.6, 0.8, 1];
  const parts = [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size.width} ${size.height}" font-family="system-ui, sans-serif" font-size="13" fill="#333" role="img">`,
    `<title>${title}</title>`,
    `<rect width="${size.width}" height="${size.height}" fill="#fff"/>`,
    ...ticks.flatMap((tick) => [
      `<path d="M${x(tick)} ${y(0)}V${y(1)}M${x(0)} ${y(tick)}H${x(1)}" stroke="#ddd"/>`,
      `<text x="${x(tick)}" y="${Number(y(0)) + 20}" text-anchor="middle">${tick * 100}</text>`,
      `<text x="${Number(x(0)) - 8}" y="${Number(y(tick)) + 4}" text-anchor="end">${tick * 100}</text>`,
    ]),
    `<path d="M${x(0)} ${y(0)}L${x(1)} ${y(1)}" stroke="#888"/>`,
    `<text x="${x(0.5)}" y="${size.height - 10}" text-anchor="middle">interval asked for, %</text>`,
    `<text transform="translate(18 ${y(0.5)}) rotate(-90)" text-anchor="middle">truths inside, %</text>`,
    ...curves.flatMap(({ name, points }, i) => {
      const look = looks[i % looks.length] ?? looks[0];
      const line = points.map(([nominal, observed], k) => `${k === 0 ? "M" : "L"}${x(nominal)} ${y(observed)}`).join("");
      const keyY = size.top + 14 + 24 * i;
      const keyX = size.width - size.right + 16;
      return [
        `<path d="${line}" fill="none" stroke="${look.colour}" stroke-width="2" stroke-dasharray="${look.dash}"/>`,
        `<path d="M${keyX} ${keyY}h28" stroke="${look.colour}" stroke-width="2" stroke-dasharray="${look.dash}"/>`,
        `<text x="${keyX + 36}" y="${keyY + 4}">${name}</text>`,
      ];
    }),
    "</svg>",
  ];
  return `${parts.join("\n")}\n`;
}

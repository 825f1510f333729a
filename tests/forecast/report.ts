/** Writes what the left-out tests showed: tables as Markdown, calibration as a picture. */
import { type ChargerKind, chargerKinds } from "./draw-campaign.ts";
import { calibration, markNames, type Scored, type Summary, summarise } from "./score.ts";

const header = [
  "| mark | charger | tests | truth in the 90 % interval | median error | reached by both | forecast / truth | wrong about ever | width / middle |",
  "|---|---|---|---|---|---|---|---|---|",
];

/** One table: a row for all chargers and one for each kind, for each mark. */
export function tableOf(scores: readonly Scored[]): string {
  const rows = markNames.flatMap((mark) => {
    const ofMark = scores.filter((score) => score.mark === mark);
    const kinds: ("all" | ChargerKind)[] = ["all", ...chargerKinds];
    return kinds.flatMap((kind) => {
      const some = kind === "all" ? ofMark : ofMark.filter((score) => score.kind === kind);
      return some.length === 0 ? [] : [rowOf(mark, kind, summarise(some))];
    });
  });
  return [...header, ...rows].join("\n");
}

function rowOf(mark: string, kind: string, summary: Summary): string {
  const cells = [
    mark,
    kind,
    String(summary.count),
    percent(summary.held, 0),
    percent(summary.medianError, 1),
    String(summary.bothReached),
    Number.isNaN(summary.medianRatio) ? "none" : summary.medianRatio.toFixed(2),
    String(summary.wrongOutcome),
    Number.isNaN(summary.medianWidth) ? "open" : summary.medianWidth.toFixed(2),
  ];
  return `| ${cells.join(" | ")} |`;
}

function percent(share: number, decimals: number): string {
  return Number.isNaN(share) ? "none" : `${(100 * share).toFixed(decimals)} %`;
}

/** Shares at which calibration is drawn. */
const shares = Array.from({ length: 19 }, (_, i) => (i + 1) / 20);
const size = 360;
const margin = 48;

/** Calibration of hours to 80 % and to 95 %: how often the truth lay below each stated share of the draws. */
export function calibrationSvg(scores: readonly Scored[], title: string): string {
  const place = (share: number): number => margin + share * (size - 2 * margin);
  const flip = (share: number): number => size - place(share);
  const line = (mark: string, stroke: string, dash: string): string => {
    const points = calibration(
      scores.filter((score) => score.mark === mark),
      shares,
    ).map(({ share, observed }) => `${place(share).toFixed(1)},${flip(observed).toFixed(1)}`);
    return `<polyline points="${points.join(" ")}" fill="none" stroke="${stroke}" stroke-width="2" stroke-dasharray="${dash}"/>`;
  };
  const ticks = [0, 0.25, 0.5, 0.75, 1].flatMap((share) => [
    `<text x="${place(share).toFixed(1)}" y="${size - margin + 18}" text-anchor="middle">${100 * share}</text>`,
    `<text x="${margin - 8}" y="${(flip(share) + 4).toFixed(1)}" text-anchor="end">${100 * share}</text>`,
  ]);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}" role="img" font-family="sans-serif" font-size="12">`,
    `<title>${title}</title>`,
    `<rect width="${size}" height="${size}" fill="#fff"/>`,
    `<rect x="${margin}" y="${margin}" width="${size - 2 * margin}" height="${size - 2 * margin}" fill="none" stroke="#767676"/>`,
    `<line x1="${place(0)}" y1="${flip(0)}" x2="${place(1)}" y2="${flip(1)}" stroke="#767676"/>`,
    line("80 %", "#005a9c", "none"),
    line("95 %", "#a33b00", "6 4"),
    ...ticks,
    `<text x="${size / 2}" y="${size - 8}" text-anchor="middle">stated share of the draws, %</text>`,
    `<text x="14" y="${size / 2}" text-anchor="middle" transform="rotate(-90 14 ${size / 2})">truth at or below it, % of tests</text>`,
    `<text x="${margin + 8}" y="${margin + 18}" fill="#005a9c">solid: hours to 80 %</text>`,
    `<text x="${margin + 8}" y="${margin + 34}" fill="#a33b00">dashed: hours to 95 %</text>`,
    "</svg>",
    "",
  ].join("\n");
}

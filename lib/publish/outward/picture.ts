/** The picture that travels with a shared link: 1200 × 630 px, made at build time from text alone. */
import { createRequire } from "node:module";
import { Resvg } from "@resvg/resvg-js";
import type { SiteIndex } from "../results.ts";
import type { Headlines } from "./headlines.ts";
import { versionWords } from "./history.ts";
import { escapeMarkup } from "./markup-text.ts";
import { outwardSpeechIn } from "./outward-speech.ts";
import { pictureHeight, pictureWidth } from "./picture-size.ts";

const margin = 64;

export type PictureText = {
  readonly site: string;
  readonly title: string;
  readonly verdict: string;
  readonly outcomes: readonly string[];
  readonly foot: string;
  readonly invented: boolean;
};

/** Shapes of outcomes that the font has as letters; each stands before its words. */
const signs: Readonly<Record<string, string>> = {
  meets: "✔",
  "short of": "▼",
  above: "▲",
  "cannot tell": "?",
  "not put to the test": "◌",
  good: "✔",
  bad: "✖",
  caution: "⚠",
  unsure: "?",
  untested: "◌",
};

/** What a charger's picture says: verdict and the outcome of each promise, the open ones too. */
export function chargerPictureText(
  index: SiteIndex,
  charger: { readonly name: string; readonly verdict: { readonly sentence: string; readonly weight: string } },
  headlines: Headlines,
  version: string,
  invented: boolean,
): PictureText {
  return {
    site: index.site.title,
    title: charger.name,
    verdict: `${signs[charger.verdict.weight] ?? "■"} ${charger.verdict.sentence}`,
    outcomes: headlines.promises.map(({ label, outcome, absent }) => {
      const words = outcome?.words ?? absent?.kind ?? "not stated";
      return `${signs[outcome?.kind ?? ""] ?? "◌"} ${label}: ${words}`;
    }),
    foot: `Result ${versionWords(version, outwardSpeechIn("en"))} · method ${index.methodVersion}`,
    invented,
  };
}

/** What the site's own picture says. */
export function sitePictureText(index: SiteIndex): PictureText {
  const { site } = index;
  const count = index.tests.length;
  return {
    site: "Battery chargers, tested",
    title: site.title,
    verdict: site.tagline ?? "Every figure with its unit, its uncertainty and its evidence.",
    outcomes: [],
    foot: `${count} ${count === 1 ? "test" : "tests"} · method ${index.methodVersion}`,
    invented: site.invented,
  };
}

/** Paints the picture as PNG. Only the fonts that come as a dependency are used, so two machines paint the same bytes. */
export function paintPicture(text: PictureText): Uint8Array {
  const painter = new Resvg(pictureSvg(text), {
    font: { fontFiles: fonts(), loadSystemFonts: false, defaultFontFamily: "DejaVu Sans" },
    fitTo: { mode: "original" },
  });
  return painter.render().asPng();
}

function fonts(): string[] {
  const locate = createRequire(import.meta.url).resolve;
  return ["DejaVuSans.ttf", "DejaVuSans-Bold.ttf"].map((name) => locate(`dejavu-fonts-ttf/ttf/${name}`));
}

type Size = { readonly sizePx: number; readonly lines: number };

const titleSizes: readonly Size[] = [
  { sizePx: 64, lines: 1 },
  { sizePx: 52, lines: 2 },
  { sizePx: 40, lines: 3 },
];
const verdictSizes: readonly Size[] = [
  { sizePx: 36, lines: 4 },
  { sizePx: 30, lines: 5 },
  { sizePx: 24, lines: 6 },
];

/** The picture as SVG text. Words that do not fit at the smallest size are not cut: a sentence says where to read them. */
export function pictureSvg({ site, title, verdict, outcomes, foot, invented }: PictureText): string {
  const room = pictureWidth - 2 * margin;
  const name = fitWords(title, titleSizes, room, 700) ?? { sizePx: 40, lines: ["Battery charger"] };
  const words = fitWords(verdict, verdictSizes, room, 400) ?? {
    sizePx: 30,
    lines: ["The verdict is too long for a picture: read it on the page."],
  };
  const nameTop = 200;
  const wordsTop = nameTop + (name.lines.length - 1) * name.sizePx * 1.15 + 62;
  const outcomesTop = 500;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${pictureWidth}" height="${pictureHeight}" font-family="DejaVu Sans" fill="#1b2b31">`,
    `<rect width="${pictureWidth}" height="${pictureHeight}" fill="#f8f7f1"/>`,
    `<rect width="${pictureWidth}" height="14" fill="#25424c"/>`,
    row(site, margin, 96, 28, 'fill="#55646a"'),
    invented ? inventedTag() : "",
    ...name.lines.map((line, index) => row(line, margin, nameTop + index * name.sizePx * 1.15, name.sizePx, 'font-weight="700"')),
    ...words.lines.map((line, index) => row(line, margin, wordsTop + index * words.sizePx * 1.35, words.sizePx)),
    outcomes.length === 0 ? "" : `<path d="M${margin} ${outcomesTop - 38}H${pictureWidth - margin}" stroke="#c9ccc2" stroke-width="2"/>`,
    ...outcomes.map((line, index) =>
      row(line, margin + (index % 2) * (room / 2), outcomesTop + Math.floor(index / 2) * 36, 22, 'font-weight="700"'),
    ),
    row(foot, margin, 594, 22, 'fill="#55646a"'),
    "</svg>",
  ].join("");
}

const row = (words: string, x: number, y: number, sizePx: number, more = ""): string =>
  `<text x="${x}" y="${Math.round(y)}" font-size="${sizePx}" ${more}>${escapeMarkup(words)}</text>`;

function inventedTag(): string {
  const [width, x] = [224, pictureWidth - margin - 224];
  return `<rect x="${x}" y="62" width="${width}" height="48" fill="none" stroke="#94300f" stroke-width="3" stroke-dasharray="9 6"/>${row("Invented data", x + 20, 95, 24, 'fill="#94300f"')}`;
}

/** The largest size at which words fit into their lines; undefined where none does. */
function fitWords(words: string, sizes: readonly Size[], roomPx: number, weight: number): { sizePx: number; lines: string[] } | undefined {
  for (const { sizePx, lines } of sizes) {
    const wrapped = wrap(words, roomPx / sizePx, weight);
    if (wrapped !== undefined && wrapped.length <= lines) return { sizePx, lines: wrapped };
  }
  return undefined;
}

/** Breaks words into lines of a width in em; undefined where a single word is wider than a line. */
function wrap(words: string, roomEm: number, weight: number): string[] | undefined {
  const lines: string[] = [];
  for (const word of words.split(/[ \n\t]+/)) {
    if (widthEm(word, weight) > roomEm) return undefined;
    const last = lines.at(-1);
    if (last !== undefined && widthEm(`${last} ${word}`, weight) <= roomEm) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Width of text in em, a little more than the font's own advances: no layout is at hand where the lines are broken. */
function widthEm(words: string, weight: number): number {
  const plain = [...words].reduce(
    (sum, letter) => sum + (/[ijlI.,:;'|!()\s]/.test(letter) ? 0.42 : /[mMwW@%✔✖⚠]/.test(letter) ? 1.02 : 0.68),
    0,
  );
  return weight > 400 ? plain * 1.12 : plain;
}

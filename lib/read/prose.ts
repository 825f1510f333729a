/** Reads the reviewer's own words: Markdown with a YAML head. They are data; nothing in them is ever run. */
import MarkdownIt from "markdown-it";
import { z } from "zod";
import type { Checked, Problem } from "../nouns/problem.ts";
import { isoDate } from "../nouns/quantities.ts";
import { readRecord } from "./record.ts";

export const proseHead = z
  .strictObject({
    title: z.string().min(1),
    by: z.string().optional(),
    on: isoDate.optional(),
    language: z.string().optional(),
  })
  .meta({ id: "prose-head", title: "Head of a page of words" });

export type Prose = {
  readonly file: string;
  readonly head: z.infer<typeof proseHead>;
  /** Markdown below the head, and the line of the file on which it starts. */
  readonly body: string;
  readonly bodyLine: number;
};

/**
 * Splits a page into head and body.
 *
 * The head is plain YAML between two lines of `---`. Any other kind of head (a language named behind the dashes) is refused: other
 * tools run such heads as programs.
 */
export function readProse(text: string, file: string): Checked<Prose | undefined> {
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/);
  const refuse = (line: number, found: string, expected: string, mend: string): Checked<undefined> => ({
    value: undefined,
    problems: [{ id: "prose-head", level: "error", place: { file, line, column: 1 }, found, expected, mend } satisfies Problem],
  });
  const opening = lines[0] ?? "";
  if (opening.trim() !== "---")
    return refuse(
      1,
      opening === "" ? "nothing" : `"${opening.slice(0, 40)}"`,
      "a line of three dashes, the head in YAML, and three dashes again",
      'begin the page with ---, title: "…", ---',
    );
  const end = lines.findIndex((line, index) => index > 0 && line.trim() === "---");
  if (end < 0) return refuse(1, "a head that does not end", "three dashes under the head", "add a line --- under the head");
  const { value: record, problems } = readRecord(`\n${lines.slice(1, end).join("\n")}`, file, proseHead);
  if (record === undefined) return { value: undefined, problems };
  return { value: { file, head: record.value, body: lines.slice(end + 1).join("\n"), bodyLine: end + 2 }, problems };
}

const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false });
const allowedLink = /^(?:https?:|mailto:|#|\.{0,2}\/|[a-z0-9][a-z0-9/_-]*\/?(?:#[\w-]+)?$)/i;
markdown.validateLink = (link) => allowedLink.test(link.trim());
// Pictures in words could call out to other sites; photographs belong to a test's folder.
markdown.disable(["image"]);
/**
 * Markdown as HTML that is safe to place in a page: no raw HTML, no pictures, no links but http, mail and within the site.
 *
 * @param topLevel  the level that the body's highest heading gets in the page; the others follow without a jump
 */
export function renderProse(body: string, topLevel: number): string {
  const tokens = markdown.parse(body, {});
  const levels = [...new Set(tokens.filter((token) => token.type === "heading_open").map((token) => token.tag))].sort();
  for (const token of tokens)
    if (token.type === "heading_open" || token.type === "heading_close")
      token.tag = `h${Math.min(6, topLevel + levels.indexOf(token.tag))}`;
  return markdown.renderer.render(tokens, markdown.options, {});
}

/** The words alone, for search and feeds. */
export function plainText(html: string): string {
  return html
    .replace(/<[^>]*>/g, " ")
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, "&")
    .replace(/\s+/g, " ")
    .trim();
}

import { describe, expect, it } from "vitest";
import { formatProblem } from "../../../lib/nouns/problem.ts";
import { plainText, readProse, renderProse } from "../../../lib/read/prose.ts";

const read = (...lines: string[]) => readProse(lines.join("\n"), "content/about.md");
const messages = (...lines: string[]): string[] => read(...lines).problems.map(formatProblem);
const noHead = '  mend: begin the page with ---, title: "…", ---';

describe("the head of a page of words", () => {
  it("is parted from the body, whose first line is counted", () => {
    expect(read("---", "title: About", "on: 2026-02-03", "---", "Words.", "More.").value).toEqual({
      file: "content/about.md",
      head: { title: "About", on: "2026-02-03" },
      body: "Words.\nMore.",
      bodyLine: 5,
    });
  });

  it("may have Windows line ends, a byte order mark and no body", () => {
    expect(readProse("\uFEFF---\r\ntitle: About\r\n---\r\n", "content/about.md").value).toMatchObject({
      head: { title: "About" },
      body: "",
    });
  });

  it.each([
    ["names a language that other tools run as a program", "---js", '"---js"'],
    ["names a language behind a blank", "--- javascript", '"--- javascript"'],
    ["is JSON", "{", '"{"'],
    ["is missing", "# About", '"# About"'],
    ["is missing, and so is the page", "", "nothing"],
  ])("is refused where it %s", (_, line, found) =>
    expect(messages(line, 'process.exit(1); title: "x"', "---")).toEqual([
      `content/about.md:1:1: error prose-head: expected a line of three dashes, the head in YAML, and three dashes again, found ${found}\n${noHead}`,
    ]),
  );

  it("is refused where it does not end", () =>
    expect(messages("---", "title: About")).toEqual([
      "content/about.md:1:1: error prose-head: expected three dashes under the head, found a head that does not end\n  mend: add a line --- under the head",
    ]));

  it("tells its faults at the page's own lines", () =>
    expect(messages("---", "titel: About", "---")).toEqual([
      'content/about.md:2:1: error record-missing-field: expected title: a text, found no title\n  mend: add the line "title:" with its value',
      'content/about.md:2:1: error record-unknown-field: expected one of the fields title, by, on, language, found "titel"\n  mend: did you mean "title"?',
    ]));

  it("never builds a value from a YAML tag", () => {
    const { value } = read("---", 'title: !!js/function "function () { throw 1 }"', "---");
    expect(typeof (value?.head.title ?? "")).toBe("string");
  });
});

describe("words as HTML", () => {
  it.each([
    ["a script", "<script>alert(1)</script>", "<script"],
    ["an event handler", '<b onclick="alert(1)">x</b>', "<b"],
    ["a frame in a paragraph", "text <iframe src='https://elsewhere.example'></iframe> text", "<iframe"],
    ["a style sheet", "<style>body{display:none}</style>", "<style"],
    ["a comment", "<!-- hidden -->", "<!--"],
  ])("shows raw HTML as text: %s", (_, body, never) => {
    const html = renderProse(body, 2);
    expect(html).not.toContain(never);
    expect(html).toContain("&lt;");
  });

  it.each([
    ["javascript", "[x](javascript:alert(1))"],
    ["javascript in other letters", "[x](JaVaScRiPt:alert(1))"],
    ["javascript behind an entity", "[x](java&#115;cript:alert(1))"],
    ["javascript behind a tab", "[x](java\tscript:alert(1))"],
    ["data", "[x](data:text/html;base64,PHNjcmlwdD4=)"],
    ["vbscript", "[x](vbscript:msgbox)"],
    ["a file of this machine", "[x](file:///etc/passwd)"],
    ["an autolink", "<javascript:alert(1)>"],
    ["a reference", "[x][1]\n\n[1]: javascript:alert(1)"],
    ["another site by two slashes behind a letter", "[x](blob:https://elsewhere.example)"],
  ])("makes no link to %s", (_, body) => expect(renderProse(body, 2)).not.toContain("<a"));

  it.each([
    ["https://elsewhere.example/a?b=c", "https://elsewhere.example/a?b=c"],
    ["mailto:bench@example.org", "mailto:bench@example.org"],
    ["#costs", "#costs"],
    ["../method/", "../method/"],
    ["chargers/mole-six/", "chargers/mole-six/"],
  ])("links to %s", (link, href) => expect(renderProse(`[x](${link})`, 2)).toBe(`<p><a href="${href}">x</a></p>\n`));

  it("shows no picture, which could call out to another site", () =>
    expect(renderProse("![spy](https://elsewhere.example/pixel.png)", 2)).not.toContain("<img"));

  it.each(["{{ title }}", "{% include 'x' %}", "#{title}", "<%= title %>"])(
    "leaves %s as text: no template language reads these words",
    (text) => expect(plainText(renderProse(text, 2))).toBe(text),
  );

  it("brings headings to the page's levels without a jump", () =>
    expect(renderProse("# A\n\n#### B\n\n# C", 3)).toBe("<h3>A</h3>\n<h4>B</h4>\n<h3>C</h3>\n"));

  it("goes no deeper than the sixth level", () => expect(renderProse("# A\n\n## B", 6)).toBe("<h6>A</h6>\n<h6>B</h6>\n"));

  it("escapes what stands in a link's address", () =>
    expect(renderProse('[x](https://elsewhere.example/"onmouseover="alert(1))', 2)).not.toMatch(/href="[^"]*"\s*onmouseover/));
});

describe("words alone", () => {
  it("come without tags, entities and line breaks", () =>
    expect(plainText("<p>4 &lt; 5 &amp; <em>6\n &gt; 5</em></p>")).toBe("4 < 5 & 6 > 5"));

  it("do not unescape twice", () => expect(plainText("&amp;lt;")).toBe("&lt;"));
});

import { readdirSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { type Bench, type Files, filesBelow, newBench, publishBench, removeBenches } from "./workspace.ts";

afterEach(removeBenches);

/** Code that leaves a file behind, wherever it is run from. */
const canary = (root: string): string => `require("node:fs").writeFileSync(${JSON.stringify(join(root, "canary"))}, "ran")`;

function expectUntouched({ root, workspace }: Bench, before: Map<string, Buffer>): void {
  // Nothing but the workspace and the site: no canary, no file written above or beside them, and none into the workspace.
  expect(readdirSync(root).sort()).toEqual(["site", "workspace"]);
  expect([...filesBelow(workspace).keys()]).toEqual([...before.keys()]);
}

async function attack(files: Files): Promise<{ problems: string[]; site: Map<string, Buffer> }> {
  const bench = newBench(files);
  const before = filesBelow(bench.workspace);
  const problems = await publishBench(bench);
  expectUntouched(bench, before);
  return { problems, site: filesBelow(bench.out) };
}

const page = (head: string, body = "Words.\n") => `---\n${head}\n---\n${body}`;
const htmlOf = (site: Map<string, Buffer>, path: string): string => {
  const bytes = site.get(path);
  if (bytes === undefined) throw new Error(`no ${path} among ${[...site.keys()].filter((name) => name.endsWith(".html")).join(", ")}`);
  return bytes.toString("utf8");
};

describe("words and files that a stranger contributes", () => {
  it("code in front matter is refused and never run", async () => {
    const { problems, site } = await attack((root) => ({
      "content/about.md": `---js\n{ title: (${canary(root)}, "About") }\n---\nWords.\n`,
      "content/policy.md": page(`title: !!js/function "function () { ${canary(root).replaceAll('"', "'")} }"`),
    }));
    expect(problems).toContain("prose-head");
    expect([...site.keys()]).not.toContain("about/index.html");
  });

  it("template and data programs dropped into the content folder are told as unused and never run", async () => {
    const { problems, site } = await attack((root) => ({
      "content/evil.11ty.js": `${canary(root)}; module.exports = class { data() { return { permalink: "evil.html" }; } render() { return "evil"; } };`,
      "content/evil.11ty.cjs": `${canary(root)}; module.exports = () => "evil";`,
      "content/content.11tydata.js": `${canary(root)}; module.exports = {};`,
      "content/content.11tydata.cjs": `${canary(root)}; module.exports = {};`,
      "content/.eleventy.js": `${canary(root)}; module.exports = () => ({});`,
      "content/eleventy.config.js": `${canary(root)}; export default () => ({});`,
      "content/_data/evil.js": `${canary(root)}; module.exports = {};`,
      "data/evil.11ty.js": `${canary(root)};`,
    }));
    expect(problems.filter((id) => id === "file-unused").length).toBeGreaterThanOrEqual(6);
    expect([...site.keys()].filter((path) => path.includes("evil"))).toEqual([]);
  });

  it("template code in prose, titles and names appears as the text it is", async () => {
    const code = `{{ 7 * 191 }} {% raw %} <%= 7 * 191 %> ${"$"}{7 * 191}`;
    const { site } = await attack(() => ({
      "content/about.md": page(`title: '${code}'`, `${code}\n`),
      "data/site.yaml": `title: '${code}'\ninvented: true\n`,
    }));
    const html = htmlOf(site, "about/index.html");
    expect(html).toContain("{{ 7 * 191 }}");
    expect(html).not.toContain("1337");
    expect(htmlOf(site, "index.html")).not.toContain("1337");
  });

  it("raw HTML appears as text, and links that would run something are no links", async () => {
    const body = [
      "<script>document.title = 'run'</script>",
      "<img src=x onerror=alert(1)>",
      "[press](javascript:alert(1)) [press](JaVaScRiPt:alert(1)) [press](data:text/html,<script>alert(1)</script>) [press](vbscript:x)",
      "![picture](https://elsewhere.example/track.png)",
      "<!-- --> <style>body { display: none }</style>",
    ].join("\n\n");
    const { site } = await attack(() => ({
      "content/about.md": page("title: About", body),
      "data/chargers/bench-five.yaml":
        'name: "<script>alert(2)</script>"\nmodes:\n  - { id: normal, name: "<b>NORMAL</b>\\" onload=\\"x" }\n',
      "data/tests/first/readings.csv":
        'at,density_1,density_2,acid_C,note\n2026-03-02 07:30,1.180,1.185,20,"<script>alert(3)</script>"\n2026-03-03 09:00,1.290,1.285,20,\n',
    }));
    for (const [path, bytes] of site) {
      if (!path.endsWith(".html")) continue;
      const html = bytes.toString("utf8");
      expect(html, path).not.toMatch(/<script>\s*(?:alert|document)/);
      expect(html, path).not.toMatch(/<img[^>]*onerror/i);
      expect(html, path).not.toMatch(/href="\s*(?:javascript|vbscript|data):/i);
      expect(html, path).not.toContain("<b>NORMAL</b>");
      expect(html, path).not.toMatch(/src="https:\/\/elsewhere\.example/);
    }
    expect(htmlOf(site, "about/index.html")).toContain("&lt;script&gt;document.title");
    expect(htmlOf(site, "chargers/bench-five/index.html")).toMatch(/&lt;script(?:>|&gt;)alert\(2\)/);
    expect(htmlOf(site, "tests/first/index.html")).toMatch(/&lt;script(?:>|&gt;)alert\(3\)/);
  });

  it("a script cannot be ended from inside the structured data of a page", async () => {
    const { site } = await attack(() => ({
      "data/site.yaml": 'title: "</script><script>alert(4)</script>"\ninvented: true\nbaseUrl: https://bench.example/\n',
    }));
    for (const [path, bytes] of site) if (path.endsWith(".html")) expect(bytes.toString("utf8"), path).not.toContain("<script>alert(4)");
  });

  it("a permalink in front matter is refused, and writes nothing", async () => {
    const { problems, site } = await attack(() => ({
      "content/about.md": page('title: About\npermalink: "../../escaped.html"'),
      "content/policy.md": page("title: Policy\neleventyComputed:\n  permalink: ../../escaped.html"),
    }));
    expect(problems).toContain(
      "record-shape" in problems ? "record-shape" : problems.find((id) => id.startsWith("record") || id.startsWith("prose")),
    );
    expect([...site.keys()].filter((path) => path.includes("escaped") || path.startsWith("about/"))).toEqual([]);
  });

  it.each([
    ["a page", "content/x..%2Fescaped.md", page("title: Escaped")],
    ["a charger", "data/chargers/x.. escaped.yaml", "name: Escaped\nmodes: [{ id: normal, name: NORMAL }]\n"],
    ["a battery", "data/batteries/CON escaped.yaml", "name: Escaped\n"],
    ["a review", "content/reviews/Escaped Five.md", page("title: Escaped")],
  ])("the name of %s that is no plain slug is refused", async (_, path, text) => {
    const { problems, site } = await attack(() => ({ [path]: text }));
    expect(problems).toContain("file-name");
    expect([...site.keys()].filter((name) => /escaped/i.test(name))).toEqual([]);
  });

  it("names that climb out of a test's folder are refused, and the test with them", async () => {
    for (const name of ["../../../../etc/passwd", "logs/../../../../../etc/passwd", "/etc/passwd", "logs/..", "logs\\..\\x"]) {
      const bench = newBench({
        "data/tests/second/test.yaml": `charger: bench-five\nmode: normal\nbattery: bench-40\ninstruments: {}\nzone: UTC\nconnections:\n  - recordings: [${JSON.stringify(name)}]\n`,
      });
      const before = filesBelow(bench.workspace);
      const problems = await publishBench(bench);
      expectUntouched(bench, before);
      expect(problems.length, name).toBeGreaterThan(0);
      expect([...filesBelow(bench.out).keys()].filter((path) => path.includes("passwd") || path.startsWith("tests/second"))).toEqual([]);
    }
  });

  it("formulas in generated tables are text to a spreadsheet; raw files stay as they were, and numbers stay numbers", async () => {
    const name = '=HYPERLINK("https://elsewhere.example","press")';
    const { site } = await attack(() => ({
      "data/chargers/bench-five.yaml": `name: '${name}'\nmaker: "+1+1"\nmodes:\n  - { id: normal, name: "@SUM(1)" }\n`,
      "data/batteries/bench-40.yaml": 'name: "-2+3"\nnominalVoltageV: 12\ncells: 6\nconstruction: flooded-calcium\ncapacityAh: 40\n',
    }));
    const tables = [...site].filter(([path]) => path.endsWith(".csv") && path.startsWith("data/"));
    expect(tables.length).toBeGreaterThanOrEqual(2);
    for (const [path, bytes] of tables)
      for (const line of bytes.toString("utf8").split("\n"))
        for (const cell of line.split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/))
          if (!/^-?[\d.]+(?:e[+-]?\d+)?$/i.test(cell)) expect(cell.replace(/^"/, ""), `${path}: ${cell}`).not.toMatch(/^[=+\-@\t\r]/);
    expect(tables.some(([, bytes]) => bytes.toString("utf8").includes("'=HYPERLINK"))).toBe(true);
  });
});

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { formatProblem } from "../../../lib/nouns/problem.ts";
import { readLog } from "../../../lib/read/log.ts";
import { files, messagesOf, written } from "../check/small-workspace.ts";
import { withFiles } from "./temp-files.ts";
import { withTables } from "./workspace-doc.ts";

const pageOf = (name: string): string => readFileSync(fileURLToPath(new URL(`../../../docs/${name}`, import.meta.url)), "utf8");

/** The fenced block that stands under a line of the page. */
function blockUnder(page: string, line: string): string {
  const after = page.slice(page.indexOf(line) + line.length);
  const block = /^\s*```\w*\n([\s\S]*?)\n```/.exec(after)?.[1];
  if (!page.includes(line) || block === undefined) throw new Error(`no block under "${line}"`);
  return `${block}\n`;
}

describe("docs/workspace.md", () => {
  const page = pageOf("workspace.md");

  it("has the tables that the schemas make: npx tsx tests/lib/read/write-workspace-doc.ts", () => expect(withTables(page)).toBe(page));

  it("refuses a mark for a table that there is not", () =>
    expect(() => withTables("<!-- table: fields of shop -->\n<!-- end of table -->")).toThrow('no table "fields of shop"'));

  it("calls only figures that there are", async () => {
    const calls = [...page.matchAll(/^\| `(\[\[.*?\]\])` \|/gm)].map(([, call = ""]) => call);
    expect(calls).toHaveLength(4);
    expect(await messagesOf(written(files.review, `---\ntitle: Mole Six\n---\n${calls.join("\n\n")}\n`))).toEqual([]);
  });

  it("shows records that the tool takes without a word", async () => {
    const workspace = {
      "data/site.yaml": blockUnder(page, "The smallest `data/site.yaml`:"),
      "data/chargers/mole-six.yaml": blockUnder(page, "A charger, `data/chargers/mole-six.yaml`:"),
      "data/batteries/quarry-44.yaml": blockUnder(page, "A battery, `data/batteries/quarry-44.yaml`:"),
      "data/instruments/newt.yaml": blockUnder(page, "A recorder, `data/instruments/newt.yaml`:"),
      "data/instruments/float-glass.yaml": blockUnder(page, "A hydrometer, `data/instruments/float-glass.yaml`:"),
      "data/instruments/bench-meter.yaml": "name: Bench meter\nkind: voltmeter\nmeasures: { voltage: { plusMinus: 0.02 } }\n",
      [files.test]: blockUnder(page, "A test, `data/tests/mole-on-quarry/test.yaml`:"),
      [files.readings]: blockUnder(page, "Readings, `data/tests/mole-on-quarry/readings.csv`:"),
      "content/reviews/mole-six.md": blockUnder(page, "Words on a charger, `content/reviews/mole-six.md`:"),
    };
    const log = "Czas;Napięcie [V];Prąd [mA]\n03.02.2026 14:05;12,30;4000\n03.02.2026 14:06;12,33;4000\n03.02.2026 14:07;12,36;3990\n";
    expect(await messagesOf(written(files.log, log, workspace))).toEqual([]);
  });
});

describe("docs/dialects.md", () => {
  const page = pageOf("dialects.md");
  const log = blockUnder(page, "The file:");

  it("shows a log that cannot be read without its record, and the very words in which the record is asked for", async () => {
    const asked = await readWith(log, undefined);
    expect(asked.problems.map(formatProblem).join("\n")).toBe(blockUnder(page, "What the check says:").trimEnd());
  });

  it("shows a record by which it can, and what the test's page then tells", async () => {
    const { parse } = await import("yaml");
    const { instrument } = await import("../../../lib/nouns/instrument.ts");
    const { dialect } = instrument.parse(parse(blockUnder(page, "The record, `data/instruments/newt.yaml`:")));
    const { value, problems } = await readWith(log, dialect);
    expect(problems).toEqual([]);
    const told = value?.readAs
      .map(({ what, value: choice, from }) => `| ${what} | ${choice.replaceAll("|", "\\|")} | ${from} |`)
      .join("\n");
    expect(page).toContain(`${told}\n`);
    expect(page).toContain(`\`${value?.sampleRead}\``);
  });
});

const readWith = (log: string, dialect: Parameters<typeof readLog>[0]["dialect"]) =>
  withFiles({ "log.csv": log }, (root) =>
    readLog({
      absolutePath: `${root}/log.csv`,
      file: "data/tests/mole-on-quarry/logs/block-1.txt",
      dialect,
      dialectPlace: { file: "data/instruments/newt.yaml", line: 1, column: 1 },
      zone: "Europe/Warsaw",
      startedAtMs: undefined,
      badRows: [],
    }),
  );

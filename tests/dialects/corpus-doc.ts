/** The lists of docs/dialects.md: every file of the corpus and every broken input, put between marks in the page. */
import { brokenInputs, corpusFiles } from "./corpus.ts";

const lists: Readonly<Record<string, () => string>> = {
  "files that are read": filesList,
  "broken inputs": brokenList,
};

/**
 * A page with both lists made anew.
 * Throws where a list has no mark in the page: then it would go stale without anybody noticing.
 */
export function withCorpusLists(page: string): string {
  const seen = new Set<string>();
  const filled = page.replace(/<!-- list: ([a-z ]+) -->\n[\s\S]*?<!-- end of list -->/g, (_, name: string) => {
    const list = lists[name];
    if (list === undefined) throw new Error(`no list "${name}"`);
    seen.add(name);
    return `<!-- list: ${name} -->\n\n${list()}\n\n<!-- end of list -->`;
  });
  const left = Object.keys(lists).filter((name) => !seen.has(name));
  if (left.length > 0) throw new Error(`no mark for the lists ${left.join(", ")}`);
  return filled;
}

const cell = (text: string): string => text.replaceAll("|", "\\|");

function filesList(): string {
  const files = corpusFiles();
  const rows = files.map(({ name, file, expected }) => {
    const said = Object.keys(expected.request?.dialect ?? {});
    return `| \`${name}/${file}\` | ${cell(expected.what)} | ${said.map((field) => `\`${field}\``).join(", ")} |`;
  });
  return [`${files.length} files.`, "", "| file | what is odd in it | what the record says |", "|---|---|---|", ...rows].join("\n");
}

function brokenList(): string {
  const inputs = brokenInputs();
  const idOf = (message: string): string => /: (?:error|doubt) ([a-z-]+):/.exec(message)?.[1] ?? "";
  const rows = inputs.map(
    ({ name, what, says }) => `| \`${name}\` | ${cell(what)} | ${[...new Set(says.map(idOf))].map((id) => `\`${id}\``).join(", ")} |`,
  );
  return [`${inputs.length} inputs.`, "", "| input | what is wrong with it | told as |", "|---|---|---|", ...rows].join("\n");
}

/**
 * On a narrow screen rows become cards, and a cell then needs the heading of its column beside it. It is written here, once for all tables,
 * from the headings themselves: a label typed by hand would go astray when a column is added.
 */

/**
 * Gives each `<td>` of the tables with the class `labelled` its column's heading as `data-label`.
 * @param html a whole page, as our own components write it: no table in a table, no cell that spans rows
 * A cell that has a label keeps it, an empty one too; a cell beyond the last heading stays as it is.
 */
export function labelCells(html: string): string {
  return html.replace(/<table class="[^"]*\blabelled\b[^"]*".*?<\/table>/gs, (table) => {
    const headings = headingsOf(table);
    return table.replace(/<tbody.*?<\/tbody>/gs, (body) => body.replace(/<tr.*?<\/tr>/gs, (row) => labelRow(row, headings)));
  });
}

function headingsOf(table: string): string[] {
  const [head = ""] = /<thead.*?<\/thead>/s.exec(table) ?? [];
  return [...head.matchAll(/<th\b[^>]*>(.*?)<\/th>/gs)].map(([, words = ""]) => words.replace(/<[^>]+>/g, "").trim());
}

function labelRow(row: string, headings: readonly string[]): string {
  let column = 0;
  return row.replace(/<(td|th)\b[^>]*>/g, (tag, name) => {
    const heading = headings[column++];
    return name === "th" || heading === undefined || tag.includes("data-label")
      ? tag
      : `${tag.slice(0, -1)} data-label="${heading.replaceAll('"', "&quot;")}">`;
  });
}

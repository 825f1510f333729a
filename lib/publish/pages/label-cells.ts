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
  const [before = "", ...tables] = html.split("<table ");
  return [before, ...tables.map((table) => (/^class="[^"]*\blabelled\b/.test(table) ? labelTable(table) : table))].join("<table ");
}

/** @param table the inside of a table, and whatever follows it up to the next */
function labelTable(table: string): string {
  const bodyStart = table.indexOf("</thead>");
  const end = table.indexOf("</table>");
  const headings = headingsOf(table.slice(0, bodyStart));
  return table.slice(0, bodyStart) + labelRows(table.slice(bodyStart, end), headings) + table.slice(end);
}

function headingsOf(head: string): string[] {
  return [...head.matchAll(/<th\b[^>]*>(.*?)<\/th>/gs)].map(([, words = ""]) => words.replace(/<[^>]+>/g, "").trim());
}

function labelRows(rows: string, headings: readonly string[]): string {
  let column = 0;
  return rows.replace(/<(tr|th|td)\b[^>]*>/g, (tag, name) => {
    if (name === "tr") {
      column = 0;
      return tag;
    }
    const heading = headings[column++];
    if (name === "th" || heading === undefined || tag.includes("data-label")) return tag;
    return `${tag.slice(0, -1)} data-label="${heading.replaceAll('"', "&quot;")}">`;
  });
}

import { describe, expect, it } from "vitest";
import { labelCells } from "../../../../lib/publish/pages/label-cells.ts";

const table = (name: string, row: string) =>
  `<table class="${name}"><caption>c</caption><thead><tr><th scope="col">Visit</th><th scope="col"><a href="x">Rest voltage</a></th><th scope="col">Say "so"</th></tr></thead><tbody>${row}</tbody></table>`;

describe("labels of cells", () => {
  it("are the words of the column's heading, without its markup; the row's own heading gets none", () => {
    const html = labelCells(table("cards labelled", '<tr><th scope="row">1</th><td>12.6 V</td><td class="words">no</td></tr>'));
    expect(html).toContain(
      '<th scope="row">1</th><td data-label="Rest voltage">12.6 V</td><td class="words" data-label="Say &quot;so&quot;">no</td>',
    );
  });

  it("count cells anew in every row, and pass over a row that is one heading", () => {
    const html = labelCells(table("labelled", '<tr class="group"><th colspan="3">Group</th></tr><tr><th>2</th><td>a</td><td>b</td></tr>'));
    expect(html).toContain('<th colspan="3">Group</th>');
    expect(html).toContain('<td data-label="Rest voltage">a</td>');
  });

  it("keep a label that is there, an empty one too, and leave a cell without a heading alone", () => {
    const html = labelCells(table("labelled", '<tr><th>1</th><td data-label="V">a</td><td data-label="">b</td><td>c</td></tr>'));
    expect(html).toContain('<td data-label="V">a</td><td data-label="">b</td><td>c</td>');
  });

  it("leave other tables, and text that only speaks of tables, as they are", () => {
    const plain = `${table("cards", "<tr><th>1</th><td>a</td></tr>")}<p>&lt;table class="labelled"&gt;</p>`;
    expect(labelCells(plain)).toBe(plain);
  });
});

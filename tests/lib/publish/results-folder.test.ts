import { describe, expect, it } from "vitest";
import { openPublished } from "../../../lib/publish/results-folder.ts";
import { rowText } from "../../../lib/run/jobs.ts";
import { fixture } from "../../pages/fixture.ts";

describe("the rows of a site that is being made", () => {
  const { index } = fixture;
  const read: string[] = [];
  const rows = index.rows.map((row) => {
    const { test, text } = rowText(row);
    return {
      test,
      charger: row.charger.id,
      get text() {
        read.push(test);
        return text;
      },
    };
  });
  const chargers = index.chargers.map(({ id }) => ({ id, rows: rows.filter((row) => row.charger === id) }));
  const results = openPublished("", { index: { ...index, rows: [] }, rows, chargers });
  const ids = (charger: string): string[] => index.rows.filter((row) => row.charger.id === charger).map((row) => row.test.id);

  it("are not read to tell which tests a charger has, and only its own are for what they say", () => {
    expect(chargers.length).toBeGreaterThan(1);
    for (const { id } of chargers) expect(results.testsOf(id)).toEqual(ids(id));
    expect(read).toEqual([]);
    const [first] = index.chargers;
    expect(results.rowsOf(first?.id ?? "").map((row) => row.test.id)).toEqual(ids(first?.id ?? ""));
    expect(read).toEqual(ids(first?.id ?? ""));
  });
});

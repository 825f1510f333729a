/** The fixture of the page tests as a site that states its address and its dates, invented or passing for real. */
import type { Results, TestResult } from "../../../../lib/publish/results.ts";
import type { ResultsFolder } from "../../../../lib/publish/results-folder.ts";
import { fixture } from "../../../pages/fixture.ts";

export const baseUrl = "https://bench.example/chargers/";

const dated = (test: TestResult, day: string): TestResult => ({ ...test, facts: [...test.facts, { label: "Published on", value: day }] });

/** The chargers that the tests of what leaves the site know by name; the fixture may get more. */
const known = ["lantern-eight", "pebble-trickle"];

/** The lantern's test is published on 2026-03-10 and revised on 2026-04-02, the day of the charger's correction; the pebble's has no date. */
export function publishedResults(changes: { invented?: boolean; baseUrl?: string | null; sells?: boolean | null } = {}): Results {
  const invented = changes.invented ?? true;
  return {
    index: {
      ...fixture.index,
      rows: fixture.index.rows.filter(({ charger }) => known.includes(charger.id)),
      chargers: fixture.index.chargers.filter(({ id }) => known.includes(id)),
      site: {
        ...fixture.index.site,
        baseUrl: changes.baseUrl === undefined ? baseUrl : changes.baseUrl,
        invented,
        sells: changes.sells === undefined ? false : changes.sells,
        operator: [{ label: "Publisher", value: "Slipway & Sons <bench>" }, ...fixture.index.site.operator.slice(1)],
      },
    },
    tests: fixture.tests.map((test, index) => ({ ...(index === 0 ? dated(test, "2026-03-10") : test), invented })),
    chargers: fixture.chargers.filter(({ id }) => known.includes(id)).map((charger) => ({ ...charger, invented })),
  };
}

/** Results as pages ask for them, without a disk. */
export function folderOf({ index, tests, chargers }: Results): ResultsFolder {
  const find = <T extends { id: string }>(items: readonly T[], id: string): T => {
    const found = items.find((item) => item.id === id);
    if (found === undefined) throw new Error(`the fixture lacks ${id}`);
    return found;
  };
  return {
    index,
    test: (id) => find(tests, id),
    charger: (id) => find(chargers, id),
    rowsOf: (id) => index.rows.filter((row) => row.charger.id === id),
    testsOf: (id) => index.rows.filter((row) => row.charger.id === id).map((row) => row.test.id),
  };
}

/** The first of a list; the fixture never leaves one empty that a test asks for. */
export function first<T>(items: readonly T[]): T {
  const [item] = items;
  if (item === undefined) throw new Error("the fixture lacks what this test asks for");
  return item;
}

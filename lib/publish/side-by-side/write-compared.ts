/** Writes the small files that the page side by side fetches. */
import type { SitePart } from "../site-part.ts";
import { assembleCompared } from "./assemble-compared.ts";
import { type ComparedIndex, comparedIndexPath, comparedPath } from "./compared.ts";

/** Writes data/compare/index.json. */
export const writeComparedIndex: SitePart = ({ index }, { write }) => {
  const list: ComparedIndex = index.chargers.map(({ id, name }) => ({ id, name }));
  write(comparedIndexPath, `${JSON.stringify(list)}\n`);
};

/** Writes a charger's file. */
export function writeCompared(id: string): SitePart {
  return (results, { write }) => {
    const charger = results.charger(id);
    const tests = charger.tests.map((test) => results.test(test.id));
    write(comparedPath(id), `${JSON.stringify(assembleCompared(charger, results.rowsOf(id), tests))}\n`);
  };
}

import type { Battery } from "../nouns/battery.ts";
import type { Problem } from "../nouns/problem.ts";
import { type Reading, type ReadingColumn, readingColumns } from "../nouns/reading.ts";
import type { Test } from "../nouns/test.ts";

/** A visit further than half a year from the connections is more likely a slip of the pen in the year than a visit. */
const farMs = 183 * 86_400_000;

const dayOf = (ms: number): string => new Date(ms).toISOString().slice(0, 10);

/**
 * Readings fit the battery and the test: no density from a sealed battery or from a cell it has not, no cell voltage far from what a
 * lead-acid cell can have, an instrument for what was read, no visit years away from the test.
 */
export function checkReadingsFit(readings: readonly Reading[], file: string, testId: string, test: Test, battery: Battery): Problem[] {
  const problems: Problem[] = [];
  const sealed = battery.construction === "AGM" || battery.construction === "gel";
  const missingRoles = new Set<string>();
  const momentsMs = test.connections.flatMap(({ on, off }) => [on, off].flatMap((text) => (text === undefined ? [] : [Date.parse(text)])));
  const [firstMs, lastMs] = [Math.min(...momentsMs), Math.max(...momentsMs)];
  for (const reading of readings) {
    if (momentsMs.length > 0 && (reading.atMs < firstMs - farMs || reading.atMs > lastMs + farMs))
      problems.push({
        id: "reading-time",
        level: "doubt",
        place: { file, line: reading.line, column: 1 },
        found: `a visit at ${reading.atText}`,
        expected: `visits within half a year of the connections, which run from ${dayOf(firstMs)} to ${dayOf(lastMs)}`,
        mend: "check the year of the visit, and the times of the connections in test.yaml",
        test: testId,
      });
    for (const column of Object.keys(reading.values) as ReadingColumn[]) {
      const cell = reading.values[column];
      if (cell === undefined) continue;
      const tell = (level: Problem["level"], id: string, found: string, expected: string, mend: string): void => {
        problems.push({ id, level, place: { file, line: cell.line, column: cell.column }, found, expected, mend, test: testId });
      };
      const number = column.startsWith("density_") ? Number(column.slice("density_".length)) : undefined;
      if (number !== undefined && sealed)
        tell(
          "error",
          "reading-sealed",
          `${column} "${cell.text}"`,
          `no density: the battery is ${battery.construction}, which is sealed`,
          "correct the battery's construction, or move the reading into note",
        );
      else if (number !== undefined && number > battery.cells)
        tell("error", "reading-cell", column, `cells 1 to ${battery.cells} of this battery`, "correct the column, or the battery's cells");
      if ((column === "rest_V" || column === "terminal_V") && (cell.value / battery.cells < 1.5 || cell.value / battery.cells > 3))
        tell(
          "doubt",
          "reading-voltage",
          `${column} "${cell.text}"`,
          `1.5 to 3 V a cell, ${1.5 * battery.cells} to ${3 * battery.cells} V for this battery`,
          "check the reading, and the battery's cells",
        );
      const role = readingColumns[column].instrument;
      if (role !== undefined && test.instruments[role] === undefined && !missingRoles.has(role)) {
        missingRoles.add(role);
        tell(
          "doubt",
          "reading-instrument",
          `${column} without an instrument`,
          `the line "${role}:" under instruments in test.yaml`,
          "name the instrument, so that the reading carries its accuracy",
        );
      }
    }
  }
  return problems;
}

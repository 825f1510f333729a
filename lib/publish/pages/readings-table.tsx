/** The readings of a test, one visit a row, one column for each thing read. */
import type { Figure } from "../../nouns/figure.ts";
import { formatDuration, formatInstant } from "../../units/format.ts";
import { figureAnchor } from "../links.ts";
import type { ReadingResult } from "../results.ts";
import { EvidenceList, type FindDownload } from "./evidence-list.tsx";
import { FigureValue } from "./figure-value.tsx";
import { Absent } from "./mark.tsx";
import { MethodLink } from "./site-context.tsx";
import { Table } from "./table.tsx";

/** The columns: each figure id that any reading has, by its first label. */
function columnsOf(readings: readonly ReadingResult[]): Figure[] {
  const columns = new Map<string, Figure>();
  for (const reading of readings) for (const figure of reading.figures) if (!columns.has(figure.id)) columns.set(figure.id, figure);
  return [...columns.values()];
}

export function ReadingsTable({ readings, find }: { readings: readonly ReadingResult[]; find: FindDownload }) {
  if (readings.length === 0) return <p>No readings were taken.</p>;
  const columns = columnsOf(readings);
  return (
    <Table caption="Readings, one visit a row" class="readings cards labelled short">
      <thead>
        <tr>
          <th scope="col">Visit</th>
          {columns.map((column) => (
            <th key={column.id} scope="col">
              <MethodLink method={column.method}>{column.label}</MethodLink>
            </th>
          ))}
          <th scope="col">Noted</th>
          <th scope="col">Evidence</th>
        </tr>
      </thead>
      <tbody>
        {readings.map((reading) => (
          <ReadingRow key={reading.number} reading={reading} columns={columns} find={find} />
        ))}
      </tbody>
    </Table>
  );
}

function ReadingRow({ reading, columns, find }: { reading: ReadingResult; columns: readonly Figure[]; find: FindDownload }) {
  const evidence = reading.figures.flatMap((figure) => figure.evidence);
  const rows = evidence.filter(
    (item, index) => evidence.findIndex((other) => other.file === item.file && other.lines?.[0] === item.lines?.[0]) === index,
  );
  return (
    <tr id={`reading-${reading.number}`}>
      <th scope="row">
        {reading.number}
        <span class="quiet block">{formatInstant(reading.at)}</span>
        <span class="quiet block">
          {formatDuration(reading.atH)}, {reading.connectionsBefore} {reading.connectionsBefore === 1 ? "connection" : "connections"} before
        </span>
      </th>
      {columns.map((column) => {
        const figure = reading.figures.find((candidate) => candidate.id === column.id);
        return (
          <td key={column.id} id={figure && figureAnchor(figure)}>
            {figure === undefined ? <Absent kind="not measured" /> : <FigureValue figure={figure} />}
          </td>
        );
      })}
      <td class="words">
        {reading.charger === null ? null : <p>Charger {reading.charger} on arrival.</p>}
        {reading.mixed === null ? null : <p>{reading.mixed ? "Acid mixed before reading." : "Acid not mixed before reading."}</p>}
        {reading.note === null ? null : <p>{reading.note}</p>}
      </td>
      <td>
        <EvidenceList evidence={rows.map(({ column: _, ...row }) => row)} find={find} />
      </td>
    </tr>
  );
}

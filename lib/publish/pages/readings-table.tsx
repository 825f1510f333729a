/** The readings of a test, one visit a row, one column for each thing read. */
import type { Figure } from "../../nouns/figure.ts";
import { figureAnchor } from "../links.ts";
import type { ReadingResult } from "../results.ts";
import { EvidenceList, type FindDownload } from "./evidence-list.tsx";
import { FigureValue } from "./figure-value.tsx";
import { Absent } from "./mark.tsx";
import { MethodLink, Own, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";
import { Table } from "./table.tsx";

/** The columns: each figure id that any reading has, by its first label. */
function columnsOf(readings: readonly ReadingResult[]): Figure[] {
  const columns = new Map<string, Figure>();
  for (const reading of readings) for (const figure of reading.figures) if (!columns.has(figure.id)) columns.set(figure.id, figure);
  return [...columns.values()];
}

export function ReadingsTable({ readings, find }: { readings: readonly ReadingResult[]; find: FindDownload }) {
  const { readings: words } = useSite().words.test;
  if (readings.length === 0) return <p>{words.none}</p>;
  const columns = columnsOf(readings);
  return (
    <Table caption={words.caption} class="readings cards labelled short">
      <thead>
        <tr>
          <th scope="col">{words.visit}</th>
          {columns.map((column) => (
            <th key={column.id} scope="col">
              <MethodLink method={column.method}>
                <Said text={column.label} />
              </MethodLink>
            </th>
          ))}
          <th scope="col">{words.noted}</th>
          <th scope="col">{words.evidence}</th>
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
  const { formats, words: all } = useSite();
  const { readings: words } = all.test;
  const evidence = reading.figures.flatMap((figure) => figure.evidence);
  const rows = evidence.filter(
    (item, index) => evidence.findIndex((other) => other.file === item.file && other.lines?.[0] === item.lines?.[0]) === index,
  );
  return (
    <tr id={`reading-${reading.number}`}>
      <th scope="row">
        {reading.number}
        <span class="quiet block">{formats.formatInstant(reading.at)}</span>
        <span class="quiet block">
          {formats.formatDuration(reading.atH)}, {words.before(reading.connectionsBefore)}
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
        {reading.charger === null ? null : <p>{words.charger[reading.charger]}</p>}
        {reading.mixed === null ? null : <p>{reading.mixed ? words.mixed : words.notMixed}</p>}
        {reading.note === null ? null : (
          <p>
            <Own>{reading.note}</Own>
          </p>
        )}
      </td>
      <td>
        <EvidenceList evidence={rows.map(({ column: _, ...row }) => row)} find={find} />
      </td>
    </tr>
  );
}

/** Figures with everything that an engineer needs to rebuild them. Each row can be linked to. */

import type { ComponentChildren } from "preact";
import type { Figure } from "../../nouns/figure.ts";
import { figureAnchor } from "../links.ts";
import { EvidenceList, type FindDownload } from "./evidence-list.tsx";
import { FigureValue } from "./figure-value.tsx";
import { MethodLink, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";
import { Columns, Table } from "./table.tsx";

type Props = { readonly caption: string; readonly figures: readonly Figure[]; readonly find: FindDownload };

/** Nothing at all where there are no figures. */
export function FiguresTable({ caption, figures, find }: Props) {
  if (figures.length === 0) return null;
  return (
    <FiguresFrame caption={caption}>
      <tbody>
        {figures.map((figure) => (
          <FigureRow key={figureAnchor(figure)} figure={figure} find={find} />
        ))}
      </tbody>
    </FiguresFrame>
  );
}

type Group = { readonly name: string; readonly figures: readonly Figure[] };
type GroupedProps = { readonly caption: string; readonly groups: readonly Group[]; readonly find: FindDownload };

/** The figures of several like things in one table, each thing under its own heading; things without figures are left out. */
export function GroupedFiguresTable({ caption, groups, find }: GroupedProps) {
  const told = groups.filter((group) => group.figures.length > 0);
  if (told.length === 0) return null;
  return (
    <FiguresFrame caption={caption}>
      {told.map((group) => (
        <tbody key={group.name}>
          <tr class="group">
            <th scope="rowgroup" colSpan={4}>
              {group.name}
            </th>
          </tr>
          {group.figures.map((figure) => (
            <FigureRow key={figureAnchor(figure)} figure={figure} find={find} />
          ))}
        </tbody>
      ))}
    </FiguresFrame>
  );
}

function FiguresFrame({ caption, children }: { caption: string; children: ComponentChildren }) {
  const { columns } = useSite().words.parts.figures;
  return (
    <Table caption={caption} class="figures cards">
      <Columns names={[columns.figure, columns.value, columns.method, columns.evidence]} />
      {children}
    </Table>
  );
}

function FigureRow({ figure, find }: { figure: Figure; find: FindDownload }) {
  return (
    <tr id={figureAnchor(figure)}>
      <th scope="row">
        <Said text={figure.label} />
      </th>
      <td>
        <FigureValue figure={figure} why />
        {figure.doubts.map((doubt) => (
          <p key={doubt} class="doubt">
            <Said text={doubt} asSentence />
          </p>
        ))}
      </td>
      <td>
        <MethodLink method={figure.method} />
      </td>
      <td>
        <EvidenceList evidence={figure.evidence} find={find} />
      </td>
    </tr>
  );
}

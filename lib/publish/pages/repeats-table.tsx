/** What a mode showed again and again, and how far it scatters. */
import { withUnit } from "../../units/format.ts";
import { figureAnchor } from "../links.ts";
import type { Repeats } from "../results.ts";
import { FigureValue } from "./figure-value.tsx";
import type { FindFigure } from "./findings.tsx";
import { MethodLink, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";
import { Columns, Table } from "./table.tsx";

type Props = { readonly mode: string; readonly repeats: readonly Repeats[]; readonly find: FindFigure };

/** One row a quantity; nothing at all where no recording shows any. */
export function RepeatsTable({ mode, repeats, find }: Props) {
  const { repeats: words } = useSite().words.parts;
  if (repeats.length === 0) return null;
  return (
    <Table caption={words.caption(mode)} class="repeats cards">
      <Columns names={[words.columns.quantity, words.columns.each, words.columns.spread]} />
      <tbody>
        {repeats.map((quantity) => (
          <tr key={quantity.id}>
            <th scope="row">
              <MethodLink method={`${quantity.id}/1`}>
                <Said text={quantity.label} />
              </MethodLink>
            </th>
            <td data-label={words.columns.each}>
              <Runs quantity={quantity} find={find} />
            </td>
            <td data-label={words.columns.spreadShort}>
              {quantity.figures.map((figure) => (
                <p key={figure.id} id={figureAnchor(figure)}>
                  <MethodLink method={figure.method}>{figure.id === "spread-within-tests" ? words.within : words.between}</MethodLink>
                  {": "}
                  <FigureValue figure={figure} why />
                  {figure.doubts.map((doubt) => (
                    <span key={doubt} class="quiet block">
                      <Said text={doubt} />
                    </span>
                  ))}
                </p>
              ))}
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function Runs({ quantity, find }: { quantity: Repeats; find: FindFigure }) {
  const { linkTo, formats } = useSite();
  const tests = [...new Set(quantity.runs.map((run) => run.test))];
  return (
    <>
      {tests.map((test) => (
        <p key={test}>
          <span class="quiet">{test}</span>{" "}
          {quantity.runs
            .filter((run) => run.test === test)
            .map((run, place) => {
              const target = find(run.figure);
              const text = withUnit(formats.formatNumber(run.value, 2), quantity.unit);
              const title = `${run.recording}: ${formats.formatInterval(run.low, run.high, quantity.unit)}`;
              return (
                <span key={run.figure}>
                  {place === 0 ? "" : ", "}
                  {target === undefined ? (
                    text
                  ) : (
                    <a href={linkTo(target)} title={title}>
                      {text}
                    </a>
                  )}
                </span>
              );
            })}
        </p>
      ))}
    </>
  );
}

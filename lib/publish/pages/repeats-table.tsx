/** What a mode showed again and again, and how far it scatters. */
import { formatInterval, formatNumber, withUnit } from "../../units/format.ts";
import { figureAnchor } from "../links.ts";
import type { Repeats } from "../results.ts";
import { FigureValue } from "./figure-value.tsx";
import type { FindFigure } from "./findings.tsx";
import { MethodLink, useSite } from "./site-context.tsx";
import { Columns, Table } from "./table.tsx";

type Props = { readonly mode: string; readonly repeats: readonly Repeats[]; readonly find: FindFigure };

/** One row a quantity; nothing at all where no recording shows any. */
export function RepeatsTable({ mode, repeats, find }: Props) {
  if (repeats.length === 0) return null;
  return (
    <Table caption={`The same again: mode “${mode}” over its recordings`} class="repeats cards">
      <Columns names={["Quantity", "Each recording", "Spread, as a standard deviation with its 95 % interval"]} />
      <tbody>
        {repeats.map((quantity) => (
          <tr key={quantity.id}>
            <th scope="row">
              <MethodLink method={`${quantity.id}/1`}>{quantity.label}</MethodLink>
            </th>
            <td data-label="Each recording">
              <Runs quantity={quantity} find={find} />
            </td>
            <td data-label="Spread">
              {quantity.figures.map((figure) => (
                <p key={figure.id} id={figureAnchor(figure)}>
                  <MethodLink method={figure.method}>
                    {figure.id === "spread-within-tests" ? "Connection to connection" : "Test to test"}
                  </MethodLink>
                  {": "}
                  <FigureValue figure={figure} why />
                  {figure.doubts.map((doubt) => (
                    <span key={doubt} class="quiet block">
                      {doubt}
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
  const { linkTo } = useSite();
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
              const text = withUnit(formatNumber(run.value, 2), quantity.unit);
              const title = `${run.recording}: ${formatInterval(run.low, run.high, quantity.unit)}`;
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

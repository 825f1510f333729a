/** What a mode will do on other batteries: the reference battery, ready by when, and a season connected. Projected, and marked so. */
import type { ModeForecastResult } from "../results.ts";
import type { FindDownload } from "./evidence-list.tsx";
import { FiguresTable } from "./figures-table.tsx";
import { Absent, Mark } from "./mark.tsx";
import { sentence } from "./sentence.ts";
import { MethodLink } from "./site-context.tsx";
import { Columns, Table } from "./table.tsx";

type Props = { readonly mode: string; readonly forecast: ModeForecastResult };

/** Hours on the one battery on which all chargers are compared. */
export function ReferenceSection({ mode, forecast, find }: Props & { readonly find: FindDownload }) {
  if (forecast.reference === null)
    return (
      <p>
        Mode “{mode}” is for {forecast.nominalVoltageV} V, so it cannot be held against others on the 12 V reference battery.
      </p>
    );
  return (
    <>
      <p>
        Projected for {forecast.reference.words}: <MethodLink method="reference-hours/1">how</MethodLink>. Nobody saw this charge; it is
        what the charger, as recorded, would do.
      </p>
      <FiguresTable caption={`Mode “${mode}” on the reference battery, projected`} figures={forecast.reference.figures} find={find} />
    </>
  );
}

/** How the mode behaves, as far as it was seen. */
export function BehaviourSection({ mode, forecast }: Props) {
  return (
    <details>
      <summary>How mode “{mode}” behaves, as the forecast takes it</summary>
      <ul>
        {forecast.told.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ul>
      {forecast.unknowns.length === 0 ? null : (
        <>
          <p>Not known of it:</p>
          <ul>
            {forecast.unknowns.map((unknown) => (
              <li key={unknown}>{sentence(unknown)}</li>
            ))}
          </ul>
        </>
      )}
    </details>
  );
}

const verdictMarks = { will: "meets", may: "cannot tell", "will not": "short of", "not advised": "caution" } as const;
const kindWords: Readonly<Record<string, string>> = { flooded: "flooded", AGM: "AGM" };

/** Which batteries are ready by when; a battery at 95 % of what it holds counts as ready. */
export function ReadyBySection({ mode, forecast }: Props) {
  return (
    <>
      {forecast.readyBy.map(({ construction, airC, cells }) => (
        <ReadyByTable
          key={construction}
          caption={`Mode “${mode}”: used ${kindWords[construction] ?? construction} batteries at ${airC} °C, ready (95 %) by when, projected`}
          cells={cells}
          claimed={forecast.claimedAh}
        />
      ))}
    </>
  );
}

type Cells = ModeForecastResult["readyBy"][number]["cells"];

function ReadyByTable({ caption, cells, claimed }: { caption: string; cells: Cells; claimed: ModeForecastResult["claimedAh"] }) {
  const deadlines = cells[0]?.deadlines.map(({ deadlineH }) => deadlineH) ?? [];
  return (
    <Table caption={caption} class="ready-by cards">
      <Columns names={["Battery", "How flat", ...deadlines.map((hours) => `in ${hours} h`), "Note"]} />
      <tbody>
        {cells.map((cell) => (
          <tr key={`${cell.battery} ${cell.flatness}`}>
            <th scope="row">{cell.battery}</th>
            <td data-label="How flat">{cell.flatness}</td>
            {cell.deadlines.map(({ deadlineH, probability, verdict }) => (
              <td key={deadlineH} data-label={`in ${deadlineH} h`}>
                <Mark kind={verdictMarks[verdict]}>
                  {verdict} {verdict === "not advised" ? null : <span class="quiet">{percent(probability)}</span>}
                </Mark>
              </td>
            ))}
            <td class="words">
              {cell.because.map((reason) => (
                <p key={reason}>{sentence(reason)}</p>
              ))}
              {cell.isClaimed === "none" && claimed !== null ? (
                <p>
                  Outside the {claimed.low} to {claimed.high} Ah that the maker names.
                </p>
              ) : null}
              {cell.isClaimed === "part" && claimed !== null ? (
                <p>
                  Partly outside the {claimed.low} to {claimed.high} Ah that the maker names.
                </p>
              ) : null}
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

/** Sixty-four draws tell no finer than this. */
function percent(probability: number): string {
  if (probability > 0.98) return "over 98 %";
  return probability < 0.02 ? "under 2 %" : `${(100 * probability).toFixed(0)} %`;
}

const placeWords: Readonly<Record<string, string>> = { "cold-shed": "Cold shed", cellar: "Cellar", "warm-garage": "Warm garage" };
const windowMarks = {
  inside: ["meets", "inside the float window"],
  below: ["short of", "below the float window: it may not keep the battery full"],
  above: ["above", "above the float window: it costs water and life"],
  partly: ["cannot tell", "partly inside the float window"],
  "holds no voltage": ["note", "holds no voltage: it is off, or goes on and off"],
} as const;

/** A month connected to a full 60 Ah battery, at three temperatures. */
export function SeasonSection({ mode, forecast }: Props) {
  return (
    <Table caption={`Mode “${mode}”, a month connected to a full 60 Ah flooded battery, projected`} class="cards">
      <Columns names={["Place", "Voltage held", "Against the float window there", "Energy", "Water, at most", "Restarts a day"]} />
      <tbody>
        {forecast.season.map((row) => (
          <tr key={row.place}>
            <th scope="row">
              {placeWords[row.place] ?? row.place}, {row.temperatureC} °C
            </th>
            <td data-label="Voltage held" class="number">
              {row.heldV === null ? <Absent kind="not applicable" /> : `${row.heldV.low.toFixed(2)} to ${row.heldV.high.toFixed(2)} V`}
            </td>
            <td data-label="Float window">
              <Mark kind={windowMarks[row.inWindow][0]}>{windowMarks[row.inWindow][1]}</Mark>
              <span class="quiet block">
                {row.windowV.low.toFixed(2)} to {row.windowV.high.toFixed(2)} V
              </span>
            </td>
            <td data-label="Energy" class="number">
              {told(row.mainsKWh, 1, "kWh")}
            </td>
            <td data-label="Water, at most" class="number">
              {told(row.waterG, 0, "g")}
            </td>
            <td data-label="Restarts a day" class="number">
              {told(row.restartsPerDay, 1, "")}
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function told({ value, low, high }: ModeForecastResult["season"][number]["mainsKWh"], digits: number, unit: string): string {
  if (value === null) return "not known";
  const end = high === null ? "more" : high.toFixed(digits);
  return `${value.toFixed(digits)}${unit === "" ? "" : ` ${unit}`} (${(low ?? 0).toFixed(digits)} to ${end})`;
}

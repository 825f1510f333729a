/** What a mode will do on other batteries: the reference battery, ready by when, and a season connected. Projected, and marked so. */
import { formatAround, formatNumber, withUnit } from "../../units/format.ts";
import { percentShown } from "../find/shown.ts";
import type { ModeForecastResult } from "../results.ts";
import { topUpWords } from "./earliest-top-up.ts";
import type { FindDownload } from "./evidence-list.tsx";
import { FiguresTable, GroupedFiguresTable } from "./figures-table.tsx";
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

/** Hours on the bench's own batteries, which their logs make known. Nothing at all where there are none. */
export function OwnBatteriesSection({ mode, forecast, find }: Props & { readonly find: FindDownload }) {
  const { ownBatteries } = forecast;
  if (ownBatteries.length === 0) return null;
  const groups = ownBatteries.map(({ test, battery, figures }) => ({ name: `${battery}, found as before test ${test}`, figures }));
  return <GroupedFiguresTable caption={`Mode “${mode}” on batteries of this bench once more, projected`} groups={groups} find={find} />;
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
                  {verdict} {verdict === "not advised" ? null : <span class="quiet">{percentShown(probability)}</span>}
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

const placeWords: Readonly<Record<string, string>> = { "cold-shed": "Cold shed", cellar: "Cellar", "warm-garage": "Warm garage" };
const unseen = "nobody recorded what it does with a full battery";
const windowMarks = {
  inside: ["meets", "inside the float window"],
  below: ["short of", "below the float window: it may not keep the battery full"],
  above: ["above", "above the float window: it costs water and life"],
  partly: ["cannot tell", "partly inside the float window"],
  "holds no voltage": ["note", "holds no voltage: it is off, or goes on and off"],
  "not known": ["cannot tell", unseen],
} as const;

/** A month connected to a full 60 Ah battery, at three temperatures. */
export function SeasonSection({ mode, forecast }: Props) {
  if (forecast.season.every(({ inWindow }) => inWindow === "not known"))
    return (
      <p>
        A month connected in mode “{mode}”: <Absent kind="cannot tell" why={unseen} />
      </p>
    );
  return (
    <>
      <Table caption={`Mode “${mode}”, a month connected to a full 60 Ah flooded battery, projected`} class="cards">
        <Columns
          names={[
            "Place",
            "Voltage held",
            "Against the float window there",
            "Energy",
            "Water, at most",
            "Top up after, at the earliest",
            "Restarts a day",
          ]}
        />
        <tbody>
          {forecast.season.map((row) => (
            <tr key={row.place}>
              <th scope="row">
                {placeWords[row.place] ?? row.place}, {row.temperatureC} °C
              </th>
              <td data-label="Voltage held" class="number">
                <Held row={row} />
              </td>
              <td data-label="Float window">
                <Mark kind={windowMarks[row.inWindow][0]}>{windowMarks[row.inWindow][1]}</Mark>
                <span class="quiet block">{between(row.windowV, "V", 2)}</span>
              </td>
              <td data-label="Energy" class="number">
                <Told spread={row.mainsKWh} unit="kWh" decimals={1} />
              </td>
              <td data-label="Water, at most" class="number">
                <Told spread={row.waterG} unit="g" decimals={0} />
              </td>
              <td data-label="Top up after, at the earliest" class="number">
                {row.topUpDays === null ? <Absent kind="cannot tell" /> : topUpWords(row.topUpDays)}
              </td>
              <td data-label="Restarts a day" class="number">
                <Told spread={row.restartsPerDay} unit="" decimals={1} />
              </td>
            </tr>
          ))}
        </tbody>
      </Table>
      <p class="key">
        Water is the most that can go, so the time to top up is the earliest. Look at the level each month all the same; purified water
        only, after charging, never acid.
      </p>
    </>
  );
}

type SeasonRow = ModeForecastResult["season"][number];

function Held({ row: { heldV, inWindow } }: { row: SeasonRow }) {
  if (heldV !== null) return between(heldV, "V", 2);
  return <Absent kind={inWindow === "not known" ? "cannot tell" : "not applicable"} />;
}

function Told({ spread, unit, decimals }: { spread: SeasonRow["waterG"]; unit: string; decimals: number }) {
  return spread === null ? <Absent kind="cannot tell" /> : formatAround(spread, unit, decimals);
}

function between({ low, high }: { low: number; high: number }, unit: string, decimals: number): string {
  return withUnit(`${formatNumber(low, decimals)} to ${formatNumber(high, decimals)}`, unit);
}

/** What a mode will do on other batteries: the reference battery, ready by when, and a season connected. Projected, and marked so. */
import { withUnit } from "../../units/format.ts";
import { percentShown } from "../find/shown.ts";
import type { ModeForecastResult } from "../results.ts";
import { wordFor } from "../words/word-for.ts";
import { topUpWords } from "./earliest-top-up.ts";
import type { FindDownload } from "./evidence-list.tsx";
import { FiguresTable, GroupedFiguresTable } from "./figures-table.tsx";
import { Absent, Mark } from "./mark.tsx";
import { MethodLink, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";
import { Columns, Table } from "./table.tsx";

type Props = { readonly mode: string; readonly forecast: ModeForecastResult };

/** Hours on the one battery on which all chargers are compared. */
export function ReferenceSection({ mode, forecast, find }: Props & { readonly find: FindDownload }) {
  const { forecast: words } = useSite().words.charger;
  if (forecast.reference === null) return <p>{words.otherVoltage(mode, `${forecast.nominalVoltageV} V`)}</p>;
  return (
    <>
      <p>
        {words.projectedFor(<Said text={forecast.reference.words} />, (how) => (
          <MethodLink method="reference-hours/2">{how}</MethodLink>
        ))}
      </p>
      <FiguresTable caption={words.onReference(mode)} figures={forecast.reference.figures} find={find} />
    </>
  );
}

/** Hours on the bench's own batteries, which their logs make known. Nothing at all where there are none. */
export function OwnBatteriesSection({ mode, forecast, find }: Props & { readonly find: FindDownload }) {
  const { forecast: words } = useSite().words.charger;
  const { ownBatteries } = forecast;
  if (ownBatteries.length === 0) return null;
  const groups = ownBatteries.map(({ test, battery, figures }) => ({ name: words.asBefore(battery, test), figures }));
  return <GroupedFiguresTable caption={words.onOwnBatteries(mode)} groups={groups} find={find} />;
}

/** How the mode behaves, as far as it was seen. */
export function BehaviourSection({ mode, forecast }: Props) {
  const { forecast: words } = useSite().words.charger;
  return (
    <details>
      <summary>{words.behaves(mode)}</summary>
      <ul>
        {forecast.told.map((step) => (
          <li key={step}>
            <Said text={step} />
          </li>
        ))}
      </ul>
      {forecast.unknowns.length === 0 ? null : (
        <>
          <p>{words.notKnownOfIt}</p>
          <ul>
            {forecast.unknowns.map((unknown) => (
              <li key={unknown}>
                <Said text={unknown} asSentence />
              </li>
            ))}
          </ul>
        </>
      )}
    </details>
  );
}

const verdictMarks = { will: "meets", may: "cannot tell", "will not": "short of", "not advised": "caution" } as const;

/** Which batteries are ready by when; a battery at 95 % of what it holds counts as ready. A warning of what comes after stands before it. */
export function ReadyBySection({ mode, forecast, leftOnWarning }: Props & { readonly leftOnWarning: string | null }) {
  const { forecast: words } = useSite().words.charger;
  return (
    <>
      <LeftOnWarning mode={mode} warning={leftOnWarning} />
      {forecast.readyBy.map(({ construction, airC, cells }) => (
        <ReadyByTable
          key={construction}
          caption={words.readyBy(mode, wordFor(words.kinds, construction), `${airC} °C`)}
          cells={cells}
          claimed={forecast.claimedAh}
        />
      ))}
    </>
  );
}

/** Why a mode should not stay on a full battery; nothing at all where nothing speaks against it. */
export function LeftOnWarning({ mode, warning }: { readonly mode: string; readonly warning: string | null }) {
  const { charger, find } = useSite().words;
  if (warning === null) return null;
  return (
    <p>
      <Mark kind="caution">
        {charger.mode(mode)}. <strong>{find.leftOn}</strong> <Said text={warning} />
      </Mark>
    </p>
  );
}

type Cells = ModeForecastResult["readyBy"][number]["cells"];

function ReadyByTable({ caption, cells, claimed }: { caption: string; cells: Cells; claimed: ModeForecastResult["claimedAh"] }) {
  const { formats, words: all } = useSite();
  const { forecast: words } = all.charger;
  const ah = (value: number): string => formats.formatStated(value, "");
  const deadlines = cells[0]?.deadlines.map(({ deadlineH }) => deadlineH) ?? [];
  return (
    <Table caption={caption} class="ready-by cards">
      <Columns names={[words.columns.battery, words.columns.flat, ...deadlines.map(words.inHours), words.columns.note]} />
      <tbody>
        {cells.map((cell) => (
          <tr key={`${cell.battery} ${cell.flatness}`}>
            <th scope="row">
              <Said text={cell.battery} />
            </th>
            <td data-label={words.columns.flat}>
              <Said text={cell.flatness} />
            </td>
            {cell.deadlines.map(({ deadlineH, probability, verdict }) => (
              <td key={deadlineH} data-label={words.inHours(deadlineH)}>
                <Mark kind={verdictMarks[verdict]}>
                  {all.marks.verdicts[verdict]}{" "}
                  {verdict === "not advised" ? null : <span class="quiet">{percentShown(probability, formats)}</span>}
                </Mark>
              </td>
            ))}
            <td class="words">
              {cell.because.map((reason) => (
                <p key={reason}>
                  <Said text={reason} asSentence />
                </p>
              ))}
              {cell.isClaimed === "none" && claimed !== null ? <p>{words.outside(ah(claimed.low), ah(claimed.high))}</p> : null}
              {cell.isClaimed === "part" && claimed !== null ? <p>{words.partlyOutside(ah(claimed.low), ah(claimed.high))}</p> : null}
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

const windowMarks = {
  inside: "meets",
  below: "short of",
  above: "above",
  partly: "cannot tell",
  "holds no voltage": "note",
  "not known": "cannot tell",
} as const;

/** A month connected to a full 60 Ah battery, at three temperatures. */
export function SeasonSection({ mode, forecast }: Props) {
  const { marks, charger } = useSite().words;
  const { season } = charger.forecast;
  if (forecast.season.every(({ inWindow }) => inWindow === "not known"))
    return (
      <p>
        {season.unseenLead(mode)} <Absent kind="cannot tell" because={season.unseen} />
      </p>
    );
  const { columns } = season;
  return (
    <>
      <Table caption={season.caption(mode)} class="cards">
        <Columns names={[columns.place, columns.held, columns.window, columns.energy, columns.water, columns.topUp, columns.restarts]} />
        <tbody>
          {forecast.season.map((row) => (
            <tr key={row.place}>
              <th scope="row">
                {wordFor(marks.places, row.place)}, {row.temperatureC} °C
              </th>
              <td data-label={columns.held} class="number">
                <Held row={row} />
              </td>
              <td data-label={columns.windowShort}>
                <Mark kind={windowMarks[row.inWindow]}>{season.windows[row.inWindow]}</Mark>
                <span class="quiet block">
                  <Between {...row.windowV} unit="V" decimals={2} />
                </span>
              </td>
              <td data-label={columns.energy} class="number">
                <Told spread={row.mainsKWh} unit="kWh" decimals={1} />
              </td>
              <td data-label={columns.water} class="number">
                <Told spread={row.waterG} unit="g" decimals={0} />
              </td>
              <td data-label={columns.topUp} class="number">
                {row.topUpDays === null ? <Absent kind="cannot tell" /> : topUpWords(row.topUpDays, charger.forecast.topUp)}
              </td>
              <td data-label={columns.restarts} class="number">
                <Told spread={row.restartsPerDay} unit="" decimals={1} />
              </td>
            </tr>
          ))}
        </tbody>
      </Table>
      <p class="key">{season.topUpNote}</p>
    </>
  );
}

type SeasonRow = ModeForecastResult["season"][number];

function Held({ row: { heldV, inWindow } }: { row: SeasonRow }) {
  if (heldV !== null) return <Between {...heldV} unit="V" decimals={2} />;
  return <Absent kind={inWindow === "not known" ? "cannot tell" : "not applicable"} />;
}

function Told({ spread, unit, decimals }: { spread: SeasonRow["waterG"]; unit: string; decimals: number }) {
  const { formats } = useSite();
  return spread === null ? <Absent kind="cannot tell" /> : formats.formatAround(spread, unit, decimals);
}

function Between({ low, high, unit, decimals }: { low: number; high: number; unit: string; decimals: number }) {
  const { between, formatNumber } = useSite().formats;
  return <>{withUnit(between(formatNumber(low, decimals), formatNumber(high, decimals)), unit)}</>;
}

/** One charger's row, with its other tests folded under its name. */
import type { ComponentChildren } from "preact";
import type { Figure } from "../../../nouns/figure.ts";
import { chargerPath, testPath } from "../../links.ts";
import type { ChargerResult, ComparisonRow } from "../../results.ts";
import { wordFor } from "../../words/word-for.ts";
import { EvidenceStrip } from "../evidence-strip.tsx";
import { FigureValue } from "../figure-value.tsx";
import { Absent, Mark } from "../mark.tsx";
import { Link, useSite } from "../site-context.tsx";
import { SmallProfile } from "../small-profile.tsx";
import { Said, said } from "../speech.tsx";
import { claimOutcomes } from "./claim-outcomes.ts";
import { type Column, facetWords, type Group } from "./groups.ts";
import { MissingFigure } from "./missing-figure.tsx";

type Props = {
  readonly group: Group;
  readonly charger: ChargerResult;
  readonly first: readonly Column[];
  readonly rest: readonly Column[];
  /** Where a figure of the shown test, as "of#id", is told in full. */
  readonly find: (reference: string) => string | undefined;
};

export function GroupRow({ group, charger, first, rest, find }: Props) {
  const { comparison } = useSite().words;
  const { shown } = group;
  // A figure that neither page shows, which would be a slip in the results, still leads to the test.
  const targetOf = (figure: Figure | undefined) => (figure && find(`${figure.of}#${figure.id}`)) ?? testPath(shown.test.id);
  const cellOf = (column: Column) => {
    const figure = shown.figures.find((candidate) => candidate.id === column.id);
    const missing = <MissingFigure charger={charger} row={shown} figureId={column.id} />;
    return <FigureCell key={column.id} column={column} figure={figure} target={targetOf(figure)} missing={missing} />;
  };
  return (
    <tr data-facets={facetWords(group)} data-charger={shown.charger.id}>
      <th scope="row" data-value={shown.charger.name}>
        <Link to={chargerPath(shown.charger.id)} class="charger-name">
          {shown.charger.name}
        </Link>
        {shown.charger.maker === null ? null : <span class="quiet block">{shown.charger.maker}</span>}
        <TestedAs row={shown} />
        <OtherTests shown={shown} rows={group.others} />
        {/* Revealed by the script, which gathers what is chosen into a link. */}
        <label class="choose" hidden data-choose>
          <input type="checkbox" name="charger" value={shown.charger.id} /> {comparison.compare}
          <span class="unseen"> {comparison.withOthers(shown.charger.name)}</span>
        </label>
      </th>
      <td class="seen">
        <Mark kind={charger.verdict.weight}>
          <Said text={charger.verdict.sentence} />
        </Mark>
        <EvidenceStrip timeline={shown.timeline} size="row" />
        <Link to={testPath(shown.test.id)}>
          {comparison.evidence}
          <span class="unseen"> {comparison.ofTest(shown.test.name)}</span>
        </Link>
        , {wordFor(comparison.statuses, shown.status)}
      </td>
      <td data-label={comparison.columns.claims} data-column="claims">
        <ClaimOutcomes charger={charger} />
      </td>
      {first.map(cellOf)}
      <td data-label={comparison.columns.profile} data-value={shown.characteristic ?? ""} data-column="profile">
        {shown.characteristic === null ? <Absent kind="cannot tell" /> : <span class="letters">{shown.characteristic}</span>}
        {shown.profile === null ? null : (
          <SmallProfile profile={shown.profile} words={comparison.profileOf(shown.charger.name, shown.mode.name)} />
        )}
      </td>
      {rest.map(cellOf)}
    </tr>
  );
}

function TestedAs({ row }: { row: ComparisonRow }) {
  const { words, formats } = useSite();
  const { battery, mode } = row;
  return (
    <span class="quiet block">
      {words.comparison.testedAs(
        mode.name,
        battery.name,
        formats.formatStated(battery.nominalVoltageV, "V"),
        formats.formatStated(battery.capacityAh, "Ah"),
        wordFor(words.marks.constructions, battery.construction),
      )}
    </span>
  );
}

function ClaimOutcomes({ charger }: { charger: ChargerResult }) {
  const { marks } = useSite().words;
  const outcomes = claimOutcomes(charger);
  if (outcomes.length === 0) return <Absent kind="nothing claimed" />;
  return (
    <ul class="outcomes">
      {outcomes.map(({ id, label, outcome, modes }) => (
        <li key={`${id} ${outcome}`}>
          <Mark kind={outcome}>
            <Said text={label} />
            {modes.length === 0 ? "" : ` (${modes.join(", ")})`}: {wordFor(marks.outcomes, outcome)}
          </Mark>
        </li>
      ))}
    </ul>
  );
}

/** Folded; what came of them stands in the fold's own line where it is not what came of the test that is shown. */
export function OtherTests({ shown, rows }: { shown: ComparisonRow; rows: readonly ComparisonRow[] }) {
  const { comparison } = useSite().words;
  if (rows.length === 0) return null;
  const otherwise = [...new Set(rows.map(({ status }) => status))]
    .filter((status) => status !== shown.status)
    .map((status) => {
      const count = rows.filter((row) => row.status === status).length;
      return `${wordFor(comparison.statuses, status)}${count === rows.length ? "" : ` (${count})`}`;
    });
  return (
    <details class="others">
      <summary>
        {comparison.moreTests(rows.length)}
        {otherwise.length === 0 ? "" : `: ${otherwise.join("; ")}`}
      </summary>
      <ul class="plain">
        {rows.map((row) => (
          <li key={row.test.id}>
            <TestedAs row={row} />
            <Mark kind={row.verdict.weight}>
              <Said text={row.verdict.sentence} />
            </Mark>{" "}
            <Link to={testPath(row.test.id)}>
              {comparison.evidence}
              <span class="unseen"> {comparison.ofTest(row.test.name)}</span>
            </Link>
            , {wordFor(comparison.statuses, row.status)}
          </li>
        ))}
      </ul>
    </details>
  );
}

type CellProps = {
  readonly column: Column;
  readonly figure: Figure | undefined;
  /** Where the figure is told in full. */
  readonly target: string;
  /** What stands in its place where the row has none. */
  readonly missing: ComponentChildren;
};

function FigureCell({ column, figure, target, missing }: CellProps) {
  const speech = useSite();
  const label = said(speech, column.label);
  if (figure === undefined) {
    return (
      <td class="number" data-label={label} data-value="" data-column={column.id}>
        {missing}
      </td>
    );
  }
  // Six digits sort as well as seventeen, and a table of a thousand rows carries them a thousand times.
  const short = (value: number | null): string => (value === null ? "" : String(Number(value.toPrecision(6))));
  return (
    <td
      class="number"
      data-label={label}
      data-value={short(figure.value)}
      data-low={short(figure.low)}
      data-high={short(figure.high)}
      data-column={column.id}
    >
      <Link to={target}>
        <FigureValue figure={figure} />
      </Link>
    </td>
  );
}

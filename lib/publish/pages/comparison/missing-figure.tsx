/** Why a row has no figure that other rows have: its kind of absence, leading to where the reason stands. */
import { chargerPath, testPath } from "../../links.ts";
import type { ChargerResult, ComparisonRow } from "../../results.ts";
import { Absent } from "../mark.tsx";
import { Link, useSite } from "../site-context.tsx";

type Props = {
  readonly charger: Pick<ChargerResult, "id" | "modes">;
  readonly row: Pick<ComparisonRow, "mode" | "test">;
  readonly figureId: string;
};

/** A figure of the reference battery is missing for a mode of another voltage, or of which no recording tells; any other was not measured. */
export function MissingFigure({ charger, row, figureId }: Props) {
  const { charger: words } = useSite().words;
  if (!figureId.startsWith("reference-"))
    return (
      <Link to={testPath(row.test.id)}>
        <Absent kind="not measured" />
      </Link>
    );
  const forecast = charger.modes.find(({ id }) => id === row.mode.id)?.forecast ?? null;
  return (
    <Link to={`${chargerPath(charger.id)}#time`}>
      {forecast === null ? (
        <Absent kind="not recorded" />
      ) : (
        <>
          <Absent kind="not applicable" />
          <span class="unseen"> {words.forecast.otherVoltage(row.mode.name, `${forecast.nominalVoltageV} V`)}</span>
        </>
      )}
    </Link>
  );
}

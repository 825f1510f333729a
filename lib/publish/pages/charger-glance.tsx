/** A charger at a glance: its most telling test as a strip, and the figures that a buyer compares by. The comparison shows the same. */
import { figureFinder } from "../figure-finder.ts";
import { testPath } from "../links.ts";
import type { ChargerResult } from "../results.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { wordFor } from "../words/word-for.ts";
import { OtherTests } from "./comparison/group-row.tsx";
import { chargerGroups, firstFigures } from "./comparison/groups.ts";
import { EvidenceStrip } from "./evidence-strip.tsx";
import { FigureValue } from "./figure-value.tsx";
import { LeftOnWarning } from "./forecast-sections.tsx";
import { Link, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";

/** Nothing at all for a charger that was not tested. */
export function ChargerGlance({ results, charger }: { results: ResultsFolder; charger: ChargerResult }) {
  const [group] = chargerGroups(results.rowsOf(charger.id));
  if (group === undefined) return null;
  const { shown, others } = group;
  const { comparison } = useSite().words;
  const find = figureFinder([results.test(shown.test.id)], charger);
  const figures = firstFigures.flatMap((id) => shown.figures.filter((figure) => figure.id === id));
  return (
    <div class="glance">
      <EvidenceStrip timeline={shown.timeline} size="row" />
      <p class="quiet">
        <Link to={testPath(shown.test.id)}>{shown.test.name}</Link>, {wordFor(comparison.statuses, shown.status)}
      </p>
      <OtherTests shown={shown} rows={others} />
      {charger.modes.map(({ id, name, leftOnWarning }) => (
        <LeftOnWarning key={id} mode={name} warning={leftOnWarning} />
      ))}
      <dl>
        {figures.map((figure) => (
          <div key={figure.id}>
            <dt>
              <Said text={figure.label} />
            </dt>
            <dd>
              <Link to={find(`${figure.of}#${figure.id}`) ?? testPath(shown.test.id)}>
                <FigureValue figure={figure} />
              </Link>
            </dd>
          </div>
        ))}
      </dl>
    </div>
  );
}

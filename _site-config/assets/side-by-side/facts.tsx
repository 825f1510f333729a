/** What is told rather than compared by number: the tests, the claims, a season connected, and what nobody saw. */

import type { ComponentChildren } from "preact";
import { chargerPath, testPath } from "../../../lib/publish/links.ts";
import { Absent, Mark } from "../../../lib/publish/pages/mark.tsx";
import { sentence } from "../../../lib/publish/pages/sentence.ts";
import type { ComparedRun } from "../../../lib/publish/side-by-side/compared.ts";
import type { Entrant } from "../../../lib/publish/side-by-side/line-up.ts";
import { formatStated } from "../../../lib/units/format.ts";
import { cellLabel, type Shown, SideTable, To } from "./parts.tsx";

const told: readonly { readonly label: string; readonly tell: (run: ComparedRun) => ComponentChildren }[] = [
  { label: "Test", tell: ({ test }) => <To path={testPath(test.id)}>{test.name}</To> },
  { label: "Verdict", tell: ({ verdict }) => <Mark kind={verdict.weight}>{verdict.sentence}</Mark> },
  {
    label: "Battery",
    tell: ({ batteryName, conditions }) =>
      `${batteryName}: ${formatStated(conditions.nominalVoltageV, "V")}, ${formatStated(conditions.capacityAh, "Ah")}, ${conditions.construction}`,
  },
  { label: "How flat", tell: ({ discharged }) => discharged ?? <Absent kind="not stated" /> },
  {
    label: "Target density at 25 °C",
    tell: ({ conditions: { targetAt25C } }) => (targetAt25C === null ? <Absent kind="not stated" /> : formatStated(targetAt25C, "kg/l")),
  },
  { label: "Target", tell: ({ status }) => status },
  {
    label: "Charge profile",
    tell: ({ characteristic }) => (characteristic === null ? <Absent kind="cannot tell" /> : <span class="letters">{characteristic}</span>),
  },
];

/** What each was tested on, and what came of that test. */
export function TestedTable({ entrants, invented }: Shown) {
  return (
    <SideTable caption="The tests side by side" first="What" entrants={entrants} invented={invented}>
      <tbody>
        <tr>
          <th scope="row">Mode</th>
          {entrants.map((entrant) => (
            <td key={entrant.letter} data-label={cellLabel(entrant)}>
              {entrant.mode.name}
            </td>
          ))}
        </tr>
        {told.map(({ label, tell }) => (
          <tr key={label}>
            <th scope="row">{label}</th>
            {entrants.map((entrant) => (
              <td key={entrant.letter} data-label={cellLabel(entrant)}>
                {entrant.run === undefined ? <Absent kind="not put to the test" /> : tell(entrant.run)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </SideTable>
  );
}

/** One row a claim that any of the modes makes, with its outcome. */
export function ClaimsTable({ entrants, invented }: Shown) {
  const labels = new Map(entrants.flatMap(({ mode }) => mode.claims).map(({ id, label }) => [id, label]));
  if (labels.size === 0) return <p>None of these modes claims anything that could be judged.</p>;
  return (
    <SideTable caption="Claims of each mode, judged over all its tests" first="Claim" entrants={entrants} invented={invented}>
      <tbody>
        {[...labels].map(([id, label]) => (
          <tr key={id}>
            <th scope="row">{label}</th>
            {entrants.map((entrant) => (
              <td key={entrant.letter} data-label={cellLabel(entrant)}>
                <ClaimCell entrant={entrant} id={id} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </SideTable>
  );
}

function ClaimCell({ entrant, id }: { entrant: Entrant; id: string }) {
  const claim = entrant.mode.claims.find((one) => one.id === id);
  if (claim === undefined) return <Absent kind="not claimed" />;
  return (
    <>
      <Mark kind={claim.outcome}>{claim.outcome}</Mark>
      <span class="block">claimed: {claim.claimed}</span>
      <span class="block">
        measured: {claim.measured === null ? <Absent kind="not measured" /> : <To path={claim.to}>{claim.measured}</To>}
      </span>
    </>
  );
}

/** A month connected to a full battery, at the temperatures that were forecast. */
export function SeasonTable({ entrants, invented }: Shown) {
  const places = [...new Set(entrants.flatMap(({ mode }) => mode.season).map(({ place }) => place))];
  if (places.length === 0) return <p>No recording shows what any of these does when it stays connected.</p>;
  return (
    <SideTable caption="A month on a full 60 Ah flooded battery, projected" first="Place" entrants={entrants} invented={invented}>
      <tbody>
        {places.map((place) => (
          <tr key={place}>
            <th scope="row">{place}</th>
            {entrants.map((entrant) => (
              <td key={entrant.letter} data-label={cellLabel(entrant)}>
                <SeasonCell entrant={entrant} place={place} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </SideTable>
  );
}

function SeasonCell({ entrant, place }: { entrant: Entrant; place: string }) {
  const season = entrant.mode.season.find((one) => one.place === place);
  if (season === undefined) return <Absent kind="not recorded" />;
  return (
    <>
      <Mark kind={season.mark}>{season.words}</Mark>
      {season.held === null ? null : (
        <span class="block">
          <To path={`${chargerPath(entrant.charger.id)}#safe`}>{season.held}</To>
        </span>
      )}
    </>
  );
}

/** What is missing of each charger, over all its tests. */
export function Unseen({ entrants }: { entrants: readonly Entrant[] }) {
  return (
    <>
      {entrants.map((entrant) => (
        <details key={entrant.letter}>
          <summary>
            {cellLabel(entrant)}: {countWords(entrant)}
          </summary>
          <ul>
            {[...entrant.charger.notSeen, ...entrant.mode.unknowns.map(sentence)].map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </details>
      ))}
    </>
  );
}

function countWords({ charger, mode }: Entrant): string {
  const count = charger.notSeen.length + mode.unknowns.length;
  if (count === 0) return "nothing is missing";
  return count === 1 ? "1 thing" : `${count} things`;
}

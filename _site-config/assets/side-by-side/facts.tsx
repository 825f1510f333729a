/** What is told rather than compared by number: the tests, the claims, a season connected, and what nobody saw. */

import type { ComponentChildren } from "preact";
import { chargerPath, testPath } from "../../../lib/publish/links.ts";
import { Absent, Mark } from "../../../lib/publish/pages/mark.tsx";
import { Said } from "../../../lib/publish/pages/speech.tsx";
import type { ComparedRun } from "../../../lib/publish/side-by-side/compared.ts";
import type { Entrant } from "../../../lib/publish/side-by-side/line-up.ts";
import type { SideSpeech, SideWords } from "../../../lib/publish/side-by-side/side-speech.ts";
import { fillCounted } from "../../../lib/publish/words/fill.ts";
import { cellLabel, Row, type Shown, SideTable, To } from "./parts.tsx";
import { ownLanguage, useSideSpeech, words } from "./speech.ts";

/** What stands in the rows of the tests, by the words for it. */
const rows: Readonly<Record<Exclude<keyof SideWords["rows"], "mode">, (run: ComparedRun, tell: SideSpeech["tell"]) => ComponentChildren>> =
  {
    test: ({ test }) => <To path={testPath(test.id)}>{test.name}</To>,
    verdict: ({ verdict }) => (
      <Mark kind={verdict.weight}>
        <Said text={verdict.sentence} />
      </Mark>
    ),
    battery: ({ battery }, tell) => tell(battery),
    flat: ({ discharged }) => (discharged === null ? <Absent kind="not stated" /> : <span lang={ownLanguage}>{discharged}</span>),
    density: ({ target }, tell) => (target === null ? <Absent kind="not stated" /> : tell(target)),
    target: ({ status }, tell) => tell(status),
    profile: ({ characteristic }) =>
      characteristic === null ? <Absent kind="cannot tell" /> : <span class="letters">{characteristic}</span>,
  };

const rowNames = Object.keys(rows) as (keyof typeof rows)[];

/** What each was tested on, and what came of that test. */
export function TestedTable({ entrants, invented }: Shown) {
  const { tell } = useSideSpeech();
  return (
    <SideTable caption={words.testedCaption} first={words.what} entrants={entrants} invented={invented}>
      <tbody>
        <Row label={words.rows.mode} entrants={entrants} cell={({ mode }) => mode.name} />
        {rowNames.map((row) => (
          <Row
            key={row}
            label={words.rows[row]}
            entrants={entrants}
            cell={({ run }) => (run === undefined ? <Absent kind="not put to the test" /> : rows[row](run, tell))}
          />
        ))}
      </tbody>
    </SideTable>
  );
}

/** One row a claim that any of the modes makes, with its outcome. */
export function ClaimsTable({ entrants, invented }: Shown) {
  const labels = new Map(entrants.flatMap(({ mode }) => mode.claims).map(({ id, label }) => [id, label]));
  if (labels.size === 0) return <p>{words.noClaims}</p>;
  return (
    <SideTable caption={words.claimsCaption} first={words.claim} entrants={entrants} invented={invented}>
      <tbody>
        {[...labels].map(([id, label]) => (
          <Row key={id} label={<Said text={label} />} entrants={entrants} cell={(entrant) => <ClaimCell entrant={entrant} id={id} />} />
        ))}
      </tbody>
    </SideTable>
  );
}

function ClaimCell({ entrant, id }: { entrant: Entrant; id: string }) {
  const { tell } = useSideSpeech();
  const claim = entrant.mode.claims.find((one) => one.id === id);
  if (claim === undefined) return <Absent kind="not claimed" />;
  return (
    <>
      <Mark kind={claim.outcome}>{tell(claim.outcome)}</Mark>
      <span class="block">
        {words.claimed} {tell(claim.claimed)}
      </span>
      <span class="block">
        {words.measured} {claim.measured === null ? <Absent kind="not measured" /> : <To path={claim.to}>{tell(claim.measured)}</To>}
      </span>
    </>
  );
}

/** A month connected to a full battery, at the temperatures that were forecast. */
export function SeasonTable({ entrants, invented }: Shown) {
  const { tell } = useSideSpeech();
  const places = [...new Set(entrants.flatMap(({ mode }) => mode.season).map(({ place }) => place))];
  if (places.length === 0) return <p>{words.noSeason}</p>;
  return (
    <SideTable caption={words.seasonCaption} first={words.place} entrants={entrants} invented={invented}>
      <tbody>
        {places.map((place) => (
          <Row key={place} label={tell(place)} entrants={entrants} cell={(entrant) => <SeasonCell entrant={entrant} place={place} />} />
        ))}
      </tbody>
    </SideTable>
  );
}

function SeasonCell({ entrant, place }: { entrant: Entrant; place: string }) {
  const { tell } = useSideSpeech();
  const season = entrant.mode.season.find((one) => one.place === place);
  if (season === undefined) return <Absent kind="not recorded" />;
  return (
    <>
      <Mark kind={season.mark}>
        <Said text={season.words} />
      </Mark>
      {season.held === null ? null : (
        <span class="block">
          <To path={`${chargerPath(entrant.charger.id)}#safe`}>{tell(season.held)}</To>
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
            {entrant.charger.notSeen.map((unseen) => (
              <li key={unseen}>
                <Said text={unseen} />
              </li>
            ))}
            {entrant.mode.unknowns.map((unknown) => (
              <li key={unknown}>
                <Said text={unknown} asSentence />
              </li>
            ))}
          </ul>
        </details>
      ))}
    </>
  );
}

/** Of a mode that nobody tested all is missing, though no test can list it. */
function countWords({ charger, mode, run }: Entrant): string {
  const count = charger.notSeen.length + mode.unknowns.length;
  if (count > 0) return fillCounted(words.things, count, words.language);
  return run === undefined ? words.absences["not put to the test"] : words.nothingMissing;
}

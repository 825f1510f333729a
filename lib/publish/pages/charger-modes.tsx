/** A charger's modes: what the maker states of each, and what became of the claims. */
import type { ChargerResult } from "../results.ts";
import { wordFor } from "../words/word-for.ts";
import { CharacteristicDrawing } from "./characteristic-drawing.tsx";
import { ClaimsTable } from "./claims-table.tsx";
import { FactValue } from "./facts.tsx";
import type { FindFigure } from "./findings.tsx";
import { RepeatsTable } from "./repeats-table.tsx";
import { useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";

/** How a mode charges, and its claims judged. */
export function ModeSection({ mode, find }: { mode: ChargerResult["modes"][number]; find: FindFigure }) {
  const { charger: words } = useSite().words;
  return (
    <section>
      <h3>{words.mode(mode.name)}</h3>
      {mode.characteristic === null ? null : (
        <p>
          {mode.characteristic.letters === null ? null : <span class="letters">{mode.characteristic.letters} </span>}
          <Said text={mode.characteristic.words} asSentence />
          {mode.characteristic.complete ? "" : ` ${words.lettersMayGoOn}`}
        </p>
      )}
      {mode.characteristic === null ? null : (
        <CharacteristicDrawing
          stages={mode.characteristic.stages}
          caption={words.asRecorded(mode.characteristic.recording, mode.characteristic.test)}
        />
      )}
      {mode.tests.length === 0 ? <p>{words.untestedMode}</p> : null}
      <ClaimsTable caption={words.claimsOfMode(mode.name)} claims={mode.claims} find={find} />
      <RepeatsTable mode={mode.name} repeats={mode.repeats} find={find} />
    </section>
  );
}

/** All that the maker states, mode by mode, judged or not. */
export function Stated({ modes }: { modes: ChargerResult["modes"] }) {
  const { charger, marks, parts } = useSite().words;
  return (
    <>
      {modes.map((mode) => (
        <section key={mode.id}>
          <h3>{charger.statedOf(mode.name)}</h3>
          {mode.stated.length === 0 ? <p>{parts.nothingStated}</p> : null}
          <dl class="facts">
            {mode.stated.map((item) => (
              <div key={item.label}>
                <dt>
                  <Said text={item.label} />
                </dt>
                <dd>
                  <FactValue value={item.words} /> <span class="quiet">({wordFor(marks.sources, item.from)})</span>
                </dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </>
  );
}

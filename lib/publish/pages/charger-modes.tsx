/** A charger's modes: what the maker states of each, and what became of the claims. */
import type { ChargerResult } from "../results.ts";
import { CharacteristicDrawing } from "./characteristic-drawing.tsx";
import { ClaimsTable } from "./claims-table.tsx";
import type { FindFigure } from "./findings.tsx";
import { RepeatsTable } from "./repeats-table.tsx";
import { sentence } from "./sentence.ts";

/** How a mode charges, and its claims judged. */
export function ModeSection({ mode, find }: { mode: ChargerResult["modes"][number]; find: FindFigure }) {
  return (
    <section>
      <h3>Mode “{mode.name}”</h3>
      {mode.characteristic === null ? null : (
        <p>
          {mode.characteristic.letters === null ? null : <span class="letters">{mode.characteristic.letters} </span>}
          {sentence(mode.characteristic.words)}
          {mode.characteristic.complete ? "" : " No recording lasted until the charger was done, so the letters may go on."}
        </p>
      )}
      {mode.characteristic === null ? null : (
        <CharacteristicDrawing
          stages={mode.characteristic.stages}
          caption={`As recorded in ${mode.characteristic.recording} of test ${mode.characteristic.test}.`}
        />
      )}
      {mode.tests.length === 0 ? <p>This mode has not been put to the test.</p> : null}
      <ClaimsTable caption={`Claims of mode “${mode.name}”, judged over its tests`} claims={mode.claims} find={find} />
      <RepeatsTable mode={mode.name} repeats={mode.repeats} find={find} />
    </section>
  );
}

/** All that the maker states, mode by mode, judged or not. */
export function Stated({ modes }: { modes: ChargerResult["modes"] }) {
  return (
    <>
      {modes.map((mode) => (
        <section key={mode.id}>
          <h3>What the maker states of “{mode.name}”</h3>
          {mode.stated.length === 0 ? <p>Nothing is stated.</p> : null}
          <dl class="facts">
            {mode.stated.map((item) => (
              <div key={item.label}>
                <dt>{item.label}</dt>
                <dd>
                  {item.words} <span class="quiet">({item.from})</span>
                </dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </>
  );
}

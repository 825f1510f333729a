/** Which chargers stand side by side, in which mode, by which test. */
import type { Choice, Choices } from "../../../lib/publish/side-by-side/choice.ts";
import { type ComparedIndex, mostChargers } from "../../../lib/publish/side-by-side/compared.ts";
import { type Entrant, type Setting, settingsOf } from "../../../lib/publish/side-by-side/line-up.ts";
import { fill } from "../../../lib/publish/words/fill.ts";
import { ChargerName } from "./parts.tsx";
import { words } from "./speech.ts";

type Props = {
  readonly index: ComparedIndex;
  readonly entrants: readonly Entrant[];
  readonly choices: Choices;
  readonly choose: (choices: Choices) => void;
};

/** One box a chosen charger, and a list to add another from while fewer than four stand. */
export function Chooser({ index, entrants, choices, choose }: Props) {
  const standing = choices.chosen.filter(({ charger }) => entrants.some((entrant) => entrant.charger.id === charger));
  const choosing = (chosen: readonly Choice[]): void => choose({ ...choices, chosen });
  const change = (place: number, next: readonly Choice[]): void =>
    choosing([...standing.slice(0, place), ...next, ...standing.slice(place + 1)]);
  return (
    <form
      class="side-chooser"
      onSubmit={(event) => {
        event.preventDefault();
        choosing([...standing, ...addition(String(new FormData(event.currentTarget).get("add")), entrants)]);
      }}
    >
      {entrants.map((entrant, place) => (
        <fieldset class="side-entrant" key={`${entrant.letter} ${entrant.charger.id}`}>
          <legend>
            <ChargerName entrant={entrant} />
          </legend>
          <SettingSelect entrant={entrant} choose={(choice) => change(place, [choice])} />{" "}
          <button type="button" onClick={() => change(place, [])}>
            {words.remove}
            <span class="unseen"> {entrant.charger.name}</span>
          </button>
        </fieldset>
      ))}
      {entrants.length >= mostChargers ? null : (
        // A list that added at its first change could not be gone through by arrow keys; a new one begins after each charger.
        <div key={entrants.length}>
          <label>
            {words.addCharger}{" "}
            <select name="add">
              {index.map(({ id, name }) => (
                <option key={id} value={id} disabled={addition(id, entrants).length === 0}>
                  {name}
                </option>
              ))}
            </select>
          </label>{" "}
          <button type="submit">{words.add}</button>
        </div>
      )}
    </form>
  );
}

/** A charger that stands already is added in a mode or test that does not; [] where all of them stand. */
function addition(id: string, entrants: readonly Entrant[]): Choice[] {
  const standing = entrants.filter(({ charger }) => charger.id === id);
  const charger = standing[0]?.charger;
  if (charger === undefined) return [{ charger: id }];
  const free = settingsOf(charger).find((setting) => !standing.some(({ mode, run }) => mode === setting.mode && run === setting.run));
  return free === undefined ? [] : [choiceOf(charger.id, free)];
}

const choiceOf = (charger: string, { mode, run }: Setting): Choice => ({ charger, mode: mode.id, test: run?.test.id });

/** Nothing to choose where a charger has one mode with one test. */
function SettingSelect({ entrant, choose }: { entrant: Entrant; choose: (choice: Choice) => void }) {
  const { charger, mode, run } = entrant;
  const settings = settingsOf(charger);
  if (settings.length < 2) return <p class="quiet">{fill(words.mode, { mode: mode.name })}</p>;
  const current = settings.findIndex((setting) => setting.mode === mode && setting.run === run);
  return (
    <label>
      {words.modeAndTest}{" "}
      <select
        value={String(current)}
        onChange={(event) => {
          const setting = settings[Number(event.currentTarget.value)];
          if (setting !== undefined) choose(choiceOf(charger.id, setting));
        }}
      >
        {settings.map((setting, place) => (
          <option key={place} value={String(place)}>
            {settingWords(setting)}
          </option>
        ))}
      </select>
    </label>
  );
}

function settingWords({ mode, run }: Setting): string {
  return run === undefined
    ? fill(words.untested, { mode: mode.name })
    : fill(words.onBattery, { mode: mode.name, battery: run.batteryName });
}

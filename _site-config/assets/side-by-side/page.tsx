/** The page: what was chosen stands in the address, and everything shown follows from it. */
import { render } from "preact";
import { SpeechProvider } from "../../../lib/publish/pages/speech.tsx";
import { type Choices, readChoices, writeChoices } from "../../../lib/publish/side-by-side/choice.ts";
import { type ComparedCharger, type ComparedIndex, fewestChargers } from "../../../lib/publish/side-by-side/compared.ts";
import { type Entrant, lineUp } from "../../../lib/publish/side-by-side/line-up.ts";
import { listed } from "../../../lib/publish/side-by-side/side-speech.ts";
import { fill } from "../../../lib/publish/words/fill.ts";
import type { Say } from "../phrases.ts";
import { Chooser } from "./chooser.tsx";
import { ClaimsTable, SeasonTable, TestedTable, Unseen } from "./facts.tsx";
import { FiguresTable, FinishingOrder, finishingOrderId, PayingBack } from "./figures.tsx";
import { type Loader, loaderFrom } from "./load.ts";
import { cellLabel } from "./parts.tsx";
import { Profiles } from "./profiles.tsx";
import { speechWith, words } from "./speech.ts";

/** What the choices need, as far as it could be fetched; problems are in words. */
type Loaded = {
  readonly index: ComparedIndex;
  readonly chargers: ReadonlyMap<string, ComparedCharger>;
  readonly say: Say;
  readonly problems: readonly string[];
};

/** The narrowest drawing that still shows anything, px; a narrower place scrolls. */
const leastWidth = 240;

/** Takes over the place that the page keeps for it. */
export function start(place: HTMLElement): void {
  place.hidden = false;
  if (location.protocol === "file:") {
    place.textContent = words.fromFolder;
    return;
  }
  const loader = loaderFrom(place.dataset.root ?? "", words.language);
  let choices = readChoices(location.search);
  let loaded: Loaded | undefined;

  const show = (): void => {
    if (loaded === undefined) return;
    const width = Math.max(leastWidth, place.clientWidth);
    render(<SideBySide {...{ loaded, choices, choose, width }} invented={place.dataset.invented !== undefined} />, place);
  };
  /** What was shown stays until all of the next is there; an answer that another choice has overtaken is dropped. */
  async function follow(next: Choices): Promise<void> {
    choices = next;
    const answer = await load(loader, next.chosen);
    if (choices !== next) return;
    loaded = answer;
    show();
  }
  /** Choosing writes the address, so that Back undoes it. */
  async function choose(next: Choices): Promise<void> {
    history.pushState(null, "", location.pathname + writeChoices(next));
    await follow(next);
    // A button that went away with its charger would leave the keyboard at the top of the page.
    if (document.activeElement === document.body) place.querySelector<HTMLElement>("[role=status]")?.focus();
  }

  addEventListener("popstate", () => follow(readChoices(location.search)));
  new ResizeObserver(show).observe(place);
  follow(choices);
}

type Props = {
  readonly loaded: Loaded;
  readonly choices: Choices;
  readonly choose: (choices: Choices) => void;
  readonly invented: boolean;
  readonly width: number;
};

function SideBySide({ loaded, choices, choose, invented, width }: Props) {
  const known = choices.chosen.flatMap((choice) => {
    const charger = loaded.chargers.get(choice.charger);
    return charger === undefined ? [] : [{ choice, charger }];
  });
  const entrants = lineUp(known);
  return (
    <SpeechProvider value={speechWith(loaded.say)}>
      {loaded.problems.map((problem) => (
        <p key={problem} role="alert">
          {problem}
        </p>
      ))}
      <Chooser index={loaded.index} entrants={entrants} choices={choices} choose={choose} />
      <p role="status" tabIndex={-1}>
        {statusOf(entrants)}
      </p>
      {entrants.length < fewestChargers ? null : (
        <Comparison
          entrants={entrants}
          over={choices.over}
          setOver={(over) => choose({ ...choices, over })}
          invented={invented || entrants.some(({ charger }) => charger.invented)}
          width={width}
        />
      )}
    </SpeechProvider>
  );
}

type ComparisonProps = {
  readonly entrants: readonly Entrant[];
  readonly over: Choices["over"];
  readonly setOver: (over: Choices["over"]) => void;
  readonly invented: boolean;
  readonly width: number;
};

function Comparison({ entrants, over, setOver, invented, width }: ComparisonProps) {
  const shown = { entrants, invented };
  return (
    <>
      <h2>{words.headings.tested}</h2>
      <TestedTable {...shown} />
      <h2>{words.headings.charge}</h2>
      <Profiles {...shown} over={over} setOver={setOver} width={width} />
      <h2 id={finishingOrderId}>{words.headings.first}</h2>
      <FinishingOrder entrants={entrants} />
      <h2>{words.headings.pays}</h2>
      <PayingBack entrants={entrants} />
      <h2>{words.headings.figures}</h2>
      <FiguresTable {...shown} />
      <h2>{words.headings.claims}</h2>
      <ClaimsTable {...shown} />
      <h2>{words.headings.season}</h2>
      <SeasonTable {...shown} />
      <h2>{words.headings.unseen}</h2>
      <Unseen entrants={entrants} />
    </>
  );
}

function statusOf(entrants: readonly Entrant[]): string {
  if (entrants.length === 0) return words.chooseSome;
  if (entrants.length < fewestChargers) return words.chooseOneMore;
  return fill(words.standing, { chargers: listed(entrants.map(cellLabel), words) });
}

/** Never rejects: what cannot be fetched becomes a problem in words. */
async function load(loader: Loader, chosen: Choices["chosen"]): Promise<Loaded> {
  const index = await loader.index().catch(() => undefined);
  const phrases = new Map<string, string>();
  const say: Say = (text) => phrases.get(text) ?? (words.language === "en" ? text : undefined);
  if (index === undefined) return { index: [], chargers: new Map(), say, problems: [words.listNotFetched] };
  const names = new Map(index.map(({ id, name }) => [id, name]));
  const problems: string[] = [];
  const chargers = new Map<string, ComparedCharger>();
  await Promise.all(
    [...new Set(chosen.map(({ charger }) => charger))].map(async (id) => {
      const name = names.get(id);
      // Only an address that the list names is fetched.
      const found = name === undefined ? undefined : await loader.charger(id).catch(() => undefined);
      if (found === undefined) {
        problems.push(name === undefined ? fill(words.unknown, { id }) : fill(words.figuresNotFetched, { charger: name }));
        return;
      }
      const [charger, told] = found;
      chargers.set(id, charger);
      for (const [text, meaning] of Object.entries(told)) phrases.set(text, meaning);
    }),
  );
  return { index, chargers, say, problems };
}

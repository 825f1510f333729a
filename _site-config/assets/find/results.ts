/** The answers as a table, each row made once and moved as the ranking grows. */
import type { Answer, Task } from "../../../lib/publish/find/answer.ts";
import { drawsFor, horizonFor, isCellOfMatrix } from "../../../lib/publish/find/answer.ts";
import type { Apart, AskedMode } from "../../../lib/publish/find/asked-and-apart.ts";
import { beyondEvidence } from "../../../lib/publish/find/beyond-evidence.ts";
import type { Caution } from "../../../lib/publish/find/cautions.ts";
import type { FindData, FindMode } from "../../../lib/publish/find/find-data.ts";
import { groupsOfTies } from "../../../lib/publish/find/groups-of-ties.ts";
import { energyShown, hoursShown, moneyShown, sureShown } from "../../../lib/publish/find/shown.ts";
import { cellsOf } from "../../../lib/publish/find/start-of-charge.ts";
import { voltageWarning } from "../../../lib/publish/find/voltage-warning.ts";
import { chargerPath, relativeLink, testPath } from "../../../lib/publish/links.ts";
import { withUnit } from "../../../lib/units/format.ts";
import type { Say } from "../phrases.ts";
import { type Child, element, mark } from "./elements.ts";
import { speech } from "./speech.ts";

type Row = Answer & { readonly name: string; readonly row: HTMLTableRowElement };

/** So many chargers of a group are on show until a reader asks for all: a table of a thousand rows takes a browser long to lay out. */
const mostAtFirst = 20;

const { formats, words } = speech;
const { columns: names } = words.answer;
const columns = [names.charger, names.inTime, names.ready, names.cost, names.mind, names.evidence];
const link = (to: string, words: string): HTMLAnchorElement => element("a", { href: relativeLink("find/", to) }, words);
const ah = (value: number): string => formats.formatStated(value, "");
const sentence = (clause: string): string => `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;

/** Shows what is asked, the cautions, the ranking so far and who stands apart. */
export class ResultsView {
  readonly #place: HTMLElement;
  readonly #task: Task;
  readonly #data: FindData;
  readonly #say: Say;
  readonly #rows: Row[] = [];
  readonly #table: HTMLTableElement;
  #showsAll = false;

  constructor(
    place: HTMLElement,
    task: Task,
    deadline: string,
    data: FindData,
    say: Say,
    cautions: readonly Caution[],
    apart: readonly Apart[],
  ) {
    const { question } = task;
    this.#place = place;
    this.#task = task;
    this.#data = data;
    this.#say = say;
    const caption = element(
      "caption",
      {},
      words.answer.caption(
        `${question.voltageV} V, ${ah(question.ratedAh)} Ah, ${words.kindNames[question.kind]}`,
        `${formats.formatNumber(100 * task.start.share, 0)} ± ${formats.formatNumber(100 * task.start.standardUncertainty, 0)} %`,
        withUnit(formats.formatNumber(question.airC, Number.isInteger(question.airC) ? 0 : 1), "°C"),
        deadline,
      ),
    );
    if (data.invented) caption.append(element("span", { class: "invented" }, ` ${words.invented}`));
    this.#table = element("table", { class: "cards find-answers" }, caption, headings());
    place.replaceChildren(
      element("h2", {}, words.answer.heading),
      cautionBox(cautions),
      element(
        "section",
        // A region that scrolls must be reachable by keyboard.
        { class: "scroll", tabindex: "0", "aria-label": words.answer.table },
        this.#table,
      ),
      element("p", { class: "key" }, this.#key()),
      ...standingApart(apart),
    );
  }

  /** Adds an answer; show() puts it in its place. */
  add(mode: AskedMode, answer: Answer): void {
    this.#rows.push({ ...answer, name: mode.name, row: this.#rowOf(mode, answer) });
  }

  /** Ranks what is there. A link that had the focus keeps it. */
  show(): void {
    const focused = document.activeElement;
    const advised = this.#rows.filter(({ verdict }) => verdict !== "not advised");
    const groups = groupsOfTies(advised);
    const bodies = groups.map((group, place) =>
      this.#body(words.answer.group(group.length, place, groups.length, drawsFor(this.#task.question)), group),
    );
    const notAdvised = this.#rows.filter(({ verdict }) => verdict === "not advised").sort((a, b) => (a.name < b.name ? -1 : 1));
    if (notAdvised.length > 0) bodies.push(this.#body(words.answer.notAdvised, notAdvised));
    for (const old of [...this.#table.tBodies]) old.remove();
    this.#table.append(...bodies);
    if (focused instanceof HTMLElement && this.#place.contains(focused)) focused.focus({ preventScroll: true });
  }

  #body(heading: string, rows: readonly Row[]): HTMLTableSectionElement {
    const head = element("th", { scope: "rowgroup", colspan: String(columns.length) }, heading);
    for (const [place, { row }] of rows.entries()) row.hidden = !this.#showsAll && place >= mostAtFirst;
    const rest = this.#showsAll ? 0 : rows.length - mostAtFirst;
    return element(
      "tbody",
      {},
      element("tr", { class: "group" }, head),
      ...rows.map(({ row }) => row),
      ...(rest > 0 ? [this.#rowForTheRest(rest)] : []),
    );
  }

  #rowForTheRest(count: number): HTMLTableRowElement {
    const button = element("button", { type: "button" }, words.answer.others(count));
    button.addEventListener("click", () => {
      this.#showsAll = true;
      this.show();
    });
    return element("tr", {}, element("td", { colspan: String(columns.length) }, button));
  }

  #key(): string {
    const { question, hoursLeft } = this.#task;
    return words.answer.key(drawsFor(question), formats.formatNumber(horizonFor(hoursLeft), 0), isCellOfMatrix(question));
  }

  #rowOf(mode: AskedMode, answer: Answer): HTMLTableRowElement {
    const { question } = this.#task;
    const share = element("span", { class: "quiet" }, sureShown(answer, formats));
    const cell = (label: string, ...children: readonly Child[]) => element("td", { "data-label": label }, ...children);
    const tooHigh = voltageWarning(question.kind, cellsOf(question.voltageV), mode.behaviour, speech);
    const warnings = [
      ...answer.because.map((reason) => sentence(words.against(reason, formats))),
      ...(tooHigh === undefined ? [] : [tooHigh]),
      ...beyondEvidence(question, mode, speech),
    ];
    return element(
      "tr",
      {},
      element("th", { scope: "row" }, link(chargerPath(mode.charger.id), mode.name)),
      cell(names.inTime, mark(answer.verdict, `${words.verdicts[answer.verdict]} `, share)),
      cell(names.ready, hoursShown(answer, speech)),
      cell(names.cost, ...this.#costOf(mode, answer)),
      element(
        "td",
        { "data-label": names.mind, class: "words" },
        ...leftOn(mode, this.#say),
        ...warnings.map((words) => element("p", {}, words)),
        ...notKnown(mode, this.#say),
      ),
      cell(names.evidence, evidenceOf(mode)),
    );
  }

  #costOf({ price }: FindMode, { mainsKWh }: Answer): Child[] {
    const money = moneyShown(mainsKWh, this.#task.question.pricePerKWh, this.#data.currency, speech);
    const bought =
      price === null
        ? words.answer.priceNotStated
        : words.answer.toBuy(
            withUnit(formats.formatNumber(price.amount, 2), price.currency),
            price.on === null ? null : formats.formatDay(price.on),
          );
    return [element("p", {}, bought), element("p", {}, words.answer.thisCharge(energyShown(mainsKWh, formats), money ?? null))];
  }
}

function headings(): HTMLElement {
  return element("thead", {}, element("tr", {}, ...columns.map((name) => element("th", { scope: "col" }, name))));
}

function cautionBox(cautions: readonly Caution[]): HTMLElement {
  const items = cautions.map(({ section, words: told }) =>
    element("li", {}, `${told} `, link(`cautions/#${section}`, words.cautions.sections[section])),
  );
  return element("aside", { class: "caution", "aria-label": words.cautions.name }, element("ul", {}, ...items));
}

function leftOn({ leftOnWarning }: FindMode, say: Say): HTMLElement[] {
  if (leftOnWarning === null) return [];
  const told = say(leftOnWarning);
  const why = element("span", { lang: told === undefined ? "en" : undefined }, told ?? leftOnWarning);
  return [element("p", {}, element("strong", {}, words.leftOn), " ", why)];
}

function notKnown({ unknowns }: FindMode, say: Say): HTMLElement[] {
  if (unknowns.length === 0) return [];
  const items = unknowns.map((unknown) => {
    const told = say(unknown);
    return element("li", { lang: told === undefined ? "en" : undefined }, sentence(told ?? unknown));
  });
  return [element("details", {}, element("summary", {}, words.answer.notKnown(unknowns.length)), element("ul", {}, ...items))];
}

function evidenceOf({ charger, testedOn }: FindMode): HTMLElement {
  const tests = testedOn.map(({ test, title, capacityAh, construction }) =>
    element("li", {}, link(testPath(test), title), ` (${words.kindNames[construction]}, ${ah(capacityAh)} Ah)`),
  );
  const forecast = element("li", {}, link(`${chargerPath(charger.id)}#battery`, words.answer.forecasts));
  return element("ul", { class: "evidence" }, ...tests, forecast);
}

function standingApart(apart: readonly Apart[]): HTMLElement[] {
  if (apart.length === 0) return [];
  const items = apart.map(({ mode, because }) =>
    element("li", {}, link(chargerPath(mode.charger.id), `${mode.charger.name}, ${mode.mode.name}`), `: ${because}.`),
  );
  return [element("h3", {}, words.answer.apart), element("ul", {}, ...items)];
}

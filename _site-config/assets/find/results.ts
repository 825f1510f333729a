/** The answers as a table, each row made once and moved as the ranking grows. */
import type { Answer, Task } from "../../../lib/publish/find/answer.ts";
import { drawsFor, horizonFor, isCellOfMatrix } from "../../../lib/publish/find/answer.ts";
import type { Apart, AskedMode } from "../../../lib/publish/find/asked-and-apart.ts";
import { beyondEvidence } from "../../../lib/publish/find/beyond-evidence.ts";
import type { Caution } from "../../../lib/publish/find/cautions.ts";
import type { FindData, FindMode } from "../../../lib/publish/find/find-data.ts";
import { groupsOfTies } from "../../../lib/publish/find/groups-of-ties.ts";
import { kindLabel } from "../../../lib/publish/find/question.ts";
import { energyShown, hoursShown, moneyShown, sureShown } from "../../../lib/publish/find/shown.ts";
import { cellsOf } from "../../../lib/publish/find/start-of-charge.ts";
import { voltageWarning } from "../../../lib/publish/find/voltage-warning.ts";
import { chargerPath, relativeLink, testPath } from "../../../lib/publish/links.ts";
import { formatNumber, withUnit } from "../../../lib/units/format.ts";
import { type Child, element, mark } from "./elements.ts";

type Row = Answer & { readonly name: string; readonly row: HTMLTableRowElement };

/** So many chargers of a group are on show until a reader asks for all: a table of a thousand rows takes a browser long to lay out. */
const mostAtFirst = 20;

const columns = ["Charger", "In time", "Ready after", "Cost", "Mind this", "Evidence"];
const link = (to: string, words: string): HTMLAnchorElement => element("a", { href: relativeLink("find/", to) }, words);
const sentence = (clause: string): string => `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;

/** Shows what is asked, the cautions, the ranking so far and who stands apart. */
export class ResultsView {
  readonly #place: HTMLElement;
  readonly #task: Task;
  readonly #data: FindData;
  readonly #rows: Row[] = [];
  readonly #table: HTMLTableElement;
  #showsAll = false;

  constructor(place: HTMLElement, task: Task, deadline: string, data: FindData, cautions: readonly Caution[], apart: readonly Apart[]) {
    const { question } = task;
    this.#place = place;
    this.#task = task;
    this.#data = data;
    const caption = element(
      "caption",
      {},
      `${question.voltageV} V, ${question.ratedAh} Ah, ${kindLabel(question.kind)}, ${(100 * task.start.share).toFixed(0)} ± ${(100 * task.start.standardUncertainty).toFixed(0)} % charged, ${withUnit(formatNumber(question.airC, Number.isInteger(question.airC) ? 0 : 1), "°C")}: ready by ${deadline}, projected`,
    );
    if (data.invented) caption.append(element("span", { class: "invented" }, " invented data"));
    this.#table = element("table", { class: "cards find-answers" }, caption, headings());
    place.replaceChildren(
      element("h2", {}, "Which chargers"),
      cautionBox(cautions),
      element(
        "section",
        // A region that scrolls must be reachable by keyboard.
        { class: "scroll", tabindex: "0", "aria-label": "Chargers for your battery (table)" },
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
      this.#body(headingOf(group.length, place, groups.length, drawsFor(this.#task.question)), group),
    );
    const notAdvised = this.#rows.filter(({ verdict }) => verdict === "not advised").sort((a, b) => (a.name < b.name ? -1 : 1));
    if (notAdvised.length > 0) bodies.push(this.#body("Not advised on this battery as it is", notAdvised));
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
    const button = element("button", { type: "button" }, `Show the ${count} others of this group`);
    button.addEventListener("click", () => {
      this.#showsAll = true;
      this.show();
    });
    return element("tr", {}, element("td", { colspan: String(columns.length) }, button));
  }

  #key(): string {
    const draws = drawsFor(this.#task.question);
    const same = isCellOfMatrix(this.#task.question)
      ? " Your question is a cell of the table on a charger's own page, and is answered with the same draws."
      : "";
    return `What is not known of your battery and of a charger is drawn ${draws} times, the same for all chargers; a percentage is the share of draws in time, and an interval holds the middle 95 % of them. Chargers that the draws cannot tell apart stand together, in the order of their names; nobody can pay for a place. Energy counts until the battery is full, the charger is off for good, or ${formatNumber(horizonFor(this.#task.hoursLeft), 0)} h have passed. No forecast knows of layered acid or a weak cell.${same}`;
  }

  #rowOf(mode: AskedMode, answer: Answer): HTMLTableRowElement {
    const { question } = this.#task;
    const share = element("span", { class: "quiet" }, sureShown(answer));
    const cell = (label: string, ...children: readonly Child[]) => element("td", { "data-label": label }, ...children);
    const tooHigh = voltageWarning(question.kind, cellsOf(question.voltageV), mode.behaviour);
    const warnings = [...answer.because.map(sentence), ...(tooHigh === undefined ? [] : [tooHigh]), ...beyondEvidence(question, mode)];
    return element(
      "tr",
      {},
      element("th", { scope: "row" }, link(chargerPath(mode.charger.id), mode.name)),
      cell("In time", mark(answer.verdict, `${answer.verdict} `, share)),
      cell("Ready after", hoursShown(answer.hoursToReady, answer.horizonH)),
      cell("Cost", ...this.#costOf(mode, answer)),
      element("td", { "data-label": "Mind this", class: "words" }, ...warnings.map((words) => element("p", {}, words)), ...notKnown(mode)),
      cell("Evidence", evidenceOf(mode)),
    );
  }

  #costOf({ price }: FindMode, { mainsKWh }: Answer): Child[] {
    const money = moneyShown(mainsKWh, this.#task.question.pricePerKWh, this.#data.currency);
    const bought =
      price === null
        ? "Price not stated"
        : `${withUnit(formatNumber(price.amount, 2), price.currency)} to buy, ${price.on === null ? "on a day not stated" : price.on}`;
    return [element("p", {}, bought), element("p", {}, `This charge: ${energyShown(mainsKWh)}${money === undefined ? "" : `, ${money}`}`)];
  }
}

function headings(): HTMLElement {
  return element("thead", {}, element("tr", {}, ...columns.map((name) => element("th", { scope: "col" }, name))));
}

function headingOf(size: number, place: number, groups: number, draws: number): string {
  const tied = size > 1 ? `: ${size} that ${draws} draws cannot tell apart` : "";
  if (groups === 1) return size > 1 ? `All alike${tied}` : "The only one";
  return `${place === 0 ? "Likeliest to be in time" : "Less likely than those above"}${tied}`;
}

const sectionWords = { frozen: "On frozen batteries", sealed: "On sealed batteries", hydrogen: "On hydrogen" } as const;

function cautionBox(cautions: readonly Caution[]): HTMLElement {
  const items = cautions.map(({ section, words }) => element("li", {}, `${words} `, link(`cautions/#${section}`, sectionWords[section])));
  return element("aside", { class: "caution", "aria-label": "Cautions for this battery" }, element("ul", {}, ...items));
}

function notKnown({ unknowns }: FindMode): HTMLElement[] {
  if (unknowns.length === 0) return [];
  const items = unknowns.map((unknown) => element("li", {}, sentence(unknown)));
  return [element("details", {}, element("summary", {}, `Not known of it: ${unknowns.length}`), element("ul", {}, ...items))];
}

function evidenceOf({ charger, testedOn }: FindMode): HTMLElement {
  const tests = testedOn.map(({ test, title, capacityAh, construction }) =>
    element("li", {}, link(testPath(test), title), ` (${kindLabel(construction)}, ${capacityAh} Ah)`),
  );
  const forecast = element("li", {}, link(`${chargerPath(charger.id)}#battery`, "its forecasts"));
  return element("ul", { class: "evidence" }, ...tests, forecast);
}

function standingApart(apart: readonly Apart[]): HTMLElement[] {
  if (apart.length === 0) return [];
  const items = apart.map(({ mode, because }) =>
    element("li", {}, link(chargerPath(mode.charger.id), `${mode.charger.name}, ${mode.mode.name}`), `: ${because}.`),
  );
  return [element("h3", {}, "Not put to the question"), element("ul", {}, ...items)];
}

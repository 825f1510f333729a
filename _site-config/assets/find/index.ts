/** Asks every charger a reader's question. The same file is the page's script and its worker. */
import { mostPromisingFirst, type Task } from "../../../lib/publish/find/answer.ts";
import { askedAndApart } from "../../../lib/publish/find/asked-and-apart.ts";
import { cautionsFor } from "../../../lib/publish/find/cautions.ts";
import { complaintOfDeadline, deadlineOf, hoursUntil } from "../../../lib/publish/find/deadline.ts";
import { type FindData, findDataPath } from "../../../lib/publish/find/find-data.ts";
import {
  type Complaint,
  complaintOf,
  defaultQuestion,
  type Question,
  questionFields,
  readQuestion,
  writeQuestion,
} from "../../../lib/publish/find/question.ts";
import { isComplaint, startOfCharge } from "../../../lib/publish/find/start-of-charge.ts";
import { formatDuration } from "../../../lib/units/format.ts";
import { fillForm, markFault, questionIn, showFieldsInUse } from "./form.ts";
import { ResultsView } from "./results.ts";
import { listenForWork, type Told, type Work } from "./work.ts";

if (typeof document === "undefined") listenForWork();
else {
  const form = document.querySelector<HTMLFormElement>("form[data-find]");
  const place = document.querySelector<HTMLElement>("[data-find-results]");
  const script = document.currentScript;
  if (form !== null && place !== null && script instanceof HTMLScriptElement) setUp(form, place, script.src);
}

function setUp(form: HTMLFormElement, place: HTMLElement, scriptAddress: string): void {
  const status = form.querySelector<HTMLElement>("[data-find-status]");
  let worker: Worker | undefined;
  let data: FindData | undefined;

  const say = (words: string): void => {
    if (status) status.textContent = words;
  };

  function refuse({ field, words }: Complaint): void {
    markFault(form, field);
    place.replaceChildren();
    say(words);
  }

  function ask(question: Question): void {
    worker?.terminate();
    if (data === undefined) return;
    const now = new Date();
    const deadline = deadlineOf(question, now);
    const hoursLeft = deadline === undefined ? undefined : hoursUntil(deadline, now);
    const complaint = complaintOf(question);
    const start = startOfCharge(question);
    const tooLate = complaintOfDeadline(hoursLeft);
    if (complaint !== undefined) refuse(complaint);
    else if (isComplaint(start)) refuse(start);
    else if (tooLate !== undefined || deadline === undefined || hoursLeft === undefined)
      refuse({ field: question.by === "at" ? questionFields.at : questionFields.by, words: tooLate ?? "" });
    else {
      markFault(form, undefined);
      answer({ question, start, hoursLeft }, `${dayAndTime(deadline)}, ${formatDuration(hoursLeft)} from now`, data);
    }
  }

  function answer(task: Task, deadline: string, data: FindData): void {
    const { asked, apart } = askedAndApart(task.question, data.modes);
    const modes = mostPromisingFirst(task, asked);
    const view = new ResultsView(place, task, deadline, data, cautionsFor(task.question, task.start), apart);
    if (modes.length === 0) {
      say("No charger here was tested on such a battery. Those below stand apart, each with its reason.");
      return;
    }
    say(`Working out ${modes.length} chargers…`);
    let done = 0;
    // Shown often at first and ever more seldom, so that a long list does not keep the page busy with moving rows.
    let [shownAt, pauseMs] = [performance.now(), 300];
    worker = new Worker(scriptAddress);
    worker.addEventListener("error", () => say("The forecasts could not be run in this browser. The table below stands without them."));
    worker.addEventListener("message", ({ data: { place, answer } }: MessageEvent<Told>) => {
      const mode = modes[place];
      if (mode === undefined) return;
      view.add(mode, answer);
      done += 1;
      const isLast = done === modes.length;
      if (!isLast && performance.now() - shownAt < pauseMs) return;
      view.show();
      [shownAt, pauseMs] = [performance.now(), 2 * pauseMs];
      say(isLast ? `${done} of ${done} chargers worked out.` : `${done} of ${modes.length} chargers worked out, most promising first…`);
    });
    worker.postMessage({ task, modes } satisfies Work);
  }

  function askAnew(): void {
    showFieldsInUse(form);
    const question = questionIn(form);
    const url = new URL(location.href);
    url.search = writeQuestion(question).toString();
    url.hash = "";
    if (url.href !== location.href) history.pushState(null, "", url);
    ask(question);
  }

  function restore(): void {
    const query = new URLSearchParams(location.search);
    const question = readQuestion((field) => query.get(field));
    fillForm(form, question);
    ask(question);
  }

  form.addEventListener("change", askAnew);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    askAnew();
  });
  form.addEventListener("reset", (event) => {
    event.preventDefault();
    fillForm(form, defaultQuestion);
    askAnew();
  });
  addEventListener("popstate", restore);
  form.hidden = false;
  fillForm(
    form,
    readQuestion((field) => new URLSearchParams(location.search).get(field)),
  );
  say("Fetching what is known of the chargers…");
  fetch(`${form.dataset.find ?? ""}${findDataPath}`)
    .then((response) => {
      if (!response.ok) throw new Error(`the server answered ${response.status}`);
      return response.json() as Promise<FindData>;
    })
    .then(
      (fetched) => {
        data = fetched;
        restore();
      },
      (error: unknown) => say(whyNotFetched(error)),
    );
}

/** A browser lets no page from a folder read a file beside it. */
function whyNotFetched(error: unknown): string {
  if (location.protocol === "file:")
    return "Opened straight from a folder, this page cannot read its data: browsers do not allow it. Put the site on any web server, or use the table below.";
  return `What is known of the chargers could not be fetched: ${error instanceof Error ? error.message : String(error)}. The table below stands without it.`;
}

function dayAndTime(instant: Date): string {
  return new Intl.DateTimeFormat(document.documentElement.lang || "en", {
    weekday: "short",
    day: "numeric",
    month: "long",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
  }).format(instant);
}

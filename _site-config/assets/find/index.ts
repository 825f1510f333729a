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
import { asItIs, fetchPhrases, type Say } from "../phrases.ts";
import { fillForm, markFault, questionIn, showFieldsInUse } from "./form.ts";
import { ResultsView } from "./results.ts";
import { speech } from "./speech.ts";
import { listenForWork, type Told, type Work } from "./work.ts";

const { words } = speech;

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
  let phrases: Say = asItIs;

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
    const complaint = complaintOf(question, speech);
    const start = startOfCharge(question, speech);
    const tooLate = complaintOfDeadline(hoursLeft, speech);
    if (complaint !== undefined) refuse(complaint);
    else if (isComplaint(start)) refuse(start);
    else if (tooLate !== undefined || deadline === undefined || hoursLeft === undefined)
      refuse({ field: question.by === "at" ? questionFields.at : questionFields.by, words: tooLate ?? "" });
    else {
      markFault(form, undefined);
      answer({ question, start, hoursLeft }, words.answer.fromNow(dayAndTime(deadline), speech.formats.formatDuration(hoursLeft)), data);
    }
  }

  function answer(task: Task, deadline: string, data: FindData): void {
    const { asked, apart } = askedAndApart(task.question, data.modes, speech);
    const modes = mostPromisingFirst(task, asked);
    const view = new ResultsView(place, task, deadline, data, phrases, cautionsFor(task.question, task.start, speech), apart);
    if (modes.length === 0) {
      say(words.status.noneAsked);
      return;
    }
    say(words.status.working(modes.length));
    let done = 0;
    // Shown often at first and ever more seldom, so that a long list does not keep the page busy with moving rows.
    let [shownAt, pauseMs] = [performance.now(), 300];
    worker = new Worker(scriptAddress);
    worker.addEventListener("error", () => say(words.status.failed));
    worker.addEventListener("message", ({ data: { place, answer } }: MessageEvent<Told>) => {
      const mode = modes[place];
      if (mode === undefined) return;
      view.add(mode, answer);
      done += 1;
      const isLast = done === modes.length;
      if (!isLast && performance.now() - shownAt < pauseMs) return;
      view.show();
      [shownAt, pauseMs] = [performance.now(), 2 * pauseMs];
      say(isLast ? words.status.done(done) : words.status.doneSoFar(done, modes.length));
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
  say(words.status.fetching);
  const address = `${form.dataset.find ?? ""}${findDataPath}`;
  Promise.all([fetchData(address), fetchPhrases(address)]).then(
    ([fetched, translated]) => {
      data = fetched;
      phrases = translated;
      restore();
    },
    (error: unknown) => say(whyNotFetched(error)),
  );
}

async function fetchData(address: string): Promise<FindData> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`the server answered ${response.status}`);
  return response.json() as Promise<FindData>;
}

/** A browser lets no page from a folder read a file beside it. */
function whyNotFetched(error: unknown): string {
  if (location.protocol === "file:") return words.status.fromFolder;
  return words.status.notFetched(error instanceof Error ? error.message : String(error));
}

function dayAndTime(instant: Date): string {
  return new Intl.DateTimeFormat(speech.language, {
    weekday: "short",
    day: "numeric",
    month: "long",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
  }).format(instant);
}

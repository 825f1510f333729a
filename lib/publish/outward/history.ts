/**
 * What happened to a charger's published results, and when, as far as the workspace tells: publication of each test, its revisions, and
 * corrections of the charger. The build's own time is no part of it, so two builds of the same workspace tell the same history.
 */
import { testPath } from "../links.ts";
import type { ChargerResult, TestResult } from "../results.ts";
import type { ResultsFolder } from "../results-folder.ts";
import { versionsPath } from "./addresses.ts";
import type { OutwardSpeech } from "./outward-speech.ts";

export type ResultEvent = {
  /** Never changes for the same event, whatever is written into the records later on other days; for feeds. */
  readonly id: string;
  /** ISO date. */
  readonly on: string;
  /** "published", "revision" for a test; the kind of correction for a charger. */
  readonly kind: string;
  readonly what: string;
  /** The title of the test whose publication this is; null for any other event. */
  readonly published: string | null;
  readonly why: string | null;
  /** null where the records do not say: a test's revision is noted without it. */
  readonly changesVerdict: boolean | null;
  /** Path of the page that shows it. */
  readonly path: string;
  readonly invented: boolean;
};

/** The day a test was published, where its record says so; anything that is not an ISO date counts as not stated. */
export function publishedOn(test: TestResult): string | null {
  const value = test.facts.find((fact) => fact.label === "Published on")?.value ?? "";
  return /^\d{4}-\d{2}-\d{2}$/.test(value) ? value : null;
}

/** Whether the verdict changed, as a sentence; "" where the records do not say. */
export function verdictWords({ changesVerdict }: ResultEvent): string {
  if (changesVerdict === null) return "";
  return changesVerdict ? "The verdict changed." : "The verdict stands.";
}

/** Everything dated that touches a test, oldest first; [] where its record states no date. */
export function eventsOfTest(test: TestResult): ResultEvent[] {
  const day = publishedOn(test);
  const publication = {
    kind: "published",
    what: `Results of the test “${test.title}” published`,
    published: test.title,
    why: null,
    changesVerdict: null,
    path: testPath(test.id),
    invented: test.invented,
  };
  const revisions = test.revisions.map(({ on, what, why }) => ({
    on,
    kind: "revision",
    what,
    published: null,
    why,
    changesVerdict: null,
    path: `${testPath(test.id)}#conditions`,
    invented: test.invented,
  }));
  return inOrder([...(day === null ? [] : [{ on: day, ...publication }]), ...revisions], `tests/${test.id}`);
}

/** Everything dated that touches a charger's results, oldest first; [] where its records state no date. */
export function eventsOfCharger(charger: ChargerResult, tests: readonly TestResult[]): ResultEvent[] {
  return [...tests.flatMap(eventsOfTest), ...correctionsOf(charger)].sort(byDay);
}

function correctionsOf(charger: ChargerResult): ResultEvent[] {
  const corrections = charger.corrections.map(({ on, kind, what, why, changesVerdict }) => ({
    on,
    kind,
    what,
    published: null,
    why,
    changesVerdict,
    path: versionsPath(charger.id),
    invented: charger.invented,
  }));
  return inOrder(corrections, `chargers/${charger.id}`);
}

/** Everything dated on the site, oldest first, each event once. */
export function eventsOfSite({ index, test, charger }: ResultsFolder): ResultEvent[] {
  return [
    ...index.tests.flatMap(({ id }) => eventsOfTest(test(id))),
    ...index.chargers.flatMap(({ id }) => correctionsOf(charger(id))),
  ].sort(byDay);
}

/** The tests of a charger, in its own order. */
export function testsOf(results: ResultsFolder, charger: string): TestResult[] {
  return results.charger(charger).tests.map((test) => results.test(test.id));
}

/** The version of a result where no record states a date. */
export const undated = "undated";

/**
 * The version of a result: the day of the last event that touches it. A day and not a count, so that an event noted late renumbers
 * nothing that was quoted before.
 */
export function versionOf(events: readonly ResultEvent[]): string {
  return events.at(-1)?.on ?? undated;
}

/** A version in words: "of 2026-04-02", "of a day not stated". */
export const versionWords = (version: string, { outward, formats }: OutwardSpeech): string =>
  outward.ofDay(version === undated ? null : formats.formatDay(version));

/** All versions there were, newest first, each with what happened on its day. */
export function versionsOf(events: readonly ResultEvent[]): { version: string; events: ResultEvent[] }[] {
  const days = [...new Set(events.map((event) => event.on))].sort().reverse();
  return days.map((version) => ({ version, events: events.filter((event) => event.on === version) }));
}

const byDay = (a: { on: string }, b: { on: string }): number => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0);

/** Gives each event an id of its subject, its day, and its place among those of that day. */
function inOrder(events: readonly Omit<ResultEvent, "id">[], subject: string): ResultEvent[] {
  const seen = new Map<string, number>();
  return events
    .map((event) => {
      const key = `${subject}/${event.kind}/${event.on}`;
      const count = (seen.get(key) ?? 0) + 1;
      seen.set(key, count);
      return { ...event, id: count === 1 ? key : `${key}/${count}` };
    })
    .sort(byDay);
}

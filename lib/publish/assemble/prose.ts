/** The reviewer's words, with the figures they call by name filled in and linked. */
import type { Figure } from "../../nouns/figure.ts";
import type { Problem } from "../../nouns/problem.ts";
import { type Prose, plainText, renderProse } from "../../read/prose.ts";
import { nearest } from "../../read/record.ts";
import { formatFigure } from "../../units/format.ts";
import { figureAnchor, relativeLink, testPath } from "../links.ts";
import type { ProseResult, TestResult } from "../results.ts";

/** A figure called by name: [[charge-recorded in first-run]] or [[charge-recorded of connection/2 in first-run]]. */
const call = /^\[\[\s*([a-z0-9-]+)(?:\s+of\s+([^\]\s]+))?\s+in\s+([a-z0-9-]+)\s*\]\]$/;
const anyCall = /\[\[[^\]]*\]\]/g;

/** The tests that words call figures of, by id, each once; whether or not there is such a test. */
export function testsCalled({ body }: Pick<Prose, "body">): string[] {
  return [...new Set([...body.matchAll(anyCall)].flatMap(([text]) => call.exec(text)?.[3] ?? []))];
}

/**
 * Renders words and fills in figures.
 *
 * @param page      path of the page they will stand on, from the site's root
 * @param topLevel  heading level for the highest heading of the words
 * @param tests     those that the words call figures of, as far as they are published; more do no harm
 * @param published ids of all published tests, for telling which names there are
 * @returns the words, and a problem for each call that names no figure; words with such a call are not published, with a hole in them
 */
export function fillProse(
  prose: Prose,
  id: string,
  page: string,
  topLevel: number,
  tests: readonly TestResult[],
  siteLanguage: string,
  published: readonly string[] = tests.map((test) => test.id),
): { value: ProseResult | undefined; problems: Problem[] } {
  const problems: Problem[] = [];
  const links: string[] = [];
  const keep = (html: string): string => `\uE000${links.push(html) - 1}\uE001`;
  const body = prose.body
    .split("\n")
    .map((line, index) =>
      line.replace(anyCall, (text, offset: number) => {
        const place = { file: prose.file, line: prose.bodyLine + index, column: offset + 1 };
        const [, figureId, of, testId] = call.exec(text) ?? [];
        if (figureId === undefined || testId === undefined) {
          problems.push(notACall(text, place));
          return "";
        }
        const test = tests.find((candidate) => candidate.id === testId);
        const figures = test === undefined ? [] : allFigures(test);
        const figure = figures.find((candidate) => candidate.id === figureId && candidate.of === (of ?? "test"));
        if (test === undefined || figure === undefined) {
          problems.push(unknownFigure(text, place, testId, figureId, of ?? "test", published, figures));
          return "";
        }
        const target = `${testPath(test.id)}#${figureAnchor(figure)}`;
        return keep(`<a class="figure-link" href="${escapeAttribute(relativeLink(page, target))}">${escapeText(formatFigure(figure))}</a>`);
      }),
    )
    .join("\n");
  if (problems.length > 0) return { value: undefined, problems };
  const html = renderProse(body, topLevel).replace(/\uE000(\d+)\uE001/g, (_, index: string) => links[Number(index)] ?? "");
  return {
    value: {
      id,
      title: prose.head.title,
      language: prose.head.language ?? siteLanguage,
      by: prose.head.by ?? null,
      on: prose.head.on ?? null,
      html,
      text: plainText(html),
    },
    problems,
  };
}

function notACall(text: string, place: Problem["place"]): Problem {
  return {
    id: "prose-figure",
    level: "error",
    place,
    found: `"${text}"`,
    expected: "[[figure in test]] or [[figure of connection/2 in test]]",
    mend: "name the figure and the test, such as [[charge-recorded in first-run]]",
  };
}

function allFigures(test: TestResult): Figure[] {
  return [
    ...test.figures,
    ...test.connections.flatMap((connection) => connection.figures),
    ...test.recordings.flatMap((recording) => recording.figures),
    ...test.readings.flatMap((reading) => reading.figures),
  ];
}

function unknownFigure(
  text: string,
  place: Problem["place"],
  testId: string,
  figureId: string,
  of: string,
  published: readonly string[],
  figures: readonly Figure[],
): Problem {
  const names = figures.filter((figure) => figure.of === of).map((figure) => figure.id);
  const isTestUnknown = figures.length === 0;
  const known = isTestUnknown ? published : names.length > 0 ? names : [...new Set(figures.map((figure) => figure.of))];
  const near = nearest(isTestUnknown ? testId : names.length > 0 ? figureId : of, known);
  return {
    id: "prose-figure",
    level: "error",
    place,
    found: `"${text}"`,
    expected: isTestUnknown ? `a published test: ${known.join(", ")}` : `one of ${known.join(", ")}`,
    mend: near === undefined ? "correct the name" : `did you mean "${near}"?`,
  };
}

function escapeText(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
}

function escapeAttribute(text: string): string {
  return escapeText(text).replace(/"/g, "&quot;");
}

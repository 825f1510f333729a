/** Finds the place on the site where a figure, named "of#id", is shown in full. */
import type { Figure } from "../nouns/figure.ts";
import { chargerPath, figureAnchor, testPath } from "./links.ts";
import type { ChargerResult, TestResult } from "./results.ts";

/** Every figure that a test's page shows, in no particular order. */
export function figuresOfTest(test: TestResult): Figure[] {
  return [
    ...test.figures,
    ...test.connections.flatMap((connection) => connection.figures),
    ...test.recordings.flatMap((recording) => recording.figures),
    ...test.readings.flatMap((reading) => reading.figures),
  ];
}

const nameOf = (figure: Figure) => `${figure.of}#${figure.id}`;

/**
 * Looks a figure up by "of#id", or by "<test>/of#id" where a reference names its test; the first test that has it wins.
 * @returns the path from the site's root with the fragment, undefined where no page shows such a figure
 */
export function figureFinder(tests: readonly TestResult[], charger?: ChargerResult): (reference: string) => string | undefined {
  const targets = new Map<string, string>();
  const add = (name: string, target: string) => targets.has(name) || targets.set(name, target);
  const ofCharger = [
    ...(charger?.figures ?? []),
    ...(charger?.modes ?? []).flatMap((mode) => [
      ...(mode.forecast?.reference?.figures ?? []),
      ...(mode.forecast?.ownBatteries ?? []).flatMap(({ figures }) => figures),
      ...mode.repeats.flatMap(({ figures }) => figures),
    ]),
  ];
  for (const figure of ofCharger) add(nameOf(figure), `${chargerPath(charger?.id ?? "")}#${figureAnchor(figure)}`);
  for (const test of tests) {
    for (const figure of figuresOfTest(test)) {
      const target = `${testPath(test.id)}#${figureAnchor(figure)}`;
      add(nameOf(figure), target);
      add(`${test.id}/${nameOf(figure)}`, target);
    }
  }
  return (reference) => targets.get(reference);
}

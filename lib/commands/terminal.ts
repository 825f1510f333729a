/** What commands say: a bar on a terminal, plain lines elsewhere. The only place that writes to the console. */
import { Presets, SingleBar } from "cli-progress";
import { formatProblem, type Problem } from "../nouns/problem.ts";

export type Progress = { update(done: number, total: number): void; stop(): void };

/** Shows the progress of one long piece of work. */
export function showProgress(what: string): Progress {
  if (process.stderr.isTTY === true) {
    const bar = new SingleBar({ format: `${what} {bar} {value}/{total}`, hideCursor: true, clearOnComplete: true }, Presets.shades_classic);
    let isStarted = false;
    return {
      update(done, total) {
        if (!isStarted) bar.start(total, done);
        else bar.update(done);
        isStarted = true;
      },
      stop() {
        if (isStarted) bar.stop();
      },
    };
  }
  let told = 0;
  return {
    update(done, total) {
      // A line each quarter is enough for a log that people scroll through.
      const quarter = total === 0 ? 4 : Math.floor((4 * done) / total);
      if (quarter <= told && done !== total) return;
      if (told >= 4) return;
      told = quarter;
      tell(`${what}: ${done} of ${total}`);
    },
    stop() {},
  };
}

/** Prints a line for people. */
export function tell(text: string): void {
  process.stderr.write(`${text}\n`);
}

/** Prints problems to standard output, where a program can take them up. */
export function printProblems(problems: readonly Problem[]): void {
  for (const problem of problems) process.stdout.write(`${showControls(formatProblem(problem))}\n`);
}

/** Prints what a command was asked for to standard output. */
export function print(text: string): void {
  process.stdout.write(`${showControls(text)}\n`);
}

/** Control characters other than line breaks as visible pictures: text quoted from a file must not be able to steer the terminal. */
export function showControls(text: string): string {
  return [...text].map((character) => (isControl(character) ? picture(character) : character)).join("");
}

function isControl(character: string): boolean {
  const code = character.charCodeAt(0);
  return (code < 32 && character !== "\n") || (code >= 127 && code < 160);
}

/** U+2400 and the next show the control characters below 32; U+2426 stands for the rest. */
function picture(character: string): string {
  const code = character.charCodeAt(0);
  return code < 32 ? String.fromCharCode(0x2400 + code) : "\u2426";
}

/** "1 error, 3 doubts". */
export function countProblems(problems: readonly Problem[]): string {
  const errors = problems.filter((problem) => problem.level === "error").length;
  return `${count(errors, "error")}, ${count(problems.length - errors, "doubt")}`;
}

/** "1 row", "2 rows"; for words whose plural ends in s. */
export function count(number: number, word: string): string {
  return number === 1 ? `1 ${word}` : `${number} ${word}s`;
}

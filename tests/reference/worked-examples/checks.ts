/** Every worked example beside our value. */
import { type Check, compare, notComputed } from "../check.ts";
import { field, readReferenceTable } from "../read-table.ts";
import { evaluators, type Inputs, notReproduced } from "./evaluators.ts";

export function checkWorkedExamples(): Check[] {
  return readReferenceTable("worked-examples/worked-examples.csv").map((row) => {
    const id = field(row, "id");
    const expected = Number(field(row, "expected"));
    const check = {
      id,
      group: "Worked examples",
      quantity: field(row, "quantity"),
      expected: Number.isNaN(expected) ? field(row, "expected") : expected,
      tolerance: parseTolerance(field(row, "tolerance"), expected),
      unit: field(row, "unit").replace(/^(-|text)$/, ""),
      reason: `${field(row, "confidence")}: ${field(row, "source")}`,
    };
    const reason = notReproduced[id];
    if (reason !== undefined) return notComputed(check, reason);
    const evaluate = evaluators[id];
    if (evaluate === undefined) throw new Error(`${id} is neither computed nor listed as not reproduced`);
    return compare(check, evaluate(parseInputs(id, field(row, "inputs"))));
  });
}

function parseTolerance(text: string, expected: number): number {
  if (text === "-") return 0;
  const [size, kind] = text.split(" ");
  return Number(size) * (kind === "rel" ? Math.abs(expected) : 1);
}

function parseInputs(id: string, text: string): Inputs {
  const values = new Map<string, number>();
  for (const pair of text.split(/[;,]/)) {
    const [name, value] = pair.split("=");
    // A unit may follow the number: "reading=14.40 V".
    if (name !== undefined && value !== undefined) values.set(name.trim(), Number.parseFloat(value));
  }
  return (name) => {
    const value = values.get(name);
    if (value === undefined || Number.isNaN(value)) throw new Error(`${id} has no number ${name} in "${text}"`);
    return value;
  };
}

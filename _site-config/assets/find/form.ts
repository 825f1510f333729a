/** The form: what is asked in it, which of its fields matter, and which one is at fault. */
import { type Question, questionFields, readQuestion } from "../../../lib/publish/find/question.ts";

const fieldOf = (form: HTMLFormElement, name: string): HTMLInputElement | HTMLSelectElement | null =>
  form.querySelector<HTMLInputElement | HTMLSelectElement>(`[name="${name}"]`);

/** The question as the form holds it. A number field left empty is the default; one that holds no number is none. */
export function questionIn(form: HTMLFormElement): Question {
  return readQuestion((name) => {
    const field = fieldOf(form, name);
    return field?.validity.badInput === true ? "not a number" : field?.value;
  });
}

/** Puts a question into the form. */
export function fillForm(form: HTMLFormElement, question: Question): void {
  for (const name of Object.keys(questionFields) as (keyof Question)[]) {
    const field = fieldOf(form, questionFields[name]);
    const value = question[name];
    if (field !== null) field.value = typeof value === "number" && Number.isNaN(value) ? "" : String(value);
  }
  showFieldsInUse(form);
}

/** A reading is asked for only where it was chosen. */
export function showFieldsInUse(form: HTMLFormElement): void {
  const { flat, by } = questionIn(form);
  const inUse: Partial<Record<keyof Question, boolean>> = {
    restV: flat === "rest-voltage",
    densityAt25C: flat === "density",
    at: by === "at",
  };
  for (const name of Object.keys(inUse) as (keyof Question)[]) {
    const field = fieldOf(form, questionFields[name]);
    const row = field?.closest("p");
    if (row) row.hidden = inUse[name] !== true;
  }
}

/** Marks the field at fault, and no other. */
export function markFault(form: HTMLFormElement, atFault: string | undefined): void {
  for (const name of Object.values(questionFields)) {
    const field = fieldOf(form, name);
    if (name === atFault) field?.setAttribute("aria-invalid", "true");
    else field?.removeAttribute("aria-invalid");
  }
}

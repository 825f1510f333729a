/** Results that tell what is read of them, field by field. */
import type { ResultsFolder } from "../results-folder.ts";
import type { Source } from "./site-record.ts";

export const indexField = (field: string): Source => `index#${field}`;
export const testField = (id: string, field: string): Source => `test/${id}#${field}`;
export const chargerField = (id: string, field: string): Source => `charger/${id}#${field}`;
export const rowsOfCharger = (id: string): Source => `rows/${id}`;

/** @param reads  told each time a field is read, and of all fields where all are asked for */
export function watchedResults(results: ResultsFolder, reads: (source: Source) => void): ResultsFolder {
  const once = <T extends object>(load: (id: string) => T, source: (id: string, field: string) => Source) => {
    const watched = new Map<string, T>();
    return (id: string): T => {
      const known = watched.get(id) ?? watchedFields(load(id), (field) => reads(source(id, field)));
      watched.set(id, known);
      return known;
    };
  };
  return {
    index: watchedFields(results.index, (field) => reads(indexField(field))),
    test: once(results.test, testField),
    charger: once(results.charger, chargerField),
    rowsOf(charger) {
      reads(rowsOfCharger(charger));
      return results.rowsOf(charger);
    },
    testsOf(charger) {
      reads(rowsOfCharger(charger));
      return results.testsOf(charger);
    },
  };
}

function watchedFields<T extends object>(value: T, reads: (field: string) => void): T {
  const told = (field: string | symbol): void => {
    // Of a field that is not there it is noted too: it may be there next time.
    if (typeof field === "string") reads(field);
  };
  return new Proxy(value, {
    get(target, field) {
      told(field);
      return Reflect.get(target, field);
    },
    has(target, field) {
      told(field);
      return Reflect.has(target, field);
    },
    ownKeys(target) {
      const fields = Reflect.ownKeys(target);
      fields.forEach(told);
      return fields;
    },
  });
}

/** The word of a closed vocabulary for an id of the results; an id that the vocabulary does not know comes back as it is. */
export function wordFor(table: Readonly<Record<string, string>>, id: string): string {
  return Object.hasOwn(table, id) ? (table[id] ?? id) : id;
}

/** Results give reasons as bare clauses; on a page they stand as sentences. */

/**
 * A clause with a capital and a full stop. A first word that is a name, a number or a file keeps its letters:
 * only a plain lower-case word followed by a space, comma or colon is capitalised. An empty clause stays empty.
 */
export function sentence(clause: string): string {
  const text = clause.trim();
  const begun = /^\p{Ll}+['’]?\p{Ll}*(?=[\s,:;.]|$)/u.test(text) ? text.charAt(0).toUpperCase() + text.slice(1) : text;
  return begun === "" || /[.!?…]["”“)]?$/.test(begun) ? begun : `${begun}.`;
}

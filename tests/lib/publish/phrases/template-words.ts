/** The words of the templates in a source file: runs of text between the values that a sentence is composed of. */

/** A run of words, and the line it begins on. */
export type Words = { readonly line: number; readonly text: string };

/**
 * Every run of words in the strings and templates of a TypeScript source, what stands inside of a template's values included.
 * Comments and regular expressions are passed over. Good for our own formatted sources; it is no parser.
 */
export function wordsIn(source: string): Words[] {
  const found: Words[] = [];
  readCode(0, undefined);
  return found;

  function add(from: number, text: string): void {
    found.push({ line: source.slice(0, from).split("\n").length, text: text.replace(/\\(["'`\\])/g, "$1") });
  }

  /** Reads code from a place on, up to the brace that closes a template's value or to the end; gives the place behind it. */
  function readCode(from: number, closing: "}" | undefined): number {
    let at = from;
    for (let depth = 0; at < source.length; ) {
      const rest = source.slice(at, at + 200);
      const passed = /^(\/\/[^\n]*|\/\*)/.exec(rest)?.[0];
      if (passed === "/*") at = source.indexOf("*/", at) + 2;
      else if (passed !== undefined) at = endOfLine(at);
      else if (rest.startsWith("`")) at = readTemplate(at + 1);
      else if (/^["']/.test(rest)) at = readString(at);
      else if (isRegex(at)) at += /^\/(\[(\\.|[^\]\\])*\]|\\.|[^/\\[])+\/\w*/.exec(rest)?.[0].length ?? 1;
      else {
        if (rest.startsWith("{")) depth++;
        if (rest.startsWith("}") && depth-- === 0 && closing !== undefined) return at + 1;
        at++;
      }
    }
    return at;
  }

  function endOfLine(at: number): number {
    const end = source.indexOf("\n", at);
    return end === -1 ? source.length : end;
  }

  function readString(from: number): number {
    const end = endOfQuoted(from, source.charAt(from));
    add(from, source.slice(from + 1, end));
    return end + 1;
  }

  function endOfQuoted(from: number, quote: string): number {
    let at = from + 1;
    while (at < source.length && source.charAt(at) !== quote) at += source.charAt(at) === "\\" ? 2 : 1;
    return at;
  }

  function readTemplate(from: number): number {
    let at = from;
    let start = from;
    while (at < source.length && source.charAt(at) !== "`") {
      if (source.startsWith("${", at)) {
        add(start, source.slice(start, at));
        at = readCode(at + 2, "}");
        start = at;
      } else at += source.charAt(at) === "\\" ? 2 : 1;
    }
    add(start, source.slice(start, at));
    return at + 1;
  }

  /** A slash begins a regular expression where a value is expected. */
  function isRegex(at: number): boolean {
    return source.charAt(at) === "/" && /[=(,:[!&|?]\s*$/.test(source.slice(Math.max(0, at - 40), at));
  }
}

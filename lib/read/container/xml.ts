/** A reader of the plain XML in spreadsheet files: elements, attributes, text. Document types are refused, since they can unfold without end. */
import { ContainerFault } from "./limits.ts";

export type XmlHandler = {
  /** `attributes` is the tag's raw text behind its name; attribute() looks one up. */
  open(name: string, attributes: string): void;
  close(name: string): void;
  text(text: string): void;
};

/** Longer than any tag or text of a cell; a piece without an end is no spreadsheet. */
const longestPiece = 1 << 20;

/** Takes a document's text in pieces and calls the handler for each element and text, in order. Names keep their prefix. */
export class XmlReader {
  readonly #handler: XmlHandler;
  #pending = "";
  #depth = 0;

  constructor(handler: XmlHandler) {
    this.#handler = handler;
  }

  write(chunk: string): void {
    let text = this.#pending + chunk;
    let from = 0;
    for (;;) {
      const start = text.indexOf("<", from);
      if (start < 0) break;
      const end = endOfTag(text, start);
      if (end < 0) {
        // Text before a tag that is cut off waits with it: it might be cut off itself.
        text = text.slice(from);
        from = 0;
        if (text.length > longestPiece) throw notXml("a tag without an end");
        break;
      }
      if (start > from) this.#handler.text(unescapeXml(text.slice(from, start)));
      this.#tag(text.slice(start, end));
      from = end;
    }
    this.#pending = text.slice(from);
    if (this.#pending.length > longestPiece && !this.#pending.includes("<")) throw notXml("text without an end");
  }

  #tag(tag: string): void {
    if (tag.startsWith("<![CDATA[")) this.#handler.text(tag.slice(9, -3));
    else if (tag.startsWith("<!DOCTYPE")) throw notXml("a document type");
    else if (tag.startsWith("<?") || tag.startsWith("<!")) return;
    else if (tag.startsWith("</")) {
      this.#depth--;
      this.#handler.close(tag.slice(2, -1).trim());
    } else {
      const isEmpty = tag.endsWith("/>");
      const inner = tag.slice(1, isEmpty ? -2 : -1);
      const space = inner.search(/\s/);
      const name = space < 0 ? inner : inner.slice(0, space);
      this.#handler.open(name, space < 0 ? "" : inner.slice(space));
      if (isEmpty) this.#handler.close(name);
      else this.#depth++;
    }
  }

  /** Throws where the document stops inside a tag, or before its last element is closed. */
  end(): void {
    if (this.#pending.includes("<") || this.#depth > 0) throw notXml("a document that stops before its end");
  }
}

const notXml = (found: string): ContainerFault =>
  new ContainerFault(
    `${found} in the spreadsheet's XML`,
    "a spreadsheet as a spreadsheet program saves it",
    "open it in a spreadsheet program and save it again, or save the sheet as CSV",
  );

/** Where a tag, comment or CDATA section that starts at `start` ends; -1 where the text stops before. A ">" inside quotes is text. */
function endOfTag(text: string, start: number): number {
  const closing = text.startsWith("<!--", start)
    ? "-->"
    : text.startsWith("<![CDATA[", start)
      ? "]]>"
      : text.startsWith("<?", start)
        ? "?>"
        : undefined;
  if (closing !== undefined) {
    const end = text.indexOf(closing, start);
    return end < 0 ? -1 : end + closing.length;
  }
  // Too short to know whether it is a comment.
  if (text.length - start < 9 && text.startsWith("<!", start) && !text.includes(">", start)) return -1;
  let quote = "";
  for (let i = start + 1; i < text.length; i++) {
    const character = text.charAt(i);
    if (quote !== "") {
      if (character === quote) quote = "";
    } else if (character === '"' || character === "'") quote = character;
    else if (character === ">") return i + 1;
    else if (character === "<" && !text.startsWith("<!", start)) throw notXml("a tag inside a tag");
  }
  return -1;
}

/** An attribute's value out of a tag's raw text; undefined where it is not there. */
export function attribute(attributes: string, name: string): string | undefined {
  const match = new RegExp(`(?:^|\\s)${name.replace(/[.:]/g, "\\$&")}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(attributes);
  const value = match?.[1] ?? match?.[2];
  return value === undefined ? undefined : unescapeXml(value);
}

const named: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** Text with the five named entities and the numbered ones put in; any other stays as it stands. */
export function unescapeXml(text: string): string {
  if (!text.includes("&")) return text;
  return text.replace(/&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|([a-z]+));/gi, (whole, hex?: string, decimal?: string, name?: string) => {
    if (name !== undefined) return named[name] ?? whole;
    const code = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16);
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}

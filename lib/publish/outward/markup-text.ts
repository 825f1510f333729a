/** Text that is put into markup by hand: feeds, and the HTML that others copy. Pages themselves are escaped by their renderer. */

/**
 * Escapes text for element content and double-quoted attributes of HTML and XML.
 * Characters that XML 1.0 does not allow at all (control characters but tab, line feed and return) are left out.
 */
export function escapeMarkup(text: string): string {
  return (
    text
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones to be left out
      .replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g, "")
      .replaceAll("&", "&amp;")
      .replaceAll("<", "&lt;")
      .replaceAll(">", "&gt;")
      .replaceAll('"', "&quot;")
  );
}

/**
 * The character column, counted from 1, at which a field stands in its line; one past the end where the line has too few fields.
 *
 * @param field  counted from 0
 */
export function columnOfField(text: string, delimiter: string, field: number): number {
  let seen = 0;
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    if (seen === field) return i + 1;
    const character = text.charAt(i);
    if (character === '"') quoted = !quoted;
    else if (character === delimiter && !quoted) seen++;
  }
  return text.length + 1;
}

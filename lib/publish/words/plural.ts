/** Counted nouns. Each language has its own rules, taken from the locale data of Unicode. */

const polishRules = /* @__PURE__ */ new Intl.PluralRules("pl");

/** English and German: one, or any other count. */
export const oneOrMany = (count: number, one: string, many: string): string => (count === 1 ? one : many);

/** Polish: 1 test, 2 to 4 testy, 5 testów, 22 testy; whole counts only. */
export function polishForm(count: number, one: string, few: string, many: string): string {
  const form = polishRules.select(count);
  return form === "one" ? one : form === "few" ? few : many;
}

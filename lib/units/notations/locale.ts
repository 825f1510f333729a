/** What a locale says of marks and dates. The locale is always named: the machine's own never counts. */

/** The mark between whole digits and decimals, as the locale data of Unicode have it. */
export function decimalMarkOf(locale: string): string {
  return new Intl.NumberFormat(locale).formatToParts(1.5).find(({ type }) => type === "decimal")?.value ?? ".";
}

/** A date as the locale writes it in figures; the day is a calendar's, so no zone shifts it. */
export function dayIn(locale: string): (isoDate: string) => string {
  const format = new Intl.DateTimeFormat(locale, { year: "numeric", month: "2-digit", day: "2-digit", timeZone: "UTC" });
  return (isoDate) => format.format(new Date(`${isoDate}T00:00:00Z`));
}

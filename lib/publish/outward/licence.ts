/** Licences as machines name them. A site states its own in free words; only some of these have a name. */

/** The words themselves where they can be an SPDX identifier, which is one word; null for a sentence and where nothing is stated. */
export const spdxLike = (licence: string | null): string | null =>
  licence !== null && /^[A-Za-z0-9][A-Za-z0-9.+-]*$/.test(licence) ? licence : null;

/** The page of a Creative Commons licence named by its SPDX identifier; undefined for other licences. */
export function licenceAddress(licence: string): string | undefined {
  const parts = /^CC-(BY(?:-NC)?(?:-ND|-SA)?)-(\d\.\d)$/.exec(licence);
  if (parts !== null) return `https://creativecommons.org/licenses/${(parts[1] ?? "").toLowerCase()}/${parts[2]}/`;
  return licence === "CC0-1.0" ? "https://creativecommons.org/publicdomain/zero/1.0/" : undefined;
}

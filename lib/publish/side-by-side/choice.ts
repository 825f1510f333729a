/** What a reader has chosen, and how the address keeps it. */
import { mostChargers } from "./compared.ts";

/** A charger, and the mode and test of it where the reader named them. */
export type Choice = { readonly charger: string; readonly mode?: string | undefined; readonly test?: string | undefined };
/** What the profiles are drawn over. */
export type Over = "hours" | "share";
export type Choices = { readonly chosen: readonly Choice[]; readonly over: Over };

const key = ({ charger, mode, test }: Choice): string => [charger, mode, test].filter((part) => part !== undefined).join(".");

/**
 * Reads "?charger=a&charger=b.boost.first-run&over=share". A point parts charger, mode and test: ids hold none before the test's.
 * @returns at most four, each once, in the order of the address; none for an address without any
 */
export function readChoices(search: string): Choices {
  const query = new URLSearchParams(search);
  const keys = [...new Set(query.getAll("charger"))].filter((word) => word !== "").slice(0, mostChargers);
  const chosen = keys.map((word): Choice => {
    const [charger = "", mode, ...test] = word.split(".");
    return { charger, ...(mode ? { mode } : {}), ...(test.length > 0 ? { test: test.join(".") } : {}) };
  });
  return { chosen, over: query.get("over") === "share" ? "share" : "hours" };
}

/** Writes choices as the address keeps them, "" for none; what is the default is left out. */
export function writeChoices({ chosen, over }: Choices): string {
  const query = new URLSearchParams();
  for (const choice of chosen) query.append("charger", key(choice));
  if (over === "share") query.append("over", over);
  const written = query.toString();
  return written === "" ? "" : `?${written}`;
}

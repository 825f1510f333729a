/** The language that a script speaks: decided when it is built, so that each holds its own words and no other's (lib/publish/assets.ts). */
import type { Language } from "../../lib/nouns/site.ts";

declare global {
  /** Written into each script by the bundler. */
  const PAGE_LANGUAGE: Language;
}

export const language: Language = PAGE_LANGUAGE;

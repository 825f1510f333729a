/** Numbers as the script's language writes them. */
import { formatsWith } from "../../lib/units/formats.ts";
import { english } from "../../lib/units/notation.ts";
import { german } from "../../lib/units/notations/german.ts";
import { polish } from "../../lib/units/notations/polish.ts";

export const formats = formatsWith(PAGE_LANGUAGE === "pl" ? polish : PAGE_LANGUAGE === "de" ? german : english);

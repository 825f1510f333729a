/** Puts the data of the page that finds a charger where its script can fetch them. */
import type { SitePart } from "../site-part.ts";
import { findDataOf, findDataPath } from "./find-data.ts";

/** Writes data/find.json. The same results give the same bytes. */
export const writeFindData: SitePart = (results, { write }) => write(findDataPath, `${JSON.stringify(findDataOf(results))}\n`);

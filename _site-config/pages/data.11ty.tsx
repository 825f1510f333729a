import { renderDataPage } from "../../lib/publish/pages/data-page.tsx";
import { onePage } from "../templates.ts";

export const { data, render } = onePage("data/", ({ results }, language) => renderDataPage(results.index, language));

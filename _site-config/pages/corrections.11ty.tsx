import { renderCorrectionsPage } from "../../lib/publish/pages/corrections-page.tsx";
import { onePage } from "../templates.ts";

export const { data, render } = onePage("corrections/", ({ results }, language) => renderCorrectionsPage(results.index, language));

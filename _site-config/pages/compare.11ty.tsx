import { renderSideBySidePage } from "../../lib/publish/pages/side-by-side-page.tsx";
import { onePage } from "../templates.ts";

export const { data, render } = onePage("compare/", ({ results }, language) => renderSideBySidePage(results.index, language));

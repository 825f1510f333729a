import { renderSideBySidePage } from "../../lib/publish/pages/side-by-side-page.tsx";
import { onePage } from "../templates.ts";

export const { data, render } = onePage("compare/index.html", ({ results }) => renderSideBySidePage(results.index));

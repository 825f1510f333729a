import { renderSignsPage } from "../../lib/publish/pages/signs-page.tsx";
import { onePage } from "../templates.ts";

export const { data, render } = onePage("signs/", ({ results }, language) => renderSignsPage(results.index, language));

import { renderComparisonPage } from "../../lib/publish/pages/comparison-page.tsx";
import { onePage } from "../templates.ts";

export const { data, render } = onePage("", ({ results }, language) => renderComparisonPage(results, language));

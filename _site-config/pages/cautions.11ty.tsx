import { renderCautionsPage } from "../../lib/publish/pages/cautions-page.tsx";
import { onePage } from "../templates.ts";

export const { data, render } = onePage("cautions/", ({ results }, language) => renderCautionsPage(results.index, language));

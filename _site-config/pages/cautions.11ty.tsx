import { renderCautionsPage } from "../../lib/publish/pages/cautions-page.tsx";
import { onePage } from "../templates.ts";

export const { data, render } = onePage("cautions/index.html", ({ results }) => renderCautionsPage(results.index));

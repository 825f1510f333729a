import { renderMethodPage } from "../../lib/publish/pages/method-pages.tsx";
import { onePage } from "../templates.ts";

export const { data, render } = onePage("method/", ({ results }, language) => renderMethodPage(results.index, language));

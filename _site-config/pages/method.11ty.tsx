import { renderMethodPage } from "../../lib/publish/pages/method-pages.tsx";
import { onePage } from "../templates.ts";

export const { data, render } = onePage("method/index.html", ({ results }) => renderMethodPage(results.index));

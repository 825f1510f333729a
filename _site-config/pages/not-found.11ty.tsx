import { renderNotFoundPage } from "../../lib/publish/pages/not-found-page.tsx";
import { onePage } from "../templates.ts";

export const { data, render } = onePage("404.html", ({ results }) => renderNotFoundPage(results.index));

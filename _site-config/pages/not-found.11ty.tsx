import { renderNotFoundPage } from "../../lib/publish/pages/not-found-page.tsx";
import { pageOnce } from "../templates.ts";

export const { data, render } = pageOnce("404.html", ({ results }) => renderNotFoundPage(results.index));

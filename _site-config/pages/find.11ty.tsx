import { renderFindPage } from "../../lib/publish/pages/find-page.tsx";
import { onePage } from "../templates.ts";

export const { data, render } = onePage("find/", ({ results }, language) => renderFindPage(results, language));

import { renderSideBySidePage } from "../../lib/publish/pages/side-by-side-page.tsx";
import type { PageData } from "../eleventy.config.ts";

export const data = { permalink: "/compare/index.html" };

export const render = ({ results }: PageData) => renderSideBySidePage(results.index);

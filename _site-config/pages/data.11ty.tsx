import { renderDataPage } from "../../lib/publish/pages/data-page.tsx";
import type { PageData } from "../eleventy.config.ts";

export const data = { permalink: "/data/index.html" };

export const render = ({ results }: PageData) => renderDataPage(results.index);

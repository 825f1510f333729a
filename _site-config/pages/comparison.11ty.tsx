import { renderComparisonPage } from "../../lib/publish/pages/comparison-page.tsx";
import type { PageData } from "../eleventy.config.ts";

export const data = { permalink: "/index.html" };

export const render = ({ results }: PageData) => renderComparisonPage(results);

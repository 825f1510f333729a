import { renderCautionsPage } from "../../lib/publish/pages/cautions-page.tsx";
import type { PageData } from "../eleventy.config.ts";

export const data = { permalink: "/cautions/index.html" };

export const render = ({ results }: PageData) => renderCautionsPage(results.index);

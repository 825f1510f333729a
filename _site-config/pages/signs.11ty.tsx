import { renderSignsPage } from "../../lib/publish/pages/signs-page.tsx";
import type { PageData } from "../eleventy.config.ts";

export const data = { permalink: "/signs/index.html" };

export const render = ({ results }: PageData) => renderSignsPage(results.index);

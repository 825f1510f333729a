import { renderNotFoundPage } from "../../lib/publish/pages/not-found-page.tsx";
import type { PageData } from "../eleventy.config.ts";

export const data = { permalink: "/404.html" };

export const render = ({ results }: PageData) => renderNotFoundPage(results.index);

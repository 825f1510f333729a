import { renderFindPage } from "../../lib/publish/pages/find-page.tsx";
import type { PageData } from "../eleventy.config.ts";

export const data = { permalink: "/find/index.html" };

export const render = ({ results }: PageData) => renderFindPage(results);

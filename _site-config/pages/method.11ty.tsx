import { renderMethodPage } from "../../lib/publish/pages/method-pages.tsx";
import type { PageData } from "../eleventy.config.ts";

export const data = { permalink: "/method/index.html" };

export const render = ({ results }: PageData) => renderMethodPage(results.index);

import { renderCorrectionsPage } from "../../lib/publish/pages/corrections-page.tsx";
import type { PageData } from "../eleventy.config.ts";

export const data = { permalink: "/corrections/index.html" };

export const render = ({ results }: PageData) => renderCorrectionsPage(results.index);

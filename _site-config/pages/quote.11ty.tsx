import { siteQuotePath } from "../../lib/publish/outward/addresses.ts";
import { siteFeed } from "../../lib/publish/outward/feed.ts";
import { citableSite } from "../../lib/publish/outward/index.ts";
import { renderQuotePage } from "../../lib/publish/pages/quote-page.tsx";
import type { PageData } from "../eleventy.config.ts";

export const data = { permalink: `/${siteQuotePath}index.html` };

export const render = ({ results }: PageData) => renderQuotePage(results.index, citableSite(results), siteFeed(results) !== undefined);

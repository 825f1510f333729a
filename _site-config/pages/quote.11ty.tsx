import { siteQuotePath } from "../../lib/publish/outward/addresses.ts";
import { siteFeed } from "../../lib/publish/outward/feed.ts";
import { citableSite } from "../../lib/publish/outward/index.ts";
import { renderQuotePage } from "../../lib/publish/pages/quote-page.tsx";
import { onePage } from "../templates.ts";

export const { data, render } = onePage(siteQuotePath, ({ results }, language) =>
  renderQuotePage(results.index, citableSite(results), siteFeed(results) !== undefined, language),
);

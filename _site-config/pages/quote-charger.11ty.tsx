import { quotePath } from "../../lib/publish/outward/addresses.ts";
import { quotableCharger } from "../../lib/publish/outward/quotable.ts";
import { renderChargerQuotePage } from "../../lib/publish/pages/quote-page.tsx";
import type { OutwardPageData } from "../eleventy.config.ts";

type Data = OutwardPageData & { readonly id: string };

export const data = {
  pagination: { data: "chargerIds", size: 1, alias: "id" },
  permalink: ({ id }: Data) => `/${quotePath(id)}index.html`,
};

export const render = ({ results, fingerprints, id }: Data) => renderChargerQuotePage(quotableCharger(results, fingerprints, id));

import { embedPath } from "../../lib/publish/outward/addresses.ts";
import { quotableCharger } from "../../lib/publish/outward/quotable.ts";
import { renderEmbedPage } from "../../lib/publish/pages/embed-page.tsx";
import type { OutwardPageData } from "../eleventy.config.ts";

type Data = OutwardPageData & { readonly id: string };

export const data = {
  pagination: { data: "chargerIds", size: 1, alias: "id" },
  permalink: ({ id }: Data) => `/${embedPath(id)}index.html`,
};

export const render = ({ results, fingerprints, id }: Data) => renderEmbedPage(quotableCharger(results, fingerprints, id));

import { cardPath } from "../../lib/publish/outward/addresses.ts";
import { quotableCharger } from "../../lib/publish/outward/quotable.ts";
import { renderCardPage } from "../../lib/publish/pages/card-page.tsx";
import type { OutwardPageData } from "../eleventy.config.ts";

type Data = OutwardPageData & { readonly id: string };

export const data = {
  pagination: { data: "chargerIds", size: 1, alias: "id" },
  permalink: ({ id }: Data) => `/${cardPath(id)}index.html`,
};

export const render = ({ results, fingerprints, id }: Data) => renderCardPage(quotableCharger(results, fingerprints, id));

import { versionsPath } from "../../lib/publish/outward/addresses.ts";
import { quotableCharger } from "../../lib/publish/outward/quotable.ts";
import { renderVersionsPage } from "../../lib/publish/pages/versions-page.tsx";
import type { OutwardPageData } from "../eleventy.config.ts";

type Data = OutwardPageData & { readonly id: string };

export const data = {
  pagination: { data: "chargerIds", size: 1, alias: "id" },
  permalink: ({ id }: Data) => `/${versionsPath(id)}index.html`,
};

export const render = ({ results, fingerprints, id }: Data) => renderVersionsPage(results, quotableCharger(results, fingerprints, id));

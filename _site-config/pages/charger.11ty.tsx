import { drawChargerCharts } from "../../lib/publish/charts/index.ts";
import { chargerPath } from "../../lib/publish/links.ts";
import { renderChargerPage } from "../../lib/publish/pages/charger-page.tsx";
import type { PageData } from "../eleventy.config.ts";

type Data = PageData & { readonly id: string };

export const data = {
  pagination: { data: "chargerIds", size: 1, alias: "id" },
  permalink: ({ id }: Data) => `/${chargerPath(id)}index.html`,
};

export async function render({ results, id }: Data): Promise<string> {
  const charger = results.charger(id);
  const charts = await drawChargerCharts(charger.tests.map((test) => results.test(test.id)));
  return renderChargerPage(results, charger, charts);
}

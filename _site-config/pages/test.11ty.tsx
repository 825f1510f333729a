import { drawTestCharts } from "../../lib/publish/charts/index.ts";
import { testPath } from "../../lib/publish/links.ts";
import { renderTestPage } from "../../lib/publish/pages/test-page.tsx";
import type { PageData } from "../eleventy.config.ts";

type Data = PageData & { readonly id: string };

export const data = {
  pagination: { data: "testIds", size: 1, alias: "id" },
  permalink: ({ id }: Data) => `/${testPath(id)}index.html`,
};

export async function render({ results, id }: Data): Promise<string> {
  const test = results.test(id);
  return renderTestPage(results, test, await drawTestCharts(test));
}

import { drawTestCharts } from "../../lib/publish/charts/index.ts";
import { testPath } from "../../lib/publish/links.ts";
import { renderTestPage } from "../../lib/publish/pages/test-page.tsx";
import { pageForEach } from "../templates.ts";

export const { data, render } = pageForEach("testIds", testPath, async ({ results }, id, language) => {
  const test = results.test(id);
  return renderTestPage(results, test, await drawTestCharts(test, language), language);
});

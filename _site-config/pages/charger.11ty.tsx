import { drawChargerCharts } from "../../lib/publish/charts/index.ts";
import { chargerPath } from "../../lib/publish/links.ts";
import { renderChargerPage } from "../../lib/publish/pages/charger-page.tsx";
import { pageForEach } from "../templates.ts";

export const { data, render } = pageForEach("chargerIds", chargerPath, async ({ results }, id, language) => {
  const charger = results.charger(id);
  const charts = await drawChargerCharts(
    charger.tests.map((test) => results.test(test.id)),
    language,
  );
  return renderChargerPage(results, charger, charts, language);
});

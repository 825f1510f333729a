import { quotePath } from "../../lib/publish/outward/addresses.ts";
import { quotableCharger } from "../../lib/publish/outward/quotable.ts";
import { renderChargerQuotePage } from "../../lib/publish/pages/quote-page.tsx";
import { pageForEach } from "../templates.ts";

export const { data, render } = pageForEach("chargerIds", quotePath, ({ results, fingerprints }, id, language) =>
  renderChargerQuotePage(quotableCharger(results, fingerprints, id, language), language),
);

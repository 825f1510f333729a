import { cardPath } from "../../lib/publish/outward/addresses.ts";
import { quotableCharger } from "../../lib/publish/outward/quotable.ts";
import { renderCardPage } from "../../lib/publish/pages/card-page.tsx";
import { pageForEach } from "../templates.ts";

export const { data, render } = pageForEach("chargerIds", cardPath, ({ results, fingerprints }, id, language) =>
  renderCardPage(quotableCharger(results, fingerprints, id, language), language),
);

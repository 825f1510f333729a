import { embedPath } from "../../lib/publish/outward/addresses.ts";
import { quotableCharger } from "../../lib/publish/outward/quotable.ts";
import { renderEmbedPage } from "../../lib/publish/pages/embed-page.tsx";
import { pageForEach } from "../templates.ts";

export const { data, render } = pageForEach("chargerIds", embedPath, ({ results, fingerprints }, id, language) =>
  renderEmbedPage(quotableCharger(results, fingerprints, id, language), language),
);

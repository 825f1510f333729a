import { versionsPath } from "../../lib/publish/outward/addresses.ts";
import { quotableCharger } from "../../lib/publish/outward/quotable.ts";
import { renderVersionsPage } from "../../lib/publish/pages/versions-page.tsx";
import { pageForEach } from "../templates.ts";

export const { data, render } = pageForEach("chargerIds", versionsPath, ({ results, fingerprints }, id, language) =>
  renderVersionsPage(results, quotableCharger(results, fingerprints, id, language), language),
);

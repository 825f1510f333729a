import { methodPath } from "../../lib/publish/links.ts";
import { renderMethodEntryPage } from "../../lib/publish/pages/method-pages.tsx";
import { pageForEach } from "../templates.ts";

export const { data, render } = pageForEach("methodIds", methodPath, ({ results }, id, language) =>
  renderMethodEntryPage(results.index, id, language),
);

import { addressPart } from "../../lib/publish/links.ts";
import { renderProsePage } from "../../lib/publish/pages/prose-page.tsx";
import { pageForEach } from "../templates.ts";

export const { data, render } = pageForEach(
  "proseIds",
  (id) => `${addressPart(id)}/`,
  ({ results: { index } }, id, language) => {
    const prose = index.pages.find((page) => page.id === id);
    if (prose === undefined) throw new Error(`no page of the reviewer's own is named ${id}`);
    return renderProsePage(index, prose, language);
  },
);

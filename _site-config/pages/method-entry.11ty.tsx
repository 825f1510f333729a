import { methodPath } from "../../lib/publish/links.ts";
import { renderMethodEntryPage } from "../../lib/publish/pages/method-pages.tsx";
import type { PageData } from "../eleventy.config.ts";

type Data = PageData & { readonly id: string };

export const data = {
  pagination: { data: "methodIds", size: 1, alias: "id" },
  permalink: ({ id }: Data) => `/${methodPath(id)}index.html`,
};

export const render = ({ results, id }: Data) => renderMethodEntryPage(results.index, id);

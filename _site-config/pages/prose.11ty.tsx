import { addressPart } from "../../lib/publish/links.ts";
import { renderProsePage } from "../../lib/publish/pages/prose-page.tsx";
import type { PageData } from "../eleventy.config.ts";

type Data = PageData & { readonly id: string };

export const data = {
  pagination: { data: "proseIds", size: 1, alias: "id" },
  permalink: ({ id }: Data) => `/${addressPart(id)}/index.html`,
};

export function render({ results: { index }, id }: Data): string {
  const prose = index.pages.find((page) => page.id === id);
  if (prose === undefined) throw new Error(`no page of the reviewer's own is named ${id}`);
  return renderProsePage(index, prose);
}

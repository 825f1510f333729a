/** Builds elements. Text is only ever set as text. */

export type Child = Node | string;

/** An element with its attributes and children; an undefined attribute is left out. */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Readonly<Record<string, string | undefined>> = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) if (value !== undefined) made.setAttribute(name, value);
  made.append(...children);
  return made;
}

const looks = {
  will: ["tick", "good"],
  may: ["question", "open"],
  "will not": ["down", "bad"],
  "not advised": ["warning", "bad"],
} as const;

/** A verdict with its shape out of the page's sprite, as everywhere on the site. */
export function mark(verdict: keyof typeof looks, ...words: readonly Child[]): HTMLElement {
  const [shape, tone] = looks[verdict];
  const svgNamespace = "http://www.w3.org/2000/svg";
  const drawing = document.createElementNS(svgNamespace, "svg");
  drawing.setAttribute("class", "mark-shape");
  drawing.setAttribute("width", "16");
  drawing.setAttribute("height", "16");
  drawing.setAttribute("aria-hidden", "true");
  const use = document.createElementNS(svgNamespace, "use");
  use.setAttribute("href", `#shape-${shape}`);
  drawing.append(use);
  const made = element("span", { class: `mark mark-${tone}` });
  made.append(drawing, element("span", {}, ...words));
  return made;
}

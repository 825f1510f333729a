/** A drawing as a figure: its sentence for those who do not see it, its caption for all. */
import type { ComponentChildren } from "preact";
import type { Chart } from "../charts/index.ts";
import { Drawing } from "./markup.tsx";
import { InventedMark, useSite } from "./site-context.tsx";

/** On a narrow screen the drawing scrolls inside its own region, so that its lettering stays legible. */
export function ChartFigure({ chart, caption, children }: { chart: Chart; caption: string; children?: ComponentChildren }) {
  return (
    <figure class="chart">
      {/* A region that scrolls must be reachable by keyboard */}
      <section class="scroll" tabindex={0} aria-label={useSite().words.parts.drawing(caption)}>
        <div role="img" aria-label={chart.sentence}>
          <Drawing svg={chart.svg} />
        </div>
      </section>
      <figcaption data-pagefind-ignore>
        <strong>{caption}</strong>
        <InventedMark /> {children}
      </figcaption>
    </figure>
  );
}

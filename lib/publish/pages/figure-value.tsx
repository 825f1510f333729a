/** One figure as text: value, unit and interval, or its absence in words. */
import type { Figure } from "../../nouns/figure.ts";
import { Absent } from "./mark.tsx";
import { useSite } from "./site-context.tsx";
import { WrittenFigure } from "./written-figure.tsx";

/** `why` adds the reason of an absence; leave it out where the figure links to a place that gives it. */
export function FigureValue({ figure, why = false }: { figure: Figure; why?: boolean }) {
  const { formats, basis } = useSite();
  if (figure.value === null) return <Absent kind={figure.absent?.kind ?? "not stated"} why={why ? figure.absent?.why : null} />;
  return <WrittenFigure {...formats.figureText(figure)} basis={figure.basis === "measured" ? null : basis(figure.basis)} />;
}

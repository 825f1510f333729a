/** One figure as text: value, unit and interval, or its absence in words. */
import type { Figure } from "../../nouns/figure.ts";
import { Absent } from "./mark.tsx";
import { useSpeech } from "./speech.tsx";

/** `why` adds the reason of an absence; leave it out where the figure links to a place that gives it. */
export function FigureValue({ figure, why = false }: { figure: Figure; why?: boolean }) {
  const { formats, basis } = useSpeech();
  if (figure.value === null) return <Absent kind={figure.absent?.kind ?? "not stated"} why={why ? figure.absent?.why : null} />;
  const { value, interval } = formats.figureText(figure);
  return (
    <>
      <span class="value">{value}</span>
      {interval === null ? null : <span class="value interval-text"> ({interval})</span>}
      {figure.basis === "measured" ? null : <span class="basis"> {basis(figure.basis)}</span>}
    </>
  );
}

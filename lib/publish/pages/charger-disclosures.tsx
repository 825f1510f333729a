/** What a reader should know about how the result came to be, and what was changed since. */
import type { ChargerResult } from "../results.ts";
import { wordFor } from "../words/word-for.ts";
import { Own, useSite } from "./site-context.tsx";

/** Whether the maker was told, when, and the answer in full. */
export function MakerAnswer({ answer }: { answer: ChargerResult["makerAnswer"] }) {
  const { formats, words } = useSite();
  const { makerTold } = words.charger;
  const day = (on: string | null): string | null => (on === null ? null : formats.formatDay(on));
  if (answer === null) return <p>{makerTold.notStated}</p>;
  const told = makerTold.told(day(answer.toldOn));
  if (answer.answer === null)
    return (
      <p>
        {told}
        {makerTold.noAnswer}
      </p>
    );
  return (
    <>
      <p>
        {told}
        {makerTold.answered(day(answer.answeredOn))}
      </p>
      <blockquote>
        <Own>{answer.answer}</Own>
      </blockquote>
    </>
  );
}

/** The corrections of this charger's results, or the way to how they are made. */
export function Corrections({ corrections }: { corrections: ChargerResult["corrections"] }) {
  const { formats, linkTo, words } = useSite();
  if (corrections.length === 0) {
    return (
      <p>
        {words.charger.noCorrections} <a href={linkTo("corrections/")}>{words.charger.howCorrected}</a>
      </p>
    );
  }
  return (
    <ul>
      {corrections.map((correction) => (
        <li key={`${correction.on} ${correction.what}`}>
          <strong>
            {formats.formatDay(correction.on)}, {wordFor(words.outward.corrections.kinds, correction.kind)}
          </strong>
          :{" "}
          <Own>
            {correction.what} {correction.why}
          </Own>{" "}
          <span class="quiet">
            {correction.changesVerdict ? words.charger.changesVerdict : words.charger.verdictStands}
            {correction.noticedBy === null ? "" : words.charger.noticedBy(correction.noticedBy)}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** What a reader should know about how the result came to be, and what was changed since. */
import type { ChargerResult } from "../results.ts";
import { useSite } from "./site-context.tsx";

/** Whether the maker was told, when, and the answer in full. */
export function MakerAnswer({ answer }: { answer: ChargerResult["makerAnswer"] }) {
  if (answer === null) return <p>Whether the maker was told: not stated.</p>;
  const told = `The maker was told of the results on ${answer.toldOn ?? "a day that is not stated"}`;
  if (answer.answer === null) return <p>{told}; no answer is stated.</p>;
  return (
    <>
      <p>
        {told}, and answered on {answer.answeredOn ?? "a day that is not stated"}:
      </p>
      <blockquote>{answer.answer}</blockquote>
    </>
  );
}

/** The corrections of this charger's results, or the way to how they are made. */
export function Corrections({ corrections }: { corrections: ChargerResult["corrections"] }) {
  const { linkTo } = useSite();
  if (corrections.length === 0) {
    return (
      <p>
        No corrections so far. <a href={linkTo("corrections/")}>How corrections are made</a>
      </p>
    );
  }
  return (
    <ul>
      {corrections.map((correction) => (
        <li key={`${correction.on} ${correction.what}`}>
          <strong>
            {correction.on}, {correction.kind}
          </strong>
          : {correction.what} {correction.why}{" "}
          <span class="quiet">
            {correction.changesVerdict ? "It changes the verdict." : "The verdict stands."}
            {correction.noticedBy === null ? "" : ` Noticed by ${correction.noticedBy}.`}
          </span>
        </li>
      ))}
    </ul>
  );
}

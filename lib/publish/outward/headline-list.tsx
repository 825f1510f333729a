/** The six figures as a card and an embed show them: value, claim, outcome in shape and words, condition, and absence as absence. */
import type { ComponentChildren } from "preact";
import { Absent, Mark } from "../pages/mark.tsx";
import { sentence } from "../pages/sentence.ts";
import { useSite } from "../pages/site-context.tsx";
import type { Told } from "../pages/speech.tsx";
import type { Headline, Headlines } from "./headlines.ts";

/** Both groups. Conditions and reasons that several figures share are told once. */
export function HeadlineGroups({ headlines }: { headlines: Headlines }) {
  const { headlines: words } = useSite().words.outward;
  const { promises, promisesCondition, way, wayCondition, wayOthers } = headlines;
  const reasons = new Map(way.flatMap(({ absent }) => (absent === null ? [] : [[absent.why.words, absent.why]])));
  return (
    <>
      <h2>{words.promises}</h2>
      <Small words={promisesCondition} />
      <dl class="headlines">
        {promises.map((headline) => (
          <Row key={headline.id} headline={headline}>
            {headline.absent === null ? null : <Small {...headline.absent.why} />}
            {promisesCondition === null && headline.outcome !== null ? <Small words={headline.condition} /> : null}
            <Small words={headline.others} />
          </Row>
        ))}
      </dl>
      <h2>{words.way}</h2>
      <Small words={wayCondition} />
      <dl class="headlines">
        {way.map((headline) => (
          <Row key={headline.id} headline={headline} />
        ))}
      </dl>
      {[...reasons.values()].map((why) => (
        <Small key={why.words} {...why} />
      ))}
      <Small words={wayOthers} />
    </>
  );
}

type RowProps = { readonly headline: Headline; readonly children?: ComponentChildren };

function Row({ headline: { label, claimed, text, absent, outcome }, children }: RowProps) {
  const { headlines: words } = useSite().words.outward;
  const saidByOutcome = outcome !== null && outcome.id === absent?.kind;
  return (
    <div>
      <dt>
        {label}
        {outcome === null ? null : (
          <span class="outcome">
            <Mark kind={outcome.kind}>{outcome.lang === undefined ? outcome.words : <span lang={outcome.lang}>{outcome.words}</span>}</Mark>
          </span>
        )}
      </dt>
      <dd>
        {text === null ? saidByOutcome ? null : <Absent kind={absent?.kind ?? "not stated"} /> : <strong class="value">{text}</strong>}
        {claimed === null ? null : <span class="claimed"> {words.claimed(claimed)}</span>}
        {children}
      </dd>
    </div>
  );
}

function Small({ words, lang }: { words: string | null; lang?: Told["lang"] }) {
  return words === null ? null : (
    <span class="small" lang={lang}>
      {sentence(words)}
    </span>
  );
}

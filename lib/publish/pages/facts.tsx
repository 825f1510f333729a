/** Facts told about a thing: label and value, with "not stated" where nobody said. */
import { Absent } from "./mark.tsx";
import { Own, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";

type Fact = { readonly label: string; readonly value: string | null };

/** A list of facts; an empty one says so rather than vanishing. */
export function Facts({ facts }: { facts: readonly Fact[] }) {
  const { words } = useSite();
  if (facts.length === 0) return <p>{words.parts.nothingStated}</p>;
  return (
    <dl class="facts">
      {facts.map((fact) => (
        <div key={fact.label}>
          <dt>
            <Said text={fact.label} />
          </dt>
          <dd>{fact.value === null ? <Absent kind="not stated" /> : <FactValue value={fact.value} />}</dd>
        </div>
      ))}
    </dl>
  );
}

/** A value is a generated one, such as a capacity, or the words of whoever wrote the record. */
export function FactValue({ value }: { value: string }) {
  const told = useSite().say(value);
  return told === undefined ? <Own>{value}</Own> : told;
}

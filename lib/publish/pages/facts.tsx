/** Facts told about a thing: label and value, with "not stated" where nobody said. */
import { Absent } from "./mark.tsx";

type Fact = { readonly label: string; readonly value: string | null };

/** A list of facts; an empty one says so rather than vanishing. */
export function Facts({ facts }: { facts: readonly Fact[] }) {
  if (facts.length === 0) return <p>Nothing is stated.</p>;
  return (
    <dl class="facts">
      {facts.map((fact) => (
        <div key={fact.label}>
          <dt>{fact.label}</dt>
          <dd>{fact.value ?? <Absent kind="not stated" />}</dd>
        </div>
      ))}
    </dl>
  );
}

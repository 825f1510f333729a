/** The short word of caution that stands where somebody might pick up the clamps. */
import { Link, useSite } from "./site-context.tsx";

export function CautionBox({ sealed = false }: { sealed?: boolean }) {
  const { caution } = useSite().words.parts;
  return (
    <aside class="caution" aria-label={caution.name}>
      <p>
        <strong>{caution.lead}</strong> {caution.dangers}
        {sealed ? ` ${caution.sealed}` : ""} {caution.authority} <Link to="cautions/">{caution.all}</Link>
      </p>
    </aside>
  );
}

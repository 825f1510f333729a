/** The short word of caution that stands where somebody might pick up the clamps. */
import { Link } from "./site-context.tsx";

export function CautionBox({ sealed = false }: { sealed?: boolean }) {
  return (
    <aside class="caution" aria-label="Caution">
      <p>
        <strong>Before you repeat any of this:</strong> a charging battery gives off hydrogen, holds acid and can drive hundreds of amperes
        through a dropped spanner. Eye protection, air, no sparks, never a frozen battery.
        {sealed ? " A sealed battery must not be opened, and too high a voltage dries it out for good." : ""} What holds is your local code,
        the battery maker's sheet and a licensed person's judgement. <Link to="cautions/">All cautions</Link>
      </p>
    </aside>
  );
}

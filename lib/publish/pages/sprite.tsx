/** Shapes that a page draws again and again, defined once: a table of a thousand rows would otherwise carry each of them a thousand times. */
import { type Shape, shapeId, shapes } from "./mark.tsx";

/** The pattern of a stretch that was connected and not recorded. */
export const hatchId = "hatch";
/** The diamond of a reading, at two sizes. */
export const readingId = (size: "small" | "large") => `reading-${size}`;

const diamond = (half: number) => `M0 ${-half}L${half} 0L0 ${half}L${-half} 0Z`;

/** Takes no room on the page; a sprite that is not rendered at all could not be used from. */
export function Sprite() {
  return (
    <svg class="sprite" width="0" height="0" aria-hidden="true" focusable="false">
      <defs>
        {(Object.keys(shapes) as Shape[]).map((shape) => (
          <symbol key={shape} id={shapeId(shape)} viewBox="0 0 16 16">
            {shapes[shape]}
          </symbol>
        ))}
        <path id={readingId("small")} d={diamond(3.5)} class="strip-reading" />
        <path id={readingId("large")} d={diamond(5)} class="strip-reading" />
        <pattern id={hatchId} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" y1="0" x2="0" y2="5" class="strip-hatch" />
        </pattern>
      </defs>
    </svg>
  );
}

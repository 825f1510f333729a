/** Marks: a shape and a word for each outcome. The shape alone tells them apart without colour; the word tells it without sight. */
import type { ComponentChildren } from "preact";
import type { Absences } from "../../units/absences.ts";
import { Said, useSpeech } from "./speech.tsx";

/** The shapes, drawn once in each page's sprite (sprite.tsx) and used by name. */
export type Shape = "tick" | "down" | "up" | "question" | "dashed" | "cross" | "warning" | "dot" | "absent";

export const shapes: Readonly<Record<Shape, ComponentChildren>> = {
  tick: (
    <>
      <circle cx="8" cy="8" r="7" class="mark-solid" />
      <path d="M4.5 8.2 7 10.7 11.6 5.6" class="mark-cut" />
    </>
  ),
  cross: (
    <>
      <path d="M8 .6 15.4 8 8 15.4.6 8Z" class="mark-solid" />
      <path d="M5.7 5.7l4.6 4.6M10.3 5.7l-4.6 4.6" class="mark-cut" />
    </>
  ),
  down: <path d="M1 3h14L8 14.5Z" class="mark-solid" />,
  up: <path d="M1 13h14L8 1.5Z" class="mark-solid" />,
  warning: (
    <>
      <path d="M8 1.5 15 14H1Z" class="mark-line" />
      <path d="M8 6v4M8 11.4v1" class="mark-line" />
    </>
  ),
  question: (
    <>
      <circle cx="8" cy="8" r="6.8" class="mark-line" />
      <path d="M5.9 6.3a2.1 2.1 0 1 1 3 1.9c-.7.3-.9.7-.9 1.3M8 11.2v1" class="mark-line" />
    </>
  ),
  dashed: <circle cx="8" cy="8" r="6.8" class="mark-line mark-dashed" />,
  dot: <rect x="5" y="5" width="6" height="6" class="mark-solid" />,
  absent: <path d="M1.5 6V1.5H6M10 1.5h4.5V6M14.5 10v4.5H10M6 14.5H1.5V10" class="mark-line" />,
};

/** The id of a shape in the sprite. */
export const shapeId = (shape: Shape) => `shape-${shape}`;

type Look = { readonly shape: Shape; readonly tone: "good" | "bad" | "open" };

const looks: Record<string, Look> = {
  meets: { shape: "tick", tone: "good" },
  "short of": { shape: "down", tone: "bad" },
  above: { shape: "up", tone: "bad" },
  "cannot tell": { shape: "question", tone: "open" },
  "not put to the test": { shape: "dashed", tone: "open" },
  good: { shape: "tick", tone: "good" },
  bad: { shape: "cross", tone: "bad" },
  caution: { shape: "warning", tone: "bad" },
  unsure: { shape: "question", tone: "open" },
  untested: { shape: "dashed", tone: "open" },
  note: { shape: "dot", tone: "open" },
};

/** A shape followed by words. `kind` is an outcome or a weight of the results; an unknown one is drawn as a note. */
export function Mark({ kind, children }: { kind: string; children: ComponentChildren }) {
  const look = looks[kind] ?? { shape: "dot", tone: "open" };
  return (
    <span class={`mark mark-${look.tone}`}>
      <svg class="mark-shape" width="16" height="16" aria-hidden="true">
        <use href={`#${shapeId(look.shape)}`} />
      </svg>
      <span>{children}</span>
    </span>
  );
}

type AbsentProps = {
  readonly kind: keyof Absences;
  /** A reason that the results give. */
  readonly why?: string | null | undefined;
  /** A reason in the page's own words. */
  readonly because?: string;
};

/** Absence, drawn as an empty frame and said in words; never a zero, never a blank. */
export function Absent({ kind, why, because }: AbsentProps) {
  const { absence } = useSpeech();
  return (
    <span class="absent">
      <svg width="14" height="14" aria-hidden="true">
        <use href={`#${shapeId("absent")}`} />
      </svg>
      <span>
        {absence(kind)}
        {why || because ? <span class="why">: {because ?? <Said text={why ?? ""} />}</span> : null}
      </span>
    </span>
  );
}

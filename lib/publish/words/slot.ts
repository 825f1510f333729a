/** Room in a message for something other than text: a link, a name in bold. */
import type { ComponentChildren } from "preact";

/** Wraps words of the message, such as those that a link shows. */
export type Wrap = (words: string) => ComponentChildren;

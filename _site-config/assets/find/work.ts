/** The work off the page's own thread: one forecast after the other, told as each is done. */
import { type Answer, answerOf, type Task } from "../../../lib/publish/find/answer.ts";
import type { AskedMode } from "../../../lib/publish/find/asked-and-apart.ts";

export type Work = { readonly task: Task; readonly modes: readonly AskedMode[] };
export type Told = { readonly place: number; readonly answer: Answer };

/** Listens for work, as a worker does. A page that has a newer question ends the worker and starts another. */
export function listenForWork(): void {
  addEventListener("message", ({ data: { task, modes } }: MessageEvent<Work>) => {
    for (const [place, mode] of modes.entries()) postMessage({ place, answer: answerOf(task, mode) } satisfies Told);
  });
}

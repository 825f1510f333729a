import type { FindingDefinition } from "../define-finding.ts";

export const recordingEndings: FindingDefinition = {
  id: "recording-endings",
  subject: "Who stopped: charger or recorder?",
  explain:
    "A recording that ends says nothing of the charger unless the current fell to nothing inside it. Each recording's ending is judged from its tail, the recorder's stop rule and later readings.",
  source: "Our rule; see docs/method.md.",
  checkedBy: ["Demo logs against the generator's truth"],
  judge(context) {
    const endings = context.connections.flatMap((connection) =>
      connection.recordings.map((recording, place) => ({ recording, ending: connection.endings[place] })),
    );
    if (endings.length === 0) return undefined;
    const count = (by: string): number => endings.filter(({ ending }) => ending?.by === by).length;
    const [charger, recorder, unknown] = [count("charger"), count("recorder"), count("unknown")];
    const why = endings.map(
      ({ recording, ending }) =>
        `${recording.id}: ${ending === undefined || ending.by === "unknown" ? `who ended it is ${ending?.words ?? "not known"}` : `ended by ${ending.words}`}`,
    );
    const settle = endings.find(({ ending }) => ending?.wouldSettle !== null)?.ending?.wouldSettle ?? null;
    const shareOf = (part: number): string =>
      endings.length === 1 ? "In the one recording" : `In ${part} of ${endings.length} recordings`;
    if (recorder > 0)
      return {
        verdict: "the recorder stopped first",
        weight: "caution",
        sentence: `${shareOf(recorder)} the recorder stopped before the charger did, so the end of the charge was not seen there.`,
        why,
        wouldSettle: settle,
        figures: [],
        doubts: ["what happened after the recorder stopped rests on readings alone"],
      };
    if (charger === endings.length)
      return {
        verdict: "the charger stopped",
        weight: "good",
        sentence: `In ${endings.length === 1 ? "the one recording" : `all ${endings.length} recordings`} the charger itself was seen to stop.`,
        why,
        wouldSettle: null,
        figures: [],
        doubts: [],
      };
    if (unknown > 0)
      return {
        verdict: "cannot tell",
        weight: "unsure",
        sentence: `${shareOf(unknown)} it cannot be told who stopped.`,
        why,
        wouldSettle: settle,
        figures: [],
        doubts: [],
      };
    return {
      verdict: "stopped from outside",
      weight: "note",
      sentence: "The recordings end because a person or the mains ended them.",
      why,
      wouldSettle: settle,
      figures: [],
      doubts: [],
    };
  },
};

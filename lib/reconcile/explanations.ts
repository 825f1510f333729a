/** What may explain that a battery's witnesses disagree. Each is a switch; several may be on at once. */

export const explanationIds = [
  "acid-not-mixed",
  "charge-unrecorded",
  "surface-charge",
  "weak-cell",
  "rating-wrong",
  "hydrometer-off",
] as const;

/** A switch of the model. */
export type ExplanationId = (typeof explanationIds)[number];

/** A switch, or that none is on. */
export type CauseId = ExplanationId | "nothing-to-explain";

/** The causes in words: a label, and one sentence for who meets it for the first time. */
export const causeWords: Readonly<Record<CauseId, { readonly label: string; readonly explain: string }>> = {
  "nothing-to-explain": {
    label: "Nothing to explain",
    explain: "All witnesses tell one story within what their instruments can tell.",
  },
  "acid-not-mixed": {
    label: "Acid not mixed",
    explain: "Heavy acid lies at the bottom of the cells, where no hydrometer reaches; the density at the top says less than went in.",
  },
  "charge-unrecorded": {
    label: "Charge that nobody recorded",
    explain: "The charger worked on while no recorder did; the logs say less than went in.",
  },
  "surface-charge": {
    label: "Surface charge not rested off",
    explain: "The voltage was read too soon after charging; it says more than the battery holds.",
  },
  "weak-cell": {
    label: "A weak cell",
    explain: "One cell's acid is clearly weaker than that of the others; it pulls voltage and mean density down.",
  },
  "rating-wrong": {
    label: "Capacity not as rated",
    explain: "The battery holds clearly less, or more, than the capacity it is taken for.",
  },
  "hydrometer-off": {
    label: "Hydrometer reads off",
    explain: "The hydrometer shows too much or too little at every visit, beyond its stated accuracy.",
  },
};

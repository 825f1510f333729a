/** How a figure is defined, and how its outcome becomes the published form. */
import type { Evidence } from "../nouns/evidence.ts";
import type { AbsenceKind, Figure } from "../nouns/figure.ts";

/** What a figure can come to: a value, or the reason why there is none. A value without evidence cannot be built. */
export type Measured = {
  readonly value: number;
  /** Half of the published interval is this times the coverage factor; undefined where none can be defended. */
  readonly standardUncertainty?: number | undefined;
  /** For an interval that is not symmetric: its ends, as they are; Infinity is an open one. */
  readonly interval?: { readonly low: number; readonly high: number } | undefined;
  readonly basis?: Figure["basis"];
  readonly evidence: readonly Evidence[];
  readonly doubts?: readonly string[];
};
export type NotMeasured = {
  readonly absent: AbsenceKind;
  readonly why: string;
  /** Where there is no value, yet it cannot lie outside these. */
  readonly bounds?: { readonly low: number; readonly high: number } | undefined;
  readonly evidence?: readonly Evidence[];
  readonly doubts?: readonly string[];
};
export type FigureOutcome = Measured | NotMeasured;

export type FigureDefinition<C> = {
  /** Kebab-case; the file's name, the method page's address and the id in the results. */
  readonly id: string;
  readonly label: string;
  readonly unit: string | ((context: C) => string);
  /** The number goes up when the same files can give another value. */
  readonly version: number;
  readonly explain: string;
  readonly formula: string | null;
  readonly source: string;
  /** What its tests hold it against, outside this project. */
  readonly checkedBy: readonly string[];
  compute(context: C): FigureOutcome;
};

/** Says that a figure could not be measured. */
export function notMeasured(absent: AbsenceKind, why: string, evidence: readonly Evidence[] = []): NotMeasured {
  return { absent, why, evidence };
}

/**
 * The published form of a figure.
 *
 * @param of              what it is a figure of, as in lib/nouns/figure.ts
 * @param coverageFactor  k of the expanded uncertainty
 */
export function toFigure<C>(definition: FigureDefinition<C>, of: string, context: C, coverageFactor: number): Figure {
  const outcome = definition.compute(context);
  const unit = typeof definition.unit === "string" ? definition.unit : definition.unit(context);
  const common = {
    id: definition.id,
    of,
    label: definition.label,
    unit,
    method: `${definition.id}/${definition.version}`,
    doubts: [...(outcome.doubts ?? [])],
  };
  if ("absent" in outcome)
    return {
      ...common,
      value: null,
      low: outcome.bounds?.low ?? null,
      high: outcome.bounds?.high ?? null,
      basis: "measured",
      evidence: [...(outcome.evidence ?? [])],
      absent: { kind: outcome.absent, why: outcome.why },
    };
  const halfWidth = outcome.standardUncertainty === undefined ? undefined : coverageFactor * outcome.standardUncertainty;
  return {
    ...common,
    value: outcome.value,
    low: endOf(outcome.interval?.low ?? (halfWidth === undefined ? null : outcome.value - halfWidth)),
    high: endOf(outcome.interval?.high ?? (halfWidth === undefined ? null : outcome.value + halfWidth)),
    basis: outcome.basis ?? "measured",
    evidence: [...outcome.evidence],
    absent: null,
  };
}

const endOf = (end: number | null): number | null => (end === null || Number.isFinite(end) ? end : null);

/** The standard uncertainty that a published figure's interval stands for; undefined where it has none. */
export function standardUncertaintyOfFigure(figure: Figure, coverageFactor: number): number | undefined {
  if (figure.low === null || figure.high === null) return undefined;
  return (figure.high - figure.low) / (2 * coverageFactor);
}

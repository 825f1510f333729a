/** A recording's samples: typed columns of one length, as read from one log file. */

export type Samples = {
  /** Seconds from the first row. Not always rising: clocks jump. NaN never occurs; a row without a time is a problem, not a sample. */
  readonly elapsedS: Float64Array;
  /** Volts at the recorder; NaN where the row has none. */
  readonly voltagesV: Float64Array;
  /** Amperes into the battery (charging is positive whatever the recorder's sign); NaN where the row has none. */
  readonly currentsA: Float64Array;
  /** Degrees Celsius; NaN where the row has none; empty where the recorder logs none. */
  readonly temperaturesC: Float64Array;
  /** Line of the file on which each row starts, counted from 1. */
  readonly lines: Uint32Array;
  readonly hasVoltage: boolean;
  readonly hasCurrent: boolean;
  /** The first row's instant in milliseconds since 1970 UTC; undefined where the log only counts. */
  readonly startMs: number | undefined;
  /** The recorder's own power column, W, where it has one; only voltage and current are measured from, this checks them. NaN where a row has none. */
  readonly powersW?: Float64Array;
  /** The recorder's own count of charge, Ah, where it has one; it checks the current. NaN where a row has none. */
  readonly chargesAh?: Float64Array;
};

/** Every line of a log is one of these; the counts are published, so nothing is skipped in silence. */
export type RowCounts = {
  readonly lines: number;
  readonly samples: number;
  readonly blank: number;
  readonly excluded: number;
  /** Rows with a time but without voltage and current. */
  readonly empty: number;
};

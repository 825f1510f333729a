/** A reading: one visit's spot values. A column of readings.csv stands here once, with its unit and its plausible range. */

/** Values that a visit can note. Each is optional; an empty field means "not read". */
export const readingColumns = {
  density_1: { label: "Density, cell 1", unit: "kg/l", low: 1.0, high: 1.4, instrument: "hydrometer" },
  density_2: { label: "Density, cell 2", unit: "kg/l", low: 1.0, high: 1.4, instrument: "hydrometer" },
  density_3: { label: "Density, cell 3", unit: "kg/l", low: 1.0, high: 1.4, instrument: "hydrometer" },
  density_4: { label: "Density, cell 4", unit: "kg/l", low: 1.0, high: 1.4, instrument: "hydrometer" },
  density_5: { label: "Density, cell 5", unit: "kg/l", low: 1.0, high: 1.4, instrument: "hydrometer" },
  density_6: { label: "Density, cell 6", unit: "kg/l", low: 1.0, high: 1.4, instrument: "hydrometer" },
  density_7: { label: "Density, cell 7", unit: "kg/l", low: 1.0, high: 1.4, instrument: "hydrometer" },
  density_8: { label: "Density, cell 8", unit: "kg/l", low: 1.0, high: 1.4, instrument: "hydrometer" },
  density_9: { label: "Density, cell 9", unit: "kg/l", low: 1.0, high: 1.4, instrument: "hydrometer" },
  density_10: { label: "Density, cell 10", unit: "kg/l", low: 1.0, high: 1.4, instrument: "hydrometer" },
  density_11: { label: "Density, cell 11", unit: "kg/l", low: 1.0, high: 1.4, instrument: "hydrometer" },
  density_12: { label: "Density, cell 12", unit: "kg/l", low: 1.0, high: 1.4, instrument: "hydrometer" },
  acid_C: { label: "Acid temperature", unit: "°C", low: -40, high: 70, instrument: "thermometer" },
  battery_C: { label: "Battery temperature", unit: "°C", low: -40, high: 80, instrument: "thermometer" },
  air_C: { label: "Air temperature", unit: "°C", low: -40, high: 60, instrument: "thermometer" },
  rest_h: { label: "Rest before the reading", unit: "h", low: 0, high: 10_000, instrument: undefined },
  rest_V: { label: "Rest voltage", unit: "V", low: 0, high: 40, instrument: "voltmeter" },
  terminal_V: { label: "Terminal voltage, charger connected", unit: "V", low: 0, high: 50, instrument: "voltmeter" },
  clamp_A: { label: "Clamp-meter current, charger connected", unit: "A", low: -100, high: 500, instrument: "clampMeter" },
  cranking_A: { label: "Cranking current", unit: "A", low: 0, high: 3000, instrument: "batteryTester" },
  mains_kWh: { label: "Mains energy meter", unit: "kWh", low: 0, high: 1e6, instrument: "energyMeter" },
  weight_kg: { label: "Battery weight", unit: "kg", low: 0.1, high: 200, instrument: "scale" },
  topped_up_g: { label: "Water topped up after the readings", unit: "g", low: 0, high: 5000, instrument: undefined },
} as const;

export type ReadingColumn = keyof typeof readingColumns;

/** One value with the place it was read from. */
export type SpotValue = { readonly value: number; readonly text: string; readonly line: number; readonly column: number };

export type Reading = {
  /** Row of the readings, from 1. */
  readonly number: number;
  readonly line: number;
  /** The instant, in milliseconds since 1970 UTC. */
  readonly atMs: number;
  /** As written, for showing. */
  readonly atText: string;
  readonly values: Readonly<Partial<Record<ReadingColumn, SpotValue>>>;
  /** Whether the acid was mixed before reading, where noted. */
  readonly mixed?: boolean;
  /** Whether the visitor noted the charger as connected or disconnected on arrival. */
  readonly charger?: "connected" | "disconnected";
  readonly note?: string;
};

/** Units as machines name them. */

/** Common codes of UN/CEFACT Recommendation 20 (from memory), by the symbols that our figures carry. Money has its ISO 4217 code as its unit. */
const codes: Readonly<Record<string, string>> = {
  V: "VLT",
  mV: "2Z",
  A: "AMP",
  Ah: "AMH",
  Wh: "WHR",
  kWh: "KWH",
  W: "WTT",
  Ω: "OHM",
  mΩ: "E45",
  s: "SEC",
  min: "MIN",
  h: "HUR",
  d: "DAY",
  "°C": "CEL",
  K: "KEL",
  g: "GRM",
  kg: "KGM",
  l: "LTR",
  "kg/l": "B35",
  "%": "P1",
  "m³/h": "MQH",
};

/** The code of a unit symbol; undefined for a pure number, for money, and for a unit whose code is not known here. */
export const unitCode = (unit: string): string | undefined => codes[unit];

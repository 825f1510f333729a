import { defineHeld } from "../held-voltage.ts";

export const floatVoltage = defineHeld(
  "float-voltage",
  "Voltage held at float",
  "float",
  "The highest of the lower voltages that the charger held after the limit.",
);

import { defineHeld } from "../held-voltage.ts";

export const limitVoltage = defineHeld(
  "limit-voltage",
  "Voltage held at the limit",
  "constant-voltage",
  "The highest voltage that the charger held while the current fell.",
);

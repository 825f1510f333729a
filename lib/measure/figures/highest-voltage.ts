import { defineHighest } from "../extremes.ts";

export const highestVoltage = defineHighest("voltage");

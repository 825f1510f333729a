import { defineHighest } from "../extremes.ts";

export const highestCurrent = defineHighest("current");

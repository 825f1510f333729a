import type { Forecaster } from "../lib/publish/assemble/forecast.ts";

/** For tests that are not about forecasts: making them takes seconds. */
export const noForecast: Forecaster = () => ({ reference: null, readyBy: [], season: [], ownBatteries: [] });

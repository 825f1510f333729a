/** The one battery on which all chargers are compared, whatever they were tested on. */
import { beliefsOf } from "./battery-priors.ts";
import type { ChargerBehaviour } from "./charger-behaviour.ts";
import { type ChargeForecast, forecastCharge } from "./forecast.ts";
import { startShareFromDensity } from "./start-share.ts";

/**
 * A used flooded battery of 12 V and 60 Ah, left at 1.20 kg/l in a room of 20 °C, 1.275 when full: a common size, about half flat. Its
 * numbers are stated, not measured: what separates two chargers on it is the chargers.
 */
export const referenceCase = {
  construction: "flooded",
  condition: "used",
  ratedAh: 60,
  cells: 6,
  density: { full: 1.275, empty: 1.12 },
  startDensityAt25C: 1.2,
  airC: 20,
  horizonH: 72,
} as const;

/** Forecasts the reference charge; draw k of one charger meets the same battery as draw k of another. */
export function forecastReference(behaviour: ChargerBehaviour): ChargeForecast {
  const { construction, condition, ratedAh, cells, density, startDensityAt25C, airC, horizonH } = referenceCase;
  const start = startShareFromDensity(startDensityAt25C, 0.002, density);
  return forecastCharge({ beliefs: beliefsOf(construction, condition) }, behaviour, {
    ratedAh,
    cells,
    density,
    startShare: start.share,
    startShareUncertainty: start.standardUncertainty,
    airC,
    horizonH,
  });
}

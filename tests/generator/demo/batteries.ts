/** The demo's batteries as they truly are; data/batteries/ says what their labels say. All invented. */
import type { BatteryModel } from "../battery.ts";

/** 60 Ah printed, flooded calcium, three years in a motor launch. */
export const jettySixty: BatteryModel = {
  cells: 6,
  capacityAh: 57,
  fullDensityAt25C: 1.28,
  electrolyteFullG: 880,
  ohmicOhm: 0.0011,
  chargeOhmAh: 0.42,
  acceptance: 0.34,
  tailPower: 1.5,
  hardAh: 4,
  softeningH: 18,
  gasA: 0.012,
  sinkingShare: 0.45,
  crankingA: 540,
  crankingHealth: 0.96,
  heatCapacityJPerK: 14_000,
  heatLossWPerK: 1.3,
};

/** 62 Ah printed, flooded calcium, six years old: slow to take its last third. */
export const weirSixtyTwo: BatteryModel = {
  ...jettySixty,
  capacityAh: 53,
  electrolyteFullG: 905,
  ohmicOhm: 0.0015,
  chargeOhmAh: 0.55,
  acceptance: 0.3,
  tailPower: 1.8,
  hardAh: 11,
  softeningH: 45,
  gasA: 0.014,
  crankingA: 560,
  crankingHealth: 0.85,
};

/** 70 Ah printed, flooded calcium, tall cells with much acid above the plates: layers badly. */
export const steepleSeventy: BatteryModel = {
  ...jettySixty,
  capacityAh: 66,
  electrolyteFullG: 1050,
  hardAh: 8,
  softeningH: 40,
  gasA: 0.004,
  sinkingShare: 0.75,
  crankingA: 640,
  crankingHealth: 0.92,
  heatCapacityJPerK: 16_500,
  heatLossWPerK: 1.4,
};

/** 75 Ah printed, flooded with antimony in the grids, from a work boat: gasses early, mixes well, loses water. */
export const drudgeSeventyFive: BatteryModel = {
  ...jettySixty,
  capacityAh: 71,
  fullDensityAt25C: 1.27,
  electrolyteFullG: 1180,
  hardAh: 5,
  softeningH: 18,
  gasA: 0.045,
  sinkingShare: 0.4,
  crankingA: 520,
  crankingHealth: 0.9,
  heatCapacityJPerK: 18_000,
  heatLossWPerK: 1.4,
};

/** 70 Ah printed, AGM. Recombination is left out of the model: its water balance means nothing, its electrics do. */
export const sealSeventy: BatteryModel = {
  ...jettySixty,
  capacityAh: 69,
  fullDensityAt25C: 1.3,
  electrolyteFullG: 900,
  ohmicOhm: 0.0007,
  chargeOhmAh: 0.32,
  acceptance: 0.3,
  tailPower: 1.4,
  hardAh: 1.5,
  softeningH: 12,
  gasA: 0.01,
  sinkingShare: 0.05,
  crankingA: 720,
  crankingHealth: 0.98,
  heatCapacityJPerK: 17_000,
  heatLossWPerK: 1.3,
};

/** 12 V 10 Ah (ten-hour rate), flooded, from a motorcycle. */
export const mopedTwelve: BatteryModel = {
  ...jettySixty,
  capacityAh: 9.3,
  electrolyteFullG: 148,
  ohmicOhm: 0.004,
  hardAh: 1.2,
  softeningH: 22,
  gasA: 0.035,
  sinkingShare: 0.35,
  crankingA: 120,
  crankingHealth: 0.95,
  heatCapacityJPerK: 3000,
  heatLossWPerK: 0.5,
};

/** 6 V 12 Ah (ten-hour rate), flooded with antimony, from an old motorcycle. */
export const mopedSix: BatteryModel = {
  ...mopedTwelve,
  cells: 3,
  capacityAh: 11.1,
  fullDensityAt25C: 1.27,
  electrolyteFullG: 182,
  hardAh: 1.5,
  softeningH: 22,
  gasA: 0.05,
  crankingA: 90,
  crankingHealth: 0.88,
  heatCapacityJPerK: 1900,
  heatLossWPerK: 0.35,
};

/** How the demo's invented chargers truly behave; data/chargers/ says what their labels say. */
import type { ChargerModel } from "../charger.ts";

const hour = 3600;

/** Delivers its label: 8 A, 14.4 V until the current is small, then float. */
export const bollardNormal: ChargerModel = {
  steps: [
    { kind: "current", currentA: 3, untilV: 14.42, maxH: 0.1 },
    { kind: "current", currentA: 8.15, untilV: 14.42 },
    { kind: "voltage", voltageV: 14.44, limitA: 8.15, untilBelowA: 0.45, forS: 20 * 60, maxH: 10 },
    { kind: "float", voltageV: 13.58, limitA: 8.15 },
  ],
  leadOhm: 0.012,
  warmSag: 0.015,
  efficiency: 0.86,
  standbyW: 1.6,
};

/** The same device switched to AGM. */
export const bollardAgm: ChargerModel = {
  ...bollardNormal,
  steps: [
    { kind: "current", currentA: 3, untilV: 14.7, maxH: 0.1 },
    { kind: "current", currentA: 8.15, untilV: 14.7 },
    { kind: "voltage", voltageV: 14.72, limitA: 8.15, untilBelowA: 0.5, forS: 20 * 60, maxH: 8 },
    { kind: "float", voltageV: 13.66, limitA: 8.15 },
  ],
};

/** Twelve amperes on the box, a little over four at the clamps; then off for good. */
export const gannetNormal: ChargerModel = {
  steps: [
    { kind: "current", currentA: 4.4, untilV: 14.28 },
    { kind: "voltage", voltageV: 14.3, limitA: 4.4, untilBelowA: 0.6, forS: 120, maxH: 14 },
    { kind: "off" },
  ],
  leadOhm: 0.03,
  warmSag: 0.07,
  efficiency: 0.79,
  standbyW: 1.1,
};

/** Works five hours, rests forty minutes, and so on for days. */
export const sandbarNormal: ChargerModel = {
  steps: [
    { kind: "current", currentA: 5.7, untilV: 14.5 },
    { kind: "voltage", voltageV: 14.52, limitA: 5.7, maxH: 400 },
  ],
  leadOhm: 0.018,
  warmSag: 0.02,
  pause: { everyS: 5 * hour, forS: 40 * 60 },
  efficiency: 0.83,
  standbyW: 2.2,
};

/** 14.4 V on the label, nearly 16 V at the posts. */
export const breakwaterNormal: ChargerModel = {
  steps: [
    { kind: "current", currentA: 9.7, untilV: 15.86 },
    { kind: "voltage", voltageV: 15.9, limitA: 9.7, untilBelowA: 1, forS: 30 * 60, maxH: 6 },
    { kind: "float", voltageV: 14.15, limitA: 9.7 },
  ],
  leadOhm: 0.014,
  warmSag: 0.01,
  efficiency: 0.81,
  standbyW: 2.4,
};

/**
 * Full current to 14.4 V, then the same current on and off for four hours, up to 15.2 V, then float.
 * The pulses' period is no multiple of the recorder's 15 s, so that its rows meet every part of a pulse in turn.
 */
export const petrelPulse: ChargerModel = {
  steps: [
    { kind: "current", currentA: 3.95, untilV: 14.4 },
    { kind: "current", currentA: 3.95, ceilingV: 15.2, maxH: 4, pulse: { onS: 71, offS: 43 } },
    { kind: "float", voltageV: 13.5, limitA: 3.95 },
  ],
  leadOhm: 0.022,
  warmSag: 0.01,
  efficiency: 0.82,
  standbyW: 1.4,
};

/** The small one at 12 V: its label's ampere, off when small, on again when the battery has sunk. */
export const cockleTwelve: ChargerModel = {
  steps: [
    { kind: "current", currentA: 0.97, untilV: 14.38 },
    { kind: "voltage", voltageV: 14.4, limitA: 0.97, untilBelowA: 0.12, forS: 300, maxH: 8 },
    { kind: "off", wakeBelowV: 12.72, wakeTo: 1 },
  ],
  leadOhm: 0.04,
  warmSag: 0.01,
  efficiency: 0.7,
  standbyW: 0.5,
};

/** The small one at 6 V gives little more than half of that. */
export const cockleSix: ChargerModel = {
  ...cockleTwelve,
  steps: [
    { kind: "current", currentA: 0.61, untilV: 7.24 },
    { kind: "voltage", voltageV: 7.25, limitA: 0.61, untilBelowA: 0.1, forS: 300, maxH: 8 },
    { kind: "off", wakeBelowV: 6.335, wakeTo: 1 },
  ],
  efficiency: 0.62,
};

/** Never above 13.2 V: the charge goes in slowly and the acid is never stirred. */
export const coracleNormal: ChargerModel = {
  steps: [
    { kind: "current", currentA: 3.75, untilV: 13.18 },
    { kind: "voltage", voltageV: 13.2, limitA: 3.75, maxH: 400 },
  ],
  leadOhm: 0.02,
  warmSag: 0.02,
  efficiency: 0.8,
  standbyW: 1.8,
};

/** Never lets go: 14.7 V for as long as it is connected. */
export const limpetNormal: ChargerModel = {
  steps: [
    { kind: "current", currentA: 5.05, untilV: 14.7 },
    { kind: "voltage", voltageV: 14.72, limitA: 5.05 },
  ],
  leadOhm: 0.016,
  warmSag: 0.01,
  throttle: { afterS: 2 * hour, forS: 30 * 60, factor: 0.55 },
  efficiency: 0.84,
  standbyW: 2.1,
};

/** A transformer, a rectifier and a clockwork timer of twelve hours. */
export const slipwayNormal: ChargerModel = {
  steps: [{ kind: "droop", openV: 16.35, ohm: 0.32, maxH: 12 }, { kind: "off" }],
  leadOhm: 0.015,
  warmSag: 0,
  efficiency: 0.64,
  standbyW: 4.5,
};

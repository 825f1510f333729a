/**
 * Twenty ways in which chargers behave, each a short programme for whatever battery it is tied to.
 *
 * All are invented; every number is drawn from a range, by a written seed, so that nothing can be tuned to one case.
 */
import type { EndingFacts } from "../../lib/measure/ending.ts";
import type { Ender } from "../../lib/nouns/stage.ts";
import type { Random } from "../generator/random.ts";
import { heldV, hold, lamps, off, pulses, push, sag } from "./phases.ts";
import { between, type Size } from "./plant.ts";
import type { Connection, Phase } from "./programme.ts";

/** What a behaviour may build on: its battery's size, and sensible levels for it. */
export type Given = {
  readonly random: Random;
  readonly size: Size;
  /** The charger's current, A; C/12 to C/6. */
  readonly bulkA: number;
  /** Its limit and float, V. */
  readonly limitV: number;
  readonly floatV: number;
  /** Current at which a charge counts as full, A; C/45 to C/30. */
  readonly fullA: number;
};

export type Setup = Omit<Connection, "plant" | "airC" | "maxH"> & {
  readonly airC?: Connection["airC"];
  readonly maxH?: number;
  /** Cuts the recording, at seconds from clamps on, for a reason that no rule of the recorder tells. */
  readonly cut?: { readonly atS: number; readonly by: Exclude<Ender, "unknown" | "charger"> };
  /** What the visitor wrote down, beside when the clamps came off. */
  readonly noted?: Partial<Pick<EndingFacts, "seen">> & { readonly offAtS?: number; readonly sawCurrent?: boolean };
};

export type Behaviour = {
  readonly id: string;
  readonly label: string;
  /** What it asks of battery or charger beyond the usual draw. */
  readonly size?: (random: Random) => Partial<Size>;
  readonly bulkShare?: readonly [number, number];
  readonly build: (given: Given) => Setup;
};

const hour = 3600;

/** The usual charge: full current to the limit, then the limit until little flows. */
const bulkAndHold = ({ bulkA, limitV, fullA }: Given, kneeV?: number): Phase =>
  hold(limitV, bulkA, { untilBelowA: fullA, maxH: 26, ...(kneeV === undefined ? {} : { kneeV }) });

const float = ({ floatV, bulkA }: Given, maxH: number): Phase => hold(floatV, bulkA, { kind: "float", maxH });

/** How long full current will about flow before the limit, hours: what is missing up to 75 % of charge. */
const bulkH = ({ size, bulkA }: Given): number => (Math.max(0.1, 0.75 - size.startCharge) * size.capacityAh) / bulkA;

/** None divides a recorder's interval: one that looks in step with the pulses sees none, and then nothing can be asked of it. */
const periodsS = [7, 11, 13, 17, 23, 37, 43, 53] as const;

export const behaviours: readonly Behaviour[] = [
  {
    id: "iuou",
    label: "Full current, limit, float",
    build: (given) => ({ phases: [bulkAndHold(given), float(given, between(given.random, 2, 8))] }),
  },
  {
    id: "iu-cut",
    label: "Full current, limit; the recorder gives up at the limit",
    build: (given) => ({
      phases: [hold(given.limitV, given.bulkA, { maxH: bulkH(given) + 20 })],
      cut: { atS: Math.round((bulkH(given) + between(given.random, 1.5, 4)) * hour), by: "recorder" },
      noted: { sawCurrent: given.random.uniform() < 0.5 },
    }),
  },
  {
    id: "iua",
    label: "Full current, limit, off",
    build: (given) => ({ phases: [bulkAndHold(given), off(between(given.random, 1, 6))] }),
  },
  {
    id: "soft-start",
    label: "Low current first, then full current, limit, float",
    build: (given) => {
      const { random, bulkA, limitV } = given;
      const low = push(bulkA * between(random, 0.2, 0.4), { untilV: limitV, kind: "soft-start", maxH: between(random, 0.15, 0.7) });
      return { phases: [low, bulkAndHold(given), float(given, 3)] };
    },
  },
  {
    id: "w-clock",
    label: "Unregulated until the clock ends it",
    build: ({ random, size, bulkA }) => {
      const line = {
        startA: 1.3 * bulkA,
        startV: 2.05 * size.cells,
        share: between(random, 0.55, 0.8),
        endV: between(random, 2.4, 2.6) * size.cells,
      };
      return { phases: [sag(line, { stops: false, maxH: between(random, 8, 14) }), off(2)] };
    },
  },
  {
    id: "w-held",
    label: "Unregulated up to a limit that is then held",
    build: (given) => {
      const { random, size, bulkA, limitV } = given;
      const share = between(random, 0.4, 0.65);
      const endV = heldV(limitV, bulkA, 1.2 * bulkA * (1 - share));
      const line = { startA: 1.2 * bulkA, startV: 2.05 * size.cells, share, endV };
      return { phases: [sag(line, { stops: true, maxH: 24 }), bulkAndHold(given), off(2)] };
    },
  },
  {
    id: "sagging-bulk",
    label: "Current sags by 10 to 15 % before the limit",
    build: (given) => {
      const { random, size, bulkA, limitV } = given;
      const share = between(random, 0.1, 0.15);
      const endV = heldV(limitV, bulkA, bulkA * (1 - share));
      const line = { startA: bulkA, startV: 2.05 * size.cells, share, endV };
      return {
        phases: [sag(line, { kind: "constant-current", mayBe: ["drooping"], stops: true, maxH: 24 }), bulkAndHold(given), float(given, 2)],
      };
    },
  },
  {
    id: "rounded-knee",
    label: "Full current, rounded corner, limit, float",
    build: (given) => ({
      phases: [bulkAndHold(given, given.size.cells * between(given.random, 0.02, 0.05)), float(given, 3)],
    }),
  },
  {
    id: "two-limits",
    label: "A higher limit, then a lower one, then float",
    build: (given) => {
      const { random, size, bulkA, fullA, limitV } = given;
      const high = size.cells * between(random, 2.45, 2.48);
      const low = Math.min(limitV, size.cells * 2.39);
      return {
        phases: [
          push(bulkA, { untilV: heldV(high, bulkA, bulkA) }),
          hold(high, bulkA, { untilBelowA: fullA, maxH: between(random, 0.7, 2.5) }),
          hold(low, bulkA, { maxH: between(random, 2, 4) }),
          float(given, 3),
        ],
      };
    },
  },
  {
    id: "iuia",
    label: "Full current, limit, a small held current above the limit, off",
    build: (given) => {
      const { random, size, bulkA, limitV } = given;
      const finishingA = size.capacityAh / between(random, 20, 30);
      return {
        phases: [
          hold(limitV, bulkA, { untilBelowA: 0.9 * finishingA, forS: 120, maxH: 20 }),
          push(finishingA, { untilV: 2.75 * size.cells, kind: "finishing-current", maxH: between(random, 1.5, 4) }),
          off(2),
        ],
      };
    },
  },
  {
    id: "pulse-train",
    label: "Full current to the limit, pulses of shrinking duty, float",
    build: (given) => {
      const { random, size, bulkA, limitV } = given;
      const periodS = periodsS[Math.floor(random.uniform() * periodsS.length)] ?? 7;
      const train = [0.8, 0.5, 0.2].map((duty) => {
        const onS = Math.max(1, Math.round(duty * periodS));
        return pulses(bulkA, 2.6 * size.cells, { onS, offS: periodS - onS, maxH: between(random, 0.5, 1.5) });
      });
      return { phases: [push(bulkA, { untilV: limitV }), ...train, float(given, 2)] };
    },
  },
  {
    id: "on-off",
    label: "Full current, limit, then off and on between two voltages",
    build: (given) => {
      const { random, size, bulkA, limitV } = given;
      const wakeV = size.cells * between(random, 2.16, 2.22);
      return {
        phases: [
          bulkAndHold(given),
          off(24, { kind: "on-off-holding", belowV: wakeV }),
          { ...push(bulkA / 4, { untilV: limitV, kind: "on-off-holding", maxH: 2 }), next: 1 },
        ],
        maxH: bulkH(given) + between(random, 18, 26),
      };
    },
  },
  {
    id: "heat",
    label: "Full current halved for a while now and then, limit, float",
    bulkShare: [1 / 10, 1 / 7],
    build: (given) => {
      const everyS = Math.round(between(given.random, 70, 120)) * 60;
      const forS = Math.round(between(given.random, 20, 40)) * 60;
      return {
        phases: [bulkAndHold(given), float(given, 2)],
        heatShare: (totalS) => (totalS % (everyS + forS) >= everyS ? 0.5 : 1),
      };
    },
  },
  {
    id: "mains-hour",
    label: "Mains lost for an hour in full current; then it goes on",
    build: (given) => {
      const fromS = Math.round(bulkH(given) * between(given.random, 0.3, 0.7) * hour);
      return {
        phases: [bulkAndHold(given), float(given, 2)],
        dark: { fromS, toS: fromS + Math.round(between(given.random, 0.8, 1.2) * hour) },
      };
    },
  },
  {
    id: "mains-and-recorder",
    label: "Mains lost, and the recorder with them",
    build: (given) => {
      const atS = Math.round(bulkH(given) * between(given.random, 0.6, 1.5) * hour);
      return {
        phases: [bulkAndHold(given), float(given, 2)],
        maxH: bulkH(given) + 10,
        cut: { atS, by: "mains" },
        noted: { seen: "mains", offAtS: atS },
      };
    },
  },
  {
    id: "clamps-off",
    label: "Clamps taken off at the limit; the recorder stays on the battery",
    build: (given) => ({
      phases: [hold(given.limitV, given.bulkA, { maxH: 90 })],
      maxH: bulkH(given) + between(given.random, 1.5, 3.5),
      recordedAfterH: between(given.random, 1, 5),
    }),
  },
  {
    id: "lamps-first",
    label: "Lamps on, a rest, then full current, limit, float",
    size: (random) => ({ startCharge: between(random, 0.45, 0.7) }),
    build: (given) => {
      const { random, size } = given;
      return {
        phases: [
          lamps(size.capacityAh / between(random, 8, 20), between(random, 0.8, 3)),
          off(between(random, 0.1, 0.5)),
          bulkAndHold(given),
          float(given, 2),
        ],
      };
    },
  },
  {
    id: "never-leaves",
    label: "Full current, then the limit for days",
    build: (given) => ({
      phases: [hold(given.limitV, given.bulkA, { maxH: between(given.random, 50, 66) })],
      noted: { sawCurrent: true },
    }),
  },
  {
    id: "too-weak",
    label: "A weak charger on a big battery, two days without reaching its limit",
    size: (random) => ({ cells: 6, capacityAh: between(random, 80, 100), startCharge: between(random, 0.02, 0.06) }),
    bulkShare: [1 / 64, 1 / 58],
    build: ({ random, size, bulkA }) => ({ phases: [push(bulkA, { untilV: 2.6 * size.cells, maxH: between(random, 42, 46) })] }),
  },
  {
    id: "warm-days",
    label: "Full current, limit, a float that follows the day's temperature",
    build: (given) => {
      const { random, size, floatV, bulkA } = given;
      const startHour = between(random, 0, 24);
      // −3 mV a cell and kelvin: the slope in battery makers' sheets (common practice).
      const slopeVPerK = -0.003 * size.cells;
      return {
        phases: [
          bulkAndHold(given),
          {
            ...float(given, 40),
            offer: (now) => {
              const voltageV = floatV + slopeVPerK * (now.airC - 20);
              return { limitA: bulkA, voltageV, ohm: (0.002 * voltageV) / bulkA };
            },
          },
        ],
        airC: (totalS) => 20 + 7.5 * Math.cos(((totalS / hour + startHour) / 24) * 2 * Math.PI),
      };
    },
  },
];

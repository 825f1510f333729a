/** Invented chargers for the tests of the page side by side. */
import type { ComparedCharger, ComparedFigure, ComparedMode, ComparedRun, Conditions } from "../../../lib/publish/side-by-side/compared.ts";

export const alike: Conditions = { nominalVoltageV: 12, construction: "flooded-calcium", capacityAh: 60, targetAt25C: 1.265 };

/** A measured figure that asks for batteries alike in all. */
export function figureBetween(low: number | null, high: number | null, parts: Partial<ComparedFigure> = {}): ComparedFigure {
  return {
    id: "hours-to-target",
    label: "Hours to target",
    unit: "h",
    value: low !== null && high !== null ? (low + high) / 2 : (low ?? high),
    low,
    high,
    basis: "measured",
    absent: null,
    // Statements go by the interval, not by how it is written.
    written: null,
    doubts: [],
    heldOn: ["nominalVoltageV", "construction", "capacityAh", "targetAt25C"],
    to: "tests/first/",
    ...parts,
  };
}

export function runOf(id: string, conditions: Partial<Conditions> = {}): ComparedRun {
  return {
    test: { id, name: id },
    batteryName: "Ferry",
    battery: "Ferry: 12 V",
    target: "1.265 kg/l",
    conditions: { ...alike, ...conditions },
    discharged: null,
    status: "reached",
    verdict: { sentence: "Fine.", weight: "good" },
    characteristic: "IU",
    figures: [],
    profile: null,
    recording: null,
  };
}

export function modeOf(id: string, runs: readonly ComparedRun[]): ComparedMode {
  return { id, name: id.toUpperCase(), claims: [], season: [], figures: [], reference: { because: "nobody asked" }, unknowns: [], runs };
}

export function chargerOf(id: string, modes: readonly ComparedMode[]): ComparedCharger {
  return {
    id,
    name: id,
    maker: null,
    invented: true,
    priced: null,
    verdict: { sentence: "Fine.", weight: "good" },
    figures: [],
    modes,
    notSeen: [],
  };
}

/** A mode's behaviour, derived from every recording of its tests. */

import type { TestContext } from "../../measure/test-context.ts";
import { uncertaintyOfReading } from "../../measure/uncertainty-of-reading.ts";
import { type ChargerBehaviour, chargerBehaviourOf } from "../../project/index.ts";

/** Taken where a recorder's accuracy is not stated, as a share of the reading; our assumption. */
const unstatedShare = { current: 0.02, voltage: 0.005 } as const;

/**
 * Derives how a mode behaves.
 *
 * @param tests  tests of one mode, at least one
 * @returns undefined where no recording shows a stage with current
 */
export function behaviourOfMode(tests: readonly TestContext[]): ChargerBehaviour | undefined {
  const first = tests[0];
  if (first === undefined) return undefined;
  const recorded = tests.flatMap((test) =>
    test.connections.flatMap((connection) =>
      connection.recordings.map((recording, place) => ({ recording, endedBy: connection.endings[place]?.by ?? ("unknown" as const) })),
    ),
  );
  const { claims } = first.mode;
  const { nominalVoltageV } = first.battery;
  const worst = (quantity: "current" | "voltage", typical: number): number =>
    Math.max(
      0,
      ...recorded.map(({ recording }) => uncertaintyOfReading(recording, quantity, typical) ?? unstatedShare[quantity] * typical),
    );
  const highestA = Math.max(0, ...recorded.flatMap(({ recording }) => recording.stages.map((stage) => stage.currentMeanA ?? 0)));
  const holding = recorded.map(({ recording }) => recording.holding).find((thresholds) => thresholds !== undefined);
  const { standbyW } = first.charger;
  return chargerBehaviourOf(
    recorded.map(({ recording, endedBy }) => ({ stages: recording.stages, endedBy })),
    {
      standardUncertaintyA: worst("current", highestA),
      standardUncertaintyV: worst("voltage", nominalVoltageV * 1.2),
      nominalVoltageV,
      efficiency: first.rules.chargerEfficiency,
      ...(standbyW === undefined ? {} : { standbyW: { low: standbyW, high: standbyW } }),
      ...(claims.currentA === undefined ? {} : { claimedCurrentA: claims.currentA.value }),
      ...(claims.voltageV === undefined ? {} : { claimedLimitV: claims.voltageV.value }),
      ...(holding === undefined ? {} : { holding: { wakeV: holding.wakeV, stopV: holding.stopV } }),
    },
  );
}

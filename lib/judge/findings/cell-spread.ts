import { lagsOf, missingVoltageV } from "../../measure/cell-lags.ts";
import { isSealed, type MeasuredReading, type TestContext } from "../../measure/test-context.ts";
import type { FindingDefinition } from "../define-finding.ts";

/** Lag at which vehicle service manuals begin to reject a battery, and the spread that a military manual allows, kg/l. */
const rejectLag = 0.04;
const evenSpread = 0.025;
/** A cell that lagged by less than this before was not lagging, kg/l: what rounding of a common hydrometer can make of level cells. */
const ordinaryLag = 0.02;
/** A lag that has shrunk to this share of its largest is on its way out; our rule. */
const shrunkShare = 0.6;
/** A rest voltage this far below what the acid gives misses most of a cell's 2.1 V; our rule. */
const wholeCellV = 1.5;
/** Between these a cell rests, V: as flat as a starter battery is made, and full with a sealed one's strong acid (one maker's 2.17 V; read). */
const restingCellV = { flat: 1.85, full: 2.17 } as const;

type Judged = NonNullable<ReturnType<FindingDefinition["judge"]>>;

/** A visit that read two cells or more, with the lag of each. */
type CellVisit = { readonly reading: MeasuredReading; readonly spread: number; readonly lags: ReturnType<typeof lagsOf> };

export const cellSpread: FindingDefinition = {
  id: "cell-spread",
  subject: "Is a cell weak?",
  explain:
    "A cell that lags behind its neighbours limits the battery, and makes any charger look weak. One that lags at visit after visit is weak; one that lags by about a whole cell, with 2 V missing at rest, is shorted; one that lagged at a single visit was more likely read badly or just topped up.",
  source:
    "Vehicle service manuals reject at 0.040 to 0.050 kg/l, a military manual at 0.025 (common practice); what the visits must show is our rule.",
  checkedBy: ["Small invented test records, by hand", "Bode's curve for the rest voltage that the cells' acid gives (W051 to W054)"],
  judge(context) {
    const visits = cellVisits(context);
    const last = visits.at(-1);
    const shorted = judgeShort(context, last);
    if (shorted !== undefined) return shorted;
    if (last === undefined) return undefined;
    const limiting = lowestOf(last);
    const highest = highestOf(last);
    if (limiting.lag >= rejectLag) return judgeLag(visits, last, limiting.cell);
    if (-highest.lag >= rejectLag)
      return {
        ...common(last),
        verdict: "a cell stands above",
        weight: "unsure",
        sentence: `Cell ${highest.cell} read ${(-highest.lag).toFixed(3)} kg/l above the others at the last visit: acid was added to it, its level is low, or it was read badly.`,
        why: [cellsInWords(last)],
        wouldSettle: "the level of each cell, and a second reading once it is right and the acid is mixed",
      };
    return judgeEven(visits, last);
  },
};

function cellVisits({ readings }: TestContext): CellVisit[] {
  return readings.flatMap((reading) => {
    const cells = reading.density?.cells ?? [];
    if (cells.length < 2) return [];
    const values = cells.map(({ at25C }) => at25C);
    return [{ reading, spread: Math.max(...values) - Math.min(...values), lags: lagsOf(cells) }];
  });
}

const lowestOf = ({ lags }: CellVisit) => lags.reduce((a, b) => (b.lag > a.lag ? b : a));
const highestOf = ({ lags }: CellVisit) => lags.reduce((a, b) => (b.lag < a.lag ? b : a));
const lagIn = ({ lags }: CellVisit, cell: number): number | undefined => lags.find((one) => one.cell === cell)?.lag;

function common({ reading }: CellVisit): Pick<Judged, "figures" | "doubts"> {
  return {
    figures: [`reading/${reading.number}#density-spread`, `reading/${reading.number}#density-at-25c`],
    doubts:
      reading.mixed === true ? [] : ["the acid was read as found; cells that gas unevenly differ at the top before they do in charge"],
  };
}

function cellsInWords({ reading }: CellVisit): string {
  const cells = (reading.density?.cells ?? []).map(({ cell, at25C }) => `cell ${cell} ${at25C.toFixed(3)}`);
  return `visit ${reading.number}: ${cells.join(", ")} kg/l at 25 °C`;
}

/** A cell that lags by what service manuals reject, told by what the visits before it saw. */
function judgeLag(visits: readonly CellVisit[], last: CellVisit, cell: number): Judged {
  const history = visits.flatMap((one) => {
    const lag = lagIn(one, cell);
    return lag === undefined ? [] : [{ visit: one.reading.number, lag }];
  });
  const lag = lagIn(last, cell) ?? Number.NaN;
  const earlier = history.slice(0, -1).map((one) => one.lag);
  const mostEarlier = Math.max(...earlier);
  const lagging = history.filter((one) => one.lag >= rejectLag).length;
  const base = {
    ...common(last),
    why: [
      cellsInWords(last),
      `cell ${cell} below the median of the others: ${history.map((one) => `${one.lag.toFixed(3)} at visit ${one.visit}`).join(", ")} kg/l`,
    ],
  };
  if (earlier.length === 0)
    return {
      ...base,
      verdict: "a cell lags",
      weight: "caution",
      sentence: `Cell ${cell} read ${lag.toFixed(3)} kg/l below the others at the one visit that read them: it may be weak, just topped up, or read badly.`,
      wouldSettle: "a second reading of every cell after the next charge, levels checked first",
    };
  if (mostEarlier < ordinaryLag)
    return {
      ...base,
      verdict: "a cell lags, at one visit only",
      weight: "unsure",
      sentence: `Cell ${cell} read ${lag.toFixed(3)} kg/l below the others at the last visit, and was level with them before: more likely topped up or read badly than weak.`,
      wouldSettle: `a second reading of cell ${cell}, after the acid was mixed by a charge`,
    };
  if (lag <= shrunkShare * mostEarlier)
    return {
      ...base,
      verdict: "a cell lags, and is catching up",
      weight: "caution",
      sentence: `Cell ${cell} limits this battery: it still read ${lag.toFixed(3)} kg/l below the others at the last visit, after ${mostEarlier.toFixed(3)}; it is catching up.`,
      wouldSettle: "a longer charge, and a reading of every cell after it",
    };
  return {
    ...base,
    verdict: "a weak cell",
    weight: "caution",
    sentence: `Cell ${cell} limits this battery: it read ${lag.toFixed(3)} kg/l below the others at the last visit, lagged at ${lagging} of ${history.length} visits and did not catch up. The battery itself may be at fault, and makes any charger look weak.`,
    wouldSettle: "the voltage of each cell under load, or the same charge on another battery",
  };
}

/** Cells that are level enough at the last visit, told with what was seen before. */
function judgeEven(visits: readonly CellVisit[], last: CellVisit): Judged {
  const earlier = visits.slice(0, -1).flatMap((one) => {
    const { cell, lag } = lowestOf(one);
    return lag >= rejectLag ? [{ visit: one.reading.number, cell, lag }] : [];
  });
  const worst = earlier.sort((a, b) => b.lag - a.lag)[0];
  const why = [
    cellsInWords(last),
    ...earlier.map(({ visit, cell, lag }) => `visit ${visit}: cell ${cell} ${lag.toFixed(3)} kg/l below the others`),
  ];
  if (worst !== undefined) {
    const wasFirst = worst.visit === visits[0]?.reading.number;
    return {
      ...common(last),
      verdict: wasFirst ? "no, it caught up" : "at one visit only",
      weight: wasFirst ? "good" : "note",
      sentence: wasFirst
        ? `Cell ${worst.cell} began ${worst.lag.toFixed(3)} kg/l below the others and caught up: within ${last.spread.toFixed(3)} at the last visit.`
        : `Cell ${worst.cell} read ${worst.lag.toFixed(3)} kg/l below the others at visit ${worst.visit} and was level again at the last: topped up or read badly, rather than weak.`,
      why,
      wouldSettle: null,
    };
  }
  if (last.spread < evenSpread)
    return {
      ...common(last),
      doubts: [],
      verdict: "no",
      weight: "good",
      sentence: `The cells are even: within ${last.spread.toFixed(3)} kg/l of each other at the last visit.`,
      why,
      wouldSettle: null,
    };
  const { cell, lag } = lowestOf(last);
  return {
    ...common(last),
    verdict: "uneven",
    weight: "note",
    sentence: `The cells differ by ${last.spread.toFixed(3)} kg/l at the last visit, cell ${cell} being the lowest, ${lag.toFixed(3)} below the others: not enough to call one weak.`,
    why,
    wouldSettle: "a longer charge, and a reading of every cell after it",
  };
}

/** A shorted cell: most of a cell's voltage missing at rest, beside what the acid gives or, without any, after a charge. */
function judgeShort(context: TestContext, last: CellVisit | undefined): Judged | undefined {
  const { battery } = context;
  const rested = context.readings.findLast((reading) => reading.values.rest_V !== undefined && reading.connectionsBefore > 0);
  const restV = rested?.values.rest_V?.value;
  if (rested === undefined || restV === undefined) return undefined;
  const missingV = missingVoltageV(rested, battery.cells);
  // Without acid to go by: no more than one cell fewer gives when full, and less than all give when flat. Far below that it is another
  // battery or a wrong reading. Of twelve cells one hides among flat ones, and nothing is said.
  const others = battery.cells - 1;
  const isOneCellLow =
    restV <= Math.min(restingCellV.full * others, restingCellV.flat * battery.cells) && restV > restingCellV.flat * others;
  if (missingV === undefined ? !isOneCellLow : missingV < wholeCellV) return undefined;
  const lowest = last === undefined ? undefined : lowestOf(last);
  const suspect = lowest !== undefined && lowest.lag >= rejectLag ? lowest : undefined;
  const expected =
    missingV === undefined
      ? `${others} full cells rest at ${(restingCellV.full * others).toFixed(1)} V at most, and this battery of ${battery.cells} did not come above that after a charge`
      : `the acid read gives ${(restV + missingV).toFixed(2)} V, so ${missingV.toFixed(1)} V are missing`;
  return {
    verdict: "a cell may be shorted",
    weight: "bad",
    sentence: `${suspect === undefined ? "A cell" : `Cell ${suspect.cell}`} may be shorted: the battery rested at ${restV.toFixed(2)} V at visit ${rested.number}, about a whole cell too low. Do not go on charging it: the other cells overcharge, gas and heat.`,
    why: [
      `${expected}; one cell stands for about 2 V`,
      ...(last === undefined ? [] : [cellsInWords(last)]),
      ...(suspect === undefined || last === undefined
        ? []
        : [`cell ${suspect.cell} lies ${suspect.lag.toFixed(3)} kg/l below the median of the others`]),
    ],
    wouldSettle: isSealed(battery)
      ? "a second voltmeter at rest, then a battery service: a sealed battery gives no access to its cells"
      : "the voltage of each cell at rest, between neighbouring cells' acid or links: a shorted one shows well under 2 V",
    figures: [`reading/${rested.number}#rest-v`, ...(last === undefined ? [] : [`reading/${last.reading.number}#density-spread`])],
    doubts: missingV === undefined ? ["the acid was not read, so a battery that took no charge, or a wrong voltmeter, looks alike"] : [],
  };
}

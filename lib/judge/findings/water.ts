import { meanGassingCurrentA, waterElectrolysedG } from "../../electrochem/faraday.ts";
import { connectedWithin } from "../../measure/connected-time.ts";
import { overchargeWater } from "../../measure/figures/overcharge-water.ts";
import { findWeighings, waterLostWeighed } from "../../measure/figures/water-lost-weighed.ts";
import { findHoldingCurrent, type HoldingCurrent } from "../../measure/holding-current.ts";
import { isSealed, type TestContext } from "../../measure/test-context.ts";
import type { FindingDefinition } from "../define-finding.ts";

/** What a full vented battery takes on float, mA per Ah (IEC 62485-2, before its margins): more than this costs more water than a float. */
const floatMAPerAh = 1;
/** A weighing over less time connected than this says nothing of what leaving it on costs, h; our rule. */
const leastHours = 24;
const daysPerMonth = 30;

const figures = ["test#water-lost-weighed", "test#overcharge-water", "test#water-reserve-days", "test#hydrogen", "test#ventilation-need"];

const caution =
  "Top up with distilled water only, never with acid, and after the charge; goggles and gloves against acid, fresh air and no sparks against hydrogen. The battery's maker, local codes and licensed practice come first.";

type Judged = NonNullable<ReturnType<FindingDefinition["judge"]>>;

export const water: FindingDefinition = {
  id: "water",
  subject: "What does leaving it on cost in water?",
  explain:
    "Charge that a full battery no longer takes splits water into gas. Weighing measures what is gone; without a scale, the current that still flows at a voltage held for long gives the most that it can be, 0.336 g an ampere-hour in each cell. Held against what a full vented battery takes on float, 1 mA per Ah.",
  source: "Faraday's law; 1 mA per Ah on float: IEC 62485-2 as given on public pages. A look at the levels once a month: common practice.",
  checkedBy: ["W005 to W008: water an ampere-hour, and the mean current that a weighed loss stands for"],
  judge(context) {
    const weighed = weighedLoss(context);
    if (isSealed(context.battery)) return judgeSealed(weighed);
    if (weighed !== undefined && weighed.hours >= leastHours) return judgeWeighed(context, weighed);
    const held = findHoldingCurrent(context);
    const judged = held !== undefined && held.currentA > 0 ? judgeHeld(context, held) : judgeUnseen(context);
    return weighed === undefined
      ? judged
      : { ...judged, doubts: [...judged.doubts, `${weightInWords(weighed)}: too short a time to say what leaving it on costs`] };
  },
};

type WeighedLoss = {
  readonly lostG: number;
  readonly interval: { readonly low: number; readonly high: number } | undefined;
  /** Hours known to be connected between the weighings. */
  readonly hours: number;
  readonly doubts: readonly string[];
};

function weighedLoss(context: TestContext): WeighedLoss | undefined {
  const outcome = waterLostWeighed.compute(context);
  const between = findWeighings(context);
  if ("absent" in outcome || between === undefined) return undefined;
  const hours = context.connections.reduce(
    (sum, connection) => sum + (connectedWithin(context, connection, between.first.atMs, between.last.atMs)?.low ?? 0),
    0,
  );
  return { lostG: outcome.value, interval: outcome.interval, hours, doubts: outcome.doubts ?? [] };
}

function judgeSealed(weighed: WeighedLoss | undefined): Judged {
  const common = { figures, wouldSettle: "a weighing before and after some weeks connected" };
  if (weighed === undefined)
    return {
      ...common,
      verdict: "cannot be read",
      weight: "untested",
      sentence:
        "What leaving it on costs this sealed battery in water is not known: it recombines most of its gas, cannot be topped up, and was not weighed.",
      why: ["the charge says nothing of the water of a sealed battery"],
      doubts: [],
    };
  const isClear = (weighed.interval?.low ?? 0) > 0;
  return {
    ...common,
    verdict: isClear ? "it lost weight" : "no loss shows",
    weight: isClear ? "caution" : "note",
    sentence: isClear
      ? `This sealed battery lost ${weighed.lostG.toFixed(0)} g in ${weighed.hours.toFixed(0)} h connected, by weight; what a sealed battery loses cannot be put back.`
      : `This sealed battery lost no weight that the scale could show in ${weighed.hours.toFixed(0)} h connected.`,
    why: [weightInWords(weighed)],
    doubts: [...weighed.doubts],
  };
}

/** Weighing is the measurement: it counts before any estimate. */
function judgeWeighed(context: TestContext, weighed: WeighedLoss): Judged {
  const { cells, capacityAh } = context.battery;
  const dailyPerCellG = (24 * weighed.lostG) / (cells * weighed.hours);
  const asMAPerAh = (lostG: number): number => (1000 * meanGassingCurrentA(lostG, cells, weighed.hours)) / capacityAh;
  const estimate = overchargeWater.compute(context);
  const mostG = "absent" in estimate ? undefined : estimate.interval?.high;
  const exceeds = mostG !== undefined && (weighed.interval?.low ?? 0) > mostG;
  const level = levelOf(asMAPerAh(weighed.interval?.low ?? Number.NaN), asMAPerAh(weighed.interval?.high ?? Number.NaN), "measured");
  return {
    ...level,
    sentence: `It lost ${weighed.lostG.toFixed(0)} g of water in ${weighed.hours.toFixed(0)} h connected, by weight: ${dailyPerCellG.toFixed(2)} g a day in each cell. ${topUp(daysOfReserve(context, dailyPerCellG), "about", level)}`,
    why: [
      weightInWords(weighed),
      `all of it gas, that is a mean of ${asMAPerAh(weighed.lostG).toFixed(2)} mA per Ah; a full vented battery takes about ${floatMAPerAh} mA per Ah on float`,
      caution,
    ],
    wouldSettle: null,
    figures,
    doubts: [
      "the charge itself is in it, not only what came after",
      ...(exceeds
        ? [
            `more than the recorded overcharge explains (at most ${mostG.toFixed(0)} g): charge went in unrecorded, or vapour and drops were lost`,
          ]
        : []),
      ...weighed.doubts,
    ],
  };
}

/** Without a scale: the most that the current held at the end can cost. */
function judgeHeld(context: TestContext, held: HoldingCurrent): Judged {
  const { cells, capacityAh } = context.battery;
  const halfWidthA = held.standardUncertainty === undefined ? Number.NaN : context.rules.coverageFactor * held.standardUncertainty;
  const dailyPerCellG = waterElectrolysedG(24 * held.currentA, 1);
  const asMAPerAh = (currentA: number): number => (1000 * currentA) / capacityAh;
  const level = levelOf(asMAPerAh(held.currentA - halfWidthA), asMAPerAh(held.currentA + halfWidthA), "upper bound");
  const estimate = overchargeWater.compute(context);
  const chargeG = "absent" in estimate ? undefined : (estimate.interval?.high ?? estimate.value);
  return {
    // A current that was still falling when the recording ended bounds the loss from above, and says nothing bad of the charger.
    ...(level.weight === "caution" && !held.isSettled ? ({ verdict: "cannot tell yet", weight: "unsure" } as const) : level),
    sentence: `Left on, it can cost up to ${dailyPerCellG.toFixed(2)} g of water a day in each cell, ${(dailyPerCellG * cells * daysPerMonth).toFixed(0)} g a month for the battery. ${topUp(daysOfReserve(context, waterElectrolysedG(24 * (held.currentA + (halfWidthA || 0)), 1)), "at least", level)}`,
    why: [
      `${held.currentA.toFixed(3)} A${Number.isNaN(halfWidthA) ? "" : ` (± ${halfWidthA.toFixed(3)} A)`} flowed at the end, ${held.words}: ${asMAPerAh(held.currentA).toFixed(2)} mA per Ah, where a full vented battery takes about ${floatMAPerAh} mA per Ah on float`,
      ...(chargeG === undefined
        ? []
        : [`the charge itself, in this test: ${chargeG.toFixed(0)} g at most for the battery, by the recorded overcharge`]),
      "an upper bound: what makes up for self-discharge is in that current; some 12 K warmer, or 0.06 V a cell higher, doubles what gasses",
      caution,
    ],
    wouldSettle: held.isSettled
      ? "weighing the battery before and after some weeks connected"
      : "a recording of some days at that hold, or weighing before and after some weeks connected",
    figures,
    doubts: [...held.doubts],
  };
}

/** What the charge itself can have cost, where nobody saw what is held afterwards. */
function judgeUnseen(context: TestContext): Judged {
  const estimate = overchargeWater.compute(context);
  const common = {
    wouldSettle: "a recording, or a clamp-meter reading, days after it reported full; or weighing before and after some weeks connected",
    figures,
  };
  if ("absent" in estimate)
    return {
      ...common,
      verdict: "not put to the test",
      weight: "untested",
      sentence: "What leaving it on costs in water is not known: nobody saw what current it holds, and nothing was weighed.",
      why: [estimate.why, caution],
      doubts: [],
    };
  const most = estimate.interval?.high ?? estimate.value;
  return {
    ...common,
    verdict: "only the charge was seen",
    weight: "untested",
    sentence: `What leaving it on costs in water is not known; the charge itself can have cost ${most.toFixed(0)} g at most.`,
    why: ["the recordings end before anything was held for long", caution],
    doubts: [...(estimate.doubts ?? [])],
  };
}

/** How a loss compares with a float's, by the ends of its interval in mA per Ah; NaN where none can be defended. */
function levelOf(lowMAPerAh: number, highMAPerAh: number, basis: "measured" | "upper bound"): Pick<Judged, "verdict" | "weight"> {
  if (Number.isNaN(lowMAPerAh) || Number.isNaN(highMAPerAh)) return { verdict: "cannot tell", weight: "unsure" };
  if (highMAPerAh <= floatMAPerAh) return { verdict: "little", weight: "good" };
  if (lowMAPerAh > floatMAPerAh)
    return { verdict: basis === "measured" ? "more than a float" : "may be more than a float", weight: "caution" };
  return { verdict: basis === "measured" ? "about a float" : "about a float at most", weight: "note" };
}

/** Days that the stated reserve of a cell lasts at a daily loss in g; undefined where no reserve is stated. */
function daysOfReserve({ battery }: TestContext, dailyPerCellG: number): number | undefined {
  return battery.waterReserveGPerCell === undefined || !(dailyPerCellG > 0) ? undefined : battery.waterReserveGPerCell / dailyPerCellG;
}

/** When to look at the levels: by the stated reserve or, without one, once a month (common practice), and oftener above a float's loss. */
function topUp(days: number | undefined, bound: "about" | "at least", { weight }: Pick<Judged, "weight">): string {
  return days === undefined
    ? `Look at the levels ${weight === "caution" ? "every week at first" : "once a month"}, and top up with distilled water before the plates fall dry.`
    : `The stated reserve lasts ${bound} ${days.toFixed(0)} days: look at the levels before that, and top up with distilled water.`;
}

function weightInWords({ lostG, interval, hours }: WeighedLoss): string {
  const width = interval === undefined ? "" : ` (${interval.low.toFixed(0)} to ${interval.high.toFixed(0)} g)`;
  return `weighed: ${lostG.toFixed(0)} g lost${width}, ${hours.toFixed(0)} h known to be connected in between`;
}

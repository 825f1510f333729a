/** What a mode will do on batteries it was not tested on: the reference case, ready by when, and a season connected. Plain data. */
import type { CompensationRule } from "../../nouns/rules.ts";
import {
  beliefsOf,
  type ChargeForecast,
  type ChargeMark,
  type ChargerBehaviour,
  type Construction,
  cellReserveGPerAh,
  chargeMarks,
  densitiesByKind,
  fitBatteryTests,
  forecastCharge,
  forecastReference,
  holdSeason,
  type Middle,
  middleOfDraws,
  type Range,
  type ReadyCell,
  readyBy,
  referenceCase,
  type SeasonAt,
  type Spread,
} from "../../project/index.ts";
import { printedFloatWindow } from "../float-window.ts";
import type { OwnBattery } from "./battery-tests.ts";

/** A distribution as published: null is "never within the horizon", and an interval is open above where any draw never gets there. */
export type PublishedSpread = { readonly value: number | null; readonly low: number | null; readonly high: number | null };

export type ModeForecast = {
  /** Hours to each mark on the reference battery; null for a mode of another voltage. */
  readonly reference: {
    readonly hours: readonly HoursToMark[];
    /** Until 95 %. */
    readonly mainsKWh: PublishedSpread;
    /** Hours to 95 % in each draw; draw k met the same battery for every charger. */
    readonly drawsH: readonly (number | null)[];
    /** Energy from the mains until then, in the same draws. */
    readonly drawsKWh: readonly (number | null)[];
  } | null;
  readonly readyBy: readonly { readonly construction: Construction; readonly airC: number; readonly cells: readonly ReadyCell[] }[];
  readonly season: readonly PublishedSeason[];
  /** For each battery that was asked for: hours to each mark; null where its logs tell nothing. */
  readonly ownBatteries: readonly (readonly HoursToMark[] | null)[];
};

export type HoursToMark = { readonly mark: ChargeMark; readonly hours: PublishedSpread; readonly reaches: number };

export type PublishedSeason = Omit<SeasonAt, "mainsKWh" | "waterG" | "restartsPerDay" | "topUpDays"> & {
  readonly topUpDays: PublishedSpread | null;
  readonly mainsKWh: PublishedSpread | null;
  readonly waterG: PublishedSpread | null;
  readonly restartsPerDay: PublishedSpread | null;
};

export type ModeQuestion = {
  readonly behaviour: ChargerBehaviour;
  readonly nominalVoltageV: number;
  readonly claimedAh: Range | null;
  /** Kinds of battery that the mode is for, as the maker says or as it was tested. */
  readonly kinds: readonly Construction[];
  readonly compensation: CompensationRule;
  /** How the charger's own voltages move with temperature, mV for each K and cell, where the maker states it. */
  readonly statedCompensationMVPerK: number | null;
  /** Batteries of the bench, each as it was found before a test of this mode. */
  readonly ownBatteries: readonly (Pick<OwnBattery, "asked" | "others"> & { readonly construction: Construction })[];
};

/** Draws a cell of the matrix rests on: probabilities in steps of a thirty-second are as fine as its three words need. */
const matrixDraws = 32;
/** An ordinary room, °C. */
const roomC = 20;
/** The battery on which a season is held: the reference one. */
const seasonAh = 60;

/**
 * Forecasts a mode. The same question gives the same answer to the last digit; it takes tenths of a second, seconds for a charger that
 * goes on and off.
 */
export function forecastMode(question: ModeQuestion): ModeForecast {
  const { behaviour, nominalVoltageV, claimedAh, kinds, compensation, statedCompensationMVPerK } = question;
  const cells = Math.round(nominalVoltageV / 2);
  const window = printedFloatWindow("flooded");
  const season = holdSeason(behaviour, {
    beliefs: beliefsOf("flooded", "used"),
    construction: "flooded",
    ratedAh: seasonAh,
    cells,
    density: densitiesByKind.flooded,
    reserveG: { low: cellReserveGPerAh.low * seasonAh * cells, high: cellReserveGPerAh.high * seasonAh * cells },
    window: { at25C: { low: (window.low * cells) / 6, high: (window.high * cells) / 6 }, ...compensation },
    ...(statedCompensationMVPerK === null
      ? {}
      : { compensationMVPerKPerCell: { low: statedCompensationMVPerK, high: statedCompensationMVPerK } }),
  });
  return {
    reference: nominalVoltageV === 12 ? referenceOf(behaviour) : null,
    readyBy: kinds.map((construction) => ({
      construction,
      airC: roomC,
      cells: readyBy(behaviour, {
        construction,
        condition: "used",
        airC: roomC,
        cells,
        draws: matrixDraws,
        ...(claimedAh === null ? {} : { claimedAh }),
      }),
    })),
    season: season.map((row) => ({
      ...row,
      topUpDays: publishedIfKnown(row.topUpDays),
      mainsKWh: publishedIfKnown(row.mainsKWh),
      waterG: publishedIfKnown(row.waterG),
      restartsPerDay: publishedIfKnown(row.restartsPerDay),
    })),
    ownBatteries: question.ownBatteries.map((own) => hoursOnOwnBattery(behaviour, own)),
  };
}

function referenceOf(behaviour: ChargerBehaviour): ModeForecast["reference"] {
  const forecast = forecastReference(behaviour);
  const mainsKWh = forecast.draws.map(({ mainsWhTo }) => mainsWhTo["95 %"] / 1000);
  return {
    hours: hoursToMarks(forecast),
    mainsKWh: published(middleOfDraws(mainsKWh)),
    drawsH: forecast.draws.map(({ hoursTo }) => finite(hoursTo["95 %"])),
    drawsKWh: mainsKWh.map(finite),
  };
}

/** The same battery once more, as flat as it was found, known by all its logs. How it was kept is in them, so nothing is believed of it. */
export function hoursOnOwnBattery(
  behaviour: ChargerBehaviour,
  { asked, others, construction }: ModeQuestion["ownBatteries"][number],
): HoursToMark[] | null {
  const beliefs = beliefsOf(construction, "not stated");
  const fit = fitBatteryTests(others, asked, beliefs);
  if (fit === undefined) return null;
  const chargeCase = { ...asked.known, horizonH: referenceCase.horizonH };
  return hoursToMarks(forecastCharge({ beliefs, fit }, behaviour, chargeCase, { stopWhenSettled: true }));
}

function hoursToMarks({ draws, reaches }: ChargeForecast): HoursToMark[] {
  const marks = Object.keys(chargeMarks) as ChargeMark[];
  return marks.map((mark) => ({
    mark,
    hours: published(middleOfDraws(draws.map(({ hoursTo }) => hoursTo[mark]))),
    reaches: reaches[mark],
  }));
}

/** Null stands for never. */
function published({ value, low, high }: Middle): PublishedSpread {
  return { value: finite(value), low: finite(low), high: finite(high) };
}

function publishedIfKnown(spread: Spread | null): PublishedSpread | null {
  return spread === null ? null : published({ value: spread.median, ...spread.middle95 });
}

function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

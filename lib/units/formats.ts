/** The ways of writing numbers, bound to one language's notation. */
import * as written from "./format.ts";
import type { Notation } from "./notation.ts";

/** The functions of format.ts without their last argument. */
export type Formats = {
  formatNumber(value: number, decimals: number): string;
  figureText(figure: written.Showable): written.FigureText;
  formatFigure(figure: written.Showable): string;
  formatInterval(low: number | null, high: number | null, unit: string): string;
  formatQuantity(value: number | null, unit: string, decimals: number): string;
  formatStated(value: number, unit: string): string;
  formatInstant(instant: string | null): string;
  formatDay(isoDate: string): string;
  formatDuration(hours: number): string;
  formatBytes(bytes: number): string;
  formatAround(around: written.Around, unit: string, decimals: number): string;
  formatProbability(probability: number, finest?: number): string;
  /** "12.1 to 13.4", of two written numbers. */
  between(low: string, high: string): string;
};

export function formatsWith(notation: Notation): Formats {
  return {
    formatNumber: (value, decimals) => written.formatNumber(value, decimals, notation),
    figureText: (figure) => written.figureText(figure, notation),
    formatFigure: (figure) => written.formatFigure(figure, notation),
    formatInterval: (low, high, unit) => written.formatInterval(low, high, unit, notation),
    formatQuantity: (value, unit, decimals) => written.formatQuantity(value, unit, decimals, notation),
    formatStated: (value, unit) => written.formatStated(value, unit, notation),
    formatInstant: (instant) => written.formatInstant(instant, notation),
    formatDay: (isoDate) => written.formatDay(isoDate, notation),
    formatDuration: (hours) => written.formatDuration(hours, notation),
    formatBytes: (bytes) => written.formatBytes(bytes, notation),
    formatAround: (around, unit, decimals) => written.formatAround(around, unit, decimals, notation),
    formatProbability: (probability, finest) => written.formatProbability(probability, finest, notation),
    between: (low, high) => notation.between(low, high),
  };
}

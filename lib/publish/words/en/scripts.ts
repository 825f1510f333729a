/** What the scripts say that any page may load: sorting, search, narrowing the comparison, the log explorer. */
import { oneOrMany } from "../plural.ts";

export const sort = {
  directions: { ascending: "ascending", descending: "descending" },
  sorted: (column: string, direction: string) => `Sorted by ${column}, ${direction}.`,
  ties: (count: number) => ` ${count} ${oneOrMany(count, "row", "rows")} cannot be told apart from the row above.`,
};

export const search = {
  nothing: (words: string) => `Nothing found for “${words}”.`,
  found: (count: number) => `${count} ${oneOrMany(count, "page", "pages")} found.`,
  needsServer: "Search needs a web server; from a folder, use your browser's find.",
};

export const compare = {
  shown: (shown: number, all: number) => `${shown} of ${all} chargers`,
  copied: "Copied",
  chooseAnother: "1 charger chosen: choose another to lay them side by side.",
  chosen: (count: number) => `Compare the chosen ${count} side by side`,
  noMore: " (no more than four)",
  showMore: (count: number) => `Show ${count} more`,
  showAll: (count: number) => `Show all ${count}`,
};

export const exploreButton = {
  every: (log: string) => `Explore every row of ${log}`,
  thisLog: "this log",
  notFetched: "the explorer's script could not be fetched",
};

export const explore = {
  label: (log: string, rows: number) =>
    `${log}, ${rows} rows. Arrow keys move by a row, with Shift by a tenth of the view; plus and minus zoom; Home shows all.`,
  hint: "Point at the drawing, or use the arrow keys, to read single rows.",
  zoomIn: "Zoom in",
  zoomOut: "Zoom out",
  earlier: "Earlier",
  later: "Later",
  whole: "Whole log",
  csv: "CSV of this view",
  line: "Line of the file ",
  go: "Go",
  partNotRead: (why: string) => `This part of the log could not be read: ${why}`,
  range: (low: string, high: string, unit: string) => `${low} to ${high} ${unit}`,
  several: "several rows together (zoom in for single ones)",
  atLine: (line: string) => `line ${line}`,
  fromFirst: (elapsed: string) => `${elapsed} from the first row`,
  tooMany: "Too many rows for one file: zoom in first, or take the raw file.",
  notOpened: (why: string) => `The log could not be opened: ${why}. From a folder, use the raw file.`,
};

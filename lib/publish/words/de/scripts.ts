import type * as source from "../en/scripts.ts";
import { oneOrMany } from "../plural.ts";

export const sort: typeof source.sort = {
  directions: { ascending: "aufsteigend", descending: "absteigend" },
  sorted: (column, direction) => `Sortiert nach ${column}, ${direction}.`,
  ties: (count) => ` ${count} ${oneOrMany(count, "Zeile lässt", "Zeilen lassen")} sich von der Zeile darüber nicht unterscheiden.`,
};

export const search: typeof source.search = {
  nothing: (words) => `Nichts gefunden für „${words}“.`,
  found: (count) => `${count} ${oneOrMany(count, "Seite", "Seiten")} gefunden.`,
  needsServer: "Die Suche braucht einen Webserver; aus einem Ordner nutzen Sie die Suche Ihres Browsers.",
};

export const compare: typeof source.compare = {
  shown: (shown, all) => `${shown} von ${all} Ladegeräten`,
  copied: "Kopiert",
  chooseAnother: "1 Ladegerät gewählt: Wählen Sie ein weiteres, um sie nebeneinanderzustellen.",
  chosen: (count) => `Die ${count} gewählten nebeneinanderstellen`,
  noMore: " (nicht mehr als vier)",
  showMore: (count) => `${count} ${oneOrMany(count, "weiteres", "weitere")} zeigen`,
  showAll: (count) => `Alle ${count} zeigen`,
};

export const exploreButton: typeof source.exploreButton = {
  every: (log) => `Jede Zeile von ${log} ansehen`,
  thisLog: "dieser Aufzeichnung",
  notFetched: "das Skript zum Ansehen ließ sich nicht holen",
};

export const explore: typeof source.explore = {
  label: (log, rows) =>
    `${log}, ${rows} Zeilen. Pfeiltasten gehen um eine Zeile weiter, mit Umschalttaste um ein Zehntel der Ansicht; Plus und Minus vergrößern und verkleinern; Pos1 zeigt alles.`,
  hint: "Zeigen Sie auf die Zeichnung oder nutzen Sie die Pfeiltasten, um einzelne Zeilen zu lesen.",
  zoomIn: "Vergrößern",
  zoomOut: "Verkleinern",
  earlier: "Früher",
  later: "Später",
  whole: "Ganze Aufzeichnung",
  csv: "CSV dieser Ansicht",
  line: "Zeile der Datei ",
  go: "Los",
  partNotRead: (why) => `Dieser Teil der Aufzeichnung ließ sich nicht lesen: ${why}`,
  range: (low, high, unit) => `${low} bis ${high} ${unit}`,
  several: "mehrere Zeilen zusammen (für einzelne vergrößern)",
  atLine: (line) => `Zeile ${line}`,
  fromFirst: (elapsed) => `${elapsed} ab der ersten Zeile`,
  tooMany: "Zu viele Zeilen für eine Datei: erst vergrößern oder die Rohdatei nehmen.",
  notOpened: (why) => `Die Aufzeichnung ließ sich nicht öffnen: ${why}. Aus einem Ordner nutzen Sie die Rohdatei.`,
};

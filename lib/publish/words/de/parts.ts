import type { parts as source } from "../en/parts.ts";
import { oneOrMany } from "../plural.ts";

export const parts: typeof source = {
  nothingStated: "Nichts ist angegeben.",
  drawing: (caption) => `${caption} (Zeichnung)`,
  caution: {
    name: "Sicherheitshinweis",
    lead: "Bevor Sie etwas davon wiederholen:",
    dangers:
      "Eine Batterie gibt beim Laden Wasserstoff ab, enthält Säure und kann Hunderte Ampere durch einen fallen gelassenen Schraubenschlüssel treiben. Augenschutz, Lüftung, keine Funken, niemals eine gefrorene Batterie laden.",
    sealed: "Eine verschlossene Batterie darf nicht geöffnet werden, und eine zu hohe Spannung trocknet sie unwiderruflich aus.",
    authority: "Es gelten die örtlichen Vorschriften, das Datenblatt des Batterieherstellers und das Urteil einer Fachkraft.",
    all: "Alle Sicherheitshinweise",
  },
  doubt: {
    expected: "Erwartet:",
    found: "; gefunden:",
    mend: "Abhilfe:",
  },
  wouldSettle: "Was es klären würde",
  strip: {
    recorded: "aufgezeichnet",
    connected: "angeschlossen, nicht aufgezeichnet",
    endNotSeen: "Ende nicht gesehen",
    reading: "Ablesung",
    numbered: "Ablesung, oben nummeriert; die Ladegänge sind unten nummeriert",
    sentence: (span, connections, stretches, readings, unseenEnds) =>
      [
        `Belegstreifen über ${span}: ${connections} ${oneOrMany(connections, "Ladegang", "Ladegänge")}`,
        `${stretches} ${oneOrMany(stretches, "aufgezeichneter Abschnitt", "aufgezeichnete Abschnitte")}`,
        `${readings} ${oneOrMany(readings, "Ablesung", "Ablesungen")}`,
        unseenEnds === 0
          ? "jedes Ende ist bekannt"
          : `${unseenEnds} ${oneOrMany(unseenEnds, "Ende, das niemand sah", "Enden, die niemand sah")}`,
      ].join(", "),
  },
  findings: {
    none: "Hier wurde nichts beurteilt.",
    why: "Warum",
    how: "Wie das beurteilt wird",
    restsOn: "Beruht auf",
  },
  claims: {
    none: "Für diese Betriebsart wurde nichts zugesagt, was sich beurteilen ließe.",
    columns: {
      claim: "Zusage",
      claimed: "Zugesagt",
      measured: "Gemessen",
      drawn: "Zusage und Messung",
      outcome: "Ergebnis",
      why: "Warum",
    },
    key: "In den Zeichnungen ist das Band das, was die Zusage noch erfüllt, die gestrichelte Linie die Zusage selbst und der Punkt mit seinen Grenzen die Messung mit ihrem 95-%-Intervall.",
    notANumber: "keine Zahl",
    accepted: (interval) => `zulässig: ${interval}`,
    probability: (probability) => `innerhalb der Grenzen mit einer Wahrscheinlichkeit von ${probability}`,
    rule: "Regel:",
  },
  figures: {
    columns: { figure: "Größe", value: "Wert, 95-%-Intervall", method: "Methode", evidence: "Beleg" },
  },
  evidence: {
    files: (count) => `${count} ${oneOrMany(count, "Datei", "Dateien")}`,
    noFile: "keine Datei: siehe Methode",
    line: (line) => `Zeile ${line}`,
    lines: (first, last) => `Zeilen ${first}–${last}`,
    columns: (columns) => `${columns.length === 1 ? "Spalte" : "Spalten"} ${columns.join(", ")}`,
  },
  repeats: {
    caption: (mode) => `Noch einmal dasselbe: Betriebsart „${mode}“ über ihre Aufzeichnungen`,
    columns: {
      quantity: "Größe",
      each: "Jede Aufzeichnung",
      spread: "Streuung, als Standardabweichung mit ihrem 95-%-Intervall",
      spreadShort: "Streuung",
    },
    within: "Von Ladegang zu Ladegang",
    between: "Von Test zu Test",
  },
};

/** How a log was read. */
import type { Chapter } from "../pattern.ts";

export const logs = {
  text: [
    { en: "{what:logChoice}, second file", pl: "{what}, drugi plik", de: "{what}, zweite Datei" },
    { en: "line {line}: {values:readValue+comma}", pl: "wiersz {line}: {values}", de: "Zeile {line}: {values}" },
  ],
  logChoice: [
    { en: "encoding", pl: "kodowanie", de: "Zeichenkodierung" },
    { en: "delimiter", pl: "separator", de: "Trennzeichen" },
    { en: "decimal mark", pl: "znak dziesiętny", de: "Dezimalzeichen" },
    { en: "lines before the data", pl: "wiersze przed danymi", de: "Zeilen vor den Daten" },
    { en: "headings", pl: "nagłówki", de: "Überschriften" },
    { en: "voltage column", pl: "kolumna napięcia", de: "Spannungsspalte" },
    { en: "current column", pl: "kolumna prądu", de: "Stromspalte" },
    { en: "temperature column", pl: "kolumna temperatury", de: "Temperaturspalte" },
    { en: "time column", pl: "kolumna czasu", de: "Zeitspalte" },
    { en: "sign of charging current", pl: "znak prądu ładowania", de: "Vorzeichen des Ladestroms" },
  ],
  readValue: [{ en: '"{text:name}" as {value:quantity}', pl: "„{text}” jako {value}", de: "„{text}“ als {value}" }],
} as const satisfies Chapter;

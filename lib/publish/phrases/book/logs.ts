/** How a log was read, choice by choice. Names of columns stay as the file has them. */
import type { Chapter, Phrase } from "../pattern.ts";

const choices = [
  { en: "encoding", pl: "kodowanie", de: "Zeichenkodierung" },
  { en: "delimiter", pl: "separator", de: "Trennzeichen" },
  { en: "decimal mark", pl: "znak dziesiętny", de: "Dezimalzeichen" },
  { en: "thousands mark", pl: "znak tysięcy", de: "Tausenderzeichen" },
  { en: "lines before the data", pl: "wiersze przed danymi", de: "Zeilen vor den Daten" },
  { en: "lines below the data", pl: "wiersze pod danymi", de: "Zeilen unter den Daten" },
  { en: "headings", pl: "nagłówki", de: "Überschriften" },
  { en: "voltage column", pl: "kolumna napięcia", de: "Spannungsspalte" },
  { en: "current column", pl: "kolumna prądu", de: "Stromspalte" },
  { en: "temperature column", pl: "kolumna temperatury", de: "Temperaturspalte" },
  { en: "time column", pl: "kolumna czasu", de: "Zeitspalte" },
  { en: "sign of charging current", pl: "znak prądu ładowania", de: "Vorzeichen des Ladestroms" },
  { en: "date of the first row", pl: "data pierwszego wiersza", de: "Datum der ersten Zeile" },
  { en: "summer time", pl: "czas letni", de: "Sommerzeit" },
  { en: "coarse stamps", pl: "zgrubne znaczniki czasu", de: "grobe Zeitstempel" },
  { en: "rows by turns", pl: "wiersze na przemian", de: "Zeilen im Wechsel" },
  { en: "no value", pl: "brak wartości", de: "kein Wert" },
  { en: "recording of the file", pl: "zapis z tego pliku", de: "Aufzeichnung der Datei" },
  { en: "second file", pl: "drugi plik", de: "zweite Datei" },
  { en: "file", pl: "plik", de: "Datei" },
  { en: "sheet", pl: "arkusz", de: "Tabellenblatt" },
] as const satisfies readonly Phrase[];

export const logs = {
  text: [
    ...choices,
    { en: "detected", pl: "wykryto", de: "erkannt" },
    { en: "{what:logChoice}, second file", pl: "{what}, drugi plik", de: "{what}, zweite Datei" },
    { en: "line {line}: {values:readValue+comma}", pl: "wiersz {line}: {values}", de: "Zeile {line}: {values}" },
    {
      en: "line {line}: {values:readValue+comma}; second file, line {second}: {others:readValue+comma}",
      pl: "wiersz {line}: {values}; drugi plik, wiersz {second}: {others}",
      de: "Zeile {line}: {values}; zweite Datei, Zeile {second}: {others}",
    },
    // Values.
    { en: "none", pl: "brak", de: "keine" },
    { en: "comma", pl: "przecinek", de: "Komma" },
    { en: "point", pl: "kropka", de: "Punkt" },
    { en: "semicolon", pl: "średnik", de: "Semikolon" },
    { en: "tab", pl: "tabulator", de: "Tabulator" },
    { en: "positive", pl: "dodatni", de: "positiv" },
    { en: "negative", pl: "ujemny", de: "negativ" },
    {
      en: "the recorder's clock follows it",
      pl: "zegar rejestratora go uwzględnia",
      de: "die Uhr des Rekorders folgt ihr",
    },
    {
      en: "the recorder's clock does not follow it",
      pl: "zegar rejestratora go nie uwzględnia",
      de: "die Uhr des Rekorders folgt ihr nicht",
    },
    {
      en: "{day:date}, the nearest to the connection's on",
      pl: "{day}, najbliższa początku podłączenia",
      de: "{day}, das dem Beginn des Ladegangs nächste",
    },
    {
      en: "{rows} rows share a stamp; they are spread evenly over {step} s, {apart} s apart",
      pl: "wiersze o wspólnym znaczniku: {rows}; rozłożono je równo na {step} s, co {apart} s",
      de: "{rows} {rows|Zeile teilt|Zeilen teilen} sich einen Stempel; sie sind gleichmäßig über {step} s verteilt, im Abstand von {apart} s",
    },
    {
      en: "voltage and current stand in rows of their own; each is set beside the other on a straight line between its neighbours, where these are no more than one and a half times {seconds} s apart",
      pl: "napięcie i prąd stoją w osobnych wierszach; każde zestawiono z drugim na prostej między sąsiadami, gdzie dzieli ich najwyżej półtora raza {seconds} s",
      de: "Spannung und Strom stehen in eigenen Zeilen; jedes ist auf einer Geraden zwischen seinen Nachbarn neben das andere gesetzt, wo diese höchstens das Anderthalbfache von {seconds} s auseinanderliegen",
    },
    {
      en: '"{text:quoted}", once: no battery has it',
      pl: "„{text}”, raz: takiej wartości nie ma żaden akumulator",
      de: "„{text}“, einmal: Das hat keine Batterie",
    },
    {
      en: '"{text:quoted}", {times} times: no battery has it',
      pl: "„{text}”, {times} {times|raz|razy|razy}: takiej wartości nie ma żaden akumulator",
      de: "„{text}“, {times}-mal: Das hat keine Batterie",
    },
    {
      en: '{lines} from line {line}, "{text:quoted}", left out',
      pl: "{lines} od wiersza {line}, „{text}”, pominięto",
      de: "{lines} ab Zeile {line}, „{text}“, weggelassen",
    },
  ],
  logChoice: choices,
  readValue: [{ en: '"{text:quoted}" as {value:quantity}', pl: "„{text}” jako {value}", de: "„{text}“ als {value}" }],
} as const satisfies Chapter;

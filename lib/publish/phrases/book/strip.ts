/** The evidence strip told as text, and what was not seen. */
import type { Chapter } from "../pattern.ts";

export const strip = {
  text: [
    { en: "visit {visit}", pl: "wizyta {visit}", de: "Besuch {visit}" },
    { en: "visit {visit}: {density} kg/l", pl: "wizyta {visit}: {density} kg/l", de: "Besuch {visit}: {density} kg/l" },
    {
      en: "No event of this test has a time, so nothing can be drawn.",
      pl: "Żadne zdarzenie tego testu nie ma czasu, więc niczego nie da się narysować.",
      de: "Kein Ereignis dieses Tests hat eine Zeit, es lässt sich nichts zeichnen.",
    },
    {
      en: "Over {span:span}: {connections:stripConnections} of {total} h in all; {recorded:stripRecorded}; {visits:stripVisits} with readings.",
      pl: "W ciągu {span}: {connections}, łącznie {total} h; {recorded}; {visits} z odczytami.",
      de: "Über {span}: {connections} mit zusammen {total} h; {recorded}; {visits} mit Ablesungen.",
    },
    {
      en: "The end of {connections:endOfConnections} was not seen.",
      pl: "Nie widziano końca {connections}.",
      de: "Das Ende {connections} war nicht zu sehen.",
    },
    {
      en: "When {connections:furtherConnections} began is not known, so it is not drawn.",
      pl: "Nie wiadomo, kiedy zaczęło się {connections}, więc nie jest to narysowane.",
      de: "Wann {connections} begann, ist nicht bekannt; das ist daher nicht gezeichnet.",
    },

    // What was not seen of a charger.
    {
      en: "{figure:figureLabel}: {kind:absenceKind}, {why:text}",
      pl: "{figure}: {kind}, {why}",
      de: "{figure}: {kind}, {why}",
    },
    {
      en: "{figure:figureLabel}: {kind:absenceKind}, {why:text} ({test:name})",
      pl: "{figure}: {kind}, {why} ({test})",
      de: "{figure}: {kind}, {why} ({test})",
    },
    {
      en: "{claim:claimLabel}: not put to the test, since {why:text}",
      pl: "{claim}: nie poddano próbie, bo {why}",
      de: "{claim}: nicht auf die Probe gestellt, denn {why}",
    },
    {
      en: "{claim:claimLabel}: not put to the test, since {why:text} ({test:name})",
      pl: "{claim}: nie poddano próbie, bo {why} ({test})",
      de: "{claim}: nicht auf die Probe gestellt, denn {why} ({test})",
    },

    // What became of tests and files.
    { en: "abandoned", pl: "przerwano", de: "abgebrochen" },
    { en: "no target", pl: "brak celu", de: "kein Ziel" },
    { en: "correction", pl: "poprawka", de: "Berichtigung" },
    { en: "maker's answer", pl: "odpowiedź producenta", de: "Antwort des Herstellers" },
    { en: "its files have an error", pl: "w jego plikach jest błąd", de: "seine Dateien haben einen Fehler" },
    {
      en: "its files have {errors} errors",
      pl: "w jego plikach są błędy: {errors}",
      de: "seine Dateien haben {errors} {errors|Fehler|Fehler}",
    },
    { en: "a record that it uses has errors", pl: "opis, z którego korzysta, zawiera błędy", de: "Angaben, die er braucht, haben Fehler" },
  ],
  span: [
    { en: "{hours} h", pl: "{hours} h", de: "{hours} h" },
    { en: "{days} days", pl: "{days} {days|dnia|dni|dni|dnia}", de: "{days} {days|Tag|Tage}" },
  ],
  stripConnections: [
    { en: "one connection", pl: "jedno podłączenie", de: "ein Ladegang" },
    { en: "{n} connections", pl: "{n} {n|podłączenie|podłączenia|podłączeń}", de: "{n} {n|Ladegang|Ladegänge}" },
  ],
  stripRecorded: [
    { en: "none of it recorded", pl: "nic z tego nie zapisano", de: "nichts davon aufgezeichnet" },
    {
      en: "{recorded} h of it recorded ({percent} %), {unrecorded} h not",
      pl: "z tego zapisano {recorded} h ({percent} %), {unrecorded} h nie",
      de: "davon {recorded} h aufgezeichnet ({percent} %), {unrecorded} h nicht",
    },
  ],
  stripVisits: [
    { en: "one visit", pl: "jedna wizyta", de: "ein Besuch" },
    { en: "{n} visits", pl: "{n} {n|wizyta|wizyty|wizyt}", de: "{n} {n|Besuch|Besuche}" },
  ],
  endOfConnections: [
    { en: "one connection", pl: "jednego podłączenia", de: "eines Ladegangs" },
    { en: "{n} connections", pl: "{n} {n|podłączenia|podłączeń|podłączeń}", de: "von {n} {n|Ladegang|Ladegängen}" },
  ],
  furtherConnections: [
    { en: "one further connection", pl: "jedno dalsze podłączenie", de: "ein weiterer Ladegang" },
    {
      en: "{n} further connections",
      pl: "{n} {n|dalsze podłączenie|dalsze podłączenia|dalszych podłączeń}",
      de: "jeder der {n} {n|weiteren Ladegänge|weiteren Ladegänge}",
    },
  ],
} as const satisfies Chapter;

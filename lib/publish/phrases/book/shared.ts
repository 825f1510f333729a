/** Parts that sentences of several chapters hold: temperatures, windows, what was read how, and tells of a decision. */
import type { Chapter, Phrase } from "../pattern.ts";

/** Why no stage could be judged. */
export const noStages = [
  { en: "nothing was recorded", pl: "nic nie zapisano", de: "nichts wurde aufgezeichnet" },
  {
    en: "no recording is long enough to show what the charger does",
    pl: "żaden zapis nie jest dość długi, by pokazać, co robi prostownik",
    de: "keine Aufzeichnung ist lang genug, um zu zeigen, was das Ladegerät tut",
  },
  {
    en: "no recorder logged both voltage and current",
    pl: "żaden rejestrator nie zapisał zarazem napięcia i prądu",
    de: "kein Rekorder zeichnete Spannung und Strom zugleich auf",
  },
] as const satisfies readonly Phrase[];

/** How a density was read. */
export const conditions = [
  {
    en: "{read:readWhen}, the acid as found: the top of the cells, whose mean is at least that",
    pl: "{read}, elektrolit bez mieszania: górna warstwa w celach, a średnia jest co najmniej taka",
    de: "{read}, Säure wie vorgefunden: oben in den Zellen, deren Mittel mindestens so hoch ist",
  },
  {
    en: "{read:readWhen}, after the acid was mixed by hand: the mean of the acid, which the charger alone may not have brought to the top",
    pl: "{read}, po ręcznym wymieszaniu elektrolitu: średnia elektrolitu, której sam prostownik mógł nie doprowadzić do górnej warstwy",
    de: "{read}, nachdem die Säure von Hand durchmischt war: das Mittel der Säure, das das Ladegerät allein vielleicht nicht nach oben gebracht hat",
  },
] as const satisfies readonly Phrase[];

/** Why a target could not be judged. */
export const noTarget = [
  { en: "the test names no target density", pl: "test nie podaje gęstości docelowej", de: "der Test nennt keine Zieldichte" },
  { en: "no density was read", pl: "nie odczytano gęstości", de: "es wurde keine Dichte abgelesen" },
  {
    en: "no density was read after the first connection",
    pl: "po pierwszym podłączeniu nie odczytano gęstości",
    de: "nach dem ersten Ladegang wurde keine Dichte abgelesen",
  },
  {
    en: "a density was read, but no hydrometer is named, so what its scale means is not known",
    pl: "odczytano gęstość, lecz nie podano areometru, więc nie wiadomo, co oznacza jego skala",
    de: "eine Dichte wurde abgelesen, aber kein Säureheber ist genannt; was seine Skala bedeutet, ist nicht bekannt",
  },
  {
    en: "no density that was read lies where the acid's tables hold (0 to 50 °C, up to 60 % acid)",
    pl: "żadna odczytana gęstość nie leży tam, gdzie obowiązują tablice kwasu (od 0 do 50 °C, do 60 % kwasu)",
    de: "keine abgelesene Dichte liegt dort, wo die Säuretabellen gelten (0 bis 50 °C, bis 60 % Säure)",
  },
  {
    en: "nobody noted when connection {connection} began, so it is not known how long the charger had worked at each visit",
    pl: "nikt nie zanotował, kiedy zaczęło się podłączenie {connection}, więc nie wiadomo, jak długo prostownik pracował do każdej wizyty",
    de: "niemand notierte, wann Ladegang {connection} begann; wie lange das Ladegerät bis zu jedem Besuch gearbeitet hatte, ist nicht bekannt",
  },
] as const satisfies readonly Phrase[];

export const shared = {
  conditions,
  noTarget,
  temperature: [
    { en: "{temperature:range} °C ({whose:temperatureOf})", pl: "{temperature} °C ({whose})", de: "{temperature} °C ({whose})" },
  ],
  temperatureOf: [
    {
      en: "the acid's, read at visit {visit}",
      pl: "temperatura elektrolitu z wizyty {visit}",
      de: "Temperatur der Säure, abgelesen bei Besuch {visit}",
    },
    {
      en: "the acid's, read at visits {visits:numbers}",
      pl: "temperatura elektrolitu z wizyt {visits}",
      de: "Temperatur der Säure, abgelesen bei den Besuchen {visits}",
    },
    {
      en: "the battery's, read at visit {visit}",
      pl: "temperatura akumulatora z wizyty {visit}",
      de: "Temperatur der Batterie, abgelesen bei Besuch {visit}",
    },
    {
      en: "the battery's, read at visits {visits:numbers}",
      pl: "temperatura akumulatora z wizyt {visits}",
      de: "Temperatur der Batterie, abgelesen bei den Besuchen {visits}",
    },
    {
      en: "from the air's, read at visit {visit}",
      pl: "z temperatury powietrza na wizycie {visit}",
      de: "aus der Lufttemperatur, abgelesen bei Besuch {visit}",
    },
    {
      en: "from the air's, read at visits {visits:numbers}",
      pl: "z temperatury powietrza na wizytach {visits}",
      de: "aus der Lufttemperatur, abgelesen bei den Besuchen {visits}",
    },
    {
      en: "the acid's, by the recorder's probe in {recording:file}",
      pl: "temperatura elektrolitu według czujnika rejestratora w {recording}",
      de: "Temperatur der Säure nach dem Fühler des Rekorders in {recording}",
    },
    {
      en: "the battery's, by the recorder's probe in {recording:file}",
      pl: "temperatura akumulatora według czujnika rejestratora w {recording}",
      de: "Temperatur der Batterie nach dem Fühler des Rekorders in {recording}",
    },
  ],

  /** Where a current or a voltage was held. */
  hold: [
    {
      en: "at {voltage} V, with the battery at {temperature:temperature}",
      pl: "przy {voltage} V, z akumulatorem w temperaturze {temperature}",
      de: "bei {voltage} V, mit der Batterie bei {temperature}",
    },
    {
      en: "at {voltage} V, at a temperature that nobody read",
      pl: "przy {voltage} V, w temperaturze, której nikt nie odczytał",
      de: "bei {voltage} V, bei einer Temperatur, die niemand ablas",
    },
  ],

  readWhen: [
    { en: "read after {hours} h of rest", pl: "odczyt po {hours} h spoczynku", de: "abgelesen nach {hours} h Ruhe" },
    { en: "read with the charger connected", pl: "odczyt przy podłączonym prostowniku", de: "abgelesen bei angeschlossenem Ladegerät" },
    {
      en: "read after a rest that nobody noted",
      pl: "odczyt po spoczynku, którego czasu nikt nie zanotował",
      de: "abgelesen nach einer Ruhezeit, die niemand notierte",
    },
  ],
  rest: [
    { en: "after {hours} h of rest", pl: "po {hours} h spoczynku", de: "nach {hours} h Ruhe" },
    {
      en: "after a rest that nobody noted",
      pl: "po spoczynku, którego czasu nikt nie zanotował",
      de: "nach einer Ruhezeit, die niemand notierte",
    },
  ],

  /** The float window, as taken. */
  window: [
    {
      en: "{printed:printedWindow}, which is taken, since the battery's temperature was not read; the battery's maker has the last word",
      pl: "{printed}; przyjęto go bez zmian, bo temperatury akumulatora nie odczytano; ostatnie słowo ma producent akumulatora",
      de: "{printed}; es gilt unverändert, da die Temperatur der Batterie nicht abgelesen wurde; das letzte Wort hat der Batteriehersteller",
    },
    {
      en: "{lowV} to {highV} V at the temperature of the battery, from {printed:printedWindow}: {shift:shift}; the battery's maker has the last word",
      pl: "od {lowV} do {highV} V w temperaturze akumulatora, wyznaczone z: {printed}: {shift}; ostatnie słowo ma producent akumulatora",
      de: "{lowV} bis {highV} V bei der Temperatur der Batterie, aus {printed}: {shift}; das letzte Wort hat der Batteriehersteller",
    },
  ],
  printedWindow: [
    {
      en: "{lowV} to {highV} V at 20 to 25 °C ({source:windowSource})",
      pl: "od {lowV} do {highV} V w temperaturze od 20 do 25 °C ({source})",
      de: "{lowV} bis {highV} V bei 20 bis 25 °C ({source})",
    },
  ],
  windowSource: [
    {
      en: "makers' figures 13.2 to 13.5 V (from memory), 13.5 to 13.8 V in common practice",
      pl: "dane producentów od 13,2 do 13,5 V (z pamięci), w praktyce od 13,5 do 13,8 V",
      de: "Herstellerangaben 13,2 bis 13,5 V (aus dem Gedächtnis), in der Praxis 13,5 bis 13,8 V",
    },
    {
      en: "13.5 to 13.8 V, makers' figures (from memory) and common practice",
      pl: "od 13,5 do 13,8 V, dane producentów (z pamięci) i powszechna praktyka",
      de: "13,5 bis 13,8 V, Herstellerangaben (aus dem Gedächtnis) und übliche Praxis",
    },
    {
      en: "13.2 to 13.8 V over both kinds of flooded battery (from memory and common practice)",
      pl: "od 13,2 do 13,8 V dla obu rodzajów akumulatorów z ciekłym elektrolitem (z pamięci i z powszechnej praktyki)",
      de: "13,2 bis 13,8 V über beide Arten von Nassbatterien (aus dem Gedächtnis und üblicher Praxis)",
    },
    {
      en: "13.5 to 13.8 V, taken as for calcium batteries (common practice)",
      pl: "od 13,5 do 13,8 V, przyjęto jak dla akumulatorów wapniowych (powszechna praktyka)",
      de: "13,5 bis 13,8 V, genommen wie bei Kalzium-Batterien (übliche Praxis)",
    },
    { en: "13.5 to 13.8 V, makers' figures", pl: "od 13,5 do 13,8 V, dane producentów", de: "13,5 bis 13,8 V, Herstellerangaben" },
    {
      en: "13.1 to 13.8 V, makers' figures differ widely",
      pl: "od 13,1 do 13,8 V, dane producentów mocno się różnią",
      de: "13,1 bis 13,8 V, Herstellerangaben gehen weit auseinander",
    },
  ],

  /** What a temperature means for a voltage. */
  shift: [
    {
      en: "with the battery at {temperature:temperature}, {slope:range} mV/K a cell move a voltage stated for {statedFor:range} °C by {fromV} to {toV} V",
      pl: "z akumulatorem w temperaturze {temperature} współczynnik {slope} mV/K na celę przesuwa napięcie podane dla temperatury {statedFor} °C o wartość od {fromV} do {toV} V",
      de: "mit der Batterie bei {temperature} verschieben {slope} mV/K je Zelle eine für {statedFor} °C angegebene Spannung um {fromV} bis {toV} V",
    },
    {
      en: "with the battery at {temperature:temperature}, {slope:range} mV/K a cell move a voltage stated for {statedFor:range} °C by {fromV} to {toV} V; the trade's rule of thumb (0.3 V more for 12 V near 0 °C, common practice) would make it about {thumbV} V",
      pl: "z akumulatorem w temperaturze {temperature} współczynnik {slope} mV/K na celę przesuwa napięcie podane dla temperatury {statedFor} °C o wartość od {fromV} do {toV} V; według praktycznej reguły branży (przy 12 V o 0,3 V więcej w pobliżu 0 °C) byłoby to około {thumbV} V",
      de: "mit der Batterie bei {temperature} verschieben {slope} mV/K je Zelle eine für {statedFor} °C angegebene Spannung um {fromV} bis {toV} V; nach der Faustregel des Handwerks (bei 12 V nahe 0 °C 0,3 V mehr, übliche Praxis) wären es etwa {thumbV} V",
    },
  ],
} as const satisfies Chapter;

/** How recordings ended, and what in them says so. */
import type { Chapter, Phrase } from "../pattern.ts";

const rules = [
  {
    en: 'the recording is {hours} h long, and the recorder stops after {afterH} h ("{rule:quoted}")',
    pl: "zapis trwa {hours} h, a rejestrator kończy po {afterH} h („{rule}”)",
    de: "die Aufzeichnung ist {hours} h lang, und der Rekorder hört nach {afterH} h auf („{rule}“)",
  },
  {
    en: 'the recording has {rows} rows, and the recorder stops after {afterRows} ("{rule:quoted}")',
    pl: "zapis ma {rows} {rows|wiersz|wiersze|wierszy}, a rejestrator kończy po {afterRows} („{rule}”)",
    de: "die Aufzeichnung hat {rows} {rows|Zeile|Zeilen}, und der Rekorder hört nach {afterRows} auf („{rule}“)",
  },
  {
    en: 'for the last {minutes} min the current was under {current} A, and there the recorder stops ("{rule:quoted}")',
    pl: "przez ostatnie {minutes} min prąd był poniżej {current} A, a wtedy rejestrator kończy („{rule}”)",
    de: "in den letzten {minutes} min lag der Strom unter {current} A, und dann hört der Rekorder auf („{rule}“)",
  },
] as const satisfies readonly Phrase[];

const later = [
  {
    en: "a clamp meter found {current} A flowing at a later visit",
    pl: "na późniejszej wizycie cęgi prądowe wskazały {current} A",
    de: "bei einem späteren Besuch zeigte die Stromzange {current} A",
  },
  {
    en: "a later visit found the charger still connected",
    pl: "na późniejszej wizycie prostownik był nadal podłączony",
    de: "bei einem späteren Besuch war das Ladegerät noch angeschlossen",
  },
] as const satisfies readonly Phrase[];

const endings = [
  { en: "the charger", pl: "prostownik", de: "das Ladegerät" },
  { en: "the recorder", pl: "rejestrator", de: "der Rekorder" },
  { en: "the mains", pl: "zanik sieci", de: "das Netz" },
  { en: "a person", pl: "człowiek", de: "eine Person" },
  { en: "{who:ender}; {stand:stand}", pl: "{who}; {stand}", de: "{who}; {stand}" },
  {
    en: "the recorder, in a pause of the charger",
    pl: "rejestrator, w przerwie prostownika",
    de: "der Rekorder, in einer Pause des Ladegeräts",
  },
  {
    en: "{who:ender} and {other:ender}, both by the test record",
    pl: "{who} i {other}, jedno i drugie według opisu testu",
    de: "{who} und {other}, beide laut Angaben zum Test",
  },
  { en: "the {who:bareEnder}, by the test record", pl: "{who}, według opisu testu", de: "{who}, laut Angaben zum Test" },
] as const satisfies readonly Phrase[];

const unknownEndings = [
  { en: "not known", pl: "nie wiadomo", de: "nicht bekannt" },
  {
    en: "not known: the log shows no stages",
    pl: "nie wiadomo: zapis nie pokazuje etapów",
    de: "nicht bekannt: Die Aufzeichnung zeigt keine Phasen",
  },
  { en: "not known: not recorded", pl: "nie wiadomo: brak zapisu", de: "nicht bekannt: nicht aufgezeichnet" },
  {
    en: "not known: the leads were off the battery at the end, and nobody noted who took them off",
    pl: "nie wiadomo: na końcu przewody były odłączone od akumulatora i nikt nie zanotował, kto je odłączył",
    de: "nicht bekannt: Am Ende waren die Leitungen von der Batterie ab, und niemand notierte, wer sie abnahm",
  },
  {
    en: "not known: the leads were the wrong way round at the end",
    pl: "nie wiadomo: na końcu przewody miały zamienione bieguny",
    de: "nicht bekannt: Am Ende waren die Leitungen verpolt",
  },
  {
    en: "not known: the recorder by itself, or {who:ender}; {stand:stand}",
    pl: "nie wiadomo: sam rejestrator albo {who}; {stand}",
    de: "nicht bekannt: der Rekorder von selbst oder {who}; {stand}",
  },
  {
    en: "not known: current stopped, but whether the charger had ended, changed over or only paused was not seen",
    pl: "nie wiadomo: prąd ustał, lecz nie widać, czy prostownik skończył, przełączył się czy tylko zrobił przerwę",
    de: "nicht bekannt: Der Strom hörte auf, aber ob das Ladegerät fertig war, umschaltete oder nur pausierte, war nicht zu sehen",
  },
  {
    en: "not known: the clamps came off when the recorder's time was up; {stand:stand}",
    pl: "nie wiadomo: zaciski zdjęto, gdy minął czas rejestratora; {stand}",
    de: "nicht bekannt: Die Klemmen wurden abgenommen, als die Zeit des Rekorders um war; {stand}",
  },
] as const satisfies readonly Phrase[];

export const endingWords = {
  text: [
    ...endings,
    ...unknownEndings,
    ...rules,
    ...later,
    // As a finding and the list of what was not seen tell it.
    {
      en: "{recording:file}: ended by {ending:ending}",
      pl: "{recording}: kto zakończył zapis: {ending}",
      de: "{recording}: beendet hat sie {ending}",
    },
    {
      en: "{recording:file}: ended by {ending:ending} ({test:name})",
      pl: "{recording}: kto zakończył zapis: {ending} ({test})",
      de: "{recording}: beendet hat sie {ending} ({test})",
    },
    {
      en: "{recording:file}: who ended it is {unknown:unknownEnding}",
      pl: "{recording}: kto zakończył zapis: {unknown}",
      de: "{recording}: wer sie beendet hat: {unknown}",
    },
    {
      en: "{recording:file}: who ended it is {unknown:unknownEnding} ({test:name})",
      pl: "{recording}: kto zakończył zapis: {unknown} ({test})",
      de: "{recording}: wer sie beendet hat: {unknown} ({test})",
    },
    // Reasons.
    { en: "no stage could be found", pl: "nie znaleziono żadnego etapu", de: "keine Phase war zu finden" },
    {
      en: "the test record says that {who:ender} ended this recording",
      pl: "opis testu mówi, kto zakończył ten zapis: {who}",
      de: "die Angaben zum Test nennen, wer diese Aufzeichnung beendet hat: {who}",
    },
    {
      en: "the test record says that the mains failed",
      pl: "opis testu mówi, że zanikło napięcie sieci",
      de: "die Angaben zum Test sagen, dass das Netz ausfiel",
    },
    {
      en: "the test record says that {who:ender} ended the connection",
      pl: "opis testu mówi, kto zakończył podłączenie: {who}",
      de: "die Angaben zum Test nennen, wer den Ladegang beendet hat: {who}",
    },
    {
      en: "the test record says that the charger ended, but the recording does not show it",
      pl: "opis testu mówi, że prostownik skończył, ale zapis rejestratora tego nie pokazuje",
      de: "die Angaben zum Test sagen, dass das Ladegerät aufhörte, aber die Aufzeichnung zeigt es nicht",
    },
    {
      en: "the test record says so; nothing was recorded",
      pl: "tak mówi opis testu; nic nie zarejestrowano",
      de: "so sagen es die Angaben zum Test; aufgezeichnet wurde nichts",
    },
    {
      en: "nothing was recorded and nobody noted an end",
      pl: "nic nie zapisano i nikt nie zanotował końca",
      de: "nichts wurde aufgezeichnet, und niemand notierte ein Ende",
    },
    { en: "the clamps came off at that time", pl: "w tym czasie zdjęto zaciski", de: "zu dieser Zeit wurden die Klemmen abgenommen" },
    {
      en: "nobody noted when the clamps came off",
      pl: "nikt nie zanotował, kiedy zdjęto zaciski",
      de: "niemand notierte, wann die Klemmen abgenommen wurden",
    },
    {
      en: "from line {line} the recorder was not on the battery: {why:stageWhy}",
      pl: "od wiersza {line} rejestrator nie był podłączony do akumulatora: {why}",
      de: "ab Zeile {line} war der Rekorder nicht an der Batterie: {why}",
    },
    {
      en: "from line {line} the leads were the wrong way round: {why:stageWhy}",
      pl: "od wiersza {line} przewody miały zamienione bieguny: {why}",
      de: "ab Zeile {line} waren die Leitungen verpolt: {why}",
    },
    {
      en: "the current fell from {current} A to none inside the recording (line {line})",
      pl: "prąd spadł z {current} A do zera w trakcie zapisu (wiersz {line})",
      de: "der Strom fiel innerhalb der Aufzeichnung von {current} A auf null (Zeile {line})",
    },
    {
      en: "the battery then relaxed from {fromV} to {toV} V",
      pl: "napięcie akumulatora opadło potem z {fromV} do {toV} V",
      de: "die Spannung der Batterie sank danach von {fromV} auf {toV} V",
    },
    {
      en: "{later:laterFound}, so the charger had only paused",
      pl: "{later}, więc prostownik zrobił tylko przerwę",
      de: "{later}; das Ladegerät hatte also nur pausiert",
    },
    {
      en: "before that it was near the end of a falling current",
      pl: "przedtem był blisko końca malejącego prądu",
      de: "davor war es nahe am Ende eines fallenden Stroms",
    },
    { en: "before that it was at the end of its charge", pl: "przedtem był u kresu ładowania", de: "davor war es am Ende seiner Ladung" },
    {
      en: "it had reached its limit, and nothing flowed for the {hours} h still recorded",
      pl: "osiągnął napięcie graniczne, a przez pozostałe {hours} h zapisu nic nie płynęło",
      de: "es hatte seine Ladeschlussspannung erreicht, und in den {hours} h, die noch aufgezeichnet wurden, floss nichts",
    },
    {
      en: "it fell out of {stage:fellOutOf} with {current} A flowing, where no charger ends by design",
      pl: "urwało się {stage} przy prądzie {current} A, a w tym miejscu żaden prostownik nie kończy z założenia",
      de: "es brach {stage} ab, während {current} A flossen; dort hört kein Ladegerät planmäßig auf",
    },
    {
      en: "at {voltage} V the charger may still wait to hold a lower voltage: too little of the rest was recorded",
      pl: "przy {voltage} V prostownik może jeszcze czekać, by utrzymywać niższe napięcie: zapisano zbyt mało przerwy",
      de: "bei {voltage} V wartet das Ladegerät vielleicht noch, um eine niedrigere Spannung zu halten: Von der Pause wurde zu wenig aufgezeichnet",
    },
    {
      en: "the charger was holding between two voltages at the last row (line {line}): {why:stageWhy}",
      pl: "w ostatnim wierszu ({line}) prostownik utrzymywał akumulator między dwoma napięciami: {why}",
      de: "in der letzten Zeile ({line}) hielt das Ladegerät zwischen zwei Spannungen: {why}",
    },
    {
      en: "no current flowed in the whole recording",
      pl: "w całym zapisie nie płynął prąd",
      de: "in der ganzen Aufzeichnung floss kein Strom",
    },
    {
      en: "at the last row (line {line}) {current} A was read and the voltage was still held",
      pl: "w ostatnim wierszu ({line}) odczytano {current} A, a napięcie było nadal utrzymywane",
      de: "in der letzten Zeile ({line}) wurden {current} A gemessen, und die Spannung wurde noch gehalten",
    },
    {
      en: "at the last row (line {line}) {current} A still flowed",
      pl: "w ostatnim wierszu ({line}) płynęło jeszcze {current} A",
      de: "in der letzten Zeile ({line}) flossen noch {current} A",
    },
    {
      en: "another recording of the same connection follows",
      pl: "następuje dalszy zapis tego samego podłączenia",
      de: "eine weitere Aufzeichnung desselben Ladegangs folgt",
    },
    {
      en: "the charger stayed connected for {hours} h after the last row",
      pl: "po ostatnim wierszu prostownik pozostał podłączony jeszcze {hours} h",
      de: "das Ladegerät blieb nach der letzten Zeile noch {hours} h angeschlossen",
    },
    {
      en: "nothing says what stopped the recorder: its own rule, its battery, a hand, or the mains if it was fed from them",
      pl: "nic nie mówi, co zatrzymało rejestrator: jego własna reguła, jego bateria, czyjaś ręka albo sieć, jeśli był z niej zasilany",
      de: "nichts sagt, was den Rekorder anhielt: seine eigene Regel, seine Batterie, eine Hand oder das Netz, falls er daran hing",
    },
  ],
  ending: endings,
  unknownEnding: unknownEndings,
  laterFound: later,
  ender: [
    { en: "the charger", pl: "prostownik", de: "das Ladegerät" },
    { en: "the recorder", pl: "rejestrator", de: "der Rekorder" },
    { en: "the recorder, cut in mid-flow", pl: "rejestrator, urwany w trakcie", de: "der Rekorder, mitten im Lauf abgeschnitten" },
    { en: "the mains", pl: "zanik sieci", de: "das Netz" },
    { en: "a person", pl: "człowiek", de: "eine Person" },
  ],
  bareEnder: [
    { en: "charger", pl: "prostownik", de: "das Ladegerät" },
    { en: "recorder", pl: "rejestrator", de: "der Rekorder" },
    { en: "mains", pl: "zanik sieci", de: "das Netz" },
    { en: "person", pl: "człowiek", de: "eine Person" },
  ],
  stand: [
    {
      en: "a person took the clamps off at that time",
      pl: "człowiek zdjął wtedy zaciski",
      de: "eine Person nahm da die Klemmen ab",
    },
    {
      en: "a person ended the connection afterwards",
      pl: "podłączenie zakończył potem człowiek",
      de: "eine Person beendete danach den Ladegang",
    },
    {
      en: "the charger was near the end of its charge by then",
      pl: "prostownik był już wtedy blisko końca ładowania",
      de: "das Ladegerät war da nahe am Ende seiner Ladung",
    },
    {
      en: "the charger had gone over to holding by then",
      pl: "prostownik przeszedł już wtedy do podtrzymywania",
      de: "das Ladegerät war da schon zum Halten übergegangen",
    },
    {
      en: "the charger had given nothing by then",
      pl: "prostownik do tej pory niczego nie dał",
      de: "das Ladegerät hatte bis da nichts abgegeben",
    },
    {
      en: "the charger had not ended by then",
      pl: "prostownik jeszcze wtedy nie skończył",
      de: "das Ladegerät hatte da noch nicht aufgehört",
    },
  ],
  fellOutOf: [
    { en: "the constant-current stage", pl: "w etapie stałego prądu", de: "in der Konstantstromphase" },
    { en: "a stage of the kind constant-voltage", pl: "w etapie stałego napięcia", de: "in der Konstantspannungsphase" },
    { en: "a stage of the kind soft-start", pl: "w etapie łagodnego startu", de: "im Sanftanlauf" },
    { en: "a stage of the kind throttled", pl: "w etapie zdławionego prądu", de: "in der Phase gedrosselten Stroms" },
    { en: "a stage of the kind float", pl: "w etapie ładowania konserwującego", de: "in der Erhaltungsladung" },
    { en: "a stage of the kind discharge", pl: "w etapie rozładowania", de: "in einer Entladung" },
    { en: "a stage of the kind unexplained", pl: "w niewyjaśnionym etapie", de: "in einer ungeklärten Phase" },
  ],
} as const satisfies Chapter;

/** The cross-examination: causes, what each visit's witnesses say, what follows, and the reading that would tell most. */
import type { Chapter, Phrase } from "../pattern.ts";

const hidden = [
  {
    en: "the acid of a sealed battery is held in place, and no hydrometer reaches it",
    pl: "elektrolit szczelnego akumulatora jest unieruchomiony i żaden areometr go nie sięga",
    de: "die Säure einer verschlossenen Batterie ist festgelegt, und kein Säureheber erreicht sie",
  },
  { en: "density was never read", pl: "gęstości nigdy nie odczytano", de: "die Dichte wurde nie abgelesen" },
  {
    en: "a sealed battery has no acid that a hydrometer reaches",
    pl: "szczelny akumulator nie ma elektrolitu, do którego sięgałby areometr",
    de: "eine verschlossene Batterie hat keine Säure, die ein Säureheber erreicht",
  },
  { en: "there was one visit only", pl: "była tylko jedna wizyta", de: "es gab nur einen Besuch" },
  {
    en: "no charge was recorded, so none can be missing from the record",
    pl: "nie zapisano żadnego ładunku, więc żadnego nie może w zapisie brakować",
    de: "es wurde keine Ladung aufgezeichnet, also kann in der Aufzeichnung keine fehlen",
  },
  {
    en: "where it recorded at all the recorder saw every hour, and between the other visits there is no record that could fall short",
    pl: "tam, gdzie rejestrator w ogóle zapisywał, widział każdą godzinę, a między pozostałymi wizytami nie ma zapisu, w którym mogłoby czegoś brakować",
    de: "wo überhaupt aufgezeichnet wurde, sah der Rekorder jede Stunde, und zwischen den anderen Besuchen gibt es keine Aufzeichnung, der etwas fehlen könnte",
  },
  {
    en: "the recorder saw every hour on charge",
    pl: "rejestrator widział każdą godzinę ładowania",
    de: "der Rekorder sah jede Stunde am Ladegerät",
  },
  {
    en: "no rest voltage was read after a charge",
    pl: "po ładowaniu nie odczytano napięcia spoczynkowego",
    de: "nach einer Ladung wurde keine Ruhespannung abgelesen",
  },
  {
    en: "the cells were not read one by one",
    pl: "cel nie odczytano każdej z osobna",
    de: "die Zellen wurden nicht einzeln abgelesen",
  },
  {
    en: "no charge was recorded between two readings",
    pl: "między dwoma odczytami nie zapisano ładunku",
    de: "zwischen zwei Ablesungen wurde keine Ladung aufgezeichnet",
  },
] as const satisfies readonly Phrase[];

const notExamined = [
  {
    en: "the battery's capacity is not known",
    pl: "pojemność akumulatora nie jest znana",
    de: "die Kapazität der Batterie ist nicht bekannt",
  },
  {
    en: "the battery's number of cells is not known",
    pl: "liczba cel akumulatora nie jest znana",
    de: "die Zellenzahl der Batterie ist nicht bekannt",
  },
  { en: "nobody visited the battery", pl: "nikt nie odwiedził akumulatora", de: "niemand war bei der Batterie" },
  {
    en: "the visits do not stand in the order of time",
    pl: "wizyty nie stoją w kolejności czasu",
    de: "die Besuche stehen nicht in zeitlicher Reihenfolge",
  },
  {
    en: "the battery's full and empty density do not fit together",
    pl: "gęstości akumulatora pełnego i pustego nie pasują do siebie",
    de: "volle und leere Säuredichte der Batterie passen nicht zusammen",
  },
  {
    en: "neither density nor rest voltage was read at any visit",
    pl: "na żadnej wizycie nie odczytano gęstości ani napięcia spoczynkowego",
    de: "bei keinem Besuch wurde Säuredichte oder Ruhespannung abgelesen",
  },
  {
    en: "only one witness was heard; with nothing to hold it against there is nothing to examine",
    pl: "wysłuchano tylko jednego świadka; gdy nie ma z czym go skonfrontować, nie ma czego badać",
    de: "nur ein Zeuge wurde gehört; ohne etwas zum Dagegenhalten gibt es nichts zu untersuchen",
  },
  {
    en: "no battery that the model knows could have given these readings",
    pl: "żaden akumulator znany modelowi nie mógł dać takich odczytów",
    de: "keine Batterie, die das Modell kennt, kann diese Ablesungen ergeben haben",
  },
] as const satisfies readonly Phrase[];

/** Readings that would tell causes apart, as a clause begins; each stands in the results by itself, and inside of sentences. */
const readings = [
  { en: "density after the acid was mixed", pl: "gęstość po wymieszaniu elektrolitu", de: "Säuredichte nach dem Durchmischen der Säure" },
  { en: "rest voltage after 24 h of rest", pl: "napięcie spoczynkowe po 24 h spoczynku", de: "Ruhespannung nach 24 h Ruhe" },
  {
    en: "clamp-meter current just before disconnecting, after the recorder has stopped",
    pl: "prąd z cęgów tuż przed odłączeniem, gdy rejestrator już skończył",
    de: "Strom mit der Stromzange kurz vor dem Abklemmen, nachdem der Rekorder aufgehört hat",
  },
  {
    en: "density of every cell, or the voltage of every cell under load",
    pl: "gęstość w każdej celi albo napięcie każdej celi pod obciążeniem",
    de: "Säuredichte jeder Zelle oder Spannung jeder Zelle unter Last",
  },
  { en: "a second hydrometer in the same cell", pl: "drugi areometr w tej samej celi", de: "ein zweiter Säureheber in derselben Zelle" },
  {
    en: "a measured discharge at the 20-hour current",
    pl: "zmierzone rozładowanie prądem 20-godzinnym",
    de: "eine gemessene Entladung mit dem 20-stündigen Strom",
  },
  { en: "the temperature of the acid", pl: "temperatura elektrolitu", de: "die Temperatur der Säure" },
] as const satisfies readonly Phrase[];

const causes = [
  { en: "nothing to explain", pl: "nie ma czego wyjaśniać", de: "nichts zu erklären" },
  { en: "acid not mixed", pl: "elektrolit niewymieszany", de: "Säure nicht durchmischt" },
  { en: "charge that nobody recorded", pl: "niezapisany ładunek", de: "nicht aufgezeichnete Ladung" },
  { en: "surface charge not rested off", pl: "nieodczekany ładunek powierzchniowy", de: "Oberflächenladung nicht abgeklungen" },
  { en: "a weak cell", pl: "słaba cela", de: "eine schwache Zelle" },
  { en: "capacity not as rated", pl: "pojemność inna niż znamionowa", de: "Kapazität nicht wie angegeben" },
  { en: "hydrometer reads off", pl: "areometr wskazuje błędnie", de: "Säureheber zeigt falsch an" },
] as const satisfies readonly Phrase[];

const wouldTell = [
  {
    en: "it would hardly move the balance between the explanations",
    pl: "prawie nie zmieniłoby to proporcji między wyjaśnieniami",
    de: "es würde das Verhältnis der Erklärungen kaum verschieben",
  },
  {
    en: "it would read {best:quantity} if the cause is “{causes:cause+and}”, and {rival:quantity} if it is “{rivals:cause+and}”",
    pl: "wskazanie {best}, jeśli przyczyną jest „{causes}”, a {rival}, jeśli „{rivals}”",
    de: "angezeigt würden {best}, wenn die Ursache „{causes}“ ist, und {rival}, wenn „{rivals}“",
  },
  {
    en: "it would show about {best:quantity} if the cause is “{causes:cause+and}”, and {rival:quantity} if it is “{rivals:cause+and}”",
    pl: "wskazanie w przybliżeniu {best}, jeśli przyczyną jest „{causes}”, a {rival}, jeśli „{rivals}”",
    de: "angezeigt würden etwa {best}, wenn die Ursache „{causes}“ ist, und {rival}, wenn „{rivals}“",
  },
  {
    en: "the lowest cell would stand below the others by {best:quantity} if the cause is “{causes:cause+and}”, and {rival:quantity} if it is “{rivals:cause+and}”",
    pl: "najniższa cela poniżej pozostałych o: {best}, jeśli przyczyną jest „{causes}”, a {rival}, jeśli „{rivals}”",
    de: "die niedrigste Zelle läge unter den anderen um {best}, wenn die Ursache „{causes}“ ist, und {rival}, wenn „{rivals}“",
  },
  {
    en: "the first would read above the second by {best:quantity} if the cause is “{causes:cause+and}”, and {rival:quantity} if it is “{rivals:cause+and}”",
    pl: "pierwszy wskazałby więcej niż drugi o: {best}, jeśli przyczyną jest „{causes}”, a {rival}, jeśli „{rivals}”",
    de: "der erste läge über dem zweiten um {best}, wenn die Ursache „{causes}“ ist, und {rival}, wenn „{rivals}“",
  },
  {
    en: "it would yield {best:quantity} if the cause is “{causes:cause+and}”, and {rival:quantity} if it is “{rivals:cause+and}”",
    pl: "wynik {best}, jeśli przyczyną jest „{causes}”, a {rival}, jeśli „{rivals}”",
    de: "das Ergebnis wären {best}, wenn die Ursache „{causes}“ ist, und {rival}, wenn „{rivals}“",
  },
  {
    en: "the density would move by {best:quantity} if the cause is “{causes:cause+and}”, and {rival:quantity} if it is “{rivals:cause+and}”",
    pl: "gęstość zmieniłaby się o: {best}, jeśli przyczyną jest „{causes}”, a {rival}, jeśli „{rivals}”",
    de: "die Dichte würde sich ändern um {best}, wenn die Ursache „{causes}“ ist, und {rival}, wenn „{rivals}“",
  },
] as const satisfies readonly Phrase[];

const followsIf = [
  {
    en: "{amount:quantity} went through the posts while nobody recorded.",
    pl: "przez bieguny przepłynęło {amount}, gdy nikt nie zapisywał.",
    de: "gingen {amount} über die Pole, während niemand aufzeichnete.",
  },
  {
    en: "at visit {visit} the top of the acid was weaker than the mean by {amount:quantity}.",
    pl: "na wizycie {visit} górna warstwa elektrolitu była słabsza od średniej o {amount}.",
    de: "war bei Besuch {visit} die Säure oben um {amount} schwächer als im Mittel.",
  },
  {
    en: "the hydrometer shows {amount:quantity} too much (a minus: too little).",
    pl: "areometr wskazuje o {amount} za dużo (minus: za mało).",
    de: "zeigt der Säureheber {amount} zu viel (Minus: zu wenig).",
  },
  {
    en: "which cell is the weak one these readings do not say.",
    pl: "te odczyty nie mówią, która cela jest słaba.",
    de: "sagen diese Ablesungen nicht, welche Zelle die schwache ist.",
  },
  {
    en: "cell {cell} stands {by} kg/l below the mean of the others; the states of charge are those of the others.",
    pl: "cela {cell} leży o {by} kg/l poniżej średniej pozostałych; stany naładowania dotyczą pozostałych.",
    de: "liegt Zelle {cell} {by} kg/l unter dem Mittel der anderen; die Ladezustände sind die der anderen.",
  },
  {
    en: "the battery holds {amount:quantity}, against {rated} rated.",
    pl: "akumulator mieści {amount} wobec znamionowych {rated}.",
    de: "fasst die Batterie {amount}, gegenüber {rated} Nennkapazität.",
  },
] as const satisfies readonly Phrase[];

export const examination = {
  text: [
    ...hidden,
    ...notExamined,
    ...readings,
    ...wouldTell,
    { en: "{causes:cause+and}", pl: "{causes}", de: "{causes}" },
    // What would settle it, and what cannot be seen.
    { en: "{reading:reading}: {would:wouldTell}", pl: "{reading}: {would}", de: "{reading}: {^would}" },
    {
      en: "{cause:causeLabel}: cannot be seen, since {because:hidden}",
      pl: "{cause}: nie da się zobaczyć, bo {because}",
      de: "{cause}: nicht zu sehen, denn {because}",
    },
    // Assumptions.
    {
      en: "a battery temperature that nobody took: {temperature} °C",
      pl: "temperatura akumulatora, której nikt nie zmierzył: {temperature} °C",
      de: "eine Batterietemperatur, die niemand gemessen hat: {temperature} °C",
    },
    {
      en: "acid in one full cell: {mass} kg, from the rated capacity",
      pl: "elektrolit w jednej pełnej celi: {mass} kg, z pojemności znamionowej",
      de: "Säure in einer vollen Zelle: {mass} kg, aus der Nennkapazität",
    },
    {
      en: "between some visits nothing was recorded, and the charge there is left wide open",
      pl: "między niektórymi wizytami nic nie zapisano, a ładunek w tym czasie pozostaje zupełnie otwarty",
      de: "zwischen manchen Besuchen wurde nichts aufgezeichnet; die Ladung dort bleibt weit offen",
    },
    {
      en: "full density: {density} kg/l at 25 °C, as is usual",
      pl: "pełna gęstość: {density} kg/l w 25 °C, jak zwykle",
      de: "volle Säuredichte: {density} kg/l bei 25 °C, wie üblich",
    },
    // For a buyer.
    {
      en: "How full the battery was cannot be said.",
      pl: "Nie da się powiedzieć, jak pełny był akumulator.",
      de: "Wie voll die Batterie war, lässt sich nicht sagen.",
    },
    {
      en: "At the last visit the battery was between {from} and {to} % full, by everything that was measured.",
      pl: "Na ostatniej wizycie akumulator był naładowany w {from}–{to} %, według wszystkiego, co zmierzono.",
      de: "Beim letzten Besuch war die Batterie zwischen {from} und {to} % voll, nach allem, was gemessen wurde.",
    },
    {
      en: "The separate measurements agree, so there is nothing to explain away.",
      pl: "Niezależne pomiary są zgodne, więc nie ma czego wyjaśniać.",
      de: "Die einzelnen Messungen stimmen überein; es gibt nichts wegzuerklären.",
    },
    {
      en: "The separate measurements agree as well as they can.",
      pl: "Niezależne pomiary są zgodne, na ile to możliwe.",
      de: "Die einzelnen Messungen stimmen so gut überein, wie es möglich ist.",
    },
    { en: "What would settle it: {reading:reading}.", pl: "Co by to rozstrzygnęło: {reading}.", de: "Was es klären würde: {reading}." },
    {
      en: "Why the measurements do not quite agree is open.",
      pl: "Dlaczego pomiary nie całkiem się zgadzają, pozostaje otwarte.",
      de: "Warum die Messungen nicht ganz übereinstimmen, ist offen.",
    },
    {
      en: "Why the measurements do not quite agree is open; it may be that {left:meaning+orThat}.",
      pl: "Dlaczego pomiary nie całkiem się zgadzają, pozostaje otwarte; może być tak, że {left}.",
      de: "Warum die Messungen nicht ganz übereinstimmen, ist offen; es kann sein, dass {left}.",
    },
    {
      en: "Very probably {clear:meaning+andThat}.",
      pl: "Bardzo prawdopodobne jest, że {clear}.",
      de: "Sehr wahrscheinlich ist, dass {clear}.",
    },
    { en: "Probably {clear:meaning+andThat}.", pl: "Prawdopodobne jest, że {clear}.", de: "Wahrscheinlich ist, dass {clear}." },
    { en: "Whether {left:meaning+andWhether}, is open.", pl: "Otwarte pozostaje, czy {left}.", de: "Offen ist, ob {left}." },
    // For a technician.
    {
      en: "Visit {visit}: {heard:heard+comma}; all visits together: {together:share}.",
      pl: "Wizyta {visit}: {heard}; wszystkie wizyty razem: {together}.",
      de: "Besuch {visit}: {heard}; alle Besuche zusammen: {together}.",
    },
    {
      en: "Visit {visit}: no witness of its own; all visits together: {together:share}.",
      pl: "Wizyta {visit}: bez własnego świadka; wszystkie wizyty razem: {together}.",
      de: "Besuch {visit}: kein eigener Zeuge; alle Besuche zusammen: {together}.",
    },
    {
      en: "Most probable: {causes:cause+and} ({probability:probability}).",
      pl: "Najbardziej prawdopodobne: {causes} ({probability}).",
      de: "Am wahrscheinlichsten: {causes} ({probability}).",
    },
    {
      en: "Most probable: {causes:cause+and} ({probability:probability}); next, {rivals:cause+and} ({rival:probability}).",
      pl: "Najbardziej prawdopodobne: {causes} ({probability}); następnie {rivals} ({rival}).",
      de: "Am wahrscheinlichsten: {causes} ({probability}); danach {rivals} ({rival}).",
    },
    {
      en: "From visit {from} to visit {to} the plates took {amount:quantity}.",
      pl: "Od wizyty {from} do wizyty {to} płyty przyjęły {amount}.",
      de: "Von Besuch {from} bis {to} nahmen die Platten {amount} auf.",
    },
    {
      en: "Would tell most: {reading:reading}; {would:wouldTell}.",
      pl: "Najwięcej powiedziałoby: {reading}; {would}.",
      de: "Am meisten würde sagen: {reading}; {would}.",
    },
    { en: "If so, {says:followsIf}", pl: "Jeśli tak, {says}", de: "Wenn ja, {says}" },
    {
      en: "{amount:quantity} went through the posts while nobody recorded.",
      pl: "Przez bieguny przepłynęło {amount}, gdy nikt nie zapisywał.",
      de: "{amount} gingen über die Pole, während niemand aufzeichnete.",
    },
    {
      en: "At visit {visit} the top of the acid was weaker than the mean by {amount:quantity}.",
      pl: "Na wizycie {visit} górna warstwa elektrolitu była słabsza od średniej o {amount}.",
      de: "Bei Besuch {visit} war die Säure oben um {amount} schwächer als im Mittel.",
    },
    {
      en: "The hydrometer shows {amount:quantity} too much (a minus: too little).",
      pl: "Areometr wskazuje o {amount} za dużo (minus: za mało).",
      de: "Der Säureheber zeigt {amount} zu viel (Minus: zu wenig).",
    },
    {
      en: "Which cell is the weak one these readings do not say.",
      pl: "Te odczyty nie mówią, która cela jest słaba.",
      de: "Welche Zelle die schwache ist, sagen diese Ablesungen nicht.",
    },
    {
      en: "Cell {cell} stands {by} kg/l below the mean of the others; the states of charge are those of the others.",
      pl: "Cela {cell} leży o {by} kg/l poniżej średniej pozostałych; stany naładowania dotyczą pozostałych.",
      de: "Zelle {cell} liegt {by} kg/l unter dem Mittel der anderen; die Ladezustände sind die der anderen.",
    },
    {
      en: "The battery holds {amount:quantity}, against {rated} rated.",
      pl: "Akumulator mieści {amount} wobec znamionowych {rated}.",
      de: "Die Batterie fasst {amount}, gegenüber {rated} Nennkapazität.",
    },
    // How each witness came to its account.
    { en: "the battery is sealed", pl: "akumulator jest szczelny", de: "die Batterie ist verschlossen" },
    {
      en: "the value read lies outside what such a battery can show",
      pl: "odczytana wartość leży poza tym, co taki akumulator może wykazać",
      de: "der abgelesene Wert liegt außerhalb dessen, was eine solche Batterie zeigen kann",
    },
    {
      en: "from the density at the top of the cells, by the acid balance",
      pl: "z gęstości górnej warstwy w celach, z bilansu kwasu",
      de: "aus der Säuredichte oben in den Zellen, nach der Säurebilanz",
    },
    {
      en: "from the acid that this voltage stands for, {rested:rest}",
      pl: "z elektrolitu, któremu odpowiada to napięcie, {rested}",
      de: "aus der Säure, für die diese Spannung steht, {rested}",
    },
    {
      en: "from the acid that this voltage stands for, {rested:rest}; under {least} h, or not noted, it may say too much",
      pl: "z elektrolitu, któremu odpowiada to napięcie, {rested}; poniżej {least} h albo bez notatki może wskazywać za dużo",
      de: "aus der Säure, für die diese Spannung steht, {rested}; unter {least} h oder nicht notiert kann sie zu viel sagen",
    },
    {
      en: "neither density nor rest voltage was read at the first visit, so the sum has no start",
      pl: "na pierwszej wizycie nie odczytano gęstości ani napięcia spoczynkowego, więc suma nie ma początku",
      de: "beim ersten Besuch wurde weder Säuredichte noch Ruhespannung abgelesen; die Summe hat keinen Anfang",
    },
    {
      en: "nothing was recorded between visits {from} and {to}",
      pl: "między wizytami {from} i {to} nic nie zapisano",
      de: "zwischen den Besuchen {from} und {to} wurde nichts aufgezeichnet",
    },
    {
      en: "the start of the sum: the first visit's own reading",
      pl: "początek sumy: odczyt z pierwszej wizyty",
      de: "der Anfang der Summe: die Ablesung des ersten Besuchs",
    },
    {
      en: "from the first visit on, by the recorded charge less the usual gassing",
      pl: "od pierwszej wizyty, z zapisanego ładunku pomniejszonego o zwykłe gazowanie",
      de: "ab dem ersten Besuch, nach der aufgezeichneten Ladung abzüglich der üblichen Gasung",
    },
    {
      en: "the battery's rated cranking current is not stated",
      pl: "znamionowego prądu rozruchowego akumulatora nie podano",
      de: "der Nenn-Kaltstartstrom der Batterie ist nicht angegeben",
    },
    {
      en: "from the share of the rating that a tester shows; it tells wear from charge badly",
      pl: "z tej części wartości znamionowej, którą pokazuje tester; słabo odróżnia zużycie od stanu naładowania",
      de: "aus dem Anteil am Nennwert, den ein Tester zeigt; er trennt Verschleiß schlecht vom Ladezustand",
    },
    {
      en: "density was not read at this visit",
      pl: "na tej wizycie nie odczytano gęstości",
      de: "bei diesem Besuch wurde keine Dichte abgelesen",
    },
    {
      en: "rest voltage was not read at this visit",
      pl: "na tej wizycie nie odczytano napięcia spoczynkowego",
      de: "bei diesem Besuch wurde keine Ruhespannung abgelesen",
    },
    {
      en: "cranking current was not read at this visit",
      pl: "na tej wizycie nie odczytano prądu rozruchowego",
      de: "bei diesem Besuch wurde kein Kaltstartstrom abgelesen",
    },
    // What each cause is.
    {
      en: "All witnesses tell one story within what their instruments can tell.",
      pl: "Wszyscy świadkowie mówią to samo w granicach dokładności swoich przyrządów.",
      de: "Alle Zeugen sagen dasselbe, soweit ihre Messgeräte es sagen können.",
    },
    {
      en: "Heavy acid lies at the bottom of the cells, where no hydrometer reaches; the density at the top says less than went in.",
      pl: "Ciężki elektrolit leży na dnie cel, gdzie areometr nie sięga; gęstość u góry wskazuje mniej, niż wpłynęło (rozwarstwienie elektrolitu).",
      de: "Schwere Säure liegt unten in den Zellen, wohin kein Säureheber reicht; die Dichte oben sagt weniger, als hineinging (Säureschichtung).",
    },
    {
      en: "One cell's acid is clearly weaker than that of the others; it pulls voltage and mean density down.",
      pl: "Elektrolit jednej celi jest wyraźnie słabszy niż w pozostałych; obniża to napięcie i średnią gęstość.",
      de: "Die Säure einer Zelle ist deutlich schwächer als die der anderen; das drückt Spannung und mittlere Dichte.",
    },
    {
      en: "The battery holds clearly less, or more, than the capacity it is taken for.",
      pl: "Akumulator mieści wyraźnie mniej albo więcej niż przyjęta pojemność.",
      de: "Die Batterie fasst deutlich weniger oder mehr als die angenommene Kapazität.",
    },
    {
      en: "The charger worked on while no recorder did; the logs say less than went in.",
      pl: "Prostownik pracował dalej, gdy żaden rejestrator nie działał; zapisy wskazują mniej, niż wpłynęło.",
      de: "Das Ladegerät arbeitete weiter, als kein Rekorder lief; die Aufzeichnungen sagen weniger, als hineinging.",
    },
    {
      en: "The hydrometer shows too much or too little at every visit, beyond its stated accuracy.",
      pl: "Areometr na każdej wizycie wskazuje za dużo albo za mało, ponad podaną dokładność.",
      de: "Der Säureheber zeigt bei jedem Besuch zu viel oder zu wenig, über seine angegebene Genauigkeit hinaus.",
    },
    {
      en: "The voltage was read too soon after charging; it says more than the battery holds.",
      pl: "Napięcie odczytano zbyt wcześnie po ładowaniu; wskazuje więcej, niż akumulator mieści.",
      de: "Die Spannung wurde zu bald nach dem Laden abgelesen; sie sagt mehr, als die Batterie enthält.",
    },
  ],
  hidden,
  notExamined,
  reading: [...readings, ...capitalised(readings)],
  cause: causes,
  wouldTell,
  followsIf,
  /** As a clause after "that" or "whether". */
  meaning: [
    {
      en: "more charge is in the battery than the acid at the top shows",
      pl: "w akumulatorze jest więcej ładunku, niż pokazuje elektrolit u góry",
      de: "in der Batterie mehr Ladung ist, als die Säure oben zeigt",
    },
    {
      en: "the charger put in more than the record shows",
      pl: "prostownik dostarczył więcej, niż pokazuje zapis",
      de: "das Ladegerät mehr geliefert hat, als die Aufzeichnung zeigt",
    },
    {
      en: "the voltage was read too early and promises more than the battery holds",
      pl: "napięcie odczytano zbyt wcześnie i obiecuje ono więcej, niż akumulator mieści",
      de: "die Spannung zu früh abgelesen wurde und mehr verspricht, als die Batterie enthält",
    },
    {
      en: "one cell of the test battery is weak, which is no fault of the charger",
      pl: "jedna cela akumulatora testowego jest słaba, co nie jest winą prostownika",
      de: "eine Zelle der Testbatterie schwach ist, woran das Ladegerät keine Schuld hat",
    },
    {
      en: "the test battery does not hold what its label says, which is no fault of the charger",
      pl: "akumulator testowy nie mieści tyle, ile podaje etykieta, co nie jest winą prostownika",
      de: "die Testbatterie nicht fasst, was auf ihr steht, woran das Ladegerät keine Schuld hat",
    },
    {
      en: "the acid tester shows a little wrong, which is no fault of the charger",
      pl: "miernik elektrolitu wskazuje nieco błędnie, co nie jest winą prostownika",
      de: "der Säureprüfer etwas falsch zeigt, woran das Ladegerät keine Schuld hat",
    },
  ],
  heard: [
    { en: "density {share:share}", pl: "gęstość {share}", de: "Säuredichte {share}" },
    { en: "rest voltage {share:share}", pl: "napięcie spoczynkowe {share}", de: "Ruhespannung {share}" },
    { en: "charge balance {share:share}", pl: "bilans ładunku {share}", de: "Ladungsbilanz {share}" },
    { en: "cranking current {share:share}", pl: "prąd rozruchowy {share}", de: "Kaltstartstrom {share}" },
  ],
  share: [
    { en: "{middle} % ({interval:range})", pl: "{middle} % ({interval})", de: "{middle} % ({interval})" },
    { en: "more than full", pl: "powyżej pełnego", de: "mehr als voll" },
  ],
  probability: [
    { en: "{percent} %", pl: "{percent} %", de: "{percent} %" },
    { en: "more than {percent} %", pl: "ponad {percent} %", de: "über {percent} %" },
    { en: "less than {percent} %", pl: "poniżej {percent} %", de: "unter {percent} %" },
    { en: "not known", pl: "nie wiadomo", de: "nicht bekannt" },
  ],
} as const satisfies Chapter;

/** The same phrases with a capital, as they stand where a finding names the reading first. */
function capitalised(phrases: readonly Phrase[]): Phrase[] {
  const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
  return phrases.map(({ en, pl, de }) => ({ en: upper(en), pl: upper(pl), de: upper(de) }));
}

/** Findings: subjects, verdicts and sentences. */
import type { Chapter } from "../pattern.ts";

export const findings = {
  text: [
    // Verdicts that several findings share.
    { en: "yes", pl: "tak", de: "ja" },
    { en: "no", pl: "nie", de: "nein" },
    { en: "not put to the test", pl: "nie poddano próbie", de: "nicht auf die Probe gestellt" },
    { en: "cannot be read", pl: "nie da się odczytać", de: "nicht ablesbar" },

    // Target density.
    { en: "reached", pl: "osiągnięto", de: "erreicht" },
    { en: "reached, after mixing", pl: "osiągnięto, po wymieszaniu", de: "erreicht, nach Durchmischen" },
    { en: "only after mixing", pl: "dopiero po wymieszaniu", de: "erst nach Durchmischen" },
    { en: "read, not settled", pl: "odczytano, nieustalone", de: "abgelesen, nicht zur Ruhe gekommen" },
    { en: "not reached yet", pl: "jeszcze nie osiągnięto", de: "noch nicht erreicht" },
    { en: "not reachable as it goes", pl: "w ten sposób nieosiągalne", de: "so nicht erreichbar" },
    {
      en: "This battery is sealed, so its acid cannot be read; the verdict rests on voltage and charge.",
      pl: "Ten akumulator jest szczelny, więc gęstości elektrolitu nie da się odczytać; ocena opiera się na napięciu i ładunku.",
      de: "Diese Batterie ist verschlossen, ihre Säure lässt sich nicht messen; das Urteil stützt sich auf Spannung und Ladung.",
    },
    {
      en: "Whether the battery came back to full density is not known: {why:noTarget}.",
      pl: "Nie wiadomo, czy akumulator odzyskał pełną gęstość elektrolitu: {why}.",
      de: "Ob die Batterie wieder auf volle Säuredichte kam, ist nicht bekannt: {^why}.",
    },
    {
      en: "The battery read its target density of {goal} kg/l after {connections:afterConnections}, {hours} h connected at most.",
      pl: "Akumulator wykazał docelową gęstość {goal} kg/l po {connections}, łącznie najwyżej {hours} h podłączenia.",
      de: "Die Batterie zeigte ihre Zieldichte von {goal} kg/l nach {connections}, höchstens {hours} h angeschlossen.",
    },
    {
      en: "The battery read its target density of {goal} kg/l after {connections:afterConnections}, {hours} h connected at most; the acid was mixed by hand before it was read.",
      pl: "Akumulator wykazał docelową gęstość {goal} kg/l po {connections}, łącznie najwyżej {hours} h podłączenia; przed odczytem elektrolit wymieszano ręcznie.",
      de: "Die Batterie zeigte ihre Zieldichte von {goal} kg/l nach {connections}, höchstens {hours} h angeschlossen; die Säure war vor dem Ablesen von Hand durchmischt worden.",
    },
    {
      en: "The battery read its target density of {goal} kg/l at visit {visit}, but the test's own stop rule says that the density was still moving.",
      pl: "Akumulator wykazał docelową gęstość {goal} kg/l podczas wizyty {visit}, lecz według reguły zakończenia tego testu gęstość jeszcze się zmieniała.",
      de: "Die Batterie zeigte ihre Zieldichte von {goal} kg/l bei Besuch {visit}, doch nach der Abschlussregel dieses Tests änderte sich die Dichte noch.",
    },
    {
      en: "The battery did not come back to {goal} kg/l in this test; as it goes it would take {fromH} h connected or more, and may never get there.",
      pl: "Akumulator nie wrócił w tym teście do {goal} kg/l; w tym tempie trwałoby to {fromH} h podłączenia lub więcej i może nigdy nie nastąpić (prognoza).",
      de: "Die Batterie kam in diesem Test nicht auf {goal} kg/l zurück; so weiter würde es {fromH} h am Ladegerät oder mehr dauern, und vielleicht kommt sie nie so weit (Hochrechnung).",
    },
    {
      en: "The battery did not come back to {goal} kg/l in this test; as it goes it would take {fromH} to {toH} h connected.",
      pl: "Akumulator nie wrócił w tym teście do {goal} kg/l; w tym tempie trwałoby to od {fromH} do {toH} h podłączenia (prognoza).",
      de: "Die Batterie kam in diesem Test nicht auf {goal} kg/l zurück; so weiter würde es {fromH} bis {toH} h am Ladegerät dauern (Hochrechnung).",
    },
    {
      en: "The battery did not come back to {goal} kg/l, and will not as it goes.",
      pl: "Akumulator nie wrócił do {goal} kg/l i w ten sposób nie wróci.",
      de: "Die Batterie kam nicht auf {goal} kg/l zurück und wird es so auch nicht.",
    },
    {
      en: "The battery did not come back to {goal} kg/l in this test; whether it would cannot be told.",
      pl: "Akumulator nie wrócił w tym teście do {goal} kg/l; nie da się powiedzieć, czy by wrócił.",
      de: "Die Batterie kam in diesem Test nicht auf {goal} kg/l zurück; ob sie es noch würde, lässt sich nicht sagen.",
    },
    {
      en: "Mixed by hand, the acid read {density} kg/l: more charge had gone in than the top of the cells shows.",
      pl: "Po ręcznym wymieszaniu elektrolit wykazał {density} kg/l: wpłynęło więcej ładunku, niż pokazuje górna warstwa w celach.",
      de: "Von Hand durchmischt zeigte die Säure {density} kg/l: Es war mehr Ladung hineingegangen, als die Säure oben in den Zellen zeigt.",
    },
    {
      en: "The battery read its target of {goal} kg/l only after the acid was mixed by hand: the charge had gone in, but the charger left the heavy acid at the bottom of the cells.",
      pl: "Akumulator wykazał docelowe {goal} kg/l dopiero po ręcznym wymieszaniu elektrolitu: ładunek wpłynął, ale prostownik pozostawił ciężki elektrolit na dnie cel.",
      de: "Die Batterie zeigte ihr Ziel von {goal} kg/l erst, nachdem die Säure von Hand durchmischt war: Die Ladung war hineingegangen, aber das Ladegerät ließ die schwere Säure unten in den Zellen.",
    },

    // Float window.
    { en: "probably not", pl: "raczej nie", de: "wahrscheinlich nicht" },
    { en: "too low to keep it full", pl: "za mało, by utrzymać pełny", de: "zu niedrig, um sie voll zu halten" },
    { en: "yes, by its voltage", pl: "tak, sądząc po napięciu", de: "ja, der Spannung nach" },
    {
      en: "Whether it may stay connected is not known: no recording shows what it holds afterwards.",
      pl: "Nie wiadomo, czy może pozostać podłączony: żaden zapis nie pokazuje, co utrzymuje po naładowaniu.",
      de: "Ob es angeschlossen bleiben darf, ist nicht bekannt: Keine Aufzeichnung zeigt, was es danach hält.",
    },
    {
      en: "It holds about {voltage} V, but how far the meter may be off is not stated, so it cannot be held against the float window.",
      pl: "Utrzymuje około {voltage} V, lecz nie podano, o ile miernik może się mylić, więc nie da się tego odnieść do zakresu napięcia konserwującego.",
      de: "Es hält etwa {voltage} V, doch wie weit das Messgerät abweichen kann, ist nicht angegeben; mit dem Fenster der Erhaltungsladung lässt sich das nicht vergleichen.",
    },
    {
      en: "It holds about {voltage} V; the recorder's error and the temperature leave open whether that is inside the float window.",
      pl: "Utrzymuje około {voltage} V; błąd rejestratora i temperatura nie pozwalają rozstrzygnąć, czy mieści się to w zakresie napięcia konserwującego.",
      de: "Es hält etwa {voltage} V; der Fehler des Rekorders und die Temperatur lassen offen, ob das im Fenster der Erhaltungsladung liegt.",
    },
    {
      en: "A voltmeter found {voltage} V after more than a day, above the float window; one reading does not show what it holds for a season.",
      pl: "Po ponad dobie woltomierz wskazał {voltage} V, powyżej zakresu napięcia konserwującego; jeden odczyt nie pokazuje, co prostownik utrzymuje przez sezon.",
      de: "Ein Spannungsmesser zeigte nach mehr als einem Tag {voltage} V, über dem Fenster der Erhaltungsladung; eine Ablesung zeigt nicht, was es eine Saison lang hält.",
    },
    {
      en: "It holds {voltage} V, above the float window: left connected it costs water and life.",
      pl: "Utrzymuje {voltage} V, powyżej zakresu napięcia konserwującego: pozostawiony podłączony kosztuje akumulator wodę i żywotność.",
      de: "Es hält {voltage} V, über dem Fenster der Erhaltungsladung: Bleibt es angeschlossen, kostet das Wasser und Lebensdauer.",
    },
    {
      en: "It holds {voltage} V, below the float window: safe, but it may not keep the battery full.",
      pl: "Utrzymuje {voltage} V, poniżej zakresu napięcia konserwującego: bezpiecznie, lecz może nie utrzymać akumulatora w pełni naładowanego.",
      de: "Es hält {voltage} V, unter dem Fenster der Erhaltungsladung: sicher, hält die Batterie aber vielleicht nicht voll.",
    },
    {
      en: "It holds {voltage} V, inside the float window.",
      pl: "Utrzymuje {voltage} V, w zakresie napięcia konserwującego.",
      de: "Es hält {voltage} V, im Fenster der Erhaltungsladung.",
    },
    {
      en: "{voltage} V was read; float window {window:window}",
      pl: "odczytano {voltage} V; zakres napięcia konserwującego: {window}",
      de: "{voltage} V abgelesen; Fenster der Erhaltungsladung: {window}",
    },
    {
      en: "{voltage} V is held (± {error} V with the meter's error and the window's own); float window {window:window}",
      pl: "utrzymywane jest {voltage} V (± {error} V łącznie z błędem miernika i samego zakresu); zakres napięcia konserwującego: {window}",
      de: "{voltage} V werden gehalten (± {error} V mit dem Fehler des Messgeräts und dem des Fensters); Fenster der Erhaltungsladung: {window}",
    },
    {
      en: "one battery at one temperature; whether the charger follows heat and cold was not tried",
      pl: "jeden akumulator w jednej temperaturze; nie sprawdzono, czy prostownik dostosowuje się do ciepła i zimna",
      de: "eine Batterie bei einer Temperatur; ob das Ladegerät Wärme und Kälte folgt, wurde nicht erprobt",
    },

    // Letting go.
    { en: "only after a day", pl: "dopiero po dobie", de: "erst nach einem Tag" },
    {
      en: "It held {voltage} V for {days} days before it let go; {gassing:gassing}.",
      pl: "Utrzymywał {voltage} V przez {days} {days|dzień|dni|dni|dnia}, zanim zszedł niżej; {gassing}.",
      de: "Es hielt {voltage} V {days} {days|Tag|Tage} lang, bevor es davon abließ; {gassing}.",
    },
    {
      en: "It held {voltage} V for {days} days and was not seen to let go; {gassing:gassing}.",
      pl: "Utrzymywał {voltage} V przez {days} {days|dzień|dni|dni|dnia} i nie zaobserwowano, by zszedł niżej; {gassing}.",
      de: "Es hielt {voltage} V {days} {days|Tag|Tage} lang, und es war nicht zu sehen, dass es davon abließ; {gassing}.",
    },
    {
      en: "{file:name}, lines {from} to {to}: {perCell} V a cell for {hours} h",
      pl: "{file}, wiersze od {from} do {to}: {perCell} V na celę przez {hours} h",
      de: "{file}, Zeilen {from} bis {to}: {perCell} V je Zelle, {hours} h lang",
    },

    // Recording endings.
    { en: "the recorder stopped first", pl: "pierwszy skończył rejestrator", de: "der Rekorder hörte zuerst auf" },
    { en: "the charger stopped", pl: "skończył prostownik", de: "das Ladegerät hörte auf" },
    { en: "stopped from outside", pl: "przerwano z zewnątrz", de: "von außen beendet" },
    {
      en: "In the one recording the recorder stopped before the charger did, so the end of the charge was not seen there.",
      pl: "W jedynym zapisie rejestrator skończył przed prostownikiem, więc końca ładowania tam nie widać.",
      de: "In der einen Aufzeichnung hörte der Rekorder vor dem Ladegerät auf; das Ende der Ladung ist dort nicht zu sehen.",
    },
    {
      en: "In {part} of {all} recordings the recorder stopped before the charger did, so the end of the charge was not seen there.",
      pl: "W {part} z {all} {all|zapisu|zapisów|zapisów} rejestrator skończył przed prostownikiem, więc końca ładowania tam nie widać.",
      de: "In {part} von {all} {all|Aufzeichnung|Aufzeichnungen} hörte der Rekorder vor dem Ladegerät auf; das Ende der Ladung ist dort nicht zu sehen.",
    },
    {
      en: "In the one recording the charger itself was seen to stop.",
      pl: "W jedynym zapisie widać, że skończył sam prostownik.",
      de: "In der einen Aufzeichnung ist zu sehen, dass das Ladegerät selbst aufhörte.",
    },
    {
      en: "In all {all} recordings the charger itself was seen to stop.",
      pl: "We wszystkich zapisach ({all}) widać, że skończył sam prostownik.",
      de: "In allen {all} Aufzeichnungen ist zu sehen, dass das Ladegerät selbst aufhörte.",
    },
    {
      en: "In the one recording it cannot be told who stopped.",
      pl: "W jedynym zapisie nie da się rozstrzygnąć, kto skończył.",
      de: "In der einen Aufzeichnung lässt sich nicht sagen, wer aufhörte.",
    },
    {
      en: "In {part} of {all} recordings it cannot be told who stopped.",
      pl: "W {part} z {all} {all|zapisu|zapisów|zapisów} nie da się rozstrzygnąć, kto skończył.",
      de: "In {part} von {all} {all|Aufzeichnung|Aufzeichnungen} lässt sich nicht sagen, wer aufhörte.",
    },
    {
      en: "The recordings end because a person or the mains ended them.",
      pl: "Zapisy kończą się, bo zakończył je człowiek albo zanik sieci.",
      de: "Die Aufzeichnungen enden, weil eine Person oder das Netz sie beendet hat.",
    },
    {
      en: "what happened after the recorder stopped rests on readings alone",
      pl: "to, co działo się po zatrzymaniu rejestratora, opiera się na samych odczytach",
      de: "was nach dem Ende des Rekorders geschah, stützt sich allein auf Ablesungen",
    },

    // Cells.
    { en: "a cell may be shorted", pl: "możliwe zwarcie celi", de: "Zellenschluss möglich" },
    { en: "a cell stands above", pl: "jedna cela powyżej innych", de: "eine Zelle liegt über den anderen" },
    { en: "a cell lags", pl: "jedna cela pozostaje w tyle", de: "eine Zelle hängt zurück" },
    {
      en: "a cell lags, at one visit only",
      pl: "jedna cela w tyle, tylko na jednej wizycie",
      de: "eine Zelle hängt zurück, nur bei einem Besuch",
    },
    { en: "a cell lags, and is catching up", pl: "jedna cela w tyle, lecz nadrabia", de: "eine Zelle hängt zurück und holt auf" },
    { en: "no, it caught up", pl: "nie, nadrobiła", de: "nein, sie hat aufgeholt" },
    { en: "at one visit only", pl: "tylko na jednej wizycie", de: "nur bei einem Besuch" },
    { en: "uneven", pl: "nierówne", de: "ungleich" },
    {
      en: "Cell {cell} read {by} kg/l above the others at the last visit: acid was added to it, its level is low, or it was read badly.",
      pl: "Cela {cell} wykazała na ostatniej wizycie {by} kg/l więcej niż pozostałe: dolano do niej kwasu, ma niski poziom albo odczyt był zły.",
      de: "Zelle {cell} zeigte beim letzten Besuch {by} kg/l mehr als die anderen: Säure wurde nachgefüllt, ihr Stand ist niedrig, oder sie wurde falsch abgelesen.",
    },
    {
      en: "Cell {cell} read {by} kg/l below the others at the one visit that read them: it may be weak, just topped up, or read badly.",
      pl: "Cela {cell} wykazała {by} kg/l mniej niż pozostałe na jedynej wizycie z ich odczytem: może być słaba, świeżo uzupełniona wodą albo źle odczytana.",
      de: "Zelle {cell} zeigte {by} kg/l weniger als die anderen bei dem einen Besuch, der sie ablas: Sie kann schwach, eben mit Wasser aufgefüllt oder falsch abgelesen sein.",
    },
    {
      en: "Cell {cell} read {by} kg/l below the others at the last visit, and was level with them before: more likely topped up or read badly than weak.",
      pl: "Cela {cell} wykazała na ostatniej wizycie {by} kg/l mniej niż pozostałe, a przedtem była im równa: raczej uzupełniono wodę lub źle odczytano, niż jest słaba.",
      de: "Zelle {cell} zeigte beim letzten Besuch {by} kg/l weniger als die anderen und war ihnen vorher gleich: eher aufgefüllt oder falsch abgelesen als schwach.",
    },
    {
      en: "Cell {cell} limits this battery: it still read {by} kg/l below the others at the last visit, after {before}; it is catching up.",
      pl: "Cela {cell} ogranicza ten akumulator: na ostatniej wizycie wykazała jeszcze {by} kg/l mniej niż pozostałe, przedtem {before}; nadrabia.",
      de: "Zelle {cell} begrenzt diese Batterie: Beim letzten Besuch zeigte sie noch {by} kg/l weniger als die anderen, davor {before}; sie holt auf.",
    },
    {
      en: "Cell {cell} limits this battery: it read {by} kg/l below the others at the last visit, lagged at {lagging} of {all} visits and did not catch up. The battery itself may be at fault, and makes any charger look weak.",
      pl: "Cela {cell} ogranicza ten akumulator: na ostatniej wizycie wykazała {by} kg/l mniej niż pozostałe, była w tyle na {lagging} z {all} {all|wizyty|wizyt|wizyt} i nie nadrobiła. Wina może leżeć po stronie akumulatora, przy którym każdy prostownik wypada słabo.",
      de: "Zelle {cell} begrenzt diese Batterie: Beim letzten Besuch zeigte sie {by} kg/l weniger als die anderen, hing bei {lagging} von {all} {all|Besuch|Besuchen} zurück und holte nicht auf. Der Fehler kann in der Batterie selbst liegen und lässt jedes Ladegerät schwach aussehen.",
    },
    {
      en: "Cell {cell} began {by} kg/l below the others and caught up: within {spread} at the last visit.",
      pl: "Cela {cell} zaczęła o {by} kg/l poniżej pozostałych i nadrobiła: na ostatniej wizycie różnica najwyżej {spread}.",
      de: "Zelle {cell} begann {by} kg/l unter den anderen und holte auf: beim letzten Besuch höchstens {spread} Unterschied.",
    },
    {
      en: "Cell {cell} read {by} kg/l below the others at visit {visit} and was level again at the last: topped up or read badly, rather than weak.",
      pl: "Cela {cell} wykazała {by} kg/l mniej niż pozostałe na wizycie {visit}, a na ostatniej znów była równa: raczej uzupełniono wodę lub źle odczytano, niż jest słaba.",
      de: "Zelle {cell} zeigte bei Besuch {visit} {by} kg/l weniger als die anderen und war beim letzten wieder gleich: eher aufgefüllt oder falsch abgelesen als schwach.",
    },
    {
      en: "The cells are even: within {spread} kg/l of each other at the last visit.",
      pl: "Cele są równe: na ostatniej wizycie różnią się najwyżej o {spread} kg/l.",
      de: "Die Zellen sind gleich: Beim letzten Besuch lagen sie höchstens {spread} kg/l auseinander.",
    },
    {
      en: "The cells differ by {spread} kg/l at the last visit, cell {cell} being the lowest, {by} below the others: not enough to call one weak.",
      pl: "Na ostatniej wizycie cele różnią się o {spread} kg/l; najniższa jest cela {cell}, o {by} poniżej pozostałych: za mało, by którąś uznać za słabą.",
      de: "Die Zellen unterscheiden sich beim letzten Besuch um {spread} kg/l; am niedrigsten ist Zelle {cell}, {by} unter den anderen: zu wenig, um eine schwach zu nennen.",
    },
    {
      en: "A cell may be shorted: the battery rested at {voltage} V at visit {visit}, about a whole cell too low. Do not go on charging it: the other cells overcharge, gas and heat.",
      pl: "W jednej z cel może być zwarcie: na wizycie {visit} napięcie spoczynkowe wynosiło {voltage} V, mniej więcej o całą celę za mało. Nie ładować dalej: pozostałe cele przeładowują się, gazują i grzeją.",
      de: "Zellenschluss möglich: Die Batterie hatte bei Besuch {visit} eine Ruhespannung von {voltage} V, etwa eine ganze Zelle zu niedrig. Nicht weiter laden: Die anderen Zellen werden überladen, gasen und werden heiß.",
    },
    {
      en: "Cell {cell} may be shorted: the battery rested at {voltage} V at visit {visit}, about a whole cell too low. Do not go on charging it: the other cells overcharge, gas and heat.",
      pl: "W celi {cell} może być zwarcie: na wizycie {visit} napięcie spoczynkowe wynosiło {voltage} V, mniej więcej o całą celę za mało. Nie ładować dalej: pozostałe cele przeładowują się, gazują i grzeją.",
      de: "Zellenschluss in Zelle {cell} möglich: Die Batterie hatte bei Besuch {visit} eine Ruhespannung von {voltage} V, etwa eine ganze Zelle zu niedrig. Nicht weiter laden: Die anderen Zellen werden überladen, gasen und werden heiß.",
    },
    {
      en: "the acid was read as found; cells that gas unevenly differ at the top before they do in charge",
      pl: "elektrolit odczytano bez mieszania; cele gazujące nierówno różnią się u góry wcześniej niż naładowaniem",
      de: "die Säure wurde abgelesen, wie sie war; ungleich gasende Zellen unterscheiden sich oben früher als im Ladezustand",
    },
    {
      en: "the acid was not read, so a battery that took no charge, or a wrong voltmeter, looks alike",
      pl: "gęstości elektrolitu nie odczytano, więc akumulator, który nie przyjął ładunku, albo błędny woltomierz wyglądałyby tak samo",
      de: "die Säure wurde nicht gemessen; eine Batterie, die keine Ladung annahm, oder ein falscher Spannungsmesser sähe ebenso aus",
    },
    {
      en: "visit {visit}: {cells:cell+comma} kg/l at 25 °C",
      pl: "wizyta {visit}: {cells} kg/l w 25 °C",
      de: "Besuch {visit}: {cells} kg/l bei 25 °C",
    },
    {
      en: "visit {visit}: cell {cell} {by} kg/l below the others",
      pl: "wizyta {visit}: cela {cell} o {by} kg/l poniżej pozostałych",
      de: "Besuch {visit}: Zelle {cell} {by} kg/l unter den anderen",
    },
    {
      en: "cell {cell} below the median of the others: {lags:lagAtVisit+comma} kg/l",
      pl: "cela {cell} poniżej mediany pozostałych: {lags} kg/l",
      de: "Zelle {cell} unter dem Median der anderen: {lags} kg/l",
    },
    {
      en: "cell {cell} lies {by} kg/l below the median of the others",
      pl: "cela {cell} leży o {by} kg/l poniżej mediany pozostałych",
      de: "Zelle {cell} liegt {by} kg/l unter dem Median der anderen",
    },
    {
      en: "{cells} full cells rest at {voltage} V at most, and this battery of {all} did not come above that after a charge; one cell stands for about 2 V",
      pl: "napięcie spoczynkowe {cells} pełnych cel to najwyżej {voltage} V, a ten akumulator o {all} celach nie przekroczył go po ładowaniu; jedna cela to około 2 V",
      de: "{cells} volle Zellen ruhen bei höchstens {voltage} V, und diese Batterie mit {all} Zellen kam nach einer Ladung nicht darüber; eine Zelle steht für etwa 2 V",
    },
    {
      en: "the acid read gives {voltage} V, so {missing} V are missing; one cell stands for about 2 V",
      pl: "z odczytanej gęstości wynika {voltage} V, brakuje więc {missing} V; jedna cela to około 2 V",
      de: "aus der abgelesenen Säuredichte folgen {voltage} V, es fehlen also {missing} V; eine Zelle steht für etwa 2 V",
    },

    // Frost and temperature.
    { en: "may have been frozen", pl: "mógł być zamarznięty", de: "kann gefroren gewesen sein" },
    { en: "in hard frost", pl: "przy silnym mrozie", de: "bei starkem Frost" },
    {
      en: "At visit {visit} the {what:temperatureWhat} was at {temperature} °C, and acid of {density} kg/l freezes at about {freezing} °C: the battery may have been frozen. Never charge a frozen battery.",
      pl: "Na wizycie {visit} temperatura {what} wynosiła {temperature} °C, a elektrolit o gęstości {density} kg/l zamarza przy około {freezing} °C: akumulator mógł być zamarznięty. Nigdy nie ładować zamarzniętego akumulatora.",
      de: "Bei Besuch {visit} hatte {what} {temperature} °C, und Säure von {density} kg/l gefriert bei etwa {freezing} °C: Die Batterie kann gefroren gewesen sein. Eine gefrorene Batterie niemals laden.",
    },
    {
      en: "At {density} kg/l this acid freezes at about {freezing} °C. Never charge a frozen battery.",
      pl: "Przy {density} kg/l ten elektrolit zamarza przy około {freezing} °C. Nigdy nie ładować zamarzniętego akumulatora.",
      de: "Bei {density} kg/l gefriert diese Säure bei etwa {freezing} °C. Eine gefrorene Batterie niemals laden.",
    },
    {
      en: "visit {visit}: {what:temperatureWhat} {temperature} °C (±{error} K), freezing point {freezing} °C (±{freezingError} K) by the {density} kg/l of visit {densityVisit}",
      pl: "wizyta {visit}: temperatura {what} {temperature} °C (±{error} K), temperatura zamarzania {freezing} °C (±{freezingError} K) według {density} kg/l z wizyty {densityVisit}",
      de: "Besuch {visit}: {what} {temperature} °C (±{error} K), Gefrierpunkt {freezing} °C (±{freezingError} K) nach den {density} kg/l von Besuch {densityVisit}",
    },
    {
      en: "lowest density read, at visit {visit}",
      pl: "najniższa odczytana gęstość, z wizyty {visit}",
      de: "niedrigste abgelesene Dichte, bei Besuch {visit}",
    },
    {
      en: "the air was read, not the acid, which follows it only over many hours",
      pl: "zmierzono powietrze, nie elektrolit, który podąża za nim dopiero przez wiele godzin",
      de: "gemessen wurde die Luft, nicht die Säure, die ihr erst über viele Stunden folgt",
    },
    { en: "not read", pl: "nie odczytano", de: "nicht abgelesen" },
    { en: "too hot", pl: "za gorąco", de: "zu heiß" },
    { en: "warm", pl: "ciepło", de: "warm" },
    { en: "in the cold", pl: "na zimnie", de: "in der Kälte" },
    { en: "ordinary, by the air", pl: "zwyczajnie, sądząc po powietrzu", de: "gewöhnlich, nach der Luft" },
    { en: "no, ordinary", pl: "nie, zwyczajnie", de: "nein, gewöhnlich" },
    {
      en: "Whether it was too cold or too hot to charge is not known: nobody read a temperature.",
      pl: "Nie wiadomo, czy na ładowanie było za zimno lub za gorąco: nikt nie odczytał temperatury.",
      de: "Ob es zum Laden zu kalt oder zu heiß war, ist nicht bekannt: Niemand las eine Temperatur ab.",
    },
    {
      en: "It grew too hot: {what:theWhat} was at {temperature} °C ({where:where}), and from {stop} °C a charge should be stopped.",
      pl: "Zrobiło się za gorąco: {what} {temperature} °C ({where}), a od {stop} °C ładowanie należy przerwać.",
      de: "Es wurde zu heiß: {what} {temperature} °C ({where}); ab {stop} °C soll eine Ladung abgebrochen werden.",
    },
    {
      en: "It grew warm: {what:theWhat} was at {temperature} °C ({where:where}); from {caution} °C watch the charge, at {stop} °C stop it.",
      pl: "Zrobiło się ciepło: {what} {temperature} °C ({where}); od {caution} °C pilnować ładowania, przy {stop} °C je przerwać.",
      de: "Es wurde warm: {what} {temperature} °C ({where}); ab {caution} °C die Ladung beobachten, bei {stop} °C abbrechen.",
    },
    {
      en: "It grew warm: {what:theWhat} was at {temperature} °C ({where:where}), and a battery on charge is warmer still, by up to {warmer} K; from {caution} °C watch the charge, at {stop} °C stop it.",
      pl: "Zrobiło się ciepło: {what} {temperature} °C ({where}), a ładowany akumulator jest jeszcze cieplejszy, nawet o {warmer} K; od {caution} °C pilnować ładowania, przy {stop} °C je przerwać.",
      de: "Es wurde warm: {what} {temperature} °C ({where}), und eine Batterie beim Laden ist noch wärmer, um bis zu {warmer} K; ab {caution} °C die Ladung beobachten, bei {stop} °C abbrechen.",
    },
    {
      en: "It was charged in the cold: {what:theWhat} was at {temperature} °C ({where:where}). A cold battery takes less, a flat one may be frozen, and a frozen battery must never be charged.",
      pl: "Ładowano na zimnie: {what} {temperature} °C ({where}). Zimny akumulator przyjmuje mniej, rozładowany może być zamarznięty, a zamarzniętego nigdy nie wolno ładować.",
      de: "Geladen wurde in der Kälte: {what} {temperature} °C ({where}). Eine kalte Batterie nimmt weniger auf, eine leere kann gefroren sein, und eine gefrorene Batterie darf niemals geladen werden.",
    },
    {
      en: "It was neither too cold nor too hot: {read:temperatureSpan+comma}.",
      pl: "Nie było ani za zimno, ani za gorąco: {read}.",
      de: "Es war weder zu kalt noch zu heiß: {read}.",
    },
    {
      en: "{what:theWhat}: {temperature:range} °C ({where:where+comma})",
      pl: "{what}: {temperature} °C ({where})",
      de: "{what}: {temperature} °C ({where})",
    },
    {
      en: "visit {visit}, on charge: {what:theWhat} {temperature} °C, the air {air} °C, {compared:comparedWithAir}",
      pl: "wizyta {visit}, w trakcie ładowania: {what} {temperature} °C, powietrze {air} °C, {compared}",
      de: "Besuch {visit}, beim Laden: {what} {temperature} °C, Luft {air} °C, {compared}",
    },
    {
      en: "the thermometer is taken as within ±{error} K",
      pl: "przyjęto dokładność termometru ±{error} K",
      de: "das Thermometer gilt als auf ±{error} K genau",
    },
    {
      en: "its density is not known; the acid of a flat battery freezes from about −8 °C (at 1.10 kg/l), that of a full one below −50 °C",
      pl: "jego gęstość nie jest znana; elektrolit rozładowanego akumulatora zamarza od około −8 °C (przy 1,10 kg/l), naładowanego poniżej −50 °C",
      de: "ihre Dichte ist nicht bekannt; die Säure einer leeren Batterie gefriert ab etwa −8 °C (bei 1,10 kg/l), die einer vollen unter −50 °C",
    },
    {
      en: "the weakest acid read, {density} kg/l at visit {visit}, freezes near {freezing} °C (±3 K)",
      pl: "najsłabszy odczytany elektrolit, {density} kg/l na wizycie {visit}, zamarza przy około {freezing} °C (±3 K)",
      de: "die schwächste abgelesene Säure, {density} kg/l bei Besuch {visit}, gefriert bei etwa {freezing} °C (±3 K)",
    },
    {
      en: "no temperature of acid, battery or air was read, and no recorder's record says what its probe measures",
      pl: "nie odczytano temperatury elektrolitu, akumulatora ani powietrza, a opis żadnego rejestratora nie mówi, co mierzy jego czujnik",
      de: "keine Temperatur von Säure, Batterie oder Luft wurde abgelesen, und kein Rekorder-Eintrag sagt, was sein Fühler misst",
    },
    {
      en: "neither acid nor battery was read while the charger was connected, when they are warmest",
      pl: "ani elektrolitu, ani akumulatora nie zmierzono przy podłączonym prostowniku, gdy są najcieplejsze",
      de: "weder Säure noch Batterie wurde bei angeschlossenem Ladegerät gemessen, wenn sie am wärmsten sind",
    },
    {
      en: "the thermometer's accuracy is not stated",
      pl: "dokładności termometru nie podano",
      de: "die Genauigkeit des Thermometers ist nicht angegeben",
    },

    // Unrecorded charge.
    { en: "none shows", pl: "nie widać", de: "keine zu erkennen" },
    { en: "none can have", pl: "nie mógł wpłynąć", de: "kann keine geflossen sein" },
    {
      en: "{amount:quantity} went into the battery while nobody recorded: the charger worked longer than the logs show.",
      pl: "{amount} wpłynęło do akumulatora, gdy nikt nie zapisywał: prostownik pracował dłużej, niż pokazują zapisy.",
      de: "{amount} gingen in die Batterie, während niemand aufzeichnete: Das Ladegerät arbeitete länger, als die Aufzeichnungen zeigen.",
    },
    {
      en: "The recorded charge accounts for what the battery gained.",
      pl: "Zapisany ładunek wyjaśnia to, co zyskał akumulator.",
      de: "Die aufgezeichnete Ladung erklärt, was die Batterie gewonnen hat.",
    },
    {
      en: "The recorded charge accounts for the density that was gained.",
      pl: "Zapisany ładunek wyjaśnia wzrost gęstości.",
      de: "Die aufgezeichnete Ladung erklärt den Zuwachs der Dichte.",
    },
    {
      en: "Whether charge went in unrecorded cannot be told: up to {ah} Ah would go unnoticed.",
      pl: "Nie da się rozstrzygnąć, czy wpłynął niezapisany ładunek: do {ah} Ah pozostałoby niezauważone.",
      de: "Ob unaufgezeichnet Ladung floss, lässt sich nicht sagen: Bis zu {ah} Ah blieben unbemerkt.",
    },
    {
      en: "Whether charge went in unrecorded cannot be told: how far the recorder may be off is not stated.",
      pl: "Nie da się rozstrzygnąć, czy wpłynął niezapisany ładunek: nie podano, o ile rejestrator może się mylić.",
      de: "Ob unaufgezeichnet Ladung floss, lässt sich nicht sagen: Wie weit der Rekorder abweichen kann, ist nicht angegeben.",
    },
    {
      en: "No charge can have gone in unseen: {because:hidden}.",
      pl: "Żaden ładunek nie mógł wpłynąć niezauważony: {because}.",
      de: "Ungesehen kann keine Ladung geflossen sein: {^because}.",
    },
    {
      en: "For some of the time between visits no log tells the charge: {amount:quantity} may have gone in there.",
      pl: "Dla części czasu między wizytami żaden zapis nie pokazuje ładunku: mogło tam wpłynąć {amount}.",
      de: "Für einen Teil der Zeit zwischen den Besuchen zeigt keine Aufzeichnung die Ladung: {amount} können dort geflossen sein.",
    },
    {
      en: "by density, rest voltage, recorded charge and cranking current together, the probability that charge went in unrecorded is {probability} %, and its amount {from} to {to} Ah (95 %)",
      pl: "według gęstości, napięcia spoczynkowego, zapisanego ładunku i prądu rozruchowego łącznie prawdopodobieństwo, że wpłynął niezapisany ładunek, wynosi {probability} %, a jego wielkość od {from} do {to} Ah (95 %)",
      de: "nach Säuredichte, Ruhespannung, aufgezeichneter Ladung und Kaltstartstrom zusammen beträgt die Wahrscheinlichkeit, dass unaufgezeichnet Ladung floss, {probability} %, und ihre Menge {from} bis {to} Ah (95 %)",
    },
    {
      en: "the density gained needs more charge than was recorded, beyond the error of both",
      pl: "przyrost gęstości wymaga więcej ładunku, niż zapisano, ponad błąd obu",
      de: "der Zuwachs der Dichte braucht mehr Ladung, als aufgezeichnet wurde, über die Fehler beider hinaus",
    },
    {
      en: "about {ah} Ah more than was recorded, with no interval that could be defended",
      pl: "około {ah} Ah więcej, niż zapisano, bez przedziału, którego można by bronić",
      de: "etwa {ah} Ah mehr als aufgezeichnet, ohne ein Intervall, das sich vertreten ließe",
    },
    {
      en: "recorded charge and density agree within their errors",
      pl: "zapisany ładunek i gęstość zgadzają się w granicach błędów",
      de: "aufgezeichnete Ladung und Dichte stimmen innerhalb ihrer Fehler überein",
    },

    // Cross-examination.
    { en: "not examined", pl: "nie zbadano", de: "nicht untersucht" },
    { en: "cannot tell which of several", pl: "nie da się ustalić, która z kilku", de: "nicht feststellbar, welche von mehreren" },
    {
      en: "The battery's readings could not be held against each other: {why:notExamined}.",
      pl: "Odczytów akumulatora nie można było skonfrontować ze sobą: {why}.",
      de: "Die Ablesungen der Batterie ließen sich nicht gegeneinander halten: {^why}.",
    },

    // Water.
    { en: "it lost weight", pl: "stracił na masie", de: "sie hat Gewicht verloren" },
    { en: "no loss shows", pl: "nie widać straty", de: "kein Verlust zu erkennen" },
    { en: "only the charge was seen", pl: "widziano tylko ładowanie", de: "nur die Ladung war zu sehen" },
    { en: "cannot tell yet", pl: "jeszcze nie da się ustalić", de: "noch nicht feststellbar" },
    { en: "little", pl: "mało", de: "wenig" },
    { en: "more than a float", pl: "więcej niż przy konserwacji", de: "mehr als bei Erhaltungsladung" },
    { en: "may be more than a float", pl: "może więcej niż przy konserwacji", de: "vielleicht mehr als bei Erhaltungsladung" },
    { en: "about a float", pl: "mniej więcej jak przy konserwacji", de: "etwa wie bei Erhaltungsladung" },
    { en: "about a float at most", pl: "najwyżej jak przy konserwacji", de: "höchstens etwa wie bei Erhaltungsladung" },
    {
      en: "What leaving it on costs this sealed battery in water is not known: it recombines most of its gas, cannot be topped up, and was not weighed.",
      pl: "Nie wiadomo, ile wody kosztuje ten szczelny akumulator pozostawienie pod prostownikiem: większość gazu rekombinuje, wody nie da się uzupełnić, a akumulatora nie ważono.",
      de: "Wie viel Wasser es diese verschlossene Batterie kostet, angeschlossen zu bleiben, ist nicht bekannt: Sie rekombiniert den größten Teil ihres Gases, lässt sich nicht nachfüllen und wurde nicht gewogen.",
    },
    {
      en: "This sealed battery lost {grams} g in {hours} h connected, by weight; what a sealed battery loses cannot be put back.",
      pl: "Ten szczelny akumulator stracił {grams} g w ciągu {hours} h podłączenia, według wagi; tego, co szczelny akumulator straci, nie da się uzupełnić.",
      de: "Diese verschlossene Batterie verlor {grams} g in {hours} h am Ladegerät, gewogen; was eine verschlossene Batterie verliert, lässt sich nicht ersetzen.",
    },
    {
      en: "This sealed battery lost no weight that the scale could show in {hours} h connected.",
      pl: "Ten szczelny akumulator nie stracił w ciągu {hours} h podłączenia masy, którą waga mogłaby pokazać.",
      de: "Diese verschlossene Batterie verlor in {hours} h am Ladegerät kein Gewicht, das die Waage zeigen könnte.",
    },
    {
      en: "It lost {grams} g of water in {hours} h connected, by weight: {daily} g a day in each cell. {topUp:topUp}",
      pl: "Stracił {grams} g wody w ciągu {hours} h podłączenia, według wagi: {daily} g dziennie w każdej celi. {topUp}",
      de: "Sie verlor {grams} g Wasser in {hours} h am Ladegerät, gewogen: {daily} g am Tag in jeder Zelle. {topUp}",
    },
    {
      en: "Left on, it can cost up to {daily} g of water a day in each cell, {monthly} g a month for the battery. {topUp:topUp}",
      pl: "Pozostawienie podłączonego może kosztować do {daily} g wody dziennie w każdej celi, {monthly} g miesięcznie na cały akumulator. {topUp}",
      de: "Bleibt es angeschlossen, kann das bis zu {daily} g Wasser am Tag in jeder Zelle kosten, {monthly} g im Monat für die Batterie. {topUp}",
    },
    {
      en: "What leaving it on costs in water is not known: nobody saw what current it holds, and nothing was weighed.",
      pl: "Nie wiadomo, ile wody kosztuje pozostawienie pod prostownikiem: nikt nie widział, jaki prąd utrzymuje, i niczego nie ważono.",
      de: "Wie viel Wasser es kostet, es angeschlossen zu lassen, ist nicht bekannt: Niemand sah, welchen Strom es hält, und nichts wurde gewogen.",
    },
    {
      en: "What leaving it on costs in water is not known; the charge itself can have cost {grams} g at most.",
      pl: "Nie wiadomo, ile wody kosztuje pozostawienie pod prostownikiem; samo ładowanie mogło kosztować najwyżej {grams} g.",
      de: "Wie viel Wasser es kostet, es angeschlossen zu lassen, ist nicht bekannt; die Ladung selbst kann höchstens {grams} g gekostet haben.",
    },
    {
      en: "Top up with distilled water only, never with acid, and after the charge; goggles and gloves against acid, fresh air and no sparks against hydrogen. The battery's maker, local codes and licensed practice come first.",
      pl: "Uzupełniać wyłącznie wodą destylowaną, nigdy kwasem, i dopiero po ładowaniu; okulary ochronne i rękawice przeciw kwasowi, świeże powietrze i żadnych iskier z powodu wodoru. Pierwszeństwo mają wskazania producenta akumulatora, przepisy miejscowe i zasady uprawnionych fachowców.",
      de: "Nur mit destilliertem Wasser auffüllen, niemals mit Säure, und erst nach der Ladung; Schutzbrille und Handschuhe gegen Säure, frische Luft und keine Funken wegen des Wasserstoffs. Angaben des Batterieherstellers, örtliche Vorschriften und zugelassene Fachpraxis gehen vor.",
    },
    {
      en: "weighed: {grams} g lost, {hours} h known to be connected in between",
      pl: "z ważenia: ubyło {grams} g; w tym czasie na pewno {hours} h podłączenia",
      de: "gewogen: {grams} g verloren, dazwischen sicher {hours} h angeschlossen",
    },
    {
      en: "weighed: {grams} g lost ({interval:range} g), {hours} h known to be connected in between",
      pl: "z ważenia: ubyło {grams} g ({interval} g); w tym czasie na pewno {hours} h podłączenia",
      de: "gewogen: {grams} g verloren ({interval} g), dazwischen sicher {hours} h angeschlossen",
    },
    {
      en: "{weighed:text}: too short a time to say what leaving it on costs",
      pl: "{weighed}: za krótko, by powiedzieć, ile kosztuje pozostawienie podłączonego",
      de: "{weighed}: zu kurz, um zu sagen, was es kostet, es angeschlossen zu lassen",
    },
    {
      en: "all of it gas, that is a mean of {perAh} mA per Ah; a full vented battery takes about 1 mA per Ah on float",
      pl: "gdyby wszystko było gazem, to średnio {perAh} mA na Ah; naładowany akumulator z ciekłym elektrolitem pobiera przy ładowaniu konserwującym około 1 mA na Ah",
      de: "alles als Gas gerechnet im Mittel {perAh} mA je Ah; eine volle Nassbatterie nimmt bei Erhaltungsladung etwa 1 mA je Ah auf",
    },
    {
      en: "{current} A flowed at the end, {hold:hold}: {perAh} mA per Ah, where a full vented battery takes about 1 mA per Ah on float",
      pl: "na końcu płynęło {current} A, {hold}: {perAh} mA na Ah, podczas gdy naładowany akumulator z ciekłym elektrolitem pobiera przy ładowaniu konserwującym około 1 mA na Ah",
      de: "am Ende flossen {current} A, {hold}: {perAh} mA je Ah; eine volle Nassbatterie nimmt bei Erhaltungsladung etwa 1 mA je Ah auf",
    },
    {
      en: "{current} A (± {error} A) flowed at the end, {hold:hold}: {perAh} mA per Ah, where a full vented battery takes about 1 mA per Ah on float",
      pl: "na końcu płynęło {current} A (± {error} A), {hold}: {perAh} mA na Ah, podczas gdy naładowany akumulator z ciekłym elektrolitem pobiera przy ładowaniu konserwującym około 1 mA na Ah",
      de: "am Ende flossen {current} A (± {error} A), {hold}: {perAh} mA je Ah; eine volle Nassbatterie nimmt bei Erhaltungsladung etwa 1 mA je Ah auf",
    },
    {
      en: "the charge itself, in this test: {grams} g at most for the battery, by the recorded overcharge",
      pl: "samo ładowanie w tym teście: najwyżej {grams} g na akumulator, według zapisanego przeładowania",
      de: "die Ladung selbst, in diesem Test: höchstens {grams} g für die Batterie, nach der aufgezeichneten Überladung",
    },
    {
      en: "an upper bound: what makes up for self-discharge is in that current; some 12 K warmer, or 0.06 V a cell higher, doubles what gasses",
      pl: "górna granica: w tym prądzie mieści się też wyrównanie samorozładowania; o jakieś 12 K cieplej albo o 0,06 V na celę wyżej podwaja gazowanie",
      de: "eine Obergrenze: In diesem Strom steckt auch, was die Selbstentladung ausgleicht; etwa 12 K wärmer oder 0,06 V je Zelle höher verdoppelt, was gast",
    },
    {
      en: "the charge says nothing of the water of a sealed battery",
      pl: "ładunek nic nie mówi o wodzie w szczelnym akumulatorze",
      de: "die Ladung sagt nichts über das Wasser einer verschlossenen Batterie",
    },
    {
      en: "the recordings end before anything was held for long",
      pl: "zapisy kończą się, zanim cokolwiek było dłużej utrzymywane",
      de: "die Aufzeichnungen enden, bevor etwas lange gehalten wurde",
    },
    {
      en: "the charge itself is in it, not only what came after",
      pl: "zawiera też samo ładowanie, nie tylko to, co potem",
      de: "die Ladung selbst ist darin enthalten, nicht nur, was danach kam",
    },
    {
      en: "more than the recorded overcharge explains (at most {grams} g): charge went in unrecorded, or vapour and drops were lost",
      pl: "więcej, niż wyjaśnia zapisane przeładowanie (najwyżej {grams} g): wpłynął niezapisany ładunek albo uszły para i krople",
      de: "mehr, als die aufgezeichnete Überladung erklärt (höchstens {grams} g): Es floss unaufgezeichnet Ladung, oder Dampf und Tropfen gingen verloren",
    },

    // Findings of a charger, drawn from several tests.
    { en: "in test {test:name}", pl: "w teście {test}", de: "in Test {test}" },
  ],
  afterConnections: [
    { en: "one connection", pl: "jednym podłączeniu", de: "einem Ladegang" },
    { en: "{n} connections", pl: "{n} {n|podłączeniu|podłączeniach|podłączeniach}", de: "{n} {n|Ladegang|Ladegängen}" },
  ],
  gassing: [
    { en: "a battery gasses at that voltage", pl: "przy tym napięciu akumulator gazuje", de: "bei dieser Spannung gast eine Batterie" },
    {
      en: "a sealed battery vents gas at that voltage, and what it loses cannot be put back",
      pl: "przy tym napięciu szczelny akumulator wydmuchuje gaz, a tego, co straci, nie da się uzupełnić",
      de: "bei dieser Spannung bläst eine verschlossene Batterie Gas ab, und was sie verliert, lässt sich nicht ersetzen",
    },
  ],
  cell: [{ en: "cell {cell} {density}", pl: "cela {cell}: {density}", de: "Zelle {cell}: {density}" }],
  lagAtVisit: [{ en: "{lag} at visit {visit}", pl: "{lag} na wizycie {visit}", de: "{lag} bei Besuch {visit}" }],
  temperatureWhat: [
    { en: "acid", pl: "elektrolitu", de: "die Säure" },
    { en: "battery", pl: "akumulatora", de: "die Batterie" },
    { en: "air", pl: "powietrza", de: "die Luft" },
  ],
  theWhat: [
    { en: "the acid", pl: "elektrolit", de: "Säure" },
    { en: "the battery", pl: "akumulator", de: "Batterie" },
    { en: "the air", pl: "powietrze", de: "Luft" },
  ],
  where: [
    { en: "visit {visit}", pl: "wizyta {visit}", de: "Besuch {visit}" },
    { en: "{recording:file}", pl: "{recording}", de: "{recording}" },
  ],
  temperatureSpan: [{ en: "{what:theWhat} {temperature:range} °C", pl: "{what} {temperature} °C", de: "{what} {temperature} °C" }],
  comparedWithAir: [
    { en: "as warm as the air", pl: "równie ciepły jak powietrze", de: "so warm wie die Luft" },
    { en: "{by} K colder than the air", pl: "o {by} K chłodniejszy niż powietrze", de: "{by} K kälter als die Luft" },
    { en: "{by} K warmer than the air", pl: "o {by} K cieplejszy niż powietrze", de: "{by} K wärmer als die Luft" },
  ],
  topUp: [
    {
      en: "Look at the levels every week at first, and top up with distilled water before the plates fall dry.",
      pl: "Początkowo co tydzień sprawdzać poziom i uzupełniać wodą destylowaną, zanim płyty się odsłonią.",
      de: "Anfangs jede Woche die Füllstände prüfen und mit destilliertem Wasser auffüllen, bevor die Platten trockenfallen.",
    },
    {
      en: "Look at the levels once a month, and top up with distilled water before the plates fall dry.",
      pl: "Raz w miesiącu sprawdzać poziom i uzupełniać wodą destylowaną, zanim płyty się odsłonią.",
      de: "Einmal im Monat die Füllstände prüfen und mit destilliertem Wasser auffüllen, bevor die Platten trockenfallen.",
    },
    {
      en: "The stated reserve lasts at least {days} days: look at the levels before that, and top up with distilled water.",
      pl: "Podany zapas wystarczy co najmniej na {days} {days|dzień|dni|dni|dnia}: sprawdzić poziom wcześniej i uzupełnić wodą destylowaną.",
      de: "Die angegebene Reserve reicht mindestens {days} {days|Tag|Tage}: vorher die Füllstände prüfen und mit destilliertem Wasser auffüllen.",
    },
    {
      en: "The stated reserve lasts about {days} days: look at the levels before that, and top up with distilled water.",
      pl: "Podany zapas wystarczy mniej więcej na {days} {days|dzień|dni|dni|dnia}: sprawdzić poziom wcześniej i uzupełnić wodą destylowaną.",
      de: "Die angegebene Reserve reicht etwa {days} {days|Tag|Tage}: vorher die Füllstände prüfen und mit destilliertem Wasser auffüllen.",
    },
  ],
} as const satisfies Chapter;

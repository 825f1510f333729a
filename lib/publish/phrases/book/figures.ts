/** Figures: why one is absent, and what limits trust in it. */
import type { Chapter, Phrase } from "../pattern.ts";

const absenceKinds = [
  { en: "not recorded", pl: "nie zapisano", de: "nicht aufgezeichnet" },
  { en: "not measured", pl: "nie zmierzono", de: "nicht gemessen" },
  { en: "not stated", pl: "nie podano", de: "nicht angegeben" },
  { en: "not reached", pl: "nie osiągnięto", de: "nicht erreicht" },
  { en: "not applicable", pl: "nie dotyczy", de: "trifft nicht zu" },
  { en: "cannot tell", pl: "nie da się ustalić", de: "nicht feststellbar" },
] as const satisfies readonly Phrase[];

/** What the test's end says of a target that was not read, once the acid was mixed. */
const afterMixing = [
  {
    en: "once the acid was mixed by hand visit {visit} read {density} kg/l",
    pl: "po ręcznym wymieszaniu elektrolitu wizyta {visit} wykazała {density} kg/l",
    de: "nach dem Durchmischen von Hand zeigte Besuch {visit} {density} kg/l",
  },
  {
    en: "only once the acid was mixed by hand visit {visit} read {density} kg/l, at the target, after {connections:afterConnections} and {hours} h connected",
    pl: "dopiero po ręcznym wymieszaniu elektrolitu wizyta {visit} wykazała {density} kg/l, wartość docelową, po {connections} i {hours} h podłączenia",
    de: "erst nach dem Durchmischen von Hand zeigte Besuch {visit} {density} kg/l, am Ziel, nach {connections} und {hours} h am Ladegerät",
  },
] as const satisfies readonly Phrase[];

export const figures = {
  text: [
    ...absenceKinds,
    // Records and clocks.
    {
      en: "no price is stated in the charger's record",
      pl: "w opisie prostownika nie podano ceny",
      de: "in den Angaben zum Ladegerät steht kein Preis",
    },
    { en: "no price of the charger is stated", pl: "nie podano ceny prostownika", de: "kein Preis des Ladegeräts ist angegeben" },
    { en: "the site states no price of electricity", pl: "witryna nie podaje ceny energii", de: "die Website nennt keinen Strompreis" },
    { en: "there is no recording", pl: "nie ma zapisu", de: "es gibt keine Aufzeichnung" },
    {
      en: "there is no recording of this connection",
      pl: "nie ma zapisu tego podłączenia",
      de: "es gibt keine Aufzeichnung dieses Ladegangs",
    },
    {
      en: "nothing of this connection was recorded",
      pl: "z tego podłączenia nic nie zapisano",
      de: "von diesem Ladegang wurde nichts aufgezeichnet",
    },
    { en: "the recorder logs no current", pl: "rejestrator nie zapisuje prądu", de: "der Rekorder zeichnet keinen Strom auf" },
    { en: "the recorder logs no voltage", pl: "rejestrator nie zapisuje napięcia", de: "der Rekorder zeichnet keine Spannung auf" },
    {
      en: "the recorder does not log both voltage and current",
      pl: "rejestrator nie zapisuje zarazem napięcia i prądu",
      de: "der Rekorder zeichnet nicht Spannung und Strom zugleich auf",
    },
    { en: "the recording has no gaps", pl: "zapis nie ma luk", de: "die Aufzeichnung hat keine Lücken" },
    { en: "the recording shows no stages", pl: "zapis nie pokazuje etapów", de: "die Aufzeichnung zeigt keine Phasen" },
    { en: "one row has no interval", pl: "jeden wiersz nie ma odstępu", de: "eine Zeile hat keinen Abstand" },
    {
      en: "fewer than two rows have values, so nothing can be added up",
      pl: "mniej niż dwa wiersze mają wartości, więc nie ma czego sumować",
      de: "weniger als zwei Zeilen haben Werte, es lässt sich nichts aufsummieren",
    },
    {
      en: "no stretch without a gap is {length:duration} long",
      pl: "żaden odcinek bez luki nie trwa {length}",
      de: "kein Abschnitt ohne Lücke ist {length} lang",
    },
    {
      en: "no stretch without a gap is {seconds} s long",
      pl: "żaden odcinek bez luki nie trwa {seconds} s",
      de: "kein Abschnitt ohne Lücke ist {seconds} s lang",
    },
    {
      en: "no such stretch without a gap is {seconds} s long",
      pl: "żaden taki odcinek bez luki nie trwa {seconds} s",
      de: "kein solcher Abschnitt ohne Lücke ist {seconds} s lang",
    },
    {
      en: "no stage of this kind, ten minutes long or more, is in the recording",
      pl: "w zapisie nie ma takiego etapu, trwającego dziesięć minut lub dłużej",
      de: "die Aufzeichnung enthält keine solche Phase von zehn Minuten oder mehr",
    },
    {
      en: "the recording shows no stretch in which the charger, and not the battery, limited the current",
      pl: "zapis nie pokazuje odcinka, w którym prąd ograniczał prostownik, a nie akumulator",
      de: "die Aufzeichnung zeigt keinen Abschnitt, in dem das Ladegerät und nicht die Batterie den Strom begrenzte",
    },
    { en: "no voltage was held", pl: "żadne napięcie nie było utrzymywane", de: "keine Spannung wurde gehalten" },
    {
      en: "the held voltage has {rows} rows, too few to show a spread",
      pl: "utrzymywane napięcie ma {rows} {rows|wiersz|wiersze|wierszy}, za mało, by pokazać rozrzut",
      de: "die gehaltene Spannung hat {rows} {rows|Zeile|Zeilen}, zu wenig, um eine Streuung zu zeigen",
    },
    {
      en: "nobody noted when the clamps went on",
      pl: "nikt nie zanotował, kiedy założono zaciski",
      de: "niemand notierte, wann die Klemmen angelegt wurden",
    },
    {
      en: "nobody noted when a connection began",
      pl: "nikt nie zanotował, kiedy zaczęło się podłączenie",
      de: "niemand notierte, wann ein Ladegang begann",
    },
    {
      en: "nobody noted when the connection began or ended",
      pl: "nikt nie zanotował, kiedy podłączenie się zaczęło albo skończyło",
      de: "niemand notierte, wann der Ladegang begann oder endete",
    },
    {
      en: "nobody noted when the clamps came off; at least {hours} h are known to be unrecorded",
      pl: "nikt nie zanotował, kiedy zdjęto zaciski; wiadomo, że co najmniej {hours} h pozostało bez zapisu",
      de: "niemand notierte, wann die Klemmen abgenommen wurden; mindestens {hours} h sind sicher nicht aufgezeichnet",
    },
    {
      en: "nobody noted when the clamps came off; at most {percent} % was recorded",
      pl: "nikt nie zanotował, kiedy zdjęto zaciski; zapisano najwyżej {percent} %",
      de: "niemand notierte, wann die Klemmen abgenommen wurden; höchstens {percent} % wurden aufgezeichnet",
    },
    {
      en: "nobody noted when the clamps came off; the charger is known to have been connected for at least {hours} h",
      pl: "nikt nie zanotował, kiedy zdjęto zaciski; wiadomo, że prostownik był podłączony co najmniej {hours} h",
      de: "niemand notierte, wann die Klemmen abgenommen wurden; das Ladegerät war sicher mindestens {hours} h angeschlossen",
    },
    {
      en: "nobody noted when {recording:file} began, so it cannot be set against the visits",
      pl: "nikt nie zanotował, kiedy zaczął się zapis {recording}, więc nie da się go zestawić z wizytami",
      de: "niemand notierte, wann {recording} begann; die Aufzeichnung lässt sich nicht neben die Besuche stellen",
    },
    {
      en: "nobody noted when connection {connection} ended; only the time known to be connected is counted",
      pl: "nikt nie zanotował, kiedy skończyło się podłączenie {connection}; liczy się tylko czas, o którym wiadomo, że było podłączenie",
      de: "niemand notierte, wann Ladegang {connection} endete; gezählt ist nur die sicher angeschlossene Zeit",
    },
    {
      en: "nobody saw a connection end before that visit: the value counts the hours known to be connected, the upper end those possible",
      pl: "nikt nie widział końca podłączenia przed tą wizytą: wartość liczy godziny, o których wiadomo, górny koniec te możliwe",
      de: "niemand sah vor diesem Besuch einen Ladegang enden: Der Wert zählt die sicher angeschlossenen Stunden, das obere Ende die möglichen",
    },

    // Charge.
    {
      en: "{hours} h after the last row: at least nothing, at most {ah} Ah, since {current} A flowed at the last row",
      pl: "{hours} h po ostatnim wierszu: co najmniej nic, najwyżej {ah} Ah, bo w ostatnim wierszu płynęło {current} A",
      de: "{hours} h nach der letzten Zeile: mindestens nichts, höchstens {ah} Ah, da in der letzten Zeile {current} A flossen",
    },
    {
      en: "{hours} h after the last row: at least nothing, at most {ah} Ah, since {current} A flowed before the pause",
      pl: "{hours} h po ostatnim wierszu: co najmniej nic, najwyżej {ah} Ah, bo przed przerwą płynęło {current} A",
      de: "{hours} h nach der letzten Zeile: mindestens nichts, höchstens {ah} Ah, da vor der Pause {current} A flossen",
    },
    {
      en: "{missed:missed}; nobody saw the clamps come off",
      pl: "{missed}; nikt nie widział zdjęcia zacisków",
      de: "{missed}; niemand sah, wie die Klemmen abgenommen wurden",
    },
    {
      en: "the charger was seen to end the charge",
      pl: "widać, że prostownik zakończył ładowanie",
      de: "es ist zu sehen, dass das Ladegerät die Ladung beendete",
    },
    {
      en: "the recording goes on to the end of the connection",
      pl: "zapis trwa do końca podłączenia",
      de: "die Aufzeichnung reicht bis zum Ende des Ladegangs",
    },
    {
      en: "density was read at fewer than two visits",
      pl: "gęstość odczytano na mniej niż dwóch wizytach",
      de: "die Dichte wurde bei weniger als zwei Besuchen abgelesen",
    },
    {
      en: "the densities read are outside the acid's range",
      pl: "odczytane gęstości leżą poza zakresem elektrolitu",
      de: "die abgelesenen Dichten liegen außerhalb des Bereichs der Säure",
    },
    {
      en: "more was recorded ({recorded} Ah) than the density needs ({needed} Ah), so no unrecorded charge shows",
      pl: "zapisano więcej ({recorded} Ah), niż wymaga gęstość ({needed} Ah), więc niezapisanego ładunku nie widać",
      de: "es wurde mehr aufgezeichnet ({recorded} Ah), als die Dichte braucht ({needed} Ah); unaufgezeichnete Ladung ist nicht zu erkennen",
    },
    {
      en: "less was recorded than the density needs, so part of the charge was not seen",
      pl: "zapisano mniej, niż wymaga gęstość, więc części ładunku nie widziano",
      de: "es wurde weniger aufgezeichnet, als die Dichte braucht; ein Teil der Ladung war nicht zu sehen",
    },
    {
      en: "a sealed battery recombines most of the gas, so the charge says nothing of what it lost",
      pl: "szczelny akumulator rekombinuje większość gazu, więc ładunek nic nie mówi o tym, co stracił",
      de: "eine verschlossene Batterie rekombiniert das meiste Gas; die Ladung sagt nichts darüber, was sie verlor",
    },
    { en: "no current was recorded", pl: "nie zapisano prądu", de: "es wurde kein Strom aufgezeichnet" },
    {
      en: "an upper bound: charge not yet mixed into the acid counts as gas here",
      pl: "górna granica: ładunek jeszcze niewymieszany z elektrolitem liczy się tu jako gaz",
      de: "eine Obergrenze: Ladung, die in der Säure noch nicht durchmischt ist, zählt hier als Gas",
    },
    {
      en: "the mass of acid is estimated from the rated capacity",
      pl: "masę elektrolitu oszacowano z pojemności znamionowej",
      de: "die Säuremasse ist aus der Nennkapazität geschätzt",
    },
    {
      en: "the mass of acid is as the battery's record gives it, taken within 5 %",
      pl: "masa elektrolitu jak w opisie akumulatora, przyjęta z dokładnością 5 %",
      de: "die Säuremasse ist die aus den Angaben zur Batterie, auf 5 % genau genommen",
    },
    {
      en: "the hydrometer's accuracy is not stated; ±0.005 kg/l is taken",
      pl: "dokładności areometru nie podano; przyjęto ±0,005 kg/l",
      de: "die Genauigkeit des Säurehebers ist nicht angegeben; ±0,005 kg/l sind angenommen",
    },
    {
      en: "the hydrometer reads the top of the cell; stratified acid hides charge from it",
      pl: "areometr mierzy u góry celi; rozwarstwiony elektrolit ukrywa przed nim ładunek",
      de: "der Säureheber misst oben in der Zelle; geschichtete Säure verbirgt ihm Ladung",
    },
    {
      en: "a model weighs the readings; its assumptions stand with the cross-examination",
      pl: "odczyty waży model; jego założenia podano przy ich wzajemnej konfrontacji",
      de: "ein Modell wägt die Ablesungen; seine Annahmen stehen bei der Gegenüberstellung",
    },
    { en: "no visit was made", pl: "nie było wizyty", de: "es gab keinen Besuch" },
    {
      en: "{recording:file} has a gap of {minutes} min in all, which add nothing",
      pl: "{recording} ma lukę, łącznie {minutes} min, która nic nie wnosi",
      de: "{recording} hat eine Lücke von insgesamt {minutes} min, die nichts beiträgt",
    },
    {
      en: "{recording:file} has {gaps} gaps of {minutes} min in all, which add nothing",
      pl: "{recording} ma {gaps} {gaps|lukę|luki|luk}, łącznie {minutes} min, które nic nie wnoszą",
      de: "{recording} hat {gaps} {gaps|Lücke|Lücken} von insgesamt {minutes} min, die nichts beitragen",
    },
    {
      en: "{first:file} and {second:file} ran side by side for {minutes} min, which are counted once",
      pl: "{first} i {second} biegły równolegle przez {minutes} min, które liczą się raz",
      de: "{first} und {second} liefen {minutes} min nebeneinander, die einmal gezählt sind",
    },
    {
      en: "{recording:file} adds nothing: {why:addsNothing}",
      pl: "{recording} nic nie wnosi: {why}",
      de: "{recording} trägt nichts bei: {^why}",
    },
    {
      en: "{recorder:name}: no accuracy is stated for {quantity:quantityName}, so no interval is given",
      pl: "{recorder}: nie podano dokładności dla {quantity}, więc nie podaje się przedziału",
      de: "{recorder}: für {quantity} ist keine Genauigkeit angegeben, daher steht kein Intervall da",
    },

    // Rows and their window.
    {
      en: "rows are {seconds} s apart or more, so the mean is over that long and a shorter peak is not seen",
      pl: "wiersze dzieli {seconds} s lub więcej, więc średnia obejmuje taki czas, a krótszego szczytu nie widać",
      de: "die Zeilen liegen {seconds} s oder mehr auseinander; das Mittel gilt über diese Zeit, eine kürzere Spitze ist nicht zu sehen",
    },
    {
      en: "at line {line} the clock was set back by {seconds} s",
      pl: "w wierszu {line} zegar cofnięto o {seconds} s",
      de: "in Zeile {line} wurde die Uhr um {seconds} s zurückgestellt",
    },
    {
      en: "no more than two steps of the recorder ({step} V): its own rounding",
      pl: "najwyżej dwie działki rejestratora ({step} V): jego własne zaokrąglenie",
      de: "höchstens zwei Schritte des Rekorders ({step} V): seine eigene Rundung",
    },
    {
      en: "the battery's temperature was not read",
      pl: "temperatury akumulatora nie odczytano",
      de: "die Temperatur der Batterie wurde nicht abgelesen",
    },
    {
      en: "the battery's temperature was not read, so 25 °C is taken",
      pl: "temperatury akumulatora nie odczytano, więc przyjęto 25 °C",
      de: "die Temperatur der Batterie wurde nicht abgelesen, angenommen sind 25 °C",
    },
    {
      en: "the battery's temperature was not read, so it is taken as 25 °C within 10 K",
      pl: "temperatury akumulatora nie odczytano, więc przyjęto 25 °C z dokładnością do 10 K",
      de: "die Temperatur der Batterie wurde nicht abgelesen, angenommen sind 25 °C auf 10 K genau",
    },
    {
      en: "with the battery at {temperature:temperature}",
      pl: "z akumulatorem w temperaturze {temperature}",
      de: "mit der Batterie bei {temperature}",
    },
    {
      en: "above {voltage} V, with the battery at {temperature:temperature}",
      pl: "powyżej {voltage} V, z akumulatorem w temperaturze {temperature}",
      de: "über {voltage} V, mit der Batterie bei {temperature}",
    },

    // Target.
    {
      en: "the battery is sealed, so its density cannot be read",
      pl: "akumulator jest szczelny, więc gęstości nie da się odczytać",
      de: "die Batterie ist verschlossen, ihre Säuredichte lässt sich nicht ablesen",
    },
    { en: "not reachable as it goes: {why:text}", pl: "w ten sposób nieosiągalne: {why}", de: "so nicht erreichbar: {^why}" },
    {
      en: "not reached in {connections} connections; hours to target are projected",
      pl: "nie osiągnięto po {connections} {connections|podłączeniu|podłączeniach|podłączeniach}; godziny do celu są prognozą",
      de: "nicht erreicht in {connections} {connections|Ladegang|Ladegängen}; die Stunden bis zum Ziel sind hochgerechnet",
    },
    {
      en: "not reached in {connections} connections; hours to target are projected; {after:afterMixing}",
      pl: "nie osiągnięto po {connections} {connections|podłączeniu|podłączeniach|podłączeniach}; godziny do celu są prognozą; {after}",
      de: "nicht erreicht in {connections} {connections|Ladegang|Ladegängen}; die Stunden bis zum Ziel sind hochgerechnet; {after}",
    },
    {
      en: "not reached in {connections} connections, and {why:text}",
      pl: "nie osiągnięto po {connections} {connections|podłączeniu|podłączeniach|podłączeniach}, a {why}",
      de: "nicht erreicht in {connections} {connections|Ladegang|Ladegängen}, und {why}",
    },
    {
      en: "{why:outlook}; {after:afterMixing}",
      pl: "{why}; {after}",
      de: "{why}; {after}",
    },
    {
      en: "the target was read at visit {visit}, but {why:text}",
      pl: "wartość docelową odczytano na wizycie {visit}, lecz {why}",
      de: "das Ziel wurde bei Besuch {visit} abgelesen, aber {why}",
    },
    { en: "projected, not seen: {why:weighed}", pl: "prognoza, nie obserwacja: {why}", de: "hochgerechnet, nicht gesehen: {why}" },
    {
      en: "projected, not seen: {why:weighed}; {after:afterMixing}",
      pl: "prognoza, nie obserwacja: {why}; {after}",
      de: "hochgerechnet, nicht gesehen: {why}; {after}",
    },
    {
      en: "projected, not seen: not reached in {connections} connections; further ones are taken to last as long as those seen",
      pl: "prognoza, nie obserwacja: nie osiągnięto po {connections} {connections|podłączeniu|podłączeniach|podłączeniach}; dalsze przyjęto tak długie jak obserwowane",
      de: "hochgerechnet, nicht gesehen: nicht erreicht in {connections} {connections|Ladegang|Ladegängen}; weitere sind so lang angenommen wie die gesehenen",
    },
    { en: "{why:text} (test {test:name})", pl: "{why} (test {test})", de: "{why} (Test {test})" },

    // Cost.
    {
      en: "a result is a battery at its target density, which cannot be read on a sealed one",
      pl: "wynikiem jest akumulator o gęstości docelowej, której w szczelnym nie da się odczytać",
      de: "ein Ergebnis ist eine Batterie mit Zieldichte, die sich an einer verschlossenen nicht ablesen lässt",
    },
    {
      en: "whether the target was reached is not known: {why:text}",
      pl: "nie wiadomo, czy cel osiągnięto: {why}",
      de: "ob das Ziel erreicht wurde, ist nicht bekannt: {^why}",
    },
    {
      en: "the test brought no battery to its target, so there is no result to pay for",
      pl: "test nie doprowadził akumulatora do celu, więc nie ma wyniku, za który można by zapłacić",
      de: "der Test brachte keine Batterie an ihr Ziel; es gibt kein Ergebnis, das zu bezahlen wäre",
    },
    {
      en: "{input:costInput} is in {currency:name}, and no rate to {other:name} is stated",
      pl: "{input}: podano w {currency}, a kursu do {other} nie podano",
      de: "{input}: in {currency} angegeben, ein Kurs in {other} jedoch nicht",
    },
    {
      en: "{input:costInput} must be more than nothing",
      pl: "{input} musi być większe od zera",
      de: "{input} muss größer als nichts sein",
    },
    { en: "no cost could be made", pl: "kosztu nie dało się obliczyć", de: "es ließen sich keine Kosten berechnen" },
    { en: "the charge put back is not known", pl: "oddany ładunek nie jest znany", de: "die zurückgeladene Ladung ist nicht bekannt" },
    { en: "no density was gained", pl: "gęstość nie wzrosła", de: "die Dichte nahm nicht zu" },
    {
      en: "no energy meter was read: energy at the battery over a stated efficiency",
      pl: "nie odczytano licznika energii: energia przy akumulatorze podzielona przez podaną sprawność",
      de: "kein Energiezähler wurde abgelesen: Energie an der Batterie, geteilt durch einen angegebenen Wirkungsgrad",
    },
    {
      en: "no energy meter was read and no energy was recorded",
      pl: "nie odczytano licznika energii i nie zapisano energii",
      de: "kein Energiezähler wurde abgelesen und keine Energie aufgezeichnet",
    },
    {
      en: "hours that were not recorded are left out",
      pl: "godziny bez zapisu pominięto",
      de: "nicht aufgezeichnete Stunden sind weggelassen",
    },
    {
      en: "spread over {uses} uses by the site's rule, within a factor of {factor}",
      pl: "rozłożono na {uses} {uses|użycie|użycia|użyć} według reguły witryny, z dokładnością do współczynnika {factor}",
      de: "auf {uses} {uses|Nutzung|Nutzungen} verteilt nach der Regel der Website, auf den Faktor {factor} genau",
    },
    {
      en: "spread over {uses} uses, as the charger's record states",
      pl: "rozłożono na {uses} {uses|użycie|użycia|użyć}, jak podaje opis prostownika",
      de: "auf {uses} {uses|Nutzung|Nutzungen} verteilt, wie es die Angaben zum Ladegerät sagen",
    },
    { en: "the owner's time is left out", pl: "czas właściciela pominięto", de: "die Zeit des Besitzers ist nicht eingerechnet" },
    {
      en: "the owner's time counts {minutes} min a connection",
      pl: "czas właściciela liczy się po {minutes} min na podłączenie",
      de: "die Zeit des Besitzers zählt {minutes} min je Ladegang",
    },
    {
      en: "{input:costInput} moves it most: alone, from {from} to {to} {currency:name} a result",
      pl: "najmocniej wpływa: {input}; sama ta wielkość daje od {from} do {to} {currency} za wynik",
      de: "am stärksten bewegt es: {input}; allein {from} bis {to} {currency} je Ergebnis",
    },

    // Cranking.
    { en: "no cranking current was read", pl: "nie odczytano prądu rozruchowego", de: "es wurde kein Kaltstartstrom abgelesen" },
    {
      en: "the battery's rating is not stated",
      pl: "wartości znamionowej akumulatora nie podano",
      de: "der Nennwert der Batterie ist nicht angegeben",
    },
    {
      en: "{read} A were read by {readBy:standard}, the rating of {rated} A is by {ratedBy:standard}; without both standards they do not compare",
      pl: "odczytano {read} A według {readBy}, a wartość znamionowa {rated} A jest według {ratedBy}; bez obu norm nie da się ich porównać",
      de: "{read} A wurden nach {readBy} abgelesen, der Nennwert von {rated} A gilt nach {ratedBy}; ohne beide Normen sind sie nicht vergleichbar",
    },
    {
      en: "the tester reads {read:name}, the rating is {rated:name}; they do not convert",
      pl: "tester mierzy według {read}, wartość znamionowa jest według {rated}; nie przelicza się ich",
      de: "der Tester misst nach {read}, der Nennwert gilt nach {rated}; sie lassen sich nicht umrechnen",
    },
    {
      en: "the tester reads {read:name}, the rating is {rated:name}; they do not convert. For orientation only: {current} A by {from:name} is about {about} A by {to:name}, ±10 %, by rules of the trade that contradict each other elsewhere",
      pl: "tester mierzy według {read}, wartość znamionowa jest według {rated}; nie przelicza się ich. Tylko orientacyjnie: {current} A według {from} to około {about} A według {to}, ±10 %, według reguł branży, które gdzie indziej sobie przeczą",
      de: "der Tester misst nach {read}, der Nennwert gilt nach {rated}; sie lassen sich nicht umrechnen. Nur zur Orientierung: {current} A nach {from} sind etwa {about} A nach {to}, ±10 %, nach Faustregeln, die sich anderswo widersprechen",
    },
    {
      en: "the tester's accuracy is not stated, so no interval is given",
      pl: "dokładności testera nie podano, więc nie podaje się przedziału",
      de: "die Genauigkeit des Testers ist nicht angegeben, daher steht kein Intervall da",
    },
    {
      en: "estimated from conductance, not under load; not to be compared with figures of a load tester",
      pl: "oszacowano z konduktancji, nie pod obciążeniem; nie porównywać z wynikami testera obciążeniowego",
      de: "aus dem Leitwert geschätzt, nicht unter Last; nicht mit Werten eines Lasttesters zu vergleichen",
    },
    {
      en: "whether the tester loads the battery or estimates from conductance is not stated",
      pl: "nie podano, czy tester obciąża akumulator, czy szacuje z konduktancji",
      de: "ob der Tester die Batterie belastet oder aus dem Leitwert schätzt, ist nicht angegeben",
    },
    {
      en: "the battery's temperature was not read at visit {visit}; cold lowers the figure",
      pl: "na wizycie {visit} nie odczytano temperatury akumulatora; zimno obniża wynik",
      de: "bei Besuch {visit} wurde die Temperatur der Batterie nicht abgelesen; Kälte senkt den Wert",
    },
    {
      en: "read with {what:theWhat} at {temperature} °C; cold lowers the figure",
      pl: "przy odczycie: {what} {temperature} °C; zimno obniża wynik",
      de: "bei der Ablesung: {what} {temperature} °C; Kälte senkt den Wert",
    },

    // Voltage held, water and air.
    {
      en: "no recording reaches a float or a day at the limit, and no voltmeter was read with the charger connected for a day",
      pl: "żaden zapis nie sięga ładowania konserwującego ani doby przy napięciu granicznym, a woltomierza nie odczytano po dobie z podłączonym prostownikiem",
      de: "keine Aufzeichnung reicht bis zur Erhaltungsladung oder über einen Tag an der Ladeschlussspannung, und kein Spannungsmesser wurde nach einem Tag mit angeschlossenem Ladegerät abgelesen",
    },
    {
      en: "less than half an hour of it was recorded",
      pl: "zapisano z tego mniej niż pół godziny",
      de: "davon wurde weniger als eine halbe Stunde aufgezeichnet",
    },
    {
      en: "one reading at a visit, not a recording",
      pl: "jeden odczyt na wizycie, nie zapis",
      de: "eine Ablesung bei einem Besuch, keine Aufzeichnung",
    },
    {
      en: "{time:duration} of that hold were recorded; the current may fall further",
      pl: "zapisano {time} tego podtrzymywania; prąd może jeszcze spaść",
      de: "{time} dieses Haltens wurden aufgezeichnet; der Strom kann weiter fallen",
    },
    {
      en: "the clamp meter's accuracy is not stated, so no interval is given",
      pl: "dokładności cęgów nie podano, więc nie podaje się przedziału",
      de: "die Genauigkeit der Stromzange ist nicht angegeben, daher steht kein Intervall da",
    },
    {
      en: "a sealed battery cannot be topped up, so it has no reserve to use",
      pl: "szczelnego akumulatora nie da się uzupełnić, więc nie ma zapasu do zużycia",
      de: "eine verschlossene Batterie lässt sich nicht nachfüllen; sie hat keine Reserve",
    },
    {
      en: "how much water a cell may lose before its plates fall dry is not stated in the battery's record",
      pl: "opis akumulatora nie podaje, ile wody może stracić cela, zanim odsłonią się płyty",
      de: "wie viel Wasser eine Zelle verlieren darf, bevor die Platten trockenfallen, steht nicht in den Angaben zur Batterie",
    },
    {
      en: "no current was read at a voltage held for long",
      pl: "przy długo utrzymywanym napięciu nie odczytano prądu",
      de: "bei lange gehaltener Spannung wurde kein Strom abgelesen",
    },
    {
      en: "no current could be told from none {hold:hold}",
      pl: "prądu nie dało się odróżnić od zera {hold}",
      de: "kein Strom ließ sich von null unterscheiden, {hold}",
    },
    {
      en: "a lower bound: all of {current} A counts as gassing, {hold:hold}",
      pl: "dolna granica: całe {current} A liczy się jako gazowanie, {hold}",
      de: "eine Untergrenze: Die ganzen {current} A zählen als Gasung, {hold}",
    },
    {
      en: "the meter's error is as large as the current; by its upper end the reserve lasts {days} d at least",
      pl: "błąd miernika jest tak duży jak prąd; według jego górnego końca zapas wystarczy co najmniej na {days} d",
      de: "der Fehler des Messgeräts ist so groß wie der Strom; nach seinem oberen Ende reicht die Reserve mindestens {days} d",
    },
    {
      en: "the battery was not weighed at two visits with the clamps off",
      pl: "akumulatora nie ważono na dwóch wizytach ze zdjętymi zaciskami",
      de: "die Batterie wurde nicht bei zwei Besuchen mit abgenommenen Klemmen gewogen",
    },
    {
      en: "the battery grew heavier by {grams} g between visits {from} and {to}: water was added that nobody noted, or a weighing is wrong",
      pl: "między wizytami {from} i {to} akumulator przybrał {grams} g: dolano wody, której nikt nie zanotował, albo ważenie jest błędne",
      de: "zwischen den Besuchen {from} und {to} wurde die Batterie um {grams} g schwerer: Wasser wurde ohne Notiz nachgefüllt, oder eine Wägung ist falsch",
    },
    {
      en: "the scale's accuracy is not stated, so no interval is given",
      pl: "dokładności wagi nie podano, więc nie podaje się przedziału",
      de: "die Genauigkeit der Waage ist nicht angegeben, daher steht kein Intervall da",
    },
    {
      en: "nobody noted that water was added between the weighings",
      pl: "nikt nie zanotował, by między ważeniami dolano wody",
      de: "niemand notierte, dass zwischen den Wägungen Wasser nachgefüllt wurde",
    },
    {
      en: "{grams} g that were topped up are added as noted, without an error of their own",
      pl: "dolane {grams} g doliczono, jak zanotowano, bez własnego błędu",
      de: "nachgefüllte {grams} g sind wie notiert hinzugezählt, ohne eigenen Fehler",
    },
    {
      en: "vapour, acid mist and drops wiped off count as water too",
      pl: "para, mgła kwasu i starte krople też liczą się jako woda",
      de: "Dampf, Säurenebel und abgewischte Tropfen zählen auch als Wasser",
    },
    {
      en: "the battery was weighed, and water-lost-weighed counts before this",
      pl: "akumulator zważono, a ubytek wody według wagi ma pierwszeństwo",
      de: "die Batterie wurde gewogen, und der gewogene Wasserverlust geht vor",
    },
    {
      en: "no voltage that the charger holds was recorded or read; until it is, count with the higher design current, {air} m³/h",
      pl: "nie zapisano ani nie odczytano napięcia, które utrzymuje prostownik; dopóki go nie ma, liczyć z wyższym prądem obliczeniowym, {air} m³/h",
      de: "keine vom Ladegerät gehaltene Spannung wurde aufgezeichnet oder abgelesen; bis dahin mit dem höheren Bemessungsstrom rechnen, {air} m³/h",
    },
    {
      en: "local codes, the battery's maker and licensed practice decide; hydrogen explodes from 4 % in air",
      pl: "decydują przepisy miejscowe, producent akumulatora i uprawnieni fachowcy; wodór wybucha od 4 % w powietrzu",
      de: "maßgebend sind örtliche Vorschriften, der Batteriehersteller und zugelassene Fachpraxis; Wasserstoff explodiert ab 4 % in der Luft",
    },
    {
      en: "{voltage:ventedVoltage}, {perCell} V a cell, calls for the float design current of {design} mA per Ah, up to 40 °C",
      pl: "{voltage}, {perCell} V na celę, wymaga prądu obliczeniowego jak dla ładowania konserwującego, {design} mA na Ah, do 40 °C",
      de: "{voltage}, {perCell} V je Zelle, verlangt den Bemessungsstrom für Erhaltungsladung von {design} mA je Ah, bis 40 °C",
    },
    {
      en: "{voltage:ventedVoltage}, {perCell} V a cell, calls for the higher design current of {design} mA per Ah, up to 40 °C",
      pl: "{voltage}, {perCell} V na celę, wymaga wyższego prądu obliczeniowego, {design} mA na Ah, do 40 °C",
      de: "{voltage}, {perCell} V je Zelle, verlangt den höheren Bemessungsstrom von {design} mA je Ah, bis 40 °C",
    },
    {
      en: "by nature alone it takes two openings of {opening} cm² each, one low and one high (IEC 62485-3)",
      pl: "przy samej wentylacji naturalnej potrzeba dwóch otworów po {opening} cm², jednego nisko i jednego wysoko (IEC 62485-3)",
      de: "bei rein natürlicher Lüftung braucht es zwei Öffnungen von je {opening} cm², eine unten und eine oben (IEC 62485-3)",
    },
    {
      en: "above 2.40 V a cell the standard's design current is not meant: more gas can come, and more air may be needed",
      pl: "powyżej 2,40 V na celę prąd obliczeniowy normy nie jest przewidziany: może powstać więcej gazu i być potrzebne więcej powietrza",
      de: "über 2,40 V je Zelle ist der Bemessungsstrom der Norm nicht gedacht: Es kann mehr Gas kommen und mehr Luft nötig sein",
    },
    {
      en: "above 2.40 V a cell the standard's design current is not meant: more gas can come, and more air may be needed; were all of the {current} A that flowed there gas, {air} m³/h with the same margin",
      pl: "powyżej 2,40 V na celę prąd obliczeniowy normy nie jest przewidziany: może powstać więcej gazu i być potrzebne więcej powietrza; gdyby całe płynące tam {current} A było gazem, {air} m³/h z tym samym zapasem",
      de: "über 2,40 V je Zelle ist der Bemessungsstrom der Norm nicht gedacht: Es kann mehr Gas kommen und mehr Luft nötig sein; wären die dort geflossenen {current} A ganz Gas, {air} m³/h mit demselben Zuschlag",
    },
    {
      en: "the standard means the capacity over 10 h; over {hours} h, as rated here, it is the larger one",
      pl: "norma ma na myśli pojemność 10-godzinną; {hours}-godzinna, jak tu podana, jest większa",
      de: "die Norm meint die 10-stündige Kapazität; die {hours}-stündige, wie hier angegeben, ist die größere",
    },

    // Density and freezing at a visit.
    {
      en: "the acid's temperature was not read, so it is taken as 25 °C within 10 K",
      pl: "temperatury elektrolitu nie odczytano, więc przyjęto 25 °C z dokładnością do 10 K",
      de: "die Temperatur der Säure wurde nicht abgelesen, angenommen sind 25 °C auf 10 K genau",
    },
    {
      en: "the battery's temperature stands in for the acid's",
      pl: "temperatura akumulatora zastępuje temperaturę elektrolitu",
      de: "die Temperatur der Batterie steht für die der Säure",
    },
    {
      en: "what the hydrometer's scale means is not stated, which costs ±0.004",
      pl: "nie podano, co oznacza skala areometru, co kosztuje ±0,004",
      de: "was die Skala des Säurehebers bedeutet, ist nicht angegeben; das kostet ±0,004",
    },
    {
      en: "the hydrometer's accuracy is not stated, so no interval is given",
      pl: "dokładności areometru nie podano, więc nie podaje się przedziału",
      de: "die Genauigkeit des Säurehebers ist nicht angegeben, daher steht kein Intervall da",
    },
    {
      en: "the hydrometer's step is not stated, so no interval is given",
      pl: "działki areometru nie podano, więc nie podaje się przedziału",
      de: "der Schritt des Säurehebers ist nicht angegeben, daher steht kein Intervall da",
    },
    {
      en: "some cells were read outside what the acid's tables cover (0 to 50 °C, up to 60 % acid) and are left out",
      pl: "niektóre cele odczytano poza zakresem tablic kwasu (od 0 do 50 °C, do 60 % kwasu); pominięto je",
      de: "manche Zellen wurden außerhalb der Säuretabellen (0 bis 50 °C, bis 60 % Säure) abgelesen und sind weggelassen",
    },
    { en: "fewer than two cells were read", pl: "odczytano mniej niż dwie cele", de: "weniger als zwei Zellen wurden abgelesen" },
    { en: "not read at this visit", pl: "na tej wizycie nie odczytano", de: "bei diesem Besuch nicht abgelesen" },
    {
      en: "no rest voltage was read at this visit",
      pl: "na tej wizycie nie odczytano żadnego napięcia spoczynkowego",
      de: "bei diesem Besuch wurde gar keine Ruhespannung abgelesen",
    },
    {
      en: "the battery is sealed: its acid is scarcer and stronger than a vented battery's, and its rest voltage stands 0.10 to 0.15 V higher (12 V), so the curve does not hold",
      pl: "akumulator jest szczelny: elektrolitu ma mniej, a jest on mocniejszy niż w otwartym, i napięcie spoczynkowe jest o 0,10 do 0,15 V wyższe (12 V), więc krzywa nie obowiązuje",
      de: "die Batterie ist verschlossen: Ihre Säure ist knapper und stärker als die einer Nassbatterie, und ihre Ruhespannung liegt 0,10 bis 0,15 V höher (12 V); die Kurve gilt nicht",
    },
    {
      en: "not rested as far as is known: nobody noted for how long the battery had stood",
      pl: "o ile wiadomo, bez spoczynku: nikt nie zanotował, jak długo akumulator stał",
      de: "soweit bekannt nicht ausgeruht: Niemand notierte, wie lange die Batterie gestanden hatte",
    },
    {
      en: "not rested: {hours} h of at least {least} h, and surface charge reads as strong acid for hours",
      pl: "za krótki spoczynek: {hours} h z co najmniej {least} h, a ładunek powierzchniowy godzinami udaje mocny elektrolit",
      de: "nicht ausgeruht: {hours} h von mindestens {least} h, und Oberflächenladung liest sich stundenlang wie starke Säure",
    },
    {
      en: "{voltage} V at rest, at this temperature, is that of no battery with {cells} whole cells",
      pl: "{voltage} V w spoczynku, w tej temperaturze, nie odpowiada żadnemu akumulatorowi z {cells} sprawnymi celami",
      de: "{voltage} V in Ruhe bei dieser Temperatur hat keine Batterie mit {cells} heilen Zellen",
    },
    {
      en: "the voltmeter's accuracy is not stated, so no interval is given",
      pl: "dokładności woltomierza nie podano, więc nie podaje się przedziału",
      de: "die Genauigkeit des Spannungsmessers ist nicht angegeben, daher steht kein Intervall da",
    },
    {
      en: "after less than {hours} h of rest up to {surface} V of surface charge may be left, which reads as stronger acid; the lower end of the interval allows for it",
      pl: "po spoczynku krótszym niż {hours} h może pozostać do {surface} V ładunku powierzchniowego, co udaje mocniejszy elektrolit; uwzględnia to dolny koniec przedziału",
      de: "nach weniger als {hours} h Ruhe können bis zu {surface} V Oberflächenladung übrig sein, die sich wie stärkere Säure lesen; das untere Ende des Intervalls berücksichtigt es",
    },
    {
      en: 'the trade\'s rule "volts a cell less 0.84" would say {byRule} kg/l, {difference} more',
      pl: "reguła branżowa „wolty na celę minus 0,84” dałaby {byRule} kg/l, o {difference} więcej",
      de: "die Faustregel „Volt je Zelle minus 0,84“ ergäbe {byRule} kg/l, {difference} mehr",
    },
    {
      en: 'the trade\'s rule "volts a cell less 0.84" would say {byRule} kg/l, {difference} less',
      pl: "reguła branżowa „wolty na celę minus 0,84” dałaby {byRule} kg/l, o {difference} mniej",
      de: "die Faustregel „Volt je Zelle minus 0,84“ ergäbe {byRule} kg/l, {difference} weniger",
    },
    {
      en: "the battery is sealed, so its density cannot be read, nor its freezing point be told from it",
      pl: "akumulator jest szczelny, więc nie da się odczytać gęstości ani z niej określić temperatury zamarzania",
      de: "die Batterie ist verschlossen; ihre Säuredichte lässt sich nicht ablesen und ihr Gefrierpunkt nicht daraus bestimmen",
    },
    {
      en: "no density that can be used was read at this visit",
      pl: "na tej wizycie nie odczytano gęstości, której można by użyć",
      de: "bei diesem Besuch wurde keine brauchbare Dichte abgelesen",
    },
    {
      en: "acid above {density} kg/l is stronger than the tables reach; it stays liquid to −50 °C or below (from memory)",
      pl: "elektrolit powyżej {density} kg/l jest mocniejszy, niż sięgają tablice; pozostaje ciekły do −50 °C lub niżej (z pamięci)",
      de: "Säure über {density} kg/l ist stärker, als die Tabellen reichen; sie bleibt bis −50 °C oder darunter flüssig (aus dem Gedächtnis)",
    },
    {
      en: "the density read is that of no battery acid",
      pl: "odczytana gęstość nie odpowiada żadnemu elektrolitowi akumulatora",
      de: "die abgelesene Dichte ist die keiner Batteriesäure",
    },
    {
      en: "cell {cell}, the weakest at {density} kg/l, freezes first, near {freezing} °C",
      pl: "cela {cell}, najsłabsza przy {density} kg/l, zamarza pierwsza, przy około {freezing} °C",
      de: "Zelle {cell}, mit {density} kg/l die schwächste, gefriert zuerst, bei etwa {freezing} °C",
    },

    // Repeats and forecasts.
    {
      en: "known by one log of its charges",
      pl: "znany z jednego zapisu swoich ładowań",
      de: "bekannt aus einer Aufzeichnung ihrer Ladungen",
    },
    {
      en: "known by {n} logs of its charges",
      pl: "znany z {n} {n|zapisu|zapisów|zapisów} swoich ładowań",
      de: "bekannt aus {n} {n|Aufzeichnung|Aufzeichnungen} ihrer Ladungen",
    },
    {
      en: "the reference battery is not brought to 95 % in half of the draws or more, so there is no result to pay for",
      pl: "w co najmniej połowie losowań akumulator odniesienia nie dochodzi do 95 %, więc nie ma wyniku, za który można by zapłacić",
      de: "in der Hälfte der Ziehungen oder mehr kommt die Referenzbatterie nicht auf 95 %; es gibt kein Ergebnis, das zu bezahlen wäre",
    },
    {
      en: "no test of this mode recorded it twice",
      pl: "żaden test tego trybu nie zapisał tego dwa razy",
      de: "kein Test dieser Betriebsart zeichnete es zweimal auf",
    },
    {
      en: "only one test of this mode recorded it",
      pl: "zapisał to tylko jeden test tego trybu",
      de: "nur ein Test dieser Betriebsart zeichnete es auf",
    },
    {
      en: "from {values} values, so hardly known itself",
      pl: "z {values} {values|wartości|wartości|wartości}, więc samo ledwie znane",
      de: "aus {values} {values|Wert|Werten}, daher selbst kaum bekannt",
    },
    {
      en: "not within {hours} h in half of the draws or more",
      pl: "w co najmniej połowie losowań nie w ciągu {hours} h",
      de: "in der Hälfte der Ziehungen oder mehr nicht innerhalb von {hours} h",
    },
    {
      en: "in {percent} % of the draws not within {hours} h",
      pl: "w {percent} % losowań nie w ciągu {hours} h",
      de: "in {percent} % der Ziehungen nicht innerhalb von {hours} h",
    },
  ],
  absenceKind: absenceKinds,
  afterMixing,
  missed: [
    {
      en: "{hours} h after the last row: at least nothing, at most {ah} Ah, since {current} A flowed at the last row",
      pl: "{hours} h po ostatnim wierszu: co najmniej nic, najwyżej {ah} Ah, bo w ostatnim wierszu płynęło {current} A",
      de: "{hours} h nach der letzten Zeile: mindestens nichts, höchstens {ah} Ah, da in der letzten Zeile {current} A flossen",
    },
    {
      en: "{hours} h after the last row: at least nothing, at most {ah} Ah, since {current} A flowed before the pause",
      pl: "{hours} h po ostatnim wierszu: co najmniej nic, najwyżej {ah} Ah, bo przed przerwą płynęło {current} A",
      de: "{hours} h nach der letzten Zeile: mindestens nichts, höchstens {ah} Ah, da vor der Pause {current} A flossen",
    },
  ],
  addsNothing: [
    { en: "it logs no current", pl: "nie zapisuje prądu", de: "sie enthält keinen Strom" },
    {
      en: "it does not log both voltage and current",
      pl: "nie zapisuje zarazem napięcia i prądu",
      de: "sie enthält nicht Spannung und Strom zugleich",
    },
    {
      en: "fewer than two of its rows have values",
      pl: "mniej niż dwa jej wiersze mają wartości",
      de: "weniger als zwei ihrer Zeilen haben Werte",
    },
  ],
  quantityName: [
    { en: "voltage", pl: "napięcia", de: "die Spannung" },
    { en: "current", pl: "prądu", de: "den Strom" },
  ],
  costInput: [
    { en: "uses in its life", pl: "liczba użyć w okresie życia", de: "Nutzungen während der Lebensdauer" },
    { en: "purchase", pl: "cena zakupu", de: "Kaufpreis" },
    { en: "price of electricity", pl: "cena energii elektrycznej", de: "Strompreis" },
    { en: "value of an hour", pl: "wartość godziny", de: "Wert einer Stunde" },
    { en: "mains energy", pl: "energia z sieci", de: "Netzenergie" },
    { en: "energy at the battery", pl: "energia przy akumulatorze", de: "Energie an der Batterie" },
    { en: "efficiency", pl: "sprawność", de: "Wirkungsgrad" },
    { en: "standby", pl: "pobór własny w spoczynku", de: "Bereitschaftsverbrauch" },
    { en: "minutes of visits", pl: "minuty wizyt", de: "Minuten der Besuche" },
    { en: "charge put back", pl: "oddany ładunek", de: "zurückgeladene Ladung" },
    { en: "density gained", pl: "przyrost gęstości", de: "Dichtezuwachs" },
    { en: "rate of exchange of {of:costInput}", pl: "kurs wymiany: {of}", de: "Wechselkurs: {of}" },
  ],
  standard: [
    { en: "a standard that is not stated", pl: "niepodanej normy", de: "einer nicht angegebenen Norm" },
    { en: "EN 50342-1", pl: "EN 50342-1", de: "EN 50342-1" },
    { en: "SAE J537", pl: "SAE J537", de: "SAE J537" },
    { en: "IEC 60095-1", pl: "IEC 60095-1", de: "IEC 60095-1" },
    { en: "DIN 43539-2", pl: "DIN 43539-2", de: "DIN 43539-2" },
    { en: "JIS D 5301", pl: "JIS D 5301", de: "JIS D 5301" },
  ],
  ventedVoltage: [
    {
      en: "{voltage} V, the highest at the end of a stage ({recording:file})",
      pl: "{voltage} V, najwyższe na końcu etapu ({recording})",
      de: "{voltage} V, die höchste am Ende einer Phase ({recording})",
    },
    {
      en: "{voltage} V, read at visit {visit} with the charger connected",
      pl: "{voltage} V, odczytane na wizycie {visit} przy podłączonym prostowniku",
      de: "{voltage} V, abgelesen bei Besuch {visit} mit angeschlossenem Ladegerät",
    },
  ],
} as const satisfies Chapter;

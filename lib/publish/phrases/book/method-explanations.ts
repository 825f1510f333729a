/** What each figure, claim and finding is, as its method page explains it. */
import type { Chapter } from "../pattern.ts";

export const methodExplanations = {
  text: [
    // Of a recording.
    {
      en: "Current added up over the time that was recorded, each hour once where two recorders ran side by side. Gaps and unrecorded hours add nothing here; see the charge in gaps and the unrecorded charge for what they may hide.",
      pl: "Prąd zsumowany po czasie, który zapisano, każda godzina raz, gdy dwa rejestratory biegły równolegle. Luki i godziny bez zapisu nic tu nie dodają; co mogą ukrywać, mówią ładunek w lukach i ładunek niezapisany.",
      de: "Strom, aufsummiert über die aufgezeichnete Zeit, jede Stunde einmal, wo zwei Rekorder nebeneinander liefen. Lücken und nicht aufgezeichnete Stunden zählen hier nichts; was sie verbergen können, sagen die Ladung in Lücken und die nicht aufgezeichnete Ladung.",
    },
    {
      en: "Voltage times current, added up over the time that was recorded: what went into the battery, not what the mains gave.",
      pl: "Napięcie razy prąd, zsumowane po zapisanym czasie: to, co wpłynęło do akumulatora, nie to, co dała sieć.",
      de: "Spannung mal Strom, aufsummiert über die aufgezeichnete Zeit: was in die Batterie ging, nicht was das Netz lieferte.",
    },
    {
      en: "The highest mean over {seconds} s within stages in which the charger, and not the battery, limited the current. A claim about current is judged by this number and no other.",
      pl: "Najwyższa średnia z {seconds} s w etapach, w których prąd ograniczał prostownik, a nie akumulator. Deklarację prądu ocenia się według tej liczby i żadnej innej.",
      de: "Das höchste Mittel über {seconds} s in Phasen, in denen das Ladegerät und nicht die Batterie den Strom begrenzte. Eine Stromzusage wird nach dieser Zahl beurteilt und nach keiner anderen.",
    },
    {
      en: "The highest voltage that the charger held while the current fell. It is read at the end of the stage, of ten minutes or more, where little current flows. Where the recorder sits at the charger, the drop on the leads widens the interval.",
      pl: "Najwyższe napięcie, które prostownik utrzymywał, gdy prąd spadał. Odczytuje się je na końcu etapu, trwającego dziesięć minut lub dłużej, gdzie płynie mały prąd. Gdy rejestrator jest przy prostowniku, spadek na przewodach poszerza przedział.",
      de: "Die höchste Spannung, die das Ladegerät hielt, während der Strom fiel. Abgelesen wird sie am Ende der Phase, von zehn Minuten oder mehr, wo wenig Strom fließt. Sitzt der Rekorder am Ladegerät, macht der Abfall auf den Leitungen das Intervall breiter.",
    },
    {
      en: "The highest of the lower voltages that the charger held after the limit. It is read at the end of the stage, of ten minutes or more, where little current flows. Where the recorder sits at the charger, the drop on the leads widens the interval.",
      pl: "Najwyższe z niższych napięć, które prostownik utrzymywał po napięciu granicznym. Odczytuje się je na końcu etapu, trwającego dziesięć minut lub dłużej, gdzie płynie mały prąd. Gdy rejestrator jest przy prostowniku, spadek na przewodach poszerza przedział.",
      de: "Die höchste der niedrigeren Spannungen, die das Ladegerät nach der Ladeschlussspannung hielt. Abgelesen wird sie am Ende der Phase, von zehn Minuten oder mehr, wo wenig Strom fließt. Sitzt der Rekorder am Ladegerät, macht der Abfall auf den Leitungen das Intervall breiter.",
    },
    {
      en: "The highest time-weighted mean over any stretch of that length without a gap. Spikes and ripple of the meter do not count.",
      pl: "Najwyższa średnia ważona czasem z dowolnego odcinka tej długości bez luki. Piki i tętnienia miernika się nie liczą.",
      de: "Das höchste zeitgewichtete Mittel über einen beliebigen Abschnitt dieser Länge ohne Lücke. Spitzen und Welligkeit des Messgeräts zählen nicht.",
    },
    {
      en: "The largest single value in the log. A spike of one row counts here; claims are judged on what was sustained.",
      pl: "Największa pojedyncza wartość w zapisie. Pik w jednym wierszu tu się liczy; deklaracje ocenia się według tego, co się utrzymało.",
      de: "Der größte einzelne Wert der Aufzeichnung. Eine Spitze von einer Zeile zählt hier; Zusagen werden nach dem beurteilt, was gehalten wurde.",
    },
    {
      en: "From the 5th to the 95th percentile of the voltage in the last stretch in which it was held. It holds what the recorder can see: waves faster than its rows, and its own noise, cannot be told apart.",
      pl: "Od 5. do 95. percentyla napięcia w ostatnim odcinku, w którym było utrzymywane. Zawiera to, co rejestrator może zobaczyć: fal szybszych niż jego wiersze i jego własnego szumu nie da się rozróżnić.",
      de: "Vom 5. bis zum 95. Perzentil der Spannung im letzten Abschnitt, in dem sie gehalten wurde. Darin steckt, was der Rekorder sehen kann: Wellen, die schneller sind als seine Zeilen, und sein eigenes Rauschen lassen sich nicht trennen.",
    },
    {
      en: "How long the voltage lay above the one at which gassing is said to set in: 2.385 V a cell at 25 °C, 2.49 V at 0 °C, 2.33 V at 40 °C, straight between the rows of a table. It is taken at the battery's temperature, or at 25 °C where nobody read it. Gassing mixes the acid, costs water and gives off hydrogen: ventilate. The limit is a convention.",
      pl: "Jak długo napięcie było wyższe od tego, przy którym ma się zaczynać gazowanie: 2,385 V na celę w 25 °C, 2,49 V w 0 °C, 2,33 V w 40 °C, liniowo między wierszami tablicy. Przyjmuje się je w temperaturze akumulatora albo w 25 °C, gdy nikt jej nie odczytał. Gazowanie miesza elektrolit, kosztuje wodę i wydziela wodór: wietrzyć. Granica jest umowna.",
      de: "Wie lange die Spannung über der lag, bei der die Gasung einsetzen soll: 2,385 V je Zelle bei 25 °C, 2,49 V bei 0 °C, 2,33 V bei 40 °C, gerade zwischen den Zeilen einer Tabelle. Genommen wird sie bei der Temperatur der Batterie oder bei 25 °C, wo niemand sie ablas. Gasung durchmischt die Säure, kostet Wasser und setzt Wasserstoff frei: lüften. Die Grenze ist eine Übereinkunft.",
    },
    {
      en: "From the recording's first row to its last. It says how long the recorder worked, not how long the charger did.",
      pl: "Od pierwszego do ostatniego wiersza zapisu. Mówi, jak długo pracował rejestrator, nie jak długo prostownik.",
      de: "Von der ersten bis zur letzten Zeile der Aufzeichnung. Sie sagt, wie lange der Rekorder arbeitete, nicht wie lange das Ladegerät.",
    },
    {
      en: "Rows that carry a time and every value that this recorder logs. Blank, excluded and half-empty rows are counted apart.",
      pl: "Wiersze z czasem i każdą wartością, którą ten rejestrator zapisuje. Wiersze puste, wyłączone i niepełne liczy się osobno.",
      de: "Zeilen mit einer Zeit und jedem Wert, den dieser Rekorder aufzeichnet. Leere, ausgeschlossene und halb leere Zeilen sind getrennt gezählt.",
    },
    {
      en: "The median time from one row to the next. What happens faster than this cannot be seen in the log.",
      pl: "Mediana czasu od wiersza do wiersza. Tego, co dzieje się szybciej, w zapisie nie widać.",
      de: "Der Median der Zeit von einer Zeile zur nächsten. Was schneller geschieht, ist in der Aufzeichnung nicht zu sehen.",
    },
    {
      en: "Time inside the recording in which no row was written for longer than the recorder's own pace allows: two and a half times the longest usual pause (99th percentile; 90th in a log of fewer than 200 rows), or the longest pause that the recorder's record declares.",
      pl: "Czas wewnątrz zapisu, w którym nie zapisano wiersza dłużej, niż pozwala rytm rejestratora: dwa i pół raza najdłuższa zwykła przerwa (99. percentyl; 90. w zapisie poniżej 200 wierszy) albo najdłuższa przerwa podana w opisie rejestratora.",
      de: "Zeit innerhalb der Aufzeichnung, in der länger keine Zeile geschrieben wurde, als der eigene Takt des Rekorders erlaubt: das Zweieinhalbfache der längsten üblichen Pause (99. Perzentil; 90. bei weniger als 200 Zeilen) oder die längste Pause, die die Angaben zum Rekorder nennen.",
    },
    {
      en: "A straight line over each gap, with bounds: from nothing at all to the recording's highest current all along. It is not part of the charge recorded.",
      pl: "Prosta nad każdą luką, z granicami: od zera do największego prądu zapisu przez cały czas. Nie wchodzi w zapisany ładunek.",
      de: "Eine Gerade über jede Lücke, mit Grenzen: von gar nichts bis durchgehend zum höchsten Strom der Aufzeichnung. Sie gehört nicht zur aufgezeichneten Ladung.",
    },
    {
      en: "How often the recorder's clock went back. Rows a little out of order are sorted; after a larger step the next row is taken to follow at the usual interval, since nobody knows better.",
      pl: "Jak często zegar rejestratora się cofał. Wiersze nieco poprzestawiane się sortuje; po większym skoku przyjmuje się, że następny wiersz idzie w zwykłym odstępie, bo nikt nie wie lepiej.",
      de: "Wie oft die Uhr des Rekorders zurücksprang. Zeilen, die ein wenig vertauscht sind, werden sortiert; nach einem größeren Sprung gilt die nächste Zeile als im üblichen Abstand folgend, da niemand es besser weiß.",
    },

    // Of a connection.
    {
      en: "From clamps on to clamps off. Where nobody saw them come off, it is at least the time to the last thing known of the connection.",
      pl: "Od założenia do zdjęcia zacisków. Gdy nikt nie widział ich zdjęcia, jest to co najmniej czas do ostatniej rzeczy, jaką wiadomo o podłączeniu.",
      de: "Vom Anlegen bis zum Abnehmen der Klemmen. Wo niemand das Abnehmen sah, ist es mindestens die Zeit bis zum Letzten, was vom Ladegang bekannt ist.",
    },
    {
      en: "The time of a connection for which recordings show the battery, gaps taken off, and hours with the leads off it or the wrong way round; an hour that two recorders saw counts once.",
      pl: "Czas podłączenia, w którym zapisy pokazują akumulator, bez luk i bez godzin z przewodami odłączonymi od niego lub zamienionymi; godzina widziana przez dwa rejestratory liczy się raz.",
      de: "Die Zeit eines Ladegangs, in der Aufzeichnungen die Batterie zeigen, ohne Lücken und ohne Stunden mit abgenommenen oder vertauschten Leitungen; eine Stunde, die zwei Rekorder sahen, zählt einmal.",
    },
    {
      en: "What the charger did in this time was not seen. A recording that stops does not mean that the charger stopped.",
      pl: "Tego, co prostownik robił w tym czasie, nie widziano. Zapis, który się kończy, nie oznacza, że skończył prostownik.",
      de: "Was das Ladegerät in dieser Zeit tat, war nicht zu sehen. Eine Aufzeichnung, die aufhört, heißt nicht, dass das Ladegerät aufhörte.",
    },
    {
      en: "Time recorded, gaps and hours with the leads off the battery taken off, over time connected. What the charger did in the rest was not seen, and every figure of the connection leans on what was.",
      pl: "Czas zapisany, bez luk i bez godzin z przewodami odłączonymi od akumulatora, przez czas podłączenia. Tego, co prostownik robił w pozostałym, nie widziano, a każda wielkość tego podłączenia opiera się na tym, co widziano.",
      de: "Aufgezeichnete Zeit ohne Lücken und ohne Stunden mit abgenommenen Leitungen, geteilt durch die Zeit am Ladegerät. Was das Ladegerät im Rest tat, war nicht zu sehen, und jede Größe des Ladegangs stützt sich auf das Gesehene.",
    },
    {
      en: "What may have flowed after the last row of a connection, while the charger was still connected. At a held voltage the current only falls, so the last current over the remaining time is the most there can have been; where the charger still held its current, that current is. The least is nothing.",
      pl: "To, co mogło płynąć po ostatnim wierszu podłączenia, gdy prostownik był jeszcze podłączony. Przy utrzymywanym napięciu prąd tylko spada, więc ostatni prąd przez pozostały czas to najwięcej, ile mogło być; gdy prostownik utrzymywał jeszcze prąd, jest to ten prąd. Najmniej to nic.",
      de: "Was nach der letzten Zeile eines Ladegangs geflossen sein kann, während das Ladegerät noch angeschlossen war. Bei gehaltener Spannung fällt der Strom nur, also ist der letzte Strom über die restliche Zeit das Höchste, was es gewesen sein kann; hielt das Ladegerät noch seinen Strom, so ist es dieser. Das Mindeste ist nichts.",
    },

    // Of a test.
    {
      en: "How many connections had begun when the target density was first read or, where the visits show the test's own stop rule, when it was met. A visit only says 'by now': the interval starts at the first connection after the visit before. Acid is read as found, at the top of the cells; a target met only after mixing by hand does not count. It is the owner's effort, not the charger's time. Not reached, it is projected with the hours, in connections as long as those seen, and open above where they are.",
      pl: "Ile podłączeń zaczęło się, gdy po raz pierwszy odczytano gęstość docelową albo, gdy wizyty pokazują regułę zakończenia testu, gdy ją spełniono. Wizyta mówi tylko „do teraz”: przedział zaczyna się od pierwszego podłączenia po poprzedniej wizycie. Elektrolit odczytuje się bez mieszania, u góry cel; cel osiągnięty dopiero po ręcznym wymieszaniu się nie liczy. To wysiłek właściciela, nie czas prostownika. Jeśli celu nie osiągnięto, liczba jest prognozą razem z godzinami, w podłączeniach tak długich jak obserwowane, i u góry otwarta, gdy one są.",
      de: "Wie viele Ladegänge begonnen hatten, als die Zieldichte zuerst abgelesen wurde oder, wo die Besuche die Abschlussregel des Tests zeigen, als sie erfüllt war. Ein Besuch sagt nur „bis jetzt“: Das Intervall beginnt beim ersten Ladegang nach dem Besuch davor. Die Säure wird abgelesen, wie sie ist, oben in den Zellen; ein Ziel, das erst nach Durchmischen von Hand erreicht ist, zählt nicht. Es ist der Aufwand des Besitzers, nicht die Zeit des Ladegeräts. Nicht erreicht, wird es mit den Stunden hochgerechnet, in Ladegängen so lang wie die gesehenen, und ist nach oben offen, wo sie es sind.",
    },
    {
      en: "Hours on charge by the visit that first read the target density or, where the visits show the test's own stop rule, that completed it; the interval starts at the hours of the visit before. Where the target was not reached it is projected: saturating and straight growth are weighed by how well they explain the visits, hydrometer steps and error allowed for; the middle and the middle 95 % are given, no further than three times the hours seen: an interval that goes on beyond is open above.",
      pl: "Godziny ładowania do wizyty, która pierwsza odczytała gęstość docelową albo, gdy wizyty pokazują regułę zakończenia testu, która ją dopełniła; przedział zaczyna się od godzin poprzedniej wizyty. Gdy celu nie osiągnięto, jest to prognoza: wzrost nasycający się i prostoliniowy waży się tym, jak dobrze wyjaśniają wizyty, z uwzględnieniem działki i błędu areometru; podaje się środek i środkowe 95 %, nie dalej niż trzykrotność obserwowanych godzin: przedział, który sięga dalej, jest u góry otwarty.",
      de: "Stunden am Ladegerät bis zu dem Besuch, der die Zieldichte zuerst ablas oder, wo die Besuche die Abschlussregel des Tests zeigen, sie erfüllte; das Intervall beginnt bei den Stunden des Besuchs davor. Wo das Ziel nicht erreicht wurde, ist es hochgerechnet: Sättigender und gerader Anstieg werden danach gewichtet, wie gut sie die Besuche erklären, Schritte und Fehler des Säurehebers eingerechnet; angegeben sind die Mitte und die mittleren 95 %, nicht weiter als das Dreifache der gesehenen Stunden: Ein Intervall, das darüber hinausreicht, ist nach oben offen.",
    },
    {
      en: "What it costs to bring this battery to its target once: the purchase spread over its uses, energy from the mains, what the charger takes beside it, and the owner's time where the site values it.",
      pl: "Ile kosztuje doprowadzenie tego akumulatora raz do celu: zakup rozłożony na użycia, energia z sieci, to, co prostownik pobiera ponadto, i czas właściciela, jeśli witryna go wycenia.",
      de: "Was es kostet, diese Batterie einmal an ihr Ziel zu bringen: der Kauf, auf seine Nutzungen verteilt, Energie aus dem Netz, was das Ladegerät daneben verbraucht, und die Zeit des Besitzers, wo die Website sie bewertet.",
    },
    {
      en: "The same with the whole purchase on the first result: what a buyer pays who needs it once.",
      pl: "To samo z całym zakupem przy pierwszym wyniku: ile płaci kupujący, który potrzebuje go raz.",
      de: "Dasselbe mit dem ganzen Kauf beim ersten Ergebnis: was ein Käufer zahlt, der es einmal braucht.",
    },
    {
      en: "The cost per result over the charge that the density says went in.",
      pl: "Koszt wyniku podzielony przez ładunek, który wpłynął według gęstości.",
      de: "Die Kosten je Ergebnis, geteilt durch die Ladung, die nach der Säuredichte hineinging.",
    },
    {
      en: "The cost per result over the density gained, in hundredths of a kilogram a litre.",
      pl: "Koszt wyniku podzielony przez przyrost gęstości, w setnych kilograma na litr.",
      de: "Die Kosten je Ergebnis, geteilt durch den Dichtezuwachs in Hundertstel Kilogramm je Liter.",
    },
    {
      en: "How often the charger was connected in this test.",
      pl: "Ile razy w tym teście podłączano prostownik.",
      de: "Wie oft das Ladegerät in diesem Test angeschlossen wurde.",
    },
    {
      en: "All connections together. Where nobody noted an end, only the time known to be connected counts, and there is no upper end.",
      pl: "Wszystkie podłączenia razem. Gdy nikt nie zanotował końca, liczy się tylko czas, o którym wiadomo, że było podłączenie, i nie ma górnego końca.",
      de: "Alle Ladegänge zusammen. Wo niemand ein Ende notierte, zählt nur die sicher angeschlossene Zeit, und es gibt kein oberes Ende.",
    },
    {
      en: "Mean of the cells read at the first visit with a density, at 25 °C. A hydrometer dips into the top of the cell; see the findings for stratified acid.",
      pl: "Średnia z cel odczytanych na pierwszej wizycie z gęstością, w 25 °C. Areometr zanurza się u góry celi; o rozwarstwieniu elektrolitu mówią ustalenia.",
      de: "Mittel der Zellen, die beim ersten Besuch mit einer Dichte abgelesen wurden, bei 25 °C. Ein Säureheber taucht oben in die Zelle; zur Säureschichtung siehe die Befunde.",
    },
    {
      en: "Mean of the cells read at the last visit with a density, at 25 °C. A hydrometer dips into the top of the cell; see the findings for stratified acid.",
      pl: "Średnia z cel odczytanych na ostatniej wizycie z gęstością, w 25 °C. Areometr zanurza się u góry celi; o rozwarstwieniu elektrolitu mówią ustalenia.",
      de: "Mittel der Zellen, die beim letzten Besuch mit einer Dichte abgelesen wurden, bei 25 °C. Ein Säureheber taucht oben in die Zelle; zur Säureschichtung siehe die Befunde.",
    },
    {
      en: "What must have been charged to bring the acid from the first density read to the last: each ampere-hour sets free 3.66 g of acid in each cell and takes 0.67 g of water. It needs the mass of acid, given or estimated from capacity with a wide interval.",
      pl: "Ile musiało wpłynąć, by elektrolit przeszedł od pierwszej odczytanej gęstości do ostatniej: każda amperogodzina uwalnia w każdej celi 3,66 g kwasu i zabiera 0,67 g wody. Potrzebna jest masa elektrolitu, podana albo oszacowana z pojemności z szerokim przedziałem.",
      de: "Was geladen worden sein muss, um die Säure von der ersten abgelesenen Dichte zur letzten zu bringen: Jede Amperestunde setzt in jeder Zelle 3,66 g Säure frei und bindet 0,67 g Wasser. Es braucht die Säuremasse, angegeben oder aus der Kapazität mit weitem Intervall geschätzt.",
    },
    {
      en: "What the density says went in, less what was recorded between the first and the last density. More than nothing means that the charger worked while no recorder did. Where more was recorded than the density needs, nothing unrecorded shows: gassing, stratified acid and warmth take the rest.",
      pl: "To, co wpłynęło według gęstości, minus to, co zapisano między pierwszą a ostatnią gęstością. Więcej niż nic oznacza, że prostownik pracował, gdy żaden rejestrator nie działał. Gdy zapisano więcej, niż wymaga gęstość, nic niezapisanego nie widać: resztę zabierają gazowanie, rozwarstwienie elektrolitu i ciepło.",
      de: "Was nach der Säuredichte hineinging, abzüglich des zwischen erster und letzter Dichte Aufgezeichneten. Mehr als nichts heißt, dass das Ladegerät arbeitete, während kein Rekorder lief. Wo mehr aufgezeichnet wurde, als die Dichte braucht, ist nichts Unaufgezeichnetes zu erkennen: Gasung, Säureschichtung und Wärme nehmen den Rest.",
    },
    {
      en: "From the first to the last visit, by density, rest voltage, recorded charge and cranking current together. Charge that went into gas is not in it, charge that nobody recorded is.",
      pl: "Od pierwszej do ostatniej wizyty, według gęstości, napięcia spoczynkowego, zapisanego ładunku i prądu rozruchowego łącznie. Ładunku, który poszedł w gaz, w tym nie ma, ładunek, którego nikt nie zapisał, jest.",
      de: "Vom ersten bis zum letzten Besuch, nach Säuredichte, Ruhespannung, aufgezeichneter Ladung und Kaltstartstrom zusammen. Ladung, die in Gas ging, ist nicht darin, Ladung, die niemand aufgezeichnet hat, schon.",
    },
    {
      en: "Charge held over what this battery really holds, by density, rest voltage, recorded charge and cranking current together. One witness alone misleads: the hydrometer dips into the top of the cell, and rest voltage carries surface charge.",
      pl: "Zgromadzony ładunek przez to, co ten akumulator naprawdę mieści, według gęstości, napięcia spoczynkowego, zapisanego ładunku i prądu rozruchowego łącznie. Jeden świadek sam myli: areometr zanurza się u góry celi, a napięcie spoczynkowe niesie ładunek powierzchniowy.",
      de: "Enthaltene Ladung, geteilt durch das, was diese Batterie wirklich fasst, nach Säuredichte, Ruhespannung, aufgezeichneter Ladung und Kaltstartstrom zusammen. Ein Zeuge allein führt in die Irre: Der Säureheber taucht oben in die Zelle, und die Ruhespannung trägt Oberflächenladung.",
    },
    {
      en: "What the charger holds when it is left on: the voltage at the end of the last float that was recorded, or of a limit held for a day or more; where neither was recorded, what a voltmeter read at a visit with the charger connected for a day or more.",
      pl: "Co prostownik utrzymuje, gdy się go zostawi: napięcie na końcu ostatniego zapisanego ładowania konserwującego albo napięcia granicznego utrzymywanego dobę lub dłużej; gdy nie zapisano żadnego z nich, wskazanie woltomierza na wizycie po dobie lub dłużej z podłączonym prostownikiem.",
      de: "Was das Ladegerät hält, wenn es angeschlossen bleibt: die Spannung am Ende der letzten aufgezeichneten Erhaltungsladung oder einer Ladeschlussspannung, die einen Tag oder länger gehalten wurde; wo keines aufgezeichnet wurde, was ein Spannungsmesser bei einem Besuch zeigte, nachdem das Ladegerät einen Tag oder länger angeschlossen war.",
    },
    {
      en: "What the battery lost between the first and the last weighing with the clamps off, with water topped up between them added. Charging moves no mass in or out but gas, vapour and mist, so weight is the measurement of lost water, and the only one for a sealed battery. It counts before any estimate from charge.",
      pl: "Ile akumulator stracił między pierwszym a ostatnim ważeniem ze zdjętymi zaciskami, z doliczeniem wody dolanej pomiędzy nimi. Ładowanie nie przenosi żadnej masy poza gazem, parą i mgłą, więc masa jest pomiarem utraconej wody, a dla szczelnego akumulatora jedynym. Ma pierwszeństwo przed każdym szacunkiem z ładunku.",
      de: "Was die Batterie zwischen der ersten und der letzten Wägung mit abgenommenen Klemmen verlor, zwischendurch nachgefülltes Wasser hinzugezählt. Laden bewegt außer Gas, Dampf und Nebel keine Masse, also ist das Gewicht die Messung des verlorenen Wassers und bei einer verschlossenen Batterie die einzige. Sie geht jeder Schätzung aus der Ladung vor.",
    },
    {
      en: "Charge recorded between the first and the last density beyond what the density needs, taken as if all of it had split water: an upper bound for a vented battery. Unrecorded charge is not in it. Weighing is the measurement; this is a plausibility check, and where the battery was weighed, water-lost-weighed counts.",
      pl: "Ładunek zapisany między pierwszą a ostatnią gęstością ponad to, czego wymaga gęstość, przyjęty tak, jakby cały rozłożył wodę: górna granica dla akumulatora otwartego. Niezapisanego ładunku w tym nie ma. Pomiarem jest ważenie; to tylko kontrola wiarygodności, a gdy akumulator zważono, liczy się ubytek wody według wagi.",
      de: "Zwischen erster und letzter Dichte aufgezeichnete Ladung über das hinaus, was die Dichte braucht, so gerechnet, als hätte sie ganz Wasser zersetzt: eine Obergrenze für eine Nassbatterie. Nicht aufgezeichnete Ladung ist nicht darin. Die Messung ist das Wiegen; dies ist eine Plausibilitätsprüfung, und wo die Batterie gewogen wurde, zählt der gewogene Wasserverlust.",
    },
    {
      en: "The water that one cell may lose before its plates fall dry, as the battery's record states it, over the most that the current held at the end can cost. That current holds the make-up for self-discharge too, so the reserve lasts at least so long, at that voltage and that temperature: some 12 K warmer or 0.06 V a cell higher halves it. The interval is that of this lower bound.",
      pl: "Woda, którą jedna cela może stracić, zanim odsłonią się płyty, jak podaje opis akumulatora, przez najwięcej, ile może kosztować prąd utrzymywany na końcu. Prąd ten zawiera też wyrównanie samorozładowania, więc zapas wystarczy co najmniej na tyle, przy tym napięciu i tej temperaturze: o jakieś 12 K cieplej albo o 0,06 V na celę wyżej skraca to o połowę. Przedział dotyczy tej dolnej granicy.",
      de: "Das Wasser, das eine Zelle verlieren darf, bevor ihre Platten trockenfallen, nach den Angaben zur Batterie, geteilt durch das Höchste, was der am Ende gehaltene Strom kosten kann. In diesem Strom steckt auch der Ausgleich der Selbstentladung, also reicht die Reserve mindestens so lange, bei dieser Spannung und dieser Temperatur: etwa 12 K wärmer oder 0,06 V je Zelle höher halbiert sie. Das Intervall ist das dieser Untergrenze.",
    },
    {
      en: "The same overcharge as overcharge-water, as litres of hydrogen at 25 °C and one atmosphere, over the whole test. Unrecorded charge is not in it. From 4 % in air hydrogen explodes: keep fresh air moving and sparks and flames away. How much air is asked for is ventilation-need's matter.",
      pl: "To samo przeładowanie co przy wodzie straconej przez przeładowanie, jako litry wodoru w 25 °C i przy jednej atmosferze, przez cały test. Niezapisanego ładunku w tym nie ma. Od 4 % w powietrzu wodór wybucha: zapewnić przepływ świeżego powietrza, żadnych iskier ani płomieni. Ile powietrza potrzeba, mówi wymagany dopływ świeżego powietrza.",
      de: "Dieselbe Überladung wie beim Wasserverlust durch Überladung, als Liter Wasserstoff bei 25 °C und einer Atmosphäre, über den ganzen Test. Nicht aufgezeichnete Ladung ist nicht darin. Ab 4 % in der Luft explodiert Wasserstoff: frische Luft in Bewegung halten, Funken und Flammen fernhalten. Wie viel Luft verlangt ist, sagt der Frischluftbedarf.",
    },
    {
      en: "Air flow that keeps hydrogen well under 4 %, for this one battery with this charger: cells times capacity times the design gassing current of IEC 62485-2, 5 mA per Ah on float and 20 above it for vented batteries, 1 and 8 for sealed ones. Which of the two follows from the highest voltage that was held; up to 2.30 V a cell, the top of usual float windows, counts as float, the meter's error on the safe side. A design value with the standard's own margin, so it carries no interval. Local codes, the battery's maker and licensed practice decide; this figure allows nothing.",
      pl: "Przepływ powietrza, który utrzymuje wodór dobrze poniżej 4 %, dla tego jednego akumulatora z tym prostownikiem: cele razy pojemność razy obliczeniowy prąd gazowania według IEC 62485-2, 5 mA na Ah przy ładowaniu konserwującym i 20 powyżej dla akumulatorów otwartych, 1 i 8 dla szczelnych. Który z dwóch, wynika z najwyższego utrzymywanego napięcia; do 2,30 V na celę, górnej granicy zwykłych zakresów konserwujących, liczy się ładowanie konserwujące, z błędem miernika po bezpiecznej stronie. Wartość obliczeniowa z własnym zapasem normy, więc bez przedziału. Decydują przepisy miejscowe, producent akumulatora i uprawnieni fachowcy; ta liczba na nic nie zezwala.",
      de: "Luftstrom, der Wasserstoff deutlich unter 4 % hält, für diese eine Batterie mit diesem Ladegerät: Zellen mal Kapazität mal Bemessungs-Gasungsstrom nach IEC 62485-2, 5 mA je Ah bei Erhaltungsladung und 20 darüber für Nassbatterien, 1 und 8 für verschlossene. Welcher der beiden gilt, folgt aus der höchsten gehaltenen Spannung; bis 2,30 V je Zelle, der Obergrenze üblicher Erhaltungsfenster, gilt als Erhaltungsladung, der Fehler des Messgeräts auf der sicheren Seite. Ein Bemessungswert mit dem eigenen Zuschlag der Norm, daher ohne Intervall. Maßgebend sind örtliche Vorschriften, der Batteriehersteller und zugelassene Fachpraxis; diese Zahl erlaubt nichts.",
    },
    {
      en: "From the energy meter's readings where it was read at two visits; else the energy that went into the battery over the stated efficiency: what was recorded, and what the density says went in unrecorded.",
      pl: "Z odczytów licznika energii, gdy odczytano go na dwóch wizytach; w przeciwnym razie energia, która wpłynęła do akumulatora, przez podaną sprawność: to, co zapisano, i to, co według gęstości wpłynęło bez zapisu.",
      de: "Aus den Ablesungen des Energiezählers, wo er bei zwei Besuchen abgelesen wurde; sonst die Energie, die in die Batterie ging, geteilt durch den angegebenen Wirkungsgrad: was aufgezeichnet wurde und was nach der Säuredichte unaufgezeichnet hineinging.",
    },
    {
      en: "The tester's figure over the battery's rating, only where both are in the same standard: figures of different standards do not convert. A tester that loads the battery and one that estimates from conductance do not measure the same, and their figures are not to be compared with each other; which it was stands beside the figure. Ratings hold at −18 °C in a cooled battery, a tester's figure is its maker's estimate of that at the temperature it met.",
      pl: "Wynik testera przez wartość znamionową akumulatora, tylko gdy oba są według tej samej normy: wyników różnych norm się nie przelicza. Tester obciążający akumulator i tester szacujący z konduktancji nie mierzą tego samego, a ich wyników nie należy porównywać; który to był, podano obok. Wartości znamionowe dotyczą −18 °C w schłodzonym akumulatorze, wynik testera to oszacowanie jego producenta w zastanej temperaturze.",
      de: "Der Wert des Testers, geteilt durch den Nennwert der Batterie, nur wo beide nach derselben Norm gelten: Werte verschiedener Normen lassen sich nicht umrechnen. Ein Tester, der die Batterie belastet, und einer, der aus dem Leitwert schätzt, messen nicht dasselbe, und ihre Werte sind nicht miteinander zu vergleichen; welcher es war, steht dabei. Nennwerte gelten bei −18 °C in einer gekühlten Batterie, der Wert eines Testers ist die Schätzung seines Herstellers dafür bei der vorgefundenen Temperatur.",
    },

    // Of a reading.
    {
      en: "What the hydrometer showed, brought to density in kg/l at 25 °C through the acid's own strength, from the scale's convention and the acid's temperature.",
      pl: "Wskazanie areometru, sprowadzone do gęstości w kg/l w 25 °C przez moc samego kwasu, z konwencji skali i temperatury elektrolitu.",
      de: "Was der Säureheber zeigte, über die Stärke der Säure selbst auf eine Dichte in kg/l bei 25 °C gebracht, aus der Festlegung der Skala und der Temperatur der Säure.",
    },
    {
      en: "Highest cell less lowest. Above about 0.04 to 0.05 kg/l the battery itself is suspect.",
      pl: "Najwyższa cela minus najniższa. Powyżej około 0,04 do 0,05 kg/l podejrzany jest sam akumulator.",
      de: "Höchste Zelle minus niedrigste. Über etwa 0,04 bis 0,05 kg/l ist die Batterie selbst verdächtig.",
    },
    {
      en: "The density that the acid at the plates must have for the rest voltage read at this visit, by Bode's curve at the battery's temperature. It needs a battery that has rested, for surface charge reads as strong acid, and evenly mixed acid. For sealed batteries it is not given: their acid is scarcer and stronger, and they rest 0.10 to 0.15 V higher (12 V) at the same state.",
      pl: "Gęstość, którą elektrolit przy płytach musi mieć dla napięcia spoczynkowego odczytanego na tej wizycie, według krzywej Bodego w temperaturze akumulatora. Wymaga akumulatora po spoczynku, bo ładunek powierzchniowy udaje mocny elektrolit, i równo wymieszanego elektrolitu. Dla szczelnych akumulatorów się jej nie podaje: elektrolitu mają mniej, jest on mocniejszy, a napięcie spoczynkowe jest w tym samym stanie o 0,10 do 0,15 V wyższe (12 V).",
      de: "Die Dichte, die die Säure an den Platten für die bei diesem Besuch abgelesene Ruhespannung haben muss, nach der Kurve von Bode bei der Temperatur der Batterie. Sie braucht eine ausgeruhte Batterie, denn Oberflächenladung liest sich wie starke Säure, und gleichmäßig durchmischte Säure. Für verschlossene Batterien wird sie nicht angegeben: Ihre Säure ist knapper und stärker, und sie ruhen im selben Zustand 0,10 bis 0,15 V höher (12 V).",
    },
    {
      en: "Where the first ice forms in acid of the mean density read at this visit: near −8 °C at 1.10 kg/l, −15 °C at 1.15, −27 °C at 1.20. Weaker cells freeze earlier. A frozen battery can be cracked inside and must never be charged: thaw it slowly, look for leaks, and leave doubtful ones to a battery service.",
      pl: "Gdzie tworzy się pierwszy lód w elektrolicie o średniej gęstości odczytanej na tej wizycie: w pobliżu −8 °C przy 1,10 kg/l, −15 °C przy 1,15, −27 °C przy 1,20. Słabsze cele zamarzają wcześniej. Zamarznięty akumulator może być w środku pęknięty i nigdy nie wolno go ładować: rozmrażać powoli, szukać wycieków, a wątpliwe zostawić serwisowi akumulatorów.",
      de: "Wo sich in Säure der bei diesem Besuch abgelesenen mittleren Dichte das erste Eis bildet: nahe −8 °C bei 1,10 kg/l, −15 °C bei 1,15, −27 °C bei 1,20. Schwächere Zellen gefrieren früher. Eine gefrorene Batterie kann innen gerissen sein und darf niemals geladen werden: langsam auftauen, auf Lecks absuchen und zweifelhafte einem Batteriedienst überlassen.",
    },
    {
      en: "As read at the visit, with the accuracy that the instrument's record states.",
      pl: "Jak odczytano na wizycie, z dokładnością podaną w opisie przyrządu.",
      de: "Wie beim Besuch abgelesen, mit der Genauigkeit aus den Angaben zum Messgerät.",
    },
    {
      en: "What a buyer pays, with the day and the kind of shop, as the charger's record states it.",
      pl: "Ile płaci kupujący, z dniem i rodzajem sklepu, jak podaje opis prostownika.",
      de: "Was ein Käufer zahlt, mit Tag und Art des Geschäfts, nach den Angaben zum Ladegerät.",
    },

    // Of a mode.
    {
      en: "The standard deviation of what several recordings of one test show: same charger, mode, battery and instruments. Errors of the recorder that are the same each time are not in it. From few recordings it is itself hardly known, which its interval shows.",
      pl: "Odchylenie standardowe tego, co pokazuje kilka zapisów jednego testu: ten sam prostownik, tryb, akumulator i przyrządy. Błędów rejestratora, które są za każdym razem takie same, w tym nie ma. Z niewielu zapisów samo jest ledwie znane, co pokazuje jego przedział.",
      de: "Die Standardabweichung dessen, was mehrere Aufzeichnungen eines Tests zeigen: gleiches Ladegerät, gleiche Betriebsart, Batterie und Messgeräte. Fehler des Rekorders, die jedes Mal gleich sind, stecken nicht darin. Aus wenigen Aufzeichnungen ist sie selbst kaum bekannt, was ihr Intervall zeigt.",
    },
    {
      en: "The standard deviation of the means of several tests of one mode, with another battery, season or recorder in it where they differed.",
      pl: "Odchylenie standardowe średnich z kilku testów jednego trybu, z innym akumulatorem, porą roku lub rejestratorem, gdzie się różniły.",
      de: "Die Standardabweichung der Mittelwerte mehrerer Tests einer Betriebsart, mit anderer Batterie, Jahreszeit oder anderem Rekorder, wo sie sich unterschieden.",
    },
    {
      en: "Hours on charge until {battery:text} holds 80 %, 95 % or 99 % of what it can. Every charger is forecast on this one battery, whatever it was tested on, by a simulator fitted to how the charger behaved in its recordings. What is not known of the charger, and what no label says of a battery, is drawn 64 times; the interval holds the middle 95 % of the draws, and is open above where any of them does not get there within {horizon} h.",
      pl: "Godziny ładowania, aż akumulator odniesienia ({battery}) będzie mieć 80 %, 95 % lub 99 % tego, co może. Każdy prostownik prognozuje się na tym jednym akumulatorze, niezależnie od tego, na czym go badano, symulatorem dopasowanym do zachowania prostownika w zapisach. To, czego o prostowniku nie wiadomo i czego o akumulatorze nie mówi żadna etykieta, losuje się 64 razy; przedział obejmuje środkowe 95 % losowań i jest u góry otwarty, gdy któreś z nich nie dochodzi tam w ciągu {horizon} h.",
      de: "Stunden am Ladegerät, bis die Referenzbatterie ({battery}) 80 %, 95 % oder 99 % dessen enthält, was sie kann. Jedes Ladegerät wird auf diese eine Batterie hochgerechnet, woran immer es geprüft wurde, mit einem Simulator, der an das Verhalten des Ladegeräts in seinen Aufzeichnungen angepasst ist. Was vom Ladegerät nicht bekannt ist und was kein Etikett über eine Batterie sagt, wird 64-mal gezogen; das Intervall umfasst die mittleren 95 % der Ziehungen und ist nach oben offen, wo eine von ihnen es nicht binnen {horizon} h schafft.",
    },
    {
      en: "Hours on charge until a battery of the bench, found as flat as before a test of this mode, holds 80 %, 95 % or 99 % of what it can. The simulator is fitted to the logs of that battery's charges, by this charger and by others: at most five, the nearest in time. What the logs leave open is drawn 64 times; the interval is open above where any draw does not get there. Such a forecast is much surer than one for a battery that nobody logged; how much surer, the checks tell.",
      pl: "Godziny ładowania, aż akumulator ze stanowiska, rozładowany tak jak przed testem tego trybu, będzie mieć 80 %, 95 % lub 99 % tego, co może. Symulator dopasowano do zapisów ładowań tego akumulatora, tym prostownikiem i innymi: najwyżej pięć, najbliższych w czasie. To, co zapisy zostawiają otwarte, losuje się 64 razy; przedział jest u góry otwarty, gdy któreś losowanie tam nie dochodzi. Taka prognoza jest znacznie pewniejsza niż dla akumulatora, którego nikt nie zapisywał; o ile pewniejsza, mówią sprawdzenia.",
      de: "Stunden am Ladegerät, bis eine Batterie des Prüfplatzes, so leer wie vor einem Test dieser Betriebsart, 80 %, 95 % oder 99 % dessen enthält, was sie kann. Der Simulator ist an die Aufzeichnungen der Ladungen dieser Batterie angepasst, mit diesem Ladegerät und mit anderen: höchstens fünf, die zeitlich nächsten. Was die Aufzeichnungen offenlassen, wird 64-mal gezogen; das Intervall ist nach oben offen, wo eine Ziehung es nicht schafft. Eine solche Hochrechnung ist viel sicherer als eine für eine Batterie, die niemand aufgezeichnet hat; wie viel sicherer, sagen die Prüfungen.",
    },
    {
      en: "Energy from the mains until the reference battery holds 95 % of what it can, in the same draws as the hours, and open above where theirs is. What a charger that stays connected takes after that is told in the month connected.",
      pl: "Energia z sieci, aż akumulator odniesienia będzie mieć 95 % tego, co może, w tych samych losowaniach co godziny i u góry otwarta, gdy ich przedział jest. Ile podłączony dalej prostownik pobiera potem, mówi miesiąc podłączenia.",
      de: "Energie aus dem Netz, bis die Referenzbatterie 95 % dessen enthält, was sie kann, in denselben Ziehungen wie die Stunden und nach oben offen, wo deren Intervall es ist. Was ein Ladegerät, das angeschlossen bleibt, danach verbraucht, sagt der Monat am Ladegerät.",
    },
    {
      en: "What one charge of the reference battery costs once the charger is paid for: energy from the mains until 95 % at the site's price, and one visit of the owner where the site values their time.",
      pl: "Ile kosztuje jedno ładowanie akumulatora odniesienia, gdy prostownik jest już kupiony: energia z sieci do 95 % po cenie witryny i jedna wizyta właściciela, jeśli witryna wycenia jego czas.",
      de: "Was eine Ladung der Referenzbatterie kostet, wenn das Ladegerät bezahlt ist: Energie aus dem Netz bis 95 % zum Preis der Website und ein Besuch des Besitzers, wo die Website dessen Zeit bewertet.",
    },
    {
      en: "The running cost with the purchase spread over the uses of the charger's life. Every charger is held to the same charge, whatever it was tested on.",
      pl: "Koszt bieżący z zakupem rozłożonym na użycia w okresie życia prostownika. Każdy prostownik mierzy się tym samym ładowaniem, niezależnie od tego, na czym go badano.",
      de: "Die laufenden Kosten mit dem Kauf, auf die Nutzungen im Leben des Ladegeräts verteilt. Jedes Ladegerät wird an derselben Ladung gemessen, woran immer es geprüft wurde.",
    },

    // Claims.
    {
      en: "The highest current held for the site's window while the charger, not the battery, limited it, against the rated current. IEC 60335-2-29 wants the rated DC output current marked, and no other.",
      pl: "Największy prąd utrzymany przez okno witryny, gdy ograniczał go prostownik, a nie akumulator, wobec prądu znamionowego. IEC 60335-2-29 wymaga oznaczenia znamionowego wyjściowego prądu stałego i żadnego innego.",
      de: "Der höchste Strom, der über das Fenster der Website gehalten wurde, während das Ladegerät und nicht die Batterie ihn begrenzte, gegen den Nennstrom. IEC 60335-2-29 verlangt die Angabe des Nenn-Ausgangsgleichstroms und keines anderen.",
    },
    {
      en: "The highest voltage held, at the end of its stage, against the voltage that the maker names for this mode, at the temperature that the battery had: moved by the compensation the maker states; where none is stated, a voltage that compensation would explain cannot be told.",
      pl: "Najwyższe utrzymywane napięcie, na końcu swojego etapu, wobec napięcia, które producent podaje dla tego trybu, w temperaturze, którą miał akumulator: przesunięte o kompensację podaną przez producenta; gdy jej nie podano, napięcia, które kompensacja by wyjaśniała, nie da się rozstrzygnąć.",
      de: "Die höchste gehaltene Spannung, am Ende ihrer Phase, gegen die Spannung, die der Hersteller für diese Betriebsart nennt, bei der Temperatur, die die Batterie hatte: verschoben um die vom Hersteller angegebene Kompensation; wo keine angegeben ist, lässt sich über eine Spannung, die eine Kompensation erklären würde, nichts sagen.",
    },
    {
      en: "The voltage held after the limit, against the one the maker names, at the temperature that the battery had.",
      pl: "Napięcie utrzymywane po napięciu granicznym wobec podanego przez producenta, w temperaturze, którą miał akumulator.",
      de: "Die nach der Ladeschlussspannung gehaltene Spannung gegen die, die der Hersteller nennt, bei der Temperatur, die die Batterie hatte.",
    },
    {
      en: "The letters that the recording shows against those the maker names. A recording that ends early shows only a beginning.",
      pl: "Litery, które pokazuje zapis, wobec podanych przez producenta. Zapis, który kończy się wcześnie, pokazuje tylko początek.",
      de: "Die Buchstaben, die die Aufzeichnung zeigt, gegen die, die der Hersteller nennt. Eine Aufzeichnung, die früh endet, zeigt nur einen Anfang.",
    },
    {
      en: "The voltage held for long against the float window of this kind of battery, at the temperature that it had.",
      pl: "Długo utrzymywane napięcie wobec zakresu napięcia konserwującego tego rodzaju akumulatora, w temperaturze, którą miał.",
      de: "Die lange gehaltene Spannung gegen das Fenster der Erhaltungsladung dieser Batterieart, bei der Temperatur, die sie hatte.",
    },

    // Findings.
    {
      en: "Whether the acid came back to the test's target density, by when, by which stop rule that counts, and whether the visits show that the rule was met. Acid as found is the top of the cell, so a target read there is met by the mean as well; a target read only after mixing by hand is told as that.",
      pl: "Czy elektrolit wrócił do gęstości docelowej testu, do kiedy, według jakiej reguły zakończenia się to liczy i czy wizyty pokazują, że regułę spełniono. Elektrolit bez mieszania to górna warstwa w celi, więc cel odczytany tam spełnia także średnia; cel odczytany dopiero po ręcznym wymieszaniu tak właśnie się podaje.",
      de: "Ob die Säure auf die Zieldichte des Tests zurückkam, bis wann, nach welcher Abschlussregel das zählt und ob die Besuche zeigen, dass die Regel erfüllt war. Säure wie vorgefunden ist die oben in der Zelle, ein dort abgelesenes Ziel ist also auch im Mittel erreicht; ein Ziel, das erst nach Durchmischen von Hand abgelesen wurde, wird als solches genannt.",
    },
    {
      en: "A battery has four witnesses, and each can mislead: the hydrometer dips into the top of the cell, rest voltage carries surface charge, a recorder stops early, a rating flatters. A small probabilistic model weighs all readings together, ranks what would explain their disagreement, and names the reading that would tell the explanations apart.",
      pl: "Akumulator ma czterech świadków, a każdy może mylić: areometr zanurza się u góry celi, napięcie spoczynkowe niesie ładunek powierzchniowy, rejestrator kończy za wcześnie, wartość znamionowa pochlebia. Mały model probabilistyczny waży wszystkie odczyty razem, szereguje to, co wyjaśniałoby ich niezgodność, i wskazuje odczyt, który rozróżniłby wyjaśnienia.",
      de: "Eine Batterie hat vier Zeugen, und jeder kann in die Irre führen: Der Säureheber taucht oben in die Zelle, die Ruhespannung trägt Oberflächenladung, ein Rekorder hört früh auf, ein Nennwert schmeichelt. Ein kleines Wahrscheinlichkeitsmodell wägt alle Ablesungen zusammen, ordnet, was ihre Uneinigkeit erklären würde, und nennt die Ablesung, die die Erklärungen auseinanderhielte.",
    },
    {
      en: "A recording that ends says nothing of the charger unless the current fell to nothing inside it. Each recording's ending is judged from its tail, the recorder's stop rule and later readings.",
      pl: "Zapis, który się kończy, nic nie mówi o prostowniku, chyba że prąd spadł do zera w jego obrębie. Koniec każdego zapisu ocenia się po jego ostatnim odcinku, regule zakończenia rejestratora i późniejszych odczytach.",
      de: "Eine Aufzeichnung, die endet, sagt nichts über das Ladegerät, es sei denn, der Strom fiel innerhalb von ihr auf null. Das Ende jeder Aufzeichnung wird nach ihrem letzten Stück, der Abschaltregel des Rekorders und späteren Ablesungen beurteilt.",
    },
    {
      en: "Density, rest voltage and cranking current say how much charge the battery holds; the logs say how much was seen. What no other explanation accounts for went in unseen. Where the readings allow no cross-examination, density alone is held against the log.",
      pl: "Gęstość, napięcie spoczynkowe i prąd rozruchowy mówią, ile ładunku mieści akumulator; zapisy mówią, ile widziano. To, czego nie tłumaczy żadne inne wyjaśnienie, wpłynęło niezauważone. Gdy odczyty nie pozwalają na konfrontację, z zapisem zestawia się samą gęstość.",
      de: "Säuredichte, Ruhespannung und Kaltstartstrom sagen, wie viel Ladung die Batterie enthält; die Aufzeichnungen sagen, wie viel davon zu sehen war. Was keine andere Erklärung abdeckt, ging ungesehen hinein. Wo die Ablesungen keine Gegenüberstellung erlauben, wird die Dichte allein an der Aufzeichnung gemessen.",
    },
    {
      en: "The voltage held for long, against the float window of this kind of battery, moved to the temperature that the battery had. Too high costs water and corrodes; too low lets the battery sulphate.",
      pl: "Długo utrzymywane napięcie wobec zakresu napięcia konserwującego tego rodzaju akumulatora, przesuniętego do temperatury, którą miał akumulator. Za wysokie kosztuje wodę i przyspiesza korozję; za niskie pozwala akumulatorowi się zasiarczyć.",
      de: "Die lange gehaltene Spannung gegen das Fenster der Erhaltungsladung dieser Batterieart, verschoben auf die Temperatur, die die Batterie hatte. Zu hoch kostet Wasser und korrodiert; zu niedrig lässt die Batterie sulfatieren.",
    },
    {
      en: "After the battery is full a charger should lower its voltage or switch off. Held above gassing voltage for more than a day, the battery loses water and gives off hydrogen.",
      pl: "Gdy akumulator jest pełny, prostownik powinien obniżyć napięcie albo się wyłączyć. Utrzymywany dłużej niż dobę powyżej napięcia gazowania akumulator traci wodę i wydziela wodór.",
      de: "Ist die Batterie voll, soll ein Ladegerät seine Spannung senken oder abschalten. Länger als einen Tag über der Gasungsspannung gehalten, verliert die Batterie Wasser und setzt Wasserstoff frei.",
    },
    {
      en: "Charge that a full battery no longer takes splits water into gas. Weighing measures what is gone; without a scale, the current that still flows at a voltage held for long gives the most that it can be, 0.336 g an ampere-hour in each cell. Held against what a full vented battery takes on float, 1 mA per Ah.",
      pl: "Ładunek, którego pełny akumulator już nie przyjmuje, rozkłada wodę na gaz. Ważenie mierzy, ile ubyło; bez wagi prąd płynący jeszcze przy długo utrzymywanym napięciu mówi, ile może to być najwyżej, 0,336 g na amperogodzinę w każdej celi. Odnosi się to do poboru naładowanego akumulatora otwartego przy ładowaniu konserwującym, 1 mA na Ah.",
      de: "Ladung, die eine volle Batterie nicht mehr annimmt, zersetzt Wasser zu Gas. Wiegen misst, was fehlt; ohne Waage gibt der Strom, der bei lange gehaltener Spannung noch fließt, das Höchste an, was es sein kann, 0,336 g je Amperestunde in jeder Zelle. Verglichen mit dem, was eine volle Nassbatterie bei Erhaltungsladung aufnimmt, 1 mA je Ah.",
    },
    {
      en: "A cell that lags behind its neighbours limits the battery, and makes any charger look weak. One that lags at visit after visit is weak; one that lags by about a whole cell, with 2 V missing at rest, is shorted; one that lagged at a single visit was more likely read badly or just topped up.",
      pl: "Cela, która pozostaje w tyle za sąsiednimi, ogranicza akumulator i sprawia, że każdy prostownik wypada słabo. Pozostająca w tyle na każdej wizycie jest słaba; pozostająca w tyle mniej więcej o całą celę, gdy w spoczynku brakuje 2 V, jest zwarta; pozostająca w tyle na jednej wizycie została raczej źle odczytana albo świeżo uzupełniona wodą.",
      de: "Eine Zelle, die hinter ihren Nachbarn zurückhängt, begrenzt die Batterie und lässt jedes Ladegerät schwach aussehen. Eine, die Besuch für Besuch zurückhängt, ist schwach; eine, die etwa um eine ganze Zelle zurückhängt, wobei in Ruhe 2 V fehlen, hat Zellenschluss; eine, die bei einem einzigen Besuch zurückhing, wurde eher falsch abgelesen oder eben aufgefüllt.",
    },
    {
      en: "Acid, battery and air, each as it was read: on charge they can be 5 to 20 K apart, so none stands for another without saying so. Below 0 °C a battery takes little charge and a flat one may be frozen; from 45 °C acid on charge should be watched, at 50 °C the charge should stop, unless the site sets its own limits.",
      pl: "Elektrolit, akumulator i powietrze, każde tak, jak je odczytano: podczas ładowania może je dzielić od 5 do 20 K, więc żadne nie zastępuje drugiego bez wzmianki. Poniżej 0 °C akumulator przyjmuje mało ładunku, a rozładowany może być zamarznięty; od 45 °C elektrolitu podczas ładowania należy pilnować, przy 50 °C ładowanie należy przerwać, chyba że witryna ustala własne granice.",
      de: "Säure, Batterie und Luft, jede wie abgelesen: Beim Laden können sie 5 bis 20 K auseinanderliegen, daher steht keine für eine andere, ohne dass es gesagt ist. Unter 0 °C nimmt eine Batterie wenig Ladung auf, und eine leere kann gefroren sein; ab 45 °C ist Säure beim Laden zu beobachten, bei 50 °C soll die Ladung enden, wenn die Website keine eigenen Grenzen setzt.",
    },
    {
      en: "Weak acid freezes: at 1.15 kg/l near −15 °C, at 1.10 near −8 °C. Where a visit read a temperature near the freezing point of the acid, the battery may have been frozen. A frozen battery must not be charged: it can be cracked inside, short, and burst.",
      pl: "Słaby elektrolit zamarza: przy 1,15 kg/l w pobliżu −15 °C, przy 1,10 w pobliżu −8 °C. Gdy wizyta odczytała temperaturę bliską zamarzania elektrolitu, akumulator mógł być zamarznięty. Zamarzniętego akumulatora nie wolno ładować: może być w środku pęknięty, zewrzeć się i rozerwać.",
      de: "Schwache Säure gefriert: bei 1,15 kg/l nahe −15 °C, bei 1,10 nahe −8 °C. Wo ein Besuch eine Temperatur nahe dem Gefrierpunkt der Säure ablas, kann die Batterie gefroren gewesen sein. Eine gefrorene Batterie darf nicht geladen werden: Sie kann innen gerissen sein, kurzschließen und bersten.",
    },
  ],
} as const satisfies Chapter;

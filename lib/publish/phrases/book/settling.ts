/** What would settle what is open. */
import type { Chapter } from "../pattern.ts";

export const settling = {
  text: [
    { en: "a capacity test after the charge", pl: "próba pojemności po ładowaniu", de: "eine Kapazitätsprüfung nach der Ladung" },
    {
      en: "a clamp-meter reading before disconnecting, or a recorder that does not stop by itself",
      pl: "odczyt z cęgów prądowych przed odłączeniem albo rejestrator, który nie kończy sam",
      de: "eine Ablesung mit der Stromzange vor dem Abklemmen oder ein Rekorder, der nicht von selbst aufhört",
    },
    {
      en: "a clamp-meter reading just before the charger is disconnected",
      pl: "odczyt z cęgów prądowych tuż przed odłączeniem prostownika",
      de: "eine Ablesung mit der Stromzange kurz vor dem Abklemmen des Ladegeräts",
    },
    {
      en: "a recorder at every connection, or a clamp-meter reading at each visit",
      pl: "rejestrator przy każdym podłączeniu albo odczyt z cęgów prądowych na każdej wizycie",
      de: "ein Rekorder bei jedem Ladegang oder eine Ablesung mit der Stromzange bei jedem Besuch",
    },
    {
      en: "a recorder that does not stop by itself, or a clamp-meter reading at each visit",
      pl: "rejestrator, który nie kończy sam, albo odczyt z cęgów prądowych na każdej wizycie",
      de: "ein Rekorder, der nicht von selbst aufhört, oder eine Ablesung mit der Stromzange bei jedem Besuch",
    },
    {
      en: "a further connection with acid mixed before reading",
      pl: "dalsze podłączenie z wymieszaniem elektrolitu przed odczytem",
      de: "ein weiterer Ladegang, die Säure vor dem Ablesen durchmischt",
    },
    {
      en: "a charge long enough above the gassing voltage to mix the acid, with fresh air, and a reading as found",
      pl: "ładowanie powyżej napięcia gazowania dość długie, by wymieszać elektrolit, przy dopływie świeżego powietrza, oraz odczyt bez mieszania",
      de: "eine Ladung über der Gasungsspannung, lang genug, um die Säure zu durchmischen, bei frischer Luft, und eine Ablesung wie vorgefunden",
    },
    {
      en: "{n} readings {minutes} min apart with the charger still connected",
      pl: "odczyty w liczbie {n}, co {minutes} min, przy nadal podłączonym prostowniku",
      de: "{n} Ablesungen im Abstand von {minutes} min bei noch angeschlossenem Ladegerät",
    },
    { en: "a log with both voltage and current", pl: "zapis zarazem napięcia i prądu", de: "eine Aufzeichnung von Spannung und Strom" },
    { en: "a more accurate voltmeter", pl: "dokładniejszy woltomierz", de: "ein genauerer Spannungsmesser" },
    {
      en: "a more accurate recorder, or its calibration",
      pl: "dokładniejszy rejestrator albo jego wzorcowanie",
      de: "ein genauerer Rekorder oder dessen Kalibrierung",
    },
    {
      en: "the recorder's accuracy, from its data sheet or a calibration",
      pl: "dokładność rejestratora, z karty katalogowej albo wzorcowania",
      de: "die Genauigkeit des Rekorders, aus dem Datenblatt oder einer Kalibrierung",
    },
    {
      en: "the meter's accuracy, from its data sheet or a calibration",
      pl: "dokładność miernika, z karty katalogowej albo wzorcowania",
      de: "die Genauigkeit des Messgeräts, aus dem Datenblatt oder einer Kalibrierung",
    },
    { en: "the same with the battery at 25 °C", pl: "to samo z akumulatorem w 25 °C", de: "dasselbe mit der Batterie bei 25 °C" },
    {
      en: "a test with the battery at 25 °C, or the maker's word on compensation",
      pl: "test z akumulatorem w 25 °C albo informacja producenta o kompensacji",
      de: "ein Test mit der Batterie bei 25 °C oder die Auskunft des Herstellers zur Kompensation",
    },
    {
      en: "a recording of some days after the charger reported full",
      pl: "zapis z kilku dni po tym, jak prostownik zgłosił pełne naładowanie",
      de: "eine Aufzeichnung von einigen Tagen, nachdem das Ladegerät voll meldete",
    },
    {
      en: "a recording of some days at that hold, or weighing before and after some weeks connected",
      pl: "zapis z kilku dni tego podtrzymywania albo ważenie przed kilkoma tygodniami podłączenia i po nich",
      de: "eine Aufzeichnung von einigen Tagen bei dieser Spannung oder Wiegen vor und nach einigen Wochen am Ladegerät",
    },
    {
      en: "a recording, or a clamp-meter reading, days after it reported full; or weighing before and after some weeks connected",
      pl: "zapis albo odczyt z cęgów prądowych kilka dni po zgłoszeniu pełnego naładowania; albo ważenie przed kilkoma tygodniami podłączenia i po nich",
      de: "eine Aufzeichnung oder eine Ablesung mit der Stromzange Tage nach der Vollmeldung; oder Wiegen vor und nach einigen Wochen am Ladegerät",
    },
    {
      en: "a recording, or a voltmeter reading with the charger connected, days after it reported full",
      pl: "zapis albo odczyt woltomierza przy podłączonym prostowniku, kilka dni po zgłoszeniu pełnego naładowania",
      de: "eine Aufzeichnung oder eine Ablesung mit dem Spannungsmesser bei angeschlossenem Ladegerät, Tage nach der Vollmeldung",
    },
    {
      en: "a weighing before and after some weeks connected",
      pl: "ważenie przed kilkoma tygodniami podłączenia i po nich",
      de: "Wiegen vor und nach einigen Wochen am Ladegerät",
    },
    {
      en: "weighing the battery before and after some weeks connected",
      pl: "ważenie akumulatora przed kilkoma tygodniami podłączenia i po nich",
      de: "Wiegen der Batterie vor und nach einigen Wochen am Ladegerät",
    },
    {
      en: "a recording from the first minute of a charge on a well discharged battery",
      pl: "zapis od pierwszej minuty ładowania mocno rozładowanego akumulatora",
      de: "eine Aufzeichnung ab der ersten Minute einer Ladung an einer weit entladenen Batterie",
    },
    {
      en: "a recording of a whole charge, voltage and current",
      pl: "zapis całego ładowania, napięcia i prądu",
      de: "eine Aufzeichnung einer ganzen Ladung, Spannung und Strom",
    },
    {
      en: "a recording that goes on until the charger stops or holds",
      pl: "zapis trwający, aż prostownik skończy albo przejdzie do podtrzymywania",
      de: "eine Aufzeichnung, die weiterläuft, bis das Ladegerät aufhört oder hält",
    },
    {
      en: "a recording that goes on until the current has begun to fall",
      pl: "zapis trwający, aż prąd zacznie spadać",
      de: "eine Aufzeichnung, die weiterläuft, bis der Strom zu fallen beginnt",
    },
    {
      en: "a recording that goes on after the charger has reported full, with a recorder that does not stop by itself",
      pl: "zapis trwający po zgłoszeniu przez prostownik pełnego naładowania, rejestratorem, który nie kończy sam",
      de: "eine Aufzeichnung, die nach der Vollmeldung des Ladegeräts weiterläuft, mit einem Rekorder, der nicht von selbst aufhört",
    },
    { en: "a recording of this connection", pl: "zapis tego podłączenia", de: "eine Aufzeichnung dieses Ladegangs" },
    {
      en: "density readings at each visit, and a target",
      pl: "odczyty gęstości na każdej wizycie oraz wartość docelowa",
      de: "Ablesungen der Säuredichte bei jedem Besuch und ein Ziel",
    },
    {
      en: "density, rest voltage after a rest, and a log, at two visits or more",
      pl: "gęstość, napięcie spoczynkowe po spoczynku i zapis, na dwóch lub więcej wizytach",
      de: "Säuredichte, Ruhespannung nach einer Ruhezeit und eine Aufzeichnung, bei zwei Besuchen oder mehr",
    },
    {
      en: "further connections until the target is read",
      pl: "dalsze podłączenia, aż do odczytania wartości docelowej",
      de: "weitere Ladegänge, bis das Ziel abgelesen ist",
    },
    {
      en: "further visits with density readings",
      pl: "dalsze wizyty z odczytami gęstości",
      de: "weitere Besuche mit Ablesungen der Säuredichte",
    },
    {
      en: "the mass of acid per cell, or a finer hydrometer",
      pl: "masa elektrolitu na celę albo dokładniejszy areometr",
      de: "die Säuremasse je Zelle oder ein feinerer Säureheber",
    },
    {
      en: "the temperature of acid, or of the battery's case, and of the air at each visit, once with the charger connected",
      pl: "temperatura elektrolitu albo obudowy akumulatora oraz powietrza na każdej wizycie, raz przy podłączonym prostowniku",
      de: "die Temperatur der Säure oder des Batteriegehäuses und der Luft bei jedem Besuch, einmal bei angeschlossenem Ladegerät",
    },
    {
      en: "the temperature of the acid during the charge",
      pl: "temperatura elektrolitu podczas ładowania",
      de: "die Temperatur der Säure während der Ladung",
    },
    {
      en: "the temperature of the acid or of the battery's case",
      pl: "temperatura elektrolitu albo obudowy akumulatora",
      de: "die Temperatur der Säure oder des Batteriegehäuses",
    },
    {
      en: "the time at which each connection began",
      pl: "czas rozpoczęcia każdego podłączenia",
      de: "der Zeitpunkt, zu dem jeder Ladegang begann",
    },
    { en: "the time at which the clamps came off", pl: "czas zdjęcia zacisków", de: "der Zeitpunkt, zu dem die Klemmen abgenommen wurden" },
    {
      en: "the time at which the clamps came off, and the rule by which the recorder stops",
      pl: "czas zdjęcia zacisków i reguła, według której rejestrator kończy",
      de: "der Zeitpunkt, zu dem die Klemmen abgenommen wurden, und die Regel, nach der der Rekorder aufhört",
    },
    {
      en: "a note of whether mains or clamps were taken off at that time, or a clamp-meter reading later",
      pl: "notatka, czy odłączono wtedy sieć czy zaciski, albo późniejszy odczyt z cęgów prądowych",
      de: "eine Notiz, ob zu dieser Zeit Netz oder Klemmen getrennt wurden, oder später eine Ablesung mit der Stromzange",
    },
    {
      en: "a note of whether the recorder was still writing when the clamps came off",
      pl: "notatka, czy rejestrator jeszcze pisał, gdy zdjęto zaciski",
      de: "eine Notiz, ob der Rekorder noch schrieb, als die Klemmen abgenommen wurden",
    },
    {
      en: "the level of each cell, and a second reading once it is right and the acid is mixed",
      pl: "poziom w każdej celi i drugi odczyt, gdy poziom jest właściwy, a elektrolit wymieszany",
      de: "der Füllstand jeder Zelle und eine zweite Ablesung, wenn er stimmt und die Säure durchmischt ist",
    },
    {
      en: "a second reading of every cell after the next charge, levels checked first",
      pl: "drugi odczyt każdej celi po następnym ładowaniu, najpierw sprawdzić poziomy",
      de: "eine zweite Ablesung jeder Zelle nach der nächsten Ladung, vorher die Füllstände prüfen",
    },
    {
      en: "a second reading of cell {cell}, after the acid was mixed by a charge",
      pl: "drugi odczyt celi {cell}, po wymieszaniu elektrolitu ładowaniem",
      de: "eine zweite Ablesung von Zelle {cell}, nachdem eine Ladung die Säure durchmischt hat",
    },
    {
      en: "a longer charge, and a reading of every cell after it",
      pl: "dłuższe ładowanie i odczyt każdej celi po nim",
      de: "eine längere Ladung und danach eine Ablesung jeder Zelle",
    },
    {
      en: "the voltage of each cell under load, or the same charge on another battery",
      pl: "napięcie każdej celi pod obciążeniem albo takie samo ładowanie innego akumulatora",
      de: "die Spannung jeder Zelle unter Last oder dieselbe Ladung an einer anderen Batterie",
    },
    {
      en: "a second voltmeter at rest, then a battery service: a sealed battery gives no access to its cells",
      pl: "drugi woltomierz w spoczynku, potem serwis akumulatorów: szczelny akumulator nie daje dostępu do cel",
      de: "ein zweiter Spannungsmesser in Ruhe, dann ein Batteriedienst: Eine verschlossene Batterie gibt keinen Zugang zu ihren Zellen",
    },
    {
      en: "the voltage of each cell at rest, between neighbouring cells' acid or links: a shorted one shows well under 2 V",
      pl: "napięcie każdej celi w spoczynku, mierzone między elektrolitem lub łącznikami sąsiednich cel: zwarta wykazuje znacznie poniżej 2 V",
      de: "die Spannung jeder Zelle in Ruhe, zwischen der Säure oder den Verbindern benachbarter Zellen: Eine kurzgeschlossene zeigt weit unter 2 V",
    },
    {
      en: "the battery brought into warmth for a day without charging, the case then searched for cracks and leaks, and the density of each cell read",
      pl: "akumulator wniesiony na dobę do ciepła bez ładowania, potem obudowa sprawdzona pod kątem pęknięć i wycieków oraz gęstość odczytana w każdej celi",
      de: "die Batterie einen Tag ohne Laden in die Wärme gebracht, dann das Gehäuse auf Risse und Lecks abgesucht und die Säuredichte jeder Zelle abgelesen",
    },
  ],
} as const satisfies Chapter;

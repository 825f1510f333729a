/** What a mode will do: its behaviour step by step, what nobody recorded of it, and why a charge is not advised. */
import type { Chapter } from "../pattern.ts";

export const forecast = {
  text: [
    // Its steps.
    { en: "A low current first, {current:range} A.", pl: "Najpierw mały prąd, {current} A.", de: "Zuerst ein kleiner Strom, {current} A." },
    {
      en: "A low current first, {current:range} A, up to {until:range} V.",
      pl: "Najpierw mały prąd, {current} A, aż do napięcia {until} V.",
      de: "Zuerst ein kleiner Strom, {current} A, bis zu einer Spannung von {until} V.",
    },
    { en: "A current of {current:range} A.", pl: "Prąd {current} A.", de: "Ein Strom von {current} A." },
    {
      en: "A current of {current:range} A, up to {until:range} V.",
      pl: "Prąd {current} A, aż do napięcia {until} V.",
      de: "Ein Strom von {current} A, bis zu einer Spannung von {until} V.",
    },
    {
      en: "A finishing current of {current:range} A.",
      pl: "Prąd końcowy {current} A.",
      de: "Ein Konstantstrom am Ende der Ladung, {current} A.",
    },
    {
      en: "A finishing current of {current:range} A, up to {until:range} V.",
      pl: "Prąd końcowy {current} A, aż do napięcia {until} V.",
      de: "Ein Konstantstrom am Ende der Ladung, {current} A, bis zu einer Spannung von {until} V.",
    },
    {
      en: "A current that falls from {fromA:range} A at {fromV} V to {toA:range} A at {toV} V.",
      pl: "Malejący prąd: {fromA} A przy {fromV} V, {toA} A przy {toV} V.",
      de: "Ein fallender Strom: {fromA} A bei {fromV} V, {toA} A bei {toV} V.",
    },
    {
      en: "A current that falls from {fromA:range} A at {fromV} V to {toA:range} A at {toV} V, up to {until:range} V.",
      pl: "Malejący prąd: {fromA} A przy {fromV} V, {toA} A przy {toV} V, aż do napięcia {until} V.",
      de: "Ein fallender Strom: {fromA} A bei {fromV} V, {toA} A bei {toV} V, bis zu einer Spannung von {until} V.",
    },
    {
      en: "{voltage:range} V with at most {limit:range} A.",
      pl: "Napięcie {voltage} V przy ograniczeniu prądu {limit} A.",
      de: "{voltage} V mit höchstens {limit} A.",
    },
    {
      en: "{voltage:range} V with at most {limit:range} A, and nothing was seen to end it.",
      pl: "Napięcie {voltage} V przy ograniczeniu prądu {limit} A, a nie widziano, by cokolwiek to kończyło.",
      de: "{voltage} V mit höchstens {limit} A, und es war nichts zu sehen, was das beendet.",
    },
    {
      en: "{voltage:range} V with at most {limit:range} A, until {ends:stepEnd+or}.",
      pl: "Napięcie {voltage} V przy ograniczeniu prądu {limit} A, aż {ends}.",
      de: "{voltage} V mit höchstens {limit} A, bis {ends}.",
    },
    {
      en: "Then {voltage:range} V held, with at most {limit:range} A.",
      pl: "Potem utrzymywane napięcie {voltage} V, ograniczenie prądu {limit} A.",
      de: "Danach {voltage} V gehalten, mit höchstens {limit} A.",
    },
    { en: "Then off.", pl: "Potem wyłączony.", de: "Danach aus." },
    {
      en: "Then off, until the battery has sunk to {voltage:range} V.",
      pl: "Potem wyłączony, aż napięcie akumulatora opadnie do wartości {voltage} V.",
      de: "Danach aus, bis die Batterie auf {voltage} V gesunken ist.",
    },
    {
      en: "What it does then nobody recorded; the forecast takes it as off.",
      pl: "Co robi potem, tego nikt nie zapisał; prognoza przyjmuje, że jest wyłączony.",
      de: "Was es danach tut, hat niemand aufgezeichnet; die Hochrechnung nimmt es als aus an.",
    },
    {
      en: "After {after:range} h at full current it turns down to {share:range} % of it for {time:range} h.",
      pl: "Po czasie {after} h pełnego prądu zmniejsza go do wartości {share} % na czas {time} h.",
      de: "Nach {after} h vollen Stroms geht es für {time} h auf {share} % davon zurück.",
    },

    // What the recordings do not say.
    {
      en: "an end current and a time both fit the ends of its voltage limit that were seen",
      pl: "do obserwowanych zakończeń napięcia granicznego pasuje zarówno prąd końcowy, jak i czas",
      de: "zu den gesehenen Enden seiner Ladeschlussspannung passen ein Endstrom und eine Zeit gleichermaßen",
    },
    {
      en: "it held its voltage limit for {time:duration} and nobody saw it let go: it is taken to hold it as long as it is connected",
      pl: "utrzymywał napięcie graniczne przez {time} i nikt nie widział, by z niego zszedł: przyjęto, że utrzymuje je, dopóki jest podłączony",
      de: "es hielt seine Ladeschlussspannung {time} lang, und niemand sah es davon ablassen: angenommen ist, dass es sie hält, solange es angeschlossen ist",
    },
    {
      en: "its current limit was never reached in a recording",
      pl: "w żadnym zapisie nie osiągnięto jego ograniczenia prądu",
      de: "seine Strombegrenzung wurde in keiner Aufzeichnung erreicht",
    },
    {
      en: "no float and no holding was recorded: it is taken to give nothing once it leaves off",
      pl: "nie zapisano ładowania konserwującego ani podtrzymywania: przyjęto, że po zakończeniu nic nie daje",
      de: "keine Erhaltungsladung und kein Halten wurde aufgezeichnet: angenommen ist, dass es nach dem Aufhören nichts mehr liefert",
    },
    {
      en: "nobody recorded the end of its voltage limit: somewhere below the last current seen, or never; what follows is not known",
      pl: "nikt nie zapisał końca napięcia granicznego: gdzieś poniżej ostatniego obserwowanego prądu albo nigdy; co następuje potem, nie wiadomo",
      de: "niemand hat das Ende seiner Ladeschlussspannung aufgezeichnet: irgendwo unter dem zuletzt gesehenen Strom oder nie; was folgt, ist nicht bekannt",
    },
    {
      en: "nobody recorded the end of its first voltage limit: somewhere below the last current seen, or never; what follows is not known",
      pl: "nikt nie zapisał końca pierwszego napięcia granicznego: gdzieś poniżej ostatniego obserwowanego prądu albo nigdy; co następuje potem, nie wiadomo",
      de: "niemand hat das Ende seiner ersten Ladeschlussspannung aufgezeichnet: irgendwo unter dem zuletzt gesehenen Strom oder nie; was folgt, ist nicht bekannt",
    },
    {
      en: "what it takes from the mains beside what it passes on was not measured",
      pl: "nie zmierzono, ile pobiera z sieci ponad to, co przekazuje dalej",
      de: "was es über das Weitergegebene hinaus aus dem Netz nimmt, wurde nicht gemessen",
    },
    {
      en: "whether a voltage or a time ends its soft start was not seen often enough",
      pl: "nie dość często obserwowano, czy łagodny start kończy napięcie, czy czas",
      de: "ob eine Spannung oder eine Zeit seinen Sanftanlauf beendet, war nicht oft genug zu sehen",
    },
    {
      en: "it paused in the middle of a charge; a forecast lets it go on without a pause",
      pl: "w środku ładowania zrobił przerwę; prognoza prowadzi ładowanie bez przerwy",
      de: "es pausierte mitten in einer Ladung; eine Hochrechnung lässt es ohne Pause weiterlaufen",
    },
    {
      en: "nobody recorded what ends its falling current, if anything does",
      pl: "nikt nie zapisał, co kończy malejący prąd, jeśli cokolwiek",
      de: "niemand hat aufgezeichnet, was seinen fallenden Strom beendet, falls etwas es tut",
    },
    {
      en: "no recording shows its voltage limit: the limit is taken from the label, or from what chargers usually have",
      pl: "żaden zapis nie pokazuje napięcia granicznego: przyjęto je z etykiety albo takie, jakie prostowniki zwykle mają",
      de: "keine Aufzeichnung zeigt seine Ladeschlussspannung: sie ist vom Typenschild genommen oder so, wie Ladegeräte sie meist haben",
    },
    {
      en: "how long it stays throttled was not recorded to its end",
      pl: "nie zapisano do końca, jak długo pozostaje zdławiony",
      de: "wie lange es gedrosselt bleibt, wurde nicht bis zum Ende aufgezeichnet",
    },

    // The reference case, and why a charge is not advised.
    {
      en: "a used flooded 12 V battery of {capacity} Ah, found at {density} kg/l (full: {full} kg/l), in a room of {temperature} °C",
      pl: "używany akumulator 12 V z ciekłym elektrolitem, {capacity} Ah, zastany przy {density} kg/l (pełny: {full} kg/l), w pomieszczeniu o temperaturze {temperature} °C",
      de: "eine gebrauchte 12-V-Nassbatterie mit {capacity} Ah, vorgefunden bei {density} kg/l (voll: {full} kg/l), in einem Raum von {temperature} °C",
    },
    {
      en: "its acid may be frozen: a frozen battery must not be charged; thaw it and look for cracks first",
      pl: "jego elektrolit może być zamarznięty: zamarzniętego akumulatora nie wolno ładować; najpierw rozmrozić i poszukać pęknięć",
      de: "ihre Säure könnte gefroren sein: Eine gefrorene Batterie darf nicht geladen werden; zuerst auftauen und nach Rissen sehen",
    },
    {
      en: "a sealed battery this flat needs its maker's own procedure, watched",
      pl: "tak rozładowany akumulator szczelny wymaga procedury swojego producenta, pod nadzorem",
      de: "eine so tief entladene verschlossene Batterie braucht das Verfahren ihres Herstellers, unter Aufsicht",
    },
    {
      en: "it goes up to {peak} V (12 V battery), and a sealed battery commonly gets no more than {limit} V: it dries out and may heat",
      pl: "dochodzi do {peak} V (akumulator 12 V), a akumulator szczelny zwykle dostaje nie więcej niż {limit} V: wysycha i może się nagrzewać",
      de: "es geht bis {peak} V (12-V-Batterie), und eine verschlossene Batterie bekommt üblicherweise höchstens {limit} V: Sie trocknet aus und kann sich erhitzen",
    },
    {
      en: "{current} A is more than such a battery should get ({most} A, {share} of its capacity)",
      pl: "{current} A to więcej, niż taki akumulator powinien dostać ({most} A, {share} pojemności)",
      de: "{current} A sind mehr, als eine solche Batterie bekommen sollte ({most} A, das {share}-fache ihrer Kapazität)",
    },
    // Why two chargers are not held against each other.
    {
      en: "it was tried on another kind of battery ({tried:text}, not {other:text})",
      pl: "wypróbowano go na akumulatorze innego rodzaju ({tried}, nie {other})",
      de: "es wurde an einer anderen Batterieart erprobt ({tried}, nicht {other})",
    },
    {
      en: "it was tried towards another target ({tried:name}, not {other:name})",
      pl: "wypróbowano go z innym celem ({tried}, nie {other})",
      de: "es wurde auf ein anderes Ziel hin erprobt ({tried}, nicht {other})",
    },
    {
      en: "its figure is {basis:basis}, the others' {other:basis}",
      pl: "jego wartość: {basis}, pozostałych: {other}",
      de: "sein Wert ist {basis}, die der anderen sind {other}",
    },
    {
      en: "its figure has another number of draws",
      pl: "jego wartość ma inną liczbę losowań",
      de: "sein Wert hat eine andere Zahl von Ziehungen",
    },
  ],
  basis: [
    { en: "measured", pl: "zmierzona", de: "gemessen" },
    { en: "projected", pl: "prognozowana", de: "hochgerechnet" },
    { en: "stated", pl: "podana", de: "angegeben" },
  ],
  stepEnd: [
    {
      en: "the current falls below {current} A, if ever",
      pl: "prąd spadnie poniżej {current} A, jeśli w ogóle",
      de: "der Strom unter {current} A fällt, falls überhaupt",
    },
    { en: "the current falls to {current:range} A", pl: "prąd spadnie do wartości {current} A", de: "der Strom auf {current} A fällt" },
    { en: "{time:range} h have passed", pl: "minie {time} h", de: "{time} h vergangen sind" },
    { en: "{time:range} s have passed", pl: "minie {time} s", de: "{time} s vergangen sind" },
  ],
} as const satisfies Chapter;

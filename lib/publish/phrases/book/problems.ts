/** Problems that are published as doubts: what was found, what was expected, how to mend it. Names of fields stay as a record writes them. */
import type { Chapter } from "../pattern.ts";

export const problems = {
  text: [
    // What a record leaves out.
    { en: "{column:name} without an instrument", pl: "{column} bez przyrządu", de: "{column} ohne Messgerät" },
    {
      en: 'the line "{role:name}:" under instruments in test.yaml',
      pl: "wiersz „{role}:” pod „instruments” w test.yaml",
      de: "die Zeile „{role}:“ unter „instruments“ in test.yaml",
    },
    {
      en: "name the instrument, so that the reading carries its accuracy",
      pl: "podać przyrząd, aby odczyt niósł jego dokładność",
      de: "das Messgerät nennen, damit die Ablesung dessen Genauigkeit trägt",
    },
    { en: "no accuracy for {quantity:quantityName}", pl: "brak dokładności dla {quantity}", de: "keine Genauigkeit für {quantity}" },
    {
      en: "measures: {quantity:name}: with percentOfReading, digits and resolution, or plusMinus",
      pl: "„measures: {quantity}:” z „percentOfReading”, „digits” i „resolution” albo „plusMinus”",
      de: "„measures: {quantity}:“ mit „percentOfReading“, „digits“ und „resolution“ oder „plusMinus“",
    },
    {
      en: "copy it from the data sheet; without it no claim can be judged",
      pl: "przepisać z karty katalogowej; bez tego nie da się ocenić żadnej deklaracji",
      de: "aus dem Datenblatt übernehmen; ohne sie lässt sich keine Zusage beurteilen",
    },
    {
      en: "target: densityAt25C: …, the density at which this battery counts as full",
      pl: "„target: densityAt25C: …”, gęstość, przy której ten akumulator uchodzi za pełny",
      de: "„target: densityAt25C: …“, die Säuredichte, bei der diese Batterie als voll gilt",
    },
    {
      en: "state it; connections, hours and cost to the target are absent without it",
      pl: "podać; bez tego nie ma podłączeń, godzin ani kosztu do celu",
      de: "angeben; ohne sie fehlen Ladegänge, Stunden und Kosten bis zum Ziel",
    },
    {
      en: 'the recording "{recording:quoted}" of no named recorder',
      pl: "zapis „{recording}” bez podanego rejestratora",
      de: "die Aufzeichnung „{recording}“ ohne genannten Rekorder",
    },
    {
      en: 'the line "recorder:" under instruments, or with the recording',
      pl: "wiersz „recorder:” pod „instruments” albo przy zapisie",
      de: "die Zeile „recorder:“ unter „instruments“ oder bei der Aufzeichnung",
    },
    {
      en: "name the recorder, so that its values carry an accuracy and its way of writing can be told",
      pl: "podać rejestrator, aby jego wartości niosły dokładność, a sposób zapisu był znany",
      de: "den Rekorder nennen, damit seine Werte eine Genauigkeit tragen und seine Schreibweise bekannt ist",
    },
    { en: '"{id:quoted}", a {kind:instrumentKind}', pl: "„{id}”, rodzaj: {kind}", de: "„{id}“, Art: {kind}" },
    { en: "a {kinds:instrumentKind+or} as {role:role}", pl: "rodzaj {kinds} w roli {role}", de: "Art {kinds} als {role}" },
    {
      en: "a {kinds:instrumentKind+or} as {role:role}, or an instrument that states how well it measures {quantity:measured}",
      pl: "rodzaj {kinds} w roli {role} albo przyrząd, który podaje, jak dokładnie mierzy: {quantity}",
      de: "Art {kinds} als {role} oder ein Messgerät, das angibt, wie genau es misst: {quantity}",
    },
    {
      en: "name the instrument that was used, or correct its kind in its record",
      pl: "podać użyty przyrząd albo poprawić rodzaj w jego opisie",
      de: "das benutzte Messgerät nennen oder seine Art in seinen Angaben berichtigen",
    },
    {
      en: "no step of {quantity:quantityOf} below {step} {unit:name}",
      pl: "brak kroku {quantity} poniżej {step} {unit}",
      de: "kein Schritt {quantity} unter {step} {unit}",
    },
    {
      en: "steps of {step} {unit:name}, as the recorder's record states",
      pl: "kroki {step} {unit}, jak podaje opis rejestratora",
      de: "Schritte von {step} {unit}, wie es die Angaben zum Rekorder sagen",
    },
    {
      en: "state what the file shows: measures: {quantity:name}: resolution: {step}",
      pl: "podać to, co pokazuje plik: „measures: {quantity}: resolution:” {step}",
      de: "angeben, was die Datei zeigt: „measures: {quantity}: resolution:“ {step}",
    },

    // Files.
    {
      en: "a log that no connection lists",
      pl: "zapis, którego nie wymienia żadne podłączenie",
      de: "eine Aufzeichnung, die kein Ladegang aufführt",
    },
    {
      en: "each log under the recordings of a connection in {folder:name}/test.yaml",
      pl: "każdy zapis pod „recordings” jakiegoś podłączenia w {folder}/test.yaml",
      de: "jede Aufzeichnung unter „recordings“ eines Ladegangs in {folder}/test.yaml",
    },
    {
      en: "list it, or say why it is left out: excluded: [{ what: {log:name}, why: … }]",
      pl: "wymienić go albo podać, dlaczego pominięto: excluded: [{ what: {log}, why: … }]",
      de: "aufführen oder sagen, warum sie weggelassen ist: excluded: [{ what: {log}, why: … }]",
    },
    { en: "a file that nothing reads", pl: "plik, którego nic nie czyta", de: "eine Datei, die nichts liest" },
    {
      en: "records in data/chargers, data/batteries, data/instruments and data/tests/<test>; words in content/*.md and content/reviews/*.md",
      pl: "opisy w data/chargers, data/batteries, data/instruments i data/tests/<test>; teksty w content/*.md i content/reviews/*.md",
      de: "Angaben in data/chargers, data/batteries, data/instruments und data/tests/<test>; Texte in content/*.md und content/reviews/*.md",
    },
    {
      en: "move it to where it belongs, or out of the workspace",
      pl: "przenieść na właściwe miejsce albo poza obszar roboczy",
      de: "dorthin verschieben, wohin sie gehört, oder aus dem Arbeitsbereich",
    },
    { en: 'words on a charger "{id:quoted}"', pl: "tekst o prostowniku „{id}”", de: "Text zu einem Ladegerät „{id}“" },
    { en: "a record data/chargers/{id:name}.yaml", pl: "opis data/chargers/{id}.yaml", de: "Angaben data/chargers/{id}.yaml" },
    {
      en: "rename the page after the charger it speaks of",
      pl: "nazwać stronę tak jak prostownik, o którym mówi",
      de: "die Seite nach dem Ladegerät benennen, von dem sie spricht",
    },
    { en: "{headings:name}, which is not read", pl: "{headings}, nieczytane", de: "{headings}, nicht gelesen" },
    { en: "{headings:name}, which are not read", pl: "{headings}, nieczytane", de: "{headings}, nicht gelesen" },
    {
      en: "a column of {quantity:quantityOf} among the headings",
      pl: "kolumna {quantity} wśród nagłówków",
      de: "eine Spalte {quantity} unter den Überschriften",
    },

    {
      en: "name it in the recorder's record: dialect: voltage: { name: … }, unless this recorder logs no voltage",
      pl: "podać ją w opisie rejestratora: dialect: voltage: { name: … }, chyba że ten rejestrator nie zapisuje napięcia",
      de: "in den Angaben zum Rekorder nennen: dialect: voltage: { name: … }, falls dieser Rekorder Spannung aufzeichnet",
    },
    {
      en: "name it in the recorder's record: dialect: current: { name: … }, unless this recorder logs no current",
      pl: "podać ją w opisie rejestratora: dialect: current: { name: … }, chyba że ten rejestrator nie zapisuje prądu",
      de: "in den Angaben zum Rekorder nennen: dialect: current: { name: … }, falls dieser Rekorder Strom aufzeichnet",
    },

    // Logs against what a battery, a visit or the recorder itself says.
    { en: 'rest_V "{text:quoted}"', pl: "rest_V „{text}”", de: "rest_V „{text}“" },
    { en: 'terminal_V "{text:quoted}"', pl: "terminal_V „{text}”", de: "terminal_V „{text}“" },
    {
      en: "1.5 to 3 V a cell, {voltage:quantity} for this battery",
      pl: "od 1,5 do 3 V na celę, dla tego akumulatora {voltage}",
      de: "1,5 bis 3 V je Zelle, für diese Batterie {voltage}",
    },
    {
      en: "check the reading, and the battery's cells",
      pl: "sprawdzić odczyt i liczbę cel akumulatora",
      de: "die Ablesung und die Zellenzahl der Batterie prüfen",
    },
    { en: "a visit at {at:name}", pl: "wizyta {at}", de: "ein Besuch um {at}" },
    {
      en: "visits within half a year of the connections, which run from {from:date} to {to:date}",
      pl: "wizyty w ciągu pół roku od podłączeń, które trwają od {from} do {to}",
      de: "Besuche innerhalb eines halben Jahres um die Ladegänge, die von {from} bis {to} reichen",
    },
    {
      en: "check the year of the visit, and the times of the connections in test.yaml",
      pl: "sprawdzić rok wizyty i czasy podłączeń w test.yaml",
      de: "das Jahr des Besuchs und die Zeiten der Ladegänge in test.yaml prüfen",
    },
    {
      en: '{logged:range} {unit:name} in lines {from} to {to}, and {column:name} "{text:quoted}" at {at:name}',
      pl: "{logged} {unit} w wierszach od {from} do {to}, a {column} „{text}” o {at}",
      de: "{logged} {unit} in den Zeilen {from} bis {to}, und {column} „{text}“ um {at}",
    },
    {
      en: "the log and the visit within {slack:quantity} of each other",
      pl: "zapis i wizyta zgodne do {slack}",
      de: "Aufzeichnung und Besuch höchstens {slack} auseinander",
    },
    {
      en: "check the clock of the recorder and the time of the visit, then the units and columns of both",
      pl: "sprawdzić zegar rejestratora i czas wizyty, potem jednostki i kolumny obu",
      de: "die Uhr des Rekorders und die Zeit des Besuchs prüfen, dann Einheiten und Spalten beider",
    },
    { en: "a first row at {at:instant} UTC", pl: "pierwszy wiersz o {at} UTC", de: "eine erste Zeile um {at} UTC" },
    {
      en: "rows from {from:instant} UTC to {to:instant} UTC",
      pl: "wiersze od {from} UTC do {to} UTC",
      de: "Zeilen von {from} UTC bis {to} UTC",
    },
    {
      en: "a start after the connection's on, {on:instant} UTC",
      pl: "początek po czasie „on” podłączenia, {on} UTC",
      de: "ein Beginn nach dem „on“ des Ladegangs, {on} UTC",
    },
    {
      en: "a start after the connection's on, {on:instant} UTC, and before its off, {off:instant} UTC",
      pl: "początek po czasie „on” podłączenia, {on} UTC, a przed „off”, {off} UTC",
      de: "ein Beginn nach dem „on“ des Ladegangs, {on} UTC, und vor seinem „off“, {off} UTC",
    },
    {
      en: "rows within the connection, {on:instant} UTC to {off:instant} UTC",
      pl: "wiersze w obrębie podłączenia, od {on} UTC do {off} UTC",
      de: "Zeilen innerhalb des Ladegangs, {on} UTC bis {off} UTC",
    },
    {
      en: "check the recorder's clock and the test's zone, or the times of the connection",
      pl: "sprawdzić zegar rejestratora i strefę testu albo czasy podłączenia",
      de: "die Uhr des Rekorders und die Zeitzone des Tests prüfen oder die Zeiten des Ladegangs",
    },
    {
      en: "check the recorder's clock and the test's zone, or the times of the connection; set {hours} h back the log would lie within the connection, as it does when a zone or summer time is wrong",
      pl: "sprawdzić zegar rejestratora i strefę testu albo czasy podłączenia; cofnięty o {hours} h zapis mieściłby się w podłączeniu, jak przy błędnej strefie lub czasie letnim",
      de: "die Uhr des Rekorders und die Zeitzone des Tests prüfen oder die Zeiten des Ladegangs; um {hours} h zurückgestellt läge die Aufzeichnung innerhalb des Ladegangs, wie bei falscher Zone oder Sommerzeit",
    },
    {
      en: "check the recorder's clock and the test's zone, or the times of the connection; set {hours} h forward the log would lie within the connection, as it does when a zone or summer time is wrong",
      pl: "sprawdzić zegar rejestratora i strefę testu albo czasy podłączenia; przesunięty o {hours} h do przodu zapis mieściłby się w podłączeniu, jak przy błędnej strefie lub czasie letnim",
      de: "die Uhr des Rekorders und die Zeitzone des Tests prüfen oder die Zeiten des Ladegangs; um {hours} h vorgestellt läge die Aufzeichnung innerhalb des Ladegangs, wie bei falscher Zone oder Sommerzeit",
    },
    {
      en: "{voltage} V in every row from line {from} to {to}, while {ah} Ah went in",
      pl: "{voltage} V w każdym wierszu od {from} do {to}, gdy wpłynęło {ah} Ah",
      de: "{voltage} V in jeder Zeile von {from} bis {to}, während {ah} Ah hineingingen",
    },
    {
      en: "a voltage that moves while a battery is charged below the charger's limit",
      pl: "napięcie, które się zmienia, gdy akumulator jest ładowany poniżej napięcia granicznego",
      de: "eine Spannung, die sich ändert, während eine Batterie unter der Ladeschlussspannung geladen wird",
    },
    {
      en: "check the voltage lead of the recorder; where it was off, list the rows under badRows of this recording in test.yaml",
      pl: "sprawdzić przewód napięciowy rejestratora; gdzie był odłączony, wpisać wiersze pod „badRows” tego zapisu w test.yaml",
      de: "die Spannungsleitung des Rekorders prüfen; wo sie ab war, die Zeilen unter „badRows“ dieser Aufzeichnung in test.yaml aufführen",
    },
    {
      en: "{current} A in every row from line {from} to {to}, while the voltage fell by {fall} V",
      pl: "{current} A w każdym wierszu od {from} do {to}, gdy napięcie spadło o {fall} V",
      de: "{current} A in jeder Zeile von {from} bis {to}, während die Spannung um {fall} V fiel",
    },
    {
      en: "a current that falls when the voltage does",
      pl: "prąd, który spada razem z napięciem",
      de: "ein Strom, der mit der Spannung fällt",
    },
    {
      en: "check the clamp or shunt of the recorder; where it was stuck, list the rows under badRows of this recording in test.yaml",
      pl: "sprawdzić cęgi albo bocznik rejestratora; gdzie się zaciął, wpisać wiersze pod „badRows” tego zapisu w test.yaml",
      de: "Stromzange oder Messwiderstand des Rekorders prüfen; wo er hing, die Zeilen unter „badRows“ dieser Aufzeichnung in test.yaml aufführen",
    },
    { en: "{rows:valueInLine+comma}", pl: "{rows}", de: "{rows}" },
    { en: "{rows:valueInLine+comma} and {more} more", pl: "{rows} i jeszcze {more}", de: "{rows} und {more} weitere" },
    {
      en: "a {quantity:quantityOf} from {from} to {to} {unit:name} in every row",
      pl: "wartość {quantity} od {from} do {to} {unit} w każdym wierszu",
      de: "ein Wert {quantity} von {from} bis {to} {unit} in jeder Zeile",
    },
    {
      en: "look at the rows; where the recorder slipped, list them under badRows of this recording in test.yaml",
      pl: "obejrzeć wiersze; gdzie rejestrator się pomylił, wpisać je pod „badRows” tego zapisu w test.yaml",
      de: "die Zeilen ansehen; wo der Rekorder daneben lag, sie unter „badRows“ dieser Aufzeichnung in test.yaml aufführen",
    },
    {
      en: "more current out of the battery than into it",
      pl: "więcej prądu z akumulatora niż do niego",
      de: "mehr Strom aus der Batterie als hinein",
    },
    { en: "a recording of a charge", pl: "zapis ładowania", de: "eine Aufzeichnung einer Ladung" },
    {
      en: "check chargingSign in the recorder's dialect, unless this is a discharge",
      pl: "sprawdzić „chargingSign” w opisie zapisu rejestratora, chyba że to rozładowanie",
      de: "„chargingSign“ in der Schreibweise des Rekorders prüfen, falls dies keine Entladung ist",
    },
    {
      en: "{voltage} V times {current} A beside {power} W in line {line}, {ratio} times the power in the middle of all rows",
      pl: "{voltage} V razy {current} A obok {power} W w wierszu {line}, {ratio} razy moc, licząc medianę wszystkich wierszy",
      de: "{voltage} V mal {current} A neben {power} W in Zeile {line}, im Median aller Zeilen das {ratio}-Fache der Leistung",
    },
    {
      en: "voltage times current equal to the recorder's own power within 5 %",
      pl: "napięcie razy prąd równe mocy z rejestratora z dokładnością 5 %",
      de: "Spannung mal Strom gleich der eigenen Leistung des Rekorders, auf 5 % genau",
    },
    {
      en: "check which columns are voltage and current, and their units, in the recorder's dialect",
      pl: "sprawdzić w opisie zapisu rejestratora, które kolumny to napięcie i prąd, oraz ich jednostki",
      de: "in der Schreibweise des Rekorders prüfen, welche Spalten Spannung und Strom sind, und ihre Einheiten",
    },
    {
      en: "{sum} Ah from the current and {counted} Ah from the recorder's own count, lines {from} to {to}",
      pl: "{sum} Ah z prądu i {counted} Ah z licznika rejestratora, wiersze od {from} do {to}",
      de: "{sum} Ah aus dem Strom und {counted} Ah aus der eigenen Zählung des Rekorders, Zeilen {from} bis {to}",
    },
    { en: "the two equal within 5 %", pl: "obie równe z dokładnością 5 %", de: "beide gleich, auf 5 % genau" },
    {
      en: "check units and columns of current and time in the recorder's dialect; a counter that is set to zero inside the log explains it too",
      pl: "sprawdzić w opisie zapisu rejestratora jednostki i kolumny prądu i czasu; wyjaśnia to też licznik zerowany w trakcie zapisu",
      de: "in der Schreibweise des Rekorders Einheiten und Spalten von Strom und Zeit prüfen; auch ein Zähler, der innerhalb der Aufzeichnung genullt wird, erklärt es",
    },
    {
      en: "a current that keeps its sign while the voltage stays where it is",
      pl: "prąd, który zachowuje znak, gdy napięcie pozostaje bez zmian",
      de: "ein Strom, der sein Vorzeichen behält, während die Spannung bleibt, wo sie ist",
    },
    {
      en: "check whether the clamp was turned round; a log of two signs cannot be read as one: list the rows under badRows, or split the recording",
      pl: "sprawdzić, czy cęgi nie zostały odwrócone; zapisu o dwóch znakach nie da się czytać jako jednego: wpisać wiersze pod „badRows” albo podzielić zapis",
      de: "prüfen, ob die Stromzange umgedreht wurde; eine Aufzeichnung mit zwei Vorzeichen lässt sich nicht als eine lesen: die Zeilen unter „badRows“ aufführen oder die Aufzeichnung teilen",
    },
    {
      en: "no current above {current} A, with a voltage that rises by {rise} V",
      pl: "brak prądu powyżej {current} A przy napięciu rosnącym o {rise} V",
      de: "kein Strom über {current} A, bei einer Spannung, die um {rise} V steigt",
    },
    {
      en: "more than {current} A into a battery of {capacity} Ah for such a rise",
      pl: "ponad {current} A do akumulatora {capacity} Ah przy takim wzroście",
      de: "mehr als {current} A in eine Batterie von {capacity} Ah für einen solchen Anstieg",
    },
    {
      en: "check the unit of current in the recorder's dialect: in amperes it would be {current} A",
      pl: "sprawdzić jednostkę prądu w opisie zapisu rejestratora: w amperach byłoby to {current} A",
      de: "die Einheit des Stroms in der Schreibweise des Rekorders prüfen: In Ampere wären es {current} A",
    },
  ],
  instrumentKind: [
    { en: "recorder", pl: "rejestrator", de: "Rekorder" },
    { en: "hydrometer", pl: "areometr", de: "Säureheber" },
    { en: "refractometer", pl: "refraktometr", de: "Refraktometer" },
    { en: "voltmeter", pl: "woltomierz", de: "Spannungsmesser" },
    { en: "clamp-meter", pl: "miernik cęgowy", de: "Stromzange" },
    { en: "battery-tester", pl: "tester akumulatorów", de: "Batterietester" },
    { en: "thermometer", pl: "termometr", de: "Thermometer" },
    { en: "energy-meter", pl: "licznik energii", de: "Energiezähler" },
    { en: "scale", pl: "waga", de: "Waage" },
  ],
  role: [
    { en: "recorder", pl: "rejestrator", de: "Rekorder" },
    { en: "hydrometer", pl: "areometr", de: "Säureheber" },
    { en: "voltmeter", pl: "woltomierz", de: "Spannungsmesser" },
    { en: "clampMeter", pl: "miernik cęgowy", de: "Stromzange" },
    { en: "batteryTester", pl: "tester akumulatorów", de: "Batterietester" },
    { en: "thermometer", pl: "termometr", de: "Thermometer" },
    { en: "energyMeter", pl: "licznik energii", de: "Energiezähler" },
    { en: "scale", pl: "waga", de: "Waage" },
  ],
  measured: [
    { en: "voltage", pl: "napięcie", de: "Spannung" },
    { en: "current", pl: "prąd", de: "Strom" },
    { en: "temperature", pl: "temperatura", de: "Temperatur" },
    { en: "density", pl: "gęstość", de: "Säuredichte" },
    { en: "crankingCurrent", pl: "prąd rozruchowy", de: "Kaltstartstrom" },
    { en: "energy", pl: "energia", de: "Energie" },
    { en: "weight", pl: "masa", de: "Gewicht" },
  ],
  quantityOf: [
    { en: "voltage", pl: "napięcia", de: "der Spannung" },
    { en: "current", pl: "prądu", de: "des Stroms" },
    { en: "temperature", pl: "temperatury", de: "der Temperatur" },
  ],
  valueInLine: [
    {
      en: "{before} A and then {after} A in line {line}",
      pl: "{before} A, a potem {after} A w wierszu {line}",
      de: "{before} A und dann {after} A in Zeile {line}",
    },
    {
      en: "{value:quantity} in line {line}",
      pl: "{value} w wierszu {line}",
      de: "{value} in Zeile {line}",
    },
  ],
} as const satisfies Chapter;

/** Claims: what was held against them, by which rule, and the first sentence a buyer reads. */
import type { Chapter, Phrase } from "../pattern.ts";
import { noStages } from "./shared.ts";

const reasons = [
  {
    en: "no recording shows a stretch in which the charger, and not the battery, limited the current",
    pl: "żaden zapis nie pokazuje odcinka, w którym prąd ograniczał prostownik, a nie akumulator",
    de: "keine Aufzeichnung zeigt einen Abschnitt, in dem das Ladegerät und nicht die Batterie den Strom begrenzte",
  },
  {
    en: "no recording reaches a voltage that the charger held",
    pl: "żaden zapis nie sięga napięcia, które prostownik utrzymywał",
    de: "keine Aufzeichnung reicht bis zu einer Spannung, die das Ladegerät hielt",
  },
  {
    en: "no recording reaches a float",
    pl: "żaden zapis nie sięga ładowania konserwującego",
    de: "keine Aufzeichnung reicht bis zur Erhaltungsladung",
  },
  { en: "no recording shows a charge", pl: "żaden zapis nie pokazuje ładowania", de: "keine Aufzeichnung zeigt eine Ladung" },
] as const satisfies readonly Phrase[];

/** What came of a claim; the other outcomes are verdicts as well, and stand there. */
const outcomes = [
  { en: "meets", pl: "spełnia", de: "erfüllt" },
  { en: "short of", pl: "nie dosięga", de: "bleibt darunter" },
  { en: "above", pl: "przekracza", de: "liegt darüber" },
] as const satisfies readonly Phrase[];

/** The first sentences a buyer reads, clause by clause: each alone, or several behind the name of a mode. */
const clauses = [
  {
    en: "gives the {claimed:quantity} on its label",
    pl: "daje {claimed}, jak na etykiecie",
    de: "liefert die {claimed} vom Typenschild",
  },
  {
    en: "gives {measured:quantity} of the {claimed:quantity} on its label",
    pl: "daje {measured} z {claimed} podanych na etykiecie",
    de: "liefert {measured} von den {claimed} auf dem Typenschild",
  },
  {
    en: "gives {measured:quantity} of the {claimed:quantity} on its label in {count} of {tests} tests",
    pl: "daje {measured} z {claimed} podanych na etykiecie w {count} z {tests} testów",
    de: "liefert {measured} von den {claimed} auf dem Typenschild in {count} von {tests} Tests",
  },
  {
    en: "gives {measured:quantity}, more than the {claimed:quantity} on its label",
    pl: "daje {measured}, więcej niż {claimed} na etykiecie",
    de: "liefert {measured}, mehr als die {claimed} auf dem Typenschild",
  },
  {
    en: "gives {measured:quantity}, more than the {claimed:quantity} on its label in {count} of {tests} tests",
    pl: "daje {measured}, więcej niż {claimed} na etykiecie, w {count} z {tests} testów",
    de: "liefert {measured}, mehr als die {claimed} auf dem Typenschild, in {count} von {tests} Tests",
  },
  {
    en: "whether it gives the {claimed:quantity} on its label cannot be told",
    pl: "nie da się rozstrzygnąć, czy daje {claimed} z etykiety",
    de: "ob es die {claimed} vom Typenschild liefert, lässt sich nicht sagen",
  },
  {
    en: "the {claimed:quantity} on its label was not put to the test",
    pl: "prądu {claimed} z etykiety nie poddano próbie",
    de: "die {claimed} vom Typenschild wurden nicht geprüft",
  },
  {
    en: "goes to {measured:quantity}, above the {claimed:quantity} stated",
    pl: "dochodzi do {measured}, powyżej podanych {claimed}",
    de: "geht bis {measured}, über die angegebenen {claimed} hinaus",
  },
  {
    en: "goes to {measured:quantity}, above the {claimed:quantity} stated in {count} of {tests} tests",
    pl: "dochodzi do {measured}, powyżej podanych {claimed}, w {count} z {tests} testów",
    de: "geht in {count} von {tests} Tests bis {measured}, über die angegebenen {claimed} hinaus",
  },
  {
    en: "stays at {measured:quantity}, short of the {claimed:quantity} stated",
    pl: "pozostaje przy {measured}, poniżej podanych {claimed}",
    de: "bleibt bei {measured}, unter den angegebenen {claimed}",
  },
  {
    en: "stays at {measured:quantity}, short of the {claimed:quantity} stated in {count} of {tests} tests",
    pl: "pozostaje przy {measured}, poniżej podanych {claimed}, w {count} z {tests} testów",
    de: "bleibt in {count} von {tests} Tests bei {measured}, unter den angegebenen {claimed}",
  },
  {
    en: "floats at {measured:quantity}, above the {claimed:quantity} stated",
    pl: "utrzymuje na koniec {measured}, powyżej podanych {claimed}",
    de: "hält danach {measured}, über den angegebenen {claimed}",
  },
  {
    en: "floats at {measured:quantity}, above the {claimed:quantity} stated in {count} of {tests} tests",
    pl: "utrzymuje na koniec {measured}, powyżej podanych {claimed}, w {count} z {tests} testów",
    de: "hält danach in {count} von {tests} Tests {measured}, über den angegebenen {claimed}",
  },
  {
    en: "floats at {measured:quantity}, short of the {claimed:quantity} stated",
    pl: "utrzymuje na koniec {measured}, poniżej podanych {claimed}",
    de: "hält danach {measured}, unter den angegebenen {claimed}",
  },
  {
    en: "floats at {measured:quantity}, short of the {claimed:quantity} stated in {count} of {tests} tests",
    pl: "utrzymuje na koniec {measured}, poniżej podanych {claimed}, w {count} z {tests} testów",
    de: "hält danach in {count} von {tests} Tests {measured}, unter den angegebenen {claimed}",
  },
  {
    en: "does not go through the charge characteristic stated",
    pl: "nie przechodzi podanej charakterystyki ładowania",
    de: "durchläuft die angegebene Ladekennlinie nicht",
  },
  {
    en: "brought the battery back to full density",
    pl: "przywrócił akumulatorowi pełną gęstość elektrolitu",
    de: "brachte die Batterie wieder auf volle Säuredichte",
  },
  {
    en: "brought the battery back to full density in {count} of {tests} tests",
    pl: "przywrócił akumulatorowi pełną gęstość elektrolitu w {count} z {tests} testów",
    de: "brachte die Batterie in {count} von {tests} Tests wieder auf volle Säuredichte",
  },
  {
    en: "brought the battery back to full density, read after the acid was mixed by hand",
    pl: "przywrócił akumulatorowi pełną gęstość elektrolitu, odczytaną po ręcznym wymieszaniu",
    de: "brachte die Batterie wieder auf volle Säuredichte, abgelesen nach Durchmischen von Hand",
  },
  {
    en: "brought the battery back to full density only after the acid was mixed by hand",
    pl: "przywrócił akumulatorowi pełną gęstość elektrolitu dopiero po ręcznym wymieszaniu",
    de: "brachte die Batterie erst nach Durchmischen der Säure von Hand wieder auf volle Säuredichte",
  },
  {
    en: "full density was read, but had not settled by the test's own rule",
    pl: "pełną gęstość odczytano, lecz według reguły testu jeszcze się nie ustaliła",
    de: "volle Säuredichte wurde abgelesen, stand nach der Regel des Tests aber noch nicht fest",
  },
  {
    en: "did not bring the battery back to full density, and will not as it goes",
    pl: "nie przywrócił akumulatorowi pełnej gęstości elektrolitu i w ten sposób nie przywróci",
    de: "brachte die Batterie nicht wieder auf volle Säuredichte und wird es so auch nicht",
  },
  {
    en: "did not bring the battery back to full density in this test",
    pl: "nie przywrócił w tym teście akumulatorowi pełnej gęstości elektrolitu",
    de: "brachte die Batterie in diesem Test nicht wieder auf volle Säuredichte",
  },
  {
    en: "did not bring the battery back to full density in any of {tests} tests",
    pl: "w żadnym z {tests} testów nie przywrócił akumulatorowi pełnej gęstości elektrolitu",
    de: "brachte die Batterie in keinem von {tests} Tests wieder auf volle Säuredichte",
  },
  {
    en: "full density cannot be read on this sealed battery",
    pl: "w tym szczelnym akumulatorze pełnej gęstości nie da się odczytać",
    de: "an dieser verschlossenen Batterie lässt sich die volle Säuredichte nicht ablesen",
  },
  {
    en: "holds a gassing voltage for days: do not leave it connected",
    pl: "całymi dniami utrzymuje napięcie gazowania: nie zostawiać podłączonego",
    de: "hält tagelang eine Gasungsspannung: nicht angeschlossen lassen",
  },
  {
    en: "lets go of a gassing voltage only after a day",
    pl: "schodzi z napięcia gazowania dopiero po dobie",
    de: "lässt erst nach einem Tag von einer Gasungsspannung ab",
  },
  { en: "do not leave it connected", pl: "nie zostawiać podłączonego", de: "nicht angeschlossen lassen" },
  {
    en: "by one voltmeter reading it should not stay connected",
    pl: "sądząc po jednym odczycie woltomierza, nie powinien pozostawać podłączony",
    de: "laut einer einzigen Ablesung am Spannungsmesser sollte es nicht angeschlossen bleiben",
  },
  {
    en: "by its forecast it should not stay connected at {temperatures:numbers} °C",
    pl: "według prognozy nie powinien pozostawać podłączony w temperaturze {temperatures} °C",
    de: "laut Hochrechnung sollte es bei {temperatures} °C nicht angeschlossen bleiben",
  },
  {
    en: "may stay connected, but may not keep the battery full",
    pl: "może pozostać podłączony, ale może nie utrzymać pełnego naładowania",
    de: "darf angeschlossen bleiben, hält die Batterie aber vielleicht nicht voll",
  },
  {
    en: "may stay connected, by the voltage it holds",
    pl: "może pozostać podłączony, sądząc po utrzymywanym napięciu",
    de: "darf angeschlossen bleiben, der gehaltenen Spannung nach",
  },
  {
    en: "what an instrument showed is in doubt",
    pl: "wskazania przyrządu są wątpliwe",
    de: "was ein Messgerät anzeigte, ist zweifelhaft",
  },
  {
    en: "what an instrument showed is in doubt in {count} of {tests} tests",
    pl: "wskazania przyrządu są wątpliwe w {count} z {tests} testów",
    de: "was ein Messgerät anzeigte, ist in {count} von {tests} Tests zweifelhaft",
  },
  {
    en: "the hydrometer probably reads off",
    pl: "areometr prawdopodobnie wskazuje błędnie",
    de: "der Säureheber zeigt wahrscheinlich falsch an",
  },
] as const satisfies readonly Phrase[];

export const claims = {
  text: [
    ...outcomes,
    ...reasons,
    ...noStages,
    // How a value was held against a claim.
    {
      en: "{held:held}; {decision:decision}",
      pl: "{held}; {decision}",
      de: "{held}; {decision}",
    },
    {
      en: "{held:held}; {decision:decision}; yet the maker does not say whether the voltage follows the temperature: {shift:shift}, if it does",
      pl: "{held}; {decision}; producent nie mówi jednak, czy napięcie zależy od temperatury: {shift}, jeśli tak jest",
      de: "{held}; {decision}; doch der Hersteller sagt nicht, ob die Spannung der Temperatur folgt: {shift}, falls sie es tut",
    },
    // Characteristic.
    {
      en: "the recording shows {shown:shown}",
      pl: "zapis pokazuje {shown}",
      de: "die Aufzeichnung zeigt {shown}",
    },
    {
      en: "the recording shows {shown:shown}, and ended before the charger did",
      pl: "zapis pokazuje {shown} i skończył się przed prostownikiem",
      de: "die Aufzeichnung zeigt {shown} und endete vor dem Ladegerät",
    },
    {
      en: "the recording shows {shown:shown}: it began late, or the battery was too full to show the beginning",
      pl: "zapis pokazuje {shown}: zaczął się późno albo akumulator był zbyt pełny, by pokazać początek",
      de: "die Aufzeichnung zeigt {shown}: Sie begann spät, oder die Batterie war zu voll, um den Anfang zu zeigen",
    },
    {
      en: "the maker names {claimed:name}; the recording shows {shown:shown}",
      pl: "producent podaje {claimed}; zapis pokazuje {shown}",
      de: "der Hersteller nennt {claimed}; die Aufzeichnung zeigt {shown}",
    },
    {
      en: "the maker names {claimed:name}; the recording shows {shown:shown}, and the limit was held for {hours} h without a change-over",
      pl: "producent podaje {claimed}; zapis pokazuje {shown}, a napięcie graniczne było utrzymywane przez {hours} h bez przełączenia",
      de: "der Hersteller nennt {claimed}; die Aufzeichnung zeigt {shown}, und die Ladeschlussspannung wurde {hours} h lang ohne Umschalten gehalten",
    },
    {
      en: "the recording ended before the charger did; a further stage may follow",
      pl: "zapis skończył się przed prostownikiem; może nastąpić dalszy etap",
      de: "die Aufzeichnung endete vor dem Ladegerät; eine weitere Phase kann folgen",
    },
    {
      en: "the battery's temperature was not read, so the claim is judged as for 25 °C; a charger that compensates holds more in the cold",
      pl: "temperatury akumulatora nie odczytano, więc deklarację oceniono jak dla 25 °C; prostownik z kompensacją utrzymuje na zimnie więcej",
      de: "die Temperatur der Batterie wurde nicht abgelesen, die Zusage ist wie für 25 °C beurteilt; ein kompensierendes Ladegerät hält in der Kälte mehr",
    },
    {
      en: "another test of this mode says: {others:outcome+comma}",
      pl: "inny test tego trybu mówi: {others}",
      de: "ein anderer Test dieser Betriebsart sagt: {others}",
    },
    { en: "another test says: {others:text+comma}", pl: "inny test mówi: {others}", de: "ein anderer Test sagt: {others}" },
    // Rules.
    {
      en: "guarded, w = U, k = {k}; {tolerance:tolerance}",
      pl: "z pasmem ochronnym, w = U, k = {k}; {tolerance}",
      de: "mit Schutzabstand, w = U, k = {k}; {tolerance}",
    },
    { en: "simple acceptance; {tolerance:tolerance}", pl: "akceptacja prosta; {tolerance}", de: "einfache Annahme; {tolerance}" },
    {
      en: "a claim is judged only where the test could have shown it",
      pl: "deklarację ocenia się tylko tam, gdzie test mógł ją pokazać",
      de: "eine Zusage wird nur beurteilt, wo der Test sie hätte zeigen können",
    },
    {
      en: "letters of DIN 41772, compared stage by stage",
      pl: "litery według DIN 41772, porównane etap po etapie",
      de: "Buchstaben nach DIN 41772, Phase für Phase verglichen",
    },
    {
      en: "held voltage inside the float window of this kind of battery: {window:window}",
      pl: "utrzymywane napięcie w zakresie napięcia konserwującego tego rodzaju akumulatora: {window}",
      de: "gehaltene Spannung im Fenster der Erhaltungsladung dieser Batterieart: {window}",
    },
    {
      en: "Too little was recorded to say what this charger does.",
      pl: "Zapisano zbyt mało, by powiedzieć, co robi ten prostownik.",
      de: "Es wurde zu wenig aufgezeichnet, um zu sagen, was dieses Ladegerät tut.",
    },
    ...clauses,
    {
      en: 'Mode "{mode:quoted}": {does:clause+semicolon}.',
      pl: "Tryb „{mode}”: {does}.",
      de: "Betriebsart „{mode}“: {does}.",
    },
    {
      en: "not tested: {count} of its {of} modes",
      pl: "nie przetestowano: {count} z {of} trybów",
      de: "nicht geprüft: {count} von {of} Betriebsarten",
    },
    {
      en: "By its forecast a month connected at {temperatures:numbers} °C keeps the battery above the float window: it costs water and life.",
      pl: "Według prognozy miesiąc podłączenia w temperaturze {temperatures} °C trzyma akumulator powyżej zakresu napięcia konserwującego: kosztuje to wodę i trwałość.",
      de: "Laut Hochrechnung liegt die Batterie in einem Monat am Ladegerät bei {temperatures} °C über dem Fenster der Erhaltungsladung: Das kostet Wasser und Lebensdauer.",
    },
  ],
  clause: clauses,
  outcome: [
    ...outcomes,
    { en: "cannot tell", pl: "nie da się ustalić", de: "nicht feststellbar" },
    { en: "not put to the test", pl: "nie poddano próbie", de: "nicht auf die Probe gestellt" },
  ],
  held: [
    {
      en: "{current} A was held for {window} s in {recording:file} while the charger limited the current",
      pl: "w {recording} prąd {current} A utrzymywał się przez {window} s, gdy ograniczał go prostownik",
      de: "{current} A wurden in {recording} {window} s lang gehalten, während das Ladegerät den Strom begrenzte",
    },
    { en: "{voltage} V is held", pl: "utrzymywane jest {voltage} V", de: "{voltage} V werden gehalten" },
    {
      en: "{voltage} V was held at the end of a stage of {hours} h in {recording:file}",
      pl: "pod koniec etapu trwającego {hours} h w {recording} utrzymywane było {voltage} V",
      de: "{voltage} V wurden am Ende einer Phase von {hours} h in {recording} gehalten",
    },
    {
      en: "{voltage} V was held at the end of a stage of {hours} h in {recording:file}, with the battery at {temperature:range} °C",
      pl: "pod koniec etapu trwającego {hours} h w {recording} utrzymywane było {voltage} V, z akumulatorem w temperaturze {temperature} °C",
      de: "{voltage} V wurden am Ende einer Phase von {hours} h in {recording} gehalten, mit der Batterie bei {temperature} °C",
    },
    {
      en: "{voltage} V was held at the end of a stage of {hours} h in {recording:file}; {shift:shift}, as the maker states",
      pl: "pod koniec etapu trwającego {hours} h w {recording} utrzymywane było {voltage} V; {shift}, jak podaje producent",
      de: "{voltage} V wurden am Ende einer Phase von {hours} h in {recording} gehalten; {shift}, wie der Hersteller angibt",
    },
  ],
  decision: [
    { en: "inside the tolerance", pl: "w granicach tolerancji", de: "innerhalb der Toleranz" },
    {
      en: "inside the tolerance by at least the expanded uncertainty (k = {k})",
      pl: "w granicach tolerancji z zapasem co najmniej niepewności rozszerzonej (k = {k})",
      de: "innerhalb der Toleranz, mit einem Abstand von mindestens der erweiterten Messunsicherheit (k = {k})",
    },
    { en: "below the lower limit", pl: "poniżej dolnej granicy", de: "unter der unteren Grenze" },
    {
      en: "below the lower limit by more than the expanded uncertainty (k = {k})",
      pl: "poniżej dolnej granicy o więcej niż niepewność rozszerzona (k = {k})",
      de: "um mehr als die erweiterte Messunsicherheit (k = {k}) unter der unteren Grenze",
    },
    { en: "above the upper limit", pl: "powyżej górnej granicy", de: "über der oberen Grenze" },
    {
      en: "above the upper limit by more than the expanded uncertainty (k = {k})",
      pl: "powyżej górnej granicy o więcej niż niepewność rozszerzona (k = {k})",
      de: "um mehr als die erweiterte Messunsicherheit (k = {k}) über der oberen Grenze",
    },
    {
      en: "nearer to a limit than the expanded uncertainty (k = {k}), so the measurement cannot tell",
      pl: "bliżej granicy niż niepewność rozszerzona (k = {k}), więc pomiar nie rozstrzyga",
      de: "näher an einer Grenze als die erweiterte Messunsicherheit (k = {k}); die Messung kann es nicht entscheiden",
    },
    {
      en: "no limit is stated, and a claim without a tolerance cannot be tested",
      pl: "nie podano granicy, a deklaracji bez tolerancji nie da się sprawdzić",
      de: "es ist keine Grenze angegeben, und eine Zusage ohne Toleranz lässt sich nicht prüfen",
    },
    { en: "a limit is not a number", pl: "granica nie jest liczbą", de: "eine Grenze ist keine Zahl" },
    { en: "the limits are crossed", pl: "granice są zamienione", de: "die Grenzen sind vertauscht" },
    { en: "no value was measured", pl: "nie zmierzono żadnej wartości", de: "kein Wert wurde gemessen" },
    {
      en: "the uncertainty of the value is not known",
      pl: "niepewność wartości nie jest znana",
      de: "die Unsicherheit des Werts ist nicht bekannt",
    },
    {
      en: "the coverage factor is not positive",
      pl: "współczynnik rozszerzenia nie jest dodatni",
      de: "der Erweiterungsfaktor ist nicht positiv",
    },
    {
      en: "the instrument's accuracy is not stated, so the value cannot be held against the claim",
      pl: "dokładności przyrządu nie podano, więc wartości nie da się odnieść do deklaracji",
      de: "die Genauigkeit des Messgeräts ist nicht angegeben; der Wert lässt sich nicht an der Zusage messen",
    },
    {
      en: "the meter's accuracy is not stated, so the value cannot be held against the window",
      pl: "dokładności miernika nie podano, więc wartości nie da się odnieść do zakresu",
      de: "die Genauigkeit des Messgeräts ist nicht angegeben; der Wert lässt sich nicht am Fenster messen",
    },
  ],
  tolerance: [
    {
      en: "the site's tolerance, {below} % below to {above} % above",
      pl: "tolerancja witryny, od {below} % poniżej do {above} % powyżej",
      de: "Toleranz dieser Website, {below} % darunter bis {above} % darüber",
    },
    {
      en: "the tolerance declared for this claim, {below} % below to {above} % above",
      pl: "tolerancja podana dla tej deklaracji, od {below} % poniżej do {above} % powyżej",
      de: "für diese Zusage erklärte Toleranz, {below} % darunter bis {above} % darüber",
    },
  ],
  shown: [
    {
      en: "{letters:name} ({stages:stage+inTurn}) in {recording:file}",
      pl: "{letters} ({stages}) w {recording}",
      de: "{letters} ({stages}) in {recording}",
    },
  ],
} as const satisfies Chapter;

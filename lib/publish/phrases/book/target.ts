/** How the target density was read, by which rule it counts, and where the density is going. */
import type { Chapter, Phrase } from "../pattern.ts";
import { conditions, noTarget } from "./shared.ts";

const outlooks = [
  {
    en: "the density levels off at about {level} kg/l, below the target of {goal}",
    pl: "gęstość ustala się na około {level} kg/l, poniżej wartości docelowej {goal}",
    de: "die Dichte läuft auf etwa {level} kg/l zu, unter dem Ziel von {goal}",
  },
  {
    en: "in the last {hours} h connected the density moved from {from} to {to} kg/l, {short} short of the target; to get there within {times} times the hours seen it would have moved by {needed}, which the hydrometer would have shown",
    pl: "w ostatnich {hours} h podłączenia gęstość zmieniła się z {from} na {to} kg/l, o {short} poniżej wartości docelowej; by ją osiągnąć w czasie {times} razy dłuższym od obserwowanego, musiałaby zmienić się o {needed}, co areometr by pokazał",
    de: "in den letzten {hours} h am Ladegerät änderte sich die Dichte von {from} auf {to} kg/l, {short} unter dem Ziel; um es im {times}-Fachen der gesehenen Stunden zu erreichen, hätte sie sich um {needed} ändern müssen, was der Säureheber gezeigt hätte",
  },
  {
    en: "one visit is too few to see where the density is going; {needed} are needed",
    pl: "jedna wizyta to za mało, by zobaczyć, dokąd zmierza gęstość; potrzeba {needed}",
    de: "ein Besuch ist zu wenig, um zu sehen, wohin die Dichte geht; {needed} sind nötig",
  },
  {
    en: "{visits} visits are too few to see where the density is going; {needed} are needed",
    pl: "liczba wizyt ({visits}) jest za mała, by zobaczyć, dokąd zmierza gęstość; potrzeba {needed}",
    de: "{visits} Besuche sind zu wenig, um zu sehen, wohin die Dichte geht; {needed} sind nötig",
  },
  {
    en: "between {from} and {to} h of connection went by, since nobody saw every end, so nothing can be projected",
    pl: "podłączenie trwało od {from} do {to} h, bo nie każdy koniec widziano, więc niczego nie da się prognozować",
    de: "es waren zwischen {from} und {to} h am Ladegerät, da nicht jedes Ende gesehen wurde; es lässt sich nichts hochrechnen",
  },
  {
    en: "between {from} and {to} h on charge went by, since nobody saw every end",
    pl: "ładowanie trwało od {from} do {to} h, bo nie każdy koniec widziano",
    de: "es waren zwischen {from} und {to} h Ladung, da nicht jedes Ende gesehen wurde",
  },
  {
    en: "no time on charge lies between the visits",
    pl: "między wizytami nie ma czasu ładowania",
    de: "zwischen den Besuchen liegt keine Ladezeit",
  },
  {
    en: "it would more likely than not take more than {hours} h, {times} times what was seen, or never come",
    pl: "raczej trwałoby to ponad {hours} h, {times} razy dłużej, niż obserwowano, albo nie nastąpiłoby nigdy",
    de: "eher würde es mehr als {hours} h dauern, das {times}-Fache des Gesehenen, oder nie so weit kommen",
  },
] as const satisfies readonly Phrase[];

const weights = {
  en: "{levelling} % of the weight lies on curves that level off, {straight} % on growth that is straight so far",
  pl: "{levelling} % wagi przypada na krzywe, które się wypłaszczają, {straight} % na wzrost jak dotąd prostoliniowy",
  de: "{levelling} % des Gewichts liegen auf Kurven, die abflachen, {straight} % auf bisher geradem Anstieg",
} as const satisfies Phrase;

const weighed = [
  weights,
  {
    en: "{weights:weights}; the end is open, since nothing is said beyond {hours} h, {times} times what was seen",
    pl: "{weights}; koniec jest otwarty, bo poza {hours} h, {times} razy dłużej, niż obserwowano, nic się nie mówi",
    de: "{weights}; das Ende ist offen, weil über {hours} h, das {times}-Fache des Gesehenen, hinaus nichts gesagt wird",
  },
] as const satisfies readonly Phrase[];

const ruleWords = [
  {
    en: "the test's stop rule asks for {asked:asked}; the readings that far apart differ: {values:readAtVisit+comma}",
    pl: "reguła zakończenia tego testu wymaga: {asked}; odczyty w takim odstępie się różnią: {values}",
    de: "die Abschlussregel dieses Tests verlangt {asked}; die Ablesungen in diesem Abstand unterscheiden sich: {values}",
  },
] as const satisfies readonly Phrase[];

export const target = {
  text: [
    ...noTarget,
    ...outlooks,
    ...ruleWords,
    ...conditions,
    ...weighed,
    { en: "projected {weighed:weighed}", pl: "prognoza: {weighed}", de: "hochgerechnet: {weighed}" },
    { en: "projected, not seen", pl: "prognoza, nie obserwacja", de: "hochgerechnet, nicht gesehen" },
    {
      en: "{construction:name} batteries have no access to the acid",
      pl: "akumulatory {construction} nie dają dostępu do elektrolitu",
      de: "{construction}-Batterien geben keinen Zugang zur Säure",
    },
    {
      en: "{density} kg/l at 25 °C was read after {before} at the visit before; it was reached between the two",
      pl: "odczytano {density} kg/l w 25 °C, po {before} na poprzedniej wizycie; osiągnięto to między nimi",
      de: "{density} kg/l bei 25 °C wurden abgelesen, nach {before} beim Besuch davor; erreicht wurde es dazwischen",
    },
    { en: "{density} kg/l at 25 °C was read", pl: "odczytano {density} kg/l w 25 °C", de: "{density} kg/l bei 25 °C wurden abgelesen" },
    {
      en: "no stop rule is stated: the first mean reading at the target counts",
      pl: "nie podano reguły zakończenia: liczy się pierwszy średni odczyt równy wartości docelowej",
      de: "keine Abschlussregel ist angegeben: Es zählt die erste mittlere Ablesung am Ziel",
    },
    {
      en: "counted as reached by: {rule:name}. The rule is stated in words only, so the first mean reading at the target counts; whether the rule was met the readings alone do not show",
      pl: "uznano za osiągnięte według reguły „{rule}”. Regułę podano tylko słowami, więc liczy się pierwszy średni odczyt równy wartości docelowej; czy reguła została spełniona, same odczyty nie pokazują",
      de: "als erreicht gezählt nach der Regel „{rule}“. Die Regel ist nur in Worten angegeben, es zählt also die erste mittlere Ablesung am Ziel; ob die Regel erfüllt war, zeigen die Ablesungen allein nicht",
    },
    {
      en: "the test's stop rule was met: {asked:asked}, at visits {visits:numbers}",
      pl: "reguła zakończenia tego testu została spełniona: {asked}, na wizytach {visits}",
      de: "die Abschlussregel dieses Tests war erfüllt: {asked}, bei den Besuchen {visits}",
    },
    {
      en: "the test's stop rule was met: {asked:asked}, at visits {visits:numbers}, as far as a scale in steps of {step} kg/l can show it",
      pl: "reguła zakończenia tego testu została spełniona: {asked}, na wizytach {visits}, na ile może to pokazać skala o działce {step} kg/l",
      de: "die Abschlussregel dieses Tests war erfüllt: {asked}, bei den Besuchen {visits}, soweit eine Skala in Schritten von {step} kg/l es zeigen kann",
    },
    {
      en: "the test's stop rule asks for {asked:asked}, and the visits do not show it: {why:notShown}",
      pl: "reguła zakończenia tego testu wymaga: {asked}, a wizyty tego nie pokazują: {why}",
      de: "die Abschlussregel dieses Tests verlangt {asked}, und die Besuche zeigen es nicht: {why}",
    },
    {
      en: "{moved:ruleMoved}. Visit {visit}, much later, reads the target again, and no visit shows that it had settled",
      pl: "{moved}. Znacznie późniejsza wizyta {visit} znów wykazuje wartość docelową, a żadna wizyta nie pokazuje, że się ustaliła",
      de: "{moved}. Der viel spätere Besuch {visit} zeigt das Ziel wieder, und kein Besuch zeigt, dass es zur Ruhe gekommen war",
    },
    {
      en: "visit {visit} decided: {conditions:conditions}",
      pl: "rozstrzygnęła wizyta {visit}: {conditions}",
      de: "entschieden hat Besuch {visit}: {conditions}",
    },
    {
      en: "the density read is within the hydrometer's error (±{error} kg/l) of the target",
      pl: "odczytana gęstość leży w granicach błędu areometru (±{error} kg/l) od wartości docelowej",
      de: "die abgelesene Dichte liegt nicht weiter vom Ziel entfernt als der Fehler des Säurehebers (±{error} kg/l)",
    },
    {
      en: "the acid had been mixed by hand at visit {visit}, which lifts what is read later",
      pl: "na wizycie {visit} elektrolit wymieszano ręcznie, co podnosi późniejsze odczyty",
      de: "bei Besuch {visit} war die Säure von Hand durchmischt worden, was spätere Ablesungen anhebt",
    },
    {
      en: "the test was given up on {on:date}: {why:name}",
      pl: "test przerwano {on}: „{why}”",
      de: "der Test wurde am {on} aufgegeben: „{why}“",
    },
    {
      en: "visit {visit}, after {connections:afterConnections} and {hours} h connected, {conditions:conditions}: {density} kg/l",
      pl: "wizyta {visit}, po {connections} i {hours} h podłączenia, {conditions}: {density} kg/l",
      de: "Besuch {visit}, nach {connections} und {hours} h am Ladegerät, {conditions}: {density} kg/l",
    },
    {
      en: "visit {visit}, after {connections:afterConnections} and {hours} h connected, {conditions:conditions}: {density} kg/l, {short} short of the target",
      pl: "wizyta {visit}, po {connections} i {hours} h podłączenia, {conditions}: {density} kg/l, o {short} poniżej wartości docelowej",
      de: "Besuch {visit}, nach {connections} und {hours} h am Ladegerät, {conditions}: {density} kg/l, {short} unter dem Ziel",
    },
    {
      en: "as found, without mixing: {verdict:text}; {why:text}",
      pl: "bez mieszania: {verdict}; {why}",
      de: "wie vorgefunden, ohne Durchmischen: {verdict}; {why}",
    },
  ],
  outlook: outlooks,
  weighed,
  weights: [weights],
  ruleMoved: ruleWords,
  asked: [
    {
      en: "{n} equal readings (within {within} kg/l) {minutes} min apart on charge",
      pl: "równe odczyty w liczbie {n} (do {within} kg/l), co {minutes} min podczas ładowania",
      de: "{n} gleiche Ablesungen (auf {within} kg/l) im Abstand von {minutes} min beim Laden",
    },
  ],
  readAtVisit: [{ en: "{density} at visit {visit}", pl: "{density} na wizycie {visit}", de: "{density} bei Besuch {visit}" }],
  notShown: [
    {
      en: "there is one reading at the target, and none after it",
      pl: "jest jeden odczyt równy wartości docelowej i żadnego po nim",
      de: "es gibt eine Ablesung am Ziel und danach keine",
    },
    {
      en: "the readings at the target were taken with no charge between them",
      pl: "między odczytami równymi wartości docelowej nie było ładowania",
      de: "zwischen den Ablesungen am Ziel lag keine Ladung",
    },
    {
      en: "visits {from} and {to} lie {apart:duration} of charge apart",
      pl: "wizyty {from} i {to} dzieli {apart} ładowania",
      de: "die Besuche {from} und {to} liegen {apart} Ladung auseinander",
    },
    {
      en: "visits {from} and {to} lie {apart:duration} of charge apart, and between them the density still rose by {rose} kg/l",
      pl: "wizyty {from} i {to} dzieli {apart} ładowania, a między nimi gęstość wzrosła jeszcze o {rose} kg/l",
      de: "die Besuche {from} und {to} liegen {apart} Ladung auseinander, und dazwischen stieg die Dichte noch um {rose} kg/l",
    },
    {
      en: "too few readings lie as far apart as that ({n} were taken from the target on)",
      pl: "zbyt mało odczytów dzieli taki odstęp (od wartości docelowej wykonano {n})",
      de: "zu wenige Ablesungen liegen so weit auseinander (ab dem Ziel wurden {n} gemacht)",
    },
  ],
} as const satisfies Chapter;

/** Stages of a charge: their names, what a recording shows in order, and the rule and numbers that decided. */
import type { Chapter, Phrase } from "../pattern.ts";

/** Each reason that a stretch was named for. */
const reasons = [
  {
    en: "the voltage comes down to the one that is held next",
    pl: "napięcie opada do tego, które jest potem utrzymywane",
    de: "die Spannung sinkt auf die, die danach gehalten wird",
  },
  {
    en: "the voltage comes down from the limit and a little current returns",
    pl: "napięcie opada od granicznego i wraca niewielki prąd",
    de: "die Spannung sinkt von der Ladeschlussspannung, und ein wenig Strom kehrt zurück",
  },
  {
    en: "after the limit a small current is held and the voltage climbs above it",
    pl: "po napięciu granicznym utrzymywany jest mały prąd, a napięcie rośnie ponad nie",
    de: "nach der Ladeschlussspannung wird ein kleiner Strom gehalten, und die Spannung steigt darüber",
  },
  { en: "a low current before the full one", pl: "mały prąd przed pełnym", de: "ein kleiner Strom vor dem vollen" },
  {
    en: "a lower current than the {current} A before and after",
    pl: "mniejszy prąd niż {current} A przedtem i potem",
    de: "ein kleinerer Strom als die {current} A davor und danach",
  },
  {
    en: "the current falls by more than a quarter while the voltage climbs",
    pl: "prąd spada o ponad jedną czwartą, gdy napięcie rośnie",
    de: "der Strom fällt um mehr als ein Viertel, während die Spannung steigt",
  },
  {
    en: "the current is held while the voltage moves",
    pl: "prąd jest utrzymywany, gdy napięcie się zmienia",
    de: "der Strom wird gehalten, während sich die Spannung ändert",
  },
  {
    en: "current falls as voltage climbs, so neither is held",
    pl: "prąd spada, gdy napięcie rośnie, więc żadne z nich nie jest utrzymywane",
    de: "der Strom fällt, während die Spannung steigt; keines von beiden wird gehalten",
  },
  {
    en: "the voltage is held below the {voltage} V reached before",
    pl: "napięcie jest utrzymywane poniżej osiągniętych przedtem {voltage} V",
    de: "die Spannung wird unter den zuvor erreichten {voltage} V gehalten",
  },
  {
    en: "the voltage is held below the {voltage} V reached before, and is not the last: a second limit",
    pl: "napięcie jest utrzymywane poniżej osiągniętych przedtem {voltage} V i nie jest ostatnie: drugie napięcie graniczne",
    de: "die Spannung wird unter den zuvor erreichten {voltage} V gehalten und ist nicht die letzte: eine zweite Ladeschlussspannung",
  },
  {
    en: "the voltage is held and the battery sets the current",
    pl: "napięcie jest utrzymywane, a prąd ustala akumulator",
    de: "die Spannung wird gehalten, und die Batterie bestimmt den Strom",
  },
  {
    en: "nothing moves at a lower current than before and after",
    pl: "nic się nie zmienia przy mniejszym prądzie niż przedtem i potem",
    de: "nichts ändert sich bei kleinerem Strom als davor und danach",
  },
  {
    en: "nothing moves, below the limit that is reached later",
    pl: "nic się nie zmienia, poniżej napięcia granicznego osiągniętego później",
    de: "nichts ändert sich, unter der später erreichten Ladeschlussspannung",
  },
  {
    en: "a still current, suddenly lower than the battery took at the same limit",
    pl: "stały prąd, nagle mniejszy, niż akumulator pobierał przy tym samym napięciu granicznym",
    de: "ein ruhiger Strom, plötzlich kleiner, als die Batterie bei derselben Ladeschlussspannung nahm",
  },
  {
    en: "the voltage is the wrong way round (danger: on the wrong posts a charger can spark and burn; mains off before a hand goes to the clamps)",
    pl: "napięcie jest odwrócone (niebezpieczeństwo: na zamienionych biegunach prostownik może iskrzyć i palić; najpierw wyłączyć zasilanie sieciowe, potem dotykać zacisków)",
    de: "die Spannung ist verpolt (Gefahr: an den falschen Polen kann ein Ladegerät Funken schlagen und brennen; erst das Netz abschalten, dann an die Klemmen greifen)",
  },
  {
    en: "no current, and a voltage below {voltage} V",
    pl: "brak prądu i napięcie poniżej {voltage} V",
    de: "kein Strom und eine Spannung unter {voltage} V",
  },
  {
    en: "no current until the battery has come down to the lower voltage",
    pl: "brak prądu, dopóki akumulator nie opadnie do niższego napięcia",
    de: "kein Strom, bis die Batterie auf die niedrigere Spannung gesunken ist",
  },
  {
    en: "the voltage is held, with a current too small to tell from none",
    pl: "napięcie jest utrzymywane prądem zbyt małym, by odróżnić go od zera",
    de: "die Spannung wird gehalten, mit einem Strom, der zu klein ist, um ihn von null zu unterscheiden",
  },
  {
    en: "no current for a while in the middle of a charge that then goes on",
    pl: "przez chwilę brak prądu w środku ładowania, które potem trwa dalej",
    de: "eine Weile kein Strom mitten in einer Ladung, die danach weitergeht",
  },
  {
    en: "no current that can be told from none",
    pl: "brak prądu, który dałoby się odróżnić od zera",
    de: "kein Strom, der sich von null unterscheiden ließe",
  },
  {
    en: "the voltage stays below the {voltage} V reached before, with little current",
    pl: "napięcie pozostaje poniżej osiągniętych przedtem {voltage} V, przy małym prądzie",
    de: "die Spannung bleibt unter den zuvor erreichten {voltage} V, bei wenig Strom",
  },
  { en: "current flows out of the battery", pl: "prąd płynie z akumulatora", de: "Strom fließt aus der Batterie" },
  {
    en: "the current goes up and down more than six times in ten minutes",
    pl: "prąd rośnie i spada więcej niż sześć razy w ciągu dziesięciu minut",
    de: "der Strom geht in zehn Minuten mehr als sechsmal auf und ab",
  },
  {
    en: "it waits, lifts the battery, and waits again",
    pl: "czeka, podnosi napięcie akumulatora i znów czeka",
    de: "es wartet, hebt die Batterie an und wartet wieder",
  },
  {
    en: "fits no kind; nearest are {nearest:nearestKind+semicolonAnd}",
    pl: "nie pasuje do żadnego rodzaju; najbliższe: {nearest}",
    de: "passt zu keiner Art; am nächsten kommen {nearest}",
  },
] as const satisfies readonly Phrase[];

const rounds = {
  en: "{times} times it waited without current until about {wakeV} V and charged to about {toV} V, once in {hours} h",
  pl: "{times} {times|raz|razy|razy} czekał bez prądu do około {wakeV} V i ładował do około {toV} V, raz na {hours} h",
  de: "{times}-mal wartete es ohne Strom bis etwa {wakeV} V und lud bis etwa {toV} V, einmal in {hours} h",
} as const satisfies Phrase;

export const stages = {
  text: [
    // Why a stage was named so.
    { en: "{because:stageBecause}: {told:change}", pl: "{because}: {told}", de: "{because}: {told}" },
    {
      en: "{because:stageBecause}: {told:change}; {remark:stageRemark}",
      pl: "{because}: {told}; {remark}",
      de: "{because}: {told}; {remark}",
    },
    // What a whole recording shows.
    { en: "no charging seen", pl: "nie widać ładowania", de: "keine Ladung zu sehen" },
    { en: "{first:stage} and {second:stage} in turn", pl: "na przemian {first} i {second}", de: "abwechselnd {first} und {second}" },
    { en: "{first:stage}, then {others:stage+inTurn}", pl: "{first}, potem {others}", de: "{first}, dann {others}" },
    { en: "constant current", pl: "stały prąd", de: "Konstantstrom" },
    { en: "constant voltage, current tapering", pl: "stałe napięcie, malejący prąd", de: "Konstantspannung, fallender Strom" },
    { en: "falling current, rising voltage", pl: "malejący prąd, rosnące napięcie", de: "fallender Strom, steigende Spannung" },
    { en: "constant current at high voltage", pl: "stały prąd przy wysokim napięciu", de: "Konstantstrom bei hoher Spannung" },
    { en: "soft start", pl: "łagodny start", de: "Sanftanlauf" },
    { en: "throttled current", pl: "zdławiony prąd", de: "gedrosselter Strom" },
    { en: "float", pl: "ładowanie konserwujące", de: "Erhaltungsladung" },
    { en: "pulses", pl: "impulsy", de: "Impulse" },
    // Why no taper is given.
    {
      en: "{points} points are too few for a decay; {needed} are needed",
      pl: "liczba punktów ({points}) jest za mała na krzywą zaniku; potrzeba {needed}",
      de: "{points} Punkte sind zu wenig für eine Abklingkurve; {needed} sind nötig",
    },
    {
      en: "no bend can be seen: over this span the decay looks like a straight line",
      pl: "nie widać zagięcia: na tym odcinku zanik wygląda jak prosta",
      de: "keine Krümmung zu erkennen: Über diese Spanne sieht das Abklingen wie eine Gerade aus",
    },
    {
      en: "one exponential misses the samples by {miss} A, more than {share} % of the fall of {fall} A",
      pl: "jedna krzywa wykładnicza mija się z próbkami o {miss} A, o więcej niż {share} % spadku o {fall} A",
      de: "eine Exponentialkurve verfehlt die Messpunkte um {miss} A, mehr als {share} % des Abfalls von {fall} A",
    },
    { en: "the current does not fall", pl: "prąd nie spada", de: "der Strom fällt nicht" },
    {
      en: "the drop is over within one sample",
      pl: "spadek kończy się w obrębie jednej próbki",
      de: "der Abfall ist innerhalb eines Messpunkts vorbei",
    },
    {
      en: "the time constant is uncertain by more than half of itself",
      pl: "niepewność stałej czasowej przekracza połowę jej wartości",
      de: "die Zeitkonstante ist um mehr als ihre Hälfte unsicher",
    },
    {
      en: "the times run backwards or stand still",
      pl: "czas się cofa albo stoi w miejscu",
      de: "die Zeiten laufen rückwärts oder stehen still",
    },
    { en: "the values are all alike", pl: "wszystkie wartości są jednakowe", de: "die Werte sind alle gleich" },
    { en: "the fit lost a parameter", pl: "dopasowanie zgubiło parametr", de: "die Anpassung verlor einen Parameter" },
    { en: "the fit lost an error", pl: "dopasowanie zgubiło błąd", de: "die Anpassung verlor einen Fehler" },
    {
      en: "lowest and highest sample of voltage and current in each of 150 equal stretches; no averages",
      pl: "najniższa i najwyższa próbka napięcia i prądu w każdym ze 150 równych odcinków; bez uśredniania",
      de: "niedrigster und höchster Messpunkt von Spannung und Strom in jedem von 150 gleichen Abschnitten; keine Mittelwerte",
    },
  ],
  stageBecause: [...reasons, rounds],
  stageWhy: [
    { en: "{because:stageBecause}: {told:change}", pl: "{because}: {told}", de: "{because}: {told}" },
    {
      en: "{because:stageBecause}: {told:change}; {remark:stageRemark}",
      pl: "{because}: {told}; {remark}",
      de: "{because}: {told}; {remark}",
    },
  ],
  stageRemark: [
    rounds,
    {
      en: "unsettled as it neared the voltage limit",
      pl: "niespokojny przy zbliżaniu się do napięcia granicznego",
      de: "unruhig beim Annähern an die Ladeschlussspannung",
    },
    {
      en: "the corner to the voltage limit is rounded",
      pl: "przejście do napięcia granicznego jest zaokrąglone",
      de: "der Übergang zur Ladeschlussspannung ist abgerundet",
    },
  ],
  change: [
    {
      en: "voltage {fromV} → {toV} V, current {fromA} → {toA} A",
      pl: "napięcie {fromV} → {toV} V, prąd {fromA} → {toA} A",
      de: "Spannung {fromV} → {toV} V, Strom {fromA} → {toA} A",
    },
    {
      en: "voltage {fromV} → {toV} V, current {fromA} → {toA} A, elasticity {elasticity}",
      pl: "napięcie {fromV} → {toV} V, prąd {fromA} → {toA} A, elastyczność {elasticity}",
      de: "Spannung {fromV} → {toV} V, Strom {fromA} → {toA} A, Elastizität {elasticity}",
    },
    {
      en: "voltage {fromV} → {toV} V, current {fromA} → {toA} A, elasticity over 100",
      pl: "napięcie {fromV} → {toV} V, prąd {fromA} → {toA} A, elastyczność ponad 100",
      de: "Spannung {fromV} → {toV} V, Strom {fromA} → {toA} A, Elastizität über 100",
    },
    {
      en: "from {fromA} to {toA} A, high {duty} % of the time, voltage {fromV} to {toV} V",
      pl: "od {fromA} do {toA} A, wysoki przez {duty} % czasu, napięcie od {fromV} do {toV} V",
      de: "von {fromA} bis {toA} A, {duty} % der Zeit hoch, Spannung {fromV} bis {toV} V",
    },
    {
      en: "about every {seconds} s, from {fromA} to {toA} A, high {duty} % of the time, voltage {fromV} to {toV} V",
      pl: "mniej więcej co {seconds} s, od {fromA} do {toA} A, wysoki przez {duty} % czasu, napięcie od {fromV} do {toV} V",
      de: "etwa alle {seconds} s, von {fromA} bis {toA} A, {duty} % der Zeit hoch, Spannung {fromV} bis {toV} V",
    },
  ],
  nearestKind: [
    {
      en: '"Constant voltage, current tapering", but the voltage changed by {changed} %, and held is up to {held} %',
      pl: "„Stałe napięcie, malejący prąd”, lecz napięcie zmieniło się o {changed} %, a za utrzymywane uchodzi do {held} %",
      de: "„Konstantspannung, fallender Strom“, aber die Spannung änderte sich um {changed} %, und als gehalten gilt bis {held} %",
    },
    {
      en: '"Constant current", but the current changed {changed} times as much as the voltage by ratio, and held is up to {held} times',
      pl: "„Stały prąd”, lecz prąd zmienił się względnie {changed} razy tak mocno jak napięcie, a za utrzymywany uchodzi do {held} razy",
      de: "„Konstantstrom“, aber der Strom änderte sich verhältnismäßig {changed}-mal so stark wie die Spannung, und als gehalten gilt bis zum {held}-Fachen",
    },
    {
      en: '"Rest", but {current} A flowed, and none is up to {none} A',
      pl: "„Spoczynek”, lecz płynęło {current} A, a za brak prądu uchodzi do {none} A",
      de: "„Ruhe“, aber {current} A flossen, und als stromlos gilt bis {none} A",
    },
    {
      en: '"Falling current, rising voltage", but the voltage fell by {fell} V along with the current, and should have risen',
      pl: "„Malejący prąd, rosnące napięcie”, lecz napięcie spadło o {fell} V razem z prądem, a powinno było wzrosnąć",
      de: "„Fallender Strom, steigende Spannung“, aber die Spannung fiel um {fell} V mit dem Strom und hätte steigen müssen",
    },
  ],
  stage: [
    { en: "soft start", pl: "łagodny start", de: "Sanftanlauf" },
    { en: "constant current", pl: "stały prąd", de: "Konstantstrom" },
    { en: "falling current, rising voltage", pl: "malejący prąd i rosnące napięcie", de: "fallender Strom bei steigender Spannung" },
    { en: "constant voltage, current tapering", pl: "stałe napięcie z malejącym prądem", de: "Konstantspannung mit fallendem Strom" },
    { en: "constant current at high voltage", pl: "stały prąd przy wysokim napięciu", de: "Konstantstrom bei hoher Spannung" },
    { en: "throttled current", pl: "zdławiony prąd", de: "gedrosselter Strom" },
    { en: "float", pl: "ładowanie konserwujące", de: "Erhaltungsladung" },
    { en: "pulses", pl: "impulsy", de: "Impulse" },
    { en: "switched off", pl: "wyłączenie", de: "abgeschaltet" },
    {
      en: "switched off and held between two voltages",
      pl: "wyłączenie i utrzymywanie między dwoma napięciami",
      de: "abgeschaltet und zwischen zwei Spannungen gehalten",
    },
    { en: "{first:stage} and {second:stage} in turn", pl: "na przemian {first} i {second}", de: "abwechselnd {first} und {second}" },
    { en: "topped up once", pl: "jedno doładowanie", de: "einmal nachgeladen" },
    { en: "topped up {times} times", pl: "doładowania: {times}", de: "{times}-mal nachgeladen" },
    { en: "no charging seen", pl: "nie widać ładowania", de: "keine Ladung zu sehen" },
  ],
} as const satisfies Chapter;

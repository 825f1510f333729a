import type { reference as source } from "../en/reference.tsx";

export const reference: typeof source = {
  method: {
    title: "Metoda",
    description: "Jak oblicza się każdą wielkość, jak ocenia się każdą deklarację i jakie reguły obowiązują w tej witrynie.",
    lead: (method, tool) =>
      `Na wejściu są surowe zapisy i odczyty; z nich oblicza się wielkości; z wielkości powstają ustalenia; strony pokazują wynik. Po drodze niczego nie wpisuje się ręcznie. To wersja metody ${method}, obliczona narzędziem w wersji ${tool}.`,
    kinds: { figure: "Wielkości", finding: "Ustalenia", claim: "Deklaracje", rule: "Reguły" },
    kind: { figure: "wielkość", finding: "ustalenie", claim: "deklaracja", rule: "reguła" },
    rules: "Reguły i stałe",
    rulesLead: "Każda jest domyślna albo ustalona przez tę witrynę; w obu wypadkach ustalono ją przed oceną deklaracji.",
    intervals: "Przedziały",
    intervalsNote:
      "Wartość taka jak 5,84 ± 0,12 A ma przedział, w którym wartość prawdziwa leży z prawdopodobieństwem 95 %, obliczony z dokładności przyrządu, jego rozdzielczości i próbkowania. Przedział podaje się z dwiema cyframi, a wartość do tego samego miejsca (JCGM 100:2008, 7.2.6). Gdy przedział jest z jednej strony szerszy, podaje się oba jego końce. Gdy żadnego nie da się obronić, nie podaje się żadnego.",
    noRules: "Nie wymieniono reguł.",
    rulesCaption: "Reguły obowiązujące w tej witrynie",
    columns: { rule: "Reguła", value: "Wartość", setBy: "Kto ustalił", source: "Źródło" },
    thisSite: "ta witryna",
    byDefault: "domyślnie",
    all: "Wszystkie metody i reguły",
    facts: { kind: "Rodzaj", unit: "Jednostka", version: "Metoda i wersja", source: "Źródło", checked: "Sprawdzono względem" },
    noUnit: "brak",
    notChecked: "jeszcze żadnego źródła zewnętrznego",
  },

  data: {
    title: "Dane",
    description: "Wyniki jako JSON i CSV, surowe pliki w postaci z rejestratorów oraz ich sumy SHA-256.",
    lead: (licence) =>
      `Każda strona powstaje z poniższych plików i z niczego innego. Surowe pliki publikuje się bajt po bajcie tak, jak je przekazano. Licencja danych i tekstów: ${licence ?? "nie podano"}.`,
    index: (version) => `: porównanie, metody, reguły i każdy plik wejściowy ze skrótem (wersja formatu ${version}).`,
    comparison: ": porównanie jako tabela, jedna wielkość w wierszu.",
    dataPackage: ": wszystkie pliki witryny ze skrótami, jako Data Package.",
    citation: ": jak cytować witrynę; ",
    quote: "jak cytować wynik",
    byTest: "Według testów",
    noTest: "Nie opublikowano jeszcze żadnego testu.",
    caption: "Pliki każdego testu",
    columns: { test: "Test", everything: "Wszystko", results: "Wyniki", figures: "Wielkości", digests: "Skróty surowych plików" },
    byCharger: "Według prostowników",
    csv: "Postać plików CSV",
    csvNote:
      "UTF-8, przecinki między polami, kropka jako znak dziesiętny, jednostka we własnej kolumnie, brakujące wartości puste, a obok rodzaj braku i jego powód. Tekst, który arkusz mógłby wziąć za formułę, zaczyna się apostrofem; liczb się nie zmienia. Pola są po angielsku, jak format publiczny.",
    digests: "Co pokazują skróty",
    digestsNote:
      "Skrót SHA-256 pokazuje, że plik jest tym, który opublikowano. Nie pokazuje, że odczyt był prawidłowy: o tym mówią przyrządy, daty ich wzorcowania i wątpliwości wypisane na stronie każdego testu.",
  },

  signs: {
    title: "Co oznaczają znaki",
    description: "Znaki, rodzaje braku, pasek dowodów, narysowane deklaracje i litery charakterystyki ładowania wraz ze znaczeniem.",
    lead: "Żaden znak nie opiera się na samym kolorze: każdy ma własny kształt i słowo obok.",
    columns: { sign: "Znak", meaning: "Znaczenie" },
    outcomes: "Wyniki deklaracji",
    outcomesCaption: "Pięć wyników",
    outcomeMeanings: {
      meets: "wartość zmierzona mieści się w tolerancji deklaracji co najmniej o własną niepewność",
      "short of": "poniżej tolerancji o więcej niż niepewność",
      above: "powyżej tolerancji o więcej niż niepewność",
      "cannot tell": "bliżej granicy niż wynosi niepewność: pomiar nie rozstrzyga",
      "not put to the test": "nic zmierzonego nie dotyczy deklaracji; obok podano, co by ją sprawdziło",
    },
    findings: "Ustalenia",
    findingsCaption: "Jak waży ustalenie",
    weightMeanings: {
      good: "przemawia za prostownikiem",
      bad: "przemawia przeciw niemu",
      caution: "trzeba na to uważać, zanim się go użyje albo zaufa wartości",
      unsure: "dowody tego nie rozstrzygają",
      untested: "nikt tego nie próbował",
      note: "ani za, ani przeciw",
    },
    absent: "Czego brakuje",
    absentLead: "Brak wartości nigdy nie jest zerem ani pustym miejscem.",
    absentCaption: "Rodzaje braku",
    absenceMeanings: {
      "not recorded": "zdarzyło się, a żaden rejestrator tego nie widział",
      "not measured": "nikt nie wykonał odczytu",
      "not stated": "opis o tym nie mówi",
      "not reached": "test nie doszedł tak daleko",
      "not applicable": "tu nie ma to sensu",
      "cannot tell": "zbadano, a dowody nie pozwalają podać liczby",
    },
    claims: "Deklaracja wobec pomiaru",
    claimsCaption: "Narysowane deklaracje",
    strip: "Pasek dowodów",
    stripLead:
      "Test od pierwszego do ostatniego zdarzenia, w trzech rozmiarach. To, czego nie widziano, zajmuje tyle miejsca co to, co widziano.",
    letters: "Charakterystyka ładowania w literach",
    lettersLead: (whole, off) => (
      <>
        Litery według DIN 41772, w kolejności działania prostownika: {whole} to prąd, potem granica, potem przełączenie na niższą granicę;{" "}
        {off} na końcu to prostownik, który się wyłącza.
      </>
    ),
    stagesCaption: "Etapy i ich litery",
    stageMeanings: {
      "soft-start": "Najpierw mały prąd, przed pełnym, gdy napięcie akumulatora jest jeszcze niskie.",
      "constant-current": "Prostownik utrzymuje prąd, a napięcie akumulatora rośnie.",
      drooping: "Prąd maleje, gdy napięcie akumulatora rośnie: prostownik nie reguluje żadnego z nich.",
      "constant-voltage": "Prostownik utrzymuje napięcie graniczne, a akumulator pobiera coraz mniej.",
      "finishing-current":
        "Po granicy prostownik utrzymuje mały prąd i pozwala napięciu wzrosnąć ponad granicę, by gazowanie wymieszało elektrolit.",
      throttled: "Prostownik przez pewien czas utrzymuje mniejszy prąd niż wcześniej, jak taki, który się zagrzał, a potem wraca.",
      "on-off-holding": "Prostownik czeka, aż napięcie opadnie do dolnego progu, ładuje do górnego i znów czeka.",
      float: "Po osiągnięciu granicy utrzymywane jest niższe napięcie, przy małym prądzie.",
      pulses: "Prąd raz po raz załącza się i wyłącza.",
      rest: "Brak prądu ładowania; napięcie akumulatora opada do spoczynkowego.",
      interrupted: "Przez pewien czas brak prądu, w środku ładowania, które potem trwało dalej.",
      discharge: "Prąd płynie z akumulatora.",
      "no-battery": "Brak prądu i prawie brak napięcia: zaciski albo przewody rejestratora były odłączone od akumulatora.",
      reversed:
        "Napięcie ujemne: zaciski lub rejestrator były na niewłaściwych biegunach. Niebezpieczeństwo: tak podłączony prostownik może się spalić albo iskrzyć.",
      unexplained: "Nie pasuje do żadnego rodzaju.",
    },
    numbers: "Liczby",
    numbersCaption: "Jak zapisuje się liczby",
    even: "wartość prawdziwa leży między tymi końcami z prawdopodobieństwem 95 %",
    uneven: "to samo, gdy końce nie leżą równo po obu stronach wartości",
    projected: "obliczona przez model z pomiarów, niewidziana na stanowisku",
    stated: "podana przez kogoś, na przykład cena",
    tie: "w posortowanej tabeli: nie da się odróżnić od wiersza powyżej",
    nothingClaimed: "producent niczego takiego nie obiecuje, więc nie ma czego oceniać",
    example: "Przykład.",
    small: "To samo w małej postaci, jak w porównaniu; luka w zapisie przerywa linię:",
    smallExample: "Przykład małego przebiegu z luką",
    absentNumber: "brak wartości i dlaczego",
    figureLead: "Wielkość z metodą i miejscami w plikach, na których się opiera, wygląda tak:",
    twoFigures: "Przykład dwóch wielkości",
    findingHeading: "Ustalenie, wątpliwość, ostrzeżenie",
    findingLead: "Ustalenie mówi, co by je rozstrzygnęło, gdy jest otwarte, i rozwija swoje powody; pasek z boku to wątpliwość:",
    doubtLead: "To, co kontrole znalazły w pliku, stoi z wierszem i kolumną:",
    cautionLead: "Tam, gdzie ktoś mógłby chwycić za zaciski, i wszędzie, gdzie akumulator jest szczelny:",
    madeUp: "Wszystko, co zmyślono na potrzeby pokazu, ma przy tytule ten znak:",
  },

  notFound: {
    title: "Nie ma takiej strony",
    description: "Ten adres w tej witrynie donikąd nie prowadzi.",
    lead: "Ten adres donikąd nie prowadzi. Adresy opublikowanych wyników nigdy się nie zmieniają, więc w odnośniku może być literówka.",
    all: "Zobacz wszystkie zbadane prostowniki",
  },

  writtenBy: (name) => `Autor: ${name}`,
  feeds: {
    ofCharger: (charger) => `Zmiany wyniku: ${charger}`,
    ofSite: (site) => `Wyniki i sprostowania: ${site}`,
  },
};

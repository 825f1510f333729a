import type { test as source } from "../en/test.tsx";
import { polishForm } from "../plural.ts";

export const test: typeof source = {
  statuses: {
    reached: "Docelowa gęstość została osiągnięta",
    "not reached": "Docelowej gęstości nie osiągnięto",
    "not known": "Nie wiadomo, czy docelowa gęstość została osiągnięta",
    abandoned: "Test przerwano przed osiągnięciem celu",
    "no target": "Docelowej gęstości nie wyznaczono",
  },
  sections: {
    findings: "Ustalenia",
    witnesses: "Konfrontacja świadków",
    figures: "Wielkości",
    density: "Gęstość elektrolitu",
    connections: "Podłączenia",
    recordings: "Zapisy",
    readings: "Odczyty",
    claims: "Deklaracje",
    doubts: "Wątpliwości",
    conditions: "Jak testowano",
    downloads: "Do pobrania",
  },
  description: (charger, mode, battery, status) => `${charger}, ${mode}, akumulator: ${battery}. ${status}.`,
  onBattery: (charger, mode, battery) => (
    <>
      {charger}, tryb „{mode}”, akumulator: {battery}
    </>
  ),
  targetAt25C: (density) => `${density} kg/l w 25 °C`,
  witnessesHeading: "Czy świadkowie są zgodni?",
  figuresHeading: "Wielkości całego testu",
  figuresCaption: "Każda z przedziałem, metodą i dowodem",
  nothingRecorded: "Niczego nie zapisano; wykonano tylko odczyty.",
  claimsCaption: "Deklaracje ocenione tym testem",
  noDoubts: "Kontrole nie zgłosiły wątpliwości co do plików tego testu.",
  reachedBy: "Cel uznaje się za osiągnięty według reguły:",
  ruleInNumbers: "reguła liczbowa",
  stopNumbers: (readings, within, apart) =>
    ` (${readings} ${polishForm(readings, "odczyt równy", "odczyty równe", "odczytów równych")} z dokładnością do ${within}, co ${apart})`,
  sealed: "Akumulator jest szczelny, więc do elektrolitu nie ma dostępu.",
  noDensity: "Gęstości nie odczytano.",
  densityCaption: "Gęstość elektrolitu w 25 °C",
  densityNote: (readings) => (
    <>
      Romby to odczyty z przedziałami 95 %; linia kropkowana tylko je łączy, nikt nie patrzył pomiędzy nimi. Wartości podano w części{" "}
      {readings("Odczyty")}.
    </>
  ),
  connections: {
    caption: "Podłączenia, od założenia do zdjęcia zacisków",
    columns: {
      connection: "Podłączenie",
      on: "Początek",
      off: "Koniec",
      ended: "Jak się skończyło",
      recordings: "Zapisy",
      note: "Uwaga",
    },
    notSeen: "nie widziano",
    nothingRecorded: "niczego nie zapisano",
    figures: "Wielkości każdego podłączenia",
    name: (number) => `Podłączenie ${number}`,
  },
  leftOut: "Co pominięto i dlaczego",
  battery: (name) => `Akumulator: ${name}`,
  revisions: "Zmiany",
  noRevisions: "Brak zmian od publikacji.",
  noticedBy: (name) => `; kto zauważył: ${name}`,
  downloads: {
    everything: "Wszystko z tego testu w jednym pliku, zip",
    everythingNote: ": wyniki, opisy i surowe pliki, z których można odtworzyć każdą wartość.",
    json: "Wszystkie wyniki tego testu, JSON",
    csv: "Wszystkie wielkości tego testu, CSV",
    sums: (command) => (
      <>
        : polecenie {command} uruchomione obok niego pokazuje, że żaden surowy plik się nie zmienił. Dowodzi, że pliki są te same, a nie że
        odczyt był prawidłowy.
      </>
    ),
    caption: "Pliki w postaci, w jakiej je przekazano",
    columns: { file: "Plik", what: "Co to jest", size: "Rozmiar" },
  },

  recording: {
    fromTo: (start, end) => `${start} do ${end}`,
    rawFile: "surowy plik",
    lettersMayGoOn: "Zapis skończył się, zanim skończył prostownik, więc liter może być więcej.",
    noSamples: "Nie ma próbek do narysowania.",
    numbers: "Numery i cieniowanie to etapy z tabeli poniżej",
    gapsDrawn: "; kropkowane pola to luki w zapisie, których się nie uzupełnia",
    drawn: "Rysunek:",
    figures: (recording) => `Wielkości zapisu ${recording}`,
    endedBy: "Co zakończyło zapis:",
    notTheEnd: "Jego koniec nie jest końcem ładowania.",
    gaps: "Luki w zapisie:",
    gap: (length, from, first, last) => `${length} od ${from} (wiersze ${first}–${last})`,
    readAs: "Jak odczytano ten plik",
    rows: (lines, samples, blank, excluded, empty) =>
      `Wierszy: ${lines}; próbek: ${samples}, pustych: ${blank}, wykluczonych: ${excluded}, bez wartości: ${empty}.`,
    readBack: "Odczytano:",
  },

  stages: {
    none: "W tym zapisie nie znaleziono etapów.",
    caption: (recording) => `Etapy zapisu ${recording}`,
    columns: {
      stage: "Etap",
      from: "Od",
      lasts: "Trwa",
      voltage: "Napięcie",
      current: "Prąd",
      charge: "Ładunek, energia",
      limitedBy: "Prąd ogranicza",
      why: "Dlaczego",
    },
    letter: (letter) => `litera ${letter} · `,
    spread: (spread) => `, rozrzut ${spread}`,
    taper: (level, tau, interval, end, toCome) =>
      `Prąd maleje w kierunku ${level} ze stałą czasową ${tau} (${interval}); pod koniec etapu płynęło ${end}, a powyżej tego poziomu miało jeszcze wpłynąć około ${toCome}.`,
    noTaper: "Bez stałej czasowej:",
  },

  readings: {
    none: "Nie wykonano odczytów.",
    caption: "Odczyty, jedna wizyta w wierszu",
    visit: "Wizyta",
    noted: "Zanotowano",
    evidence: "Dowód",
    before: (connections) => `wcześniej ${connections} ${polishForm(connections, "podłączenie", "podłączenia", "podłączeń")}`,
    charger: { connected: "Prostownik zastano podłączony.", disconnected: "Prostownik zastano odłączony." },
    mixed: "Elektrolit wymieszano przed odczytem.",
    notMixed: "Elektrolitu nie wymieszano przed odczytem.",
  },

  examination: {
    notExamined: "Odczytów nie udało się skonfrontować:",
    model: (how) => <>Model waży wszystkie odczyty łącznie: {how("jak, z każdym założeniem")}.</>,
    chart: "Stan naładowania akumulatora według każdego świadka z osobna i wszystkich razem",
    chartNote:
      "Każdy z przedziałem 95 %. Gdzie znaki jednej wizyty się rozchodzą, świadkowie są niezgodni, a wyjaśnienia poniżej mówią dlaczego.",
    inWords: "Słowami",
    cannotShow: "Czego ci świadkowie nie mogą pokazać",
    assumed: "Przyjęte z braku zapisu",
    sideBySide: "Świadkowie obok siebie: stan naładowania, %, z przedziałami 95 %",
    columns: { visit: "Wizyta", together: "Wszyscy razem", top: "Góra elektrolitu poniżej średniej", topShort: "Góra poniżej średniej" },
    visit: (number) => `Wizyta ${number}`,
    causes: "Co by to wyjaśniało",
    causeColumns: { explanation: "Wyjaśnienie", meaning: "Co to znaczy", before: "Przed odczytami", after: "Po nich" },
    between: "Ładunek między wizytami, z przedziałami 95 %",
    betweenColumns: {
      between: "Między",
      taken: "Płyty przyjęły",
      unrecorded: "Nikt nie zapisał",
      gas: "Część, która poszła w gaz",
      gasShort: "W gaz",
    },
    visits: (from, to) => `Wizyty ${from} i ${to}`,
    noCharge: "ładunek nie płynął",
    noFurther: "Żaden pojedynczy dalszy odczyt nie rozróżniłby lepiej tych wyjaśnień.",
    bits: (bits) => `(oczekiwane ${bits} bita)`,
  },
};

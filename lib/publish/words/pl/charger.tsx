import { withUnit } from "../../../units/format.ts";
import type { charger as source } from "../en/charger.tsx";
import { polishForm } from "../plural.ts";

export const charger: typeof source = {
  sections: {
    claims: "Czy robi to, co obiecuje?",
    time: "Jak długo to trwa?",
    cost: "Ile to kosztuje?",
    safe: "Czy można go bezpiecznie zostawić podłączonego?",
    battery: "Do jakiego akumulatora pasuje?",
    "not-seen": "Czego nie widziano",
    words: "Słowo recenzenta",
    evidence: "Dowody",
    disclosures: "Jawność i sprostowania",
  },
  makerNotStated: "Producenta nie podano",
  priceNotStated: "ceny nie podano",
  priced: (amount, where, on) => `${amount}${where === null ? "" : `, ${where}`}, ${on ?? "bez podanej daty"}`,
  noTime: "Żaden test nie mówi jeszcze, jak długo to trwa.",
  figures: "Wielkości tego prostownika",
  noPrice: "Ceny nie podano.",
  notLeftOn: "Żaden test nie mówi, co robi, gdy pozostaje podłączony.",
  nothingMissing: "Nie brakuje niczego, co te testy miały zobaczyć.",
  nothingWritten: "Recenzent nie napisał nic o tym prostowniku.",
  by: (name) => `, ${name}`,
  elsewhere: "Ten wynik gdzie indziej",
  card: "Karta do wydruku na ladę sklepową",
  quote: "Zacytuj lub osadź ten wynik",
  versions: "Wersje tego wyniku",
  asJson: "Wszystkie wyniki tego prostownika, JSON",

  mode: (name) => `Tryb „${name}”`,
  lettersMayGoOn: "Żaden zapis nie trwał aż do końca ładowania, więc liter może być więcej.",
  asRecorded: (recording, test) => `Według zapisu ${recording} z testu ${test}.`,
  drawn: "Napięcie to linia ciągła, prąd przerywana, każde we własnej skali; etapy mają jedną szerokość, niezależnie od czasu trwania.",
  moreStages: (count) =>
    `W tabeli testu ${polishForm(count, "jest jeszcze", "są jeszcze", "jest jeszcze")} ${count} ${polishForm(count, "etap", "etapy", "etapów")}.`,
  stageDrawn: (stage, length, levels) => `${stage} przez ${length}: ${levels}`,
  untestedMode: "Tego trybu nie poddano próbie.",
  claimsOfMode: (name) => `Deklaracje trybu „${name}”, ocenione na podstawie jego testów`,
  statedOf: (name) => `Co producent podaje o trybie „${name}”`,

  costs: "Koszty według testów",
  cost: "Koszt",
  notTested: "Jeszcze go nie zbadano.",
  tests: "Testy tego prostownika",
  testColumns: { test: "Test", mode: "Tryb", battery: "Akumulator", target: "Cel" },
  notMeasured: "nie zmierzono",
  noEvidence: "Nie ma jeszcze dowodów: nie wykonano żadnego testu.",
  profile: (recording) => `Przebieg ładowania, ${recording}`,
  longest: "Najdłuższy z zapisów testu. Numery i cieniowanie to jego etapy:",
  endedBy: "Co zakończyło zapis:",

  makerTold: {
    notStated: "Czy producenta powiadomiono: nie podano.",
    told: (on) => `Producenta powiadomiono o wynikach (${on ?? "daty nie podano"})`,
    noAnswer: "; odpowiedzi nie podano.",
    answered: (on) => `; odpowiedział (${on ?? "daty nie podano"}):`,
  },
  noCorrections: "Dotąd bez sprostowań.",
  howCorrected: "Jak powstają sprostowania",
  changesVerdict: "Zmienia ocenę.",
  verdictStands: "Ocena pozostaje.",
  noticedBy: (name) => ` Kto zauważył: ${name}.`,

  forecast: {
    otherVoltage: (mode, voltage) =>
      `Tryb „${mode}” jest przeznaczony na ${voltage}, więc nie można go zestawić z innymi na akumulatorze odniesienia 12 V.`,
    projectedFor: (battery, how) => (
      <>
        Prognoza, akumulator: {battery} ({how("jak powstaje")}). Tego ładowania nikt nie widział; tak zachowałby się prostownik znany z
        zapisów.
      </>
    ),
    onReference: (mode) => `Tryb „${mode}” na akumulatorze odniesienia, prognoza`,
    behaves: (mode) => `Jak zachowuje się tryb „${mode}” według prognozy`,
    notKnownOfIt: "Czego o nim nie wiadomo:",
    readyBy: (mode, kind, airC) => `Tryb „${mode}”: używane akumulatory ${kind} w ${airC}, kiedy gotowe (95 %), prognoza`,
    kinds: { flooded: "z ciekłym elektrolitem", AGM: "AGM" },
    columns: { battery: "Akumulator", flat: "Stan rozładowania", note: "Uwaga" },
    inHours: (hours) => `za ${hours} h`,
    outside: (low, high) => `Poza zakresem ${low} do ${high} Ah, który podaje producent.`,
    partlyOutside: (low, high) => `Częściowo poza zakresem ${low} do ${high} Ah, który podaje producent.`,
    asBefore: (battery, test) => `${battery}, w stanie sprzed testu ${test}`,
    onOwnBatteries: (mode) => `Tryb „${mode}” jeszcze raz na akumulatorach tego stanowiska, prognoza`,
    topUp: {
      moreLikely: (earliest, middle) => `${earliest}, raczej ${middle}`,
      moreThanMonths: (months) => withUnit(`ponad ${months}`, polishForm(months, "miesiąc", "miesiące", "miesięcy")),
      months: (months) => withUnit(String(months), polishForm(months, "miesiąc", "miesiące", "miesięcy")),
      days: (days) => withUnit(String(days), polishForm(days, "dzień", "dni", "dni")),
      lessThanADay: "niecały dzień",
    },
    season: {
      unseenLead: (mode) => `Miesiąc podłączenia w trybie „${mode}”:`,
      unseen: "nikt nie zapisał, co robi z pełnym akumulatorem",
      caption: (mode) => `Tryb „${mode}”, miesiąc podłączenia do pełnego akumulatora 60 Ah z ciekłym elektrolitem, prognoza`,
      columns: {
        place: "Miejsce",
        held: "Utrzymywane napięcie",
        window: "Wobec tamtejszego zakresu ładowania konserwującego",
        windowShort: "Zakres konserwujący",
        energy: "Energia",
        water: "Woda, najwyżej",
        topUp: "Dolewka najwcześniej po",
        restarts: "Ponowne załączenia na dobę",
      },
      topUpNote:
        "Ubytek wody jest największym możliwym, więc termin dolewki jest najwcześniejszym. Poziom i tak sprawdza się co miesiąc; dolewa się tylko wodę oczyszczoną, po ładowaniu, nigdy kwas.",
      windows: {
        inside: "w zakresie ładowania konserwującego",
        below: "poniżej zakresu konserwującego: może nie utrzymać pełnego naładowania",
        above: "powyżej zakresu konserwującego: kosztuje wodę i trwałość",
        partly: "częściowo w zakresie konserwującym",
        "holds no voltage": "nie utrzymuje napięcia: jest wyłączony albo załącza się i wyłącza",
        "not known": "nikt nie zapisał, co robi z pełnym akumulatorem",
      },
    },
  },
};

import type { parts as source } from "../en/parts.ts";
import { polishForm } from "../plural.ts";

export const parts: typeof source = {
  nothingStated: "Niczego nie podano.",
  drawing: (caption) => `${caption} (rysunek)`,
  caution: {
    name: "Ostrzeżenie",
    lead: "Zanim ktokolwiek to powtórzy:",
    dangers:
      "ładowany akumulator wydziela wodór, zawiera kwas i może przepuścić setki amperów przez upuszczony klucz. Okulary ochronne, wietrzenie, żadnych iskier; zamarzniętego akumulatora nigdy nie ładować.",
    sealed: "Akumulatora szczelnego nie wolno otwierać, a zbyt wysokie napięcie wysusza go na zawsze.",
    authority: "Rozstrzygają miejscowe przepisy, karta producenta akumulatora i ocena osoby z uprawnieniami.",
    all: "Wszystkie ostrzeżenia",
  },
  doubt: {
    expected: "Oczekiwano:",
    found: "; znaleziono:",
    mend: "jak poprawić:",
  },
  wouldSettle: "Co by to rozstrzygnęło",
  strip: {
    recorded: "zapisano",
    connected: "podłączony, bez zapisu",
    endNotSeen: "końca nie widziano",
    reading: "odczyt",
    numbered: "odczyt, numer u góry; numery podłączeń są u dołu",
    sentence: (span, connections, stretches, readings, unseenEnds) =>
      [
        `Pasek dowodów, ${span}: ${connections} ${polishForm(connections, "podłączenie", "podłączenia", "podłączeń")}`,
        `${stretches} ${polishForm(stretches, "zapisany odcinek", "zapisane odcinki", "zapisanych odcinków")}`,
        `${readings} ${polishForm(readings, "odczyt", "odczyty", "odczytów")}`,
        unseenEnds === 0
          ? "każdy koniec jest znany"
          : `${unseenEnds} ${polishForm(unseenEnds, "koniec, którego nikt nie widział", "końce, których nikt nie widział", "końców, których nikt nie widział")}`,
      ].join(", "),
  },
  findings: {
    none: "Niczego tu nie oceniono.",
    why: "Dlaczego",
    how: "Jak to się ocenia",
    restsOn: "Opiera się na:",
  },
  claims: {
    none: "Dla tego trybu nie zadeklarowano niczego, co dałoby się ocenić.",
    columns: {
      claim: "Deklaracja",
      claimed: "Zadeklarowano",
      measured: "Zmierzono",
      drawn: "Deklaracja i pomiar",
      outcome: "Wynik",
      why: "Dlaczego",
    },
    key: "Na rysunkach pas to zakres, który jeszcze spełnia deklarację, linia przerywana to sama deklaracja, a kropka z wąsami to pomiar z przedziałem 95 %.",
    notANumber: "to nie liczba",
    accepted: (interval) => `dopuszczalne: ${interval}`,
    probability: (probability) => `w granicach z prawdopodobieństwem ${probability}`,
    rule: "Reguła:",
  },
  figures: {
    columns: { figure: "Wielkość", value: "Wartość, przedział 95 %", method: "Metoda", evidence: "Dowód" },
  },
  evidence: {
    files: (count) => `${count} ${polishForm(count, "plik", "pliki", "plików")}`,
    noFile: "bez pliku: zob. metodę",
    line: (line) => `wiersz ${line}`,
    lines: (first, last) => `wiersze ${first}–${last}`,
    columns: (columns) => `${columns.length === 1 ? "kolumna" : "kolumny"} ${columns.join(", ")}`,
  },
  repeats: {
    caption: (mode) => `To samo jeszcze raz: tryb „${mode}” we wszystkich zapisach`,
    columns: {
      quantity: "Wielkość",
      each: "Każdy zapis",
      spread: "Rozrzut: odchylenie standardowe z przedziałem 95 %",
      spreadShort: "Rozrzut",
    },
    within: "Między podłączeniami",
    between: "Między testami",
  },
};

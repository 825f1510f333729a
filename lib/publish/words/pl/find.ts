import type { find as source } from "../en/find.ts";
import { polishForm } from "../plural.ts";

export const find: typeof source = {
  kinds: {
    flooded: "z ciekłym elektrolitem, nic więcej nie wiadomo",
    "flooded-antimony": "z ciekłym elektrolitem, z korkami do dolewania (antymonowy)",
    "flooded-calcium": "z ciekłym elektrolitem, bezobsługowy (wapniowy)",
    EFB: "EFB (start-stop, z ciekłym elektrolitem)",
    AGM: "AGM (szczelny)",
    gel: "żelowy (szczelny)",
  },
  kindNames: {
    flooded: "z ciekłym elektrolitem",
    "flooded-antimony": "z ciekłym elektrolitem, antymonowy",
    "flooded-calcium": "z ciekłym elektrolitem, wapniowy",
    EFB: "EFB",
    AGM: "AGM",
    gel: "żelowy",
  },
  conditions: {
    new: "jak nowy",
    used: "używany, zadbany",
    neglected: "zaniedbany: tygodniami rozładowany",
    "not stated": "nie wiem",
  },
  flat: {
    slightly: "Lekko rozładowany",
    half: "Rozładowany w połowie",
    flat: "Rozładowany",
    "very-flat": "Głęboko rozładowany",
    left: (word, percent) => `${word} (zostało około ${percent})`,
    "rest-voltage": "Znam jego napięcie spoczynkowe",
    density: "Znam gęstość jego elektrolitu",
  },
  deadlines: {
    "tomorrow-morning": "jutro rano, 8:00",
    "tomorrow-evening": "jutro wieczorem, 18:00",
    "sunday-evening": "w niedzielę wieczorem, 18:00",
    "12h": "za 12 godzin",
    "24h": "za 24 godziny",
    "48h": "za 48 godzin",
    at: "w podanym dniu, o podanej godzinie",
  },
  verdicts: { will: "zdąży", may: "może zdążyć", "will not": "nie zdąży", "not advised": "niezalecane" },

  invented: "dane zmyślone",

  complaints: {
    capacity: (low, high) => `Pojemność ma być liczbą od ${low} do ${high} Ah, jak na akumulatorze.`,
    temperature: (low, high) => `Temperatura ma być liczbą od ${low} do ${high} °C.`,
    price: "Cena kWh ma być liczbą, nie mniejszą od zera.",
    density: "Proszę podać gęstość w kg/l, na przykład 1,15; elektrolit ma od 1,00 do 1,35.",
    restVoltage: (cells, dead) =>
      `Takiego napięcia nie daje spoczywający elektrolit w sprawnych celach (jest ich ${cells}). Proszę podać napięcie spoczynkowe w V; znacznie poniżej ${dead} V któraś cela może być martwa: przed ładowaniem akumulator trzeba dać do sprawdzenia.`,
    noDate: "Proszę podać dzień i godzinę, na którą akumulator ma być gotowy.",
    passed: "Ten czas już minął.",
    tooLate: "To za ponad dwa tygodnie: każdy prostownik o rozsądnym prądzie dawno skończy albo nie skończy nigdy.",
  },

  apart: {
    notRecorded: "żaden zapis nie pokazuje, co robi ten tryb, więc niczego nie da się prognozować",
    voltage: (tested, yours) => `zbadano go na akumulatorach ${tested} V, a Twój ma ${yours} V`,
    kind: (kind, named, family) =>
      `o ile wiadomo, nie jest przeznaczony dla tego rodzaju (${kind}): ${named === null ? "producent nie wymienia rodzajów akumulatorów" : `słowa producenta to ${named}`}, a nikt nie zbadał go na akumulatorze ${family === "sealed" ? "szczelnym" : "z ciekłym elektrolitem"}`,
  },
  stated: (words, from) => `„${words}” (${from})`,

  sources: { label: "etykieta", box: "opakowanie", manual: "instrukcja", "web page": "strona internetowa", seller: "sprzedawca" },

  warnings: {
    outside: (low, high) => `Poza zakresem ${low} do ${high} Ah, który podaje producent.`,
    largest: (ah) => `Poza dowodami: największy akumulator, na którym go zbadano, ma ${ah} Ah.`,
    smallest: (ah) => `Poza dowodami: najmniejszy akumulator, na którym go zbadano, ma ${ah} Ah.`,
    otherKind: (tested, asked, named) =>
      `Poza dowodami: zbadany rodzaj to ${tested.join(" i ")}, a nie ${asked}.${named === null ? "" : ` Słowa producenta: ${named}.`}`,
    temperatures: (named) => `Trzeba uważać na temperatury, które podaje producent: ${named}.`,
    voltage: (highest, limit, isSealed) =>
      `Uwaga: według zapisu dochodzi do ${highest} V lub więcej, a taki akumulator zwykle dostaje najwyżej ${limit}. To go obciąża${isSealed ? ", może go wysuszyć i nagrzać" : " i silnie w nim gazuje elektrolit"}; najpierw trzeba sprawdzić kartę jego producenta.`,
  },
  against: (reason, { formatNumber, formatStated }) => {
    switch (reason.id) {
      case "may-be-frozen":
        return "akumulator może być zamarznięty: najpierw rozmrozić i poszukać pęknięć";
      case "frozen":
        return "jego elektrolit może być zamarznięty: zamarzniętego akumulatora nie wolno ładować; najpierw rozmrozić i poszukać pęknięć";
      case "sealed-flat":
        return "tak rozładowany akumulator szczelny wymaga procedury swojego producenta, pod nadzorem";
      case "sealed-voltage":
        return `dochodzi do ${formatNumber(reason.peakV, 1)} V (akumulator 12 V), a akumulator szczelny zwykle dostaje nie więcej niż ${formatNumber(reason.limitV, 1)} V: wysycha i może się nagrzewać`;
      case "current":
        return `${formatNumber(reason.currentA, 1)} A to więcej, niż taki akumulator powinien dostać (${formatNumber(reason.mostA, 1)} A, ${formatStated(reason.share, "")} pojemności)`;
    }
  },

  leftOn: "Odłączyć, gdy akumulator jest pełny:",

  cautions: {
    frozen: (freezesAt) =>
      `Może być zamarznięty: przy takim rozładowaniu elektrolit zamarza przy około ${freezesAt} °C, a u góry wcześniej. Nigdy nie ładować zamarzniętego akumulatora. Rozmrozić powoli w przewietrzonym miejscu, poszukać pęknięć i wybrzuszeń i zapytać ponownie z temperaturą, jaką wtedy ma.`,
    veryFlat:
      "Jest głęboko rozładowany: może już nie wrócić, martwa cela może go rozgrzać, a niektóre prostowniki nie startują przy zbyt niskim napięciu, o czym żadna prognoza tu nie wie. Pierwszą godzinę pilnować; przerwać, gdy robi się gorący, syczy lub śmierdzi.",
    sealed:
      "Jest szczelny: nie otwierać i używać tylko trybu dopuszczonego przez producenta. Zbyt wysokie napięcie wysusza go na zawsze i może nagrzewać bez końca.",
    hot: "Tam, gdzie stoi, jest gorąco: najpierw ostudzić; gorący akumulator mocno gazuje i niszczeje.",
    current: (most, share) =>
      `Taki akumulator nie powinien dostać więcej niż około ${most} A (${share} pojemności, powszechna praktyka), chyba że karta producenta mówi inaczej. Wietrzyć: przy ładowaniu wydziela się wodór.`,
    name: "Ostrzeżenia dla tego akumulatora",
    sections: { frozen: "O zamarzniętych akumulatorach", sealed: "O akumulatorach szczelnych", hydrogen: "O wodorze" },
  },

  shown: {
    notWithin: (hours, never, draws) =>
      never === draws ? `nie w ciągu ${hours} h` : `nie w ciągu ${hours} h w ${never} z ${draws} losowań`,
    atBest: (best, never) => `najlepiej ${best}; ${never}`,
    someNever: (ready, never) => `${ready}; ${never}`,
    range: (low, high) => ` (${low} do ${high})`,
  },

  answer: {
    columns: { charger: "Prostownik", inTime: "Na czas", ready: "Gotowy po", cost: "Koszt", mind: "Na co uważać", evidence: "Dowody" },
    caption: (battery, charged, temperature, deadline) =>
      `${battery}, naładowany w ${charged}, ${temperature}: gotowy na ${deadline}, prognoza`,
    heading: "Które prostowniki",
    table: "Prostowniki do Twojego akumulatora (tabela)",
    fromNow: (day, length) => `${day}, za ${length}`,
    notAdvised: "Niezalecane dla tego akumulatora w obecnym stanie",
    others: (count) => `Pokaż pozostałe z tej grupy (${count})`,
    key: (draws, horizon, isCellOfMatrix) =>
      `To, czego nie wiadomo o Twoim akumulatorze i o prostowniku, losuje się ${draws} ${polishForm(draws, "raz", "razy", "razy")}, tak samo dla wszystkich prostowników; procent to część losowań, w których zdążył, a przedział obejmuje środkowe 95 %. Prostowniki, których losowania nie rozróżniają, stoją razem, w kolejności nazw; miejsca nie da się kupić. Energię liczy się, aż akumulator jest pełny, prostownik wyłączył się na dobre albo minęło ${horizon} h. Żadna prognoza nie wie o rozwarstwionym elektrolicie ani o słabej celi.${isCellOfMatrix ? " To pytanie jest polem tabeli na stronie prostownika i odpowiedź pochodzi z tych samych losowań." : ""}`,
    priceNotStated: "Ceny nie podano",
    toBuy: (amount, on) => `${amount} przy zakupie, ${on === null ? "bez podanej daty" : on}`,
    thisCharge: (energy, money) => `To ładowanie: ${energy}${money === null ? "" : `, ${money}`}`,
    group: (size, place, groups, draws) => {
      const tied = size > 1 ? `: ${size}, ${draws} losowań ich nie rozróżnia` : "";
      if (groups === 1) return size > 1 ? `Wszystkie podobne${tied}` : "Jedyny";
      return `${place === 0 ? "Najprawdopodobniej na czas" : "Mniej prawdopodobne niż powyższe"}${tied}`;
    },
    notKnown: (count) => `Czego o nim nie wiadomo: ${count}`,
    forecasts: "jego prognozy",
    apart: "Poza pytaniem",
  },

  status: {
    noneAsked: "Żadnego prostownika nie zbadano tu na takim akumulatorze. Poniższe stoją osobno, każdy z powodem.",
    working: (chargers) => `Obliczanie: prostowniki, ${chargers}…`,
    done: (chargers) => `Obliczono ${chargers} z ${chargers}.`,
    doneSoFar: (done, chargers) => `Obliczono ${done} z ${chargers}, najbardziej obiecujące najpierw…`,
    failed: "Prognoz nie udało się obliczyć w tej przeglądarce. Tabela poniżej obowiązuje bez nich.",
    fetching: "Pobieranie tego, co wiadomo o prostownikach…",
    fromFolder:
      "Strona otwarta wprost z folderu nie może odczytać swoich danych: przeglądarki na to nie pozwalają. Proszę umieścić witrynę na serwerze WWW albo skorzystać z tabeli poniżej.",
    notFetched: (why) => `Nie udało się pobrać tego, co wiadomo o prostownikach: ${why}. Tabela poniżej obowiązuje bez tego.`,
  },
};

import type { cautions as source } from "../en/cautions.ts";

export const cautions: typeof source = {
  title: "Ostrzeżenia",
  description: "Kwas, wodór, zwarcie, akumulatory zamarznięte i szczelne: co może zaszkodzić i co się zwykle z tym robi.",
  lead: "Testy w tej witrynie wykonali ludzie, którzy robią to zawodowo. Poniższe uwagi to powszechna praktyka, a nie zezwolenie: zawsze pierwszeństwo mają miejscowe przepisy, karta producenta akumulatora, instrukcja prostownika i ocena osoby z uprawnieniami.",
  dangers: {
    acid: {
      name: "Kwas",
      danger: "Elektrolit to kwas siarkowy. Parzy skórę, może oślepić, niszczy ubranie, beton i metal.",
      steps: [
        "Okulary ochronne zamknięte z boków, rękawice kwasoodporne i fartuch; areometr kapie.",
        "W zasięgu kilku kroków bieżąca woda albo płuczka do oczu. Odprysk natychmiast i długo płukać, potem iść do lekarza.",
        "Rozlany kwas związać środkiem do tego przeznaczonym albo sodą i usunąć zgodnie z miejscowymi przepisami.",
        "Uzupełniać tylko wodą oczyszczoną, tylko po ładowaniu, nigdy kwasem.",
      ],
    },
    hydrogen: {
      name: "Wodór",
      danger:
        "Akumulator bliski pełnego naładowania wydziela wodór i tlen. Powietrze z 4 % wodoru może wybuchnąć (IEC 62485-2, z pamięci).",
      steps: [
        "Ładować tam, gdzie powietrze się wymienia; wodór unosi się i zbiera pod pokrywami i sufitem.",
        "Żadnego ognia, palenia ani szlifowania. Przed dotknięciem zacisku wyłączyć prostownik z sieci: iskra powstaje na zacisku.",
        "Zapach zgniłych jaj oznacza przeładowanie: wyłączyć z odległości, przewietrzyć pomieszczenie, nie podchodzić.",
      ],
    },
    "short-circuit": {
      name: "Zwarcie",
      danger: "Nawet zmęczony akumulator przepuszcza przez klucz setki amperów: dość, by go przyspawać, poparzyć albo rozerwać obudowę.",
      steps: [
        "Zdjąć pierścionki i zegarek. Używać izolowanych narzędzi. Zakryć zaciski, przy których się nie pracuje.",
        "W pojeździe najpierw odłączyć zacisk ujemny i podłączyć go na końcu, chyba że instrukcja mówi inaczej.",
        "Każdy przewód pomiarowy zabezpieczyć bezpiecznikiem blisko akumulatora.",
      ],
    },
    frozen: {
      name: "Zamarznięte akumulatory",
      danger: "Rozładowany akumulator zamarza kilka stopni poniżej 0 °C. Ładowanie lodu może rozerwać obudowę.",
      steps: [
        "Nigdy nie ładować akumulatora, który może być zamarznięty. Najpierw powoli rozmrozić w wietrzonym miejscu.",
        "Wybrzuszona lub pęknięta obudowa to koniec: trzymać pionowo w kwasoodpornej kuwecie i oddać do recyklingu.",
      ],
    },
    sealed: {
      name: "Akumulatory szczelne",
      danger:
        "Akumulatorów AGM i żelowych nie da się uzupełnić. Zbyt wysokie napięcie albo niewłaściwy tryb wysusza je i może nagrzewać bez końca.",
      steps: [
        "Nie otwierać. Gęstości nie da się odczytać; zostają napięcie, prąd i temperatura.",
        "Używać tylko trybu dopuszczonego przez producenta akumulatora. Przerwać, gdy obudowa robi się gorąca, syczy lub puchnie.",
      ],
    },
    mains: {
      name: "Sieć",
      danger: "Prostownik to urządzenie sieciowe, często używane w wilgoci.",
      steps: [
        "Na zewnątrz, na łodziach i w garażach stosować wyłącznik różnicowoprądowy.",
        "Nie otwierać prostownika; naprawy zostawić osobie wykwalifikowanej.",
      ],
    },
  },
};

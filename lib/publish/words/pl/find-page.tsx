import type { findPage as source } from "../en/find-page.tsx";

export const findPage: typeof source = {
  title: "Dobór prostownika",
  description: "Mój akumulator, jak rozładowany, jak zimno, na kiedy: które prostowniki zdążą, na ile to pewne i ile kosztuje. Prognoza.",
  lead: "Który prostownik przywróci mój akumulator, na kiedy i za ile?",
  projected: (lead, forecast) => (
    <>
      {lead("Prognoza, nie obserwacja:")} każda odpowiedź to {forecast("prognoza")} tego, co zrobiłby na Twoim akumulatorze prostownik znany
      z zapisów. Tego ładowania nikt nie widział. „Gotowy” to 95 % tego, co akumulator mieści.
    </>
  ),
  caution: (lead) => (
    <>
      {lead("Pierwszeństwo mają karta producenta akumulatora, miejscowe przepisy i praktyka osób z uprawnieniami.")} Kwas parzy, wodór
      wybucha, zwarcie topi klucze, a zamarzniętego akumulatora nigdy nie wolno ładować.
    </>
  ),
  needsScripts: "Formularz dla własnego akumulatora wymaga skryptów. Tabela poniżej nie.",
  usual: "Typowe akumulatory",
  none: "Żaden zapis nie mówi jeszcze, co prostownik zrobiłby na akumulatorze z ciekłym elektrolitem.",
  key: (word, data) => (
    <>
      {word("Zdąży")} to na czas w co najmniej 90 % losowań, {word("może zdążyć")} w ponad 10 %. W polu prostowniki stoją w kolejności nazw.
      Procenty i to, co przemawia przeciw prostownikowi, są na jego stronie. Wszystko, co wie formularz: {data("find.json")}.
    </>
  ),
  form: {
    battery: "Twój akumulator",
    voltage: "Napięcie",
    capacity: "Pojemność, Ah",
    capacityHint: "Jak na etykiecie, przy rozładowaniu 20 h",
    kind: "Rodzaj",
    condition: "Stan",
    flatHeading: "Jak jest rozładowany",
    flat: "Stan rozładowania",
    restV: "Napięcie spoczynkowe, V",
    restVHint: "Na biegunach, po co najmniej czterech godzinach spoczynku, nic niepodłączone",
    density: "Gęstość elektrolitu, kg/l",
    densityHint: "W 25 °C, średnia z cel. Na każde 10 °C, o które elektrolit jest zimniejszy, odjąć 0,006",
    air: "Jak jest tam zimno, °C",
    airHint: "Akumulator tam stał",
    when: "Na kiedy i cena prądu",
    by: "Gotowy na",
    at: "Dzień i godzina",
    atHint: "Według zegara tego urządzenia",
    price: "Cena kWh",
    priceHint: "Może zostać puste; w walucie cen prostowników",
    submit: "Znajdź prostowniki",
    reset: "Zacznij od nowa",
  },
  matrix: (voltage, airC) =>
    `Używane akumulatory ${voltage} V z ciekłym elektrolitem w ${airC} °C: które prostowniki na kiedy je przygotują (95 %), prognoza`,
  will: "zdąży:",
  may: "może zdążyć:",
  willNot: (count) => `nie zdąży: ${count}`,
  notAdvised: (count) => `niezalecane: ${count}`,
  toComeOff: "odłączyć po naładowaniu",
  more: (count) => `; i jeszcze ${count}`,
};

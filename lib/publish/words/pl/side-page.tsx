import type { sidePage as source } from "../en/side-page.tsx";

export const sidePage: typeof source = {
  title: "Obok siebie",
  description: "Od dwóch do czterech prostowników obok siebie: przebiegi, wielkości z przedziałami, deklaracje i to, czego nie widziano.",
  lead: "Od dwóch do czterech prostowników obok siebie. Różnice podaje się tylko wtedy, gdy są większe niż niepewność, a wielkości z niejednakowych akumulatorów się nie zestawia.",
  caution: (cautions) => (
    <>
      Ładowany akumulator wydziela gaz, który może wybuchnąć. Zanim któryś pozostanie podłączony, należy przeczytać{" "}
      {cautions("ostrzeżenia")}; pierwszeństwo mają producenci akumulatora i prostownika oraz miejscowe przepisy.
    </>
  ),
  read: "Jak to czytać",
  readDrawing:
    "Kółko oznacza koniec zapisu, a nie koniec pracy prostownika; wypełniona kropka oznacza, że prostownik do tego czasu się wyłączył. Gdy akumulatory mają różne napięcia, napięcie rysuje się dla jednej celi.",
  readShare: "W funkcji włożonego ładunku przebieg sumuje prąd między narysowanymi punktami; luki niczego nie dodają.",
  readSigns:
    "≠ przedziały nie zachodzą na siebie, więc wielkości się różnią. ≈ zachodzą: tymi pomiarami nie da się ich odróżnić. = dokładnie to samo. ∦ nieporównywalne. Wielkość prowadzi do dowodu. Na czym każdy zbadano, mówi pierwsza tabela; jak rozładowany i jak ciepły był akumulator, strona testu.",
  readDraws:
    "Kto kończy pierwszy, to prognoza, tych ładowań nikt nie widział. Mówią o tym losowania: w każdym wszystkie prostowniki dostają dokładnie ten sam akumulator. Losowanie, w którym oba potrzebują tyle samo albo żaden nie kończy, liczy się za pół. O jednym mówi się, że jest przed drugim, tylko gdy jest tak w ponad 95 % losowań.",
  readPaying:
    "Co się opłaca, mówią cena i energia ładowania odniesienia po cenie witryny, także losowanie po losowaniu: zakres obejmuje środkowe 95 %. Nie ma w tym trwałości prostownika ani wartości lepiej utrzymanego akumulatora.",
  other: "Inne sposoby porównania",
  otherNote: (comparison, csv) => (
    <>
      Ustawianie prostowników obok siebie wymaga skryptów i strony z serwera WWW. Wszystko, co tu pokazano, jest też w części{" "}
      {comparison("porównanie wszystkich prostowników")}, w {csv("jej pliku CSV")} i na stronie każdego prostownika:
    </>
  ),
  noCharger: "Nie opublikowano jeszcze żadnego prostownika.",
};

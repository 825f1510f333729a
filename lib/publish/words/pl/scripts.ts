import type * as source from "../en/scripts.ts";
import { polishForm } from "../plural.ts";

export const sort: typeof source.sort = {
  directions: { ascending: "rosnąco", descending: "malejąco" },
  sorted: (column, direction) => `Posortowano według kolumny ${column}, ${direction}.`,
  ties: (count) => ` ${count} ${polishForm(count, "wiersza", "wierszy", "wierszy")} nie da się odróżnić od wiersza powyżej.`,
};

export const search: typeof source.search = {
  nothing: (words) => `Niczego nie znaleziono dla „${words}”.`,
  found: (count) => `Znaleziono ${count} ${polishForm(count, "stronę", "strony", "stron")}.`,
  needsServer: "Wyszukiwanie wymaga serwera WWW; z folderu można szukać w przeglądarce.",
};

export const compare: typeof source.compare = {
  shown: (shown, all) => `Prostowniki: ${shown} z ${all}`,
  copied: "Skopiowano",
  chooseAnother: "Wybrano 1 prostownik: proszę wybrać jeszcze jeden, żeby ustawić je obok siebie.",
  chosen: (count) => `Porównaj wybrane obok siebie (${count})`,
  noMore: " (nie więcej niż cztery)",
  showMore: (count) => `Pokaż więcej (${count})`,
  showAll: (count) => `Pokaż wszystkie (${count})`,
};

export const exploreButton: typeof source.exploreButton = {
  every: (log) => `Przejrzyj każdy wiersz: ${log}`,
  thisLog: "ten zapis",
  notFetched: "nie udało się pobrać skryptu przeglądarki zapisu",
};

export const explore: typeof source.explore = {
  label: (log, rows) =>
    `${log}, wierszy: ${rows}. Strzałki przesuwają o wiersz, z klawiszem Shift o dziesiątą część widoku; plus i minus zmieniają skalę; Home pokazuje całość.`,
  hint: "Pojedyncze wiersze odczytuje się wskaźnikiem na rysunku albo strzałkami.",
  zoomIn: "Powiększ",
  zoomOut: "Pomniejsz",
  earlier: "Wcześniej",
  later: "Później",
  whole: "Cały zapis",
  csv: "CSV tego widoku",
  line: "Wiersz pliku ",
  go: "Przejdź",
  partNotRead: (why) => `Tej części zapisu nie udało się odczytać: ${why}`,
  range: (low, high, unit) => `${low} do ${high} ${unit}`,
  several: "kilka wierszy razem (pojedyncze po powiększeniu)",
  atLine: (line) => `wiersz ${line}`,
  fromFirst: (elapsed) => `${elapsed} od pierwszego wiersza`,
  tooMany: "Za dużo wierszy na jeden plik: najpierw powiększyć albo wziąć surowy plik.",
  notOpened: (why) => `Zapisu nie udało się otworzyć: ${why}. Z folderu można użyć surowego pliku.`,
};

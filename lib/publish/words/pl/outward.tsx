import type { outward as source } from "../en/outward.tsx";
import { polishForm } from "../plural.ts";

export const outward: typeof source = {
  headlines: {
    promises: "Co obiecuje etykieta",
    way: "Droga do pełnej gęstości",
    current: "Prąd ładowania",
    voltage: "Napięcie graniczne",
    leftConnected: "Pozostawiony podłączony",
    connections: "Podłączenia do pełna",
    hours: "Godziny do pełna",
    cost: "Koszt naładowania jednego akumulatora do pełna",
    outcomes: {
      meets: "spełnia deklarację",
      "short of": "nie dosięga deklaracji",
      above: "przekracza deklarację",
      "cannot tell": "nie da się ustalić",
      "not put to the test": "nie poddano próbie",
    },
    statuses: {
      reached: "pełna gęstość osiągnięta",
      "not reached": "pełna gęstość nieosiągnięta",
      "not known": "nie wiadomo, czy osiągnięto pełną gęstość",
      abandoned: "przerwano przed osiągnięciem pełnej gęstości",
      "no target": "bez docelowej gęstości",
    },
    claimed: (claim) => `zadeklarowano ${claim}`,
    holds: (voltage) => `utrzymuje ${voltage}`,
    mode: (mode) => `tryb „${mode}”`,
    modeOn: (mode, battery) => `tryb „${mode}”, akumulator: ${battery}`,
    modeOutcome: (mode, outcome) => `tryb „${mode}”: ${outcome}`,
    battery: (name, capacity, construction) => `${name}, ${capacity}, ${construction}`,
    constructions: {
      "flooded-antimony": "z ciekłym elektrolitem, antymonowy",
      "flooded-calcium": "z ciekłym elektrolitem, wapniowy",
      flooded: "z ciekłym elektrolitem",
      EFB: "EFB",
      AGM: "AGM",
      gel: "żelowy",
    },
    toTarget: (density, temperature) => `, do ${density} w ${temperature}`,
    asTested: "tak jak w teście",
    allModes: "wszystkie tryby",
    noClaim: "producent nie podaje żadnej, którą dałoby się ocenić",
    notLeftOn: "żaden test nie mówi, co robi, gdy pozostaje podłączony",
    noTest: "nie opublikowano testu",
    noTestOfCharger: "nie opublikowano testu tego prostownika",
    noFigure: "ten test nie daje takiej wielkości",
    hardest: (tests, others) => `Pokazano najtrudniejszy z testów (jest ich ${tests}). Pozostałe: ${others.join(", ")}.`,
    counted: (status, count) => `${status} (${count})`,
  },
  notice: {
    withdrawn: (on) => `Wycofano ${on}: ten wynik już nie obowiązuje.`,
    concern: (on, what) => `W wątpliwości od ${on}: ${what}`,
    turned: (on, what) => `Ocena zmieniona ${on}: ${what}`,
  },
  ofDay: (day) => (day === null ? "bez podanej daty" : `z ${day}`),
  resultLine: (version, method, fingerprint) => (
    <>
      Wynik {version} · metoda {method} · odcisk {fingerprint}
    </>
  ),
  warnings: {
    invented: (lead) => <>{lead("Dane zmyślone")}: nie ocenia się tu żadnego prawdziwego produktu.</>,
    sells: "Wydawca sprzedaje prostowniki lub akumulatory.",
  },

  card: {
    title: (charger) => `Karta: ${charger}`,
    away: "Wyjście z karty",
    results: "Wszystkie wyniki tego prostownika",
    prints: "Druk na papierze A6, w skali 100 %",
    noAddress: "Ta witryna nie podaje swojego adresu, więc żaden kod nie może do niej prowadzić.",
    caution:
      "Przy ładowaniu wydziela się wodór, a kwas parzy: wietrzenie, okulary ochronne, żadnych iskier; zamarzniętego akumulatora nigdy nie ładować. Rozstrzygają karta producenta akumulatora i miejscowe przepisy.",
    qrCode: (address) => `Kod QR adresu ${address}`,
  },
  embed: {
    title: (charger, site) => `${charger}: wyniki, ${site}`,
    evidence: "Dowody na każdą wartość",
    versions: "Wersje i sprostowania",
  },

  quotation: {
    notStated: "nie podano",
    absent: (kind, why) => `${kind}, ${why}`,
    claimed: (claim) => `, zadeklarowano ${claim}`,
    invented: "[Dane zmyślone] ",
    source: (site, version, method, figure) => `${site}, wynik ${version}, metoda ${method}, wielkość ${figure}`,
    blockInvented: "Dane zmyślone: nie ocenia się tu żadnego prawdziwego produktu.",
    blockSells: "Wydawca tych wyników sprzedaje prostowniki lub akumulatory.",
    fullDensity: (condition) => `Pełna gęstość: ${condition}.`,
    blockSource: (site, version, method, fingerprint) => `${site}, wynik ${version}, metoda ${method}, odcisk ${fingerprint}.`,
    newest: "Czy to wciąż najnowszy wynik? Dowody na każdą wartość",
  },

  quote: {
    title: "Jak cytować te wyniki",
    description: "Co należy do cytowanej wartości, czego nie wolno pominąć, oraz tekst, kod i odwołania do skopiowania.",
    lead: "Te wyniki może cytować każdy, także sklep i producent. Wartość jest warta tyle, ile to, co przy niej stoi.",
    chargers: "Wartości, karty i kod dla każdego prostownika",
    noCharger: "Nie opublikowano jeszcze żadnego prostownika.",
    toCopy: "wartości i kod do skopiowania",
    toPrint: "karta do wydruku",
    versions: "wersje",
    citeSite: "Jak zacytować całą witrynę",
    toPrograms: (file) => <>{file} mówi to samo programom.</>,
    feed: (link) => <>{link("Kanał Atom")} informuje o każdym wyniku, zmianie i sprostowaniu.</>,
    noFeed: "Nie ma kanału: potrzebuje adresu witryny i wyników z datą, a opisy nie podają obu.",
    rules: "Zasady",
    rule: {
      whole: {
        lead: "Wartość podaje się z jednostką, przedziałem, warunkiem, datą, identyfikatorem i odnośnikiem.",
        more: "Wiersze na stronie każdego prostownika mają całą szóstkę.",
      },
      verdict: {
        lead: "Oceny się nie przycina.",
        more: "Należy do niej także to, czego nie da się ustalić, czego nie poddano próbie i co przemawia przeciw prostownikowi.",
      },
      version: {
        lead: "Wartości porównuje się tylko w obrębie jednej wersji metody.",
        more: (version, methods) => (
          <>
            To jest wersja {version}; {methods("co robi każda metoda")}. Różnice warunków, takich jak akumulator czy temperatura, się
            podaje.
          </>
        ),
      },
      ended: {
        lead: "„Zapis się skończył” to nie „prostownik skończył”.",
        more: "A „nie zapisano” to nie to samo co zero.",
      },
      endorsement: {
        lead: "Cytat nie jest rekomendacją.",
        more: "Nie ma pieczęci ani punktacji i nie wolno ich z tych wyników tworzyć.",
      },
      corrected: {
        lead: "Sprostowany wynik prostuje się wszędzie, gdzie go zacytowano.",
        more: (hasFeed) =>
          `Osadzona ramka robi to sama; przy tekście i kodzie warto od czasu do czasu zajrzeć na stronę wersji${hasFeed ? " albo śledzić jej kanał." : "."}`,
      },
      invented: {
        lead: "Te dane są zmyślone.",
        more: "Wolno je cytować, by pokazać, jak działa witryna, nigdy jako wyniki produktu.",
      },
    },
    licence: (licence) => `Licencja danych i tekstów: ${licence ?? "nie podano; proszę zapytać wydawcę"}.`,
    ofCharger: (charger) => `Cytowanie: ${charger}`,
    ofChargerDescription: (charger) =>
      `${charger}: wartości z jednostką, warunkiem, datą, identyfikatorem i odnośnikiem oraz kod na inne strony.`,
    result: (version, method, fingerprint) => (
      <>
        Wynik {version}, wersja metody {method}, odcisk {fingerprint}.
      </>
    ),
    allResults: "Wszystkie wyniki",
    versionsLink: "Wersje",
    rulesLink: "Zasady cytowania",
    verdict: "Cała ocena",
    figures: "Pojedyncze wartości",
    evidence: "Dowód",
    method: "Metoda",
    inPage: "Na innej stronie",
    onPaper: "Na papierze",
    counterCard: "Karta na ladę, A6",
    citations: "Odwołania",
    noCode: "Ta witryna nie podaje swojego adresu, więc nie ma kodu, który zadziałałby gdzie indziej.",
    wouldShow: "Strona, którą by pokazywał",
    frame: (newest) => (
      <>
        Ramka zawsze pokazuje {newest("najnowszy")} wynik. Nie uruchamia skryptów, nie zapisuje ciasteczek i nikogo innego o nic nie pyta.
      </>
    ),
    seeFrame: "Zobacz, co pokazuje",
    frameCode: "Kod ramki",
    block:
      "Blok tekstu pozostaje taki, jaki był w dniu skopiowania, dlatego podaje, którą wersję cytuje, i prowadzi do strony, która mówi, czy jest nowsza. Prosimy kopiować go w całości.",
    blockCode: "Kod bloku",
  },

  versions: {
    title: (charger) => `Wersje wyniku: ${charger}`,
    description: (charger) => `${charger}: który wynik jest najnowszy i co się zmieniło od wcześniejszego.`,
    undated: "Opisy nie podają daty tego wyniku, więc jego wersje można rozróżnić tylko po odcisku.",
    newest: (version) => <>Najnowszy wynik pochodzi z {version}.</>,
    madeBy: (method, fingerprint) => (
      <>
        Powstał według wersji metody {method}, a jego odcisk to {fingerprint}.
      </>
    ),
    asItStands: (charger) => `${charger}, stan obecny`,
    fromCopy:
      "Masz kopię z inną datą, wersją metody lub odciskiem? Pokazuje zatem starszy wynik. Tabela mówi, co zmieniło się od jej daty; zmiana spoza tabeli, na przykład lepsze sformułowanie, zmienia sam odcisk.",
    undatedCopy: "Kopia bez daty powstała, zanim podano jakąkolwiek datę: należy porównać jej odcisk.",
    fingerprint: "Odcisk",
    fingerprintNote: (sums, print, check) => (
      <>
        To początek skrótu SHA-256 pliku {sums}, czyli listy skrótów wszystkich wyników i surowych plików tego prostownika: {print} go
        wypisuje, a {check} sprawdza pliki. Pokazuje, że pliki są te same, a nie że odczyt był prawidłowy.
      </>
    ),
    howToQuote: "Jak cytować ten wynik",
    feed: "Kanał zmian tego wyniku, Atom",
    nothingDated: "Opisy nie podają daty żadnej publikacji, zmiany ani sprostowania.",
    caption: "Wersje, od najnowszej",
    columns: { version: "Wersja", holds: "Czy nadal obowiązuje?", happened: "Co się tego dnia stało" },
    isNewest: "To najnowsza.",
    superseded: (changes) => `Jest nowszy wynik: od tego czasu ${changes} ${polishForm(changes, "zmiana", "zmiany", "zmian")}.`,
    verdictChanged: "Ocena się zmieniła.",
    verdictStands: "Ocena pozostaje.",
    noChangeNoted: "Nie odnotowano zmiany oceny.",
    published: (test) => `Opublikowano wyniki testu „${test}”.`,
  },

  corrections: {
    title: "Sprostowania",
    description: "Co zmieniono po publikacji, dlaczego i czy zmieniła się ocena.",
    noPolicy: "Ta witryna nie podaje zasad sprostowań.",
    none: "Dotąd niczego nie sprostowano.",
    caption: "Sprostowania, od najnowszego",
    columns: { date: "Data", charger: "Prostownik", kind: "Rodzaj", what: "Co zmieniono", why: "Dlaczego", verdict: "Ocena" },
    changed: "zmieniona",
    stands: "pozostaje",
    kindsHeading: "Rodzaje",
    kinds: {
      clarification: "wyjaśnienie",
      revision: "zmiana",
      correction: "sprostowanie",
      concern: "wątpliwość",
      withdrawal: "wycofanie",
    },
    meanings: {
      clarification: "słowa były niejasne; żadna wartość się nie zmienia",
      revision: "lepsze dane lub lepsza metoda; stara wartość była słuszna według ówczesnej wiedzy",
      correction: "popełniono błąd i go naprawiono",
      concern: "wątpliwość jest badana",
      withdrawal: "wynik już nie obowiązuje; jego strona pozostaje, oznaczona",
    },
  },
};

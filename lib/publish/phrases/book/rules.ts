/** The site's rules: what each is called, what it is set to, and where it is from. */
import type { Chapter } from "../pattern.ts";

export const rules = {
  text: [
    { en: "Decision rule for claims", pl: "Reguła decyzyjna dla deklaracji", de: "Entscheidungsregel für Zusagen" },
    { en: "Coverage factor k", pl: "Współczynnik rozszerzenia k", de: "Erweiterungsfaktor k" },
    { en: "Tolerance of a current claim", pl: "Tolerancja deklaracji prądu", de: "Toleranz einer Stromzusage" },
    { en: "Tolerance of a voltage claim", pl: "Tolerancja deklaracji napięcia", de: "Toleranz einer Spannungszusage" },
    { en: "Window of a sustained value", pl: "Okno wartości utrzymanej", de: "Fenster eines gehaltenen Werts" },
    {
      en: "Uses over which a purchase is spread",
      pl: "Liczba użyć, na które rozkłada się zakup",
      de: "Ladungen, auf die ein Kauf verteilt wird",
    },
    {
      en: "Mains to battery efficiency, where no energy meter was read",
      pl: "Sprawność od sieci do akumulatora, gdy nie odczytano licznika",
      de: "Wirkungsgrad vom Netz zur Batterie, wo kein Zähler abgelesen wurde",
    },
    {
      en: "Charge voltage against the battery's temperature",
      pl: "Napięcie ładowania względem temperatury akumulatora",
      de: "Ladespannung nach der Batterietemperatur",
    },
    {
      en: "Rest before a voltage is turned into a density",
      pl: "Spoczynek, zanim z napięcia wyznacza się gęstość",
      de: "Ruhezeit, bevor aus der Spannung eine Dichte wird",
    },
    {
      en: "Acid on charge: warm from, too hot from",
      pl: "Elektrolit podczas ładowania: ciepły od, za gorący od",
      de: "Säure beim Laden: warm ab, zu heiß ab",
    },

    // Values.
    {
      en: "guarded: meets and short of only where the value is clear of the limit by the expanded uncertainty; between them, cannot tell",
      pl: "z pasmem ochronnym: „spełnia” i „nie dosięga” tylko tam, gdzie wartość dzieli od granicy niepewność rozszerzona; pomiędzy nimi „nie da się ustalić”",
      de: "mit Schutzabstand: „erfüllt“ und „bleibt darunter“ nur, wo der Wert um die erweiterte Messunsicherheit von der Grenze entfernt ist; dazwischen „nicht feststellbar“",
    },
    {
      en: "simple: the measured value itself decides",
      pl: "prosta: decyduje sama zmierzona wartość",
      de: "einfach: Der gemessene Wert selbst entscheidet",
    },
    {
      en: "from {below} % below to {above} % above the claim",
      pl: "od {below} % poniżej do {above} % powyżej deklaracji",
      de: "von {below} % unter bis {above} % über der Zusage",
    },
    { en: "{low} % to {high} %", pl: "od {low} % do {high} %", de: "{low} % bis {high} %" },
    {
      en: "{slope:range} mV for each K and cell from 25 °C, no further than {fromC} and {toC} °C",
      pl: "{slope} mV na każdy K i celę, licząc od 25 °C, nie dalej niż do {fromC} i {toC} °C",
      de: "{slope} mV je K und Zelle, ab 25 °C, nicht weiter als bis {fromC} und {toC} °C",
    },
    { en: "{caution} °C, {stop} °C", pl: "{caution} °C, {stop} °C", de: "{caution} °C, {stop} °C" },

    // Sources.
    {
      en: "ILAC-G8:09/2019, guard band w = U, with JCGM 106:2012",
      pl: "ILAC-G8:09/2019, pasmo ochronne w = U, z JCGM 106:2012",
      de: "ILAC-G8:09/2019, Schutzabstand w = U, mit JCGM 106:2012",
    },
    {
      en: "JCGM 100:2008, 6.2: k = 2 for about 95 %",
      pl: "JCGM 100:2008, 6.2: k = 2 dla około 95 %",
      de: "JCGM 100:2008, 6.2: k = 2 für etwa 95 %",
    },
    {
      en: "Our declaration: rating plates state no tolerance. A tenth either way is common practice; it is no legal limit",
      pl: "Nasza deklaracja: tabliczki znamionowe nie podają tolerancji. Jedna dziesiąta w obie strony to powszechna praktyka; nie jest to granica prawna",
      de: "Unsere Festlegung: Typenschilder nennen keine Toleranz. Ein Zehntel nach beiden Seiten ist übliche Praxis; eine gesetzliche Grenze ist es nicht",
    },
    {
      en: "Our declaration: 1.5 % is 0.22 V of 14.4 V, about what separates the makers' own figures for one kind of battery",
      pl: "Nasza deklaracja: 1,5 % to 0,22 V z 14,4 V, mniej więcej tyle, ile dzieli dane samych producentów dla jednego rodzaju akumulatora",
      de: "Unsere Festlegung: 1,5 % sind 0,22 V von 14,4 V, etwa so viel, wie die Angaben der Hersteller für eine Batterieart auseinanderliegen",
    },
    {
      en: "Our definition; common practice is one minute",
      pl: "Nasza definicja; powszechna praktyka to jedna minuta",
      de: "Unsere Festlegung; übliche Praxis ist eine Minute",
    },
    {
      en: "Our assumption: ten uses a year for ten years",
      pl: "Nasze założenie: dziesięć użyć rocznie przez dziesięć lat",
      de: "Unsere Annahme: zehn Ladungen im Jahr, zehn Jahre lang",
    },
    {
      en: "Our bounds, from small transformer to switched-mode chargers (common practice)",
      pl: "Nasze granice, od małych prostowników transformatorowych do impulsowych (powszechna praktyka)",
      de: "Unsere Grenzen, von kleinen Transformator- bis zu Schaltnetz-Ladegeräten (übliche Praxis)",
    },
    {
      en: "Battery makers and trade pages: float commonly -3, boost -4 to -5 mV/K a cell, clipped at about 5 and 40 °C (read). A rule of thumb of the trade, about 0.3 V more for 12 V near 0 °C, is -2 mV/K a cell (common practice)",
      pl: "Producenci akumulatorów i strony branżowe: ładowanie konserwujące zwykle −3, główne od −4 do −5 mV/K na celę, ograniczone przy około 5 i 40 °C (przeczytane). Praktyczna reguła branży, przy 12 V o około 0,3 V więcej w pobliżu 0 °C, to −2 mV/K na celę (powszechna praktyka)",
      de: "Batteriehersteller und Fachseiten: Erhaltungsladung üblicherweise −3, Starkladung −4 bis −5 mV/K je Zelle, begrenzt bei etwa 5 und 40 °C (gelesen). Eine Faustregel des Handwerks, bei 12 V nahe 0 °C etwa 0,3 V mehr, sind −2 mV/K je Zelle (übliche Praxis)",
    },
    {
      en: "Vehicle service manuals ask for 2 to 4 h (read), IEC 60095-1 for 24 h (from memory)",
      pl: "Instrukcje serwisowe pojazdów wymagają od 2 do 4 h (przeczytane), IEC 60095-1 wymaga 24 h (z pamięci)",
      de: "Fahrzeug-Werkstatthandbücher verlangen 2 bis 4 h (gelesen), IEC 60095-1 verlangt 24 h (aus dem Gedächtnis)",
    },
    {
      en: "Common practice: slow the charge from 45 °C, stop it at 50 °C. The battery's maker has the last word",
      pl: "Powszechna praktyka: od 45 °C spowolnić ładowanie, przy 50 °C je przerwać. Ostatnie słowo ma producent akumulatora",
      de: "Übliche Praxis: ab 45 °C die Ladung verlangsamen, bei 50 °C abbrechen. Das letzte Wort hat der Batteriehersteller",
    },
  ],
} as const satisfies Chapter;

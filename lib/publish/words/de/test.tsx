import type { test as source } from "../en/test.tsx";
import { oneOrMany } from "../plural.ts";

export const test: typeof source = {
  statuses: {
    reached: "Die Zieldichte wurde erreicht",
    "not reached": "Die Zieldichte wurde nicht erreicht",
    "not known": "Ob die Zieldichte erreicht wurde, ist nicht bekannt",
    abandoned: "Der Test wurde vor dem Ziel abgebrochen",
    "no target": "Es wurde keine Zieldichte gesetzt",
  },
  sections: {
    findings: "Befunde",
    witnesses: "Gegenüberstellung",
    figures: "Werte",
    density: "Säuredichte",
    connections: "Ladegänge",
    recordings: "Aufzeichnungen",
    readings: "Ablesungen",
    claims: "Zusagen",
    doubts: "Zweifel",
    conditions: "Wie geprüft wurde",
    downloads: "Zum Herunterladen",
  },
  description: (charger, mode, battery, status) => `${charger}, ${mode}, an ${battery}: ${status}.`,
  onBattery: (charger, mode, battery) => (
    <>
      {charger}, Betriebsart „{mode}“, an {battery}
    </>
  ),
  targetAt25C: (density) => `${density} kg/l bei 25 °C`,
  witnessesHeading: "Sind sich die Zeugen einig?",
  figuresHeading: "Werte des ganzen Tests",
  figuresCaption: "Jeder mit Intervall, Methode und Beleg",
  nothingRecorded: "Es wurde nichts aufgezeichnet, nur abgelesen.",
  claimsCaption: "In diesem Test beurteilte Zusagen",
  noDoubts: "Die Prüfungen der Dateien dieses Tests ergaben keine Zweifel.",
  reachedBy: "Als erreicht gilt:",
  ruleInNumbers: "die Regel in Zahlen",
  stopNumbers: (readings, within, apart) => ` (${readings} Ablesungen gleich auf ${within}, im Abstand von ${apart})`,
  sealed: "Die Batterie ist verschlossen, an ihre Säure kommt man nicht heran.",
  noDensity: "Es wurde keine Säuredichte abgelesen.",
  densityCaption: "Säuredichte bei 25 °C",
  densityNote: (readings) => (
    <>
      Rauten sind Ablesungen mit ihren 95-%-Intervallen; die gepunktete Linie verbindet sie nur, dazwischen hat niemand nachgesehen. Die
      Werte stehen unter {readings("Ablesungen")}.
    </>
  ),
  connections: {
    caption: "Ladegänge, vom Anklemmen bis zum Abklemmen",
    columns: {
      connection: "Ladegang",
      on: "Angeklemmt",
      off: "Abgeklemmt",
      ended: "Wie er endete",
      recordings: "Aufzeichnungen",
      note: "Hinweis",
    },
    notSeen: "nicht gesehen",
    nothingRecorded: "nichts aufgezeichnet",
    figures: "Werte jedes Ladegangs",
    name: (number) => `Ladegang ${number}`,
  },
  leftOut: "Weggelassen, und warum",
  battery: (name) => `Batterie: ${name}`,
  revisions: "Überarbeitungen",
  noRevisions: "Keine seit der Veröffentlichung.",
  noticedBy: (name) => `; bemerkt von ${name}`,
  downloads: {
    everything: "Alles zu diesem Test in einer Datei, zip",
    everythingNote: ": Ergebnisse, Angaben und Rohdateien, aus denen sich jeder Wert nachrechnen lässt.",
    json: "Alle Ergebnisse dieses Tests, JSON",
    csv: "Alle Werte dieses Tests, CSV",
    sums: (command) => (
      <>
        : {command}, daneben ausgeführt, zeigt, dass sich seither keine Rohdatei geändert hat. Es zeigt, dass die Dateien dieselben sind,
        nicht, dass eine Ablesung richtig war.
      </>
    ),
    caption: "Dateien, wie sie eingereicht wurden",
    columns: { file: "Datei", what: "Was es ist", size: "Größe" },
  },

  recording: {
    fromTo: (start, end) => `${start} bis ${end}`,
    rawFile: "Rohdatei",
    lettersMayGoOn: "Die Aufzeichnung endete vor dem Ladegerät, daher können weitere Buchstaben folgen.",
    noSamples: "Es gibt keine Messpunkte zu zeichnen.",
    numbers: "Nummern und Schattierung sind die Phasen der Tabelle unten",
    gapsDrawn: "; gepunktete Felder sind Lücken der Aufzeichnung, die nie überbrückt werden",
    drawn: "Gezeichnet:",
    figures: (recording) => `Werte von ${recording}`,
    endedBy: "Beendet hat die Aufzeichnung:",
    notTheEnd: "Ihr Ende ist nicht das Ende der Ladung.",
    gaps: "Lücken der Aufzeichnung:",
    gap: (length, from, first, last) => `${length} ab ${from} (Zeilen ${first}–${last})`,
    readAs: "Wie diese Datei gelesen wurde",
    rows: (lines, samples, blank, excluded, empty) =>
      `${lines} Zeilen: ${samples} Messpunkte, ${blank} leer, ${excluded} ausgeschlossen, ${empty} ohne Werte.`,
    readBack: "Zurückgelesen:",
  },

  stages: {
    none: "In dieser Aufzeichnung wurden keine Phasen gefunden.",
    caption: (recording) => `Phasen von ${recording}`,
    columns: {
      stage: "Phase",
      from: "Ab",
      lasts: "Dauer",
      voltage: "Spannung",
      current: "Strom",
      charge: "Ladung, Energie",
      limitedBy: "Strom begrenzt durch",
      why: "Warum",
    },
    letter: (letter) => `Buchstabe ${letter} · `,
    spread: (spread) => `, Streuung ${spread}`,
    taper: (level, tau, interval, end, toCome) =>
      `Der Strom fällt auf ${level} zu, mit einer Zeitkonstante von ${tau} (${interval}); am Ende der Phase flossen ${end}, und etwa ${toCome} über diesem Niveau standen noch aus.`,
    noTaper: "Keine Zeitkonstante:",
  },

  readings: {
    none: "Es wurde nicht abgelesen.",
    caption: "Ablesungen, ein Besuch je Zeile",
    visit: "Besuch",
    noted: "Notiert",
    evidence: "Beleg",
    before: (connections) => `${connections} ${oneOrMany(connections, "Ladegang", "Ladegänge")} davor`,
    charger: { connected: "Ladegerät bei Ankunft angeschlossen.", disconnected: "Ladegerät bei Ankunft abgeklemmt." },
    mixed: "Säure vor der Ablesung durchmischt.",
    notMixed: "Säure vor der Ablesung nicht durchmischt.",
  },

  examination: {
    notExamined: "Die Ablesungen ließen sich nicht gegeneinanderhalten:",
    model: (how) => <>Ein Modell wägt alle Ablesungen gemeinsam: {how("wie, mit jeder Annahme")}.</>,
    chart: "Ladezustand der Batterie, nach jedem Zeugen allein und nach allen zusammen",
    chartNote:
      "Jeweils mit 95-%-Intervall. Wo die Zeichen eines Besuchs auseinanderliegen, sind die Zeugen uneinig; die Erklärungen unten sagen, warum.",
    inWords: "In Worten",
    cannotShow: "Was diese Zeugen nicht zeigen können",
    assumed: "Angenommen, weil eine Angabe fehlt",
    sideBySide: "Die Zeugen nebeneinander: Ladezustand, %, mit 95-%-Intervallen",
    columns: { visit: "Besuch", together: "Alle zusammen", top: "Säure oben unter dem Mittel", topShort: "Oben unter Mittel" },
    visit: (number) => `Besuch ${number}`,
    causes: "Was es erklären würde",
    causeColumns: { explanation: "Erklärung", meaning: "Was sie bedeutet", before: "Vor den Ablesungen", after: "Nach ihnen" },
    between: "Ladung zwischen den Besuchen, mit 95-%-Intervallen",
    betweenColumns: {
      between: "Zwischen",
      taken: "Die Platten nahmen auf",
      unrecorded: "Niemand zeichnete auf",
      gas: "Anteil, der in Gasung ging",
      gasShort: "In Gasung",
    },
    visits: (from, to) => `Besuche ${from} und ${to}`,
    noCharge: "es floss keine Ladung",
    noFurther: "Keine einzelne weitere Ablesung würde die Erklärungen besser unterscheiden.",
    bits: (bits) => `(${bits} bit erwartet)`,
  },
};

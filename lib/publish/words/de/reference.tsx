import type { reference as source } from "../en/reference.tsx";

export const reference: typeof source = {
  method: {
    title: "Methode",
    description: "Wie jeder Wert berechnet, wie jede Zusage beurteilt wird und welche Regeln auf dieser Website gelten.",
    lead: (method, tool) =>
      `Hinein gehen rohe Aufzeichnungen und Ablesungen; daraus werden Werte berechnet; aus den Werten entstehen Befunde; die Seiten zeigen das Ergebnis. Unterwegs wird nichts von Hand eingetippt. Dies ist Fassung ${method} der Methode, berechnet mit Version ${tool} des Werkzeugs.`,
    kinds: { figure: "Größen", finding: "Befunde", claim: "Zusagen", rule: "Regeln" },
    kind: { figure: "Größe", finding: "Befund", claim: "Zusage", rule: "Regel" },
    rules: "Regeln und Konstanten",
    rulesLead:
      "Jede ist die Vorgabe des Projekts oder von dieser Website festgelegt; so oder so stand sie fest, bevor die Zusagen beurteilt wurden.",
    intervals: "Intervalle",
    intervalsNote:
      "Ein Wert wie 5,84 ± 0,12 A hat ein Intervall, in dem der wahre Wert mit 95 % Wahrscheinlichkeit liegt, berechnet aus der Genauigkeit des Messgeräts, seiner Auflösung und der Abtastung. Das Intervall wird mit zwei Stellen geschrieben, der Wert bis zur selben Stelle (JCGM 100:2008, 7.2.6). Ist das Intervall auf einer Seite breiter, stehen beide Enden da. Lässt sich keines vertreten, wird keines gezeigt.",
    noRules: "Es sind keine Regeln aufgeführt.",
    rulesCaption: "Regeln, die auf dieser Website gelten",
    columns: { rule: "Regel", value: "Wert", setBy: "Festgelegt von", source: "Quelle" },
    thisSite: "dieser Website",
    byDefault: "Vorgabe",
    all: "Alle Methoden und Regeln",
    facts: { kind: "Art", unit: "Einheit", version: "Methode und Fassung", source: "Quelle", checked: "Geprüft gegen" },
    noUnit: "keine",
    notChecked: "noch keine äußere Quelle",
  },

  data: {
    title: "Daten",
    description: "Ergebnisse als JSON und CSV, Rohdateien, wie die Rekorder sie schrieben, und ihre SHA-256-Prüfsummen.",
    lead: (licence) =>
      `Jede Seite entsteht aus den Dateien unten und aus nichts anderem. Rohdateien werden Byte für Byte so veröffentlicht, wie sie eingereicht wurden. Lizenz der Daten und Texte: ${licence ?? "nicht angegeben"}.`,
    index: (version) =>
      `: der Vergleich, die Methoden, die Regeln und jede Eingabedatei mit ihrer Prüfsumme (Fassung ${version} des Formats).`,
    comparison: ": der Vergleich als Tabelle, ein Wert je Zeile.",
    dataPackage: ": alle Dateien der Website mit ihren Prüfsummen, als Data Package.",
    citation: ": wie man die Website angibt; ",
    quote: "wie man ein Ergebnis zitiert",
    byTest: "Nach Tests",
    noTest: "Es ist noch kein Test veröffentlicht.",
    caption: "Dateien jedes Tests",
    columns: { test: "Test", everything: "Alles", results: "Ergebnisse", figures: "Werte", digests: "Prüfsummen der Rohdateien" },
    byCharger: "Nach Ladegeräten",
    csv: "Form der CSV-Dateien",
    csvNote:
      "UTF-8, Kommas zwischen den Feldern, ein Punkt als Dezimalzeichen, die Einheit in einer eigenen Spalte; fehlende Werte bleiben leer, daneben stehen die Art des Fehlens und sein Grund. Text, den eine Tabellenkalkulation für eine Formel halten könnte, beginnt mit einem Apostroph; Zahlen bleiben unberührt. Die Felder sind englisch wie das öffentliche Format.",
    digests: "Was die Prüfsummen zeigen",
    digestsNote:
      "Eine SHA-256-Prüfsumme zeigt, dass eine Datei die veröffentlichte ist. Sie zeigt nicht, dass eine Ablesung richtig war: Dafür sehen Sie auf die Messgeräte, ihre Kalibrierdaten und die Zweifel auf der Seite jedes Tests.",
  },

  signs: {
    title: "Was die Zeichen bedeuten",
    description:
      "Zeichen, Arten des Fehlens, der Belegstreifen, gezeichnete Zusagen und die Buchstaben einer Ladekennlinie, mit ihrer Bedeutung.",
    lead: "Kein Zeichen beruht allein auf Farbe: Jedes hat seine eigene Form und sein Wort daneben.",
    columns: { sign: "Zeichen", meaning: "Bedeutung" },
    outcomes: "Ergebnisse einer Zusage",
    outcomesCaption: "Die fünf Ergebnisse",
    outcomeMeanings: {
      meets: "der Messwert liegt um mindestens seine eigene Unsicherheit innerhalb der Toleranz der Zusage",
      "short of": "um mehr als die Unsicherheit unter der Toleranz",
      above: "um mehr als die Unsicherheit über der Toleranz",
      "cannot tell": "näher an einer Grenze als die Unsicherheit: Die Messung kann es nicht entscheiden",
      "not put to the test": "nichts Gemessenes betrifft die Zusage; was es täte, steht daneben",
    },
    findings: "Befunde",
    findingsCaption: "Wie ein Befund wiegt",
    weightMeanings: {
      good: "spricht für das Ladegerät",
      bad: "spricht gegen es",
      caution: "darauf achten, bevor man es benutzt oder dem Wert traut",
      unsure: "die Belege entscheiden es nicht",
      untested: "niemand hat es versucht",
      note: "weder dafür noch dagegen",
    },
    absent: "Was fehlt",
    absentLead: "Ein fehlender Wert ist nie eine Null und nie eine Lücke.",
    absentCaption: "Die Arten des Fehlens",
    absenceMeanings: {
      "not recorded": "es geschah, und kein Rekorder sah es",
      "not measured": "niemand hat es abgelesen",
      "not stated": "die Angaben sagen es nicht",
      "not reached": "so weit kam der Test nicht",
      "not applicable": "hier ergibt es keinen Sinn",
      "cannot tell": "es wurde untersucht, und die Belege lassen keine Zahl zu",
    },
    claims: "Zusage gegen Messung",
    claimsCaption: "Gezeichnete Zusagen",
    strip: "Der Belegstreifen",
    stripLead:
      "Ein Test vom ersten bis zum letzten Ereignis, in seinen drei Größen. Was nicht gesehen wurde, nimmt so viel Platz ein wie das Gesehene.",
    letters: "Die Ladekennlinie in Buchstaben",
    lettersLead: (whole, off) => (
      <>
        Buchstaben nach DIN 41772, in der Reihenfolge, in der das Ladegerät vorgeht: {whole} ist ein Strom, dann eine Grenze, dann das
        Umschalten auf eine niedrigere Grenze; {off} am Ende ist ein Ladegerät, das abschaltet.
      </>
    ),
    stagesCaption: "Phasen und ihre Buchstaben",
    stageMeanings: {
      "soft-start": "Zuerst ein kleiner Strom vor dem vollen, solange die Batteriespannung noch niedrig ist.",
      "constant-current": "Das Ladegerät hält seinen Strom, und die Batteriespannung steigt.",
      drooping: "Der Strom fällt, während die Batteriespannung steigt: Das Ladegerät regelt keines von beiden.",
      "constant-voltage": "Das Ladegerät hält seine Ladeschlussspannung, und die Batterie nimmt immer weniger auf.",
      "finishing-current":
        "Nach der Grenze hält das Ladegerät einen kleinen Strom und lässt die Spannung über die Grenze steigen, um zu gasen und die Säure zu durchmischen.",
      throttled:
        "Das Ladegerät hält eine Weile einen kleineren Strom als zuvor, wie eines, das zu warm geworden ist, und kehrt dann zurück.",
      "on-off-holding":
        "Das Ladegerät wartet, bis die Spannung auf eine untere Schwelle gesunken ist, lädt bis zu einer oberen und wartet wieder.",
      float: "Nach Erreichen der Grenze wird eine niedrigere Spannung gehalten, bei kleinem Strom.",
      pulses: "Der Strom geht immer wieder an und aus.",
      rest: "Kein Ladestrom; die Batteriespannung klingt ab.",
      interrupted: "Eine Weile kein Strom, mitten in einer Ladung, die dann weiterging.",
      discharge: "Strom fließt aus der Batterie.",
      "no-battery": "Kein Strom und fast keine Spannung: Die Klemmen oder die Leitungen des Rekorders waren von der Batterie ab.",
      reversed:
        "Eine negative Spannung: Klemmen oder Rekorder saßen an den falschen Polen. Gefahr: Ein so angeschlossenes Ladegerät kann brennen oder Funken schlagen.",
      unexplained: "Passt zu keiner der Arten.",
    },
    numbers: "Zahlen",
    numbersCaption: "Wie Zahlen geschrieben werden",
    even: "der wahre Wert liegt mit 95 % Wahrscheinlichkeit zwischen diesen Enden",
    uneven: "dasselbe, wenn die Enden nicht gleich weit vom Wert liegen",
    projected: "von einem Modell aus Gemessenem errechnet, nicht am Prüfplatz gesehen",
    stated: "von jemandem angegeben, etwa ein Preis",
    tie: "in einer sortierten Tabelle: von der Zeile darüber nicht zu unterscheiden",
    nothingClaimed: "der Hersteller verspricht nichts dergleichen, also gibt es nichts zu beurteilen",
    example: "Ein Beispiel.",
    small: "Dasselbe so klein wie im Vergleich; eine Lücke der Aufzeichnung unterbricht die Linie:",
    smallExample: "Beispiel eines kleinen Verlaufs mit einer Lücke",
    absentNumber: "kein Wert, und warum",
    figureLead: "Mit ihrer Methode und den Stellen in Dateien, auf denen sie beruht, steht eine Größe so da:",
    twoFigures: "Beispiel zweier Größen",
    findingHeading: "Ein Befund, ein Zweifel, ein Sicherheitshinweis",
    findingLead:
      "Ein Befund sagt, was ihn klären würde, wo er offen ist, und klappt seine Gründe auf; ein Balken am Rand ist ein Zweifel daran:",
    doubtLead: "Was die Prüfungen in einer Datei fanden, steht mit Zeile und Spalte da:",
    cautionLead: "Wo jemand nach den Klemmen greifen könnte, und überall, wo eine Batterie verschlossen ist:",
    madeUp: "Was für eine Vorführung erfunden ist, trägt dieses Zeichen beim Titel:",
  },

  notFound: {
    title: "Keine solche Seite",
    description: "Diese Adresse führt auf dieser Website nirgendwohin.",
    lead: "Diese Adresse führt nirgendwohin. Adressen veröffentlichter Ergebnisse ändern sich nie, der Link könnte also einen Tippfehler haben.",
    all: "Alle geprüften Ladegeräte ansehen",
  },

  writtenBy: (name) => `Von ${name}`,
  feeds: {
    ofCharger: (charger) => `Änderungen am Ergebnis von ${charger}`,
    ofSite: (site) => `Ergebnisse und Berichtigungen von ${site}`,
  },
};

import type { outward as source } from "../en/outward.tsx";

export const outward: typeof source = {
  headlines: {
    promises: "Was das Typenschild verspricht",
    way: "Der Weg zur vollen Säuredichte",
    current: "Ladestrom",
    voltage: "Ladeschlussspannung",
    leftConnected: "Angeschlossen gelassen",
    connections: "Ladegänge bis voll",
    hours: "Stunden bis voll",
    cost: "Kosten einer vollgeladenen Batterie",
    outcomes: {
      meets: "erfüllt die Zusage",
      "short of": "bleibt unter der Zusage",
      above: "liegt über der Zusage",
      "cannot tell": "nicht feststellbar",
      "not put to the test": "nicht auf die Probe gestellt",
    },
    statuses: {
      reached: "volle Säuredichte erreicht",
      "not reached": "volle Säuredichte nicht erreicht",
      "not known": "nicht bekannt, ob die volle Säuredichte erreicht wurde",
      abandoned: "vor der vollen Säuredichte abgebrochen",
      "no target": "keine Zieldichte",
    },
    claimed: (claim) => `zugesagt ${claim}`,
    holds: (voltage) => `hält ${voltage}`,
    mode: (mode) => `Betriebsart „${mode}“`,
    modeOn: (mode, battery) => `Betriebsart „${mode}“, an ${battery}`,
    modeOutcome: (mode, outcome) => `Betriebsart „${mode}“: ${outcome}`,
    battery: (name, capacity, construction) => `${name}, ${capacity}, ${construction}`,
    constructions: {
      "flooded-antimony": "Nassbatterie (Antimon)",
      "flooded-calcium": "Nassbatterie (Kalzium)",
      flooded: "Nassbatterie",
      EFB: "EFB",
      AGM: "AGM",
      gel: "Gel",
    },
    toTarget: (density, temperature) => `, bis ${density} bei ${temperature}`,
    asTested: "wie geprüft",
    allModes: "alle Betriebsarten",
    noClaim: "der Hersteller nennt keine, die sich beurteilen ließe",
    notLeftOn: "kein Test sagt, was es tut, wenn es angeschlossen bleibt",
    noTest: "kein Test ist veröffentlicht",
    noTestOfCharger: "kein Test dieses Ladegeräts ist veröffentlicht",
    noFigure: "dieser Test ergibt keinen solchen Wert",
    hardest: (tests, others) => `Gezeigt ist der schwerste von ${tests} Tests. Die anderen: ${others.join(", ")}.`,
    counted: (status, count) => `${status} (${count})`,
  },
  notice: {
    withdrawn: (on) => `Am ${on} zurückgezogen: Dieses Ergebnis gilt nicht mehr.`,
    concern: (on, what) => `In Zweifel seit ${on}: ${what}`,
    turned: (on, what) => `Urteil geändert am ${on}: ${what}`,
  },
  ofDay: (day) => (day === null ? "ohne Datum" : `vom ${day}`),
  resultLine: (version, method, fingerprint) => (
    <>
      Ergebnis {version} · Methode {method} · Fingerabdruck {fingerprint}
    </>
  ),
  warnings: {
    invented: (lead) => <>{lead("Erfundene Daten")}: Hier wird kein wirkliches Produkt beurteilt.</>,
    sells: "Der Herausgeber verkauft Ladegeräte oder Batterien.",
  },

  card: {
    title: (charger) => `Karte: ${charger}`,
    away: "Von der Karte weg",
    results: "Alle Ergebnisse dieses Ladegeräts",
    prints: "Druckt auf A6-Papier, bei 100 %",
    noAddress: "Diese Website nennt ihre Adresse nicht, daher kann kein Code zu ihr führen.",
    caution:
      "Beim Laden entsteht Wasserstoff, und die Säure verätzt: lüften, Augenschutz, keine Funken, niemals eine gefrorene Batterie laden. Es gelten das Datenblatt des Batterieherstellers und die örtlichen Vorschriften.",
    qrCode: (address) => `QR-Code von ${address}`,
  },
  embed: {
    title: (charger, site) => `${charger}: Ergebnisse von ${site}`,
    evidence: "Belege für jeden Wert",
    versions: "Fassungen und Berichtigungen",
  },

  quotation: {
    notStated: "nicht angegeben",
    absent: (kind, why) => `${kind}, ${why}`,
    claimed: (claim) => `, zugesagt ${claim}`,
    invented: "[Erfundene Daten] ",
    source: (site, version, method, figure) => `${site}, Ergebnis ${version}, Methode ${method}, Größe ${figure}`,
    blockInvented: "Erfundene Daten: Hier wird kein wirkliches Produkt beurteilt.",
    blockSells: "Der Herausgeber dieser Ergebnisse verkauft Ladegeräte oder Batterien.",
    fullDensity: (condition) => `Volle Säuredichte: ${condition}.`,
    blockSource: (site, version, method, fingerprint) => `${site}, Ergebnis ${version}, Methode ${method}, Fingerabdruck ${fingerprint}.`,
    newest: "Ist das noch das neueste Ergebnis? Belege für jeden Wert",
  },

  quote: {
    title: "Wie man diese Ergebnisse zitiert",
    description: "Was zu einem zitierten Wert gehört, was nicht fehlen darf, und Text, Code und Quellenangaben zum Kopieren.",
    lead: "Jeder darf diese Ergebnisse zitieren, auch ein Händler und ein Hersteller. Ein Wert ist so viel wert wie das, was daneben steht.",
    chargers: "Werte, Karten und Code für jedes Ladegerät",
    noCharger: "Es ist noch kein Ladegerät veröffentlicht.",
    toCopy: "Werte und Code zum Kopieren",
    toPrint: "Karte zum Drucken",
    versions: "Fassungen",
    citeSite: "Die ganze Website angeben",
    toPrograms: (file) => <>{file} sagt Programmen dasselbe.</>,
    feed: (link) => <>{link("Der Atom-Feed")} meldet jedes Ergebnis, jede Überarbeitung und jede Berichtigung.</>,
    noFeed: "Es gibt keinen Feed: Er braucht die Adresse der Website und datierte Ergebnisse, und die Angaben nennen nicht beides.",
    rules: "Regeln",
    rule: {
      whole: {
        lead: "Zu einem Wert gehören Einheit, Intervall, Bedingung, Datum, Kennung und ein Link.",
        more: "Die Zeilen auf der Seite jedes Ladegeräts haben alle sechs.",
      },
      verdict: {
        lead: "Kein Urteil wird gekürzt.",
        more: "Was nicht feststellbar ist, was nicht auf die Probe gestellt wurde und was gegen das Ladegerät spricht, gehört ebenso dazu.",
      },
      version: {
        lead: "Werte werden nur innerhalb einer Fassung der Methode verglichen.",
        more: (version, methods) => (
          <>
            Dies ist Fassung {version}; {methods("was jede Methode tut")}. Abweichende Bedingungen wie Batterie oder Temperatur werden
            genannt.
          </>
        ),
      },
      ended: {
        lead: "„Die Aufzeichnung endete“ heißt nicht „das Ladegerät war fertig“.",
        more: "Und „nicht aufgezeichnet“ ist nicht dasselbe wie null.",
      },
      endorsement: {
        lead: "Ein Zitat ist keine Empfehlung.",
        more: "Es gibt kein Siegel und keine Punktzahl, und aus diesen Ergebnissen darf keine gemacht werden.",
      },
      corrected: {
        lead: "Ein berichtigtes Ergebnis wird überall berichtigt, wo es zitiert ist.",
        more: (hasFeed) =>
          `Die Einbettung tut das von selbst; bei Text und Code sehen Sie ab und zu auf der Seite der Fassungen nach${hasFeed ? " oder folgen Sie ihrem Feed." : "."}`,
      },
      invented: {
        lead: "Diese Daten sind erfunden.",
        more: "Sie dürfen zitiert werden, um zu zeigen, wie die Website funktioniert, niemals als Ergebnisse eines Produkts.",
      },
    },
    licence: (licence) => `Lizenz der Daten und Texte: ${licence ?? "nicht angegeben; fragen Sie den Herausgeber"}.`,
    ofCharger: (charger) => `Zitieren: ${charger}`,
    ofChargerDescription: (charger) => `Werte von ${charger} mit Einheit, Bedingung, Datum, Kennung und Link, und Code für andere Seiten.`,
    result: (version, method, fingerprint) => (
      <>
        Ergebnis {version}, Methode in Fassung {method}, Fingerabdruck {fingerprint}.
      </>
    ),
    allResults: "Alle Ergebnisse",
    versionsLink: "Fassungen",
    rulesLink: "Regeln zum Zitieren",
    verdict: "Das ganze Urteil",
    figures: "Einzelne Werte",
    evidence: "Beleg",
    method: "Methode",
    inPage: "In einer anderen Seite",
    onPaper: "Auf Papier",
    counterCard: "Karte für den Ladentisch, A6",
    citations: "Quellenangaben",
    noCode: "Diese Website nennt ihre Adresse nicht, daher gibt es keinen Code, der anderswo funktionieren würde.",
    wouldShow: "Die Seite, die er zeigen würde",
    frame: (newest) => (
      <>
        Ein Rahmen zeigt immer das {newest("neueste")} Ergebnis. Er führt kein Skript aus, setzt keine Cookies und fragt sonst niemanden
        nach etwas.
      </>
    ),
    seeFrame: "Ansehen, was er zeigt",
    frameCode: "Code des Rahmens",
    block:
      "Ein Textblock bleibt, wie er am Tag des Kopierens war; darum nennt er die zitierte Fassung und führt zu der Seite, die sagt, ob es eine neuere gibt. Bitte kopieren Sie ihn ganz.",
    blockCode: "Code des Blocks",
  },

  versions: {
    title: (charger) => `Fassungen des Ergebnisses: ${charger}`,
    description: (charger) => `Welches Ergebnis von ${charger} das neueste ist und was sich seit einem früheren geändert hat.`,
    undated: "Die Angaben nennen kein Datum für dieses Ergebnis, daher lassen sich seine Fassungen nur am Fingerabdruck unterscheiden.",
    newest: (version) => <>Das neueste Ergebnis ist vom {version}.</>,
    madeBy: (method, fingerprint) => (
      <>
        Es entstand nach Fassung {method} der Methode, und sein Fingerabdruck ist {fingerprint}.
      </>
    ),
    asItStands: (charger) => `${charger}, heutiger Stand`,
    fromCopy:
      "Sie kommen von einer Kopie mit anderem Datum, anderer Fassung der Methode oder anderem Fingerabdruck? Dann zeigt sie ein älteres Ergebnis. Die Tabelle sagt, was sich seither geändert hat; eine Änderung außerhalb der Tabelle, etwa eine bessere Formulierung, ändert nur den Fingerabdruck.",
    undatedCopy: "Eine Kopie ohne Datum entstand, bevor ein Datum angegeben war: Vergleichen Sie ihren Fingerabdruck.",
    fingerprint: "Der Fingerabdruck",
    fingerprintNote: (sums, print, check) => (
      <>
        Er ist der Anfang der SHA-256-Prüfsumme von {sums}, der Liste der Prüfsummen aller Ergebnisse und Rohdateien dieses Ladegeräts:{" "}
        {print} gibt ihn aus, und {check} prüft die Dateien. Er zeigt, dass die Dateien dieselben sind, nicht, dass eine Ablesung richtig
        war.
      </>
    ),
    howToQuote: "Wie man dieses Ergebnis zitiert",
    feed: "Feed der Änderungen an diesem Ergebnis, Atom",
    nothingDated: "Keine Veröffentlichung, Überarbeitung oder Berichtigung hat in den Angaben ein Datum.",
    caption: "Fassungen, die neueste zuerst",
    columns: { version: "Fassung", holds: "Gilt sie noch?", happened: "Was an dem Tag geschah" },
    isNewest: "Dies ist die neueste.",
    superseded: (changes) => `Es gibt ein neueres Ergebnis: seither ${changes === 1 ? "eine Änderung" : `${changes} Änderungen`}.`,
    verdictChanged: "Das Urteil hat sich geändert.",
    verdictStands: "Das Urteil bleibt.",
    noChangeNoted: "Eine Änderung des Urteils ist nicht vermerkt.",
    published: (test) => `Ergebnisse des Tests „${test}“ veröffentlicht.`,
  },

  corrections: {
    title: "Berichtigungen",
    description: "Was nach der Veröffentlichung geändert wurde, warum, und ob sich ein Urteil änderte.",
    noPolicy: "Diese Website nennt keine Grundsätze für Berichtigungen.",
    none: "Bisher wurde nichts berichtigt.",
    caption: "Berichtigungen, die neueste zuerst",
    columns: { date: "Datum", charger: "Ladegerät", kind: "Art", what: "Was sich änderte", why: "Warum", verdict: "Urteil" },
    changed: "geändert",
    stands: "bleibt",
    kindsHeading: "Arten",
    kinds: {
      clarification: "Klarstellung",
      revision: "Überarbeitung",
      correction: "Berichtigung",
      concern: "Zweifel",
      withdrawal: "Rücknahme",
    },
    meanings: {
      clarification: "die Worte waren unklar; kein Wert ändert sich",
      revision: "bessere Daten oder eine bessere Methode; der alte Wert war nach damaligem Wissen richtig",
      correction: "ein Fehler wurde gemacht und behoben",
      concern: "einem Zweifel wird nachgegangen",
      withdrawal: "das Ergebnis gilt nicht mehr; seine Seite bleibt, gekennzeichnet",
    },
  },
};

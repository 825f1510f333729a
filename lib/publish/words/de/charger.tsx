import { withUnit } from "../../../units/format.ts";
import type { charger as source } from "../en/charger.tsx";
import { oneOrMany } from "../plural.ts";

export const charger: typeof source = {
  sections: {
    claims: "Hält es, was es verspricht?",
    time: "Wie lange dauert es?",
    cost: "Was kostet es?",
    safe: "Kann es gefahrlos angeschlossen bleiben?",
    battery: "Zu welcher Batterie passt es?",
    "not-seen": "Was nicht zu sehen war",
    words: "Das Wort des Prüfers",
    evidence: "Belege",
    disclosures: "Offenlegung und Berichtigungen",
  },
  makerNotStated: "Hersteller nicht angegeben",
  priceNotStated: "Preis nicht angegeben",
  priced: (amount, where, on) => `${amount}${where === null ? "" : `, ${where}`}, ${on === null ? "Tag nicht angegeben" : `am ${on}`}`,
  noTime: "Noch sagt kein Test, wie lange es dauert.",
  figures: "Werte dieses Ladegeräts",
  noPrice: "Ein Preis ist nicht angegeben.",
  notLeftOn: "Kein Test sagt, was es tut, wenn es angeschlossen bleibt.",
  nothingMissing: "Es fehlt nichts, was diese Tests zeigen sollten.",
  nothingWritten: "Der Prüfer hat zu diesem Ladegerät nichts geschrieben.",
  by: (name) => `, von ${name}`,
  elsewhere: "Dieses Ergebnis an anderer Stelle",
  card: "Karte zum Ausdrucken für den Ladentisch",
  quote: "Dieses Ergebnis zitieren oder einbetten",
  versions: "Fassungen dieses Ergebnisses",
  asJson: "Alle Ergebnisse dieses Ladegeräts, JSON",

  mode: (name) => `Betriebsart „${name}“`,
  lettersMayGoOn: "Keine Aufzeichnung reichte bis zum Ende der Ladung, daher können weitere Buchstaben folgen.",
  asRecorded: (recording, test) => `Wie aufgezeichnet in ${recording} des Tests ${test}.`,
  drawn:
    "Spannung durchgezogen, Strom gestrichelt, jeweils in eigener Skala; alle Phasen haben dieselbe Breite, wie lange sie auch dauerten.",
  moreStages: (count) => `${count} weitere ${oneOrMany(count, "Phase steht", "Phasen stehen")} in der Tabelle des Tests.`,
  stageDrawn: (stage, length, levels) => `${stage}, ${length}: ${levels}`,
  untestedMode: "Diese Betriebsart wurde nicht auf die Probe gestellt.",
  claimsOfMode: (name) => `Zusagen der Betriebsart „${name}“, beurteilt über ihre Tests`,
  statedOf: (name) => `Was der Hersteller zu „${name}“ angibt`,

  costs: "Kosten nach Tests",
  cost: "Kosten",
  notTested: "Es wurde noch nicht geprüft.",
  tests: "Tests dieses Ladegeräts",
  testColumns: { test: "Test", mode: "Betriebsart", battery: "Batterie", target: "Ziel" },
  notMeasured: "nicht gemessen",
  noEvidence: "Es gibt noch keine Belege: Es wurde kein Test gemacht.",
  profile: (recording) => `Ladeverlauf, ${recording}`,
  longest: "Die längste Aufzeichnung des Tests. Nummern und Schattierung sind ihre Phasen:",
  endedBy: "Beendet hat die Aufzeichnung:",

  makerTold: {
    notStated: "Ob der Hersteller informiert wurde: nicht angegeben.",
    told: (on) =>
      on === null ? "Der Hersteller wurde informiert, der Tag ist nicht angegeben" : `Der Hersteller wurde am ${on} informiert`,
    noAnswer: "; eine Antwort ist nicht angegeben.",
    answered: (on) => (on === null ? " und antwortete, der Tag ist nicht angegeben:" : ` und antwortete am ${on}:`),
  },
  noCorrections: "Bisher keine Berichtigungen.",
  howCorrected: "Wie berichtigt wird",
  changesVerdict: "Das Urteil ändert sich.",
  verdictStands: "Das Urteil bleibt.",
  noticedBy: (name) => ` Bemerkt von ${name}.`,

  forecast: {
    otherVoltage: (mode, voltage) =>
      `Die Betriebsart „${mode}“ ist für ${voltage}, daher lässt sie sich an der 12-V-Referenzbatterie nicht mit anderen vergleichen.`,
    projectedFor: (battery, how) => (
      <>
        Hochgerechnet, Batterie: {battery} ({how("wie")}). Diese Ladung hat niemand gesehen; so würde sich das Ladegerät nach seinen
        Aufzeichnungen verhalten.
      </>
    ),
    onReference: (mode) => `Betriebsart „${mode}“ an der Referenzbatterie, hochgerechnet`,
    behaves: (mode) => `Wie sich die Betriebsart „${mode}“ laut Hochrechnung verhält`,
    notKnownOfIt: "Nicht bekannt ist:",
    readyBy: (mode, kind, airC) => `Betriebsart „${mode}“: gebrauchte ${kind} bei ${airC}, wann bereit (95 %), hochgerechnet`,
    kinds: { flooded: "Nassbatterien", AGM: "AGM-Batterien" },
    columns: { battery: "Batterie", flat: "Entladen", note: "Hinweis" },
    inHours: (hours) => `in ${hours} h`,
    outside: (low, high) => `Außerhalb der ${low} bis ${high} Ah, die der Hersteller nennt.`,
    partlyOutside: (low, high) => `Teils außerhalb der ${low} bis ${high} Ah, die der Hersteller nennt.`,
    asBefore: (battery, test) => `${battery}, vorgefunden wie vor Test ${test}`,
    onOwnBatteries: (mode) => `Betriebsart „${mode}“ noch einmal an Batterien dieses Prüfplatzes, hochgerechnet`,
    topUp: {
      moreLikely: (earliest, middle) => `${earliest}, eher ${middle}`,
      moreThanMonths: (months) => withUnit(`mehr als ${months}`, oneOrMany(months, "Monat", "Monate")),
      months: (months) => withUnit(String(months), oneOrMany(months, "Monat", "Monate")),
      days: (days) => withUnit(String(days), oneOrMany(days, "Tag", "Tage")),
      lessThanADay: "weniger als ein Tag",
    },
    season: {
      unseenLead: (mode) => `Ein Monat angeschlossen in Betriebsart „${mode}“:`,
      unseen: "niemand hat aufgezeichnet, was es mit einer vollen Batterie tut",
      caption: (mode) => `Betriebsart „${mode}“, ein Monat an einer vollen 60-Ah-Nassbatterie, hochgerechnet`,
      columns: {
        place: "Ort",
        held: "Gehaltene Spannung",
        window: "Verglichen mit dem dortigen Fenster der Erhaltungsladung",
        windowShort: "Erhaltungsfenster",
        energy: "Energie",
        water: "Wasser, höchstens",
        topUp: "Wasser nachfüllen frühestens nach",
        restarts: "Neustarts am Tag",
      },
      topUpNote:
        "Das Wasser ist das Meiste, was verloren gehen kann, daher ist die Zeit bis zum Nachfüllen die früheste. Prüfen Sie den Säurestand trotzdem jeden Monat; nur gereinigtes Wasser, nach dem Laden, niemals Säure.",
      windows: {
        inside: "im Fenster der Erhaltungsladung",
        below: "unter dem Erhaltungsfenster: hält die Batterie vielleicht nicht voll",
        above: "über dem Erhaltungsfenster: kostet Wasser und Lebensdauer",
        partly: "teils im Fenster der Erhaltungsladung",
        "holds no voltage": "hält keine Spannung: ist aus oder schaltet ein und aus",
        "not known": "niemand hat aufgezeichnet, was es mit einer vollen Batterie tut",
      },
    },
  },
};

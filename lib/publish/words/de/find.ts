import type { find as source } from "../en/find.ts";
import { oneOrMany } from "../plural.ts";

export const find: typeof source = {
  kinds: {
    flooded: "Nassbatterie, mehr ist nicht bekannt",
    "flooded-antimony": "Nassbatterie mit Stopfen zum Nachfüllen (Antimon)",
    "flooded-calcium": "Nassbatterie, wartungsfrei (Kalzium)",
    EFB: "EFB (Start-Stopp, nass)",
    AGM: "AGM (verschlossen)",
    gel: "Gel (verschlossen)",
  },
  kindNames: {
    flooded: "Nassbatterie",
    "flooded-antimony": "Nassbatterie (Antimon)",
    "flooded-calcium": "Nassbatterie (Kalzium)",
    EFB: "EFB",
    AGM: "AGM",
    gel: "Gel",
  },
  conditions: {
    new: "so gut wie neu",
    used: "gebraucht, gepflegt",
    neglected: "vernachlässigt: wochenlang entladen",
    "not stated": "weiß ich nicht",
  },
  flat: {
    slightly: "Leicht entladen",
    half: "Halb entladen",
    flat: "Entladen",
    "very-flat": "Tief entladen",
    left: (word, percent) => `${word} (etwa ${percent} übrig)`,
    "rest-voltage": "Ich habe die Ruhespannung gemessen",
    density: "Ich habe die Säuredichte gemessen",
  },
  deadlines: {
    "tomorrow-morning": "morgen früh, 8:00",
    "tomorrow-evening": "morgen Abend, 18:00",
    "sunday-evening": "Sonntagabend, 18:00",
    "12h": "in 12 Stunden",
    "24h": "in 24 Stunden",
    "48h": "in 48 Stunden",
    at: "zu Tag und Uhrzeit",
  },
  verdicts: { will: "schafft es", may: "schafft es vielleicht", "will not": "schafft es nicht", "not advised": "nicht ratsam" },

  invented: "erfundene Daten",

  complaints: {
    capacity: (low, high) => `Die Kapazität muss eine Zahl von ${low} bis ${high} Ah sein, wie auf der Batterie gedruckt.`,
    temperature: (low, high) => `Die Temperatur muss eine Zahl von ${low} bis ${high} °C sein.`,
    price: "Der Preis einer kWh muss eine Zahl sein, nicht unter null.",
    density: "Geben Sie die Säuredichte in kg/l an, etwa 1,15; Batteriesäure liegt zwischen 1,00 und 1,35.",
    restVoltage: (cells, dead) =>
      `Keine ruhende Säure in ${cells} gesunden Zellen ergibt diese Spannung. Geben Sie die Ruhespannung in V an; weit unter ${dead} V kann eine Zelle tot sein: Lassen Sie die Batterie vor dem Laden ansehen.`,
    noDate: "Geben Sie Tag und Uhrzeit an, zu der die Batterie bereit sein muss.",
    passed: "Dieser Zeitpunkt ist vorbei.",
    tooLate: "Das ist mehr als zwei Wochen hin: Jedes Ladegerät mit vernünftigem Strom ist längst fertig oder wird es nie.",
  },

  apart: {
    notRecorded: "keine Aufzeichnung zeigt, was diese Betriebsart tut, daher lässt sich nichts hochrechnen",
    voltage: (tested, yours) => `es wurde an ${tested}-V-Batterien geprüft, und Ihre hat ${yours} V`,
    kind: (kind, named, family) =>
      `soweit bekannt nicht für diese Art (${kind}): ${named === null ? "der Hersteller nennt keine Batteriearten" : `die Worte des Herstellers sind ${named}`}, und niemand hat es an einer ${family === "sealed" ? "verschlossenen Batterie" : "Nassbatterie"} geprüft`,
  },
  stated: (words, from) => `„${words}“ (${from})`,

  sources: { label: "Typenschild", box: "Verpackung", manual: "Anleitung", "web page": "Webseite", seller: "Händler" },

  warnings: {
    outside: (low, high) => `Außerhalb der ${low} bis ${high} Ah, die der Hersteller nennt.`,
    largest: (ah) => `Jenseits der Belege: Die größte Batterie, an der es geprüft wurde, hat ${ah} Ah.`,
    smallest: (ah) => `Jenseits der Belege: Die kleinste Batterie, an der es geprüft wurde, hat ${ah} Ah.`,
    otherKind: (tested, asked, named) =>
      `Jenseits der Belege: geprüft an ${tested.join(" und ")}, nicht an ${asked}.${named === null ? "" : ` Die Worte des Herstellers: ${named}.`}`,
    temperatures: (named) => `Achten Sie auf die Temperaturen, die der Hersteller nennt: ${named}.`,
    voltage: (highest, limit, isSealed) =>
      `Vorsicht: Nach der Aufzeichnung geht es bis ${highest} V oder mehr, und eine solche Batterie bekommt üblicherweise höchstens ${limit}. Das belastet sie${isSealed ? ", kann sie austrocknen und erhitzen" : " und lässt sie stark gasen"}; sehen Sie zuerst im Datenblatt ihres Herstellers nach.`,
  },
  against: (reason, { formatNumber, formatStated }) => {
    switch (reason.id) {
      case "may-be-frozen":
        return "die Batterie könnte gefroren sein: zuerst auftauen und nach Rissen sehen";
      case "frozen":
        return "ihre Säure könnte gefroren sein: Eine gefrorene Batterie darf nicht geladen werden; zuerst auftauen und nach Rissen sehen";
      case "sealed-flat":
        return "eine so tief entladene verschlossene Batterie braucht das Verfahren ihres Herstellers, unter Aufsicht";
      case "sealed-voltage":
        return `es geht bis ${formatNumber(reason.peakV, 1)} V (12-V-Batterie), und eine verschlossene Batterie bekommt üblicherweise höchstens ${formatNumber(reason.limitV, 1)} V: Sie trocknet aus und kann sich erhitzen`;
      case "current":
        return `${formatNumber(reason.currentA, 1)} A sind mehr, als eine solche Batterie bekommen sollte (${formatNumber(reason.mostA, 1)} A, das ${formatStated(reason.share, "")}-fache ihrer Kapazität)`;
    }
  },

  leftOn: "Abnehmen, sobald die Batterie voll ist:",

  cautions: {
    frozen: (freezesAt) =>
      `Sie könnte gefroren sein: So entladen gefriert ihre Säure bei etwa ${freezesAt} °C, oben schon früher. Niemals eine gefrorene Batterie laden. Langsam an einem belüfteten Ort auftauen, nach Rissen und Beulen sehen und mit der dann gemessenen Temperatur erneut fragen.`,
    veryFlat:
      "Sie ist tief entladen: Sie kommt vielleicht nicht zurück, eine tote Zelle kann sie erhitzen, und manche Ladegeräte starten unter einer gewissen Spannung nicht, wovon keine Hochrechnung hier weiß. Die erste Stunde beobachten; aufhören, wenn sie heiß wird, zischt oder riecht.",
    sealed:
      "Sie ist verschlossen: nicht öffnen und nur eine Betriebsart benutzen, die ihr Hersteller zulässt. Eine zu hohe Spannung trocknet sie unwiderruflich aus und kann sie immer weiter erhitzen.",
    hot: "Wo sie steht, ist es heiß: zuerst abkühlen lassen; eine heiße Batterie gast stark und nimmt Schaden.",
    current: (most, share) =>
      `Eine solche Batterie sollte nicht mehr als etwa ${most} A bekommen (das ${share}-fache ihrer Kapazität, gängige Praxis), wenn das Datenblatt ihres Herstellers nichts anderes sagt. Lüften: Beim Laden entsteht Wasserstoff.`,
    name: "Sicherheitshinweise für diese Batterie",
    sections: { frozen: "Zu gefrorenen Batterien", sealed: "Zu verschlossenen Batterien", hydrogen: "Zu Wasserstoff" },
  },

  shown: {
    notWithin: (hours, never, draws) =>
      never === draws ? `nicht binnen ${hours} h` : `nicht binnen ${hours} h in ${never} von ${draws} Ziehungen`,
    atBest: (best, never) => `bestenfalls ${best}; ${never}`,
    someNever: (ready, never) => `${ready}; ${never}`,
    range: (low, high) => ` (${low} bis ${high})`,
  },

  answer: {
    columns: { charger: "Ladegerät", inTime: "Rechtzeitig", ready: "Bereit nach", cost: "Kosten", mind: "Zu beachten", evidence: "Belege" },
    caption: (battery, charged, temperature, deadline) =>
      `${battery}, zu ${charged} geladen, ${temperature}: bereit bis ${deadline}, hochgerechnet`,
    heading: "Welche Ladegeräte",
    table: "Ladegeräte für Ihre Batterie (Tabelle)",
    fromNow: (day, length) => `${day}, in ${length}`,
    notAdvised: "Für diese Batterie in ihrem Zustand nicht ratsam",
    others: (count) => (count === 1 ? "Das andere dieser Gruppe zeigen" : `Die ${count} anderen dieser Gruppe zeigen`),
    key: (draws, horizon, isCellOfMatrix) =>
      `Was von Ihrer Batterie und einem Ladegerät nicht bekannt ist, wird ${draws}-mal gezogen, für alle Ladegeräte gleich; ein Prozentwert ist der Anteil der Ziehungen, in denen es rechtzeitig ist, und ein Intervall umfasst die mittleren 95 %. Ladegeräte, die die Ziehungen nicht unterscheiden, stehen zusammen, in der Reihenfolge ihrer Namen; niemand kann einen Platz kaufen. Die Energie zählt, bis die Batterie voll ist, das Ladegerät endgültig aus ist oder ${horizon} h vergangen sind. Von Säureschichtung oder einer schwachen Zelle weiß keine Hochrechnung.${isCellOfMatrix ? " Ihre Frage ist ein Feld der Tabelle auf der Seite eines Ladegeräts und wird mit denselben Ziehungen beantwortet." : ""}`,
    priceNotStated: "Preis nicht angegeben",
    toBuy: (amount, on) => `${amount} beim Kauf, ${on === null ? "Tag nicht angegeben" : on}`,
    thisCharge: (energy, money) => `Diese Ladung: ${energy}${money === null ? "" : `, ${money}`}`,
    group: (size, place, groups, draws) => {
      const tied = size > 1 ? `: ${size}, die ${draws} Ziehungen nicht unterscheiden` : "";
      if (groups === 1) return size > 1 ? `Alle gleich${tied}` : "Das einzige";
      return `${place === 0 ? "Am ehesten rechtzeitig" : "Weniger wahrscheinlich als die oben"}${tied}`;
    },
    notKnown: (count) => `Nicht bekannt: ${count}`,
    forecasts: "seine Hochrechnungen",
    apart: "Nicht gefragt",
  },

  status: {
    noneAsked: "Kein Ladegerät wurde hier an einer solchen Batterie geprüft. Die unten stehen abseits, jedes mit seinem Grund.",
    working: (chargers) => `${chargers} ${oneOrMany(chargers, "Ladegerät wird", "Ladegeräte werden")} berechnet…`,
    done: (chargers) => `${chargers} von ${chargers} Ladegeräten berechnet.`,
    doneSoFar: (done, chargers) => `${done} von ${chargers} Ladegeräten berechnet, die aussichtsreichsten zuerst…`,
    failed: "Die Hochrechnungen ließen sich in diesem Browser nicht ausführen. Die Tabelle unten gilt ohne sie.",
    fetching: "Was über die Ladegeräte bekannt ist, wird geholt…",
    fromFolder:
      "Direkt aus einem Ordner geöffnet, kann diese Seite ihre Daten nicht lesen: Browser erlauben es nicht. Stellen Sie die Website auf einen Webserver oder nutzen Sie die Tabelle unten.",
    notFetched: (why) => `Was über die Ladegeräte bekannt ist, ließ sich nicht holen: ${why}. Die Tabelle unten gilt ohne es.`,
  },
};

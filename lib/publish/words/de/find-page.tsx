import type { findPage as source } from "../en/find-page.tsx";
import { oneOrMany } from "../plural.ts";

export const findPage: typeof source = {
  title: "Ein Ladegerät finden",
  description:
    "Meine Batterie, wie entladen, wie kalt, bis wann bereit: welche Ladegeräte es schaffen, wie sicher das ist und was es kostet. Hochgerechnet.",
  lead: "Welches Ladegerät bringt meine Batterie zurück, bis wann und zu welchen Kosten?",
  projected: (lead, forecast) => (
    <>
      {lead("Hochgerechnet, nicht gesehen:")} Jede Antwort ist eine {forecast("Hochrechnung")} dessen, was ein Ladegerät nach seinen
      Aufzeichnungen an Ihrer Batterie täte. Diese Ladung hat niemand gesehen. „Bereit“ sind 95 % dessen, was die Batterie fasst.
    </>
  ),
  caution: (lead) => (
    <>
      {lead("Das Datenblatt des Batterieherstellers, die örtlichen Vorschriften und das Urteil von Fachkräften gehen vor.")} Säure verätzt,
      Wasserstoff explodiert, ein Kurzschluss schmilzt Schraubenschlüssel, und eine gefrorene Batterie darf niemals geladen werden.
    </>
  ),
  needsScripts: "Das Formular für Ihre eigene Batterie braucht Skripte. Die Tabelle unten nicht.",
  usual: "Übliche Batterien",
  none: "Noch sagt keine Aufzeichnung, was ein Ladegerät an einer Nassbatterie täte.",
  key: (word, data) => (
    <>
      {word("Schafft es")} heißt rechtzeitig in mindestens 90 % der Ziehungen, {word("schafft es vielleicht")} in mehr als 10 %. In einem
      Feld stehen die Ladegeräte in der Reihenfolge ihrer Namen. Prozentwerte und was gegen ein Ladegerät spricht, stehen auf seiner Seite.
      Alles, was das Formular weiß: {data("find.json")}.
    </>
  ),
  form: {
    battery: "Ihre Batterie",
    voltage: "Spannung",
    capacity: "Kapazität, Ah",
    capacityHint: "Wie gedruckt, für 20-stündige Entladung",
    kind: "Art",
    condition: "Zustand",
    flatHeading: "Wie entladen sie ist",
    flat: "Entladen",
    restV: "Ruhespannung, V",
    restVHint: "An den Polen, nach vier oder mehr Stunden Ruhe, nichts angeschlossen",
    density: "Säuredichte, kg/l",
    densityHint: "Bei 25 °C, Mittel der Zellen. Für je 10 °C, um die die Säure kälter ist, 0,006 abziehen",
    air: "Wie kalt es dort ist, °C",
    airHint: "Die Batterie hat dort gestanden",
    when: "Bis wann, und der Strompreis",
    by: "Bereit bis",
    at: "Tag und Uhrzeit",
    atHint: "Nach der Uhr dieses Geräts",
    price: "Preis einer kWh",
    priceHint: "Darf leer bleiben; in der Währung der Gerätepreise",
    submit: "Ladegeräte finden",
    reset: "Neu beginnen",
  },
  matrix: (voltage, airC) =>
    `Gebrauchte ${voltage}-V-Nassbatterien bei ${airC} °C: welche Ladegeräte sie bis wann bereit haben (95 %), hochgerechnet`,
  will: "schafft es:",
  may: "schafft es vielleicht:",
  willNot: (count) => `${count} ${oneOrMany(count, "schafft", "schaffen")} es nicht`,
  notAdvised: (count) => `${count} nicht ratsam`,
  toComeOff: "abnehmen, wenn voll",
  more: (count) => `; und ${count} ${oneOrMany(count, "weiteres", "weitere")}`,
};

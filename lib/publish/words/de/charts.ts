import type { charts as source } from "../en/charts.ts";
import { oneOrMany } from "../plural.ts";

export const charts: typeof source = {
  hoursFromFirstEvent: "Stunden ab dem ersten Ereignis",
  hoursFromFirstRow: "Stunden ab der ersten Zeile der Aufzeichnung",
  densityAxis: "Säuredichte bei 25 °C, kg/l",
  voltageAxis: "Spannung, V",
  currentAxis: "Strom, A",
  target: (density) => `Ziel ${density} kg/l`,
  densitySentence: (ends, target) =>
    `Säuredichte im Lauf der Zeit. ${ends.join("; ")}. ${target === null ? "Es wurde kein Ziel gesetzt." : `Das Ziel ist ${target} kg/l.`}`,
  densityEnds: (label, first, firstAt, last, lastAt) => `${label}: ${first} nach ${firstAt}, ${last} nach ${lastAt}`,
  stageFor: (number, stage, length) => `${number} ${stage}, ${length}`,
  profileSentence: (recording, stages, gaps, ending) =>
    `Spannung und Strom im Lauf der Zeit, ${recording}. Phasen: ${stages.join("; ") || "keine gefunden"}. ${gaps === 0 ? "Keine Lücken" : `${gaps} ${oneOrMany(gaps, "Lücke", "Lücken")}`}. Beendet hat die Aufzeichnung: ${ending}.`,
  witnesses: {
    density: "Säuredichte",
    "rest-voltage": "Ruhespannung",
    "charge-balance": "Ladungsbilanz",
    cranking: "Kaltstartstrom",
  },
  together: "Alle zusammen",
  visit: (number) => `Besuch ${number}`,
  nothingExamined: "Nichts wurde untersucht.",
  witnessesSentence: (visits, low, high) =>
    `Ladezustand der Batterie bei ${visits} ${oneOrMany(visits, "Besuch", "Besuchen")}, nach jedem Zeugen allein und nach allen zusammen; beim letzten ergeben alle zusammen ${low} bis ${high} %.`,
};

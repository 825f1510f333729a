import type { charts as source } from "../en/charts.ts";
import { polishForm } from "../plural.ts";

export const charts: typeof source = {
  hoursFromFirstEvent: "Godziny od pierwszego zdarzenia",
  hoursFromFirstRow: "Godziny od pierwszego wiersza zapisu",
  densityAxis: "Gęstość w 25 °C, kg/l",
  voltageAxis: "Napięcie, V",
  currentAxis: "Prąd, A",
  target: (density) => `cel ${density} kg/l`,
  densitySentence: (ends, target) =>
    `Gęstość elektrolitu w czasie. ${ends.join("; ")}. ${target === null ? "Celu nie wyznaczono." : `Cel to ${target} kg/l.`}`,
  densityEnds: (label, first, firstAt, last, lastAt) => `${label}: ${first} po ${firstAt}, ${last} po ${lastAt}`,
  stageFor: (number, stage, length) => `${number} ${stage} przez ${length}`,
  profileSentence: (recording, stages, gaps, ending) =>
    `Napięcie i prąd w czasie, ${recording}. Etapy: ${stages.join("; ") || "nie znaleziono"}. ${gaps === 0 ? "Bez luk" : `${gaps} ${polishForm(gaps, "luka", "luki", "luk")}`}. Co zakończyło zapis: ${ending}.`,
  witnesses: {
    density: "Gęstość",
    "rest-voltage": "Napięcie spoczynkowe",
    "charge-balance": "Bilans ładunku",
    cranking: "Prąd rozruchowy",
  },
  together: "Wszyscy razem",
  visit: (number) => `wizyta ${number}`,
  nothingExamined: "Niczego nie zbadano.",
  witnessesSentence: (visits, low, high) =>
    `Stan naładowania akumulatora przy ${visits} ${polishForm(visits, "wizycie", "wizytach", "wizytach")}, według każdego świadka z osobna i wszystkich razem; przy ostatniej wszyscy razem wskazują ${low} do ${high} %.`,
};

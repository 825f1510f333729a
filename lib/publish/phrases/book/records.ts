/** Generated values of records, which stand among what people wrote: how a battery is built, how well an instrument measures. */
import type { Chapter, Phrase } from "../pattern.ts";

const constructions = [
  { en: "flooded, antimony", pl: "z ciekłym elektrolitem, antymonowy", de: "Nassbatterie, Antimon" },
  { en: "flooded, calcium", pl: "z ciekłym elektrolitem, wapniowy", de: "Nassbatterie, Kalzium" },
  { en: "flooded", pl: "z ciekłym elektrolitem", de: "Nassbatterie" },
  { en: "gel", pl: "żelowy", de: "Gel-Batterie" },
] as const satisfies readonly Phrase[];

export const records = {
  text: [
    ...constructions,
    { en: "{amount:quantity}", pl: "{amount}", de: "{amount}" },
    { en: "{day:date}", pl: "{day}", de: "{day}" },
    {
      en: "{voltage:quantity}, {cells} cells",
      pl: "{voltage}, {cells} {cells|cela|cele|cel}",
      de: "{voltage}, {cells} {cells|Zelle|Zellen}",
    },
    { en: "{capacity:quantity} (C{rate}, printed)", pl: "{capacity} (C{rate}, z etykiety)", de: "{capacity} (C{rate}, aufgedruckt)" },
    { en: "{capacity:quantity} (C{rate}, measured)", pl: "{capacity} (C{rate}, zmierzona)", de: "{capacity} (C{rate}, gemessen)" },
    { en: "{current:quantity} ({standard:ratingStandard})", pl: "{current} ({standard})", de: "{current} ({standard})" },
    { en: "{density} (kg/l at {temperature} °C)", pl: "{density} (kg/l w {temperature} °C)", de: "{density} (kg/l bei {temperature} °C)" },
    {
      en: "{density} (SG {reference:name})",
      pl: "{density} (gęstość względna {reference})",
      de: "{density} (relative Dichte {reference})",
    },
    { en: "kg/l at {temperature} °C", pl: "kg/l w {temperature} °C", de: "kg/l bei {temperature} °C" },
    { en: "SG {reference:name}", pl: "gęstość względna {reference}", de: "relative Dichte {reference}" },
    { en: "±({parts:accuracyPart+plus}), from {source:accuracySource}", pl: "±({parts}), {source}", de: "±({parts}), {source}" },
    {
      en: "resolution {resolution:quantity} only, from {source:accuracySource}",
      pl: "tylko rozdzielczość {resolution}, {source}",
      de: "nur Auflösung {resolution}, {source}",
    },
    { en: "{standard:ratingStandard}, by conductance", pl: "{standard}, z konduktancji", de: "{standard}, nach Leitwert" },
    { en: "{standard:ratingStandard}, by load", pl: "{standard}, pod obciążeniem", de: "{standard}, unter Last" },
    { en: "{standard:ratingStandard}, by not stated", pl: "{standard}, metody nie podano", de: "{standard}, Verfahren nicht angegeben" },
    // How a sample was obtained.
    { en: "bought at retail", pl: "kupiony w handlu", de: "im Handel gekauft" },
    { en: "lent by a customer", pl: "wypożyczony od klienta", de: "von einem Kunden geliehen" },
    { en: "given by the maker", pl: "podarowany przez producenta", de: "vom Hersteller geschenkt" },
    { en: "lent by the maker", pl: "wypożyczony od producenta", de: "vom Hersteller geliehen" },
    { en: "reviewer's own", pl: "własność testującego", de: "Eigentum des Prüfers" },
    { en: "second hand", pl: "z drugiej ręki", de: "aus zweiter Hand" },
    { en: "new", pl: "nowy", de: "neu" },
    { en: "used", pl: "używany", de: "gebraucht" },
    { en: "may stay connected", pl: "może pozostać podłączony", de: "darf angeschlossen bleiben" },
    { en: "must be taken off", pl: "trzeba odłączyć", de: "muss abgenommen werden" },
    {
      en: "{slope} mV for each K and cell",
      pl: "{slope} mV na każdy K i celę",
      de: "{slope} mV je K und Zelle",
    },
  ],
  ratingStandard: [
    { en: "EN 50342-1", pl: "EN 50342-1", de: "EN 50342-1" },
    { en: "SAE J537", pl: "SAE J537", de: "SAE J537" },
    { en: "IEC 60095-1", pl: "IEC 60095-1", de: "IEC 60095-1" },
    { en: "DIN 43539-2", pl: "DIN 43539-2", de: "DIN 43539-2" },
    { en: "JIS D 5301", pl: "JIS D 5301", de: "JIS D 5301" },
    { en: "not stated", pl: "nie podano", de: "nicht angegeben" },
  ],
  accuracyPart: [
    { en: "{percent} % of reading", pl: "{percent} % wskazania", de: "{percent} % vom Messwert" },
    { en: "{digits} digits of {resolution:quantity}", pl: "{digits} cyfr po {resolution}", de: "{digits} Digits von {resolution}" },
    { en: "{amount:quantity}", pl: "{amount}", de: "{amount}" },
  ],
  accuracySource: [
    { en: "the data sheet", pl: "z karty katalogowej", de: "nach Datenblatt" },
    { en: "a calibration", pl: "z wzorcowania", de: "nach Kalibrierung" },
    { en: "an assumption", pl: "z założenia", de: "nach Annahme" },
  ],
} as const satisfies Chapter;

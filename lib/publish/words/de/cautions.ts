import type { cautions as source } from "../en/cautions.ts";

export const cautions: typeof source = {
  title: "Sicherheitshinweise",
  description: "Säure, Wasserstoff, Kurzschluss, gefrorene und verschlossene Batterien: was verletzen kann und was man üblicherweise tut.",
  lead: "Die Tests auf dieser Website haben Leute gemacht, die das beruflich tun. Die Hinweise unten sind gängige Praxis, keine Erlaubnis: Die örtlichen Vorschriften, das Datenblatt des Batterieherstellers, die Anleitung des Ladegeräts und das Urteil einer Fachkraft gehen immer vor.",
  dangers: {
    acid: {
      name: "Säure",
      danger: "Der Elektrolyt ist Schwefelsäure. Er verätzt die Haut, kann blind machen und zerfrisst Kleidung, Beton und Metall.",
      steps: [
        "Seitlich geschlossenen Augenschutz, säurefeste Handschuhe und eine Schürze tragen; ein Säureheber tropft.",
        "Fließendes Wasser oder eine Augendusche in wenigen Schritten erreichbar halten. Spritzer sofort und lange spülen, dann zum Arzt.",
        "Verschüttete Säure mit einem dafür gemachten Mittel oder mit Soda binden und nach den örtlichen Regeln entsorgen.",
        "Nur mit gereinigtem Wasser auffüllen, nur nach dem Laden, niemals mit Säure.",
      ],
    },
    hydrogen: {
      name: "Wasserstoff",
      danger:
        "Eine fast volle Batterie gibt Wasserstoff und Sauerstoff ab. Luft mit 4 % Wasserstoff kann explodieren (IEC 62485-2, aus dem Gedächtnis).",
      steps: [
        "Nur bei bewegter Luft laden; Wasserstoff steigt auf und sammelt sich unter Deckeln und Decken.",
        "Keine Flamme, nicht rauchen, nicht schleifen. Das Ladegerät vom Netz trennen, bevor Sie eine Klemme berühren: Der Funke entsteht an der Klemme.",
        "Geruch nach faulen Eiern heißt Überladung: aus der Ferne abschalten, lüften, fernbleiben.",
      ],
    },
    "short-circuit": {
      name: "Kurzschluss",
      danger:
        "Auch eine müde Batterie treibt Hunderte Ampere durch einen Schraubenschlüssel: genug, um ihn anzuschweißen, Sie zu verbrennen oder das Gehäuse zu sprengen.",
      steps: [
        "Ringe und Uhren ablegen. Isoliertes Werkzeug benutzen. Pole abdecken, an denen Sie nicht arbeiten.",
        "Im Fahrzeug den Minuspol zuerst ab- und zuletzt anklemmen, wenn sein Handbuch nichts anderes sagt.",
        "Jede Messleitung nahe der Batterie absichern.",
      ],
    },
    frozen: {
      name: "Gefrorene Batterien",
      danger: "Eine entladene Batterie gefriert wenige Grad unter 0 °C. Eis zu laden kann das Gehäuse sprengen.",
      steps: [
        "Niemals eine Batterie laden, die gefroren sein könnte. Zuerst an einem belüfteten Ort langsam auftauen lassen.",
        "Ein gewölbtes oder gerissenes Gehäuse ist das Ende: aufrecht in eine säurefeste Wanne stellen und zum Wertstoffhof bringen.",
      ],
    },
    sealed: {
      name: "Verschlossene Batterien",
      danger:
        "AGM- und Gelbatterien lassen sich nicht nachfüllen. Eine zu hohe Spannung oder die falsche Betriebsart trocknet sie aus und kann sie immer weiter erhitzen.",
      steps: [
        "Nicht öffnen. Eine Säuredichte lässt sich nicht ablesen; es bleiben Spannung, Strom und Temperatur.",
        "Nur eine Betriebsart benutzen, die der Batteriehersteller zulässt. Abbrechen, wenn das Gehäuse heiß wird, zischt oder sich aufbläht.",
      ],
    },
    mains: {
      name: "Netz",
      danger: "Ein Ladegerät hängt am Netz und wird oft an feuchten Orten benutzt.",
      steps: [
        "Im Freien, auf Booten und in Garagen einen Fehlerstrom-Schutzschalter benutzen.",
        "Ein Ladegerät nicht öffnen; Reparaturen einer Fachkraft überlassen.",
      ],
    },
  },
};

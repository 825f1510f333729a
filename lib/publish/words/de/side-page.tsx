import type { sidePage as source } from "../en/side-page.tsx";

export const sidePage: typeof source = {
  title: "Nebeneinander",
  description:
    "Zwei bis vier Ladegeräte nebeneinander: Verläufe, Werte mit ihren Intervallen, Zusagen und was von jedem nicht zu sehen war.",
  lead: "Zwei bis vier Ladegeräte nebeneinander. Unterschiede werden nur genannt, wo sie größer sind als die Unsicherheit, und Werte von ungleichen Batterien werden nicht gegeneinandergehalten.",
  caution: (cautions) => (
    <>
      Beim Laden gibt eine Batterie Gas ab, das explodieren kann. Bevor eine angeschlossen bleibt, lesen Sie die{" "}
      {cautions("Sicherheitshinweise")}; die Hersteller von Batterie und Ladegerät und die Vorschriften vor Ort gehen vor.
    </>
  ),
  read: "Wie man es liest",
  readDrawing:
    "Ein Ring kennzeichnet, wo eine Aufzeichnung endet, was nicht heißt, dass das Ladegerät fertig war; ein gefüllter Punkt, dass das Ladegerät bis dahin abgeschaltet hatte. Haben die Batterien verschiedene Spannungen, ist die Spannung für eine Zelle gezeichnet.",
  readShare:
    "Über der eingeladenen Ladung zählt ein Verlauf den Strom zwischen seinen gezeichneten Punkten zusammen; Lücken tragen nichts bei.",
  readSigns:
    "≠ die Intervalle überschneiden sich nicht, also unterscheiden sich die Werte. ≈ sie überschneiden sich: mit diesen Messungen nicht zu unterscheiden. = genau dasselbe. ∦ nicht vergleichbar. Ein Wert führt zu seinem Beleg. Woran jedes geprüft wurde, steht in der ersten Tabelle; wie entladen und wie warm jede Batterie war, auf der Seite ihres Tests.",
  readDraws:
    "Wer zuerst fertig ist, ist hochgerechnet, diese Ladungen hat niemand gesehen. Es sagen Ziehungen: In jeder treffen alle Ladegeräte auf genau dieselbe Batterie. Eine Ziehung, in der beide gleich lange brauchen oder keines fertig wird, zählt halb. Eines gilt nur dann als vor einem anderen, wenn es in mehr als 95 % der Ziehungen so ist.",
  readPaying:
    "Was sich lohnt, sagen der Preis und die Energie der Referenzladung zum Preis der Website, ebenfalls Ziehung für Ziehung: Ein Bereich umfasst die mittleren 95 %. Wie lange ein Ladegerät hält und was eine besser gepflegte Batterie wert ist, steckt nicht darin.",
  other: "Andere Wege zu vergleichen",
  otherNote: (comparison, csv) => (
    <>
      Ladegeräte nebeneinanderzustellen braucht Skripte und eine Seite von einem Webserver. Alles hier Gezeigte steht auch im{" "}
      {comparison("Vergleich aller Ladegeräte")}, in {csv("seiner CSV-Datei")} und auf der Seite jedes Ladegeräts:
    </>
  ),
  noCharger: "Es ist noch kein Ladegerät veröffentlicht.",
};

import type { Same } from "../same.ts";

export const home: Same<"home"> = {
  title: "Vom Maßband zur Größe, die passt",
  description:
    "Tapewise macht aus Messungen von Rücken und Hüfte eine Rucksackgröße und sagt, wie sicher sie ist. Es läuft im Browser und sendet nichts.",
  lead: "Zwei, drei Messungen eines Rückens, die Größentabelle eines Herstellers und der Zweifel, den jedes Maßband lässt. Tapewise nimmt diesen Zweifel bis zur Größe mit und sagt, was aus ihm folgt.",
  begin: "Größe wählen",
  figureTitle: "Ein Rücken, vier Größen",
  figureWords:
    "Wren hat 40,3, 39,8 und 40,6 cm abgelesen. Jeder Balken ist, was eine Größe der Tabelle abdeckt; die rote Linie ist, was ihre Messungen sagen, mit dem Bereich, der ihren Rücken in 95 von 100 solchen Fällen enthält.",
  doorsTitle: "Wohin zuerst",
  fitterTitle: "Sie passen Rucksäcke an",
  fitterText: "Messungen einer Kundin eintragen, Rucksäcke vergleichen, eine Karte zum Mitgeben drucken.",
  fitterMore: "Die Tabelle eines Herstellers prüfen, bevor Sie ihr trauen.",
  teacherTitle: "Sie unterrichten damit",
  teacherText:
    "Jede Seite ist ein kleiner Versuch mit dem Maßband: Ändern Sie eine Messung und sehen Sie, was folgt.",
  teacherMore: "Mit dem kopierten Link beginnt die ganze Klasse bei denselben Zahlen.",
  developerTitle: "Sie bauen etwas damit",
  developerText:
    "Dieselben Antworten gibt es als typisierte Bibliothek und als Befehl, mit einem Verzeichnis aller Funktionen.",
  developerMore: "Zur Dokumentation (englisch)",
};

import type { Same } from "../same.ts";

export const frame: Same<"frame"> = {
  skip: "Zum Inhalt springen",
  tools: "Website",
  docs: "Dokumentation (englisch)",
  pages: "Arbeitsseiten",
  theme: "Hell oder dunkel",
  languages: { en: "English", de: "Deutsch" },
  page: {
    choose: "Größe wählen",
    read: "Tabelle lesen",
    average: "Warum mitteln",
    fits: "Wem passt es",
    hands: "Wie gut sind unsere Hände",
    arrives: "Wenn er da ist",
  },
  privacy:
    "Alles wird in Ihrem Browser gerechnet. Nichts, was Sie eingeben, wird irgendwohin gesendet, und es gibt keine Cookies. Ein kopierter Link trägt Ihre Eingaben hinter dem #-Zeichen, und auch das senden Browser nicht mit.",
  care: "Schmerzen, Taubheit, eine Verletzung, eine Schwangerschaft oder ein Kind, das noch wächst: Lassen Sie eine Fachkraft für Rucksäcke oder eine Ärztin, einen Arzt darauf schauen, bevor eine Last getragen wird.",
  invented: "Personen, Hersteller und Rucksäcke der Beispiele sind erfunden.",
};

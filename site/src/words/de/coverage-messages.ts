import type { coverage } from "tapewise";
import type { Wording } from "../messages.ts";

/** What the library says of charts that are held against people, in German. */
export const coverageMessages: Readonly<Record<keyof typeof coverage.coverageIssues, Wording>> = {
  "coverage-chart-without-sizes": {
    message: "„{chart}“ hat keine Größe",
    expected: "eine Tabelle mit mindestens einer Größe",
  },
  "coverage-nothing-judged": {
    message: "„{chart}“ richtet sich nach {charted}; davon sagen die Zahlen der {people} nichts",
    expected: "eine Tabelle, die mindestens eines angibt von {known}",
  },
  "coverage-dimension-left-out": {
    message:
      "die Zahlen der {people} sagen nichts über {dimension}; „{chart}“ wurde ohne dieses Maß gegen die Menschen gehalten",
    expected: "Zahlen mit {dimension}; damit passt die Tabelle ebenso vielen oder weniger",
  },
  "coverage-girth-taken-as": {
    message: "„{chart}“ sagt „Hüfte“ und nicht, welche; genommen wurde {dimension}",
    expected: "eine Tabelle, die sagt, welchen Hüftumfang sie meint",
  },
  "coverage-size-not-judged": {
    message: "Größe {received} von „{chart}“ gibt {dimension} nicht an und zählt, als passte sie niemandem",
    expected: "ein Bereich für {dimension} bei jeder Größe",
  },
  "coverage-charts-differ": {
    message: "„{chart}“ richtet sich nach {dimension} und „{other}“ nach {otherDimension}",
    expected: "Tabellen, die sich nach demselben Maß richten, oder eine Bestellung für jede allein",
  },
};

/** Words that come ready-made in the facts of these sentences. */
export const coverageFacts: Readonly<Record<string, string>> = {
  "ANSUR II (2012), Gordon et al. 2014, NATICK/TR-15/007; computed from the public individual data, even subject numbers":
    "ANSUR II (2012), Gordon et al. 2014, NATICK/TR-15/007; berechnet aus den öffentlichen Einzeldaten, Personen mit gerader Nummer",
  "re-weighted to a stated stature": "auf die angegebene Körpergröße umgerechnet",
  "back waist length": "Rückenlänge bis zur Taille",
  "underbust girth": "Unterbrustumfang",
  "shoulder length": "Schulterlänge",
  "body mass": "Körpergewicht",
};

import type { StudyMessages } from "../study-messages.ts";

/** The library's sentences about studies in German. */
export const studyMessages: StudyMessages = {
  facts: {
    subject: "gemessene Person",
    measurer: "messende Person",
    repeat: "Wiederholung",
    value: "Wert",
    unit: "Einheit",
    subjects: "gemessenen Personen",
    measurers: "messenden Personen",
    "subject-by-measurer": "gemessene × messende Person",
    "the dimension": "das Maß",
    "the torso length": "die Rückenlänge",
    "the hip-belt girth": "den Hüftgurtumfang",
    "the hip girth": "den Hüftumfang",
    "the waist girth": "den Taillenumfang",
    "the chest girth": "den Brustumfang",
    "the stature": "die Körpergröße",
    "the shoulder breadth": "die Schulterbreite",
    "no measurer read a subject twice": "niemand hat dieselbe Person zweimal gemessen",
    "no subject was read by two measurers": "niemand wurde von zwei Personen gemessen",
    "the end of the text": "das Ende des Textes",
    "a dimension that is not stated": "ein Maß, das nicht genannt ist",
  },
  issues: {
    "study-not-text": {
      message: "die Studie ist {received} und kein Text",
      expected: "der Text einer Tabelle oder JSON",
    },
    "study-empty": {
      message: "die Studie hat keine Zeile, die ihre Spalten benennt",
      expected: "eine Zeile mit Spaltennamen und Zeilen mit Messungen",
    },
    "study-too-large": {
      message: "die Studie hat eine Größe von {characters}, mehr als die {limit}, die gelesen werden",
      expected: "die Messungen einer einzigen Studie",
    },
    "study-json-syntax": {
      message: "bei {received} hört die Studie auf, JSON zu sein",
      expected: "JSON, etwa [{“subject”: “mia”, “measurer”: “Ann”, “repeat”: 1, “value”: “43.2 cm”}]",
    },
    "study-json-shape": {
      message: "die Studie hat keine Liste von Messungen",
      expected: "eine Liste von Objekten, oder ein Objekt mit einer solchen Liste unter “readings”",
    },
    "study-json-row": {
      message: "wo eine Messung stehen sollte, steht {received}; sie wurde weggelassen",
      expected: "ein Objekt mit subject, measurer, repeat und value",
    },
    "study-key-repeated": {
      message: "der Schlüssel steht hier ein zweites Mal, mit {received}; der erste zählt",
      expected: "jeder Schlüssel einmal je Objekt",
    },
    "study-quote": {
      message: "die Anführungszeichen von {received} passen nicht zusammen",
      expected: 'eine Zelle in Anführungszeichen wie "43,2", jedes Anführungszeichen darin verdoppelt',
    },
    "study-column-missing": {
      message: "keine Spalte enthält: {role}; die Spalten sind {columns}",
      expected: "eine Spalte wie subject, measurer, repeat oder value",
    },
    "study-column-repeated": {
      message: "{received} ist eine zweite Spalte für: {role}; sie wurde weggelassen",
      expected: "nur eine solche Spalte",
    },
    "study-column-unread": {
      message: "{received} sagt nicht, wessen Messung in der Spalte steht; sie wurde weggelassen",
      expected: "ein Name und eine Zahl von 1 bis {limit}, etwa „Ann 1 (cm)“",
    },
    "study-column-unused": {
      message: "{received} wird nicht verwendet",
      expected: "subject, measurer, repeat, value oder unit",
    },
    "study-values-several": {
      message: "mehrere Spalten könnten die Messungen enthalten ({dimension}): {columns}",
      expected: "das Maß einer von ihnen im Feld daneben, oder nur eine Spalte mit Werten",
    },
    "study-dimension-disagrees": {
      message: "{received} handelt von einem anderen Maß ({other} und nicht {dimension})",
      expected: "Messungen eines einzigen Maßes",
    },
    "study-dimension-unclear": {
      message: "{received} kann mehreres heißen: {candidates}",
      expected: "das Maß im Feld daneben, oder ein Spaltenname, der eines nennt",
    },
    "study-dimension-unstated": {
      message:
        "nirgends steht, welches Maß genommen wurde; deshalb ließ sich keine Messung daran prüfen, was Menschen haben",
      expected: "das Maß im Spaltennamen oder im Feld daneben",
    },
    "study-cell-beyond": {
      message: "{received} steht hinter der letzten der {columns} Spalten; es wurde weggelassen",
      expected: "so viele Zellen wie Spalten",
    },
    "study-subject-blank": {
      message: "die Zeile sagt nicht, wer gemessen wurde; sie wurde weggelassen",
      expected: "ein Name oder eine Nummer der gemessenen Person",
    },
    "study-measurer-blank": {
      message: "die Zeile sagt nicht, wer gemessen hat; sie wurde weggelassen",
      expected: "ein Name oder eine Nummer der messenden Person",
    },
    "study-repeat-unreadable": {
      message: "{received} sagt nicht, die wievielte Messung es ist; die Zeile wurde weggelassen",
      expected: "eine ganze Zahl von 1 bis {limit}",
    },
    "study-unit-missing": {
      message: "keine der {count} Messungen unter „{column}“ hat eine Einheit",
      expected: "eine Einheit im Spaltennamen, etwa „{column} (cm)“, oder in jeder Zelle, etwa {number} cm",
    },
    "study-cell-repeated": {
      message:
        "{received} ist ein zweiter Eintrag für Messung {repeat} von {subject} durch {measurer}, nach {first}; er wurde beiseitegelegt",
      expected: "ein Eintrag für jede gemessene Person, messende Person und Wiederholung",
    },
    "study-reading-impossible": {
      message:
        "{received}, Messung {repeat} von {subject} durch {measurer}, liegt außerhalb dessen, was bei Menschen vorkommt ({dimension}: {lowestMm} bis {highestMm} mm); sie wurde beiseitegelegt",
      expected: "eine Messung des richtigen Maßes in der richtigen Einheit",
    },
    "study-reading-kept": {
      message:
        "{received}, Messung {repeat} von {subject} durch {measurer}, liegt außerhalb dessen, was bei Menschen vorkommt ({dimension}: {lowestMm} bis {highestMm} mm); sie wurde behalten",
      expected: "eine Messung des richtigen Maßes in der richtigen Einheit",
    },
    "study-cells-missing": {
      message: "{count} von {cells} Zellen enthalten keine Messung",
      expected:
        "eine Messung jeder Person durch jede messende Person in jeder Wiederholung; was fehlt, wird berücksichtigt",
    },
    "study-names-alike": {
      message: "{received} und {other} gelten als zwei der {kind}",
      expected: "eine einzige Schreibweise für jeden Namen",
    },
    "study-no-readings": {
      message:
        "keine der {received} Zellen enthält eine brauchbare Messung; {setAside} wurden beiseitegelegt",
      expected: "Messungen wie 43,2 cm",
    },
    "tem-unknown": {
      message:
        "keine der {received} Messungen gehört zu jemandem, der zweimal gemessen wurde; so ist kein Fehler zu sehen",
      expected: "Personen, die noch einmal gemessen wurden, von derselben oder einer anderen Person",
    },
    "tem-intra-unknown": {
      message:
        "niemand hat dieselbe Person zweimal gemessen; der Fehler innerhalb einer Hand ist nicht bekannt",
      expected: "wiederholte Messungen durch dieselbe Person",
    },
    "tem-inter-unknown": {
      message: "niemand wurde von zwei Personen gemessen; der Fehler zwischen den Händen ist nicht bekannt",
      expected: "Personen, die zwei oder mehr gemessen haben",
    },
    "tem-zero": {
      message:
        "alle {count} wiederholten Messungen sind gleich ihrer ersten; der Fehler ist kleiner als der Schritt, in dem sie geschrieben sind",
      expected: "Messungen auf einen feineren Strich, jede ohne Blick auf die vorige",
    },
    "tem-subject-unused": {
      message: "{received} wurde einmal oder gar nicht gemessen; das sagt nichts über den Fehler",
      expected: "zwei oder mehr Messungen jeder Person",
    },
    "precision-unknown": {
      message: "die {received} Messungen reichen nicht aus: {needed}",
      expected: "Personen, die zwei oder mehr gemessen haben, einige davon zweimal durch dieselbe Person",
    },
    "precision-variance-outlying": {
      message:
        "die Messungen von {subject} durch {measurer} streuen mehr als die anderen (Cochran: {statistic}, Grenze {critical} bei {percent} %)",
      expected: "ein Blick auf diese Messungen, bevor sie verwendet oder weggelassen werden",
    },
    "precision-mean-outlying": {
      message:
        "der Mittelwert, den {measurer} von {subject} hat, liegt abseits der anderen (Grubbs: {statistic}, Grenze {critical} bei {percent} %)",
      expected: "ein Blick auf diese Messungen, bevor sie verwendet oder weggelassen werden",
    },
    "trend-unknown": {
      message: "die {received} Messungen reichen nicht aus, um einen Gang über die Wiederholungen zu sehen",
      expected: "Messungen in zwei oder mehr Wiederholungen, von mehreren Paaren",
    },
    "digits-unknown": {
      message: "keine der {received} Messungen sagt, wie sie geschrieben war",
      expected: "Messungen, die aus Text gelesen wurden",
    },
    "digits-few": {
      message: "{count} Messungen sind wenig für {classes} Ziffern; die Wahrscheinlichkeit ist grob",
      expected: "fünf oder mehr Messungen je Ziffer",
    },
    "allowance-unknown": {
      message: "für {received} ist keine veröffentlichte Grenze bekannt",
      expected: "eines von {known}",
    },
    "allowance-no-pairs": {
      message: "niemand wurde zweimal gemessen",
      expected: "Personen mit zwei oder mehr Messungen",
    },
    "components-subjects-few": {
      message:
        "die Studie hat Messungen von {count} Personen; bei weniger als zweien ist nicht zu sehen, wie sich Personen unterscheiden",
      expected: "Messungen von zwei oder mehr Personen; zehn und mehr sind besser",
    },
    "components-measurers-few": {
      message:
        "in der Studie haben {count} gemessen; bei weniger als zweien ist nicht zu sehen, wie sich Hände unterscheiden",
      expected: "Messungen durch zwei oder mehr Personen",
    },
    "components-repeats-few": {
      message:
        "zu wenige wurden von mehreren mehr als einmal gemessen, um den Wechsel der Hände von Person zu Person vom Fehler einer Messung zu trennen",
      expected: "wiederholte Messungen mehrerer Personen durch mehrere",
    },
    "components-error-unseen": {
      message: "die {count} Messungen lassen nichts übrig, woran der Fehler einer Messung zu sehen wäre",
      expected: "Personen, die mehr als einmal gemessen wurden",
    },
    "components-no-scatter": {
      message: "die Messungen zeigen keinen Fehler: Personen, Hände und ihre Paare erklären jede genau",
      expected: "Messungen, die jedes Mal neu genommen sind, ohne Blick auf die vorige",
    },
    "component-zero": {
      message:
        "der Streuungsanteil „{component}“ wird auf 0 geschätzt: Er ist zu klein, um in dieser Studie gesehen zu werden",
      expected: "mehr gemessene oder messende Personen, wo dieser Anteil wichtig ist",
    },
    "components-unconnected": {
      message:
        "die Studie zerfällt in {parts} Teile, die weder gemessene noch messende Personen gemeinsam haben",
      expected: "Personen, die aus beiden Teilen gemessen wurden",
    },
    "agreement-measurer-unknown": {
      message: "in der Studie misst niemand mit dem Namen {received}",
      expected: "eine von {measurers}",
    },
    "agreement-subjects-few": {
      message: "{count} Personen wurden von {first} und {second} gemessen",
      expected: "drei oder mehr Personen, die beide gemessen haben",
    },
    "agreement-no-scatter": {
      message: "die Unterschiede zwischen {first} und {second} sind alle gleich",
      expected: "Messungen, die neu genommen sind, ohne Blick auf die der anderen",
    },
    "agreement-subject-unpaired": {
      message: "{subject} wurde nicht von {first} und {second} gemessen und bleibt hier weg",
      expected: "eine Messung durch jede der beiden",
    },
  },
};

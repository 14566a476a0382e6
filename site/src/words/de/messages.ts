import type { Messages } from "../messages.ts";
import { dimensions } from "./parts.ts";

/** The library's sentences in German, by code. The type checker asks for every code that a page can show. */
export const messages: Messages = {
  dimensions,
  lessThanOne: "weniger als 1 %",
  moreThanNinetyNine: "mehr als 99 %",
  lessThan: "weniger als {length}",
  tall: "{who} von {height} cm",
  times: "{count}-mal",
  range: "{first} bis {second}",
  upTo: "bis {first}",
  from: "ab {first}",
  and: " und ",
  or: " oder ",
  facts: {
    "ANSUR II (2012), Gordon et al. 2014, NATICK/TR-15/007; computed from the public individual data":
      "ANSUR II (2012), Gordon et al. 2014, NATICK/TR-15/007; berechnet aus den öffentlichen Einzeldaten",
    "Soldiers of 2012: fitter, younger and more alike than the general public. The torso length is the straight vertical distance from C7 to the top of the right iliac crest, a little shorter than along the spine.":
      "Soldatinnen und Soldaten von 2012: sportlicher, jünger und einander ähnlicher als die Bevölkerung. Die Rückenlänge ist der senkrechte Abstand vom siebten Halswirbel (C7) zum höchsten Punkt des rechten Beckenkamms, etwas kürzer als entlang der Wirbelsäule.",
    "torso length": "Rückenlänge",
    "hip-belt girth": "Hüftgurtumfang",
    "hip girth": "Hüftumfang",
    "waist girth": "Taillenumfang",
    "chest girth": "Brustumfang",
    stature: "Körpergröße",
    "shoulder breadth": "Schulterbreite",
    above: "über",
    below: "unter",
    longer: "längeren",
    shorter: "kürzeren",
    larger: "größeren",
    smaller: "kleineren",
    lower: "unteres",
    upper: "oberes",
    women: "Frauen",
    men: "Männer",
    unisex: "alle",
    youth: "Jugendliche",
    "broad shoulders": "breiten Schultern",
    "a large chest": "großem Brustumfang",
    "a muscular back": "einem kräftigen Rücken",
    "broad-shoulders": "breiten Schultern",
    "large-chest": "großem Brustumfang",
    "muscular-back": "einem kräftigen Rücken",
    "once more": "noch einmal",
    once: "einmal",
    twice: "zweimal",
    "three times": "dreimal",
    "four times": "viermal",
    "five times": "fünfmal",
    "the cut": "der Schnitt",
    "the harness": "das Tragesystem",
    "the chart's name": "der Name der Tabelle",
    "if the figures are inches and not centimetres": "wären die Zahlen Zoll und nicht Zentimeter",
    "if the figures are centimetres and not inches": "wären die Zahlen Zentimeter und nicht Zoll",
    "if the figures are ten times too small": "wären die Zahlen zehnmal zu klein",
    "if the figures are ten times too large": "wären die Zahlen zehnmal zu groß",
    "the missing ones count as not stated": "die fehlenden gelten als nicht angegeben",
    "the others were left out": "die übrigen wurden weggelassen",
    "were not used": "nicht verwendet wurden",
    "say little here": "hier wenig sagen",
  },
  reasons: {
    "most-probable": "{size} passt am ehesten: {fitProbability}.",
    "equal-chance": "{size} und {other} passen gleich wahrscheinlich: {fitProbability}.",
    "nearest-size":
      "Keine Größe passt wahrscheinlich; {size} kommt am nächsten und liegt im Mittel um {misfitMm} daneben.",
    "room-on-both-sides":
      "{size} und {other} fassen beide dieses Maß ({mainDimension}); {size} lässt bis zum näheren Ende {roomMm}, {other} nur {otherRoomMm}.",
    "hip-belt-decides":
      "{size} und {other} fassen beide dieses Maß ({mainDimension}); es entscheidet: {dimension}, passend in {size} mit {sizeProbability}, in {other} mit {otherProbability}.",
    "build-takes-longer":
      "{size} und {other} passen beide, mit {sizeProbability} und {otherProbability}. Bei {build} ist das längere Tragesystem meist das bessere.",
    "harness-adjusts":
      "{size} und {other} passen beide, mit {sizeProbability} und {otherProbability}. Das Tragesystem von {size} lässt sich verstellen und verzeiht eine Messung, die ein wenig daneben liegt.",
    "between-two-sizes":
      "Das Maß ({dimension}) liegt zwischen {size} und {other}: {size} liegt im Mittel um {misfitMm} daneben, {other} um {otherMisfitMm}.",
    "beyond-the-chart":
      "Das Maß ({dimension}) liegt {side} dem, was die Tabelle abdeckt, im Mittel um {byMm} und mit einer Wahrscheinlichkeit von {outsideProbability}.",
    "dimensions-disagree":
      "{dimension} verlangt {size}, {otherDimension} verlangt {other}, und keine Größe fasst beides.",
    "no-size-likely":
      "Keine Größe hebt sich ab; der schwächste Punkt von {size} ist das Maß {dimension}, passend mit {dimensionProbability}.",
    "belt-unlikely":
      "Kein Hüftgurt dieses Rucksacks passt wahrscheinlich; {belt} kommt am nächsten, mit {beltProbability}.",
    "capacity-differs": "{other} fasst {otherLitres} L, {size} {sizeLitres} L. Die Passform geht vor.",
    "nominal-length-inferred":
      "Für {size} nennt die Tabelle eine einzelne Länge; ihr Bereich wurde aus den Nachbargrößen erschlossen und ist weniger sicher als ein gedruckter.",
    "dimension-not-stated":
      "Für {size} sagt die Tabelle nichts über das Maß {dimension}; es gilt dort als für alle passend.",
    "girth-not-stated":
      "Die Tabelle sagt „Hüfte“ und nicht, welchen Umfang; verglichen wurde mit: {dimension}.",
    "other-girth-picks":
      "Nach dem Maß {otherDimension} wäre es {other} und nicht {size}: Fragen Sie den Hersteller, welchen Umfang „Hüfte“ meint.",
    "other-girth-unlikely":
      "Nach dem Maß {otherDimension} würde {size} mit {otherProbability} passen: Fragen Sie den Hersteller, welchen Umfang „Hüfte“ meint.",
    "cut-differs":
      "Dieser Rucksack ist für {cut} geschnitten und nicht für {own}: Er kann schlecht sitzen, auch wo die Längen passen.",
    "dimension-not-charted":
      "Die Tabelle sagt nichts über das Maß {dimension}; es wurde deshalb nicht beurteilt.",
    "dimension-not-read": "Die Tabelle nennt auch das Maß {dimension}, das nicht gemessen wurde.",
    "dimension-from-prior":
      "Das Maß {dimension} wurde nicht gemessen; was über Vergleichspersonen ({label}) bekannt ist, trat an seine Stelle.",
    "prior-used":
      "Die Messungen wurden abgewogen mit dem, was vorher über Vergleichspersonen ({label}) bekannt ist.",
    "double-size": "{size} ist ein Rucksack für {covers}.",
  },
  nextSteps: {
    "measure-again":
      "Messen Sie noch einmal ({dimension}; {times}): Das ändert die Wahl mit einer Wahrscheinlichkeit von {changeProbability} und hebt die Aussicht auf die richtige Größe von {nowProbability} auf etwa {thenProbability}.",
    "measure-with-helper":
      "Lassen Sie jemanden messen ({dimension}; {times}): Das ändert die Wahl mit einer Wahrscheinlichkeit von {changeProbability} und hebt die Aussicht auf die richtige Größe von {nowProbability} auf etwa {thenProbability}. Weitere eigene Messungen würden denselben Fehler wiederholen.",
    "measure-dimension": "Messen Sie auch: {dimension}. Die Tabelle richtet sich danach.",
    "check-reading":
      "Sehen Sie noch einmal nach, bevor Sie dem trauen ({dimension}): {readingMm} liegt {differenceMm} {side} dem Üblichen für {label}.",
    "confirm-reading":
      "Messen Sie vor dem Kauf noch einmal ({dimension}): Nur {fitProbability} spricht für {size}.",
    "swap-hip-belt":
      "Der Hüftgurt dieses Rucksacks lässt sich tauschen: Nehmen Sie das Tragesystem in {size} und fragen Sie nach einem Gurt für dieses Maß ({dimension}).",
    "swap-harness":
      "Das Tragesystem dieses Rucksacks lässt sich tauschen: Fragen Sie nach dem nächsten {side}.",
    "take-hip-belt": "Nehmen Sie den Hüftgurt {belt}.",
    "try-both": "Wenn es geht, probieren Sie {size} und {other} mit Last und behalten Sie den besseren.",
    "other-chart":
      "Sehen Sie sich einen anderen Rucksack an: Keine Größe von diesem ist für dieses Maß ({dimension}) gemacht.",
    "consider-other-chart":
      "Vergleichen Sie einen anderen Rucksack: Mit {outsideProbability} liegt das Maß ({dimension}) {side} allem, was dieser abdeckt.",
    "check-on-body":
      "Wenn er da ist, beladen Sie ihn und sehen Sie hin: Der Hüftgurt liegt auf den Beckenkämmen, das Tragesystem folgt den Schultern ohne Lücke, und nichts drückt.",
    "see-fitter":
      "Schmerzen, Taubheit, eine Verletzung, eine Schwangerschaft oder ein Kind, das noch wächst: Lassen Sie eine Fachkraft für Rucksäcke oder eine Ärztin, einen Arzt darauf schauen, bevor eine Last getragen wird.",
  },
  comparisons: {
    "likelier-fit": "{chart} passt eher ({chartProbability}) als {other} ({otherProbability}).",
    "harness-length-judged":
      "{chart} wurde nach einer Länge des Rückens beurteilt und {other} nicht; dessen Tragesystem kann zu lang oder zu kurz sein.",
    "judged-by-more":
      "{chart} und {other} passen etwa gleich gut; {chart} wurde nach {count} der gemessenen Längen beurteilt, {other} nach {otherCount}.",
    "cut-matches": "{chart} und {other} passen etwa gleich gut; {chart} ist für diesen Körper geschnitten.",
    "other-cut": "{chart} und {other} passen etwa gleich gut; {other} ist für andere Körper geschnitten.",
    "adjustable-for-first-pack":
      "{chart} und {other} passen etwa gleich gut; das Tragesystem von {chart} lässt sich verstellen und verzeiht bei einem ersten Rucksack mehr.",
    "smaller-misfit":
      "{chart} und {other} passen etwa gleich wahrscheinlich; {chart} liegt im Mittel weniger daneben.",
    "equal-fit": "{chart} und {other} passen etwa gleich gut.",
  },
  issues: {
    "length-not-text": { message: "{received} ist kein Text", expected: "eine Länge als Text, etwa 43,2 cm" },
    "length-empty": { message: "hier steht keine Länge", expected: "eine Länge, etwa 43,2 cm" },
    "length-too-long": {
      message: "{received} ist zu lang für eine Länge",
      expected: "höchstens {limit} Zeichen",
    },
    "length-not-a-number": {
      message: "{received} enthält keine Zahl, die sich lesen lässt",
      expected: "eine Zahl und eine Einheit, etwa 43,2 cm",
    },
    "length-no-unit": { message: "{received} hat keine Einheit", expected: "{number} cm oder {number} in" },
    "length-unit-unknown": {
      message: "{unit} ist keine bekannte Längeneinheit",
      expected: "eine Einheit wie {suggestion}",
    },
    "length-unit-wrong-kind": {
      message: "{unit} ist keine Einheit für Längen",
      expected: "eine Länge in {units}",
    },
    "length-unit-unread": {
      message: "{unit} ist eine Längeneinheit, die hier nicht gelesen wird",
      expected: "eine Länge in {units}",
    },
    "length-negative": { message: "{received} liegt unter null", expected: "eine Länge über null" },
    "length-zero": { message: "{received} ist null", expected: "eine Länge über null" },
    "length-fraction-impossible": {
      message: "{received} enthält einen unmöglichen Bruch: {fraction}",
      expected: "ein Bruch aus ganzen Zahlen, nach einer ganzen Zahl kleiner als eins, etwa 18 3/8",
    },
    "length-ambiguous-separator": {
      message: "{received} kann {grouped} oder {decimal} heißen",
      expected: "{grouped} oder {decimal}",
    },
    "length-several-numbers": {
      message: "{received} enthält mehr als eine Zahl",
      expected: "eine einzige Länge, ohne Leerzeichen zwischen Tausendern",
    },
    "length-parts-disagree": {
      message: "die Teile von {received} ergeben keine Länge",
      expected: "ganze {larger}, dann weniger als {limit} {smaller}",
    },
    "length-extra-text": {
      message: "in {received} steht etwas neben der Länge: {extra}",
      expected: "eine Zahl mit ihrer Einheit und sonst nichts, etwa 43,2 cm",
    },
    "readings-missing": {
      message: "es gibt keine brauchbare Messung ({dimension})",
      expected: "mindestens eine Messung, etwa „43,2 cm“",
    },
    "readings-not-a-list": {
      message: "die Messungen ({dimension}) sind {received} und keine Liste",
      expected: "eine Liste von Messungen",
    },
    "error-model-invalid": {
      message: "der angegebene Fehler hat {received} für {part}",
      expected: "eine Zahl von Millimetern von 0 bis {largestMm}",
    },
    "conditions-invalid": { message: "{part} kann nicht {received} sein", expected: "{choices}" },
    "reading-alone": {
      message: "es gibt nur eine Messung ({dimension}); ein Versehen darin fiele nicht auf",
      expected: "drei Messungen, die Knochen jedes Mal neu gesucht",
    },
    "reading-apart": {
      message: "{received} liegt {differenceMm} mm von der Mitte aller Messungen ({dimension})",
      expected:
        "Messungen, die etwa {usualMm} mm beieinander liegen; messen Sie noch einmal, bevor Sie eine weglassen",
    },
    "reading-unit-suspect": {
      message: "{received} ist als {dimension} unwahrscheinlich; {other} wäre wahrscheinlich",
      expected: "die Einheit, die das Maßband zeigt",
    },
    "reading-implausible": {
      message:
        "{received} liegt außerhalb dessen, was Erhebungen gefunden haben ({dimension}: {lowestMm} bis {highestMm} mm)",
      expected: "eine Messung des richtigen Maßes in der richtigen Einheit",
    },
    "readings-mixed-units": {
      message: "die Messungen ({dimension}) stehen teils in Fuß oder Zoll, teils in metrischen Einheiten",
      expected: "eine Seite des Maßbands für alle Messungen",
    },
    "readings-scatter": {
      message:
        "die Messungen ({dimension}) streuen um {sampleMm} mm (Standardabweichung), mehr als die {usualMm} mm, die bei dieser Art zu messen üblich sind",
      expected: "ein genauerer Blick darauf, wie die Knochen gesucht werden und das Band liegt",
    },
    "readings-drift": {
      message: "die Messungen ({dimension}) wandern: von der ersten zur letzten um {driftMm} mm",
      expected: "Messungen ohne Trend; aufstehen, lockern, neu beginnen",
    },
    "readings-rounded": {
      message:
        "alle {count} Messungen ({dimension}) sind Vielfache von {coarse}, obwohl sie auf {fine} geschrieben sind",
      expected:
        "Messungen bis zum nächsten Strich des Maßbands; die Schätzung rechnet mit der gröberen Stufe",
    },
    "readings-too-alike": {
      message:
        "alle {count} Messungen ({dimension}) sind gleich, was echte Messungen selten sind; eine kann erinnert sein",
      expected: "jede Messung neu, ohne auf die vorige zu sehen",
    },
    "chart-not-judged": {
      message: "nichts von dem, was gemessen wurde, ist ein Maß, nach dem {chart} sich richtet ({charted})",
      expected: "Messungen von mindestens einem: {charted}",
    },
    "chart-without-sizes": {
      message: "{chart} hat keine Größe, die sich wählen ließe",
      expected: "eine Tabelle mit mindestens einer Größe, die ein Maß nennt",
    },
    "no-charts": { message: "es ist keine Tabelle gewählt", expected: "mindestens eine Tabelle" },
    "estimate-repeated": {
      message: "das Maß {dimension} wurde zweimal geschätzt",
      expected: "eine Schätzung je Maß",
    },
    "estimate-unlikely": {
      message: "{readingMm} mm ({dimension}) liegt {differenceMm} mm {side} dem Üblichen für {label}",
      expected: "eine Messung um {usualMm} mm, oder ein zweiter Blick auf Knochen und Einheit",
    },
    "estimate-implausible": {
      message:
        "{readingMm} mm ({dimension}) liegt {differenceMm} mm {side} dem, was Menschen haben, Kinder eingeschlossen",
      expected: "eine Messung von {fromMm} bis {toMm} mm, oder ein zweiter Blick auf die Einheit",
    },
    "person-not-an-object": { message: "eine Person ist nicht {received}", expected: "ein Objekt" },
    "person-field-misspelt": {
      message: "„{field}“ ist kein Feld einer Person; meinten Sie „{suggestion}“?",
      expected: "eines von {fields}",
    },
    "person-field-unknown": {
      message: "„{field}“ ist kein Feld einer Person und wurde nicht verwendet",
      expected: "eines von {fields}",
    },
    "person-field-repeated": { message: "„{field}“ steht mehr als einmal da", expected: "jedes Feld einmal" },
    "person-field-missing": { message: "„{field}“ fehlt", expected: "{wanted}" },
    "person-field-invalid": { message: "{received} passt nicht zu „{field}“", expected: "{wanted}" },
    "person-choice-unknown": {
      message: "{received} ist für „{field}“ nicht bekannt{hint}",
      expected: "eines von {choices}",
    },
    "person-dimension-unknown": {
      message: "„{field}“ ist kein bekanntes Maß{hint}",
      expected: "eines von {choices}",
    },
    "person-readings-missing": {
      message: "es gibt noch keine Messung",
      expected: "Messungen von mindestens einem Maß, etwa der Rückenlänge",
    },
    "person-readings-too-many": {
      message: "es sind {count} Messungen ({dimension})",
      expected: "höchstens {limit} Messungen eines Maßes",
    },
    "person-prior-needs-cut": {
      message: "was vorher über Menschen bekannt ist, wurde nicht verwendet, weil kein Schnitt angegeben ist",
      expected: "der Schnitt, Frauen oder Männer, dessen Erhebung am nächsten kommt",
    },
    "person-rule-unusable": {
      message: "mit einem Lineal von {received} kann niemand messen",
      expected: "die Länge des Lineals mit ihrer Einheit, 10 mm oder mehr",
    },
    "person-statures-differ": {
      message: "die Körpergröße ist als {received} angegeben und mit {readMm} mm gemessen",
      expected: "Angaben, die höchstens {limitMm} mm auseinander liegen",
    },
    "person-stature-not-surveyed": {
      message:
        "niemand unter den Befragten hatte eine Körpergröße von {received}, so dass die Zahlen der Erhebung {use}; für ein Kind, das noch wächst, soll eine Fachkraft wählen",
      expected: "eine Körpergröße von {fromMm} bis {toMm} mm, wo die Zahlen der Erhebung zählen sollen",
    },
    "person-stature-implausible": {
      message:
        "eine Körpergröße von {received} liegt außerhalb dessen, wie groß Menschen werden; daraus wurde nichts geschlossen",
      expected: "die Größe im Stehen, in der Einheit des Maßbands",
    },
    "chart-empty": {
      message: "hier gibt es nichts zu lesen",
      expected: "eine Größentabelle als JSON oder CSV",
    },
    "chart-too-large": {
      message: "der Text hat {characters} Zeichen, zu viel für eine Größentabelle",
      expected: "höchstens {limit} Zeichen",
    },
    "chart-not-text": {
      message: "das ist kein Text: er enthält Zeichen, die kein Text hat",
      expected: "eine Größentabelle als JSON oder CSV, als Text in UTF-8 gespeichert",
    },
    "chart-too-many-sizes": {
      message: "es sind {sizes} Größen, zu viele für eine Größentabelle",
      expected: "höchstens {limit} Größen",
    },
    "chart-too-many-columns": {
      message: "es sind {columns} Spalten; von dieser an wurden sie weggelassen",
      expected: "höchstens {limit} Spalten",
    },
    "chart-json-syntax": {
      message: "das JSON ist hier fehlerhaft, bei {received}",
      expected:
        "JSON: Namen und Texte in doppelten Anführungszeichen, endliche Zahlen, kein Komma vor einer schließenden Klammer",
    },
    "chart-json-unfinished": {
      message: "das JSON endet, bevor alle Klammern und Anführungszeichen geschlossen sind",
      expected: "eine schließende Klammer oder ein Anführungszeichen",
    },
    "chart-json-too-deep": {
      message: "die Klammern sind hier tiefer als {limit} Ebenen geschachtelt",
      expected: "höchstens {limit} Ebenen; eine Tabelle braucht fünf",
    },
    "chart-csv-quote": {
      message: "das Anführungszeichen, das diese Zelle öffnet, hat am Ende der Zelle keinen Partner",
      expected: 'eine Zelle wie "38,5-43", jedes Anführungszeichen darin verdoppelt',
    },
    "chart-csv-transposed": {
      message: "die Größen stehen in der ersten Zeile und die Maße in der ersten Spalte",
      expected: "eine Zeile je Größe: Zeilen und Spalten tauschen",
    },
    "chart-csv-size-column-missing": {
      message: "die erste Spalte ist {received}, und keine Spalte heißt size",
      expected: "die Namen der Größen in der ersten Spalte",
    },
    "chart-value-kind": { message: "{what} kann nicht {received} sein", expected: "{form}" },
    "chart-key-unknown": { message: "{what} hat keinen Teil namens {key}{hint}", expected: "{known}" },
    "chart-key-repeated": {
      message: "{key} steht zweimal da; das erste zählt, dieses wurde weggelassen",
      expected: "jeder Teil einmal",
    },
    "chart-word-unknown": { message: "{what} kann nicht {received} sein{hint}", expected: "{known}" },
    "chart-text-too-long": {
      message: "{what} hat {characters} Zeichen: {received}",
      expected: "höchstens {limit} Zeichen",
    },
    "chart-text-blank": { message: "{what} ist leer", expected: "Text, oder gar nichts" },
    "chart-unnamed": {
      message: "die Tabelle hat keinen Namen",
      expected: "ein Name, damit eine Empfehlung sagen kann, welche Tabelle sie meint",
    },
    "chart-no-sizes": {
      message: "die Tabelle hat keine Größe, die sich lesen lässt",
      expected: "mindestens eine Größe mit einem Namen",
    },
    "chart-no-dimension": {
      message: "keine Größe nennt ein Körpermaß, das sich lesen lässt",
      expected: "mindestens ein Bereich oder eine Länge, etwa eine Rückenlänge von 38-43 cm",
    },
    "chart-size-unnamed": {
      message: "eine Größe hat keinen Namen und wurde weggelassen",
      expected: "ein Name wie M",
    },
    "chart-size-repeated": {
      message: "die Größe {received} steht zweimal da; die erste zählt, diese wurde weggelassen",
      expected: "jede Größe einmal: Größen gleichen Namens werden nie zusammengelegt",
    },
    "chart-quantity-unreadable": {
      message: "{received} lässt sich nicht lesen ({what})",
      expected: "{form}",
    },
    "chart-column-unknown": {
      message: "die Spalte {received} ist nicht bekannt und wurde weggelassen{hint}",
      expected: "ein Körpermaß wie torso-length, oder capacity, mass oder harness",
    },
    "chart-column-ambiguous": {
      message: "die Spalte {received} kann {candidates} meinen und wurde weggelassen",
      expected: "eines von {candidates}",
    },
    "chart-column-repeated": {
      message: "die Spalte {received} nennt {dimension} in {unit} noch einmal und wurde weggelassen",
      expected: "eine Spalte je Maß und Einheit",
    },
    "chart-column-unit-unknown": {
      message: "die Spalte {received} hat eine Einheit, die nicht passt ({dimension}), und wurde weggelassen",
      expected: "eine Einheit wie {units}",
    },
    "chart-column-unit-unread": {
      message:
        "„{unit}“ ist keine Einheit, die gelesen wird, und keine Zelle nennt eine: Die Spalte {received} wurde weggelassen",
      expected: "eine Einheit wie {units} im Spaltenkopf",
    },
    "chart-row-ragged": {
      message: "diese Zeile hat {cells} von {columns} Zellen; {kept}",
      expected: "{columns} Zellen",
    },
    "chart-hip-unstated": {
      message: "{received} sagt nicht, welchen Umfang: um die Beckenkämme oder den weitesten",
      expected: "hip-belt-girth (um die Beckenkämme) oder hip-girth (der weiteste)",
    },
    "chart-cell-unreadable": {
      message: "{received} ist weder als Bereich noch als Länge noch als offenes Ende zu lesen",
      expected: "38-43, 46, <104 oder 48+, mit einer Einheit in der Zelle oder im Spaltenkopf",
    },
    "chart-cell-half-range": {
      message: "{received} ist ein halber Bereich: ein offenes Ende oder eine ausgelassene Zahl",
      expected: "{length}+ oder <{length} für ein offenes Ende, oder beide Enden",
    },
    "chart-cell-unit-differs": {
      message:
        "{received} steht in {cellUnit} unter einem Spaltenkopf, der {columnUnit} sagt; die Einheit der Zelle zählt",
      expected: "die Einheit des Spaltenkopfs, oder ein Spaltenkopf ohne Einheit",
    },
    "chart-range-reversed": {
      message: "der Bereich {received} beginnt über seinem Ende",
      expected: "die kleinere Länge zuerst; die Enden wurden nicht getauscht",
    },
    "chart-range-empty": {
      message: "ein Bereich nennt weder ein Ende noch eine einzelne Länge",
      expected: "from, to oder beides, oder nominal",
    },
    "chart-nominal-outside": {
      message: "die einzelne Länge {received} liegt außerhalb des Bereichs daneben",
      expected: "eine einzelne Länge zwischen from und to",
    },
    "chart-nominal-alone": {
      message:
        "{size} nennt eine einzelne Länge, {nominalMm} mm, und keine andere Größe liegt daneben, so dass ihr Bereich nicht zu erschließen ist",
      expected: "ein Bereich, oder eine zweite Größe, an der sich der Abstand messen lässt",
    },
    "chart-statements-disagree": {
      message:
        "die beiden Angaben {received} unterscheiden sich um {differenceMm} mm am Ende „{end}“, mehr als Runden erklärt ({allowedMm} mm); die erste zählt",
      expected: "dieselbe Länge in beiden Einheiten, bis auf eine halbe Stufe der gröberen",
    },
    "chart-statements-differ-in-kind": {
      message: "die beiden Angaben {received} sind nicht von einer Art; die erste zählt",
      expected: "zwei Bereiche, zwei offene Enden auf einer Seite oder zwei einzelne Längen",
    },
    "chart-gap": {
      message:
        "zwischen {size} und {other} klafft eine Lücke von {widthMm} mm ({what}), von {fromMm} bis {toMm} mm",
      expected: "Nachbargrößen, die sich berühren oder überlappen",
    },
    "chart-gap-of-writing": {
      message:
        "wörtlich gelesen lassen {size} und {other} {widthMm} mm aus ({what}), von {fromMm} bis {toMm} mm: eine Stufe der Zahlen",
      expected: "eine Zahl als Ende der einen und Anfang der anderen Größe",
    },
    "chart-overlap": {
      message: "{size} und {other} überlappen um {widthMm} mm ({what}), von {fromMm} bis {toMm} mm",
      expected: "eine Überlappung, die so gemeint ist",
    },
    "chart-overlap-wide": {
      message:
        "{size} und {other} überlappen um {widthMm} mm ({what}), von {fromMm} bis {toMm} mm; üblich sind 20 bis 30 mm",
      expected: "eine Überlappung von etwa {usualMm} mm oder weniger, wenn nicht mehr gemeint ist",
    },
    "chart-size-inside": {
      message: "{size} liegt ganz in {other} ({what}): danach allein passt {size} niemandem als Einzige",
      expected: "Größen, die jede jemandem passen, dem die anderen nicht passen",
    },
    "chart-ranges-equal": {
      message: "{size} und {other} nennen denselben Bereich ({what})",
      expected: "Bereiche, die die Größen unterscheiden, oder ein anderes Maß, das es tut",
    },
    "chart-sizes-out-of-order": {
      message: "dem Namen nach ist {size} kleiner als {other}, aber das Maß {what} ist größer",
      expected: "Bereiche, die mit den Namen der Größen wachsen",
    },
    "chart-length-suspicious": {
      message: "{size}: {lengths} hat kein Mensch ({what}); {slip}, hieße es {wouldBe}",
      expected: "{what} zwischen {leastMm} und {mostMm} mm",
    },
    "chart-length-implausible": {
      message: "{size}: {lengths} hat kein Mensch ({what})",
      expected: "{what} zwischen {leastMm} und {mostMm} mm",
    },
    "chart-range-narrow": {
      message: "{size} umfasst nur {widthMm} mm ({what}), weniger als eine Messung unterscheiden kann",
      expected: "ein Bereich von mindestens {limitMm} mm",
    },
    "chart-range-wide": {
      message: "{size} umfasst {widthMm} mm ({what}): die meisten Menschen liegen darin",
      expected: "ein Bereich von höchstens {limitMm} mm, wenn das Tragesystem nicht wirklich so weit reicht",
    },
    "chart-interval-inferred": {
      message:
        "{size} nennt eine einzelne Länge ({what}), {nominalMm} mm; ihr Bereich, {lengths}, ist aus den anderen Größen erschlossen",
      expected: "ein angegebener Bereich",
    },
    "chart-girth-unstated": {
      message: "die Tabelle sagt „Hüfte“ und nicht, welchen Umfang: um die Beckenkämme oder den weitesten",
      expected: "hip-belt-girth (um die Beckenkämme) oder hip-girth (der weiteste)",
    },
    "chart-end-open-inside": {
      message: "{size} hat kein {end} Ende ({what}), obwohl {other} darüber hinaus liegt",
      expected: "offene Enden nur bei der kleinsten und der größten Größe",
    },
    "chart-size-without-dimension": {
      message: "{size} nennt kein Körpermaß und kann deshalb nie gewählt werden",
      expected: "mindestens ein Bereich oder eine Länge",
    },
    "chart-capacity-falls": {
      message:
        "{other} ist größer als {size} ({what}), fasst aber weniger: {otherLitres} L nach {sizeLitres} L",
      expected: "ein Volumen, das mit der Größe wächst",
    },
  },
};

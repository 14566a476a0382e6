import type { Same } from "../same.ts";

export const average: Same<"average"> = {
  title: "Warum mitteln",
  description:
    "Messen Sie einen erfundenen Rücken, einmal oder tausendmal, und sehen Sie dem Mittelwert zu: Die Streuung schrumpft, die Abweichung bleibt.",
  lead: "Alle sagen: Miss dreimal und nimm den Mittelwert. Probieren Sie es aus. Lassen Sie eine Hand messen, deren Fehler Sie kennen, und sehen Sie, was das Mitteln wegnimmt und was es nie berührt.",
  setTitle: "Der Versuch",
  source: "Wessen Messungen",
  sourceDrawn: "hier gezogene, vom Zufall",
  sourceClass: "unsere eigenen",
  dimension: "Gemessen wird",
  length: "Wahre Länge",
  lengthHint: "Was im Laden niemand weiß: mit Einheit, etwa 43,4 cm.",
  hands: "Wer misst",
  handsHelper: "jemand hilft",
  handsSelf: "die Person allein",
  handsOwn: "eine Hand mit Fehlern, die ich angebe",
  handsHint:
    "Wie groß die Fehler sind, wenn jemand hilft oder allein misst, ist eine Annahme der Bibliothek; ihre Tabelle sagt das auch.",
  tool: "Womit",
  tape: "Maßband",
  cord: "Schnur und Lineal",
  rule: "kurzes Lineal, aneinandergelegt",
  bias: "Abweichung aller",
  biasHint: "Kommt zu jeder Messung hinzu; unter null mit Minus, etwa -6 mm. Leer heißt keine.",
  lasting: "Was von Hand zu Hand verschieden ist",
  lastingHint: "Standardabweichung dessen, was in allen Messungen derselben Hand bleibt.",
  noise: "Was von Messung zu Messung verschieden ist",
  noiseHint: "Standardabweichung einer Messung derselben Hand.",
  step: "Abgelesen auf",
  stepHint: "Der feinste Strich, der gelesen wird, etwa 1 mm, 0,5 cm oder 1/4 in. Leer heißt ohne Rundung.",
  slips: "Griff an den falschen Knochen",
  slipsNone: "nie",
  slipsSome: "jede zehnte Messung, um 2 cm",
  slipsOwn: "wie ich es angebe",
  slipChance: "Messungen mit falschem Griff, Prozent",
  slipSize: "Um wie viel",
  slipSide: "In welche Richtung",
  either: "beide",
  longer: "länger",
  shorter: "kürzer",
  readings: "Messungen einer Person durch die Klasse",
  readingsHint:
    "Eine je Zeile, jede mit Einheit, in der Reihenfolge der Messung; eine Spalte einer Tabelle lässt sich einfügen.",
  readingsExample: "43,2 cm\n44,1 cm\n43,7 cm",
  held: "Eine sorgfältige Messung zum Vergleich",
  heldHint: "Von der Lehrkraft, wenn es eine gibt. Ohne sie sieht niemand eine gemeinsame Abweichung.",
  wall: "Groß, für die Wand",
  pack: "Größen zur Wahl",
  packOwn: "eine eigene Tabelle",
  pasteLabel: "Größentabelle",
  pasteHint: "CSV, JSON oder eine Tabelle von einer Webseite; in der ersten Spalte steht die Größe.",
  noSizes: "Diese Tabelle hat keine Größen nach diesem Maß, deshalb wird keine gewählt.",
  takeTitle: "Messen",
  takeOne: "Einmal",
  takeTen: "Zehnmal",
  takeMany: "Tausendmal",
  again: "Von vorn",
  another: "Eine andere Hand",
  anotherHint: "Eine neue Hand bringt ihren eigenen bleibenden Fehler mit, und andere Messungen.",
  taken: "{count} Messungen",
  takenOne: "1 Messung",
  most: "Mehr misst diese Seite nicht.",
  status: "{taken}, Mittelwert {mean}",
  statusSlips: "; {slips} davon mit falschem Griff",
  example:
    "Ein erfundenes Beispiel, vorher gerechnet. Jede Hand, die je ein Maßband hielt, ist irgendwo darunter.",
  pathTitle: "Wohin der Mittelwert geht",
  pathLabel:
    "Von oben nach unten immer mehr Messungen. Ihr Mittelwert endet bei {mean} nach {count}; die wahre Länge ist {length}. Dasselbe steht in der Tabelle darunter.",
  pathLabelClass:
    "Von oben nach unten immer mehr Messungen. Ihr Mittelwert endet bei {mean} nach {count}. Dasselbe steht in der Tabelle darunter.",
  keyReading: "eine Messung",
  keyMean: "Mittelwert bis hierher, mit dem Band, das ihm seine Streuung allein gäbe (95 %)",
  keyMedian: "Median bis hierher",
  keyTrue: "wahre Länge",
  keyHeld: "sorgfältige Messung",
  keyOffset: "wahre Länge und was diese Hand immer hinzufügt",
  readingNumber: "Messung",
  reading: "gemessen",
  mean: "Mittelwert",
  median: "Median",
  band: "Band",
  spreadTitle: "Der Mittelwert von 1, 3, 5 und 10 Messungen, viele Male",
  spreadLabel:
    "Histogramme der Mittelwerte von 1, 3, 5 und 10 Messungen auf einem Lineal, über den Größen der Tabelle: {rows}. Dasselbe steht in der Tabelle darunter.",
  spreadRow: "{count}: {low} bis {high} in neun von zehn Reihen",
  spreadHint:
    "4000 Reihen je Zeile, jede von einer anderen Hand. Rechts steht, wie weit ein Mittelwert gewöhnlich daneben liegt (quadratisches Mittel).",
  spreadHintClass:
    "4000 Reihen je Zeile, mit Zurücklegen aus Ihren Messungen gezogen. Rechts steht, wie weit ein Mittelwert gewöhnlich daneben liegt (quadratisches Mittel).",
  keyRight: "wählt eine Größe, in der die Länge liegt",
  keyWrong: "wählt eine falsche",
  off: "± {error}",
  countHead: "Messungen",
  biasHead: "Abweichung",
  sdHead: "Streuung",
  offHead: "gewöhnlich daneben",
  wrongHead: "falsche Größe",
  medianOffHead: "Median gewöhnlich daneben",
  expectedHead: "nach Formel",
  wrongTitle: "Wie oft die falsche Größe",
  wrongLabel: "Anteil der Reihen, die eine falsche Größe wählen, nach Zahl der Messungen: {rows}.",
  wrongMean: "Mittel aus {count}",
  noticeTitle: "Was auffallen sollte",
  noticeOffset:
    "Nach {taken} ist der Mittelwert {mean}: {difference} {side} als die wahre Länge. Diese Hand legt {offset} in jede Messung, und tausend weitere ließen sie dort.",
  noticeOffsetNone:
    "Nach {taken} ist der Mittelwert {mean}: {difference} {side} als die wahre Länge. Diese Hand hat keinen bleibenden Fehler; was übrig ist, ist Zufall, und weitere Messungen nehmen ihn weg.",
  noticeExact: "Nach {taken} ist der Mittelwert die wahre Länge, bis zur letzten gezeigten Stelle.",
  noticeBandMisses:
    "Die wahre Länge liegt außerhalb des Bandes: Es ist {band} breit und seiner Sache sicher. Es weiß von Streuung und von sonst nichts.",
  noticeBandHolds:
    "Das Band, {band} breit, enthält die wahre Länge noch. Messen Sie tausendmal und sehen Sie nach, ob es dabei bleibt.",
  noticeBandHoldsAll:
    "Das Band, {band} breit, enthält die wahre Länge: Ohne bleibenden Fehler soll es das auch.",
  noticeShrinks:
    "Die Streuung schrumpft: Eine Messung streut um {one}, der Mittelwert von fünf um {five} um das herum, was solche Hände immer hinzufügen. √5 ist 2,24, und {from} ÷ 2,24 ist {to}.",
  noticeFloor:
    "Was bleibt, schrumpft nicht: {parts}. Ein Mittel aus zehn liegt noch um {ten} daneben und eines aus einer Million um {floor}.",
  floorHands: "solche Hände unterscheiden sich um {lasting}",
  floorBias: "alle fügen {bias} hinzu",
  noticeFloorNone:
    "Hier bleibt nichts, deshalb kann das Mitteln immer weitergehen: Ein Mittel aus zehn liegt um {ten} daneben.",
  noticeSizesLess:
    "Eine Messung wählt für {one} von 100 eine falsche Größe, drei für {three}, fünf für {five}. Mitteln hilft, soweit die Streuung schuld ist.",
  noticeSizesSame:
    "Eine Messung wählt für {one} von 100 eine falsche Größe, fünf für {five}. Mitteln ändert daran kaum etwas.",
  noticeSizesMore:
    "Eine Messung wählt für {one} von 100 eine falsche Größe, fünf für {five}: mehr, denn die Abweichung führt nun sicherer auf die falsche Seite.",
  noticeSizesNever: "Keine Reihe wählt eine falsche Größe: Die Länge liegt weit weg von jeder Grenze.",
  noticeSizesOutside:
    "Die Länge liegt in keiner Größe dieser Tabelle; deshalb ist jede Wahl falsch, so oft Sie auch messen.",
  noticeMedian:
    "Mit falschen Griffen liegt der Median von fünf um {median} daneben, der Mittelwert um {mean}: Ein falscher Griff zieht am Mittelwert und kaum am Median.",
  noticeMedianSame:
    "Der Median von fünf liegt um {median} daneben, der Mittelwert um {mean}: Hier ist der Median nicht besser, er lässt einen Teil der Messungen ungenutzt.",
  noticeCoarse:
    "Die Striche sind {step} voneinander entfernt, und die Messungen streuen um {noise}: Die meisten fallen auf einen Strich, und der Mittelwert sieht nicht zwischen die Striche.",
  noticeClass:
    "Ihre {count} Messungen streuen um {sd}; ihr Mittelwert ist {mean}, der Median {median}. Das Band reicht von {lower} bis {upper}.",
  noticeClassHeld:
    "Die sorgfältige Messung ist {held}. Die Klasse misst {difference} {side}: Liegt das außerhalb des Bandes, ist es eine gemeinsame Abweichung, und weitere Messungen derselben Art ändern daran nichts.",
  noticeClassNotHeld:
    "Ob Sie alle zu lang oder zu kurz messen, ist diesen Zahlen nicht anzusehen, so viele es auch sind. Lassen Sie jemanden mit Übung noch einmal messen, und tragen Sie das ein.",
  sideLonger: "länger",
  sideShorter: "kürzer",
  errors: {
    chance: "das ist kein Anteil von Messungen",
    few: "zum Mitteln braucht es zwei Messungen",
    many: "nur die ersten {most} Messungen werden verwendet",
    far: "das ist keine Länge, die man mit einem Maßband am Körper misst",
    pack: "die Tabelle war nicht zu lesen; sehen Sie sie auf der Seite an, die Tabellen liest",
  },
  expected: {
    chance: "eine Zahl von 0 bis 100",
    few: "eine Messung je Zeile, etwa 43,2 cm",
    many: "die Messungen einer Klasse",
    far: "eine Länge von 5 cm bis 3 m",
    pack: "eine Größentabelle",
  },
  atLine: "Zeile {line}",
  moreProblems: "{count} weitere Zeilen waren nicht zu lesen.",
  toExample: "Zurück zum Beispiel",
};

import type { Same } from "../same.ts";

export const hands: Same<"hands"> = {
  title: "Wie gut sind unsere Hände",
  description:
    "Fügen Sie die Messungen eines Abends ein, an dem mehrere dieselben Personen gemessen haben, und sehen Sie, wie weit einer einzelnen Messung zu trauen ist, und warum.",
  lead: "Messen Sie einige Personen, jede durch zwei oder drei von Ihnen, jede zweimal. Fügen Sie Ihre Notizen ein und sehen Sie, wie weit einer einzelnen Messung zu trauen ist, wessen Hand abweicht und was dagegen hilft.",
  example: "Ein erfundener Abend des Wegetrupps: zehn Mitglieder, von dreien je zweimal gemessen.",
  textTitle: "Ihre Notizen",
  textLabel: "Messungen der Studie",
  textHint:
    "Tippen, einfügen oder eine Datei ablegen: CSV, eine Tabelle aus einer Tabellenkalkulation oder von einer Webseite, oder JSON. Entweder eine Zeile je Person mit einer Spalte wie „Ann 2 (cm)“ für jede Messung, oder eine Zeile je Messung mit den Spalten subject, measurer, repeat und einem Wert mit Einheit.",
  dimension: "Was gemessen wurde, wenn der Text es nicht sagt",
  dimensionNone: "wie im Text",
  bare: "Einheit bloßer Zahlen, wenn der Text sie nicht sagt",
  bareNone: "wie im Text",
  clear: "Leeren",
  begin: "Zurück zum Beispiel",
  counted: "{readings} Messungen von {subjects} Personen durch {measurers}, bis zu {repeats} je Hand.",
  handOne: "1 Hand",
  handMany: "{count} Hände",
  missingOne: "1 Zelle fehlt.",
  missingMany: "{count} Zellen fehlen.",
  asideOne: "1 wurde beiseitegelegt.",
  asideMany: "{count} wurden beiseitegelegt.",
  nothing: "Nichts auszusetzen.",
  count: "{wrong} falsch, {odd} einen Blick wert.",
  more: "Nur die ersten {count} stehen hier.",
  wrongTitle: "Falsch",
  oddTitle: "Einen Blick wert",
  goLine: "Zeile {line}: dorthin",
  readTitle: "So wurde es gelesen",
  readCaption: "Messungen, {unit}; – fehlt, durchgestrichen ist beiseitegelegt",
  readMore: "Die ersten {most} von {count} Personen stehen hier.",
  person: "Person",
  unreadable: "Nichts davon lässt sich als Studie lesen. Was falsch ist, steht beim Text.",
  empty: "Es gibt noch nichts zu sagen.",
  tooMany:
    "Diese Studie ist zu groß für eine Seite: Höchstens {measurers} Hände und {readings} Messungen werden hier verglichen. Der Befehl kann jede Größe.",
  shortTitle: "Kurz gesagt",
  shortTotal: "± {value}",
  shortTotalText:
    "So gut ist eine einzelne Messung durch irgendjemanden von Ihnen: Zwei von dreien liegen so nah an dem, was Hände wie Ihre im Mittel messen würden.",
  shortIntraText:
    "So gut ist eine einzelne Messung: Zwei von dreien liegen so nah an dem, was dieselbe Hand im Mittel messen würde. Was eine andere messen würde, ist nicht bekannt.",
  shortApart:
    "Liegen zwei Messungen einer Person durch eine Hand mehr als {same} auseinander, suchen Sie die Knochen neu und messen Sie ein drittes Mal. Durch zwei Hände dürfen es {any} sein, ohne dass jemand danebengriff.",
  shortApartSame:
    "Liegen zwei Messungen einer Person durch eine Hand mehr als {same} auseinander, suchen Sie die Knochen neu und messen Sie ein drittes Mal.",
  between:
    "Das meiste liegt zwischen den Händen: Jemand hält das Maßband anders. Suchen Sie die Knochen gemeinsam an einer Person, bis Sie übereinstimmen; mehr Messungen einer Hand helfen nicht.",
  within:
    "Das meiste liegt in jeder einzelnen Hand. Das Mittel aus drei Messungen, die Knochen jedes Mal neu gesucht, hilft mehr als eine zweite Person.",
  temTitle: "Technischer Messfehler (TEM)",
  temHint: "Die Standardabweichung einer Messung; in Prozent vom Mittelwert. In Klammern der Bereich.",
  temIntra: "dieselbe Hand (intra)",
  temInter: "zwischen Händen (inter)",
  temTotal: "irgendeine Hand (gesamt)",
  temOnly: "nur {measurer}",
  error: "Fehler",
  percent: "% vom Mittel",
  interval: "{percent}-Bereich",
  reliability: "Reliabilität",
  temMeaning:
    "Beim Anpassen: Schreiben Sie {total} neben eine Messung, die irgendjemand von Ihnen genommen hat, und {intra} neben den Vergleich zweier Messungen derselben Hand.",
  temMeaningIntra:
    "Beim Anpassen: {intra} fügt eine Hand jedes Mal durch Zufall hinzu; eine zweite Hand vielleicht mehr.",
  temMeaningWide:
    "Der Bereich zwischen Händen ist weit, weil es wenige Hände sind, nicht weil es wenige Messungen sind: Bitten Sie eine vierte und fünfte Person dazu.",
  reliabilityMeaning:
    "Reliabilität ist der Anteil der Unterschiede zwischen Messungen, der von den Personen kommt und nicht vom Fehler. In einer Gruppe sehr verschiedener Personen ist sie größer; der Fehler selbst nicht.",
  precisionTitle: "Wiederhol- und Vergleichspräzision",
  precisionHint:
    "Nach ISO 5725-2, mit Personen als Niveaus. Zwei Messungen liegen in einem von zwanzig Fällen weiter als r oder R auseinander.",
  sr: "sr, dieselbe Hand",
  sl: "sL, zwischen Händen",
  sR: "sR, irgendeine Hand",
  r: "r, Grenze für eine Hand",
  R: "R, Grenze für zwei Hände",
  precisionClean: "Geprüft mit den Tests von Cochran und Grubbs: Nichts fällt heraus.",
  precisionFound: "Es fällt heraus und wurde nicht weggelassen: {found}.",
  foundVariance: "{subject} durch {measurer} streut mehr als die anderen",
  foundMean: "das Mittel von {measurer} für {subject} liegt abseits der anderen",
  precisionMeaning:
    "Beim Anpassen: Wer hier und später von jemand anderem gemessen wird, kann um {R} gewachsen scheinen. Zwischen Nachbargrößen, die {R} auseinanderliegen, entscheidet eine Messung einer Person nichts.",
  iccTitle: "Intraklassenkorrelation (ICC)",
  iccHint: "Aus Varianzkomponenten (REML); für einzelne Messungen.",
  iccAgreement: "Übereinstimmung, Hände wechseln",
  iccConsistency: "Konsistenz, immer dieselben Hände",
  correlation: "ICC",
  iccMeaning:
    "Beim Anpassen: Von der Varianz zwischen Messungen kommen {share} % von den Personen und {rest} % von Ihnen. Dasselbe Maßband an ähnlicheren Personen gäbe eine kleinere Zahl.",
  agreementTitle: "Übereinstimmung, je zwei Hände",
  agreementHint:
    "Nach Bland und Altman: der mittlere Unterschied, erste minus zweite, und die Grenzen, in denen 95 % der Unterschiede einzelner Messungen liegen.",
  pair: "Hände",
  bias: "mittlerer Unterschied",
  lowerLimit: "untere Grenze",
  upperLimit: "obere Grenze",
  agreementMeaning:
    "Beim Anpassen: {first} misst im Mittel {difference} {side} als {second}, im Einzelfall alles von {lower} bis {upper}.",
  agreementMeaningNone:
    "Beim Anpassen: {first} und {second} messen im Mittel dasselbe, soweit diese Studie es sieht, unterscheiden sich im Einzelfall aber um alles von {lower} bis {upper}.",
  longer: "länger",
  shorter: "kürzer",
  agreementPlot: "Unterschiede zwischen {first} und {second}, über der Länge",
  agreementLabel:
    "Jeder Punkt ist eine Person: entlang des Lineals das Mittel von {first} und {second}, nach oben der Unterschied. Der mittlere Unterschied ist {bias}; die Grenzen sind {lower} und {upper}. Dasselbe steht in der Tabelle darüber und in der darunter.",
  keyPoint: "eine Person",
  keyBias: "mittlerer Unterschied mit seinem Bereich",
  keyLimits: "Grenzen der Übereinstimmung",
  keyZero: "kein Unterschied",
  difference: "Unterschied",
  meanLength: "Mittel",
  pairChoice: "Gezeichnetes Paar",
  changeTitle: "Kleinste erkennbare Änderung",
  changeSame: "durch dieselbe Hand",
  changeAny: "durch irgendeine Hand",
  changeMeaning:
    "Beim Anpassen: Misst jemand, der wächst oder trainiert, weniger als {any} mehr als beim letzten Mal, können das Sie sein und nicht der Rücken.",
  trendTitle: "Gang über die Wiederholungen",
  trendSlope: "je Wiederholung",
  trendChance: "p",
  everybody: "alle",
  trendMeaning:
    "Beim Anpassen: Die Messungen werden von einer zur nächsten um {slope} {side}. Die Person sackt zusammen, oder das Band setzt sich: Lassen Sie alle neu aufstehen.",
  trendMeaningNone: "Beim Anpassen: Die Reihenfolge der Messungen schadet nicht, soweit es sich zeigt.",
  digitsTitle: "Letzte Ziffern",
  digitsHint:
    "Wie oft jede letzte Ziffer geschrieben wurde, in {unit}, im feinsten Schritt, den jemand nahm. Ohne Vorliebe wären alle gleich häufig.",
  digit: "Ziffer",
  digitsIndex: "Index der Vorliebe",
  digitsMeaning:
    "Beim Anpassen: {measurers} bevorzugt manche Ziffern (oft 0 und 5) mehr, als es der Zufall täte. Lesen Sie jeden Strich; eine auf 5 mm gerundete Messung wirft weg, was eine zweite Messung brächte.",
  digitsMeaningNone: "Beim Anpassen: Niemand bevorzugt deutlich eine Ziffer. Jeder Strich wird gelesen.",
  allowanceTitle: "Gegen eine veröffentlichte Grenze",
  allowanceText:
    "Eine veröffentlichte Reihenmessung von Soldaten erlaubte zwischen zwei Messungen {limit} ({name}). Hier liegen {same} von {samePairs} Paaren einer Hand und {two} von {twoPairs} zweier Hände weiter auseinander.",
  allowanceMeaning:
    "Beim Anpassen: Wer so eine Grenze hält, hat monatelang geübt. Sie ist ein Ziel, keine Regel für einen Laden.",
  plotTitle: "Jede Messung",
  plotLabel:
    "Eine Zeile je Person, die kürzeste zuerst, mit jeder Messung auf einem Lineal: {people}. Dasselbe steht in der Tabelle des Gelesenen.",
  plotMore: "Die ersten {most} Personen sind gezeichnet.",
  keyAside: "beiseitegelegt",
  budgetTitle: "Woher der Fehler einer Messung kommt",
  budgetLabel: "Balken auf einem Lineal der Fehler: {rows}.",
  budgetReading: "neues Messen",
  budgetMeasurer: "die Hand",
  budgetInteraction: "Hand mit Person",
  budgetShare: "{sd}, {share} %",
  budgetMeaning:
    "Beim Anpassen: Wo der längste Balken ist, lohnt sich Üben. Prozent sind Anteile der Varianz: Ein halb so langer Balken ist ein Viertel des Übels.",
  notKnown: "nicht bekannt",
  takeTitle: "Mitnehmen",
  takeHint: "JSON enthält die Messungen, was fehlt und beiseiteliegt, und jede Zahl des Berichts.",
  download: "Als JSON herunterladen",
  print: "Bericht drucken",
  fileName: "unsere-haende",
};

import type { ReadDimension } from "../../work/choose-state.ts";
import type { GuideText } from "../guide-text.ts";

const crests: GuideText["points"][number] = {
  name: "Oberkante des Hüftknochens (Beckenkamm)",
  find: [
    "Legen Sie die Hände mit dem Daumen nach hinten in die weichen Flanken unter den Rippen.",
    "Drücken Sie sacht und gleiten Sie abwärts, bis die Hände auf etwas Hartem ruhen: Das ist der Beckenkamm.",
    "Tasten Sie die Kante entlang zu ihrer höchsten Stelle an der Seite und kleben Sie dort einen Punkt hin.",
  ],
  check: [
    "Rippen weichen beim Einatmen, der Beckenkamm nicht.",
    "Beide Seiten sollen gleich hoch liegen; im Spiegel oder von hinten nachsehen.",
  ],
};

const asking = {
  name: "Erst fragen, dann anfassen",
  text: "Sagen Sie vorher, was Sie tun werden, fragen Sie, ob das recht ist, und lassen Sie die Person die Stellen selbst finden und das Band selbst halten, wo es geht. Die Zahlen sind nur für den Rucksack da.",
  ask: "Wer gemessen wird, entscheidet bei jedem Schritt und kann jederzeit aufhören.",
};

const pregnancy = {
  name: "Schwangerschaft",
  text: "In der Schwangerschaft ändern sich Umfänge von Woche zu Woche, die Hüftknochen sind schwerer zu tasten, und ein Hüftgurt darf nicht auf den Bauch drücken.",
  ask: "Fragen Sie Hebamme, Ärztin oder Arzt, und probieren Sie den Rucksack bei einer Fachkraft an, statt nach Zahlen zu wählen.",
};

const injury = {
  name: "Verletzung oder Operation an Wirbelsäule, Schulter oder Hüfte",
  text: "Nach einer Verletzung oder Operation, bei gekrümmter Wirbelsäule oder ungleich langen Beinen können die Stellen anderswo liegen oder keine Last vertragen.",
  ask: "Fragen Sie die Ärztin oder den Arzt, ob und was getragen werden darf, und eine Fachkraft nach der Größe.",
};

const child = {
  name: "Kinder und Jugendliche",
  text: "Kinder wachsen zwischen zwei Touren; Zahlen und Lasten für Erwachsene gelten für sie nicht. Messen Sie vor jeder Tour neu, mit Eltern oder Vormund dabei.",
  ask: "Fragen Sie eine Fachkraft nach dem Rucksack und ärztlich nach der Last.",
};

const girthPosture: readonly string[] = [
  "Stehen Sie aufrecht und locker, die Fersen beisammen oder so nah, wie die Beine es erlauben.",
  "Lassen Sie den Bauch locker und atmen Sie ruhig; abgelesen wird nach dem Ausatmen.",
  "Haut oder eine dünne, enge Schicht; Taschen leer.",
];

/** How to take each dimension, in German: what the library tells in English. */
export const germanGuides: Readonly<Record<ReadDimension, GuideText>> = {
  "torso-length": {
    definition:
      "Die Länge von C7, dem Höcker am Ansatz des Halses, die Krümmung der Wirbelsäule entlang bis zu der Linie, die die Oberkanten der beiden Hüftknochen verbindet.",
    use: "Sie wählt die Größe des Tragesystems: Bei der richtigen liegt der Hüftgurt auf den Hüftknochen, während die Schultergurte den Schultern folgen.",
    points: [
      {
        name: "C7, der Höcker am Ansatz des Halses",
        find: [
          "Lassen Sie das Kinn zur Brust sinken, sacht und nur so weit, wie es angenehm ist.",
          "Fahren Sie mit einer Fingerspitze auf der Mitte des Halses hinunter bis dorthin, wo Hals und Rücken sich treffen: Ein oder zwei Höcker stehen nun am weitesten vor.",
          "Legen Sie auf die beiden größten Höcker je eine Fingerspitze, eine über der anderen.",
          "Lassen Sie den Kopf heben und dann langsam in den Nacken neigen. Der obere Finger soll spüren, wie sein Höcker nach vorn gleitet und verschwindet: Das ist C6. Der Höcker unter dem unteren Finger bleibt: Das ist C7.",
          "Bleiben beide, so sind Sie einen zu tief, auf C7 und T1: mit beiden Fingern einen höher. Verschwinden beide, so sind Sie einen zu hoch.",
          "Halten Sie den Finger auf C7, wenn der Kopf wieder gerade ist, und markieren Sie die Mitte mit einem kleinen Klebepunkt.",
        ],
        check: [
          "Legen Sie den Finger auf die Marke und lassen Sie den Kopf langsam hin und her drehen: C7 dreht ein wenig mit, T1 kaum.",
          "Nehmen Sie den Finger weg und finden Sie die Stelle noch einmal, ohne auf die Marke zu sehen: Zwei ehrliche Funde liegen keinen halben Finger breit auseinander.",
          "Gehen Sie nicht nach dem größten Höcker allein: Bei vielen steht T1 so weit vor wie C7.",
        ],
      },
      crests,
    ],
    posture: [
      "Stehen Sie aufrecht und locker auf ebenem Boden, das Gewicht auf beiden Füßen.",
      "Lassen Sie die Schultern sinken und die Arme hängen; das Kreuz behält seine eigene Krümmung.",
      "Sehen Sie geradeaus und lassen Sie den Kopf so, bis abgelesen ist.",
      "Haut oder ein dünnes, enges Hemd; Haare hochgebunden; Hose und Gürtel unter die Hüftknochen geschoben.",
    ],
    ways: [
      {
        tool: "tape",
        who: "helper",
        suits: "Der beste Weg: zwei Menschen, ein Maßband, ein paar Minuten.",
        steps: [
          "Sagen Sie, was Sie tun werden, und fragen Sie, bevor Sie anfassen.",
          "Suchen Sie C7 bei sacht gebeugtem Kopf, prüfen Sie, indem der Kopf sich in den Nacken neigt, und markieren Sie bei geradem Kopf.",
          "Die Person legt beide Hände auf die Oberkanten der Hüftknochen, Finger nach vorn, Daumen nach hinten, bis die Daumen über der Wirbelsäule aufeinander zeigen.",
          "Sehen Sie von hinten nach, ob die Daumen gleich hoch sind, und markieren Sie die Wirbelsäule auf der Linie zwischen ihren Spitzen.",
          "Die Hände sinken, der Blick geht geradeaus.",
          "Halten Sie die Null des Bandes an die obere Marke und lassen Sie es auf der Mitte der Wirbelsäule hinunterlaufen.",
          "Legen Sie das Band mit der flachen Hand ins Hohlkreuz, so dass es der Krümmung folgt und weder darüber hängt noch einschneidet.",
          "Lesen Sie an der unteren Marke ab, mindestens auf einen halben Zentimeter genau, und schreiben Sie es auf.",
          "Wischen Sie beide Marken weg, gehen Sie ein paar Schritte und machen Sie alles von vorn: insgesamt drei Messungen. Nur eine neu gefundene Marke zeigt, wie gut sie gefunden wurde.",
        ],
      },
      {
        tool: "tape",
        who: "self",
        suits:
          "Allein, mit einem Maßband. Es streut mehr als zu zweit, und ein falsches C7 bleibt falsch: drei Messungen oder mehr.",
        steps: [
          "Suchen Sie C7 mit den Fingerspitzen bei sacht gebeugtem Kopf, dann neigen Sie den Kopf in den Nacken: Der Höcker, der bleibt, ist C7. Kleben Sie einen Punkt darauf.",
          "Kleben Sie das Ende des Bandes mit einem Pflaster auf den Punkt, die Null am Höcker, die Zahlen nach außen.",
          "Lassen Sie das Band frei den Rücken hinunterhängen und sehen Sie geradeaus, damit es an der Wirbelsäule liegt.",
          "Legen Sie beide Hände auf die Oberkanten der Hüftknochen, Daumen nach hinten, und führen Sie die Daumen waagrecht aufeinander zu.",
          "Fassen Sie das Band zwischen beiden Daumenspitzen und drücken Sie einen Nagel hinein; bleiben Sie dabei gerade stehen.",
          "Lassen Sie den Nagel, wo er ist, nehmen Sie das Band ab und lesen Sie ab.",
          "Beginnen Sie von vorn, mit neuem Klebepunkt, und schreiben Sie jede Messung auf.",
        ],
      },
      {
        tool: "cord-and-ruler",
        who: "helper",
        suits:
          "So gut wie das Maßband, wenn keins da ist: eine Schnur, die sich nicht dehnt, und ein Lineal.",
        steps: [
          "Sagen Sie, was Sie tun werden, und fragen Sie, bevor Sie anfassen.",
          "Ziehen Sie die Schnur an einem Lineal entlang: Gibt sie nach, nehmen Sie eine andere.",
          "Suchen und markieren Sie C7 und die Linie der Hüftknochen wie mit dem Band.",
          "Knoten Sie das Ende und halten Sie den Knoten an die obere Marke.",
          "Legen Sie die Schnur ohne Zug auf die Mitte der Wirbelsäule und ins Hohlkreuz.",
          "Kneifen Sie sie an der unteren Marke fest, legen Sie sie gerade ans Lineal und lesen Sie vom Knoten bis zum Griff.",
          "Alles dreimal, mit neuen Marken, und jede Messung aufschreiben.",
        ],
      },
      {
        tool: "cord-and-ruler",
        who: "self",
        suits: "Allein mit einer Schnur: Sie fällt leichter als ein Band, und man kann nicht spicken.",
        steps: [
          "Suchen Sie C7 wie mit dem Band und kleben Sie einen Punkt darauf.",
          "Knoten Sie das Ende einer Schnur, die sich nicht dehnt, und kleben Sie den Knoten auf den Punkt.",
          "Lassen Sie die Schnur an der Wirbelsäule hängen; eine Münze am Ende hält sie gerade.",
          "Hände auf die Hüftknochen; fassen Sie die Schnur waagrecht zwischen den Daumen, gerade stehend.",
          "Nehmen Sie die Schnur ab, ohne loszulassen, und lesen Sie am Lineal vom Knoten bis zum Griff.",
          "Von vorn, und jede Messung aufschreiben.",
        ],
      },
      {
        tool: "short-rule",
        who: "helper",
        suits:
          "Wenn nur ein kurzes Lineal da ist. Jede Stoßstelle bringt einen kleinen Fehler; mehr als drei Messungen lohnen sich.",
        steps: [
          "Sagen Sie, was Sie tun werden, und fragen Sie, bevor Sie anfassen.",
          "Suchen und markieren Sie C7 und die Linie der Hüftknochen.",
          "Kleben Sie einen Streifen Papierband von Marke zu Marke auf die Wirbelsäule, der Krümmung nach.",
          "Zeichnen Sie beide Enden an, nehmen Sie den Streifen ab und legen Sie ihn flach auf den Tisch.",
          "Legen Sie das Lineal Stück für Stück an, jede Stelle mit spitzem Bleistift markiert, und zählen Sie zusammen.",
          "Drei Messungen oder mehr, jede mit neuem Streifen.",
        ],
      },
    ],
    slips: [
      {
        what: "T1, der Höcker darunter, wurde für C7 genommen.",
        direction: "-",
        fromMm: 15,
        toMm: 30,
        mend: "Prüfen Sie mit dem Neigen des Kopfes, welcher Höcker bleibt.",
      },
    ],
    cautions: [
      asking,
      {
        name: "Den Hals sacht beugen",
        text: "Beugen und neigen Sie den Kopf langsam und nur so weit, wie es angenehm ist. Hören Sie bei Schmerz, Schwindel oder Kribbeln sofort auf. Wer Beschwerden am Hals hat, lässt die Probe weg und sagt, dass die Marke unsicher ist.",
        ask: "Fragen Sie ärztlich nach, bevor Sie einen Hals bewegen, der schmerzt oder verletzt war.",
      },
      injury,
      pregnancy,
      child,
    ],
  },
  "hip-belt-girth": {
    definition:
      "Der waagrechte Umfang des Körpers in Höhe der Oberkanten der Hüftknochen, dort, wo ein Hüftgurt sitzt.",
    use: "Er wählt den Hüftgurt: Polster, die sich vorn treffen, lassen sich nicht festziehen, und Polster, die schon an der Seite enden, drücken.",
    points: [crests],
    posture: girthPosture,
    ways: [
      {
        tool: "tape",
        who: "self",
        suits:
          "Gut allein vor einem Spiegel; jemand anderes bringt kaum mehr als ein waagrechtes Band im Rücken.",
        steps: [
          "Suchen Sie auf jeder Seite die Oberkante des Hüftknochens und kleben Sie einen Punkt hin.",
          "Führen Sie das Band um den Rücken und über beide Punkte nach vorn.",
          "Drehen Sie sich seitlich zum Spiegel und stellen Sie das Band hinten waagrecht.",
          "Atmen Sie aus, lassen Sie den Bauch locker, schließen Sie das Band so, dass es berührt, ohne einzudrücken, und lesen Sie ab.",
          "Nehmen Sie das Band ab, gehen Sie ein paar Schritte und messen Sie noch zweimal, die Hüftknochen jedes Mal neu gesucht.",
        ],
      },
      {
        tool: "tape",
        who: "helper",
        suits: "Wenn die Hüftknochen schwer zu tasten sind oder das Band beim Blick in den Spiegel kippt.",
        steps: [
          "Sagen Sie, was Sie tun werden; die Person kann die Hüftknochen selbst finden und das Band daran halten.",
          "Führen Sie das Band von der Seite herum, ringsum waagrecht, und bringen Sie die Enden vorn zusammen.",
          "Warten Sie ein gewöhnliches Ausatmen ab und lesen Sie ohne Zug ab.",
        ],
      },
    ],
    slips: [
      {
        what: "Die Zahl vom Etikett der Hose wurde aufgeschrieben statt einer Messung.",
        direction: "-",
        fromMm: 20,
        toMm: 150,
        mend: "Nehmen Sie das Maßband; ein Etikett sagt, was der Hersteller wollte.",
      },
      {
        what: "Der Bauch war eingezogen.",
        direction: "-",
        fromMm: 10,
        toMm: 50,
        mend: "Ausatmen, locker lassen, dann ablesen.",
      },
    ],
    cautions: [asking, pregnancy, injury, child],
  },
  "hip-girth": {
    definition: "Der waagrechte Umfang der Hüften dort, wo das Gesäß am weitesten vorsteht.",
    use: "Manche Tabellen richten den Hüftgurt danach. Der Gurt sitzt nicht dort; dieses Maß tritt nur an die Stelle des Hüftgurtumfangs, wo eine Tabelle das sagt.",
    points: [
      {
        name: "Die Höhe, in der das Gesäß am weitesten vorsteht",
        find: [
          "Stellen Sie sich seitlich vor einen Spiegel, die Fersen beisammen, und suchen Sie diese Höhe.",
        ],
        check: ["Knochen an der Seite unter dem Band heißt, dass es zu hoch liegt."],
      },
    ],
    posture: girthPosture,
    ways: [
      {
        tool: "tape",
        who: "self",
        suits: "Gut allein, mit einem Spiegel an der Seite, um zu sehen, ob das Band hinten waagrecht liegt.",
        steps: [
          "Führen Sie das Band in dieser Höhe herum und schließen Sie es an der Seite.",
          "Schieben Sie es ein wenig auf und ab und behalten Sie die Stelle, wo es am größten ist.",
          "Waagrecht stellen, berühren lassen, ohne einzudrücken, ablesen.",
          "Abnehmen und noch zweimal messen.",
        ],
      },
      {
        tool: "tape",
        who: "helper",
        suits: "Wenn das Band hinten nicht waagrecht bleiben will.",
        steps: [
          "Sagen Sie, was Sie tun werden; die Person führt das Band selbst herum.",
          "Knien Sie sich an die Seite, stellen Sie das Band waagrecht und lesen Sie ab.",
          "Noch zweimal, das Band jedes Mal abgenommen.",
        ],
      },
    ],
    slips: [
      {
        what: "Das Band lag um die Oberkanten der Hüftknochen.",
        direction: "-",
        fromMm: 30,
        toMm: 200,
        mend: "Tiefer gehen, bis dahin, wo das Gesäß am weitesten vorsteht.",
      },
      {
        what: "Die Füße standen auseinander.",
        direction: "+",
        fromMm: 5,
        toMm: 30,
        mend: "Fersen zusammen, oder so nah, wie die Beine es erlauben.",
      },
    ],
    cautions: [asking, pregnancy, injury, child],
  },
};

import type { afterwards } from "tapewise";

const cannotTell: afterwards.AnswerText = {
  answer: "Das kann ich nicht sagen.",
  tells: "Daraus folgt nichts. Ein Spiegel, ein Foto von der Seite oder andere Augen helfen.",
};

/** The check on the body in German, by code. */
export const bodyCheck: afterwards.BodyCheckTexts = {
  look: {
    cautions:
      "Bevor Sie den Rucksack beladen: Gibt es Schmerzen oder Taubheit, eine Verletzung oder Operation an Wirbelsäule, Schulter oder Hüfte, eine Schwangerschaft, oder geht es um ein Kind oder jemanden, der noch wächst?",
    "belt-position":
      "Beladen Sie den Rucksack mit dem, was er tragen soll, lockern Sie alle Riemen, schließen Sie zuerst den Hüftgurt und ziehen Sie dann die Schulterträger an. Tasten Sie auf beiden Seiten nach dem Oberrand der Beckenknochen: Wo sitzt der Gurt?",
    "belt-closure":
      "Sehen Sie den geschlossenen Gurt von vorn an: Wie liegen die Polsterenden? Meist bleiben {leastGapMm} bis {mostGapMm} zwischen ihnen, und das Polster reicht um die Vorderseite der Beckenknochen (übliche Praxis).",
    "back-panel":
      "Von der Seite: Suchen Sie den Höcker unten am Hals (C7) und die Stelle, an der die Schulterträger das Rückenteil verlassen. Meist liegt sie {leastBelowMm} bis {mostBelowMm} unter dem Höcker (übliche Praxis).",
    "shoulder-contact":
      "Von der Seite, mit lockeren oberen Riemen: Folgen die Schulterträger der Schulter von vorn über die Höhe bis nach hinten?",
    "upper-straps":
      "Sehen Sie die kleinen Riemen an, die von den Schulterträgern hinauf zum Rucksack laufen, leicht angezogen. Ihr Winkel zum Boden ist meist etwa {usualDegrees}, von {leastDegrees} bis {mostDegrees} (übliche Praxis).",
    "strap-ends":
      "Wo endet vorn das Polster der Schulterträger? Meist etwa eine Handbreit, {belowArmpitMm}, unter der Achsel, mit Gurtband zum Nachziehen (übliche Praxis).",
    "sternum-strap":
      "Schließen Sie den Riemen über der Brust, etwa {belowCollarboneMm} unter den Schlüsselbeinen (übliche Praxis), und atmen Sie tief ein: Lässt er das zu?",
    "pressure-points":
      "Gehen Sie {walkMinutes} Minuten mit der Last (übliche Praxis), setzen Sie den Rucksack ab und sehen Sie Hüften, Schlüsselbeine, Schultern und das Kreuz an: Drückt etwas?",
  },
  answers: {
    cautions: {
      none: { answer: "Nichts davon.", tells: "Die Prüfung kann weitergehen." },
      "pain-or-numbness": {
        answer: "Schmerzen oder Taubheit.",
        tells: "Das klärt keine Größe; das ist etwas für eine Fachkraft.",
      },
      "injury-or-surgery": {
        answer: "Eine Verletzung oder Operation.",
        tells: "Die üblichen Regeln vom Körper zur Größe müssen nicht gelten.",
      },
      pregnancy: {
        answer: "Eine Schwangerschaft.",
        tells: "Ein Hüftgurt darf nicht auf den Bauch drücken, und Umfänge ändern sich.",
      },
      "growing-child": {
        answer: "Ein Kind oder jemand, der noch wächst.",
        tells: "Größen und Lasten für Erwachsene gelten nicht.",
      },
    },
    "belt-position": {
      "over-crests": {
        answer: "Seine Mitte liegt über dem Oberrand der Beckenknochen.",
        tells: "Die Last kann auf den Hüften ruhen; alles Weitere lässt sich von hier aus beurteilen.",
      },
      "too-high": {
        answer: "Er sitzt darüber, auf der weichen Taille.",
        tells:
          "Der Gurt wurde zu hoch geschlossen; bevor er tiefer sitzt, lässt sich nichts anderes beurteilen.",
      },
      "too-low": {
        answer: "Er sitzt darunter, auf den Oberschenkeln oder dem Gesäß.",
        tells:
          "Der Gurt wurde zu tief geschlossen; bevor er höher sitzt, lässt sich nichts anderes beurteilen.",
      },
      "slides-down": {
        answer: "Er beginnt richtig und rutscht hinunter, auch fest angezogen.",
        tells: "Der Gurt ist zu groß oder nicht fest genug.",
      },
      "pulled-up": {
        answer: "Die Schulterträger ziehen ihn hoch, wenn sie anliegen.",
        tells: "Das Tragesystem ist zu kurz, oder die Schulterträger sind zu fest.",
      },
      "cannot-tell": cannotTell,
    },
    "belt-closure": {
      "gap-at-buckle": {
        answer: "Es gibt eine solche Lücke, und das Polster reicht um die Beckenknochen.",
        tells: "Der Gurt lässt sich enger und weiter stellen: Seine Größe stimmt.",
      },
      "ends-meet": {
        answer: "Die Polsterenden berühren sich, oder beinahe.",
        tells:
          "Der Gurt ist zu groß: Mit dünnerer Kleidung oder gesetzter Last lässt er sich nicht mehr festziehen.",
      },
      "padding-short": {
        answer: "Das Polster endet, bevor es die Vorderseite der Beckenknochen erreicht.",
        tells: "Der Gurt ist zu klein: Bloßes Gurtband liegt auf den Beckenknochen.",
      },
      "cannot-tell": cannotTell,
    },
    "back-panel": {
      "a-little-below": {
        answer: "Etwa so weit darunter.",
        tells: "Das Tragesystem hat die richtige Länge.",
      },
      "level-or-above": {
        answer: "Auf gleicher Höhe oder darüber.",
        tells: "Das Tragesystem ist zu lang: Die Träger können nicht auf den Schultern liegen.",
      },
      "far-below": {
        answer: "Weiter darunter.",
        tells: "Das Tragesystem ist zu kurz: Die Träger ziehen die Schultern hinunter.",
      },
      "cannot-tell": cannotTell,
    },
    "shoulder-contact": {
      follows: { answer: "Sie folgen überall.", tells: "Das Tragesystem hat die richtige Länge." },
      "gap-behind": {
        answer: "Hinten oder über der Schulter ist eine Lücke.",
        tells: "Das Tragesystem ist zu lang, oder die Schulterträger sind zu locker.",
      },
      "bears-down": {
        answer: "Sie drücken oben und vorn auf die Schulter, und das Gewicht hängt dort.",
        tells: "Das Tragesystem ist zu kurz, oder die Schulterträger sind zu fest.",
      },
      "cannot-tell": cannotTell,
    },
    "upper-straps": {
      "about-half-right-angle": {
        answer: "Etwa so.",
        tells: "Tragesystem und Rucksack treffen sich in der richtigen Höhe.",
      },
      steeper: {
        answer: "Steiler als {mostDegrees}.",
        tells: "Das Tragesystem ist zu lang, oder diese Riemen hängen durch.",
      },
      flatter: {
        answer: "Flacher als {leastDegrees}, waagerecht oder abwärts.",
        tells: "Das Tragesystem ist zu kurz, oder diese Riemen sind zu fest.",
      },
      "none-on-this-pack": { answer: "Dieser Rucksack hat keine.", tells: "Daraus folgt nichts." },
      "cannot-tell": cannotTell,
    },
    "strap-ends": {
      "hand-below-armpit": { answer: "Etwa dort.", tells: "Die Träger haben die richtige Länge." },
      "straps-run-out": {
        answer: "Viel tiefer, und es bleibt kaum Gurtband zum Ziehen.",
        tells: "Das Tragesystem ist zu lang.",
      },
      "end-at-armpit": {
        answer: "An der Achsel oder darüber; bloßes Gurtband oder die Schnalle liegt auf der Brust.",
        tells: "Das Tragesystem ist zu kurz.",
      },
      "cannot-tell": cannotTell,
    },
    "sternum-strap": {
      "breathes-freely": { answer: "Ja.", tells: "Er lässt Raum zum Atmen." },
      binds: {
        answer: "Er engt ein.",
        tells: "Er ist zu fest oder sitzt an der falschen Stelle; an der Größe liegt das nicht.",
      },
      "cannot-tell": cannotTell,
    },
    "pressure-points": {
      none: { answer: "Nichts drückt.", tells: "Die Last ist gut verteilt." },
      presses: {
        answer: "Etwas reibt oder hinterlässt einen Abdruck, der vergeht, ohne Schmerz.",
        tells: "Ein Riemen oder eine Falte liegt auf einer Stelle.",
      },
      "hurts-or-numb": {
        answer: "Etwas schmerzt, kribbelt oder ist taub.",
        tells: "Setzen Sie den Rucksack ab; das klärt keine Größe, das ist etwas für eine Fachkraft.",
      },
    },
  },
  adjustments: {
    "lower-belt":
      "Lockern Sie alles, legen Sie die Mitte des Gurts über den Oberrand der Beckenknochen, schließen Sie ihn dort und ziehen Sie dann den Rest an.",
    "raise-belt":
      "Lockern Sie alles, heben Sie den Gurt, bis seine Mitte über dem Oberrand der Beckenknochen liegt, schließen Sie ihn dort und ziehen Sie dann den Rest an.",
    "tighten-belt":
      "Ziehen Sie den Hüftgurt fester, während die Last auf den Hüften ruht, auf beiden Seiten gleich.",
    "loosen-shoulder-straps":
      "Lassen Sie die Schulterträger nach, bis der größte Teil des Gewichts auf den Hüften ruht.",
    "tighten-shoulder-straps":
      "Ziehen Sie die Schulterträger an, bis sie überall auf den Schultern liegen, ohne den Gurt zu heben.",
    "loosen-upper-straps": "Lassen Sie die oberen Riemen nach.",
    "tighten-upper-straps": "Ziehen Sie die oberen Riemen an, leicht.",
    "harness-longer": "Stellen Sie das Tragesystem am Rückenteil eine Stufe länger.",
    "harness-shorter": "Stellen Sie das Tragesystem am Rückenteil eine Stufe kürzer.",
    "move-sternum-strap":
      "Öffnen Sie den Riemen über der Brust, setzen Sie ihn höher oder tiefer und schließen Sie ihn lockerer.",
    "ease-pressure":
      "Streichen Sie Kleidung und Riemen glatt, leeren Sie Taschen unter dem Gurt, packen Sie Schweres um und lockern Sie, was drückt.",
  },
  contradictions: {
    "harness-long-and-short":
      "Das eine, was Sie gesehen haben, spricht für ein zu langes Tragesystem, das andere für ein zu kurzes. Beides kann nicht sein: Sehen Sie noch einmal hin.",
    "belt-large-and-small":
      "Das eine, was Sie gesehen haben, spricht für einen zu großen Gurt, das andere für einen zu kleinen. Beides kann nicht sein: Sehen Sie noch einmal hin.",
  },
  fitter: {
    "ask-first": "Die Person entscheidet selbst, wer schaut.",
    "neck-movement": "Ein Nacken, der schmerzt oder verletzt war, gehört in ärztliche Hände.",
    "pain-or-numbness":
      "Tragen Sie nicht weiter. Wenn Schmerz oder Taubheit nach dem Absetzen nicht bald vergeht oder wiederkommt, gehen Sie zur Ärztin oder zum Arzt; lassen Sie den Rucksack von einer Fachkraft prüfen, bevor Sie ihn wieder tragen.",
    "injury-or-surgery":
      "Fragen Sie, wer den Fall ärztlich kennt, ob und was Sie tragen können, und eine Fachkraft nach der Größe.",
    pregnancy:
      "Fragen Sie Hebamme, Ärztin oder Arzt, ob und wie viel Sie tragen können, und probieren Sie den Rucksack mit einer Fachkraft an.",
    "growing-child":
      "Fragen Sie eine Fachkraft nach dem Rucksack und eine Ärztin oder einen Arzt nach der Last.",
    "heavy-load":
      "Für Lasten nahe der Grenze dessen, was Sie leicht tragen, lassen Sie den Rucksack von einer Fachkraft einstellen.",
    "answers-contradict":
      "Was zu sehen war, widerspricht sich noch immer; lassen Sie eine Fachkraft schauen.",
    "too-little-seen":
      "Über den Sitz des Tragesystems war zu wenig zu sagen; lassen Sie eine Fachkraft schauen.",
    "no-size-left":
      "Er sitzt nicht richtig, und nichts in der Tabelle zeigt, dass eine andere Größe dieses Rucksacks eher passt. Lassen Sie eine Fachkraft schauen, oder vergleichen Sie einen anderen Rucksack.",
    "not-by-size":
      "Er sitzt nicht richtig, und doch ist es nach allem, was bekannt ist, die richtige Größe. Lassen Sie eine Fachkraft schauen.",
    "readings-disagree":
      "Was der Rucksack zeigt und was gemessen wurde, weist in entgegengesetzte Richtungen. Messen Sie noch einmal, mit einer Fachkraft.",
    "belt-comes-with-size":
      "Der Gurt passt nicht, und dieser Rucksack hat für seine Größe keinen anderen. Lassen Sie eine Fachkraft schauen, oder vergleichen Sie einen anderen Rucksack.",
    "still-not-right":
      "Er wurde eingestellt und sitzt noch immer nicht richtig, und an der Größe liegt es nicht. Lassen Sie eine Fachkraft schauen.",
  },
  ends: {
    exchangeHarness:
      "Tauschen Sie {from} gegen {to}: {to} passt mit {probability}, {from} mit {fromProbability}.",
    exchangeBelt:
      "Tauschen Sie den Hüftgurt {from} gegen {to}: {to} passt mit {probability}, {from} mit {fromProbability}.",
    sitsRight:
      "{size} sitzt richtig. Sehen Sie nach der ersten längeren Strecke noch einmal hin, und hören Sie auf, sobald etwas wehtut.",
  },
};

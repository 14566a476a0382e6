import type { Same } from "../same.ts";

export const guide: Same<"guide"> = {
  what: "Was es ist",
  points: "Die Stellen finden",
  check: "Sicher gehen",
  ways: "Messen",
  slips: "Was schiefgeht",
  size: "etwa {from} bis {to} mm {side}",
  tooLong: "zu lang",
  tooShort: "zu kurz",
  either: "in beide Richtungen",
  mend: "Abhilfe",
  care: "Vorsicht",
  stand: "So stehen",
  more: "Haltung, andere Wege, was schiefgeht",
  self: "allein",
  helper: "zu zweit",
  tools: { tape: "Maßband", "cord-and-ruler": "Schnur und Lineal", "short-rule": "kurzes Lineal" },
  backTitle:
    "Ein Rücken von hinten: Das Maßband läuft auf der Mitte der Wirbelsäule von C7, dem Höcker am Ansatz des Halses, bis zur Linie zwischen den Oberkanten der Hüftknochen.",
  sideTitle:
    "Ein Rücken von der Seite: Das Maßband folgt der Krümmung ins Hohlkreuz und überbrückt es nicht.",
  girthTitle:
    "Hüften von vorn: Der Hüftgurtumfang läuft waagrecht über die Oberkanten der Hüftknochen, der Hüftumfang tiefer, wo das Gesäß am weitesten vorsteht.",
  c7: "C7",
  crest: "Hüftknochen, oben",
  alongSpine: "Maßband",
  hollow: "ins Hohlkreuz",
  beltGirth: "Hüftgurtumfang",
  hipGirth: "Hüftumfang",
};

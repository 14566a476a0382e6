import { dimensionIds } from "../dimension-id.ts";
import type { Caution } from "./caution.ts";

/**
 * When to be careful, and when a number is not enough. Common practice, no source, unless a source is
 * named: numbness of the thigh under hip belts is described by Knapik, Reynolds, Orr and Pope (2017).
 */
export const cautions: readonly Caution[] = [
  {
    code: "ask-first",
    name: "Ask before you touch",
    text: "Say what you are going to do before you do it, ask whether that is all right, and let the person find the place and hold the tape wherever they can. Numbers are for the pack only: no word on what they look like, and nobody else needs to hear them.",
    ask: "The person who is being measured decides, at every step, and may stop at any time.",
    moments: ["finding", "reading"],
    dimensions: dimensionIds,
    landmarks: [
      "cervicale",
      "acromion",
      "suprasternale",
      "thelion",
      "underbust-level",
      "iliocristale",
      "buttock-point",
      "trochanterion",
    ],
  },
  {
    code: "neck-movement",
    name: "Bend the neck gently",
    text: "Bend and tip the head slowly and only as far as it is comfortable. Stop at once on pain, dizziness or tingling in the arms. Whoever has a neck complaint, or has been told not to move the neck, leaves the tipping test out: take the bump as well as it can be found with the head level, and say that it is uncertain.",
    ask: "Ask a clinician before you move a neck that hurts or has been injured.",
    moments: ["finding"],
    dimensions: ["torso-length", "cervicale-height", "back-waist-length", "neck-base-girth"],
    landmarks: ["c6", "cervicale", "t1"],
  },
  {
    code: "pain-or-numbness",
    name: "Pain, numbness or tingling",
    text: "Pain in the back, numb or tingling arms or hands, or a numb patch on the outside of the thigh while a pack is carried can come from straps or a hip belt that press on nerves. Take the pack off. A better size may help, but a size is no treatment.",
    ask: "If it does not pass soon after the pack is off, or comes back, see a clinician; let a professional fitter check the pack before you carry it again.",
    moments: ["carrying"],
    dimensions: ["torso-length", "hip-belt-girth", "shoulder-breadth", "shoulder-length", "chest-girth"],
    landmarks: ["iliocristale", "iliospinale", "acromion"],
  },
  {
    code: "injury-or-surgery",
    name: "Injury or surgery of spine, shoulder or hip",
    text: "After an injury or an operation of spine, shoulder, ribs or hip, with a curved spine or with legs of unequal length, the usual landmarks may lie elsewhere or may not bear a load. The readings still describe the body, but the usual rules from reading to size need not hold.",
    ask: "Ask the clinician who knows the case whether and what to carry, and a professional fitter for the size.",
    moments: ["finding", "carrying"],
    dimensions: dimensionIds,
    landmarks: ["cervicale", "acromion", "iliocristale", "crest-line-at-spine", "trochanterion"],
  },
  {
    code: "pregnancy",
    name: "Pregnancy",
    text: "In pregnancy girths change from week to week, the hip bones are harder to feel, and a hip belt must not press on the belly. Readings are good for the day they are taken.",
    ask: "Ask a midwife or a doctor whether and how much to carry, and try the pack on with a professional fitter instead of choosing by numbers.",
    moments: ["reading", "carrying"],
    dimensions: [
      "torso-length",
      "hip-belt-girth",
      "hip-girth",
      "waist-girth",
      "chest-girth",
      "underbust-girth",
    ],
    landmarks: ["iliocristale", "crest-line-at-spine"],
  },
  {
    code: "growing-child",
    name: "Children and growing people",
    text: "Children grow between two trips, and adult survey figures and adult loads do not apply to them. Measure anew before each trip, let a parent or guardian be there, and leave the limit of the load to somebody who knows the child.",
    ask: "Ask a professional fitter for the pack and a clinician for the load.",
    moments: ["reading", "carrying"],
    dimensions: dimensionIds,
    landmarks: [],
  },
  {
    code: "heavy-load",
    name: "Heavy loads",
    text: "The heavier the load, the more a small misfit hurts. A size that is right on paper is tried on with the load that it will carry, for half an hour, before it is taken on the trail.",
    ask: "For loads near the limit of what you carry with ease, let a professional fitter set the pack.",
    moments: ["carrying"],
    dimensions: [
      "torso-length",
      "hip-belt-girth",
      "hip-girth",
      "waist-girth",
      "shoulder-breadth",
      "shoulder-length",
    ],
    landmarks: [],
  },
];

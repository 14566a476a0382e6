import type { Landmark } from "../landmark-entry.ts";

/**
 * The back of the neck: C7 and the two vertebrae it is mistaken for.
 * Spacing of the tips: common practice, no source. How often the tests go right: see the sources.
 */
export const neckLandmarks: readonly Landmark[] = [
  {
    id: "c6",
    name: "C6 spinous process",
    everydayName: "the bump above C7",
    kind: "bone",
    definition:
      "The tip of the spinous process of the sixth cervical vertebra, the next one above C7; here only so that it is not taken for C7.",
    standards: [],
    find: [
      "Find C7 and let the head come upright again.",
      "Move the fingertip up by about one finger's breadth: the small tip there is C6.",
      "Let the head tip gently backwards: C6 slides forward and melts away under the fingertip.",
    ],
    check: [
      "If it stays put under the finger while the head tips back, it is not C6 but C7 or a bump below.",
    ],
    confusions: [],
    findings: [],
  },
  {
    id: "cervicale",
    name: "cervicale (C7 spinous process)",
    everydayName: "the bump at the base of the neck",
    kind: "bone",
    definition:
      "The tip of the spinous process of the seventh and lowest neck vertebra, C7, in the middle line of the back. It is the upper end of the torso length.",
    standards: [
      { standard: "ISO 7250-1:2017", term: "cervicale", origin: "second-hand" },
      { standard: "ISO 8559-1:2017", term: "back neck point", origin: "second-hand" },
      { standard: "NATICK/TR-15/007", term: "cervicale", origin: "from memory" },
    ],
    find: [
      "Ask for the chin to sink towards the chest, gently and only as far as it is comfortable.",
      "Run a fingertip down the middle of the neck to the place where neck and back meet: one or two bumps now stand out most.",
      "Lay one fingertip on each of the two largest bumps, one above the other.",
      "Ask for the head to come up and then to tip slowly backwards. The upper finger should feel its bump slide forward and vanish: that one is C6. The bump under the lower finger stays: that one is C7.",
      "If both bumps stay, you are one too low, on C7 and T1: move both fingers up by one bump and try again. If both vanish, you are one too high: move both down.",
      "With the head level again, keep the finger on C7 and mark its middle with a small sticker or a washable pen.",
    ],
    check: [
      "Lay the finger on the mark and ask for the head to turn slowly from side to side: C7 moves a little with it, T1 hardly at all.",
      "Take the finger away, wait a moment and find it again without looking at the mark: two honest finds lie within half a finger's breadth.",
      "Do not go by the largest bump alone: in many people T1 stands out as far as C7, or further.",
      "Where soft tissue hides the bumps, mark the crease that forms at the foot of the neck when the head tips back a little, note that the mark is uncertain, and rely on trying the pack on.",
    ],
    confusions: [
      {
        landmark: "t1",
        name: "the bump below, T1",
        tell: "T1 belongs to the ribs: it stays still when the head turns, and the bump above it stays too when the head tips back.",
        shifts: [
          {
            dimension: "torso-length",
            direction: "-",
            fromMm: 15,
            toMm: 30,
            basis: {
              source: "c7-prominence-2013",
              finding:
                "Among 195 adults T1 had the longer spinous process in 57.3 % of the women and 27.1 % of the men. The size of the error is common practice, no source.",
            },
          },
          {
            dimension: "cervicale-height",
            direction: "-",
            fromMm: 15,
            toMm: 30,
            basis: "common practice, no source",
          },
          {
            dimension: "back-waist-length",
            direction: "-",
            fromMm: 15,
            toMm: 30,
            basis: "common practice, no source",
          },
        ],
      },
      {
        landmark: "c6",
        name: "the bump above, C6",
        tell: "C6 slips away under the finger as soon as the head tips back.",
        shifts: [
          {
            dimension: "torso-length",
            direction: "+",
            fromMm: 12,
            toMm: 25,
            basis: {
              source: "c7-palpation-2018",
              finding:
                "Among 101 adults the tipping test found C7 in 54.5 %, as seen on X-rays; it did better where the body mass index was below 25. The size of the error is common practice, no source.",
            },
          },
          {
            dimension: "cervicale-height",
            direction: "+",
            fromMm: 12,
            toMm: 25,
            basis: "common practice, no source",
          },
          {
            dimension: "back-waist-length",
            direction: "+",
            fromMm: 12,
            toMm: 25,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [
      {
        source: "c7-palpation-2018",
        finding:
          "Tipping the head found C7 in 54.5 % of 101 adults, as checked on X-rays; it did better where the body mass index was below 25, and where the largest bump was also the one that stayed still.",
      },
      {
        source: "c7-prominence-2013",
        finding:
          "Among 195 adults the spinous process of T1 was longer than that of C7 in 57.3 % of the women and 27.1 % of the men.",
      },
    ],
  },
  {
    id: "t1",
    name: "T1 spinous process",
    everydayName: "the bump below C7",
    kind: "bone",
    definition:
      "The tip of the spinous process of the first thoracic vertebra, which carries the first ribs; here only so that it is not taken for C7.",
    standards: [],
    find: [
      "Find C7.",
      "Move the fingertip straight down by one to one and a half finger's breadths: the next bump is T1.",
    ],
    check: ["Ask for the head to turn from side to side and to tip back: T1 stays where it is all the time."],
    confusions: [],
    findings: [],
  },
  {
    id: "lateral-neck-point",
    name: "lateral neck point (side neck point)",
    everydayName: "where the neck meets the shoulder",
    kind: "surface",
    definition:
      "The place on the side of the neck where the line around its base crosses the front edge of the trapezius, the muscle that slopes from neck to shoulder.",
    standards: [{ standard: "ISO 8559-1:2017", term: "side neck point", origin: "second-hand" }],
    find: [
      "Let a thin chain or a necklace lie around the base of the neck, over C7 behind and over the pit of the throat in front.",
      "Ask for the hand of that side to be laid on the opposite shoulder: the front edge of the sloping muscle stands out.",
      "Follow that edge up to the chain and let the arm hang down again.",
      "Mark the point where the edge and the chain cross.",
    ],
    check: [
      "Seen from the side it lies a little in front of the middle of the neck.",
      "A collar seam is no guide: it sits where the shirt puts it.",
    ],
    confusions: [
      {
        name: "a point higher on the neck",
        tell: "Above the chain the skin stands upright like a wall; at the right point it has just begun to slope outwards.",
        shifts: [
          {
            dimension: "shoulder-length",
            direction: "+",
            fromMm: 5,
            toMm: 20,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [],
  },
  {
    id: "front-neck-point",
    name: "front neck point",
    everydayName: "the top of the pit of the throat",
    kind: "surface",
    definition:
      "The point in the middle line in front where it crosses the line over the top edges of the inner ends of the collarbones.",
    standards: [{ standard: "ISO 8559-1:2017", term: "front neck point", origin: "second-hand" }],
    find: [
      "Feel the inner ends of both collarbones, to the left and the right of the pit of the throat.",
      "Lay a finger flat across their top edges and mark the middle.",
    ],
    check: ["Swallowing does not move it, since it lies below the voice box."],
    confusions: [
      {
        landmark: "suprasternale",
        name: "the bottom of the pit, on the breastbone",
        tell: "The breastbone is hard and lies a little lower than the line over the collarbones.",
        shifts: [
          {
            dimension: "neck-base-girth",
            direction: "+",
            fromMm: 2,
            toMm: 10,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [],
  },
];

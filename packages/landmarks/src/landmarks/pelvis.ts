import type { Landmark } from "../landmark-entry.ts";

/** The hip bones, and the points below them. */
export const pelvisLandmarks: readonly Landmark[] = [
  {
    id: "iliocristale",
    name: "iliocristale (top of the iliac crest)",
    everydayName: "the top of the hip bone",
    kind: "bone",
    definition:
      "The highest point of the upper edge of the hip bone, the iliac crest, at the side of the body. The padding of a hip belt wraps around it.",
    standards: [
      { standard: "ISO 8559-1:2017", term: "highest point of the hip bone", origin: "second-hand" },
      { standard: "NATICK/TR-15/007", term: "iliocristale", origin: "from memory" },
    ],
    find: [
      "Stand upright with the weight on both feet. Push trousers and belt down out of the way.",
      "Lay the edge of each hand, palm down and thumb to the back, into the soft side between ribs and hip.",
      "Press gently inwards, then slide down until the hand comes to rest on a hard shelf: that is the crest.",
      "Feel along the shelf from front to back. It rises, has a highest point just behind the middle of the side, and falls again.",
      "Where it is hard to feel, lift and lower the heel of that side: the bone moves up and down under the hand, the ribs do not. Stand on both feet again before you mark.",
      "Press firmly but kindly, so that the soft layer over the bone is not taken for bone, and mark the highest point on each side.",
    ],
    check: [
      "Tilt the hips to one side: the mark goes with the bone, the ribs do not.",
      "Left and right marks are equally high above the floor, or nearly so. A steady difference can be a leg-length difference: measure to the level half way between.",
      "Found by touch the crest tends to come out too high, because skin and soft tissue lie on top of the bone: press once more before you mark.",
    ],
    confusions: [
      {
        landmark: "iliospinale",
        name: "the point of the hip bone in front",
        tell: "The front point is a knob that looks forward; the crest is a long edge at the side and lies clearly higher.",
        shifts: [
          {
            dimension: "torso-length",
            direction: "+",
            fromMm: 40,
            toMm: 110,
            basis: "common practice, no source",
          },
          {
            dimension: "iliac-crest-height",
            direction: "-",
            fromMm: 40,
            toMm: 110,
            basis: "common practice, no source",
          },
          {
            dimension: "hip-belt-girth",
            direction: "+",
            fromMm: 10,
            toMm: 80,
            basis: "common practice, no source",
          },
        ],
      },
      {
        name: "the soft tissue above the bone",
        tell: "Soft tissue gives when you press; bone does not.",
        shifts: [
          {
            dimension: "torso-length",
            direction: "-",
            fromMm: 5,
            toMm: 35,
            basis: {
              source: "crest-palpation-2017",
              finding:
                "Over many studies the line between the crests as felt lay 0.7 vertebral levels (men) and 1.0 levels (women) above the line seen on images. The size in millimetres is an assumption.",
            },
          },
          { dimension: "iliac-crest-height", direction: "+", fromMm: 5, toMm: 35, basis: "assumption" },
          {
            dimension: "hip-belt-girth",
            direction: "both",
            fromMm: 5,
            toMm: 50,
            basis: "common practice, no source",
          },
        ],
      },
      {
        landmark: "lowest-rib",
        name: "the lower edge of the ribs",
        tell: "The ribs move with a deep breath; the crest does not.",
        shifts: [
          {
            dimension: "torso-length",
            direction: "-",
            fromMm: 30,
            toMm: 90,
            basis: "common practice, no source",
          },
          {
            dimension: "iliac-crest-height",
            direction: "+",
            fromMm: 30,
            toMm: 90,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [
      {
        source: "crest-palpation-2017",
        finding:
          "Over many studies the line between the crests as felt lay 0.7 vertebral levels (men) and 1.0 levels (women) above the line seen on images.",
      },
    ],
  },
  {
    id: "crest-line-at-spine",
    name: "crest line at the spine (intercristal line)",
    everydayName: "where a line between the hip bones crosses the spine",
    kind: "level",
    definition:
      "The point on the middle line of the back at the height of the tops of both iliac crests. It is the lower end of the torso length.",
    standards: [],
    find: [
      "Find the top of both iliac crests and leave the hands there, fingers to the front, thumbs to the back.",
      "Let both thumbs reach for the spine, level with the floor, until they point at each other.",
      "Mark the spine on the straight line between the tips of the thumbs.",
    ],
    check: [
      "Look from behind at the height of the line: it is level, and both thumbs are equally high above the floor.",
      "A cord held level across both crest marks crosses the spine at the same place.",
    ],
    confusions: [
      {
        landmark: "posterior-iliac-spine",
        name: "the dimples low on the back",
        tell: "The dimples lie lower, over the back ends of the hip bones, one on each side of the sacrum.",
        shifts: [
          {
            dimension: "torso-length",
            direction: "+",
            fromMm: 30,
            toMm: 90,
            basis: "common practice, no source",
          },
        ],
      },
      {
        landmark: "omphalion",
        name: "the height of the navel",
        tell: "The navel is no bone; it usually lies a little below the line.",
        shifts: [
          {
            dimension: "torso-length",
            direction: "+",
            fromMm: 0,
            toMm: 50,
            basis: {
              source: "ansur-2",
              finding:
                "Mean height of the navel in 1,986 women 980.1 mm; mean height of the iliac crest in 990 of them (even subject numbers) 995.5 mm. The spread to 50 mm is an assumption.",
            },
          },
        ],
      },
    ],
    findings: [
      {
        source: "crest-palpation-2007",
        finding:
          "Lying face down, 75 patients had their crest line at L4 or L4-L5 in 86.7 % by image, but felt at L3 or L3-L4 in 77.3 %; the felt line was too high more often in women and with a higher body mass index.",
      },
    ],
  },
  {
    id: "posterior-iliac-spine",
    name: "posterior superior iliac spine",
    everydayName: "the dimple low on the back",
    kind: "bone",
    definition:
      "The rear end of the iliac crest, often marked by a dimple in the skin on each side of the sacrum; here only so that it is not taken for the line of the crests.",
    standards: [],
    find: [
      "Follow the crest from its top backwards and downwards with a thumb until it ends in a small knob.",
      "In many people a dimple shows the place.",
    ],
    check: ["A line between the two knobs crosses the sacrum, clearly below the line of the crests."],
    confusions: [],
    findings: [],
  },
  {
    id: "iliospinale",
    name: "iliospinale (anterior superior iliac spine)",
    everydayName: "the point of the hip bone in front",
    kind: "bone",
    definition:
      "The knob at the front end of the iliac crest. Standards measure a height to it; it is not the top of the crest.",
    standards: [{ standard: "ISO 7250-1:2017", term: "iliospinale anterius", origin: "second-hand" }],
    find: [
      "Lay the hands on the hips and follow the crest forwards and downwards with the fingertips.",
      "Where it ends you feel a knob that looks forward: mark it.",
    ],
    check: ["Lying on the back, it is the bony point that stands up on each side of the belly."],
    confusions: [
      {
        landmark: "iliocristale",
        name: "the top of the crest",
        tell: "The top lies higher and at the side; the knob lies in front.",
        shifts: [
          {
            dimension: "iliac-crest-height",
            direction: "+",
            fromMm: 40,
            toMm: 110,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [],
  },
  {
    id: "buttock-point",
    name: "buttock point",
    everydayName: "the fullest part of the seat",
    kind: "surface",
    definition: "The point of the buttocks that stands out furthest to the back, seen from the side.",
    standards: [
      { standard: "ISO 8559-1:2017", term: "hip level", origin: "second-hand" },
      { standard: "NATICK/TR-15/007", term: "buttock point, posterior", origin: "second-hand" },
    ],
    find: ["Look from the side and mark the height where the seat stands out furthest."],
    check: ["Move the tape a little up and down: the girth is largest near this height."],
    confusions: [
      {
        landmark: "trochanterion",
        name: "the bony knob at the side of the hip",
        tell: "The knob is bone at the side of the thigh; the fullest part is seen from the side and may lie higher or lower.",
        shifts: [
          {
            dimension: "hip-girth",
            direction: "-",
            fromMm: 0,
            toMm: 30,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [],
  },
  {
    id: "trochanterion",
    name: "trochanterion",
    everydayName: "the bony knob at the side of the hip",
    kind: "bone",
    definition:
      "The highest point of the greater trochanter, the knob of the thigh bone that can be felt at the side of the hip.",
    standards: [{ standard: "NATICK/TR-15/007", term: "trochanterion", origin: "from memory" }],
    find: [
      "Lay a flat hand on the side of the hip, a hand's length below the iliac crest.",
      "Ask for the leg to be turned in and out on its heel: a knob rolls under the palm.",
      "Replace the palm by two fingers, slide up to the upper edge of the knob and mark it.",
    ],
    check: [
      "It moves when the leg turns; the iliac crest does not.",
      "It lies well below the crest: about one and a half hand's breadths.",
    ],
    confusions: [
      {
        landmark: "iliocristale",
        name: "the top of the hip bone",
        tell: "The crest is a long edge higher up and stays still when the leg turns.",
        shifts: [
          {
            dimension: "torso-length",
            direction: "+",
            fromMm: 100,
            toMm: 210,
            basis: {
              source: "ansur-2",
              finding:
                "Height of the crest minus height of the trochanter, mean 149.5 mm in 990 women and 160.7 mm in 2,040 men (even subject numbers); 1st to 99th percentile 103 to 193 mm and 109 to 209 mm.",
            },
          },
        ],
      },
    ],
    findings: [],
  },
];

import type { Landmark } from "../landmark-entry.ts";

/** The front of the chest. Sizes of errors: common practice, no source. */
export const chestLandmarks: readonly Landmark[] = [
  {
    id: "suprasternale",
    name: "suprasternale (jugular notch)",
    everydayName: "the pit of the throat",
    kind: "bone",
    definition: "The deepest point of the notch in the top edge of the breastbone, in the middle line.",
    standards: [
      { standard: "ISO 7250-1:2017", term: "suprasternale", origin: "from memory" },
      { standard: "NATICK/TR-15/007", term: "suprasternale", origin: "from memory" },
    ],
    find: [
      "Lay a fingertip lightly in the pit between the inner ends of the collarbones. Press on the bone below, never on the soft throat above it.",
      "Slide down until the finger rests on the edge of the breastbone; the lowest point of that edge is the mark.",
    ],
    check: ["The edge is hard and stays still when the person swallows."],
    confusions: [
      {
        name: "the inner end of a collarbone",
        tell: "The collarbones lie to the left and the right and higher; the notch lies in the middle between them.",
        shifts: [
          {
            dimension: "suprasternale-height",
            direction: "+",
            fromMm: 5,
            toMm: 15,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [],
  },
  {
    id: "mesosternale",
    name: "mesosternale",
    everydayName: "the middle of the breastbone",
    kind: "bone",
    definition:
      "The point in the middle line of the breastbone at the level where the fourth pair of ribs joins it, about half way down.",
    standards: [{ standard: "ISO 7250-1:2017", term: "mesosternale", origin: "from memory" }],
    find: [
      "From the pit of the throat slide down two or three fingers to a slight ridge across the breastbone: the second ribs join it there.",
      "Count two ribs further down at the edge of the bone, to the fourth.",
      "Mark the middle of the breastbone at that height.",
    ],
    check: ["It lies about half way between the pit of the throat and the lower end of the breastbone."],
    confusions: [
      {
        landmark: "thelion",
        name: "the level of the bust points",
        tell: "In a flat chest the two levels are close; with breasts the bust points lie lower, and the girth there is the larger one.",
        shifts: [
          {
            dimension: "chest-girth",
            direction: "-",
            fromMm: 5,
            toMm: 60,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [],
  },
  {
    id: "thelion",
    name: "thelion (bust point level)",
    everydayName: "the level of the nipples",
    kind: "level",
    definition:
      "The most forward point of the chest, at the nipple; with breasts, the most forward point in the brassiere that will be worn with the pack.",
    standards: [
      { standard: "ISO 7250-1:2017", term: "thelion", origin: "from memory" },
      { standard: "ISO 8559-1:2017", term: "bust point", origin: "second-hand" },
    ],
    find: [
      "Stand at the side and look along the chest: the level where it comes furthest forward is the one.",
      "The person can point to it; nobody else needs to touch.",
    ],
    check: ["Left and right are level, or nearly so; if they differ, take the height half way between."],
    confusions: [
      {
        landmark: "underbust-level",
        name: "the level below the breasts",
        tell: "The level below lies in the crease where the breast meets the ribs.",
        shifts: [
          {
            dimension: "chest-girth",
            direction: "-",
            fromMm: 30,
            toMm: 250,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [],
  },
  {
    id: "underbust-level",
    name: "underbust level",
    everydayName: "just below the breasts",
    kind: "level",
    definition:
      "The level of the crease where the breasts meet the ribs; where there is none, the level of the lower end of the breastbone.",
    standards: [{ standard: "ISO 8559-1:2017", term: "under bust level", origin: "second-hand" }],
    find: [
      "The person finds the lower edge of the brassiere band, or the crease itself, with a thumb.",
      "Where there is no crease, follow the breastbone down to its lower end.",
    ],
    check: ["The level goes round the back at the same height from the floor."],
    confusions: [
      {
        landmark: "lowest-rib",
        name: "the lower edge of the ribs",
        tell: "The lower edge lies a hand's breadth or more further down, where the side turns soft.",
        shifts: [
          {
            dimension: "underbust-girth",
            direction: "-",
            fromMm: 10,
            toMm: 80,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [],
  },
];

import type { Landmark } from "../landmark-entry.ts";

/** The three things that people call "waist", and the rib that bounds it. */
export const waistLandmarks: readonly Landmark[] = [
  {
    id: "lowest-rib",
    name: "lowest rib point",
    everydayName: "the lower edge of the ribs at the side",
    kind: "bone",
    definition: "The lowest point of the edge of the tenth rib, felt at the side a little to the front.",
    standards: [{ standard: "ISO 8559-1:2017", term: "lowest rib point", origin: "second-hand" }],
    find: [
      "Ask for one deep breath in: the lower edge of the ribs shows.",
      "Let the breath go, and feel for that edge from below with the fingertips, at the side and a little to the front.",
      "Mark its lowest point while the breathing is quiet.",
    ],
    check: [
      "Press very lightly and follow the edge both ways: forwards it climbs towards the breastbone, backwards it keeps on round the side.",
    ],
    confusions: [
      {
        landmark: "iliocristale",
        name: "the top of the hip bone",
        tell: "The hip bone lies below the soft part of the side and does not move with the breath; the rib lies above it and does.",
        shifts: [
          {
            dimension: "waist-girth",
            direction: "both",
            fromMm: 10,
            toMm: 60,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [],
  },
  {
    id: "natural-waist",
    name: "waist level",
    everydayName: "the waist",
    kind: "level",
    definition: "The level half way between the lowest rib and the top of the iliac crest, at the side.",
    standards: [
      { standard: "ISO 7250-1:2017", term: "waist level", origin: "second-hand" },
      { standard: "ISO 8559-1:2017", term: "waist level", origin: "second-hand" },
      {
        standard: "NATICK/TR-15/007",
        term: "waist (omphalion)",
        origin: "second-hand",
        differs: "The survey takes the waist at the height of the navel.",
      },
    ],
    find: [
      "Mark the lowest rib and the top of the iliac crest on the same side.",
      "Mark the middle between the two.",
      "Go round at that height from the floor, not at the height of a waistband.",
    ],
    check: [
      "Let the person bend sideways a little: the deepest fold of the side lies close to the mark.",
      "The place where a waist belt settles by itself may lie higher or lower, and may slope.",
    ],
    confusions: [
      {
        landmark: "omphalion",
        name: "the navel",
        tell: "The navel usually lies below the middle between rib and crest.",
        shifts: [
          {
            dimension: "waist-girth",
            direction: "+",
            fromMm: 0,
            toMm: 60,
            basis: "common practice, no source",
          },
          {
            dimension: "back-waist-length",
            direction: "+",
            fromMm: 10,
            toMm: 60,
            basis: "common practice, no source",
          },
        ],
      },
      {
        name: "the waistband of the trousers",
        tell: "Waistbands sit wherever fashion puts them, most often below the waist.",
        shifts: [
          {
            dimension: "waist-girth",
            direction: "+",
            fromMm: 20,
            toMm: 120,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [],
  },
  {
    id: "omphalion",
    name: "omphalion",
    everydayName: "the navel",
    kind: "surface",
    definition: "The middle of the navel.",
    standards: [{ standard: "NATICK/TR-15/007", term: "omphalion", origin: "from memory" }],
    find: [
      "It can be seen; mark its height on the side and on the back by going round level with the floor.",
    ],
    check: [
      "On a soft or full belly the navel hangs lower than on a lean one: it is no bone, and no end of a torso length.",
    ],
    confusions: [
      {
        landmark: "crest-line-at-spine",
        name: "the line of the hip bones",
        tell: "The hip bones can be felt; the navel usually lies a little below their tops.",
        shifts: [
          {
            dimension: "torso-length",
            direction: "+",
            fromMm: 0,
            toMm: 50,
            basis: {
              source: "ansur-2",
              finding:
                "Mean height of the navel in 1,986 women 980.1 mm; mean height of the iliac crest in 990 of them (even subject numbers) 995.5 mm: the navel 15 mm lower on average. People differ: the spread to 50 mm is an assumption, and in some the navel lies above the crest.",
            },
          },
        ],
      },
    ],
    findings: [],
  },
];

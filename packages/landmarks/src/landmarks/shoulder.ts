import type { Landmark } from "../landmark-entry.ts";

/** The shoulder and the shoulder blade. Sizes of errors: common practice, no source, unless one is named. */
export const shoulderLandmarks: readonly Landmark[] = [
  {
    id: "acromion",
    name: "acromion",
    everydayName: "the bony corner of the shoulder",
    kind: "bone",
    definition:
      "The outermost point of the outer edge of the acromion, the flat end of the shoulder blade that roofs the shoulder joint.",
    standards: [
      { standard: "ISO 7250-1:2017", term: "acromion", origin: "second-hand" },
      { standard: "ISO 8559-1:2017", term: "shoulder point", origin: "second-hand" },
      { standard: "NATICK/TR-15/007", term: "acromion", origin: "from memory" },
    ],
    find: [
      "Stand behind and let the arms hang loose.",
      "Find the ridge that runs across the upper shoulder blade and follow it outwards with a fingertip.",
      "Where the ridge ends it turns forward and makes a flat, bony shelf. Move the fingertip across its outer edge, from the top of the shoulder to the side, until you feel the edge drop off.",
      "Mark the outermost point of that edge.",
    ],
    check: [
      "Keep the finger there and let the arm swing a little: the edge stays still while the head of the arm bone moves below it.",
      "Left and right marks lie about equally far from the middle of the back.",
    ],
    confusions: [
      {
        name: "the head of the arm bone",
        tell: "The arm bone rolls under the finger when the arm turns; the acromion does not.",
        shifts: [
          {
            dimension: "shoulder-breadth",
            direction: "+",
            fromMm: 15,
            toMm: 40,
            basis: "common practice, no source",
          },
          {
            dimension: "shoulder-length",
            direction: "+",
            fromMm: 8,
            toMm: 20,
            basis: "common practice, no source",
          },
        ],
      },
      {
        name: "the knob at the outer end of the collarbone",
        tell: "The collarbone's end is a rounded knob about two fingers nearer to the neck, with a small step down to the shelf of the acromion.",
        shifts: [
          {
            dimension: "shoulder-breadth",
            direction: "-",
            fromMm: 30,
            toMm: 70,
            basis: "common practice, no source",
          },
          {
            dimension: "shoulder-length",
            direction: "-",
            fromMm: 15,
            toMm: 35,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [],
  },
  {
    id: "deltoid-point",
    name: "deltoid point",
    everydayName: "the widest bulge of the upper arm",
    kind: "surface",
    definition:
      "The outermost point of the deltoid, the muscle that caps the shoulder, with the arm hanging loose.",
    standards: [{ standard: "NATICK/TR-15/007", term: "deltoid point", origin: "from memory" }],
    find: [
      "Let both arms hang loose, without tightening the muscles.",
      "Hold a flat book upright against the outside of each upper arm and push it in until it just touches: it touches at the point.",
    ],
    check: ["It lies a hand's breadth or less below the corner of the shoulder, not at the elbow."],
    confusions: [
      {
        landmark: "acromion",
        name: "the bony corner of the shoulder",
        tell: "The corner is bone and lies higher and further in; the bulge is muscle.",
        shifts: [
          {
            dimension: "bideltoid-breadth",
            direction: "-",
            fromMm: 40,
            toMm: 150,
            basis: {
              source: "ansur-2",
              finding:
                "Bideltoid minus biacromial breadth, 5th to 95th percentile: 50 to 127 mm in 990 women and 58 to 135 mm in 2,040 men (even subject numbers); the range is widened to 40 to 150 mm by assumption.",
            },
          },
        ],
      },
    ],
    findings: [],
  },
  {
    id: "back-armpit-fold",
    name: "back armpit fold point (scye point at the back)",
    everydayName: "the top of the crease behind the armpit",
    kind: "surface",
    definition:
      "The upper end of the skin fold where the back of the arm meets the back of the trunk, with the arm hanging down.",
    standards: [{ standard: "ISO 8559-1:2017", term: "armpit back fold point", origin: "second-hand" }],
    find: [
      "Let the arm hang loose and look from behind: a crease runs up from the armpit between arm and back.",
      "Slip a short ruler flat under the arm, up to the armpit, and let the arm come down on it.",
      "Mark the crease at the height of the ruler's upper edge.",
    ],
    check: ["Left and right marks are level. If not, the ruler was tilted or one shoulder is raised."],
    confusions: [
      {
        name: "a point on the arm, outside the crease",
        tell: "Lift the arm a little sideways: a mark on the arm goes along, a mark at the fold hardly moves.",
        shifts: [
          {
            dimension: "interscye-breadth",
            direction: "+",
            fromMm: 10,
            toMm: 40,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [],
  },
  {
    id: "scapula-inferior-angle",
    name: "inferior angle of the scapula",
    everydayName: "the lower tip of the shoulder blade",
    kind: "bone",
    definition: "The lowest point of the shoulder blade, where its inner and outer edges meet.",
    standards: [],
    find: [
      "Let the arms hang loose.",
      "Follow the inner edge of the shoulder blade downwards with a fingertip until it turns outwards: the turn is the tip.",
      "If it is hard to feel, ask for the hand to be laid on the small of the back: the tip stands out. Let the arm hang down again before you mark it.",
    ],
    check: [
      "The bump of the spine at its height is on average the eighth below C7: a rough signpost that tells a C7 which is far out, and no end of a length.",
    ],
    confusions: [
      {
        name: "the tip with the arm raised or the shoulders pulled back",
        tell: "The blade turns with the arm: the tip swings outwards and upwards. Mark it with the arms down.",
        shifts: [
          {
            dimension: "interscye-breadth",
            direction: "both",
            fromMm: 5,
            toMm: 30,
            basis: "common practice, no source",
          },
        ],
      },
    ],
    findings: [
      {
        source: "scapula-level-2015",
        finding:
          "In upright people the tip lay on average at the spinous process of T8, and anywhere from T4 to T11.",
      },
    ],
  },
];

import type { Slip } from "../dimension-entry.ts";

/** What goes wrong with a torso length, the most common first. */
export const torsoLengthSlips: readonly [Slip, ...Slip[]] = [
  {
    code: "t1-for-c7",
    what: "The bump below C7 was taken for it, usually because it stands out most.",
    size: {
      direction: "-",
      fromMm: 15,
      toMm: 30,
      basis: {
        source: "c7-prominence-2013",
        finding:
          "Among 195 adults T1 had the longer spinous process in 57.3 % of the women and 27.1 % of the men. The size of the error is common practice, no source.",
      },
    },
    shows:
      "All readings of one session are short together; a session with C7 found afresh jumps up by one bump.",
    detect: "Let the head turn from side to side with the finger on the mark: T1 stays still.",
    mend: "Move up by one bump, repeat the tipping test, mark again and take new readings; do not correct the old ones.",
  },
  {
    code: "c6-for-c7",
    what: "The bump above C7 was taken for it.",
    size: {
      direction: "+",
      fromMm: 12,
      toMm: 25,
      basis: {
        source: "c7-palpation-2018",
        finding:
          "The tipping test found C7 in 54.5 % of 101 adults, as seen on X-rays. The size of the error is common practice, no source.",
      },
    },
    shows: "All readings of one session are long together; a session with C7 found afresh drops by one bump.",
    detect: "Let the head tip back with the finger on the mark: C6 slides away under it.",
    mend: "Move down by one bump, repeat the test, mark again and take new readings.",
  },
  {
    code: "soft-tissue-for-crest",
    what: "The hands rested on the soft side above the hip bone, so that the line of the crests came out too high.",
    size: {
      direction: "-",
      fromMm: 5,
      toMm: 35,
      basis: {
        source: "crest-palpation-2017",
        finding:
          "The line between the crests as felt lay 0.7 vertebral levels (men) and 1.0 levels (women) above the line on images. The size in millimetres is an assumption.",
      },
    },
    shows: "Readings are short, and grow when the hands press more firmly.",
    detect: "Press and slide down once more: if the hand sinks further, it was not on bone.",
    mend: "Press kindly until the shelf is hard, then bring the thumbs level and mark again.",
  },
  {
    code: "navel-for-crest",
    what: "The length was taken to the height of the navel instead of the tops of the hip bones.",
    size: {
      direction: "+",
      fromMm: 0,
      toMm: 50,
      basis: {
        source: "ansur-2",
        finding:
          "Navel on average 980.1 mm high in 1,986 women, iliac crest 995.5 mm in 990 of them (even subject numbers): the navel 15 mm lower. From C7 along the back to the navel the mean is 25.5 mm more than the straight height from crest to C7 in 990 women and 22.0 mm in 2,040 men, of which about 10 mm is the curve. The spread to 50 mm is an assumption; in some people the navel lies above the crest and the sign turns.",
      },
    },
    shows: "Readings are a little long, steadily.",
    detect:
      "Lay the hands on the hip bones: if the thumbs do not meet at the mark, the mark is not on the line.",
    mend: "Find both crests by touch and mark the line between them.",
  },
  {
    code: "waistband-for-crest",
    what: "The belt or waistband was taken for the hip bones. Most sit below them; a high one sits above and errs the other way.",
    size: { direction: "+", fromMm: 20, toMm: 80, basis: "common practice, no source" },
    shows: "Readings change with the trousers that were worn.",
    detect: "Push the waistband down and feel for the hard shelf: it is seldom where the band was.",
    mend: "Measure without a belt, to the bone.",
  },
  {
    code: "waist-for-crest",
    what: "The hands were laid into the waist, under the ribs, instead of onto the hip bones.",
    size: { direction: "-", fromMm: 30, toMm: 90, basis: "common practice, no source" },
    shows: "Readings are clearly short, close to a back waist length.",
    detect: "Take a deep breath: if the edge under the hand moves, it is a rib.",
    mend: "Slide the hands down through the soft part until they rest on bone.",
  },
  {
    code: "thumbs-not-level",
    what: "The thumbs pointed up or down instead of level, so that the mark on the spine slid along.",
    size: { direction: "both", fromMm: 5, toMm: 30, basis: "common practice, no source" },
    shows: "Readings scatter by a thumb's breadth, above and below.",
    detect: "Look from behind, or in two mirrors: are both thumbs equally far from the floor?",
    mend: "Hold a cord level across both crest marks and mark where it crosses the spine.",
  },
  {
    code: "head-bent",
    what: "The head stayed bent forward while the tape was read, which draws the skin and the bump upwards.",
    size: { direction: "+", fromMm: 5, toMm: 20, basis: "common practice, no source" },
    shows:
      "The first reading, taken just after C7 was found, is longer than the ones after it; alone, all are.",
    detect:
      "Read once with the chin down and once looking ahead: if the numbers differ, the head was down before.",
    mend: "Look at something at eye level and read again; keep the readings with a level head.",
  },
  {
    code: "rounded-back",
    what: "The person slouched or leaned forward, which stretches the back.",
    size: { direction: "+", fromMm: 5, toMm: 30, basis: "common practice, no source" },
    shows: "Readings drift up as the session goes on and the person tires.",
    detect: "Ask for one deep breath and a fresh stand: if the next reading drops, the back had rounded.",
    mend: "Stand at ease but upright, step away and back before each reading.",
  },
  {
    code: "tape-bridges-hollow",
    what: "The tape was pulled tight and spanned the hollow of the lower back instead of lying in it.",
    size: {
      direction: "-",
      fromMm: 3,
      toMm: 15,
      basis: {
        source: "ansur-2",
        finding:
          "In 1,986 women the way along the back from C7 to the height of the navel is 9.9 mm longer on average than the straight height between the two (425.4 mm against 1395.7 - 980.1 mm). The range around it is an assumption.",
      },
    },
    shows: "Readings are a little short, more so in people with a deep hollow.",
    detect: "Try to slip a finger between tape and back: there should be no gap.",
    mend: "Press the tape into the hollow with a flat hand and read without pulling.",
  },
  {
    code: "tape-off-spine",
    what: "The tape slid to one side of the spine or ran slantwise.",
    size: { direction: "both", fromMm: 2, toMm: 15, basis: "common practice, no source" },
    shows: "Readings scatter; the mean hardly moves.",
    detect: "Look whether the tape hides the row of bumps all the way down.",
    mend: "Let the tape follow the bumps with a fingertip ahead of it.",
  },
  {
    code: "twisted-alone",
    what: "Measuring alone, the person turned or bent to see or to reach the tape.",
    size: { direction: "both", fromMm: 5, toMm: 30, basis: "common practice, no source" },
    shows: "Readings taken alone scatter two or three times as much as readings with a helper.",
    detect:
      "Compare the largest and the smallest: a gap of more than a thumb's breadth means twisting or a lost mark.",
    mend: "Catch the tape with the thumbs while looking straight ahead, and read it after taking it off; or ask for help.",
  },
  {
    code: "thick-clothes",
    what: "The tape lay over a jumper, a collar or a hood.",
    size: { direction: "+", fromMm: 3, toMm: 15, basis: "common practice, no source" },
    shows: "Readings are a little long, and C7 was hard to find.",
    detect: "Was it bare skin or one thin layer?",
    mend: "Take the layers off or pull them aside and read again.",
  },
  {
    code: "tape-zero-lost",
    what: "The zero of the tape was not at the mark: a metal end, a torn end, or counting from the second line.",
    size: { direction: "both", fromMm: 5, toMm: 30, basis: "common practice, no source" },
    shows: "Every reading with this tape is off by the same amount, in every dimension.",
    detect: "Lay the tape along a steel rule: do zero and one hundred fall together?",
    mend: "Start from the ten and take ten off, or use another tape.",
  },
  {
    code: "unit-mistaken",
    what: "Inches were written down as centimetres, or the other way round.",
    size: { direction: "both", fromMm: 200, toMm: 800, basis: "assumption" },
    shows: "The number lies far outside anything plausible, by a factor of about two and a half.",
    detect: "Multiply or divide by 2.54: does the result look like a back?",
    mend: "Ask which scale of the tape was read, and write the unit with the number.",
  },
];

import {
  cautionsFor,
  type Dimension,
  dimension,
  dimensionIds,
  landmark,
  readingPractice,
  type Way,
} from "@tapewise/landmarks";
import { capitalised } from "../report/words.ts";
import { bullets, wrap } from "../text/wrap.ts";
import { wayOptions } from "./choose-way.ts";

/** Every dimension and what it is good for. */
export function dimensionList(width: number): string[] {
  return [
    "Dimensions of the body that packs are sized by:",
    "",
    ...dimensionIds.flatMap((id) => [
      `  ${id}`,
      ...wrap(dimension(id).use, { first: "      ", rest: "      " }, width),
    ]),
    "",
    'How to take one: "tapewise guide torso-length".',
  ];
}

/** Everything to know before the first reading. */
export function introduction(one: Dimension, width: number): string[] {
  const cautions = cautionsFor(one.id).filter(({ moments }) =>
    moments.some((moment) => moment !== "carrying"),
  );
  return [
    ...wrap(`${capitalised(one.name)}. ${one.definition}`, FLUSH, width),
    ...wrap(one.use, FLUSH, width),
    "",
    "Be careful",
    ...bullets(
      cautions.map((caution) => `${caution.name}. ${caution.text} ${caution.ask}`),
      MARGIN,
      width,
    ),
    "",
    "What you need",
    ...bullets(one.needs, MARGIN, width),
    "",
    "How to stand",
    ...bullets(one.posture, MARGIN, width),
  ];
}

/** How to find each landmark, one block for each. */
export function landmarkBlocks(one: Dimension, width: number): readonly (readonly string[])[] {
  return one.landmarks.map((id) => {
    const { everydayName, name, find, check, confusions } = landmark(id);
    return [
      ...wrap(`Find ${everydayName}: ${name}`, FLUSH, width),
      ...numbered(find, width),
      ...bullets(
        [
          ...check.map((text) => `Check: ${text}`),
          ...confusions.map(({ name: other, tell }) => `Not ${other}: ${tell}`),
        ],
        MARGIN,
        width,
      ),
    ];
  });
}

/** The head of a way. */
export function wayHead(way: Way, width: number): string[] {
  const who = way.who === "self" ? "by yourself" : "with a helper";
  return wrap(`Taking it with a ${way.tool.replaceAll("-", " ")}, ${who}. ${way.suits}`, FLUSH, width);
}

/** The steps of a way. */
export function waySteps(way: Way, width: number): string[] {
  return numbered(
    way.steps.map((step) => step.text),
    width,
  );
}

/** The whole guide to one dimension, to read or to print. */
export function guideLines(one: Dimension, way: Way, width: number): string[] {
  const others = one.ways.filter((other) => other !== way);
  const list = (texts: readonly string[]): string[] => bullets(texts, MARGIN, width);
  return [
    ...introduction(one, width),
    "",
    ...landmarkBlocks(one, width).flatMap((block) => [...block, ""]),
    ...wayHead(way, width),
    ...waySteps(way, width),
    "",
    "What goes wrong",
    ...list(one.slips.map((slip) => `${slip.what} ${slip.detect} ${slip.mend}`)),
    "",
    "Readings worth having",
    ...list(readingPractice.map((habit) => habit.text)),
    ...(one.helperReason === undefined ? [] : ["", ...wrap(one.helperReason, FLUSH, width)]),
    ...(others.length === 0
      ? []
      : ["", "Other ways", ...list(others.map((other) => `${wayOptions(other)}: ${other.suits}`))]),
  ];
}

const FLUSH = { first: "", rest: "" };
const MARGIN = "  ";

function numbered(texts: readonly string[], width: number): string[] {
  return texts.flatMap((text, index) => wrap(text, { first: `  ${index + 1}. `, rest: "     " }, width));
}

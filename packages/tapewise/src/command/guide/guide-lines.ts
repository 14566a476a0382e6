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
export function dimensionList(): string[] {
  return [
    "Dimensions of the body that packs are sized by:",
    "",
    ...dimensionIds.flatMap((id) => [
      `  ${id}`,
      ...wrap(dimension(id).use, { first: "      ", rest: "      " }),
    ]),
    "",
    'How to take one: "tapewise guide torso-length".',
  ];
}

/** Everything to know before the first reading. */
export function introduction(one: Dimension): string[] {
  const cautions = cautionsFor(one.id).filter(({ moments }) =>
    moments.some((moment) => moment !== "carrying"),
  );
  return [
    ...wrap(`${capitalised(one.name)}. ${one.definition}`),
    ...wrap(one.use),
    "",
    "Be careful",
    ...bullets(cautions.map((caution) => `${caution.name}. ${caution.text} ${caution.ask}`)),
    "",
    "What you need",
    ...bullets(one.needs),
    "",
    "How to stand",
    ...bullets(one.posture),
  ];
}

/** How to find each landmark, one block for each. */
export function landmarkBlocks(one: Dimension): readonly (readonly string[])[] {
  return one.landmarks.map((id) => {
    const { everydayName, name, find, check, confusions } = landmark(id);
    return [
      ...wrap(`Find ${everydayName}: ${name}`),
      ...numbered(find),
      ...bullets(check.map((text) => `Check: ${text}`)),
      ...bullets(confusions.map(({ name: other, tell }) => `Not ${other}: ${tell}`)),
    ];
  });
}

/** The head of a way. */
export function wayHead(way: Way): string[] {
  const who = way.who === "self" ? "by yourself" : "with a helper";
  return wrap(`Taking it with a ${way.tool.replaceAll("-", " ")}, ${who}. ${way.suits}`);
}

/** The steps of a way. */
export function waySteps(way: Way): string[] {
  return numbered(way.steps.map((step) => step.text));
}

/** The whole guide to one dimension, to read or to print. */
export function guideLines(one: Dimension, way: Way): string[] {
  const others = one.ways.filter((other) => other !== way);
  return [
    ...introduction(one),
    "",
    ...landmarkBlocks(one).flatMap((block) => [...block, ""]),
    ...wayHead(way),
    ...waySteps(way),
    "",
    "What goes wrong",
    ...bullets(one.slips.map((slip) => `${slip.what} ${slip.detect} ${slip.mend}`)),
    "",
    "Readings worth having",
    ...bullets(readingPractice.map((habit) => habit.text)),
    ...(one.helperReason === undefined ? [] : ["", ...wrap(one.helperReason)]),
    ...(others.length === 0
      ? []
      : ["", "Other ways", ...bullets(others.map((other) => `${wayOptions(other)}: ${other.suits}`))]),
  ];
}

function numbered(texts: readonly string[]): string[] {
  return texts.flatMap((text, index) => wrap(text, { first: `  ${index + 1}. `, rest: "     " }));
}

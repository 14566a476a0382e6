import {
  answerBodyCheck,
  type BodyCheckSetup,
  type BodyCheckState,
  bodyCheckItems,
} from "@tapewise/afterwards";
import { parseChart, type SizeChart } from "@tapewise/charts";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { adjustableChart, allRight, answerAll, begin, fixedChart, middling, reachable } from "./walk.ts";

const setup: BodyCheckSetup = { chart: fixedChart, size: "M", length: middling };
/** As after a first look that ended in something to set: nothing of it is kept. */
const second = (from: BodyCheckSetup): BodyCheckState => ({ ...begin(from), look: 2 });
const at = (meanMm: number): BodyCheckSetup["length"] => ({ ...middling, meanMm });

test("where everything sits right, that is said", () => {
  const { step } = answerAll(begin(setup), allRight);
  expect(step.kind).toBe("sits-right");
  expect(step.kind === "sits-right" && (step.probability ?? 0) > 0.8).toBe(true);
});

test("a state that was given stays as it is", () => {
  const state = begin(setup);
  const copy = structuredClone(state);
  answerBodyCheck(state, "cautions", "none");
  expect(state).toEqual(copy);
});

test("what is not asked, or no answer of the item, is a mistake of the program", () => {
  expect(() => answerBodyCheck(begin(setup), "back-panel", "far-below")).toThrow(InvalidArgumentError);
  expect(() => answerBodyCheck(begin(setup), "cautions", "perhaps")).toThrow(InvalidArgumentError);
  const ended = answerAll(begin(setup), allRight);
  expect(() => answerBodyCheck(ended, "cautions", "none")).toThrow(InvalidArgumentError);
});

describe("cautions", () => {
  test.each(["pain-or-numbness", "injury-or-surgery", "pregnancy", "growing-child"])(
    "%s stops at once",
    (answer) => {
      expect(answerBodyCheck(begin(setup), "cautions", answer).step).toEqual({
        kind: "see-fitter",
        reason: answer,
      });
    },
  );

  test("pain at the end outweighs all that was right before", () => {
    const { step } = answerAll(begin(setup), { ...allRight, "pressure-points": "hurts-or-numb" });
    expect(step).toEqual({ kind: "see-fitter", reason: "pain-or-numbness" });
  });
});

describe("settings come first", () => {
  test("a belt in the wrong place before anything else is judged", () => {
    const { step, answers } = answerAll(begin(setup), { ...allRight, "belt-position": "too-low" });
    expect(step).toEqual({ kind: "adjust", adjustments: ["raise-belt"] });
    expect(answers).toHaveLength(2);
  });

  test("the length of a harness only where it can be set", () => {
    const seen = { ...allRight, "back-panel": "level-or-above", "sternum-strap": "binds" };
    expect(answerAll(begin(setup), seen).step).toEqual({
      kind: "adjust",
      adjustments: ["move-sternum-strap"],
    });
    expect(answerAll(begin({ ...setup, chart: adjustableChart }), seen).step).toEqual({
      kind: "adjust",
      adjustments: ["harness-shorter", "move-sternum-strap"],
    });
  });
});

describe("exchanges", () => {
  const long = {
    ...allRight,
    "back-panel": "level-or-above",
    "shoulder-contact": "gap-behind",
    "upper-straps": "steeper",
    "strap-ends": "straps-run-out",
  };
  const short = {
    ...allRight,
    "back-panel": "far-below",
    "shoulder-contact": "bears-down",
    "upper-straps": "flatter",
    "strap-ends": "end-at-armpit",
  };

  test("too long near the shorter size: that one, by name, with how sure it is", () => {
    const { step } = answerAll(second({ ...setup, length: at(430) }), long);
    expect(step).toMatchObject({
      kind: "exchange",
      part: "harness",
      reason: "harness-too-long",
      from: "M",
      to: "S",
    });
    expect(step.kind === "exchange" && step.probability - step.fromProbability).toBeGreaterThan(0.1);
  });

  test("too short near the longer one", () => {
    const { step } = answerAll(second({ ...setup, length: at(460) }), short);
    expect(step).toMatchObject({ kind: "exchange", reason: "harness-too-short", to: "L" });
  });

  // One sight among others that look right: the more of them speak against the size, the shorter the body must be.
  const sureLong = { ...allRight, "back-panel": "level-or-above" };

  test("at once where another size is all but sure", () => {
    const { step } = answerAll(begin({ ...setup, length: at(400) }), sureLong);
    expect(step).toMatchObject({ kind: "exchange", to: "S" });
  });

  test("not where the readings leave no doubt that the size is right", () => {
    const sure = { ...setup, length: { ...middling, sdMm: 1 }, chartDoubtMm: { length: 1, girth: 1 } };
    expect(answerAll(second(sure), long).step).toEqual({ kind: "see-fitter", reason: "not-by-size" });
  });

  test("not where the chart has no longer size", () => {
    const { step } = answerAll(second({ ...setup, size: "L", length: at(530) }), short);
    expect(step).toEqual({ kind: "see-fitter", reason: "no-size-left" });
  });

  test("not against the readings: they say shorter, the pack says longer", () => {
    const apart = {
      ...setup,
      length: { ...middling, meanMm: 380, sdMm: 2 },
      chartDoubtMm: { length: 1, girth: 1 },
    };
    expect(answerAll(second(apart), short).step).toEqual({ kind: "see-fitter", reason: "readings-disagree" });
  });

  test("a belt goes back only where it can be had apart", () => {
    const wide = { ...allRight, "belt-position": "slides-down", "belt-closure": "ends-meet" };
    const girth = { meanMm: 815, sdMm: 10, degreesOfFreedom: Number.POSITIVE_INFINITY };
    expect(answerAll(second({ ...setup, girth }), wide).step).toEqual({
      kind: "see-fitter",
      reason: "belt-comes-with-size",
    });
    expect(answerAll(second({ ...setup, chart: adjustableChart, girth }), wide).step).toMatchObject({
      kind: "exchange",
      part: "belt",
      reason: "hip-belt-too-large",
      to: "S",
    });
  });

  test("a belt whose range is open below is exchanged for one that reaches further", () => {
    const open = parseChart(
      "size,torso-length (cm),hip-belt-girth (cm)\nS,38-43,<95\nM,42-47,<105\nL,46-51,<120\n",
      { chart: "Doily 45" },
    );
    const chart: SizeChart = { ...open, swappable: ["hip-belt"] };
    const tight = { ...allRight, "belt-closure": "padding-short" };
    const girth = { meanMm: 1090, sdMm: 15, degreesOfFreedom: Number.POSITIVE_INFINITY };
    expect(answerAll(second({ ...setup, chart, girth }), tight).step).toMatchObject({
      kind: "exchange",
      part: "belt",
      from: "M",
      to: "L",
    });
  });

  test("a belt that is sized apart is exchanged among the belts", () => {
    const chart = {
      ...fixedChart,
      belts: adjustableChart.sizes.map(({ name, ranges }) => ({ name: `belt ${name}`, ranges })),
    };
    const tight = { ...allRight, "belt-closure": "padding-short" };
    const girth = { meanMm: 1060, sdMm: 15, degreesOfFreedom: Number.POSITIVE_INFINITY };
    const { step } = answerAll(second({ ...setup, chart, belt: "belt M", girth }), tight);
    expect(step).toMatchObject({ kind: "exchange", part: "belt", from: "belt M", to: "belt L" });
  });
});

describe("contradictions", () => {
  const both: Readonly<Record<string, string>> = {
    ...allRight,
    "back-panel": "level-or-above",
    "shoulder-contact": "bears-down",
  };

  test("are questioned, not averaged: both items are asked again", () => {
    let state = begin(setup);
    for (const item of [
      "cautions",
      "belt-position",
      "belt-closure",
      "back-panel",
      "shoulder-contact",
    ] as const) {
      state = answerBodyCheck(state, item, both[item] ?? "");
    }
    expect(state.step).toEqual({ kind: "ask", item: "back-panel", because: "harness-long-and-short" });
    expect(state.questioned).toBe("harness-long-and-short");
    expect(state.answers.map(({ item }) => item)).toEqual(["cautions", "belt-position", "belt-closure"]);
  });

  test("are left to a fitter where they stay", () => {
    expect(answerAll(begin(setup), both).step).toEqual({ kind: "see-fitter", reason: "answers-contradict" });
  });

  test("a belt cannot be too large and too small", () => {
    const seen = { ...allRight, "belt-position": "slides-down", "belt-closure": "padding-short" };
    expect(answerAll(begin(setup), seen).step).toEqual({ kind: "see-fitter", reason: "answers-contradict" });
  });
});

test("who can tell nothing is sent to a fitter", () => {
  const blind = Object.fromEntries(
    bodyCheckItems.map(({ id, answers }) => [
      id,
      answers.find((answer) => answer.id === "cannot-tell")?.id ?? answers[0].id,
    ]),
  );
  expect(answerAll(begin(setup), blind).step).toEqual({ kind: "see-fitter", reason: "too-little-seen" });
});

test("a chart that does not size by the back still ends", () => {
  const chart = parseChart("size,hip-belt-girth (cm)\nS,70-95\nM,80-105\n", { chart: "Teaspoon 35" });
  const { step } = answerAll(begin({ ...setup, chart }), allRight);
  expect(step).toEqual({ kind: "sits-right", size: "M" });
});

describe("every branch", () => {
  const ends = ["adjust", "exchange", "sits-right", "see-fitter"];
  const sizes = new Set(fixedChart.sizes.map(({ name }) => name));

  test("of the first look ends in one of the four ways, and nothing that was answered is asked again", {
    timeout: 60_000,
  }, () => {
    const states = reachable(begin(setup));
    expect(states.length).toBeGreaterThan(50_000);
    const found = new Set<string>();
    for (const state of states) {
      const { step, answers } = state;
      expect(answers.length).toBeLessThanOrEqual(bodyCheckItems.length);
      if (step.kind === "ask") {
        // What is asked has no answer yet, so that every answer comes nearer to the end.
        if (answers.some(({ item }) => item === step.item)) expect.fail(JSON.stringify(state));
        continue;
      }
      found.add(step.kind);
      if (!ends.includes(step.kind)) expect.fail(step.kind);
      if (step.kind === "exchange" && !(sizes.has(step.to) && step.to !== step.from)) expect.fail(step.to);
      if (step.kind === "adjust" && step.adjustments.length === 0) expect.fail("nothing to set");
    }
    expect([...found].sort()).toEqual(["adjust", "see-fitter", "sits-right"]);
  });

  test("of the second look ends without anything more to set", { timeout: 60_000 }, () => {
    const found = new Set<string>();
    const start = second({ ...setup, length: at(430) });
    const only = { "sternum-strap": "binds", "pressure-points": "none" };
    const states = [
      ...reachable(start, only),
      ...reachable(start, { ...only, "sternum-strap": "breathes-freely" }),
    ];
    for (const { step } of states) found.add(step.kind);
    expect([...found].sort()).toEqual(["ask", "exchange", "see-fitter", "sits-right"]);
  });
});

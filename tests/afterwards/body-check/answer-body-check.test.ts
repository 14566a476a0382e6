import {
  answerBodyCheck,
  type BodyCheckAnswer,
  type BodyCheckSetup,
  type BodyCheckState,
  bodyCheckItems,
  type GivenAnswer,
  lookAgain,
} from "@tapewise/afterwards";
import { parseChart, type SizeChart } from "@tapewise/charts";
import type { UncertainLength } from "@tapewise/fit";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { adjustableChart, allRight, answerAll, begin, fixedChart, middling, reachable } from "./walk.ts";

const setup: BodyCheckSetup = { chart: fixedChart, size: "M", length: middling };
/** As after a first look that ended in something to set: nothing of it is kept. */
const second = (from: BodyCheckSetup): BodyCheckState => ({ ...begin(from), look: 2 });
const at = (meanMm: number): UncertainLength => ({ ...middling, meanMm });

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

  const stops = bodyCheckItems.flatMap(({ id, answers }) =>
    answers.flatMap(({ id: answer, stop }) => (stop === undefined ? [] : [{ item: id, answer, stop }])),
  );
  const states: Readonly<Record<string, BodyCheckState>> = {
    "where the first thing is asked": begin(setup),
    "where another thing is asked": answerBodyCheck(begin(setup), "cautions", "none"),
    "where something is to be set": answerAll(begin(setup), { ...allRight, "belt-position": "too-high" }),
    "where all sat right": answerAll(begin(setup), allRight),
    "in a second look": second(setup),
  };
  test.each(Object.keys(states))("every one ends the check %s", (where) => {
    const state = states[where] ?? begin(setup);
    expect(stops).toHaveLength(5);
    for (const { item, answer, stop } of stops) {
      const after = answerBodyCheck(state, item, answer);
      expect(after.step).toEqual({ kind: "see-fitter", reason: stop });
      // A calmer answer that was given before no longer stands beside it.
      expect(after.answers.filter((given) => given.item === item)).toEqual([{ item, answer }]);
    }
  });

  test("of several, pain is what is spoken of, and all are kept", () => {
    const pregnant = answerBodyCheck(begin(setup), "cautions", "pregnancy");
    const both = answerBodyCheck(pregnant, "cautions", "pain-or-numbness");
    expect(both.step).toEqual({ kind: "see-fitter", reason: "pain-or-numbness" });
    expect(both.answers.map(({ answer }) => answer)).toEqual(["pregnancy", "pain-or-numbness"]);
    expect(answerBodyCheck(both, "cautions", "pregnancy").step).toEqual(both.step);
  });
});

describe("a chart that sizes by the hip belt alone", () => {
  const chart = parseChart("size,hip-belt-girth (cm)\nS,60-75\nM,74-90\n", { chart: "Belts" });
  const girth = { meanMm: 800, sdMm: 9, degreesOfFreedom: Number.POSITIVE_INFINITY };

  test("is checked without a length, of which no chance is told", () => {
    const { step } = answerAll(begin({ chart, size: "M", girth }), allRight);
    expect(step).toEqual({ kind: "sits-right", size: "M" });
  });

  test("is still held against the girth that was read", () => {
    // 60 cm lies 14 cm below the 74 cm where M begins.
    const far = { ...girth, meanMm: 600 };
    const { step } = answerAll(begin({ chart, size: "M", girth: far }), allRight);
    expect(step).toEqual({ kind: "see-fitter", reason: "readings-disagree" });
  });
});

test("without a length, a chart that states one is gone by with what is seen alone", () => {
  const unread = { chart: fixedChart, size: "M" };
  expect(answerAll(begin(unread), allRight).step).toEqual({ kind: "sits-right", size: "M" });
  const short = {
    ...allRight,
    "back-panel": "far-below",
    "shoulder-contact": "bears-down",
    "upper-straps": "flatter",
    "strap-ends": "end-at-armpit",
  };
  expect(answerAll(second(unread), short).step).toMatchObject({ kind: "exchange", from: "M", to: "L" });
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

test("what looks right and is next to impossible by the readings is questioned: measure again", () => {
  // M begins at 42 cm. Whoever is believed to be at 34 cm cannot wear it so that all looks right.
  const { step } = answerAll(begin({ ...setup, length: at(340) }), allRight);
  expect(step).toEqual({ kind: "see-fitter", reason: "readings-disagree" });
  expect(answerAll(second({ ...setup, length: at(340) }), allRight).step).toEqual(step);
  // The same for a belt that closes as it should on a girth that it cannot reach around.
  const girth = { meanMm: 1500, sdMm: 15, degreesOfFreedom: Number.POSITIVE_INFINITY };
  expect(answerAll(begin({ ...setup, girth }), allRight).step).toEqual(step);
  // Who could not tell of the belt has seen nothing that disagrees.
  const unseen = { ...allRight, "belt-closure": "cannot-tell" };
  expect(answerAll(begin({ ...setup, girth }), unseen).step.kind).toBe("sits-right");
  // A length that only makes the size unlikely is no reason to doubt what is seen.
  expect(answerAll(begin({ ...setup, length: at(400) }), allRight).step.kind).toBe("sits-right");
});

describe("every branch", () => {
  const sizes = new Set(fixedChart.sizes.map(({ name }) => name));

  /**
   * What a look can end in, counted by hand. Of the harness tell `belt-position` (one of its answers: too short),
   * `back-panel`, `shoulder-contact` and `strap-ends` (right, too long, too short, cannot tell: 4 each) and
   * `upper-straps` (the same and a fifth that tells nothing); of the belt `belt-position` (too large) and `belt-closure`
   * (right, too large, too small, cannot tell). Two answers of `belt-position` end a look at once, two tell nothing.
   */
  const leaves = {
    // Four harness items without "too long": 3·3·4·3 = 108, and as many without "too short"; without both 2·2·3·2 = 24.
    // With the position's two that tell nothing, 4 closures; with "slides down" 3 of them; with "pulled up" nothing too
    // long and 4: 2·192·4 + 192·3 + 108·4 = 2544. Then 3 answers of the sternum strap and 2 that do not hurt, in a look
    // in which nothing was questioned, the harness was, or the belt was.
    complete: 3 * (2 * 192 * 4 + 192 * 3 + 108 * 4) * 3 * 2,
    // The same with the third answer, and one at the first question.
    pain: 3 * (2 * 192 * 4 + 192 * 3 + 108 * 4) * 3 + 1,
    otherCautions: 3,
    // Too high or too low: at once (2), asked again because of the belt (2), or because of the harness, when the
    // closure (4) and what told nothing or looked right (3·3·4 with those not yet asked) is kept.
    beltFirst: 2 + 2 + 2 * 4 * 36,
    // A second contradiction. After one of the belt, all is asked anew in order, and it turns up at the closure 1, the
    // back panel 4, the shoulders 4·3 + 11·2 = 34, the upper straps 4·9 + 11·10 = 146 or the straps' ends
    // 4·36 + 11·48 = 672 times, where 11 = 2·4 + 3 stand for position and closure that say nothing of the harness.
    contradictedBelt: 1 + 4 + 34 + 146 + 672,
    // After one of the harness, the same but for the closure; besides with later answers kept that told nothing or
    // looked right: at the position (all of 36), the back panel (4 times 3·4 − 1) and the shoulders (34 times 3).
    contradictedHarness: 4 + 34 + 146 + 672 + 36 + 4 * 11 + 34 * 3,
  };
  const total = Object.values(leaves).reduce((a, b) => a + b, 0);

  /** Walks one look and holds each answer and each end against what must be. */
  function walk(start: BodyCheckState): Readonly<Record<string, number>> {
    const ends: Record<string, number> = {};
    const states = reachable(start, (before, { item, answer }, after) => {
      const isOpposed = opposed([...before.answers, { item, answer }]);
      const { step } = after;
      if (meaning(item, answer).stop !== undefined) {
        expect(step.kind).toBe("see-fitter");
      } else if (isOpposed && before.questioned === undefined) {
        // Questioned, not averaged: what contradicts itself is taken back, and asked first thing.
        if (!(step.kind === "ask" && step.because !== undefined)) expect.fail(JSON.stringify(after));
        if (opposed(after.answers) || after.questioned !== step.because) expect.fail(JSON.stringify(after));
      } else if (isOpposed) {
        expect(step).toEqual({ kind: "see-fitter", reason: "answers-contradict" });
      } else if (after.questioned !== before.questioned) {
        expect.fail(JSON.stringify(after));
      }
    });
    for (const state of states) {
      const { step, answers } = state;
      if (step.kind === "ask") {
        // What is asked has no answer yet, so that every answer comes nearer to the end.
        if (answers.some(({ item }) => item === step.item)) expect.fail(JSON.stringify(state));
        continue;
      }
      ends[step.kind] = (ends[step.kind] ?? 0) + 1;
      if (step.kind === "exchange") {
        const isNamed = sizes.has(step.to) && step.to !== step.from && step.reason.length > 0;
        if (!(isNamed && step.probability > step.fromProbability)) expect.fail(JSON.stringify(step));
      } else if (step.kind === "adjust") {
        if (state.look !== 1 || step.adjustments.length === 0) expect.fail(JSON.stringify(step));
      } else if (step.kind === "sits-right") {
        // Nothing that was seen, and nothing that is known, speaks against it.
        const isRight = answers.every(({ item, answer }) => isCalm(item, answer));
        if (!isRight || (step.probability ?? 0) < 0.2) expect.fail(JSON.stringify(state));
      } else if (step.kind !== "see-fitter") expect.fail(JSON.stringify(step));
    }
    return ends;
  }

  const girth = { meanMm: 1040, sdMm: 20, degreesOfFreedom: Number.POSITIVE_INFINITY };

  test.each<[string, BodyCheckSetup, readonly string[]]>([
    ["fixed, in the middle of the size", setup, ["adjust", "see-fitter", "sits-right"]],
    [
      "that can be set, near the shorter size, with belts apart",
      { chart: adjustableChart, size: "M", length: at(430), girth },
      ["adjust", "exchange", "see-fitter", "sits-right"],
    ],
  ])("of the first look, harness %s", { timeout: 120_000 }, (_, of, kinds) => {
    const ends = walk(begin(of));
    expect(Object.keys(ends).sort()).toEqual(kinds);
    expect(Object.values(ends).reduce((a, b) => a + b, 0)).toBe(total);
    expect(total).toBe(70_879);
  });

  test("of the second look ends without anything more to set", { timeout: 120_000 }, () => {
    const ends = walk(second({ ...setup, chart: adjustableChart, length: at(430), girth }));
    expect(Object.keys(ends).sort()).toEqual(["exchange", "see-fitter", "sits-right"]);
    expect(Object.values(ends).reduce((a, b) => a + b, 0)).toBe(total);
  });

  test("leads on from whatever was to be set to one and the same second look", () => {
    const high = answerAll(begin(setup), { ...allRight, "belt-position": "too-high" });
    const bound = answerAll(begin(setup), { ...allRight, "sternum-strap": "binds" });
    expect([high.step.kind, bound.step.kind]).toEqual(["adjust", "adjust"]);
    expect(lookAgain(high)).toEqual(second(setup));
    expect(lookAgain(bound)).toEqual(second(setup));
  });
});

/** What an answer says, as the list of items has it. */
function meaning(item: string, answer: string): BodyCheckAnswer {
  const found = bodyCheckItems.find(({ id }) => id === item)?.answers.find(({ id }) => id === answer);
  if (found === undefined) throw new Error(`${item} has no answer ${answer}`);
  return found;
}

/** Whether answers call one part both too long and too short, or too large and too small. */
function opposed(answers: readonly GivenAnswer[]): boolean {
  const said = answers.map(({ item, answer }) => meaning(item, answer).says);
  return ["harness", "belt"].some((part) =>
    ["below", "above"].every((side) => said.some((one) => one?.part === part && one.side === side)),
  );
}

/** Whether an answer gives nothing to set and nothing to exchange. */
function isCalm(item: string, answer: string): boolean {
  const { says, adjust } = meaning(item, answer);
  return adjust === undefined && (says === undefined || says.side === "inside");
}

import { type EstimateInput, errorDefaults, parseEstimate, safeEstimate } from "@tapewise/measurement";
import { InvalidArgumentError, IssuesError } from "@tapewise/outcome";
import { type LengthReading, parseLength } from "@tapewise/units";
import { describe, expect, test } from "vitest";
import { lineOf, readingsOf } from "./readings.ts";

const estimateOf = (texts: string, input: Partial<EstimateInput> = {}) =>
  parseEstimate({ dimension: "torso-length", readings: readingsOf(texts), ...input });

describe("an estimate from the table of defaults", () => {
  // Mean 437; deviations −7, −1, 8 with squares 49 + 1 + 64 = 114, so s² = 57.
  const estimate = estimateOf("430 mm, 436 mm, 445 mm");
  // Self, tape, length along the body: handling 6, finding 5, lasting 5, eight degrees of freedom each.
  // Rounding to 1 mm: 1/12. Method and sample pooled: (8 · (36 + 1/12) + 2 · 57) / 10.
  const repeat = (8 * (36 + 1 / 12) + 2 * 57) / 10 - 1 / 12;
  // The tape may be wrong by 3 mm in a metre, rectangular.
  const scale = (0.003 * 437) ** 2 / 3;

  test("is the mean with the root of all variances", () => {
    expect(estimate.mm).toBe(437);
    // 63.995129222…: recomputed with R 4.2.2
    expect(estimate.uncertaintyMm).toBeCloseTo(Math.sqrt(repeat / 3 + 1 / 36 + 25 + 25 + scale), 12);
    expect(estimate.uncertaintyMm).toBeCloseTo(7.99969557059656, 12);
  });

  test("has the degrees of freedom and the interval of GUM G.4", () => {
    // Recomputed with R 4.2.2: u⁴ over the sum of u⁴/ν, and qt(0.975, ν).
    expect(estimate.degreesOfFreedom).toBeCloseTo(23.50528735471155, 10);
    expect(estimate.coverage.factor).toBeCloseTo(2.06619971655025, 11);
    expect(estimate.coverage.probability).toBe(0.95);
    expect(estimate.coverage.lowerMm).toBeCloseTo(437 - 2.06619971655025 * 7.99969557059656, 9);
    expect(estimate.coverage.upperMm).toBeCloseTo(437 + 2.06619971655025 * 7.99969557059656, 9);
  });

  test("has another interval for another probability", () => {
    const wide = estimateOf("430 mm, 436 mm, 445 mm", { coverageProbability: 0.99 });
    // qt(0.995, ν), recomputed with R 4.2.2.
    expect(wide.coverage.factor).toBeCloseTo(2.80196344027852, 11);
    expect(wide.uncertaintyMm).toBe(estimate.uncertaintyMm);
  });

  test("shows its budget line by line", () => {
    expect(
      estimate.budget.map(({ source, type, averagesOut, basis }) => [source, type, averagesOut, basis]),
    ).toEqual([
      ["repeatability", "A", true, "readings-and-assumption"],
      ["resolution", "B", true, "readings"],
      ["method-bias", "B", false, "assumption"],
      ["tool-scale", "B", false, "assumption"],
      ["landmark-finding", "B", false, "assumption"],
    ]);
    expect(lineOf(estimate, "repeatability").uncertaintyMm).toBeCloseTo(Math.sqrt(repeat / 3), 12);
    expect(lineOf(estimate, "repeatability").degreesOfFreedom).toBe(10);
    expect(lineOf(estimate, "repeatability").share).toBeCloseTo(repeat / 3 / 63.995129222222, 10);
    expect(lineOf(estimate, "tool-scale")).toMatchObject({
      distribution: "rectangular",
      degreesOfFreedom: 8,
    });
    expect(lineOf(estimate, "resolution").degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
  });

  test("says how the readings scatter, and what part of it averages out", () => {
    expect(estimate.spread.sampleMm).toBeCloseTo(Math.sqrt(57), 12);
    expect(estimate.spread.pooledMm).toBeCloseTo(Math.sqrt(repeat + 1 / 12), 12);
    expect(estimate.spread.degreesOfFreedom).toBe(10);
    expect(estimate.lastingMm).toBeCloseTo(Math.sqrt(50 + scale), 12);
    expect(estimate.perReadingMm).toBeCloseTo(Math.sqrt(repeat + 1 / 12), 12);
  });

  test("keeps the readings and names what was assumed", () => {
    expect(estimate.readings.map(({ text }) => text)).toEqual(["430 mm", "436 mm", "445 mm"]);
    expect(estimate.conditions).toEqual({
      tool: "tape",
      measuredBy: "self",
      landmarksFoundAfresh: false,
      ruleLengthMm: 300,
      assumed: ["tool", "measured-by", "landmarks-found-afresh"],
    });
  });
});

describe("how readings are taken", () => {
  test("a slip in finding the bones stays, unless they are found afresh", () => {
    const input = { conditions: { tool: "tape", measuredBy: "self", landmarksFoundAfresh: true } } as const;
    const afresh = estimateOf("430 mm, 436 mm, 445 mm", input);
    // The method now scatters by 36 + 25; handling and finding share what is pooled as 36 to 25.
    const repeat = (8 * (61 + 1 / 12) + 2 * 57) / 10 - 1 / 12;
    expect(lineOf(afresh, "repeatability").uncertaintyMm).toBeCloseTo(
      Math.sqrt(((36 / 61) * repeat) / 3),
      12,
    );
    expect(lineOf(afresh, "landmark-finding").uncertaintyMm).toBeCloseTo(
      Math.sqrt(((25 / 61) * repeat) / 3),
      12,
    );
    expect(lineOf(afresh, "landmark-finding")).toMatchObject({ type: "A", averagesOut: true });
    expect(afresh.lastingMm).toBeCloseTo(Math.sqrt(25 + (0.003 * 437) ** 2 / 3), 12);
  });

  test("a cord adds two transfers to a reading and its stretch to all", () => {
    const estimate = parseEstimate({
      dimension: "hip-belt-girth",
      readings: readingsOf("900 mm"),
      conditions: { tool: "cord-and-ruler", measuredBy: "helper" },
    });
    // 6² + 2 · 2² + 1/12 + 5² + 3² + (0.01 · 900)²/3 = 36 + 8 + 1/12 + 25 + 9 + 27
    expect(estimate.uncertaintyMm).toBeCloseTo(Math.sqrt(105 + 1 / 12), 12);
    // Recomputed with R 4.2.2.
    expect(estimate.degreesOfFreedom).toBeCloseTo(26.20589010844129, 10);
    expect(lineOf(estimate, "cord-transfer").uncertaintyMm).toBeCloseTo(Math.sqrt(8), 12);
  });

  test.each([
    ["299 mm", 0],
    ["300 mm", 0],
    ["301 mm", 1],
    ["601 mm", 2],
  ])("a rule of 300 mm laid along %s has %i joints of 2 mm", (text, joints) => {
    const estimate = estimateOf(text, { conditions: { tool: "short-rule" } });
    const found = estimate.budget.find((line) => line.source === "rule-joints");
    expect(found === undefined ? 0 : found.uncertaintyMm).toBeCloseTo(2 * Math.sqrt(joints), 12);
  });

  test("a longer rule has fewer joints", () => {
    const estimate = estimateOf("601 mm", { conditions: { tool: "short-rule", ruleLengthMm: 700 } });
    expect(estimate.budget.map(({ source }) => source)).not.toContain("rule-joints");
  });

  test("one reading leans on the method alone, which is no evaluation of type A", () => {
    const alone = estimateOf("437 mm");
    expect(alone.spread).toEqual({ pooledMm: Math.sqrt(36 + 1 / 12), degreesOfFreedom: 8 });
    expect(lineOf(alone, "repeatability")).toMatchObject({
      type: "B",
      basis: "assumption",
      uncertaintyMm: 6,
    });
  });
});

describe("an estimate from a stated error", () => {
  const error = { biasMm: 6, repeatMm: 8, resolutionMm: 5 };

  test("takes it as known", () => {
    const estimate = estimateOf("430 mm, 436 mm, 445 mm", { error });
    // 6² + 8²/3 + 5²/12/3; the scatter of 8 mm parts roundings to 5 mm: (6/π²) exp(−(16π/5)²) = 10⁻⁴⁴.
    expect(estimate.uncertaintyMm).toBeCloseTo(Math.sqrt(36 + 64 / 3 + 25 / 36), 12);
    expect(estimate.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
    // Upper 2.5 % point of the normal distribution, recomputed with R 4.2.2.
    expect(estimate.coverage.factor).toBeCloseTo(1.95996398454005, 12);
    expect(estimate.lastingMm).toBe(6);
    expect(estimate.perReadingMm).toBeCloseTo(Math.sqrt(64 + 25 / 12), 12);
  });

  test("says so in every line, and assumes nothing", () => {
    const estimate = estimateOf("430 mm, 436 mm, 445 mm", { error });
    expect(estimate.budget.map(({ source, type, basis }) => [source, type, basis])).toEqual([
      ["repeatability", "B", "stated"],
      ["resolution", "B", "stated"],
      ["stated-bias", "B", "stated"],
    ]);
    expect(estimate.conditions.assumed).toEqual([]);
  });

  test("averages a rounding away only as far as scatter parts it", () => {
    const still = estimateOf("430 mm, 430 mm, 430 mm", {
      error: { biasMm: 0, repeatMm: 0, resolutionMm: 6 },
    });
    expect(still.uncertaintyMm).toBeCloseTo(Math.sqrt(3), 14);
    expect(lineOf(still, "resolution").averagesOut).toBe(false);
    const moved = estimateOf("430 mm, 430 mm, 430 mm", {
      error: { biasMm: 0, repeatMm: 6, resolutionMm: 6 },
    });
    expect(moved.uncertaintyMm).toBeCloseTo(Math.sqrt(36 / 3 + 3 / 3), 12);
    expect(lineOf(moved, "resolution").averagesOut).toBe(true);
  });

  test("of nothing leaves no uncertainty and no line", () => {
    const sure = estimateOf("430 mm, 450 mm", { error: { biasMm: 0, repeatMm: 0, resolutionMm: 0 } });
    expect(sure).toMatchObject({ mm: 440, uncertaintyMm: 0, budget: [], lastingMm: 0, perReadingMm: 0 });
    expect(sure.coverage).toMatchObject({ lowerMm: 440, upperMm: 440 });
  });

  test("keeps every digit of a small scatter beside a coarse step", () => {
    const estimate = estimateOf("430 mm, 430 mm", {
      error: { biasMm: 0, repeatMm: 1e-6, resolutionMm: 1e5 },
    });
    expect(lineOf(estimate, "repeatability").uncertaintyMm).toBeCloseTo(1e-6 / Math.SQRT2, 18);
  });
});

describe("a table of the caller's own", () => {
  const still = { handlingMm: 0, findingMm: 0, lastingMm: 0 };
  const none = { scaleHalfWidth: 0, transferMm: 0, jointMm: 0 };
  const defaults = {
    ...errorDefaults,
    hands: {
      "length along the body": { self: still, helper: still },
      girth: { self: still, helper: still },
      "straight height": { self: still, helper: still },
      breadth: { self: still, helper: still },
    },
    tools: { tape: none, "cord-and-ruler": none, "short-rule": none },
    basis: "common-practice",
  } as const;

  test("of zeros leaves what the readings show", () => {
    const estimate = estimateOf("430 mm, 436 mm, 445 mm", { defaults });
    // A method without scatter shows none; pooled: 2 · 57 / 10 = 11.4, of which 1/12 is rounding.
    expect(lineOf(estimate, "repeatability")).toMatchObject({ type: "A", basis: "readings" });
    expect(lineOf(estimate, "repeatability").uncertaintyMm).toBeCloseTo(Math.sqrt((11.4 - 1 / 12) / 3), 9);
  });

  test("of zeros leaves the rounding where the readings agree", () => {
    const estimate = estimateOf("430 mm, 430 mm, 430 mm", { defaults });
    expect(estimate.budget.map(({ source }) => source)).toEqual(["resolution"]);
    expect(estimate.uncertaintyMm).toBeCloseTo(1 / Math.sqrt(12), 14);
  });

  test("is named as the basis of its lines", () => {
    const estimate = estimateOf("430 mm", { defaults: { ...errorDefaults, basis: "common-practice" } });
    expect(lineOf(estimate, "method-bias").basis).toBe("common-practice");
  });

  test("known without doubt has no sample pooled into it", () => {
    const known = { ...errorDefaults, degreesOfFreedom: Number.POSITIVE_INFINITY };
    const estimate = estimateOf("430 mm, 436 mm, 445 mm", { defaults: known });
    expect(lineOf(estimate, "repeatability")).toMatchObject({ type: "B", basis: "assumption" });
    expect(lineOf(estimate, "repeatability").uncertaintyMm).toBeCloseTo(6 / Math.sqrt(3), 12);
    expect(estimate.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("the step that readings are rounded to", () => {
  test("is the one they are written to", () => {
    const estimate = estimateOf("43 cm, 44 cm, 46 cm");
    // 100/12 over three readings that fall on marks of their own.
    expect(lineOf(estimate, "resolution").uncertaintyMm ** 2).toBeCloseTo(100 / 12 / 3, 1);
  });

  test("is the coarser one that their last digits betray", () => {
    const fine = estimateOf("43.1 cm, 44.3 cm, 45.2 cm");
    const coarse = estimateOf("43.0 cm, 44.0 cm, 45.0 cm");
    expect(lineOf(fine, "resolution").uncertaintyMm ** 2).toBeCloseTo(1 / 36, 9);
    expect(lineOf(coarse, "resolution").uncertaintyMm ** 2).toBeGreaterThan(100 / 36);
  });

  test("of the coarser side of the tape counts where both are used", () => {
    const mixed = estimateOf("17 in, 17 in, 43.2 cm", {
      error: { biasMm: 0, repeatMm: 100, resolutionMm: 0 },
    });
    expect(mixed.uncertaintyMm).toBeCloseTo(100 / Math.sqrt(3), 12);
    const byTable = estimateOf("17 in, 17 in, 43.2 cm");
    expect(lineOf(byTable, "resolution").uncertaintyMm ** 2).toBeGreaterThan(25.4 ** 2 / 36);
  });
});

describe("what a user may have got wrong is reported", () => {
  const outcomeOf = (input: object) =>
    // Input comes from files, whose shape no compiler has seen.
    safeEstimate({
      dimension: "torso-length",
      readings: readingsOf("43 cm"),
      path: ["people", 3],
      ...input,
    } as EstimateInput);

  test("no readings", () => {
    const outcome = outcomeOf({ readings: [] });
    expect(outcome.ok).toBe(false);
    expect(outcome.issues).toMatchObject([{ code: "readings-missing", path: ["people", 3] }]);
  });

  test.each<[object | null | string, string[]]>([
    [{ biasMm: Number.NaN, repeatMm: 1, resolutionMm: 1 }, ["biasMm: NaN"]],
    [{ biasMm: 1, repeatMm: -1, resolutionMm: 1 }, ["repeatMm: -1"]],
    [{ biasMm: 1, repeatMm: 1, resolutionMm: "5" }, ["resolutionMm: 5"]],
    [{ biasMm: 1, repeatMm: 1 }, ["resolutionMm: nothing"]],
    [
      { biasMm: Number.POSITIVE_INFINITY, repeatMm: null, resolutionMm: 1e7 },
      ["biasMm: Infinity", "repeatMm: null", "resolutionMm: 10000000"],
    ],
    [{ biasMm: 1e200, repeatMm: 0, resolutionMm: 0 }, ["biasMm: 1e+200"]],
    [
      { biasMm: [1], repeatMm: {}, resolutionMm: true },
      ["biasMm: a list of 1", "repeatMm: an object", "resolutionMm: true"],
    ],
    [null, ["biasMm: nothing", "repeatMm: nothing", "resolutionMm: nothing"]],
    ["six", ["biasMm: nothing", "repeatMm: nothing", "resolutionMm: nothing"]],
  ])("a stated error of %j", (error, faults) => {
    const outcome = outcomeOf({ error });
    expect(outcome.ok).toBe(false);
    expect(outcome.issues.map(({ facts, received }) => `${facts.part}: ${received}`)).toEqual(faults);
    for (const { code, path, facts, expected } of outcome.issues) {
      expect([code, path]).toEqual(["error-model-invalid", ["people", 3, "error", facts.part]]);
      expect(expected).toBe("a number of millimetres from 0 to 1000000");
    }
  });

  test.each<[unknown, string[]]>([
    [{ tool: "laser" }, ["tool cannot be laser (tape, cord-and-ruler or short-rule)"]],
    [{ tool: null }, ["tool cannot be null (tape, cord-and-ruler or short-rule)"]],
    [{ tool: "toString" }, ["tool cannot be toString (tape, cord-and-ruler or short-rule)"]],
    [{ measuredBy: "friend" }, ["measuredBy cannot be friend (self or helper)"]],
    [{ landmarksFoundAfresh: "false" }, ["landmarksFoundAfresh cannot be false (true or false)"]],
    [{ landmarksFoundAfresh: 1 }, ["landmarksFoundAfresh cannot be 1 (true or false)"]],
    [{ ruleLengthMm: 0 }, ["ruleLengthMm cannot be 0 (a finite number of millimetres, 10 or more)"]],
    [{ ruleLengthMm: "300" }, ["ruleLengthMm cannot be 300 (a finite number of millimetres, 10 or more)"]],
    [
      { ruleLengthMm: 1e-300, tool: "short-rule" },
      ["ruleLengthMm cannot be 1e-300 (a finite number of millimetres, 10 or more)"],
    ],
    [
      { tool: 1, measuredBy: 2 },
      ["tool cannot be 1 (tape, cord-and-ruler or short-rule)", "measuredBy cannot be 2 (self or helper)"],
    ],
  ])("conditions of %j", (conditions, messages) => {
    const outcome = outcomeOf({ conditions });
    expect(outcome.ok).toBe(false);
    expect(outcome.issues.map(({ message, expected }) => `${message} (${expected})`)).toEqual(messages);
    for (const { code, path, facts } of outcome.issues) {
      expect([code, path]).toEqual(["conditions-invalid", ["people", 3, "conditions", facts.part]]);
    }
  });

  test.each([null, "self", 5, [], [["tool", "tape"]]])("conditions that are %j", (conditions) => {
    const outcome = outcomeOf({ conditions });
    expect(outcome.ok).toBe(false);
    expect(outcome.issues).toMatchObject([{ code: "conditions-invalid", path: ["people", 3, "conditions"] }]);
    expect(outcome.issues[0]?.expected).toBe("an object, such as { tool: “tape” }");
  });

  test("everything at once, not the first of it", () => {
    const outcome = outcomeOf({ readings: [], error: {}, conditions: { tool: 1 } });
    expect(outcome.issues).toHaveLength(5);
  });
});

describe("a programmer's mistake throws", () => {
  const reading = parseLength("43 cm");
  const attempt = (input: object) => () =>
    safeEstimate({ dimension: "torso-length", readings: [reading], ...input } as EstimateInput);
  const withReading = (change: object) => ({
    readings: [reading, { ...reading, ...change } as LengthReading],
  });

  test.each<[object, string]>([
    [{ coverageProbability: 0 }, "coverageProbability must be"],
    [{ coverageProbability: 1 }, "coverageProbability must be"],
    [{ coverageProbability: Number.NaN }, "coverageProbability must be"],
    [{ coverageProbability: "0.95" }, "coverageProbability must be"],
    [{ dimension: "leg-length" }, "must be"],
    [{ dimension: "leg-length", error: { biasMm: 0, repeatMm: 0, resolutionMm: 0 } }, "must be"],
    [{ readings: "43 cm" }, "readings must be a list of readings, but received 43 cm"],
    [{ readings: undefined }, "readings must be a list of readings, but received nothing"],
    [{ readings: [null] }, "readings[0] must be a reading"],
    [{ readings: ["43 cm"] }, "readings[0] must be a reading"],
    [withReading({ mm: Number.NaN }), "readings[1].mm must be"],
    [withReading({ mm: 0 }), "readings[1].mm must be"],
    [withReading({ mm: -430 }), "readings[1].mm must be"],
    [withReading({ mm: "430" }), "readings[1].mm must be"],
    [withReading({ mm: 1e200 }), "readings[1].mm must be"],
    [withReading({ stepMm: Number.NaN }), "readings[1].stepMm must be"],
    [withReading({ stepMm: -1 }), "readings[1].stepMm must be"],
    [withReading({ unit: "furlong" }), "unit must be"],
    [{ defaults: { ...errorDefaults, degreesOfFreedom: 2 } }, "defaults.degreesOfFreedom must be"],
  ])("%j", (input, message) => {
    expect(attempt(input)).toThrow(InvalidArgumentError);
    expect(attempt(input)).toThrow(message);
  });
});

describe("readings at the ends of what can be written", () => {
  test.each(["0.001 mm", "1000000000 mm", `0.${"0".repeat(58)}1 mm`, `${"9".repeat(60)} m`])("%s", (text) => {
    for (const error of [undefined, { biasMm: 6, repeatMm: 0, resolutionMm: 0 }]) {
      for (const texts of [text, `${text}, ${text}, ${text}`, `${text}, 43 cm, 17 in, 430.5 mm`]) {
        const estimate = estimateOf(texts, error === undefined ? {} : { error });
        const { mm, uncertaintyMm, coverage, lastingMm, perReadingMm } = estimate;
        const figures = [mm, uncertaintyMm, coverage.lowerMm, coverage.upperMm, lastingMm, perReadingMm];
        expect(figures.every(Number.isFinite)).toBe(true);
        const shares = estimate.budget.reduce((sum, line) => sum + line.share, 0);
        expect(shares).toBeCloseTo(1, 12);
      }
    }
  });

  test("a probability next to 1 still has an interval", () => {
    const { coverage } = estimateOf("43 cm", { coverageProbability: 1 - 2 ** -53 });
    expect(Number.isFinite(coverage.upperMm)).toBe(true);
    const sure = estimateOf("43 cm", {
      coverageProbability: 1 - 2 ** -53,
      error: { biasMm: 0, repeatMm: 0, resolutionMm: 0 },
    });
    expect(sure.coverage.upperMm).toBe(430);
  });

  test("a probability next to 0 has a narrow one", () => {
    expect(estimateOf("43 cm", { coverageProbability: 1e-300 }).coverage).toMatchObject({
      factor: 0,
      lowerMm: 430,
    });
  });
});

describe("parseEstimate", () => {
  test("throws the issues of safeEstimate", () => {
    expect(() => parseEstimate({ dimension: "torso-length", readings: [] })).toThrow(IssuesError);
    expect(() => parseEstimate({ dimension: "torso-length", readings: [] })).toThrow(
      "there is no reading of the torso length that can be used",
    );
  });

  test("gives what safeEstimate holds, questions or not", () => {
    const input = { dimension: "torso-length", readings: readingsOf("17 cm, 43 cm") } as const;
    const outcome = safeEstimate(input);
    expect(outcome.ok && outcome.value).toEqual(parseEstimate(input));
    expect(outcome.issues.length).toBeGreaterThan(0);
  });
});

import { fc, test } from "@fast-check/vitest";
import { type ExpectedReturns, expectedReturns, type ReturnsRequest } from "@tapewise/afterwards";
import { parseChart, type SizeChart } from "@tapewise/charts";
import { chartCoverage, choiceErrors } from "@tapewise/coverage";
import { atLeast, atMost, interval } from "@tapewise/intervals";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { bivariateNormalBox, normalIntervalProbability } from "@tapewise/statistics";
import { describe, expect } from "vitest";
import { chartOf, crew, torsoChart } from "../../coverage/crew.ts";

const measuring = { conditions: { measuredBy: "self" }, readings: 3, stepMm: 5 } as const;
const returns = (
  chart: SizeChart,
  offsets: ReturnsRequest["offsets"],
  more: Partial<ReturnsRequest> = {},
): ExpectedReturns => unwrap(expectedReturns(chart, crew(0.3), { measuring, offsets, ...more }));
const halves = chartOf({ S: { "torso-length": atMost(430) }, M: { "torso-length": atLeast(430) } });
/** The crew's torso lengths: mean 430 mm, standard deviation 25 mm. */
const [mean, sd] = [430, 25];

/** Shares on different sides: length below `cut` and estimate above `chosen`, or the other way about. */
function apart(u: number, cut: number, chosen: number): number {
  const all = Number.POSITIVE_INFINITY;
  const [a, b, r] = [(cut - mean) / sd, (chosen - mean) / Math.hypot(sd, u), sd / Math.hypot(sd, u)];
  return bivariateNormalBox(-all, a, b, all, r) + bivariateNormalBox(a, all, -all, b, r);
}

describe("one dimension", () => {
  test("two sizes that touch: the share on different sides of the true and of the printed cut", () => {
    const { printed, relabelled, saved, judged, method, standardError } = returns(halves, {
      "torso-length": { mm: 12 },
    });
    const u = judged[0]?.uncertaintyMm ?? 0;
    expect(u).toBeGreaterThan(3);
    expect(method).toBe("summed");
    expect(standardError).toEqual({ printed: 0, relabelled: 0, saved: 0 });
    expect(printed.exchanged).toBeCloseTo(apart(u, 442, 430), 5);
    expect(relabelled.exchanged).toBeCloseTo(apart(u, 442, 442), 5);
    expect(saved).toBe(printed.exchanged - relabelled.exchanged);
    for (const { kept, exchanged, sentBack } of [printed, relabelled]) {
      expect(kept + exchanged + sentBack).toBeCloseTo(1, 12);
      expect(sentBack).toBeCloseTo(0, 12);
    }
  });

  test("an offset that is uncertain and 0 on average is an offset of the cut: the same as a wider error, by symmetry", () => {
    // The cut is at 430 + D with D ~ N(0, 10²): length less D and estimate are bivariate normal.
    const { printed, relabelled, judged } = returns(halves, { "torso-length": { mm: 0, uncertaintyMm: 10 } });
    const u = judged[0]?.uncertaintyMm ?? 0;
    const r = sd ** 2 / (Math.hypot(sd, 10) * Math.hypot(sd, u));
    // On different sides of the means with probability acos(r)/π (Sheppard 1899).
    expect(printed.exchanged).toBeCloseTo(Math.acos(r) / Math.PI, 4);
    expect(relabelled.exchanged).toBeCloseTo(printed.exchanged, 12);
  });

  test("nobody outside the moved ranges is served", () => {
    const chart = torsoChart({ S: [390, 430], M: [430, 470] });
    const { printed, relabelled } = returns(chart, { "torso-length": { mm: 20 } });
    const served = normalIntervalProbability((410 - mean) / sd, (490 - mean) / sd);
    expect(printed.sentBack).toBeCloseTo(1 - served, 6);
    expect(relabelled.sentBack).toBeCloseTo(1 - served, 6);
  });

  test.each([
    ["touching", torsoChart({ S: [390, 420], M: [420, 450], L: [450, 480] })],
    ["overlapping", torsoChart({ S: [380, 425], M: [415, 455], L: [445, 480] })],
    ["with a gap", torsoChart({ S: [390, 420], M: [428, 450] })],
  ])("without an offset it is what the choice errors say: %s", (_, chart) => {
    const errors = unwrap(choiceErrors(chart, crew(0.3), measuring));
    const { printed, relabelled, saved } = returns(chart, {});
    expect(printed.exchanged).toBeCloseTo(errors.wrong, 4);
    expect(printed.sentBack).toBeCloseTo(errors.unserved, 6);
    expect([relabelled, saved]).toEqual([printed, 0]);
  });

  test("a chart that is moved as a whole is the chart printed anew", () => {
    const moved = torsoChart({ S: [405, 435], M: [435, 465], L: [465, 495] });
    const { relabelled } = returns(torsoChart({ S: [390, 420], M: [420, 450], L: [450, 480] }), {
      "torso-length": { mm: 15 },
    });
    expect(relabelled.exchanged).toBeCloseTo(unwrap(choiceErrors(moved, crew(0.3), measuring)).wrong, 4);
  });
});

describe("a size that states nothing", () => {
  // By hand: of N(430, 25²) outside 385 to 415 lies 1 less Φ(−0.6) − Φ(−1.8); one size has nothing to exchange it for.
  test("fits nobody, as when it is not there", () => {
    const chart = chartOf({ S: {}, M: { "torso-length": interval(385, 415) } });
    const { printed } = returns(chart, {});
    expect(printed.sentBack).toBeCloseTo(1 - normalIntervalProbability(-1.8, -0.6), 6);
    expect(printed.exchanged).toBeCloseTo(0, 9);
    expect(printed.sentBack).toBeCloseTo(unwrap(chartCoverage(chart, crew(0.3))).byNone.share, 6);
  });

  test("of the dimension that a chart goes by first fits nobody, whatever else it states", () => {
    const hips = { "hip-girth": interval(0, 5000) };
    const one = { M: { "torso-length": interval(385, 415), ...hips } };
    const draw = { draw: { people: 300, seed: 3 } };
    expect(returns(chartOf({ S: hips, ...one }), {}, draw)).toEqual(returns(chartOf(one), {}, draw));
  });

  const length = fc.integer({ min: 380, max: 480 });
  test.prop(
    [fc.array(fc.tuple(length, fc.integer({ min: 10, max: 60 })), { minLength: 1, maxLength: 3 }), fc.nat(3)],
    {
      numRuns: 12,
    },
  )("law: adding a size that states nothing changes no share", (ranges, place) => {
    const sizes = ranges.map(
      ([from, span], k) => [`S${k}`, { "torso-length": interval(from, from + span) }] as const,
    );
    const offsets = { "torso-length": { mm: 12 } };
    const { printed, relabelled } = returns(
      chartOf(Object.fromEntries([...sizes.slice(0, place), ["none", {}], ...sizes.slice(place)])),
      offsets,
    );
    const without = returns(chartOf(Object.fromEntries(sizes)), offsets);
    expect({ printed, relabelled }).toEqual({ printed: without.printed, relabelled: without.relabelled });
  });
});

describe("several dimensions", () => {
  const both = chartOf({
    S: { "torso-length": atMost(430), "hip-girth": interval(0, 5000) },
    M: { "torso-length": atLeast(430), "hip-girth": interval(0, 5000) },
  });
  const draw = { people: 1500, seed: 3 };

  test("people are drawn, and a dimension that everybody fits changes nothing within the error of drawing", () => {
    const { printed, relabelled, saved, judged, method, standardError } = returns(
      both,
      { "torso-length": { mm: 12 } },
      { draw },
    );
    expect(method).toBe("drawn");
    const u = judged[0]?.uncertaintyMm ?? 0;
    expect(judged.map(({ dimension }) => dimension)).toEqual(["torso-length", "hip-girth"]);
    const [was, is] = [apart(u, 442, 430), apart(u, 442, 442)];
    expect(standardError.printed).toBeCloseTo(
      Math.sqrt((printed.exchanged * (1 - printed.exchanged)) / 1500),
      12,
    );
    expect(Math.abs(printed.exchanged - was)).toBeLessThan(4 * standardError.printed);
    expect(Math.abs(relabelled.exchanged - is)).toBeLessThan(4 * standardError.relabelled);
    expect(Math.abs(saved - (was - is))).toBeLessThan(4 * standardError.saved);
    expect(standardError.saved).toBeGreaterThan(0);
    expect(printed.sentBack).toBe(0);
  });

  test("the same seed draws the same people", () => {
    const offsets = { "torso-length": { mm: 12, uncertaintyMm: 4 } };
    const small = { draw: { people: 100, seed: 5 } };
    expect(returns(both, offsets, small)).toEqual(returns(both, offsets, small));
  });
});

describe("what is asked", () => {
  test.each([
    [{ "torso-length": { mm: Number.NaN } }],
    [{ "torso-length": { mm: 1, uncertaintyMm: -1 } }],
    [{ "torso-length": { mm: 1, uncertaintyMm: Number.POSITIVE_INFINITY } }],
  ])("%j is no offset", (offsets) => {
    expect(() => returns(halves, offsets)).toThrow(InvalidArgumentError);
  });

  test("a chart that nobody can be held against is an issue", () => {
    const chart = chartOf({ S: { stature: atMost(1700) } });
    expect(expectedReturns(chart, crew(), { measuring, offsets: {} }).issues.map(({ code }) => code)).toEqual(
      ["coverage-nothing-judged"],
    );
  });
});

describe("offsets that are not used", () => {
  test("of a dimension that the chart is not judged by are told, and change nothing", () => {
    const offsets = { "torso-length": { mm: 12 }, stature: { mm: 30 } };
    const outcome = expectedReturns(halves, crew(0.3), { measuring, offsets });
    expect(outcome.issues.map(({ code, severity, path }) => [code, severity, path])).toEqual([
      ["returns-offset-not-judged", "warning", ["offsets", "stature"]],
    ]);
    expect(outcome.issues[0]?.message).toContain(halves.chart);
    expect(unwrap(outcome)).toEqual(returns(halves, { "torso-length": { mm: 12 } }));
  });

  test("a girth that the chart calls hip is judged as it is read, and its offset goes by either name", () => {
    const hips = parseChart("size,hip (cm)\nS,60-100\nM,100-140\n", { chart: "Teaspoon 35" });
    const as = (offsets: ReturnsRequest["offsets"]) =>
      expectedReturns(hips, crew(0.3), { measuring, offsets });
    const [charted, read] = [
      as({ "unstated-hip-girth": { mm: 20 } }),
      as({ "hip-girth": { mm: 20 }, "hip-belt-girth": { mm: 20 } }),
    ];
    expect(unwrap(charted).judged.map((one) => one.charted)).toEqual(["unstated-hip-girth"]);
    expect(charted.issues.map(({ code }) => code)).toEqual(["coverage-girth-taken-as"]);
    expect(unwrap(charted).saved).toBeGreaterThan(0);
    expect(unwrap(read)).toEqual(unwrap(charted));
    // The crew has one of the two girths; the other name is of nothing that is judged.
    expect(read.issues.map(({ code }) => code)).toEqual([
      "coverage-girth-taken-as",
      "returns-offset-not-judged",
    ]);
  });

  test.each([
    [{ mm: Number.NaN }, 'offsets["torso-length"].mm', Number.NaN],
    [{ mm: 1, uncertaintyMm: -2 }, 'offsets["torso-length"].uncertaintyMm', -2],
  ])("a bad figure is named as what it is: %j", (offset, argument, received) => {
    const attempt = (): unknown => returns(halves, { "torso-length": offset });
    expect(attempt).toThrow(InvalidArgumentError);
    expect(attempt).toThrow(`${argument} `);
    expect(attempt).toThrow(String(received));
  });
});

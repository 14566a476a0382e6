import { type Coverage, chartCoverage, coverageIssues } from "@tapewise/coverage";
import { atLeast, atMost, interval } from "@tapewise/intervals";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { mixtureJoint } from "@tapewise/population";
import { describe, expect, test } from "vitest";
import { chartOf, counted, crew, rangesOf, torsoChart } from "./crew.ts";

const cover = (...call: Parameters<typeof chartCoverage>): Coverage => unwrap(chartCoverage(...call));
// pnorm(2) - pnorm(0) and pnorm(-2): recomputed with R 4.2.2.
const TWO_SDS = 0.4772498680518208;
const BEYOND = 0.02275013194817921;

describe("one dimension", () => {
  // Two standard deviations to either side of the mean.
  const chart = torsoChart({ S: [380, 430], M: [430, 480] });

  test("shares are those of the normal distribution", () => {
    const { sizes, served, byOne, bySeveral, byNone, outside } = cover(chart, crew());
    for (const size of sizes) expect(size.served.share).toBeCloseTo(TWO_SDS, 14);
    expect(served.share).toBeCloseTo(2 * TWO_SDS, 14);
    expect(byOne.share).toBe(served.share);
    expect(bySeveral.share).toBe(0);
    expect(byNone.share).toBeCloseTo(2 * BEYOND, 14);
    expect(outside[0]?.below.share).toBeCloseTo(BEYOND, 14);
    expect(outside[0]?.above.share).toBeCloseTo(BEYOND, 14);
  });

  test("a gap is told with its ends, and an overlap is served by several", () => {
    const gappy = cover(
      torsoChart({ S: [380, 430], M: [440, 480], L: [460, 500] }),
      counted([435, 470, 500, 501]),
    );
    expect(gappy.outside[0]?.gaps).toEqual([
      { within: { from: 430, to: 440, fromClosed: false, toClosed: false }, people: { share: 0.25 } },
    ]);
    expect(gappy.bySeveral.share).toBe(0.25);
    expect(gappy.byOne.share).toBe(0.25);
    expect(gappy.outside[0]?.above.share).toBe(0.25);
    expect(gappy.sizes.map(({ only }) => only.share)).toEqual([0, 0, 0.25]);
  });

  test("both sizes hold somebody who stands on the end that they share", () => {
    const { sizes, byOne, bySeveral } = cover(chart, counted([380, 430, 430, 480]));
    expect(sizes.map(({ served }) => served.share)).toEqual([0.75, 0.75]);
    expect([byOne.share, bySeveral.share]).toEqual([0.5, 0.5]);
  });

  test("open ends leave nobody beside them", () => {
    const { served, outside } = cover(
      chartOf({ S: { "torso-length": atMost(430) }, M: { "torso-length": atLeast(430) } }),
      crew(),
    );
    expect(served.share).toBeCloseTo(1, 15);
    expect(outside[0]).toEqual({
      dimension: "torso-length",
      below: { share: 0 },
      gaps: [],
      above: { share: 0 },
    });
  });
});

describe("several dimensions", () => {
  test("a quadrant of a bivariate normal: 1/4 + asin(ρ) / 2π (Sheppard 1899), a third for ρ = 1/2", () => {
    const chart = chartOf({ S: { "torso-length": atMost(430), "hip-girth": atMost(1000) } });
    expect(cover(chart, crew(0.5)).served.share).toBeCloseTo(1 / 3, 13);
    expect(cover(chart, crew(0)).served.share).toBeCloseTo(1 / 4, 13);
  });

  test("boxes that overlap are counted once", () => {
    const [a, b] = [
      { "torso-length": interval(400, 440), "hip-girth": interval(900, 1020) },
      { "torso-length": interval(420, 470), "hip-girth": interval(960, 1100) },
    ];
    const both = { "torso-length": interval(420, 440), "hip-girth": interval(960, 1020) };
    const people = crew(0.4);
    const [pa, pb, pab] = [a, b, both].map((box) => people.boxProbability(box).probability);
    const { served, bySeveral, sizes } = cover(chartOf({ S: a, M: b }), people);
    expect(bySeveral.share).toBeCloseTo(pab ?? 0, 13);
    expect(served.share).toBeCloseTo((pa ?? 0) + (pb ?? 0) - (pab ?? 0), 13);
    expect(sizes.map((size) => size.only.share)[0]).toBeCloseTo((pa ?? 0) - (pab ?? 0), 13);
  });

  test("a size that says nothing of a dimension sets no bound there", () => {
    const chart = chartOf({
      S: { "torso-length": interval(380, 430) },
      M: { "torso-length": interval(430, 480), "hip-girth": atMost(1000) },
    });
    const { sizes } = cover(chart, crew());
    expect(sizes[0]?.served.share).toBeCloseTo(TWO_SDS, 14);
    expect(sizes[1]?.served.share).toBeCloseTo(TWO_SDS / 2, 14);
  });

  test("hip belts of their own serve whom one of them fits, with any size", () => {
    const chart = chartOf(
      { S: { "torso-length": interval(380, 430) } },
      {
        belts: [
          { name: "1", ranges: rangesOf({ "hip-girth": interval(840, 1000) }) },
          { name: "2", ranges: rangesOf({ "hip-girth": interval(920, 1160) }) },
        ],
      },
    );
    const { served, outside } = cover(chart, crew());
    // The belts reach from two standard deviations below the mean to two above it; the dimensions are independent.
    expect(served.share).toBeCloseTo(TWO_SDS * 2 * TWO_SDS, 13);
    expect(outside.map(({ dimension }) => dimension)).toEqual(["torso-length", "hip-girth"]);
  });

  test("a belt that can be swapped does not bind the size of the pack", () => {
    const sizes = {
      S: { "torso-length": atMost(430), "hip-girth": atMost(1000) },
      M: { "torso-length": atLeast(430), "hip-girth": atLeast(1000) },
    };
    expect(cover(chartOf(sizes), crew()).served.share).toBeCloseTo(0.5, 13);
    expect(cover(chartOf(sizes, { swappable: ["hip-belt"] }), crew()).served.share).toBeCloseTo(1, 13);
  });
});

describe("populations", () => {
  const short = counted([400, 420]);
  const tall = counted([450, 470, 490, 510]);
  const everybody = mixtureJoint({
    about: { label: "everybody", source: "invented", caveat: "" },
    parts: [
      { weight: 3, model: short },
      { weight: 1, model: tall },
    ],
  });

  test("a mixture is told by its parts, and is their weighted mean", () => {
    const { served, parts } = cover(torsoChart({ S: [410, 480] }), everybody);
    expect(parts.map(({ weight, coverage }) => [weight, coverage.served.share])).toEqual([
      [0.75, 0.5],
      [0.25, 0.5],
    ]);
    expect(served.share).toBe(0.5);
  });

  test("a shelf serves whom one of its charts serves", () => {
    const shelf = [torsoChart({ S: [395, 425] }), torsoChart({ S: [445, 475] })];
    const { served, sizes } = cover(shelf, everybody);
    expect(served.share).toBe(0.75 + 0.25 / 2);
    expect(sizes).toHaveLength(2);
  });
});

describe("bands", () => {
  test("are Wilson's for people who were counted: 81 of 263 (Newcombe 1998, Stat. Med. 17, table I, from memory)", () => {
    const people = counted(Array.from({ length: 263 }, (_, k) => (k < 81 ? 400 : 500)));
    const { served, band } = cover(torsoChart({ S: [390, 410] }), people, { survey: { people: 263 } });
    // 0.2553 to 0.3662 in print; recomputed with R 4.2.2: 0.25527 and 0.36621.
    expect(served.low).toBeCloseTo(0.2553, 4);
    expect(served.high).toBeCloseTo(0.3662, 4);
    expect(band).toEqual({ confidence: 0.95, people: [263], method: "wilson" });
  });

  test("agree with the delta method for a normal model", () => {
    const survey = { people: 1000, confidence: 0.9, replicates: 1500 };
    for (const z of [0, 1]) {
      const chart = chartOf({ S: { "torso-length": atMost(430 + 25 * z) } });
      const { served, band } = cover(chart, crew(), { survey });
      // sd of Φ((c − x̄)/s): φ(z) √(1/n + z²/2n); 1.6449 of them to either side hold 90 %.
      const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
      const half = 1.6449 * density * Math.sqrt((1 + z ** 2 / 2) / 1000);
      expect(((served.high ?? 0) - (served.low ?? 0)) / 2 / half).toBeGreaterThan(0.92);
      expect(((served.high ?? 0) - (served.low ?? 0)) / 2 / half).toBeLessThan(1.08);
      expect(band?.method).toBe("parametric-bootstrap");
    }
  });

  test("are the same each time, and absent without a survey", () => {
    const chart = torsoChart({ S: [400, 430] });
    const survey = { people: 100, replicates: 50 };
    expect(cover(chart, crew(), { survey })).toEqual(cover(chart, crew(), { survey }));
    expect(cover(chart, crew()).served).toEqual({ share: cover(chart, crew()).served.share });
  });
});

describe("what cannot be judged", () => {
  const codes = (chart: Parameters<typeof chartCoverage>[0]) =>
    chartCoverage(chart, crew()).issues.map(({ code }) => code);

  test("is told", () => {
    expect(codes(chartOf({}))).toEqual(["coverage-chart-without-sizes"]);
    expect(codes(chartOf({ S: { stature: interval(1600, 1700) } }))).toEqual(["coverage-nothing-judged"]);
    expect(
      codes(chartOf({ S: { "torso-length": interval(380, 430), stature: interval(1600, 1700) } })),
    ).toEqual(["coverage-dimension-left-out"]);
    expect(
      codes(chartOf({ S: { "torso-length": interval(380, 430) }, M: { "hip-girth": interval(900, 990) } })),
    ).toEqual(["coverage-size-not-judged"]);
  });

  test("an unstated hip girth is taken as the one that is known", () => {
    const chart = {
      ...chartOf({}),
      sizes: [
        {
          name: "S",
          covers: ["S"],
          ranges: { "unstated-hip-girth": { interval: atMost(1000), basis: "range" as const, stated: [] } },
        },
      ],
    };
    const outcome = chartCoverage(chart, crew());
    expect(outcome.issues.map(({ code }) => code)).toEqual(["coverage-girth-taken-as"]);
    expect(unwrap(outcome).judged).toEqual(["hip-girth"]);
    expect(unwrap(outcome).served.share).toBeCloseTo(0.5, 15);
  });

  test("a chart of a shelf that cannot be judged is left out, and the rest goes on", () => {
    const outcome = chartCoverage([chartOf({}), torsoChart({ S: [380, 480] })], crew());
    expect(outcome.issues.map(({ code }) => code)).toEqual(["coverage-chart-without-sizes"]);
    expect(unwrap(outcome).sizes).toHaveLength(1);
  });

  test("codes are those of the catalogue", () => {
    expect(Object.keys(coverageIssues)).toContain("coverage-charts-differ");
  });
});

describe("a programmer's mistakes throw", () => {
  const chart = torsoChart({ S: [380, 430] });

  test.each([
    ["no chart", () => chartCoverage([], crew())],
    ["no people", () => chartCoverage(chart, crew(), { survey: { people: 0 } })],
    ["people of too many parts", () => chartCoverage(chart, crew(), { survey: { people: [50, 50] } })],
    ["a confidence of 1", () => chartCoverage(chart, crew(), { survey: { people: 50, confidence: 1 } })],
    ["hardly a replicate", () => chartCoverage(chart, crew(), { survey: { people: 50, replicates: 5 } })],
  ])("%s", (_, call) => {
    expect(call).toThrow(InvalidArgumentError);
  });
});

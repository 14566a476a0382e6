import {
  changedPicks,
  correctChart,
  createEvidence,
  type Evidence,
  type EvidenceModel,
  evidenceDefaults,
  expectedMove,
  expectedReturns,
  learnMaker,
  learnProduct,
  lendingTable,
  lengthAfter,
  priorAfter,
  recommendWithEvidence,
  safeSeeOutcome,
  widenByDoubt,
  withChartDoubt,
} from "@tapewise/afterwards";
import type { SizeChart } from "@tapewise/charts";
import {
  chartCoverage,
  choiceErrors,
  cutSizes,
  growthFigure,
  overlapEffect,
  pickStretches,
  stockFor,
  stockShares,
  tryStock,
} from "@tapewise/coverage";
import {
  chooseColumns,
  chooseRow,
  compare,
  createChoiceColumns,
  createRow,
  defaultPolicy,
  formBeliefs,
  pickSizes,
  recommend,
  safeCompileColumns,
  spreadsAfterLooks,
} from "@tapewise/fit";
import { interval } from "@tapewise/intervals";
import { torsoFromHeights } from "@tapewise/landmarks";
import { unwrap } from "@tapewise/outcome";
import { normalJoint } from "@tapewise/population";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";
import { chartOf, estimateOf, sizeOf, sureEstimate, torsoChart } from "../tests/fit/cases.ts";
import { misfitCases } from "./fit-figures.ts";
import further from "./further-choices.json" with { type: "json" };
import { ansurFigures } from "./landmarks-ansur.ts";
import { type Against, against, type Reference } from "./table/against.ts";

const origin = further.origin as Reference["origin"];
const row = (of: string, source: string, why: string, from: Reference["origin"] = origin): Against =>
  against({ of, source, origin: from, why });
const TENS = "tens of roundings";
const BY_HAND = "worked by hand";
const people = normalJoint({
  about: { label: "invented people", source: "invented", caveat: "for a test" },
  variables: ["torso-length"],
  mean: [further.mean],
  covariance: [[further.sd ** 2]],
});
const measuring = { conditions: { measuredBy: "self", tool: "tape" }, readings: 3, stepMm: 0 } as const;

describe("charts among people whose torso is N(400 mm, 22.7² mm²)", () => {
  const overlapping = torsoChart({ S: [360, 410], M: [400, 450] });
  const { shares } = further;

  test("who is served", () => {
    const coverage = unwrap(chartCoverage(overlapping, people));
    const shared = row("coverage.chartCoverage", "shares of a normal distribution", TENS);
    shared.absolute(coverage.served.share, shares.served, 1e-14);
    shared.absolute(coverage.outside[0]?.below.share, shares.below, 1e-14);
    shared.absolute(coverage.outside[0]?.above.share, shares.above, 1e-14);
    coverage.sizes.forEach(({ served }, i) => {
      shared.absolute(served.share, shares.sizes[i] ?? "", 1e-14);
    });
  });

  test("what an order consists of", () => {
    const { sizes } = unwrap(stockShares(overlapping, people));
    sizes.forEach(({ ofPeople }, i) => {
      row("coverage.stockShares", "shares of a normal distribution, the overlap halved", TENS).absolute(
        ofPeople,
        shares.given[i] ?? "",
        1e-14,
      );
    });
  });

  test("how many of each are enough for twelve", () => {
    const { chances, members } = further.stock;
    const stock = unwrap(stockFor(overlapping, people, { members, chance: 0.95 }));
    const [s = 0, m = 0] = stock.sizes.map(({ count }) => count);
    const exact = row("coverage.stockFor", "every crew of twelve enumerated (multinomial)", TENS);
    exact.absolute(stock.chance, chances[s]?.[m] ?? "", 1e-13);
    // No single pack can be taken away.
    exact.same(
      [
        Number(chances[s]?.[m]) >= 0.95,
        Number(chances[s - 1]?.[m]) < 0.95,
        Number(chances[s]?.[m - 1]) < 0.95,
      ],
      [true, true, true],
      3,
    );
    const tried = unwrap(tryStock(overlapping, people, { members, counts: [s, m], trials: 4000 }));
    const chance = Number(chances[s]?.[m]);
    row(
      "coverage.tryStock",
      "every crew of twelve enumerated (multinomial)",
      "five standard errors of 4000 crews",
    ).absolute(tried.enough, chance, 5 * Math.sqrt((chance * (1 - chance)) / 4000));
  });

  test.each(further.cuts)("$count sizes of $spanMm mm for $goal: no placement is better", (one) => {
    const { count, spanMm, stepMm, goal, value } = one;
    const request = { population: people, dimension: "torso-length", count, stepMm, spanMm } as const;
    const cuts = cutSizes(goal === "served" ? { ...request, goal } : { ...request, goal: "misfit" });
    const best = row("coverage.cutSizes", "every placement enumerated", "three-point rules of half a step");
    if (goal === "served") best.absolute(cuts.served, value, 1e-12);
    else best.relative(cuts.expectedMisfitMm, value, 1e-5);
    const figure = growthFigure(cuts, { population: people, unit: "cm" });
    const point = figure.points.find((each) => each.count === count);
    row("coverage.growthFigure", "every placement enumerated", "three-point rules of half a step").relative(
      point?.value,
      value,
      1e-5,
    );
  });

  const touching = torsoChart({ S: [360, 400], M: [400, 450] });
  // The estimate is rounded nowhere; `summed` is good to 10⁻⁴ as its docs say.
  const SUMMED = "sums over lengths, good to 1e-4 as documented";

  test("who is given a size that does not fit", () => {
    const { errors } = further;
    const ours = unwrap(choiceErrors(touching, people, measuring));
    const quadrature = row("coverage.choiceErrors", "∫ φ(l) P(picked | l) dl by quadrature", SUMMED);
    quadrature.relative(ours.judged[0]?.uncertaintyMm, errors.uncertaintyMm, 1e-13);
    quadrature.absolute(ours.wrong, errors.wrong, 1e-4);
    quadrature.absolute(ours.unserved, errors.unserved, 1e-4);
    quadrature.absolute(ours.right, errors.right, 1e-4);
  });

  test("where the pick changes is found by halving", () => {
    // The edge of the two ranges, 400 mm, to a millionth of a millimetre as stated.
    const stretches = pickStretches((mm) => (mm < 400 ? 0 : 1), 300, 500, 4);
    row("coverage.pickStretches", "the edge that was put in", "halving stops at 1e-6 mm", BY_HAND).absolute(
      stretches[0]?.to,
      400,
      1e-6,
    );
  });

  test("what overlap costs and brings", () => {
    const ours = overlapEffect({
      population: people,
      dimension: "torso-length",
      count: 2,
      spanMm: 50,
      overlapsMm: further.overlaps.map(({ overlapMm }) => overlapMm),
      measuring,
    });
    const quadrature = row("coverage.overlapEffect", "∫ φ(l) P(picked | l) dl by quadrature", SUMMED);
    further.overlaps.forEach(({ served, wrong }, i) => {
      quadrature.absolute(ours[i]?.served, served, 1e-12);
      quadrature.absolute(ours[i]?.wrong, wrong, 1e-4);
    });
  });

  test("who exchanges when ranges sit 15 mm off", () => {
    const ours = unwrap(
      expectedReturns(touching, people, { measuring, offsets: { "torso-length": { mm: 15 } } }),
    );
    const quadrature = row("afterwards.expectedReturns", "∫ φ(l) P(picked | l) dl by quadrature", SUMMED);
    quadrature.absolute(ours.printed.exchanged, further.returns.exchanged, 2e-4);
    quadrature.absolute(ours.printed.sentBack, further.returns.sentBack, 2e-4);
    quadrature.absolute(ours.printed.kept, further.returns.kept, 2e-4);
    quadrature.absolute(ours.relabelled.exchanged, further.returns.relabelled, 2e-4);
  });
});

describe("choices in columns, and for a shelf", () => {
  const QUADRATURE = "quadrature of the density of the length";
  const MPMATH = "recomputed with mpmath 1.2.1";

  test.each(misfitCases)("$meanMm ± $sdMm mm, $degreesOfFreedom degrees, [$from, $to]", (one) => {
    const chart = torsoChart({ M: [one.from, one.to] });
    const plan = unwrap(safeCompileColumns(chart, { read: ["torso-length"] }));
    const out = {
      ...createChoiceColumns(1, 1),
      sizeProbabilities: new Float64Array(1),
      sizeMisfitsMm: new Float64Array(1),
    };
    chooseColumns(
      plan,
      {
        meansMm: Float64Array.of(one.meanMm),
        sdsMm: Float64Array.of(one.sdMm),
        degreesOfFreedom: Float64Array.of(one.degreesOfFreedom),
      },
      out,
    );
    const columns = row(
      "fit.chooseColumns",
      QUADRATURE,
      "agree with recommend to 1e-13 as documented",
      MPMATH,
    );
    columns.relative(out.sizeProbabilities[0], one.inside, 1e-12);
    columns.relative(out.sizeMisfitsMm[0], one.misfitMm, 1e-12);
    const cells = createRow(plan, 0);
    cells.means[0] = one.meanMm;
    cells.sds[0] = one.sdMm;
    cells.degrees[0] = one.degreesOfFreedom;
    chooseRow(cells);
    row("fit.chooseRow", QUADRATURE, "agree with recommend to 1e-13 as documented", MPMATH).relative(
      cells.probabilities[0],
      one.inside,
      1e-12,
    );

    const person = { estimates: [sureEstimate("torso-length", one.meanMm, one.sdMm, one.degreesOfFreedom)] };
    const [ranked] = unwrap(compare(person, [chart], { unit: "cm" })).ranked;
    row("fit.compare", QUADRATURE, "roundings of lengths in mm", MPMATH).relative(
      ranked?.recommendation.probability,
      one.inside,
      1e-12,
    );
    const picked = unwrap(pickSizes(person, chart));
    row("fit.pickSizes", QUADRATURE, "the only size there is", MPMATH).same(picked.pick, "M");
    row("fit.pickSizes", QUADRATURE, "the belief as it was put in", MPMATH).relative(
      picked.beliefs[0]?.meanMm,
      one.meanMm,
      1e-15,
    );
    const member = { member: "ana", recommendations: [unwrap(recommend(person, chart, { unit: "cm" }))] };
    const table = unwrap(lendingTable([member], [{ chart: chart.chart, size: "M", count: 1 }]));
    const shelf = row("afterwards.lendingTable", QUADRATURE, "roundings of lengths in mm", MPMATH);
    shelf.relative(table.chances?.[0]?.[0], one.inside, 1e-12);
    shelf.relative(table.misfitsMm?.[0]?.[0], one.misfitMm, 1e-12);
  });

  test("what further readings leave: 3² + 4²/n", () => {
    const [belief] = formBeliefs(
      [estimateOf("torso-length", ["44 cm"], { biasMm: 3, repeatMm: 4, resolutionMm: 0 })],
      undefined,
    ).list;
    expect(belief).toBeDefined();
    if (belief === undefined) return;
    const spreads = spreadsAfterLooks(belief, defaultPolicy);
    // After one, two and three more: √(9 + 16/2), √(9 + 16/3), √(9 + 16/4).
    [17, 9 + 16 / 3, 13].forEach((variance, i) => {
      row("fit.spreadsAfterLooks", "u² = l² + r²/n (GUM 4.2.3)", TENS, BY_HAND).relative(
        spreads[i],
        Math.sqrt(variance),
        1e-14,
      );
    });
  });
});

describe("what is learned from exchanges", () => {
  const key = { maker: "Gingham", product: "Doily 45" };
  const { evidence: theirs } = further;
  // The figures of the grid, whatever the table of defaults says.
  const model: EvidenceModel = {
    ...evidenceDefaults,
    backLength: {
      toleranceMm: 8,
      makerOffsetSdMm: 12,
      productOffsetSdMm: 7,
      makerLogWidthSd: 0.14,
      productLogWidthSd: 0.09,
      reachMm: 45,
      logReach: 0.5,
    },
    slipProbability: 0.02,
    asPrintedProbability: 0.5,
    sureProbability: 0.95,
  };
  const chart: SizeChart = {
    ...torsoChart({ M: [430, 480], L: [480, 530] }),
    chart: key.product,
    maker: key.maker,
  };

  function filled(): Evidence {
    const evidence = createEvidence(model);
    for (const one of theirs.seen) {
      evidence.add({ ...key, dimension: "torso-length", ...one, side: one.side as "above" });
    }
    return evidence;
  }

  test("offset and width of a product, and of its maker, on a plain grid", () => {
    const product = learnProduct(filled(), key, "torso-length");
    const maker = learnMaker(filled(), key.maker, "torso-length");
    const why = "tables of nodes are good to some 1e-3; neither grid goes beyond 45 mm";
    for (const [name, ours, wanted] of [
      ["afterwards.learnProduct", product, theirs.product],
      ["afterwards.learnMaker", maker, theirs.maker],
    ] as const) {
      const grid = row(name, "sums over a plain grid of offsets and widths", why);
      grid.absolute(ours.offsetMm.mean, wanted.mean, 0.05);
      grid.absolute(ours.offsetMm.sd, wanted.sd, 0.05);
      grid.relative(ours.widthFactor.mean, wanted.width, 0.005);
      grid.absolute(ours.asPrintedProbability, theirs.asPrinted, 1e-4);
    }
  });

  test("ranges move by that much: middle plus offset, half-width times factor", () => {
    const move = expectedMove(learnProduct(filled(), key, "torso-length"));
    const chance = 1 - theirs.asPrinted;
    const grid = (name: string): Against =>
      row(`afterwards.${name}`, "sums over a plain grid of offsets and widths", "as what is learned");
    grid("expectedMove").absolute(move.offsetMm, chance * theirs.product.mean, 0.05);
    grid("expectedMove").relative(move.widthFactor, 1 + chance * (theirs.product.width - 1), 0.005);
    const { ranges } = correctChart(chart, filled());
    const [range] = ranges;
    const wider = 25 * chance * (theirs.product.width - 1);
    grid("correctChart").absolute(range?.corrected.from, 430 + chance * theirs.product.mean - wider, 0.15);
    grid("correctChart").absolute(range?.corrected.to, 480 + chance * theirs.product.mean + wider, 0.15);

    // By the printed chart M (430–480) for 473 mm; moved down by 13.6 mm and narrowed, it ends at 462, and L begins at 470.
    const person = { estimates: [sureEstimate("torso-length", 473, 1)] };
    const choice = unwrap(recommendWithEvidence(person, chart, filled(), { unit: "cm", doubt: "leave-out" }));
    const by = (name: string): Against =>
      row(`afterwards.${name}`, "which range holds 473 mm", "names", BY_HAND);
    by("recommendWithEvidence").same([choice.printed.pick, choice.corrected.pick], ["M", "L"], 2);
    by("changedPicks").same(changedPicks([person], chart, filled()), {
      people: 1,
      changed: 1,
      share: 1,
      moves: [{ from: "M", to: "L", people: 1 }],
    });
  });

  test("the own length after a pack that came out too long", () => {
    const after = lengthAfter(createEvidence(model), {
      product: "Doily 45",
      dimension: "torso-length",
      fromMm: 420,
      toMm: 480,
      side: "below",
      meanMm: 425,
      sdMm: 10,
    });
    const truncated = row(
      "afterwards.lengthAfter",
      "moments of a truncated normal (Johnson, Kotz & Balakrishnan 1994, 13.10.1)",
      "the doubt about makers comes of a sum on a grid",
    );
    truncated.absolute(after.meanMm, theirs.after.mean, 0.01);
    truncated.absolute(after.sdMm, theirs.after.sd, 0.01);
    const prior = priorAfter("torso-length", after);
    row("afterwards.priorAfter", "a variance is a standard deviation squared", "one rounding", BY_HAND).same(
      [prior.meanMm[0], prior.covarianceMm2[0]?.[0]],
      [after.meanMm, after.sdMm ** 2],
      2,
    );
  });

  test("the doubt about an offset widens a belief: 3² + 4² = 5²", () => {
    const torso = estimateOf("torso-length", ["440 mm"], { biasMm: 3, repeatMm: 0, resolutionMm: 0 });
    const wider = widenByDoubt({ estimates: [torso] }, "torso-length", 4);
    const sum = row(
      "afterwards.widenByDoubt",
      "variances of independent errors add (GUM 5.1.2)",
      TENS,
      BY_HAND,
    );
    sum.relative(formBeliefs(wider.estimates, wider.prior).of("torso-length")?.sdMm, 5, 1e-15);
    // A prior of 9² and readings of 12²: 9 · 12/15 = 7.2; with a doubt of 4 mm √(7.2² + 16).
    const prior = priorAfter("torso-length", {
      meanMm: 430,
      sdMm: 9,
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    });
    const read = estimateOf("torso-length", ["440 mm"], { biasMm: 12, repeatMm: 0, resolutionMm: 0 });
    const both = widenByDoubt({ estimates: [read], prior }, "torso-length", 4);
    sum.relative(
      formBeliefs(both.estimates, both.prior).of("torso-length")?.sdMm,
      Math.sqrt(7.2 ** 2 + 16),
      1e-13,
    );
    // Of a maker of whom nothing is known: half of 13.9² (12² + 7², cut at 45 mm) beside 3².
    const doubtful = withChartDoubt(createEvidence(model))({ estimates: [torso] }, chart);
    row(
      "afterwards.withChartDoubt",
      "variances of independent errors add (GUM 5.1.2)",
      "offsets are cut at 45 mm",
      BY_HAND,
    ).relative(
      formBeliefs(doubtful.estimates, doubtful.prior).of("torso-length")?.sdMm,
      Math.sqrt(9 + (144 + 49) / 2),
      0.01,
    );
  });

  test("a row of the log as numbers", () => {
    // Student's t of ten degrees has the variance u²·10/8.
    const seen = unwrap(
      safeSeeOutcome(
        {
          v: 1,
          at: "2026-05-04",
          product: { maker: key.maker, chart: key.product },
          size: "M",
          outcome: "exchanged",
          reason: "harness-too-long",
          estimates: { "torso-length": { mm: 431, uncertaintyMm: 8, degreesOfFreedom: 10 } },
        },
        chart,
      ),
    );
    row("afterwards.safeSeeOutcome", "variance of Student's t, ν/(ν − 2)", "one rounding", BY_HAND).relative(
      seen[0]?.sdMm,
      8 * Math.sqrt(1.25),
      1e-15,
    );
  });
});

test("a torso from two heights: means of women in ANSUR II", () => {
  const mean = (column: string): number => {
    const found = ansurFigures.find((one) => one.column === column && one.sex === "women");
    return (found?.sum ?? Number.NaN) / (found?.n ?? Number.NaN);
  };
  // 1395.667 − 995.512 = 400.155
  const torso = unwrap(
    torsoFromHeights(millimetres(mean("cervicaleheight")), millimetres(mean("iliocristaleheight"))),
  );
  row(
    "landmarks.torsoFromHeights",
    "ANSUR II (Gordon et al. 2014): mean heights of women",
    "a difference of heights in mm",
    "recomputed with exact fractions (Python 3)",
  ).absolute(torso, mean("cervicaleheight") - mean("iliocristaleheight"), 1e-12);
  expect(torso).toBeCloseTo(400.155, 2);
  expect(chartOf([sizeOf("M", { "torso-length": interval(380, 430) })]).sizes).toHaveLength(1);
});

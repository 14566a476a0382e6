import { defaultPolicy, type Person, recommend } from "@tapewise/fit";
import { atLeast, atMost } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import {
  answer,
  beltOf,
  chartOf,
  codes,
  estimateOf,
  find,
  nominal,
  priorOf,
  sizeOf,
  sureEstimate,
  torsoChart,
  usualEstimate,
} from "./cases.ts";

const torso = (mm: number, uncertaintyMm = 5): Person => ({
  estimates: [sureEstimate("torso-length", mm, uncertaintyMm)],
});
const body = (torsoMm: number, beltMm: number): Person => ({
  estimates: [sureEstimate("torso-length", torsoMm, 5), sureEstimate("hip-belt-girth", beltMm, 8)],
});

/** An overlap of 1 cm in the torso length and of 2 cm in the belt. */
const pack = chartOf([
  sizeOf("S", { "torso-length": [380, 440], "hip-belt-girth": [700, 880] }),
  sizeOf("M", { "torso-length": [430, 490], "hip-belt-girth": [860, 1000] }),
]);

describe("a body well inside one size", () => {
  const { verdict, pick, probability, reasons, next, outside } = answer(torso(400), pack);

  test("fits it", () => {
    expect([verdict, pick, outside]).toEqual(["fits", "S", undefined]);
    // Four scales above the lower end and eight below the upper one: 1 − Φ(−4) = 1 − 3.1671e-5 (printed tables).
    expect(probability).toBeCloseTo(1 - 3.1671e-5, 8);
  });

  test("is told so, and nothing that does not concern it", () => {
    expect(codes(reasons)).toEqual(["most-probable", "dimension-not-read"]);
    expect(find(reasons, "most-probable").sentence).toBe("S has the best chance to fit: more than 99 %.");
    expect(codes(next)).toEqual(["measure-dimension", "check-on-body", "see-fitter"]);
  });
});

describe("two sizes that both fit", () => {
  const overlap = torsoChart({ S: [380, 445], M: [425, 480] });

  test("the one with more room on both sides is picked", () => {
    const { verdict, pick, reasons } = answer(torso(437), overlap);
    expect([verdict, pick]).toEqual(["two-sizes-fit", "M"]);
    const room = find(reasons, "room-on-both-sides");
    expect(room.facts).toEqual({
      size: "M",
      other: "S",
      mainDimension: "torso-length",
      roomMm: 12,
      otherRoomMm: 8,
    });
    expect(room.sentence).toBe(
      "M and S both take this torso length; M leaves 1.2 cm to its nearer end, S only 0.8 cm.",
    );
  });

  test("also where both are so sure that only the room tells them apart", () => {
    const { verdict, pick, reasons } = answer(torso(436, 0), overlap);
    expect([verdict, pick]).toEqual(["two-sizes-fit", "M"]);
    expect(codes(reasons)).toEqual(["equal-chance", "room-on-both-sides"]);
    expect(answer(torso(434, 0), overlap).pick).toBe("S");
  });

  test("both are worth a try", () => {
    const { next } = answer(torso(437), overlap);
    expect(find(next, "try-both").sentence).toBe(
      "If you can, try M and S on with a load and keep the better one.",
    );
  });

  test("in the very middle they have the same chance, and the answer says so", () => {
    const { reasons, pick } = answer(torso(435), overlap);
    expect(pick).toBe("M");
    expect(find(reasons, "equal-chance").sentence).toBe(
      // Two scales to the nearer end of either: Φ(2) = 0.97725
      "M and S have the same chance to fit: 98 %.",
    );
  });

  test("what a size carries is said and plays no part", () => {
    const litres = chartOf([
      sizeOf("S", { "torso-length": [380, 445] }, { capacityLitres: 43 }),
      sizeOf("M", { "torso-length": [425, 480] }, { capacityLitres: 45.5 }),
    ]);
    expect(answer(torso(433), litres).pick).toBe("S");
    const { pick, reasons } = answer(torso(437), litres);
    expect(pick).toBe("M");
    expect(find(reasons, "capacity-differs").sentence).toBe(
      "S carries 43 L, M 45.5 L. Fit goes before capacity.",
    );
    expect(codes(answer(torso(400), litres).reasons)).not.toContain("capacity-differs");
  });
});

describe("build (common practice, no source)", () => {
  const overlap = torsoChart({ S: [380, 445], M: [425, 480] });

  test("a broad chest takes the longer harness in an overlap", () => {
    const person: Person = { ...torso(434), build: ["large-chest"] };
    const { pick, reasons, probability } = answer(person, overlap);
    expect(answer(torso(434), overlap).pick).toBe("S");
    expect(pick).toBe("M");
    const reason = find(reasons, "build-takes-longer");
    // S: Φ(11/5) = 0.986097, M: Φ(9/5) = 0.964070 (printed tables)
    expect(probability).toBeCloseTo(0.96407, 5);
    expect(reason.facts.lossProbability).toBeCloseTo(0.986097 - 0.96407, 5);
    expect(reason.sentence).toBe(
      "M and S both fit, with 96 % and 99 %. With a large chest the longer harness is usually the better one.",
    );
    expect(codes(reasons)).not.toContain("most-probable");
  });

  test("it may not cost more than the policy allows", () => {
    const person: Person = { ...torso(432), build: ["large-chest"] };
    // S: Φ(13/5) = 0.995339, M: Φ(7/5) = 0.919243: 0.076 apart.
    expect(answer(person, overlap).pick).toBe("S");
    const policy = { ...defaultPolicy, tieLoss: 0.08 };
    expect(answer(person, overlap, { unit: "cm", policy }).pick).toBe("M");
  });

  test("several features are named together, in one order", () => {
    const of = (build: Person["build"] & object) =>
      find(answer({ ...torso(436), build }, overlap).reasons, "build-takes-longer").facts.build;
    expect(of(["muscular-back", "broad-shoulders"])).toBe("broad shoulders and a muscular back");
    expect(of(["large-chest", "muscular-back", "broad-shoulders"])).toBe(
      "broad shoulders, a large chest and a muscular back",
    );
  });

  test("it says nothing where a chart sizes by girth alone", () => {
    const belts = chartOf([
      sizeOf("S", { "hip-belt-girth": [700, 885] }),
      sizeOf("M", { "hip-belt-girth": [865, 1000] }),
    ]);
    const person: Person = {
      estimates: [sureEstimate("hip-belt-girth", 874, 5)],
      build: ["broad-shoulders"],
    };
    expect(answer(person, belts).pick).toBe("S");
  });
});

describe("a harness that can be adjusted", () => {
  const mixed = chartOf([
    sizeOf("S", { "torso-length": [380, 445] }, { harness: "fixed" }),
    sizeOf("M", { "torso-length": [425, 480] }, { harness: "adjustable" }),
  ]);

  test("settles a tie with a fixed one", () => {
    const { pick, reasons } = answer(torso(434), mixed);
    expect(pick).toBe("M");
    expect(find(reasons, "harness-adjusts").sentence).toBe(
      "M and S both fit, with 96 % and 99 %. The harness of M can be adjusted, which leaves room for a reading that is a little off.",
    );
  });

  test("settles nothing where the sizes do not differ in it", () => {
    const { sizes } = mixed;
    const all = { ...mixed, sizes: sizes.map((size) => ({ ...size, harness: "adjustable" as const })) };
    expect(answer(torso(434), all).pick).toBe("S");
    const fixed = { ...mixed, harness: "fixed" as const, sizes: sizes.map(({ harness, ...size }) => size) };
    expect(answer(torso(434), fixed).pick).toBe("S");
  });

  test("goes after build", () => {
    const turned = chartOf([
      sizeOf("S", { "torso-length": [380, 445] }, { harness: "adjustable" }),
      sizeOf("M", { "torso-length": [425, 480] }, { harness: "fixed" }),
    ]);
    expect(answer(torso(436), turned).pick).toBe("S");
    expect(answer({ ...torso(436), build: ["broad-shoulders"] }, turned).pick).toBe("M");
  });
});

describe("between sizes", () => {
  test("in a gap: both are named with what each is off by", () => {
    const { verdict, pick, reasons, next } = answer(torso(436), torsoChart({ S: [380, 430], M: [440, 480] }));
    expect([verdict, pick]).toEqual(["between-sizes", "M"]);
    // Off by 5·(φ(.8) − .8·(1 − Φ(.8))) = .6011 above to M plus … below it: E max(0, 440 − X) = 5·(.8·Φ(.8) + φ(.8)).
    const expected = 5 * (0.8 * 0.788145 + 0.289692);
    expect(find(reasons, "between-two-sizes").facts.misfitMm).toBeCloseTo(expected, 4);
    expect(find(reasons, "between-two-sizes").sentence).toBe(
      "The torso length lies between M and S: M is off by 0.5 cm on average, S by 0.6 cm.",
    );
    expect(codes(next)).toContain("try-both");
  });

  test("on the border of two that touch: a toss-up, and no fit", () => {
    const touching = torsoChart({ S: [380, 430], M: [430, 480] });
    const { verdict, reasons } = answer(torso(430), touching);
    expect(verdict).toBe("between-sizes");
    expect(find(reasons, "between-two-sizes").sentence).toBe(
      // φ(0) · 5 mm = 1.99 mm
      "The torso length lies between M and S: M is off by 0.2 cm on average, S by 0.2 cm.",
    );
    // Half a millimetre on: Φ(.1) = 0.539828 against 0.460172 is more than the tie loss.
    expect(answer(torso(430.5), touching)).toMatchObject({ verdict: "fits", pick: "M" });
    expect(codes(answer(torso(430.5), touching).next)).toContain("try-both");
  });

  test("not where the reading is only too unsure to say", () => {
    const { verdict, reasons } = answer(torso(405, 40), torsoChart({ S: [380, 430], M: [430, 480] }));
    expect(verdict).toBe("between-sizes");
    expect(codes(reasons)).toContain("no-size-likely");
    expect(find(reasons, "no-size-likely").sentence).toBe(
      // Φ(.625) − Φ(−.625) = 0.4680
      "No size stands out; the weakest point of S is the torso length, which it takes with 47 %.",
    );
  });
});

describe("outside the range", () => {
  const chart = torsoChart({ S: [380, 430], M: [440, 480] });

  test.each([
    [360, "S", "below", 20],
    [500, "M", "above", 20],
  ])("%i mm: the end, by how much, and the nearest size", (mm, size, end, byMm) => {
    const { verdict, pick, outside, reasons, next } = answer(torso(mm, 4), chart);
    expect([verdict, pick]).toEqual(["outside-the-range", size]);
    expect(outside).toMatchObject({ dimension: "torso-length", end });
    expect(outside?.byMm).toBeCloseTo(byMm, 6);
    expect(find(reasons, "nearest-size").sentence).toBe(
      `No size is likely to fit; ${size} is the nearest, off by 2.0 cm on average.`,
    );
    expect(find(reasons, "beyond-the-chart").sentence).toBe(
      `The torso length lies ${end} what the chart covers, by 2.0 cm on average and with a probability of more than 99 %.`,
    );
    expect(codes(next)).toContain("other-chart");
    expect(codes(next)).not.toContain("try-both");
  });

  test("an open end is never passed", () => {
    const open = torsoChart({ S: atMost(430), M: atLeast(440) });
    for (const mm of [210, 600]) expect(answer(torso(mm), open).verdict).toBe("fits");
  });

  test("hips outside all sizes are named, however well the torso fits", () => {
    const { verdict, outside, reasons } = answer(body(400, 1100), pack);
    expect(verdict).toBe("outside-the-range");
    expect(outside).toMatchObject({ dimension: "hip-belt-girth", end: "above" });
    expect(find(reasons, "beyond-the-chart").sentence).toMatch(/^The hip-belt girth lies above/);
  });

  test("of two dimensions outside, the surer one is named", () => {
    // Torso two scales below the chart, hips 12.5 above it.
    expect(answer(body(370, 1100), pack).outside).toMatchObject({ dimension: "hip-belt-girth" });
  });

  test("a size that says nothing of a dimension takes everybody there", () => {
    const one = chartOf([...pack.sizes, sizeOf("L", { "torso-length": [480, 540] })]);
    expect(answer(body(400, 1100), one).outside).toBeUndefined();
  });

  test("a harness that can be swapped is proposed at the end that is passed", () => {
    const swaps = { ...chart, swappable: ["harness" as const] };
    expect(find(answer(torso(500), swaps).next, "swap-harness").facts.side).toBe("longer");
    expect(find(answer(torso(360), swaps).next, "swap-harness").facts.side).toBe("shorter");
    expect(codes(answer(torso(400), swaps).next)).not.toContain("swap-harness");
  });
});

describe("several dimensions", () => {
  test("the hip belt decides where the torso length does not (common practice)", () => {
    expect(answer(body(435, 780), pack).pick).toBe("S");
    const { pick, reasons } = answer(body(435, 960), pack);
    expect(pick).toBe("M");
    expect(find(reasons, "hip-belt-decides").sentence).toBe(
      "M and S both take this torso length; the hip-belt girth settles it, for it fits M with more than 99 % and S with less than 1 %.",
    );
  });

  test("it is compared with the size that the torso would have allowed as well", () => {
    const three = chartOf([
      ...pack.sizes,
      sizeOf("M wide", { "torso-length": [400, 480], "hip-belt-girth": [1050, 1200] }),
    ]);
    const { reasons, next } = answer(body(435, 930), three);
    expect(find(reasons, "hip-belt-decides").facts.other).toBe("M wide");
    // Another size to try on must fit in all dimensions, or at least be the second best.
    expect(codes(next)).not.toContain("try-both");
  });

  test("where they disagree, each is named with the size that it asks for", () => {
    const { verdict, pick, reasons } = answer(body(400, 950), pack);
    expect(verdict).toBe("between-sizes");
    expect(pick).toBe("M");
    expect(find(reasons, "dimensions-disagree").sentence).toBe(
      "The hip-belt girth asks for M, the torso length for S, and no size takes both.",
    );
  });

  test("where none is likely enough together, the weakest is named", () => {
    // Torso: Φ(.8) − Φ(−9.2) = 0.788; belt: Φ(.2) = 0.579; together 0.457.
    const { verdict, reasons, probability } = answer(body(436, 878.4), chartOf(pack.sizes.slice(0, 1)));
    expect(probability).toBeCloseTo(0.788145 * 0.57926, 5);
    expect(verdict).toBe("between-sizes");
    expect(find(reasons, "no-size-likely").facts).toMatchObject({ size: "S", dimension: "hip-belt-girth" });
  });

  test("a size that says nothing of a girth is not held against it, and its pick says so", () => {
    const gap = chartOf([
      sizeOf("S", { "torso-length": [380, 460], "hip-belt-girth": [700, 900] }),
      sizeOf("L", { "torso-length": [430, 500] }),
    ]);
    const { pick, reasons } = answer(body(445, 980), gap);
    expect(pick).toBe("L");
    expect(find(reasons, "dimension-not-stated").sentence).toBe(
      "For L the chart says nothing of the hip-belt girth; it was taken to suit everybody there.",
    );
  });

  test("a size that says nothing of the main dimension is not judged", () => {
    const one = chartOf([...pack.sizes, sizeOf("XL", { "hip-belt-girth": [950, 1200] })]);
    const { unjudgedSizes, sizes } = answer(body(400, 980), one);
    expect(unjudgedSizes).toEqual(["XL"]);
    expect(sizes.map((fit) => fit.size)).toEqual(["S", "M"]);
  });

  test("the torso length is the main one wherever it stands, else what else runs along the back", () => {
    const turned = chartOf([
      sizeOf("A", { "hip-belt-girth": [700, 900] }),
      sizeOf("B", { "hip-belt-girth": [700, 900], stature: [1600, 1700] }),
      sizeOf("C", { stature: [1690, 1800], "hip-belt-girth": [850, 1000] }),
    ]);
    const person: Person = {
      estimates: [sureEstimate("hip-belt-girth", 870, 8), sureEstimate("stature", 1650, 10)],
    };
    expect(answer(person, turned)).toMatchObject({ pick: "B", unjudgedSizes: ["A"] });
  });
});

describe("a hip belt that can be had in another size", () => {
  test("unbinds the girth, and a swap is proposed", () => {
    const swaps = { ...pack, swappable: ["hip-belt" as const] };
    const { verdict, pick, next } = answer(body(400, 950), swaps);
    expect([verdict, pick]).toEqual(["fits", "S"]);
    expect(find(next, "swap-hip-belt").sentence).toBe(
      "The hip belt of this pack can be swapped: take the harness in S and ask for a belt that suits this hip-belt girth.",
    );
    expect(codes(answer(body(400, 800), swaps).next)).not.toContain("swap-hip-belt");
  });

  test("binds after all where the chart sizes by nothing else", () => {
    const belts = chartOf(
      [sizeOf("S", { "waist-girth": [600, 750] }), sizeOf("M", { "waist-girth": [740, 900] })],
      { swappable: ["hip-belt"] },
    );
    expect(answer({ estimates: [sureEstimate("waist-girth", 800, 8)] }, belts).pick).toBe("M");
  });
});

describe("hip belts that are sized apart", () => {
  const apart = chartOf(
    [sizeOf("S", { "torso-length": [380, 440] }), sizeOf("M", { "torso-length": [430, 490] })],
    {
      belts: [
        beltOf("small", { "hip-belt-girth": [700, 880] }),
        beltOf("large", { "hip-belt-girth": [860, 1000] }),
      ],
    },
  );

  test("are picked by themselves", () => {
    const { verdict, pick, belt, next } = answer(body(400, 950), apart);
    expect([verdict, pick, belt?.pick]).toEqual(["fits", "S", "large"]);
    expect(find(next, "take-hip-belt").sentence).toBe("Take the hip belt in large.");
    expect(belt?.sizes.map((fit) => fit.size)).toEqual(["small", "large"]);
    expect(codes(answer(body(400, 950), apart).reasons)).toEqual(["most-probable"]);
  });

  test("do not count twice where the sizes state the girth too", () => {
    const both = { ...apart, sizes: pack.sizes };
    expect(answer(body(400, 950), both)).toMatchObject({ verdict: "fits", pick: "S" });
  });

  test("that do not fit leave no pack that fits", () => {
    const { verdict, outside, reasons, next } = answer(body(400, 1100), apart);
    expect(verdict).toBe("outside-the-range");
    expect(outside).toMatchObject({ dimension: "hip-belt-girth", end: "above" });
    expect(find(reasons, "belt-unlikely").sentence).toBe(
      "No hip belt of this pack is likely to fit; large comes nearest, with less than 1 %.",
    );
    expect(codes(next)).not.toContain("take-hip-belt");
    expect(find(next, "other-chart").facts.dimension).toBe("hip-belt-girth");
  });

  test("that leave the girth between them are said to be unlikely", () => {
    const gap = {
      ...apart,
      belts: [
        beltOf("small", { "hip-belt-girth": [700, 880] }),
        beltOf("large", { "hip-belt-girth": [900, 1000] }),
      ],
    };
    const { verdict, outside, reasons } = answer(body(400, 892), gap);
    expect([verdict, outside]).toEqual(["between-sizes", undefined]);
    // Φ(−1) = 0.158655
    expect(find(reasons, "belt-unlikely").facts).toMatchObject({ belt: "large" });
    expect(find(reasons, "belt-unlikely").facts.beltProbability).toBeCloseTo(0.158655, 5);
  });

  test("ask for the girth where it was not read", () => {
    const { belt, reasons, next } = answer(torso(400), apart);
    expect(belt).toBeUndefined();
    expect(find(reasons, "dimension-not-read").facts.dimension).toBe("hip-belt-girth");
    expect(find(next, "measure-dimension").facts.dimension).toBe("hip-belt-girth");
  });

  test("make a further reading of the girth worth the while", () => {
    const person: Person = {
      estimates: [
        sureEstimate("torso-length", 400, 5),
        estimateOf("hip-belt-girth", ["87 cm"], { biasMm: 2, repeatMm: 12, resolutionMm: 5 }),
      ],
    };
    const { verdict, next } = answer(person, apart);
    expect(verdict).toBe("measure-again");
    expect(find(next, "measure-again").facts.dimension).toBe("hip-belt-girth");
  });
});

describe("what the chart leaves open", () => {
  const hips = chartOf([
    sizeOf("S", { "torso-length": [380, 440], "unstated-hip-girth": [700, 880] }),
    sizeOf("M", { "torso-length": [430, 490], "unstated-hip-girth": [860, 1000] }),
  ]);

  test("a hip girth that does not say which is judged where the belt sits", () => {
    const { beliefs, reasons } = answer(body(400, 800), hips);
    expect(find(reasons, "girth-not-stated").sentence).toBe(
      "The chart says “hip” and not which girth; it was judged by the hip-belt girth.",
    );
    expect(beliefs.map((belief) => belief.dimension)).toEqual(["torso-length", "unstated-hip-girth"]);
  });

  test("or at the widest part, where that is what was read", () => {
    const person: Person = { estimates: [...torso(400).estimates, sureEstimate("hip-girth", 950, 8)] };
    const { reasons, sizes } = answer(person, hips);
    expect(find(reasons, "girth-not-stated").facts.dimension).toBe("hip-girth");
    expect(sizes[0]?.probability).toBeLessThan(0.01);
  });

  test("what is to be read is where the belt sits", () => {
    const { next } = answer(torso(400), hips);
    expect(find(next, "measure-dimension").sentence).toBe(
      "Read the hip-belt girth as well: the chart sizes by it.",
    );
  });

  test("a nominal length is marked as inferred", () => {
    const nominals = chartOf([
      sizeOf("S", { "torso-length": nominal(400, 375, 425) }),
      sizeOf("M", { "torso-length": nominal(450, 425, 475) }),
    ]);
    const { pick, reasons, sizes } = answer(torso(445), nominals);
    expect(pick).toBe("M");
    expect(find(reasons, "nominal-length-inferred").facts).toEqual({ size: "M" });
    expect(sizes[1]?.dimensions[0]?.range.basis).toBe("nominal");
  });

  test("a double size names the sizes it serves", () => {
    const double = chartOf([
      sizeOf("S/M", { "torso-length": [380, 460] }, { covers: ["S", "M"] }),
      sizeOf("L", { "torso-length": [450, 500] }),
    ]);
    expect(find(answer(torso(430), double).reasons, "double-size").sentence).toBe(
      "S/M is one pack that serves S and M.",
    );
  });

  test("sizes keep the order of the chart", () => {
    const turned = { ...pack, sizes: pack.sizes.toReversed() };
    expect(answer(torso(400), turned).sizes.map((fit) => fit.size)).toEqual(["M", "S"]);
  });

  test("maker and product come along", () => {
    const named = { ...pack, maker: "Thimblewick", product: "Doily 45" };
    expect(answer(torso(400), named)).toMatchObject({
      maker: "Thimblewick",
      product: "Doily 45",
      chart: "Crew pack",
    });
    expect(answer(torso(400), pack)).not.toHaveProperty("maker");
  });
});

describe("what was not read", () => {
  const prior = priorOf({ "torso-length": [435, 23] }, "women 171 cm tall");

  test("is judged by the prior, and said to be", () => {
    const person: Person = { estimates: [sureEstimate("hip-belt-girth", 800, 8)], prior };
    const { pick, beliefs, reasons, next } = answer(person, pack);
    expect(pick).toBe("S");
    expect(beliefs[0]).toMatchObject({ dimension: "torso-length", meanMm: 435, sdMm: 23, from: "prior" });
    expect(find(reasons, "dimension-from-prior").sentence).toBe(
      "The torso length was not read; what is known of women 171 cm tall stood in for it.",
    );
    expect(find(next, "measure-dimension").facts.dimension).toBe("torso-length");
    expect(codes(reasons)).not.toContain("prior-used");
  });

  test("makes the verdict wait where reading it may well change the pick", () => {
    const { verdict, next } = answer({ estimates: [], prior }, torsoChart({ S: [380, 435], M: [435, 490] }));
    expect(verdict).toBe("measure-again");
    expect(codes(next).filter((code) => code === "measure-dimension")).toHaveLength(1);
  });

  test("without a length to go by there is no verdict on a chart that states one", () => {
    const { verdict, pick, next } = answer({ estimates: [sureEstimate("hip-belt-girth", 800, 8)] }, pack);
    expect([verdict, pick]).toEqual(["measure-again", "S"]);
    expect(codes(next)[0]).toBe("measure-dimension");
  });
});

describe("a reading that the prior does not expect", () => {
  const prior = priorOf({ "torso-length": [435, 23] }, "women 171 cm tall");
  const person: Person = { estimates: [estimateOf("torso-length", ["61 cm"])], prior };

  test("is questioned, and never altered", () => {
    const outcome = recommend(person, pack, { unit: "cm" });
    expect(outcome.ok).toBe(true);
    const [question, ...others] = outcome.issues;
    expect(others).toEqual([]);
    expect(question).toMatchObject({
      code: "estimate-unlikely",
      severity: "warning",
      path: ["readings", "torso-length"],
      received: "61 cm",
      message: "610 mm for the torso length is 175 mm above what is usual for women 171 cm tall",
    });
    if (!outcome.ok) return;
    expect(outcome.value.questions).toEqual(outcome.issues);
    expect(outcome.value.estimates).toBe(person.estimates);
    expect(outcome.value.estimates[0]?.mm).toBe(610);
  });

  test.each([
    ["cm" as const, "61.0 cm is 17.5 cm above"],
    ["in" as const, "24 in is 6 7/8 in above"],
  ])("the first step is to look again, in %s", (unit, figures) => {
    const [step] = answer(person, pack, { unit }).next;
    expect(step?.code).toBe("check-reading");
    expect(step?.sentence).toBe(
      `Look at the torso length again before you trust this: ${figures} what is usual for women 171 cm tall.`,
    );
  });

  test("one that may well be so is not questioned, nor is any without a prior", () => {
    // Two-sided chance of 0.2 %: 3.09 scales of √(23² + u²).
    const near: Person = { estimates: [sureEstimate("torso-length", 435 + 3.08 * 23, 0.001)], prior };
    const far: Person = { estimates: [sureEstimate("torso-length", 435 + 3.1 * 23, 0.001)], prior };
    expect(answer(near, pack).questions).toEqual([]);
    expect(answer(far, pack).questions).toHaveLength(1);
    expect(answer({ estimates: far.estimates }, pack).questions).toEqual([]);
  });

  test("what both say together is said to be weighed", () => {
    const { beliefs, reasons } = answer({ estimates: [sureEstimate("torso-length", 400, 23)], prior }, pack);
    // Equally sure readings and prior meet half way between 400 and 435 mm.
    expect(beliefs[0]).toMatchObject({ meanMm: 417.5, from: "readings-and-prior" });
    expect(find(reasons, "prior-used").sentence).toBe(
      "The readings were weighed with what is known beforehand of women 171 cm tall.",
    );
    expect(codes(answer(torso(400), pack).reasons)).not.toContain("prior-used");
  });

  test("below is said as below", () => {
    const low: Person = { estimates: [estimateOf("torso-length", ["30 cm"])], prior };
    expect(answer(low, pack).questions[0]?.facts.side).toBe("below");
  });
});

describe("measure again", () => {
  const touching = torsoChart({ S: [380, 430], M: [430, 490] });

  test("says which dimension, how often and what for", () => {
    const { verdict, next } = answer({ estimates: [estimateOf("torso-length", ["43.3 cm"])] }, touching);
    expect(verdict).toBe("measure-again");
    const step = find(next, "measure-again");
    const { nowProbability, gainProbability, thenProbability } = step.facts;
    expect(step.facts).toMatchObject({ dimension: "torso-length", count: 2, times: "twice" });
    expect(thenProbability).toBeCloseTo(Number(nowProbability) + Number(gainProbability), 12);
    expect(step.sentence).toMatch(
      /^Read the torso length twice more: that has a \d\d % chance to change the pick, and raises the chance of the right size from \d\d % to about \d\d %\.$/,
    );
  });

  test("not where the pick is sure, nor where no reading can help", () => {
    expect(answer({ estimates: [estimateOf("torso-length", ["45.5 cm"])] }, touching).verdict).toBe("fits");
    expect(answer(torso(433, 8), touching).verdict).toBe("fits");
    expect(answer({ estimates: [estimateOf("torso-length", ["55 cm"])] }, touching).verdict).toBe(
      "outside-the-range",
    );
  });

  test("with a helper, where it is the lasting part of one's own error that hurts", () => {
    const readings = ["43.1 cm", "43.3 cm", "43.2 cm", "43.1 cm", "43.2 cm", "43.2 cm"];
    const { verdict, next } = answer({ estimates: [usualEstimate("torso-length", readings)] }, touching);
    expect(verdict).toBe("measure-again");
    expect(find(next, "measure-with-helper").sentence).toMatch(
      /^Let a helper read the torso length 3 times: .* More readings of your own would repeat the same slip\.$/,
    );
    const helped = usualEstimate("torso-length", readings, { measuredBy: "helper", tool: "tape" });
    expect(codes(answer({ estimates: [helped] }, touching).next)).not.toContain("measure-with-helper");
  });

  test("a helper is not sent for where somebody has stated their own error", () => {
    const stated = estimateOf("torso-length", ["43.2 cm"], { biasMm: 9, repeatMm: 5, resolutionMm: 1 });
    expect(codes(answer({ estimates: [stated] }, touching).next)).not.toContain("measure-with-helper");
  });

  test("of several dimensions the one that brings most is named", () => {
    const person: Person = {
      estimates: [
        estimateOf("torso-length", ["43.5 cm"], { biasMm: 0, repeatMm: 2, resolutionMm: 1 }),
        estimateOf("hip-belt-girth", ["87 cm"], { biasMm: 3, repeatMm: 20, resolutionMm: 5 }),
      ],
    };
    const narrow = chartOf([
      sizeOf("S", { "torso-length": [380, 440], "hip-belt-girth": [700, 870] }),
      sizeOf("M", { "torso-length": [430, 490], "hip-belt-girth": [870, 1000] }),
    ]);
    expect(find(answer(person, narrow).next, "measure-again").facts.dimension).toBe("hip-belt-girth");
  });

  test("a pick that a reason holds is not put in doubt by what the reason outweighs", () => {
    const overlap = torsoChart({ S: [380, 445], M: [425, 490] });
    const person = { estimates: [estimateOf("torso-length", ["43.4 cm"])] };
    const change = (build: Person["build"] & object) => {
      const { next } = answer({ ...person, build }, overlap, {
        unit: "cm",
        policy: { ...defaultPolicy, changeProbability: 0, worthwhileGain: 0, sureProbability: 1 },
      });
      return Number(find(next, "measure-again").facts.changeProbability);
    };
    // Were M held by nothing, it would change whenever S without build would not.
    expect(answer({ ...person, build: ["broad-shoulders"] }, overlap).pick).toBe("M");
    expect(answer(person, overlap).pick).toBe("S");
    expect(change(["broad-shoulders"])).toBeLessThan(1 - change([]));
  });
});

describe("what cannot be answered", () => {
  const unit = "cm";

  test("a chart that shares no dimension with the readings", () => {
    const outcome = recommend({ estimates: [sureEstimate("chest-girth", 950, 8)] }, pack, { unit });
    expect(outcome).toMatchObject({ ok: false });
    expect(outcome.issues).toHaveLength(1);
    expect(outcome.issues[0]).toMatchObject({
      code: "chart-not-judged",
      severity: "error",
      path: ["estimates"],
      received: "chest girth",
      message: "nothing that was read is what Crew pack sizes by (torso length, hip-belt girth)",
      expected: "readings of at least one of: torso length, hip-belt girth",
    });
  });

  test("a person without readings", () => {
    const outcome = recommend({ estimates: [] }, pack, { unit });
    expect(outcome.issues[0]).toMatchObject({ code: "chart-not-judged", received: "nothing" });
  });

  test.each([
    ["no size", chartOf([])],
    ["sizes that state nothing", chartOf([sizeOf("S", {}), sizeOf("M", {})])],
  ])("a chart with %s", (_, chart) => {
    const outcome = recommend(torso(400), chart, { unit });
    expect(outcome).toMatchObject({ ok: false });
    expect(outcome.issues[0]).toMatchObject({ code: "chart-without-sizes", path: ["chart"] });
  });

  test("a dimension that is estimated twice, by its place", () => {
    const estimates = [...torso(400).estimates, ...body(410, 900).estimates];
    const outcome = recommend({ estimates }, pack, { unit });
    expect(outcome.issues.map(({ code, path }) => [code, path])).toEqual([
      ["estimate-repeated", ["estimates", 1]],
    ]);
    expect(outcome.issues[0]?.message).toBe("the torso length is estimated twice");
  });

  test.each([
    ["policy.fitProbability", { fitProbability: 1.1 }],
    ["policy.tieLoss", { tieLoss: -0.1 }],
    ["policy.sureProbability", { sureProbability: Number.NaN }],
    ["policy.mostFurtherReadings", { mostFurtherReadings: 1.5 }],
    ["policy.mostFurtherReadings", { mostFurtherReadings: Number.POSITIVE_INFINITY }],
  ])("a policy that makes no sense is a programmer's mistake: %s", (argument, wrong) => {
    const policy = { ...defaultPolicy, ...wrong };
    expect(() => recommend(torso(400), pack, { unit, policy })).toThrow(InvalidArgumentError);
    expect(() => recommend(torso(400), pack, { unit, policy })).toThrow(argument);
  });
});

describe("as JSON", () => {
  test("an answer comes back as it was, but for infinities, which become null", () => {
    const recommendation = answer(torso(400), torsoChart({ S: atMost(430), M: [430, 480] }));
    const back = JSON.parse(JSON.stringify(recommendation));
    expect(back.sizes[0].dimensions[0].range.interval).toMatchObject({ from: null, to: 430 });
    expect(back.beliefs[0].degreesOfFreedom).toBeNull();
    expect(back.sizes[1]).toEqual(recommendation.sizes[1]);
    expect(back.reasons).toEqual(recommendation.reasons);
    expect(back.next).toEqual(recommendation.next);
  });
});

test("sentences in inches are in eighths", () => {
  const { reasons } = answer(torso(437), torsoChart({ S: [380, 445], M: [425, 480] }), { unit: "in" });
  // 12 mm = 0.472 in, 8 mm = 0.315 in
  expect(find(reasons, "room-on-both-sides").sentence).toBe(
    "M and S both take this torso length; M leaves 1/2 in to its nearer end, S only 3/8 in.",
  );
});

import { compare, type Person } from "@tapewise/fit";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { beltOf, chartOf, priorOf, sizeOf, sureEstimate, torsoChart } from "./cases.ts";

const torso: Person = { estimates: [sureEstimate("torso-length", 450, 5)] };
const unit = "cm";

function order(person: Person, charts: Parameters<typeof compare>[1]) {
  const { ranked } = unwrap(compare(person, charts, { unit }));
  return ranked.map(({ recommendation, beforeNext }) => [recommendation.chart, beforeNext?.code]);
}

// 450 ± 5 mm: Φ(2) = 0.97725, Φ(1.9) = 0.971283, Φ(1) = 0.841345 (printed tables).
const roomy = torsoChart({ M: [400, 500] }, { chart: "Roomy" });
const close = torsoChart({ M: [400, 460] }, { chart: "Close", harness: "adjustable" });
const own = torsoChart({ M: [400, 459.5] }, { chart: "Own", cut: "women" });
const tight = torsoChart({ M: [400, 455] }, { chart: "Tight", cut: "women", harness: "adjustable" });
const far = torsoChart({ M: [500, 550] }, { chart: "Far", cut: "women", harness: "adjustable" });
const farther = torsoChart({ M: [520, 580] }, { chart: "Farther" });

describe("ranking", () => {
  test("the likelier fit stands first", () => {
    expect(order(torso, [far, tight, roomy])).toEqual([
      ["Roomy", "likelier-fit"],
      ["Tight", "likelier-fit"],
      ["Far", undefined],
    ]);
  });

  test("among close ones the person's own cut goes first", () => {
    expect(order({ ...torso, cut: "women" }, [roomy, close, own])).toEqual([
      ["Own", "cut-matches"],
      ["Roomy", "likelier-fit"],
      ["Close", undefined],
    ]);
    expect(order({ ...torso, cut: "men" }, [roomy, close, own])[0]?.[0]).toBe("Roomy");
  });

  test("then, for a first pack, a harness that can be adjusted (common practice)", () => {
    expect(order({ ...torso, firstPack: true }, [roomy, close, own])).toEqual([
      ["Close", "adjustable-for-first-pack"],
      ["Roomy", "likelier-fit"],
      ["Own", undefined],
    ]);
    expect(order({ ...torso, firstPack: true, cut: "women" }, [roomy, close, own])[0]).toEqual([
      "Own",
      "cut-matches",
    ]);
  });

  test("neither outweighs more fit than the tie loss", () => {
    expect(order({ ...torso, cut: "women", firstPack: true }, [tight, roomy])[0]).toEqual([
      "Roomy",
      "likelier-fit",
    ]);
  });

  test("neither speaks for a pack that does not fit: of those the nearer one goes first", () => {
    const person: Person = { ...torso, cut: "women", firstPack: true };
    expect(
      order(person, [
        { ...farther, cut: "women" },
        { ...far, cut: "men", harness: "fixed" },
      ]),
    ).toEqual([
      ["Far", "smaller-misfit"],
      ["Farther", undefined],
    ]);
  });

  test("where both hardly fit, the misfit decides and says so", () => {
    // Each has 10 scales to go or more: no chance that would count, 5 cm against 7 cm.
    const at = (from: number, chart: string) => torsoChart({ M: [from, from + 1] }, { chart });
    expect(order(torso, [at(520, "B"), at(502, "A"), at(500, "C")])[0]?.[0]).toBe("C");
    const equals = order(torso, [at(700, "B"), at(680, "A")]);
    expect(equals).toEqual([
      ["A", "smaller-misfit"],
      ["B", undefined],
    ]);
  });

  test("what is equal stands in order of the names", () => {
    const twin = { ...roomy, chart: "Another" };
    expect(order(torso, [roomy, twin])).toEqual([
      ["Another", "equal-fit"],
      ["Roomy", undefined],
    ]);
  });

  test("a hip belt that does not fit counts, where belts are sized apart", () => {
    const withBelt = (chart: string, to: number) =>
      chartOf([sizeOf("M", { "torso-length": [400, 500] })], {
        chart,
        belts: [beltOf("one", { "hip-belt-girth": [800, to] })],
      });
    const person: Person = { estimates: [...torso.estimates, sureEstimate("hip-belt-girth", 950, 10)] };
    const { ranked } = unwrap(compare(person, [withBelt("A", 940), withBelt("B", 1000)], { unit }));
    expect(ranked.map(({ recommendation }) => recommendation.chart)).toEqual(["B", "A"]);
    // Belt A: Φ(−1) = 0.158655
    expect(ranked[0]?.beforeNext?.facts.otherProbability).toBeCloseTo(0.158655, 5);
  });
});

describe("words", () => {
  test("each says why it stands before the next", () => {
    const { ranked } = unwrap(compare(torso, [far, tight, roomy], { unit }));
    expect(ranked.map(({ rank }) => rank)).toEqual([1, 2, 3]);
    expect(ranked[0]?.beforeNext?.sentence).toBe(
      "Roomy is likelier to fit (more than 99 %) than Tight (84 %).",
    );
    expect(ranked[2]).not.toHaveProperty("beforeNext");
  });

  test("no pack is called likelier where the figures shown are the same", () => {
    // Φ(3) = 0.99865, Φ(4) = 0.99997
    const [fully, nearly] = [470, 465].map((to) => torsoChart({ M: [400, to] }, { chart: `To ${to}` }));
    if (fully === undefined || nearly === undefined) throw new Error("two charts");
    const [first] = unwrap(compare(torso, [nearly, fully], { unit })).ranked;
    expect(first?.beforeNext?.sentence).toBe("To 470 and To 465 fit about equally well.");
    // Φ(−.01) = 0.496011 against Φ(0) = ½, both off by some 2 mm on average.
    const half = [449.95, 450].map((to) => torsoChart({ M: [400, to] }, { chart: `To ${to}` }));
    expect(order(torso, half)).toEqual([
      ["To 450", "equal-fit"],
      ["To 449.95", undefined],
    ]);
  });
});

describe("what cannot be judged", () => {
  const girths = chartOf([sizeOf("M", { "chest-girth": [900, 1000] })], { chart: "Girths" });

  test("is left out and reported with its position", () => {
    const outcome = compare(torso, [roomy, girths], { unit });
    expect(unwrap(outcome).ranked).toHaveLength(1);
    expect(outcome.issues.map(({ code, path }) => [code, path])).toEqual([
      ["chart-not-judged", ["charts", 1, "estimates"]],
    ]);
  });

  test("fails only where no chart is left", () => {
    const outcome = compare(torso, [girths, chartOf([], { chart: "Empty" })], { unit });
    expect(outcome.ok).toBe(false);
    expect(outcome.issues.map(({ code, path }) => [code, path])).toEqual([
      ["chart-not-judged", ["charts", 0, "estimates"]],
      ["chart-without-sizes", ["charts", 1, "chart"]],
    ]);
  });

  test("no charts at all", () => {
    const outcome = compare(torso, [], { unit });
    expect(outcome.issues.map(({ code, path }) => [code, path])).toEqual([["no-charts", ["charts"]]]);
  });

  test("what is wrong with the person is said once, and at the person", () => {
    const twice: Person = { estimates: [...torso.estimates, ...torso.estimates] };
    const outcome = compare(twice, [roomy, close], { unit });
    expect(outcome.issues.map(({ code, path }) => [code, path])).toEqual([
      ["estimate-repeated", ["estimates", 1]],
    ]);
  });

  test("what is questioned in the readings is asked once", () => {
    const doubtful: Person = { ...torso, prior: priorOf({ "torso-length": [350, 20] }) };
    const outcome = compare(doubtful, [roomy, close], { unit });
    expect(outcome.issues.map(({ code }) => code)).toEqual(["estimate-unlikely"]);
    for (const { recommendation } of unwrap(outcome).ranked) expect(recommendation.questions).toHaveLength(1);
  });

  test("a broken prior is a programmer's mistake", () => {
    const prior = { ...priorOf({ "torso-length": [430, 20] }), covarianceMm2: [[-1]] };
    expect(() => compare({ ...torso, prior }, [roomy], { unit })).toThrow(InvalidArgumentError);
  });
});

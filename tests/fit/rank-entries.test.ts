import { compare, type Person } from "@tapewise/fit";
import { unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { beltOf, chartOf, sizeOf, sureEstimate, torsoChart } from "./cases.ts";

const torso = sureEstimate("torso-length", 450, 5);
const belt = sureEstimate("hip-belt-girth", 900, 8);

function order(person: Person, charts: Parameters<typeof compare>[1]) {
  const { ranked } = unwrap(compare(person, charts, { unit: "cm" }));
  return ranked.map(({ recommendation, beforeNext }) => [recommendation.chart, beforeNext?.code]);
}

function first(person: Person, charts: Parameters<typeof compare>[1]) {
  return unwrap(compare(person, charts, { unit: "cm" })).ranked[0]?.beforeNext?.sentence;
}

describe("a chart that says nothing of the length of the back", () => {
  const girths = chartOf([sizeOf("M", { "hip-belt-girth": [700, 1100] })], { chart: "Girths" });
  // Φ(.4) = 0.655 and Φ(−.4) = 0.345 (printed tables).
  const lengths = torsoChart({ M: [400, 452] }, { chart: "Lengths" });
  const short = torsoChart({ M: [400, 448] }, { chart: "Short" });

  test("goes behind one that fits by it, however sure its girths are", () => {
    expect(order({ estimates: [torso, belt] }, [girths, lengths])).toEqual([
      ["Lengths", "harness-length-judged"],
      ["Girths", undefined],
    ]);
    expect(first({ estimates: [torso, belt] }, [girths, lengths])).toBe(
      "Lengths was judged by a length of the back and Girths was not, so that its harness may be too long or too short.",
    );
  });

  test("goes before one that does not fit by it", () => {
    expect(order({ estimates: [torso, belt] }, [short, girths])).toEqual([
      ["Girths", "likelier-fit"],
      ["Short", undefined],
    ]);
  });

  test("goes behind one that does not fit where it does not fit either", () => {
    const tight = chartOf([sizeOf("M", { "hip-belt-girth": [700, 899] })], { chart: "Tight" });
    // Φ(−1/8) = 0.450 against 0.345.
    expect(order({ estimates: [torso, belt] }, [tight, short])).toEqual([
      ["Short", "harness-length-judged"],
      ["Tight", undefined],
    ]);
  });

  test("is ranked by its fit where no length of the back was read", () => {
    const stated = chartOf([sizeOf("M", { "torso-length": [400, 500], "hip-belt-girth": [700, 910] })], {
      chart: "Lengths too",
    });
    expect(order({ estimates: [belt] }, [stated, girths])[0]).toEqual(["Girths", "likelier-fit"]);
  });
});

describe("packs that fit about equally well", () => {
  // Φ(2) = 0.97725 twice; the belt is inside by ten scales and more.
  const lengths = torsoChart({ M: [400, 460] }, { chart: "A lengths", cut: "women" });
  const both = chartOf([sizeOf("M", { "torso-length": [400, 459.8], "hip-belt-girth": [700, 1000] })], {
    chart: "B both",
  });
  const person: Person = { estimates: [torso, belt], cut: "women" };

  test("the one that was judged by more of the readings goes first, before the cut", () => {
    expect(order(person, [lengths, both])).toEqual([
      ["B both", "judged-by-more"],
      ["A lengths", undefined],
    ]);
    expect(first(person, [lengths, both])).toBe(
      "B both and A lengths fit about equally well; B both was judged by 2 of the lengths that were read, A lengths by 1.",
    );
  });

  test("a belt that is sized apart counts among them", () => {
    const apart = {
      ...lengths,
      chart: "C apart",
      belts: [beltOf("one", { "hip-belt-girth": [700, 1000] })],
    };
    expect(order(person, [lengths, apart])[0]).toEqual(["C apart", "judged-by-more"]);
  });

  test("one reading counts once, though a chart states two girths that it is held against", () => {
    const hips = chartOf(
      [
        sizeOf("M", {
          "torso-length": [400, 460],
          "hip-belt-girth": [700, 1000],
          "unstated-hip-girth": [700, 1000],
        }),
      ],
      { chart: "D hips" },
    );
    expect(order(person, [hips, both])[0]).not.toContain("judged-by-more");
  });

  test("where they are judged by as many, the cut decides: the own, then any, then another", () => {
    const cutFor = (cut: "men" | "women" | "unisex" | "youth", chart: string) => ({ ...lengths, cut, chart });
    const { cut, ...uncut } = lengths;
    const packs = [
      cutFor("women", "Other"),
      { ...uncut, chart: "Silent" },
      cutFor("unisex", "Any"),
      cutFor("men", "Own"),
      cutFor("youth", "Youth"),
    ];
    expect(order({ ...person, cut: "men" }, packs)).toEqual([
      ["Own", "cut-matches"],
      ["Any", "equal-fit"],
      ["Silent", "other-cut"],
      ["Other", "equal-fit"],
      ["Youth", undefined],
    ]);
    const [silent, other] = [packs[1], packs[0]];
    if (silent === undefined || other === undefined) throw new Error("two packs");
    expect(first({ ...person, cut: "men" }, [other, silent])).toBe(
      "Silent and Other fit about equally well; Other is cut for other bodies.",
    );
  });
});

test("each says where its chart stood", () => {
  const charts = [500, 455, 460].map((to) => torsoChart({ M: [400, to] }, { chart: `To ${to}` }));
  const girths = chartOf([sizeOf("M", { "chest-girth": [900, 1000] })], { chart: "Girths" });
  const { ranked } = unwrap(compare({ estimates: [torso] }, [girths, ...charts], { unit: "cm" }));
  expect(ranked.map(({ index, recommendation }) => [index, recommendation.chart])).toEqual([
    [1, "To 500"],
    [3, "To 460"],
    [2, "To 455"],
  ]);
});

import type { Person } from "@tapewise/fit";
import { describe, expect, test } from "vitest";
import { answer, beltOf, chartOf, codes, find, priorOf, sizeOf, sureEstimate, torsoChart } from "./cases.ts";

const torso = sureEstimate("torso-length", 400, 5);
const belt = (mm: number) => sureEstimate("hip-belt-girth", mm, 8);
const hip = (mm: number) => sureEstimate("hip-girth", mm, 8);

describe("what was read and the chart says nothing of", () => {
  const lengths = torsoChart({ S: [380, 440], M: [430, 490] });

  test("is named, for it was not judged", () => {
    const { reasons } = answer({ estimates: [torso, belt(900)] }, lengths);
    expect(find(reasons, "dimension-not-charted").sentence).toBe(
      "The chart says nothing of the hip-belt girth, so that was not judged.",
    );
    expect(codes(answer({ estimates: [torso] }, lengths).reasons)).not.toContain("dimension-not-charted");
  });

  test("is not, where belts that are sized apart or a size that is not picked state it", () => {
    const apart = { ...lengths, belts: [beltOf("one", { "hip-belt-girth": [800, 1000] })] };
    expect(codes(answer({ estimates: [torso, belt(900)] }, apart).reasons)).not.toContain(
      "dimension-not-charted",
    );
  });

  test("a stature is not missed where a prior has made use of it", () => {
    const estimates = [torso, sureEstimate("stature", 1650, 10)];
    const prior = priorOf({ "torso-length": [410, 20] });
    expect(codes(answer({ estimates, prior }, lengths).reasons)).not.toContain("dimension-not-charted");
    expect(find(answer({ estimates }, lengths).reasons, "dimension-not-charted").facts.dimension).toBe(
      "stature",
    );
  });

  test("neither girth is missed where the chart says “hip” and not which", () => {
    const hips = chartOf([sizeOf("S", { "torso-length": [380, 440], "unstated-hip-girth": [700, 1000] })]);
    expect(codes(answer({ estimates: [torso, belt(850), hip(950)] }, hips).reasons)).not.toContain(
      "dimension-not-charted",
    );
  });
});

describe("a pack that is cut for others", () => {
  const lengths = torsoChart({ S: [380, 440] });
  const reasonsFor = (cut: NonNullable<Person["cut"]>, chartCut?: "women" | "men" | "unisex" | "youth") =>
    answer({ estimates: [torso], cut }, chartCut === undefined ? lengths : { ...lengths, cut: chartCut })
      .reasons;

  test("says so", () => {
    expect(find(reasonsFor("men", "women"), "cut-differs").sentence).toBe(
      "This pack is cut for women and not for men: the harness may sit badly even where the lengths fit.",
    );
    expect(find(reasonsFor("women", "youth"), "cut-differs").facts).toEqual({ cut: "youth", own: "women" });
    expect(find(reasonsFor("youth", "men"), "cut-differs").facts).toEqual({ cut: "men", own: "youth" });
  });

  test("not where it suits, suits all, or nobody says", () => {
    expect(codes(reasonsFor("men", "men"))).not.toContain("cut-differs");
    expect(codes(reasonsFor("men", "unisex"))).not.toContain("cut-differs");
    expect(codes(reasonsFor("unisex", "men"))).not.toContain("cut-differs");
    expect(codes(reasonsFor("men"))).not.toContain("cut-differs");
    expect(codes(answer({ estimates: [torso] }, { ...lengths, cut: "men" }).reasons)).not.toContain(
      "cut-differs",
    );
  });
});

describe("a chart that says “hip” where both girths were read", () => {
  const sizes = [
    sizeOf("S", { "torso-length": [380, 440], "unstated-hip-girth": [700, 880] }),
    sizeOf("M", { "torso-length": [390, 450], "unstated-hip-girth": [860, 1000] }),
  ];
  const hips = chartOf(sizes);

  test("the other girth is named with the size that it would pick", () => {
    const { pick, reasons } = answer({ estimates: [torso, belt(840), hip(950)] }, hips);
    expect(pick).toBe("S");
    expect(find(reasons, "other-girth-picks").sentence).toBe(
      "By the hip girth it would be M and not S: ask the maker which girth “hip” means.",
    );
  });

  test("or with how badly it fits, where the pick stays", () => {
    const { pick, reasons } = answer({ estimates: [torso, belt(840), hip(950)] }, chartOf(sizes.slice(0, 1)));
    expect(pick).toBe("S");
    // (880 − 950)/8 = −8.75 scales
    expect(find(reasons, "other-girth-unlikely").sentence).toBe(
      "By the hip girth S would fit with less than 1 %: ask the maker which girth “hip” means.",
    );
  });

  test("nothing is said where both agree, or where only one was read", () => {
    const agreeing = codes(answer({ estimates: [torso, belt(800), hip(840)] }, hips).reasons);
    const prior = priorOf({ "hip-girth": [950, 10] });
    const alone = codes(answer({ estimates: [torso, belt(840)], prior }, hips).reasons);
    for (const list of [agreeing, alone]) {
      expect(list.filter((code) => code.startsWith("other-girth"))).toEqual([]);
    }
  });

  test("belts that are sized apart are asked about as well", () => {
    const apart = chartOf([sizeOf("S", { "torso-length": [380, 440] })], {
      belts: [
        beltOf("small", { "unstated-hip-girth": [700, 880] }),
        beltOf("large", { "unstated-hip-girth": [860, 1000] }),
      ],
    });
    const { belt: picked, reasons } = answer({ estimates: [torso, belt(840), hip(950)] }, apart);
    expect(picked?.pick).toBe("small");
    expect(find(reasons, "other-girth-picks").facts).toMatchObject({ size: "small", other: "large" });
  });
});

import { defaultPolicy, type Person } from "@tapewise/fit";
import { describe, expect, test } from "vitest";
import { lookAhead } from "../../packages/fit/src/look-ahead.ts";
import { answer, chartOf, codes, estimateOf, find, sizeOf, sureEstimate, torsoChart } from "./cases.ts";

const torso = (mm: number): Person => ({ estimates: [sureEstimate("torso-length", mm, 5)] });

describe("the order in which a tie is settled", () => {
  test("the hip belt goes with the room: both count in the probability of the size", () => {
    const pack = chartOf([
      sizeOf("S", { "torso-length": [380, 445], "hip-belt-girth": [700, 870] }),
      sizeOf("M", { "torso-length": [425, 480], "hip-belt-girth": [850, 1000] }),
    ]);
    const at = (beltMm: number) => {
      const estimates = [...torso(436).estimates, sureEstimate("hip-belt-girth", beltMm, 8)];
      return answer({ estimates }, pack).pick;
    };
    // Torso: Φ(1.8) = 0.964 for S, Φ(2.2) = 0.986 for M. The belt outweighs it only by more than that.
    expect(at(860)).toBe("M");
    expect(at(850)).toBe("S");
  });

  test("the hip belt goes before build", () => {
    const pack = chartOf([
      sizeOf("S", { "torso-length": [380, 445], "hip-belt-girth": [700, 880] }),
      sizeOf("M", { "torso-length": [425, 480], "hip-belt-girth": [860, 1000] }),
    ]);
    const at = (beltMm: number) => {
      const estimates = [...torso(435).estimates, sureEstimate("hip-belt-girth", beltMm, 8)];
      return answer({ estimates, build: ["large-chest"] }, pack).pick;
    };
    // Φ(.25) = 0.599 of M against nearly all of S: no close call.
    expect(at(862)).toBe("S");
    expect(at(870)).toBe("M");
  });

  test("build goes before a harness that can be adjusted", () => {
    const pack = chartOf([
      sizeOf("S", { "torso-length": [380, 445] }, { harness: "adjustable" }),
      sizeOf("M", { "torso-length": [425, 480] }, { harness: "fixed" }),
    ]);
    expect(answer(torso(436), pack).pick).toBe("S");
    expect(answer({ ...torso(436), build: ["muscular-back"] }, pack).pick).toBe("M");
  });

  test("a harness that can be adjusted goes before the smaller misfit", () => {
    const pack = (harness: "adjustable" | "fixed") =>
      chartOf([
        sizeOf("S", { "torso-length": [380, 445] }, { harness: "fixed" }),
        sizeOf("M", { "torso-length": [425, 480] }, { harness }),
      ]);
    // Below 435 mm S is likelier and off by less.
    expect(answer(torso(434), pack("fixed")).pick).toBe("S");
    expect(answer(torso(434), pack("adjustable")).pick).toBe("M");
  });

  test("what can be swapped goes for all sizes of a chart, and so settles nothing between them", () => {
    const chart = torsoChart({ S: [380, 445], M: [425, 480] });
    for (const mm of [433, 437]) {
      const swaps = { ...chart, swappable: ["hip-belt", "harness"] as const };
      expect(answer(torso(mm), swaps).pick).toBe(answer(torso(mm), chart).pick);
    }
  });

  test("the smaller misfit goes before the room, and the room before the names", () => {
    // Both are certain: 8 mm to the nearer end of S, 12 mm of M.
    const exactly: Person = { estimates: [sureEstimate("torso-length", 437, 0)] };
    expect(answer(exactly, torsoChart({ A: [380, 445], B: [425, 480] })).pick).toBe("B");
    // Both are hopeless: 20 mm short of one size, 30 mm beyond the other, which is called first.
    const between: Person = { estimates: [sureEstimate("torso-length", 430, 1)] };
    expect(answer(between, torsoChart({ A: [300, 400], B: [450, 460] })).pick).toBe("B");
  });

  test.each([
    ["S", "M"],
    ["A", "B"],
    ["B", "A"],
  ])("what is equal in all stands in order of the ranges, whatever the sizes are called: %s, %s", (a, b) => {
    const { pick, reasons } = answer(torso(435), torsoChart({ [a]: [380, 445], [b]: [425, 490] }));
    expect(pick).toBe(b);
    expect(codes(reasons)).toContain("equal-chance");
  });
});

describe("a pick that build holds", () => {
  const chart = torsoChart({ S: [380, 440], M: [430, 490] });
  const policy = { ...defaultPolicy, changeProbability: 0, worthwhileGain: 0, sureProbability: 1 };
  const estimate = estimateOf("torso-length", ["43.52 cm"]);

  test("is held also where it comes first by its fit", () => {
    const of = (build: Person["build"] & object) =>
      answer({ estimates: [estimate], build }, chart, { unit: "cm", policy });
    const { sizes, pick, next } = of(["broad-shoulders"]);
    expect(pick).toBe("M");
    expect(of([]).pick).toBe("M");

    const picked = sizes.find((fit) => fit.size === "M");
    if (picked === undefined) throw new Error("no size M");
    const { count, changeProbability, gainProbability } = find(next, "measure-again").facts;
    const lasting = estimate.lastingMm ** 2;
    const afterSdMm = Math.sqrt(lasting + estimate.perReadingMm ** 2 / (1 + Number(count)));
    const now = { meanMm: 435.2, sdMm: estimate.uncertaintyMm };
    const held = lookAhead({ fits: sizes, pick: picked, hold: 0.05 }, "torso-length", now, afterSdMm);
    const free = lookAhead({ fits: sizes, pick: picked, hold: 0 }, "torso-length", now, afterSdMm);
    expect(Number(changeProbability)).toBeCloseTo(held.changeProbability, 12);
    expect(Number(gainProbability)).toBeCloseTo(held.gainProbability, 12);
    expect(held.changeProbability).toBeLessThan(free.changeProbability);
  });
});

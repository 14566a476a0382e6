import { defaultPolicy, type Person } from "@tapewise/fit";
import { describe, expect, test } from "vitest";
import { answer, beltOf, chartOf, codes, find, priorOf, sizeOf, sureEstimate, torsoChart } from "./cases.ts";

const torso = (mm: number, uncertaintyMm = 8): Person => ({
  estimates: [sureEstimate("torso-length", mm, uncertaintyMm)],
});

describe("a pick that is not sure, where no planned look would help", () => {
  const chart = torsoChart({ M: [420, 470], L: [460, 520] });

  test("near the end of the last size: read again, and compare another pack", () => {
    // 1 mm inside the end: Φ(1/8) = 0.549738.
    const { verdict, pick, next } = answer(torso(519), chart);
    expect([verdict, pick]).toEqual(["fits", "L"]);
    const confirm = find(next, "confirm-reading");
    expect(confirm.facts).toMatchObject({ dimension: "torso-length", size: "L" });
    expect(confirm.sentence).toBe("Read the torso length again before you buy: only 55 % speaks for L.");
    // Φ(−1/8) = 0.450262
    expect(find(next, "consider-other-chart").sentence).toBe(
      "Compare another pack: with 45 % the torso length lies above all that this one covers.",
    );
  });

  test("another pack is proposed from a chance of a quarter on", () => {
    // Φ(−.6745) = 1/4: 5.396 mm inside.
    expect(codes(answer(torso(520 - 5.35), chart).next)).toContain("consider-other-chart");
    expect(codes(answer(torso(520 - 5.45), chart).next)).not.toContain("consider-other-chart");
  });

  test("nothing is said of a pick that is sure, nor where no further reading is wanted", () => {
    expect(codes(answer(torso(500), chart).next)).toEqual(["check-on-body", "see-fitter"]);
    const policy = { ...defaultPolicy, mostFurtherReadings: 0 };
    const { next } = answer(torso(519), chart, { unit: "cm", policy });
    expect(codes(next)).not.toContain("confirm-reading");
  });

  test("a neighbour that the hips exclude leaves the torso length to be read again", () => {
    const hips = chartOf([
      sizeOf("M", { "torso-length": [420, 470], "hip-belt-girth": [700, 800] }),
      sizeOf("L", { "torso-length": [460, 520], "hip-belt-girth": [850, 1000] }),
    ]);
    const estimates = [...torso(469).estimates, sureEstimate("hip-belt-girth", 750, 5)];
    const { pick, next } = answer({ estimates }, hips);
    expect(pick).toBe("M");
    expect(find(next, "confirm-reading").facts.dimension).toBe("torso-length");
    expect(codes(next)).not.toContain("consider-other-chart");
  });

  test("what nobody has read cannot be read again", () => {
    const person: Person = { estimates: [], prior: priorOf({ "torso-length": [519, 8] }) };
    const { next } = answer(person, chart);
    expect(codes(next)).toContain("measure-dimension");
    expect(codes(next)).not.toContain("confirm-reading");
  });

  test("a belt that is sized apart is confirmed by its own girth", () => {
    const apart = chartOf([sizeOf("M", { "torso-length": [420, 470] })], {
      belts: [beltOf("large", { "hip-belt-girth": [860, 1000] })],
    });
    const estimates = [...torso(445, 5).estimates, sureEstimate("hip-belt-girth", 999, 8)];
    const { next } = answer({ estimates }, apart);
    expect(find(next, "confirm-reading").sentence).toBe(
      "Read the hip-belt girth again before you buy: only 55 % speaks for large.",
    );
  });
});

describe("between sizes", () => {
  test("in a gap where neither size has a chance, another pack is proposed", () => {
    const wide = torsoChart({ S: [380, 430], M: [450, 500] });
    // 10 mm to either size are five scales: no chance worth the name.
    const { verdict, next } = answer(torso(440, 2), wide);
    expect(verdict).toBe("between-sizes");
    expect(find(next, "other-chart").sentence).toBe(
      "Look at another pack: no size of this one is made for this torso length.",
    );
    expect(codes(next)).not.toContain("confirm-reading");
    // Two scales: 0.0228 for either.
    expect(codes(answer(torso(440, 5), wide).next)).not.toContain("other-chart");
  });

  test("not where two dimensions ask for two sizes: each has one that is made for it", () => {
    const pack = chartOf([
      sizeOf("S", { "torso-length": [380, 430], "hip-belt-girth": [700, 800] }),
      sizeOf("M", { "torso-length": [430, 480], "hip-belt-girth": [800, 900] }),
    ]);
    const estimates = [...torso(400, 2).estimates, sureEstimate("hip-belt-girth", 850, 5)];
    expect(codes(answer({ estimates }, pack).next)).not.toContain("other-chart");
  });
});

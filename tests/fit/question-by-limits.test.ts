import type { Person } from "@tapewise/fit";
import { describe, expect, test } from "vitest";
import { answer, chartOf, codes, find, priorOf, sizeOf, sureEstimate, torsoChart } from "./cases.ts";

const chart = torsoChart({ S: [380, 430], M: [430, 480], L: [480, 530] });
const torso = (mm: number): Person => ({ estimates: [sureEstimate("torso-length", mm, 5)] });

/** The limits of the torso length, children included: 200 and 610 mm (assumption of the landmarks package). */
describe("a reading that nobody has", () => {
  test("is questioned without any prior, and never altered", () => {
    const { questions, estimates, pick, probability } = answer(torso(650), chart);
    expect(questions).toHaveLength(1);
    expect(questions[0]).toMatchObject({
      code: "estimate-implausible",
      severity: "warning",
      path: ["readings", "torso-length"],
      message: "650 mm for the torso length is 40 mm above what people have, children included",
      facts: { readingMm: 650, fromMm: 200, toMm: 610, differenceMm: 40, side: "above" },
    });
    expect(estimates[0]?.mm).toBe(650);
    expect([pick, probability]).toEqual(["L", expect.closeTo(0, 12)]);
  });

  test("below as above, and the ends themselves are plausible", () => {
    expect(answer(torso(190), chart).questions[0]?.facts).toMatchObject({ side: "below", differenceMm: 10 });
    for (const mm of [200, 610]) expect(answer(torso(mm), chart).questions).toEqual([]);
  });

  test("is looked at again first, and no other pack is proposed for it", () => {
    const { verdict, next } = answer(torso(650), chart);
    expect(verdict).toBe("measure-again");
    expect(next[0]?.sentence).toBe(
      "Look at the torso length again before you trust this: 65.0 cm is 4.0 cm above what is usual for anybody, children included.",
    );
    expect(codes(next)).toEqual(["check-reading", "check-on-body", "see-fitter"]);
    // Within the limits the same chart is simply too short.
    expect(answer(torso(600), chart).verdict).toBe("outside-the-range");
  });

  test("is questioned once where the prior questions it as well", () => {
    const person = { ...torso(650), prior: priorOf({ "torso-length": [410, 20] }) };
    expect(answer(person, chart).questions.map(({ code }) => code)).toEqual(["estimate-unlikely"]);
  });
});

describe("a reading that the prior distrusts", () => {
  const prior = priorOf({ "torso-length": [394, 20.6] }, "women 160 cm tall");

  test("leaves pick and probabilities as they are, and no verdict but to measure again", () => {
    // 490 against 394 mm: 96/√(20.6² + 5²) = 4.5 scales.
    const { verdict, pick, probability, next } = answer({ ...torso(490), prior }, chart);
    expect(verdict).toBe("measure-again");
    expect(codes(next)[0]).toBe("check-reading");
    // Posterior: variance 1/(1/20.6² + 1/25) = 23.6094, mean 490 − 96 · 23.6094/424.36 = 484.659; Φ(.9590) = 0.8312.
    expect(pick).toBe("L");
    expect(probability).toBeCloseTo(0.8312, 4);
  });

  test("is no doubt about a chart that does not size by it", () => {
    const belts = chartOf([sizeOf("M", { "hip-belt-girth": [800, 950] })]);
    const estimates = [...torso(490).estimates, sureEstimate("hip-belt-girth", 880, 8)];
    const { verdict, questions, next } = answer({ estimates, prior }, belts);
    expect([verdict, questions.length]).toEqual(["fits", 1]);
    expect(codes(next)[0]).toBe("check-reading");
  });

  test("says how far off it is the right way round", () => {
    const [question] = answer({ ...torso(490), prior }, chart).questions;
    expect(question?.message).toBe(
      "490 mm for the torso length is 96 mm above what is usual for women 160 cm tall",
    );
    expect(find(answer({ ...torso(490), prior }, chart).next, "check-reading").sentence).toBe(
      "Look at the torso length again before you trust this: 49.0 cm is 9.6 cm above what is usual for women 160 cm tall.",
    );
  });
});

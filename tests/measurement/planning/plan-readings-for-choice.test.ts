import { type ChoiceToPlan, chanceOfRightSize, planReadingsForChoice } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

const choice: ChoiceToPlan = {
  error: { perReadingMm: 8, lastingMm: 3 },
  sizes: [
    { from: 380, to: 435 },
    { from: 425, to: 480 },
    { from: 470, to: 530 },
  ],
  belief: { meanMm: 455, sdMm: 25 },
  wantedChance: 0.97,
};

describe("planReadingsForChoice", () => {
  test("finds the first number that is enough", () => {
    const plan = planReadingsForChoice(choice);
    expect(plan).toMatchObject({ isReachable: true, count: 3 });
    const at = (count: number) =>
      chanceOfRightSize(choice.sizes, choice.belief, Math.hypot(3, 8 / Math.sqrt(count)));
    expect(plan.chance).toBe(at(3));
    expect(plan.chance).toBeGreaterThanOrEqual(0.97);
    expect(at(2)).toBeLessThan(0.97);
    expect(plan.chanceOfOne).toBe(at(1));
  });

  test("says that the lasting part stands in the way", () => {
    const plan = planReadingsForChoice({ ...choice, error: { perReadingMm: 8, lastingMm: 7 } });
    expect(plan).toMatchObject({ isReachable: false, reason: "lasting" });
    expect(plan).not.toHaveProperty("count");
    expect(plan.chanceAtBest).toBeLessThan(0.97);
    expect(plan.possibleChance).toBeGreaterThan(0.97);
  });

  test("says that there is no size for many", () => {
    const plan = planReadingsForChoice({ ...choice, belief: { meanMm: 520, sdMm: 25 } });
    expect(plan).toMatchObject({ isReachable: false, reason: "sizes" });
  });

  test("says that nobody would read so often", () => {
    const plan = planReadingsForChoice({ ...choice, mostReadings: 2 });
    expect(plan).toMatchObject({ isReachable: false, reason: "too-many" });
    expect(plan.chanceAtBest).toBeGreaterThan(0.97);
  });

  test("one reading can be enough", () => {
    expect(planReadingsForChoice({ ...choice, wantedChance: 0.5 })).toMatchObject({ count: 1 });
  });

  test.each([
    [{ wantedChance: 1 }, "wantedChance"],
    [{ mostReadings: 0 }, "mostReadings"],
    [{ error: { perReadingMm: -1, lastingMm: 0 } }, "perReadingMm"],
    [{ sizes: [] }, "sizes"],
  ])("refuses %o", (change, argument) => {
    expect(() => planReadingsForChoice({ ...choice, ...change })).toThrow(`${argument} must be`);
  });
});

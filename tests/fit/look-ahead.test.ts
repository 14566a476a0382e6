import { atLeast, atMost, type Interval, interval } from "@tapewise/intervals";
import { describe, expect, test } from "vitest";
import { lookAhead } from "../../packages/fit/src/look-ahead.ts";
import { answer, sureEstimate, torsoChart } from "./cases.ts";

/** Two sizes that meet where the body is expected: the longer one is picked. */
function standingAt(meanMm: number, sdMm: number, sizes: Readonly<Record<string, Interval>>, pick: string) {
  const { sizes: fits } = answer(
    { estimates: [sureEstimate("torso-length", meanMm, sdMm)] },
    torsoChart(sizes),
  );
  const picked = fits.find((fit) => fit.size === pick);
  if (picked === undefined) throw new Error(`no size ${pick}`);
  return { fits, pick: picked, hold: 0 };
}

const touching = { S: atMost(430), M: atLeast(430) };

describe("two sizes that meet just where the body is expected", () => {
  // The new mean lies τ·X off the border, X standard normal and τ² = s² − s′²; then the better size fits
  // with Φ(τ|X|/s′), and E Φ(a|X|) = ½ + atan(a)/π (by rotating two independent normal variables).
  const standing = standingAt(430, 10, touching, "M");

  test.each([
    ["half of the variance is removed", 10 / Math.SQRT2, 0.25],
    ["three quarters of it", 5, Math.atan(Math.sqrt(3)) / Math.PI],
    ["all of it", 0, 0.5],
  ])("%s", (_, after, gain) => {
    const ahead = lookAhead(standing, "torso-length", { meanMm: 430, sdMm: 10 }, after);
    expect(ahead.changeProbability).toBe(0.5);
    // The size on the other side is taken in half of the cases, and the pick was right in the rest.
    expect(ahead.gainProbability).toBeCloseTo(gain, 2);
  });

  test("half of the chance goes where a reason holds the pick", () => {
    const held = lookAhead({ ...standing, hold: 1 }, "torso-length", { meanMm: 430, sdMm: 10 }, 5);
    expect(held).toEqual({ changeProbability: 0, gainProbability: 0 });
  });
});

test("a body deep inside its size learns nothing that would matter", () => {
  const standing = standingAt(480, 10, touching, "M");
  const ahead = lookAhead(standing, "torso-length", { meanMm: 480, sdMm: 10 }, 5);
  expect(ahead).toEqual({ changeProbability: 0, gainProbability: 0 });
});

test("outside the chart the pick does not change, however well one reads", () => {
  const standing = standingAt(550, 10, { S: interval(380, 430), M: interval(430, 480) }, "M");
  expect(lookAhead(standing, "torso-length", { meanMm: 550, sdMm: 10 }, 0).gainProbability).toBe(0);
});

test("a dimension that no size states changes nothing", () => {
  const standing = standingAt(430, 10, touching, "M");
  const ahead = lookAhead(standing, "hip-belt-girth", { meanMm: 900, sdMm: 30 }, 5);
  expect(ahead).toEqual({ changeProbability: 0, gainProbability: 0 });
});

import { cutSizes, growthFigure } from "@tapewise/coverage";
import { InvalidArgumentError } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { crew, uniform } from "../crew.ts";

const population = crew();
const served = cutSizes({ population, dimension: "torso-length", count: 2, goal: "served", spanMm: 50 });

test("says what more sizes bring, with unit, sample, source and caveat", () => {
  const { text, points, measure } = growthFigure(served, { population, unit: "cm", survey: { people: 120 } });
  expect(measure).toBe("served");
  // 2 pnorm(1) - 1 and 2 pnorm(2) - 1.
  expect(points.map(({ value }) => value.toFixed(4))).toEqual(["0.6827", "0.9545"]);
  expect(text.title).toBe("An invented crew served by the best sizes of 5 cm, by their number");
  expect(text.description).toBe("By torso length. 1 size: 68.3 %. 2 sizes: 95.4 %.");
  expect([text.unit, text.sample, text.source, text.caveat]).toEqual([
    "cm",
    "an invented crew, 120 people measured",
    "invented",
    "for tests only",
  ]);
});

test("for fixed lengths it tells the expected distance", () => {
  const people = uniform();
  const cuts = cutSizes({ population: people, dimension: "torso-length", count: 1, goal: "misfit" });
  const { text, points } = growthFigure(cuts, { population: people, unit: "in" });
  expect(text.title).toBe("Expected distance of an invented crew to the best fixed lengths, by their number");
  // 25 mm on average, 0.98 in.
  expect(points[0]?.value).toBeCloseTo(25, 1);
  expect(text.description).toContain("1 size: 0.98 in.");
});

test("a wrong unit throws", () => {
  // @ts-expect-error figures are in cm or in
  expect(() => growthFigure(served, { population, unit: "m" })).toThrow(InvalidArgumentError);
});

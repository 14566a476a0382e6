import { parseChart } from "@tapewise/charts";
import { compare, type Person, recommend } from "@tapewise/fit";
import { parseEstimate } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { parseLength } from "@tapewise/units";
import { expect, test } from "vitest";

const [near, far] = ["Near", "Far"].map((chart) =>
  parseChart("size,torso-length (cm)\nM,42-48\n", { chart }),
);
const torso = (biasMm: number) =>
  parseEstimate({
    dimension: "torso-length",
    readings: [parseLength("45 cm")],
    error: { biasMm, repeatMm: 0, resolutionMm: 0 },
  });
const person: Person = { estimates: [torso(10)] };

test("a chart that is uncertain in itself is judged by what is believed as seen from it, and shows what was read", () => {
  if (near === undefined || far === undefined) throw new Error("no charts");
  const options = {
    unit: "cm",
    asSeenFrom: (one: Person, { chart }: { readonly chart: string }) =>
      chart === "Far" ? { estimates: [torso(30)] } : one,
  } as const;
  const { ranked } = unwrap(compare(person, [far, near], options));
  expect(ranked.map(({ recommendation }) => recommendation.chart)).toEqual(["Near", "Far"]);
  // 45 cm in the middle of 42 to 48: within 3 standard deviations of 10 mm, and within 1 of 30 mm. Φ(3) − Φ(−3) =
  // 0.9973 and Φ(1) − Φ(−1) = 0.6827, from memory: Abramowitz & Stegun (1964), table 26.1.
  const [first, second] = ranked.map(({ recommendation }) => recommendation.probability);
  expect(first).toBeCloseTo(0.9973, 4);
  expect(second).toBeCloseTo(0.6827, 4);
  expect(ranked[1]?.recommendation.estimates).toEqual(person.estimates);
  expect(unwrap(recommend(person, far, options)).probability).toBe(second);
});

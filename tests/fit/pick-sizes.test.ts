import { defaultPolicy, pickSizes, recommend } from "@tapewise/fit";
import { InvalidArgumentError } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { beltOf, chartOf, sizeOf, sureEstimate, torsoChart } from "./cases.ts";

const chart = torsoChart({ S: [380, 430], M: [420, 480] });
const torso = (mm: number) => sureEstimate("torso-length", mm, 5);

test("the size that holds the length is picked, and what is believed of the length stands beside it", () => {
  const outcome = pickSizes({ estimates: [torso(455)] }, chart);
  expect(outcome.ok && outcome.value).toEqual({
    pick: "M",
    beliefs: [
      { dimension: "torso-length", meanMm: 455, sdMm: 5, degreesOfFreedom: Infinity, from: "readings" },
    ],
  });
});

test("a belt that is sized apart is picked by its own girth", () => {
  const apart = chartOf([sizeOf("one size", { "torso-length": [380, 480] })], {
    belts: [
      beltOf("small", { "hip-belt-girth": [700, 850] }),
      beltOf("large", { "hip-belt-girth": [840, 1100] }),
    ],
  });
  const person = { estimates: [torso(420), sureEstimate("hip-belt-girth", 900, 10)] };
  const outcome = pickSizes(person, apart);
  expect(outcome.ok && [outcome.value.pick, outcome.value.belt]).toEqual(["one size", "large"]);
  const without = pickSizes({ estimates: [torso(420)] }, apart);
  expect(without.ok && "belt" in without.value).toBe(false);
});

test("where two sizes fit about equally well, build takes the longer harness, as it does in a recommendation", () => {
  const person = { estimates: [torso(425)], build: ["broad-shoulders" as const] };
  const overlap = torsoChart({ S: [380, 448], M: [404, 480] });
  const plain = pickSizes({ estimates: [torso(425)] }, overlap);
  const broad = pickSizes(person, overlap);
  // 23 mm to the upper end of S and 21 mm to the lower end of M: S is the likelier by a hair, and the longer is M.
  expect([plain.ok && plain.value.pick, broad.ok && broad.value.pick]).toEqual(["S", "M"]);
});

test("what a recommendation refuses is refused", () => {
  const twice = pickSizes({ estimates: [torso(440), torso(450)] }, chart);
  expect(twice.issues.map(({ code }) => code)).toEqual(["estimate-repeated"]);
  const silent = pickSizes({ estimates: [sureEstimate("hip-girth", 900, 5)] }, chart);
  expect(silent.issues.map(({ code }) => code)).toEqual(["chart-not-judged"]);
  const empty = pickSizes({ estimates: [torso(440)] }, chartOf([]));
  expect(empty.issues.map(({ code }) => code)).toEqual(["chart-without-sizes"]);
  expect(empty.issues).toEqual(recommend({ estimates: [torso(440)] }, chartOf([]), { unit: "cm" }).issues);
  const policy = { ...defaultPolicy, tieLoss: 2 };
  expect(() => pickSizes({ estimates: [torso(440)] }, chart, { policy })).toThrow(InvalidArgumentError);
});

import { widenByDoubt } from "@tapewise/afterwards";
import { formBeliefs } from "@tapewise/fit";
import { parseEstimate } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { referencePrior } from "@tapewise/population";
import { millimetres, parseLength } from "@tapewise/units";
import { expect, test } from "vitest";

const torso = parseEstimate({
  dimension: "torso-length",
  readings: [parseLength("440 mm"), parseLength("446 mm")],
  conditions: { measuredBy: "self", tool: "tape" },
});
const prior = referencePrior({ cut: "women", statureMm: millimetres(1710) });
const torsoOf = (person: Parameters<typeof widenByDoubt>[0]) =>
  formBeliefs(person.estimates, person.prior).of("torso-length");

test.each([{ estimates: [torso] }, { estimates: [torso], prior }, { estimates: [], prior }])(
  "the mean stays and the variance grows by that of the doubt (%#)",
  (person) => {
    const [before, after] = [torsoOf(person), torsoOf(widenByDoubt(person, "torso-length", 7))];
    expect(after?.meanMm).toBeCloseTo(before?.meanMm ?? 0, 9);
    expect((after?.sdMm ?? 0) ** 2).toBeCloseTo((before?.sdMm ?? 0) ** 2 + 49, 9);
    expect(after?.from).toBe(before?.from);
  },
);

test("without a prior the degrees of freedom grow by Welch and Satterthwaite", () => {
  const [wider] = widenByDoubt({ estimates: [torso] }, "torso-length", 7).estimates;
  const u2 = torso.uncertaintyMm ** 2;
  // GUM G.4.1 with one known part: ν (u² + v²)² / u⁴.
  expect(wider?.degreesOfFreedom).toBeCloseTo((torso.degreesOfFreedom * (u2 + 49) ** 2) / u2 ** 2, 6);
  expect((wider?.lastingMm ?? 0) ** 2).toBeCloseTo(torso.lastingMm ** 2 + 49, 9);
  expect(wider?.perReadingMm).toBe(torso.perReadingMm);
});

test("no doubt changes nothing", () => {
  expect(torsoOf(widenByDoubt({ estimates: [torso], prior }, "torso-length", 0))).toEqual(
    torsoOf({ estimates: [torso], prior }),
  );
});

test("a doubt that is no length is a mistake of the program", () => {
  expect(() => widenByDoubt({ estimates: [torso] }, "torso-length", -1)).toThrow(InvalidArgumentError);
  expect(() => widenByDoubt({ estimates: [torso] }, "torso-length", Number.NaN)).toThrow(
    InvalidArgumentError,
  );
});

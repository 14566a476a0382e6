import { priorAfter } from "@tapewise/afterwards";
import { recommend } from "@tapewise/fit";
import { InvalidArgumentError } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { gingham } from "./gingham.ts";

const length = { meanMm: 425, sdMm: 5, degreesOfFreedom: Number.POSITIVE_INFINITY };

test("the next choice goes by it", () => {
  const outcome = recommend({ estimates: [], prior: priorAfter("torso-length", length) }, gingham, {
    unit: "cm",
  });
  expect(outcome.ok && outcome.value.pick).toBe("S");
});

test("a length without a spread is no prior", () => {
  expect(() => priorAfter("torso-length", { ...length, sdMm: 0 })).toThrow(InvalidArgumentError);
  expect(() => priorAfter("torso-length", { ...length, meanMm: Number.NaN })).toThrow(InvalidArgumentError);
});

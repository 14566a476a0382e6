import type { Prior } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { type ReferencePopulation, referencePrior, womenReference } from "@tapewise/population";
import { millimetres } from "@tapewise/units";
import { expect, expectTypeOf, test } from "vitest";

test("a prior is what measurement means by it", () => {
  expectTypeOf(referencePrior).returns.toEqualTypeOf<Prior>();
  expectTypeOf(womenReference).toEqualTypeOf<ReferencePopulation>();
  expect(referencePrior({ cut: "women" }).dimensions).toHaveLength(3);
});

test("a stature is a length, and no bare number is one", () => {
  expect(referencePrior({ cut: "women", statureMm: millimetres(1710) }).dimensions).toHaveLength(3);
  // @ts-expect-error 171 what?
  expect(referencePrior({ cut: "women", statureMm: 171 }).meanMm[0]).toBeLessThan(150);
  // @ts-expect-error leave it out instead
  expect(referencePrior({ cut: "women", statureMm: undefined })).toEqual(referencePrior({ cut: "women" }));
});

test("cuts are those that were surveyed", () => {
  // @ts-expect-error nobody surveyed it
  expect(() => referencePrior({ cut: "unisex" })).toThrow(InvalidArgumentError);
  // @ts-expect-error there is no default cut
  expect(() => referencePrior({})).toThrow(InvalidArgumentError);
});

test("the figures cannot be changed", () => {
  const copy: ReferencePopulation = { ...womenReference };
  // @ts-expect-error figures are read only
  copy.count = 1;
  expect(womenReference.count).toBe(990);
  // @ts-expect-error so are their lists
  expect(typeof womenReference.meanMm.push).toBe("function");
});

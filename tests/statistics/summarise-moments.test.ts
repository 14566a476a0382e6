import { momentsOf, summariseMoments } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("the deviation divides by n − 1, and one value has none", () => {
  expect(summariseMoments({ n: 3, mean: 434, squares: 32, min: 430, max: 438 })).toEqual({
    n: 3,
    mean: 434,
    sd: 4,
    min: 430,
    max: 438,
  });
  expect(summariseMoments(momentsOf([7]))).toEqual({ n: 1, mean: 7, sd: undefined, min: 7, max: 7 });
});

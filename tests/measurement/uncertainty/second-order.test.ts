import { propagateUncertainty } from "@tapewise/measurement";
import { expect, test } from "vitest";
import { probeOf } from "../../../packages/measurement/src/uncertainty/derivatives.ts";
import { secondOrderOf } from "../../../packages/measurement/src/uncertainty/second-order.ts";

test("a square: variance 2u⁴ more, shift u²", () => {
  // Var(X²) = 4m²u² + 2u⁴ and E(X²) = m² + u² for a normal X.
  const inputs = [{ name: "x", value: 3, uncertainty: 0.5 }];
  const found = secondOrderOf(
    probeOf((x) => Number(x[0]) ** 2, inputs),
    inputs,
    [2 * 3 * 0.5],
  );
  expect(found.variance).toBeCloseTo(2 * 0.5 ** 4, 9);
  expect(found.shift).toBeCloseTo(0.25, 10);
});

test("a cube: the slope's own bend counts too", () => {
  // f = x³ at 2, u = 0.1: ½ f″² u⁴ + f′ f‴ u⁴ = (½ · 144 + 12 · 6) · 10⁻⁴ = 0.0144
  const inputs = [{ name: "x", value: 2, uncertainty: 0.1 }];
  const { secondOrder } = propagateUncertainty({
    inputs,
    model: (x) => Number(x[0]) ** 3,
    secondOrder: true,
  });
  expect(secondOrder?.variance).toBeCloseTo(0.0144, 8);
});

test("a product: u²v² more, which is all there is", () => {
  // Var(XY) = 4²·0.3² + 5²·0.2² + 0.3²·0.2²
  const product = propagateUncertainty({
    inputs: [
      { name: "x", value: 5, uncertainty: 0.3 },
      { name: "y", value: 4, uncertainty: 0.2 },
      { name: "exact", value: 4, uncertainty: 0 },
    ],
    model: (x) => Number(x[0]) * Number(x[1]),
    secondOrder: true,
  });
  expect(product.uncertainty ** 2).toBeCloseTo(1.44 + 1 + 0.0036, 9);
  expect(product.secondOrder?.shift).toBeCloseTo(0, 10);
});

test("refuses a model whose terms of second order eat up the first", () => {
  // f = x − x³ at 0 with u = 1: 1 − 6 < 0
  const inputs = [{ name: "x", value: 0, uncertainty: 1 }];
  const model = (x: ArrayLike<number>) => Number(x[0]) - Number(x[0]) ** 3;
  expect(() => propagateUncertainty({ inputs, model, secondOrder: true })).toThrow("model must be");
});

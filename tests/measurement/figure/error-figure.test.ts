import { errorFigure, safeVarianceComponents } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { ANN_AND_BEN } from "../class-study.ts";

test("bars of the error's variance, which add to all of it", () => {
  const components = {
    ...unwrap(safeVarianceComponents(ANN_AND_BEN)),
    measurerVariance: 36,
    interactionVariance: 4,
    residualVariance: 24,
  };
  const { bars, table } = errorFigure(components, "cm");
  expect(bars.map(({ label, sdMm, share }) => [label, sdMm, share])).toEqual([
    ["habits of measurers", 6, 36 / 64],
    ["habits with some subjects", 2, 4 / 64],
    ["from reading to reading", Math.sqrt(24), 24 / 64],
  ]);
  expect(table.rows[0]).toEqual(["habits of measurers", "0.60", "56 %"]);
});

test("people differ too, but that is no error", () => {
  const components = unwrap(safeVarianceComponents(ANN_AND_BEN, { terms: [] }));
  const { bars } = errorFigure(components, "cm");
  expect(bars.map(({ share }) => share)).toEqual([1]);
});

test("says what one measurer cannot show", () => {
  const components = { ...unwrap(safeVarianceComponents(ANN_AND_BEN, { terms: [] })), measurers: 1 };
  expect(errorFigure(components, "in").text.caveat).toContain("Only one measurer");
});

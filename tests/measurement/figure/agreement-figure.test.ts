import { agreementFigure, safeMeasurerAgreement } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { ANN_AND_BEN, studyOf } from "../class-study.ts";

const pair = { first: "Ann", second: "Ben" };

test("a point for each subject, and the limits as lines", () => {
  const { points, lines, table, text } = agreementFigure(
    unwrap(safeMeasurerAgreement(ANN_AND_BEN, pair)),
    "cm",
  );
  // mia: 432 and 442, leo: 480 and 490, ana: 453 and 463, tom: 411 and 422.
  expect(points).toEqual([
    { mean: 437, difference: -10 },
    { mean: 485, difference: -10 },
    { mean: 458, difference: -10 },
    { mean: 416.5, difference: -11 },
  ]);
  expect(lines[1].value).toBe(-10.25);
  expect(lines[0].value).toBeLessThan(lines[1].value);
  expect(lines[2].value).toBeGreaterThan(lines[1].value);
  expect(table.rows[3]).toEqual(["tom", "41.65", "-1.10"]);
  expect(text.caveat).toContain("points are differences of means");
  expect(text.sample).toBe("4 subjects read by Ann and Ben");
});

test("single readings are not called means, and points beyond are counted", () => {
  const study = studyOf(
    Object.fromEntries(
      // Nineteen differences of 0 or 1, and one of 20.
      Array.from({ length: 20 }, (_, k) => [
        `s${k}`,
        { Ann: [430 + k], Ben: [430 + k - (k === 7 ? 20 : k % 2)] },
      ]),
    ),
  );
  const { text } = agreementFigure(unwrap(safeMeasurerAgreement(study, pair)), "in");
  expect(text.caveat).not.toContain("differences of means");
  expect(text.description).toContain("; 1 of the points beyond them.");
  expect(text.unit).toBe("in");
});

import { chooseRow, columnVerdicts, createRow, holdAgainst, safeCompileColumns } from "@tapewise/fit";
import { interval } from "@tapewise/intervals";
import { unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { chartOf, sizeOf, torsoChart } from "../cases.ts";

const plan = unwrap(
  safeCompileColumns(torsoChart({ S: [380, 430], M: [420, 480] }), { read: ["torso-length"] }),
);

/** Student's t for an even number of degrees of freedom: Abramowitz & Stegun (1964), formula 26.7.4, from memory. */
function studentBelow(t: number, degrees: number): number {
  const sine = t / Math.sqrt(degrees + t * t);
  const square = 1 - sine * sine;
  let [term, sum] = [1, 1];
  for (let k = 2; k <= degrees - 2; k += 2) {
    term *= ((k - 1) / k) * square;
    sum += term;
  }
  return 0.5 + (sine * sum) / 2;
}

function chosen(mean: number, sd: number, degrees: number = Number.POSITIVE_INFINITY) {
  const row = createRow(plan, 0);
  row.means[0] = mean;
  row.sds[0] = sd;
  row.degrees[0] = degrees;
  chooseRow(row);
  return row;
}

describe("what is believed with so many degrees of freedom", () => {
  // Below and above the number from which tables are used.
  test.each([2, 4, 8, 30])("%i of them: the chances are those of Student's t", (degrees) => {
    // 430 ± 10: the ends of S lie at −5 and 0, those of M at −1 and 5.
    const { probabilities } = chosen(430, 10, degrees);
    expect(probabilities[0]).toBeCloseTo(0.5 - studentBelow(-5, degrees), 12);
    expect(probabilities[1]).toBeCloseTo(studentBelow(5, degrees) - studentBelow(-1, degrees), 12);
  });

  test("the distances to expect grow with the tails", () => {
    // Two degrees of freedom: F(z) = ½ + z / (2 √(2 + z²)) and f(z) = (2 + z²)^(−3/2), so that
    // s (z F(z) + f(z) (2 + z²)) is 10 / √2 at z = 0 and 10 (−5 F(−5) + 1/√27) at z = −5.
    const below = 0.5 - 5 / (2 * Math.sqrt(27));
    const { misfits } = chosen(430, 10, 2);
    expect(misfits[0]).toBeCloseTo(10 / Math.SQRT2 + 10 * (-5 * below + 1 / Math.sqrt(27)), 10);
    // With no end to the degrees of freedom it is 10 φ(0) = 10 / √(2π), and at −5 less than a millionth.
    expect(chosen(430, 10).misfits[0]).toBeCloseTo(10 / Math.sqrt(2 * Math.PI), 5);
  });
});

describe("a row that is used again", () => {
  test("answers for the person who stands in it now", () => {
    const row = createRow(plan, 0);
    const answers = [400, 450, 600, 400].map((mean) => {
      row.means[0] = mean;
      chooseRow(row);
      return [row.pick, columnVerdicts[row.verdict], row.reasons, [...row.misfits]];
    });
    expect(answers[3]).toEqual(answers[0]);
    expect(answers.map(([pick]) => pick)).toEqual([0, 1, 1, 0]);
    expect(answers.map(([, verdict]) => verdict)).toEqual(["fits", "fits", "outside-the-range", "fits"]);
    expect(answers.map(([, , , misfits]) => misfits)).toEqual([
      [0, 20],
      [20, 0],
      [170, 120],
      [0, 20],
    ]);
  });
});

describe("the verdict", () => {
  test("a questioned reading asks for another one, whatever the pick", () => {
    const row = createRow(plan, 0);
    row.means[0] = 400;
    row.isOpen = true;
    chooseRow(row);
    expect([row.pick, columnVerdicts[row.verdict]]).toEqual([0, "measure-again"]);
  });

  test("so does a chart of back lengths of which none was read", () => {
    const girths = chartOf([
      sizeOf("S", { "torso-length": [380, 430], "hip-belt-girth": [700, 800] }),
      sizeOf("M", { "torso-length": [420, 480], "hip-belt-girth": [800, 900] }),
    ]);
    const row = createRow(unwrap(safeCompileColumns(girths, { read: ["hip-belt-girth"] })), 0);
    row.means[0] = 850;
    chooseRow(row);
    expect([row.pick, columnVerdicts[row.verdict]]).toEqual([1, "measure-again"]);
  });
});

test.each([Number.POSITIVE_INFINITY, 30, 300])(
  "right on the end of the chart just half lies beyond it, which is no close call (%d degrees of freedom)",
  (degrees) => {
    // 480 ± 10: M takes what lies from −6 to 0, less than half by more than a thousandth of a millionth.
    const { verdict, isClose } = chosen(480, 10, degrees);
    const one = { meanMm: 480, sdMm: 10, degreesOfFreedom: degrees };
    const isBeyond = holdAgainst(one, interval(380, 480)).above >= 0.5;
    expect([columnVerdicts[verdict], isClose]).toEqual([
      isBeyond ? "outside-the-range" : "between-sizes",
      false,
    ]);
  },
);

test("a chance at the very limit is called close, and one beside it is not", () => {
  // 430 is the middle of a normal belief, so that just half of it lies below; what lies below 0 is nothing.
  const half = unwrap(safeCompileColumns(torsoChart({ S: [0, 430] }), { read: ["torso-length"] }));
  const row = createRow(half, 0);
  const isClose = (mean: number) => {
    row.means[0] = mean;
    row.sds[0] = 10;
    chooseRow(row);
    return row.isClose;
  };
  expect([isClose(430), isClose(430.001), isClose(429.999)]).toEqual([true, false, false]);
});
